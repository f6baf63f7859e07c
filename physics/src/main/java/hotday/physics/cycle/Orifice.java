package hotday.physics.cycle;

/**
 * Fixed orifice with an accumulator behind the evaporator. The accumulator hands on nearly saturated vapour. Flow of liquid m = Cd A sqrt(2
 * rho (ph - pl)) (1 + k SC): what the compressor draws beyond the flow of saturated liquid needs subcooling SC, and the condenser
 * floods until it has it; drawing less, vapour slips through and nothing is flooded. Form with a linear effect of subcooling: a simple
 * fit of short-tube measurements (from memory).
 *
 * @param effectiveArea Cd A, m2; vehicles 0.3e-6 to 1.5e-6 (a tube of 1.2 to 1.8 mm with Cd 0.3 to 0.5 counted against the full
 *     pressure difference, from memory)
 * @param perKelvin k, 1/K, above 0; about 0.02 (from memory)
 */
public record Orifice(double effectiveArea, double perKelvin) implements Expansion {
    private static final double LEFT_OVER = 1.0; // K of superheat behind an accumulator, from memory
    private static final double LEAST_FLOW = 1e-6; // kg/s
    private static final double LEAST_ROOM = 0.5; // K between saturation and air
    private static final double MOST_OF_ROOM = 0.95;
    private static final double MOST_SHARE = 0.5;
    private static final double STILL = 1e3; // Pa: below, flow is linear in the pressure difference

    public Orifice {
        if (!(effectiveArea > 0 && effectiveArea <= 1e-4)) {
            throw new IllegalArgumentException(
                    "orifice effective area " + effectiveArea + " m2, must be above 0 and up to 1e-4 m2");
        }
        if (!(perKelvin > 0 && perKelvin <= 1)) {
            throw new IllegalArgumentException(
                    "orifice gain per kelvin " + perKelvin + " 1/K, must be above 0 and up to 1 1/K");
        }
    }

    /**
     * From the high to the low side, kg/s; backwards below 0. Also what equalises both sides at rest.
     *
     * @param highPressure Pa
     * @param lowPressure Pa
     * @param density of what enters, kg/m3
     * @param subcooling K, 0 or more
     */
    public double flow(double highPressure, double lowPressure, double density, double subcooling) {
        double difference = highPressure - lowPressure;
        double smoothed = difference / Math.sqrt(Math.sqrt(difference * difference + STILL * STILL));
        return effectiveArea * Math.sqrt(2.0 * density) * smoothed * (1.0 + perKelvin * subcooling);
    }

    @Override
    public double superheat(Charge charge) {
        return charge.superheat(LEFT_OVER);
    }

    @Override
    public double liquidShare(Charge charge, double[] loop, double kLiquid, double airTemperature) {
        double flow = loop[CycleLoop.MASS_FLOW];
        double saturated = flow(
                loop[CycleLoop.HIGH_PRESSURE], loop[CycleLoop.LOW_PRESSURE], loop[CycleLoop.HIGH_LIQUID_DENSITY], 0.0);
        double wanted = (flow - saturated) / (perKelvin * Math.max(LEAST_FLOW, saturated));
        double room = Math.max(LEAST_ROOM, loop[CycleLoop.HIGH_SATURATION] - airTemperature);
        double share = wanted > 0.0 ? flooded(flow * loop[CycleLoop.HIGH_LIQUID_HEAT] / kLiquid, wanted / room) : 0.0;
        return Math.min(MOST_SHARE, charge.liquidShare(share));
    }

    /**
     * Share that cools liquid by a part of the difference to the air.
     *
     * @param rate m c / k
     */
    private static double flooded(double rate, double part) {
        return -rate * Math.log(1.0 - Math.min(MOST_OF_ROOM, part));
    }
}
