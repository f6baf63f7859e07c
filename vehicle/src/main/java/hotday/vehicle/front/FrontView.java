package hotday.vehicle.front;

import hotday.vehicle.airpath.Face;
import hotday.vehicle.airpath.TileFlow.FanState;
import hotday.vehicle.spec.VehicleSpec.PlacedCore;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The settled front, tile by tile. Temperatures K, speeds m/s, heats W, flows kg/s.
 *
 * @param face geometry
 * @param speed of the air per tile of the face, at outside density; below 0 where it comes out of the front
 * @param cores in depth order
 * @param faceTemperature of the air in front, with what comes back
 * @param rearTemperature of the air behind all cores, mean by mass
 * @param underhoodTemperature of the air in the bay
 * @param massFlow through the face
 * @param reversedMassFlow that comes out of the front
 * @param flapMassFlow through the relief flaps
 * @param fans state of every fan
 * @param condensing saturation temperature in the condenser; empty without condenser heat
 * @param condensingPressure absolute, Pa; empty likewise
 * @param settled false when the heats asked for cannot be given away, or temperatures still moved
 */
public record FrontView(
        Face face,
        List<Double> speed,
        List<CoreView> cores,
        double faceTemperature,
        double rearTemperature,
        double underhoodTemperature,
        double massFlow,
        double reversedMassFlow,
        double flapMassFlow,
        List<FanState> fans,
        OptionalDouble condensing,
        OptionalDouble condensingPressure,
        boolean settled) {
    public FrontView {
        speed = List.copyOf(speed);
        cores = List.copyOf(cores);
        fans = List.copyOf(fans);
    }

    /**
     * One core.
     *
     * @param airIn, airOut per tile of the face; NaN where the core does not stand
     * @param heat given to the air
     * @param massFlow of air through it
     */
    public record CoreView(PlacedCore core, List<Double> airIn, List<Double> airOut, double heat, double massFlow) {
        public CoreView {
            airIn = List.copyOf(airIn);
            airOut = List.copyOf(airOut);
        }

        /** True where the core stands. */
        public boolean covers(int tile) {
            return !Double.isNaN(airIn.get(tile));
        }
    }
}
