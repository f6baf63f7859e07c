package hotday.physics.exchanger;

import hotday.physics.transfer.Effectiveness;

/** Heat of one tile where a liquid crosses the air. Why the first is the usual one: docs/decisions/0006. */
public enum TileLaw {
    /**
     * The liquid has one temperature across the depth (one flat tube from front to rear) and is followed exactly along its way; the air does not
     * mix. Cutting a tile in two along the way of the liquid changes nothing.
     */
    TUBE_MIXED {
        @Override
        public double heatPerKelvin(double airRate, double liquidRate, double conductance) {
            return liquidRate * Decay.gone(airRate * Decay.gone(conductance / airRate) / liquidRate);
        }
    },
    /** Both unmixed within the tile, exact; right for a core of one tile. Slow. */
    BOTH_UNMIXED {
        @Override
        public double heatPerKelvin(double airRate, double liquidRate, double conductance) {
            double least = Math.min(airRate, liquidRate);
            double most = Math.max(airRate, liquidRate);
            return least * Effectiveness.crossBothUnmixed(conductance / least, least / most);
        }
    },
    /** Both unmixed by the usual approximation, for comparison with books. Slow. */
    BOTH_UNMIXED_APPROXIMATE {
        @Override
        public double heatPerKelvin(double airRate, double liquidRate, double conductance) {
            double least = Math.min(airRate, liquidRate);
            double most = Math.max(airRate, liquidRate);
            return least * Effectiveness.crossBothUnmixedApproximate(conductance / least, least / most);
        }
    };

    /**
     * Heat over the difference of the temperatures at which liquid and air enter, W/K.
     *
     * @param airRate capacity rate of the air, W/K, above 0
     * @param liquidRate capacity rate of the liquid, W/K, above 0
     * @param conductance from liquid to air, W/K, 0 or more
     */
    public abstract double heatPerKelvin(double airRate, double liquidRate, double conductance);
}
