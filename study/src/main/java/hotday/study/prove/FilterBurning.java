package hotday.study.prove;

import hotday.vehicle.spec.VehicleSpec;

/**
 * A diesel whose intake is throttled although it turns: its exhaust filter is being burnt clean, the only time such an engine
 * starves itself of air. Boost then says too little of its fuel. What is burnt follows from the air that passes, whose exhaust has
 * to be as hot as the catalyst in front of the filter needs it; docs/physics/prove.md.
 */
final class FilterBurning {
    /** Manifold pressure of the throttled engine over that of its usual idle. */
    private static final double THROTTLED = 0.88;
    /** Below this an engine runs down or is being started, rad/s (570 rpm): then a flap shuts as well. */
    private static final double TURNING = 60.0;

    /** A minute of which so much is throttled belongs to the burning: under load the flap opens meanwhile. */
    private static final double WINDOW = 60.0; // s

    private static final double LEAST = 10.0; // s

    private static final double BREATHING = 0.9; // volumetric efficiency
    private static final double AIR_GAS_CONSTANT = 287.055;
    private static final double INTAKE = 310.0; // K
    private static final double EXHAUST_SPECIFIC_HEAT = 1100.0; // J/(kg K), 400 degC
    /** Exhaust over intake air, K: 450 degC, so that the catalyst lights; common practice, no source. */
    private static final double EXHAUST_RISE = 413.0;
    /** A third of the fuel's heat leaves with the exhaust; common practice, no source. */
    private static final double EXHAUST_SHARE = 1.0 / 3.0;

    private FilterBurning() {}

    /**
     * Where the filter is burnt clean, row by row.
     *
     * @param manifold Pa
     * @param engineSpeed rad/s
     * @param idlePressure of the manifold, Pa
     * @param step s
     */
    static boolean[] in(double[] manifold, double[] engineSpeed, double idlePressure, double step) {
        int half = (int) Math.round(0.5 * WINDOW / step);
        boolean[] burning = new boolean[manifold.length];
        int throttled = 0;
        for (int i = -half; i < burning.length; i++) {
            throttled += throttled(manifold, engineSpeed, idlePressure, i + half) ? 1 : 0;
            throttled -= throttled(manifold, engineSpeed, idlePressure, i - half - 1) ? 1 : 0;
            if (i >= 0) {
                burning[i] = throttled * step >= LEAST;
            }
        }
        return burning;
    }

    private static boolean throttled(double[] manifold, double[] engineSpeed, double idlePressure, int i) {
        return i >= 0 && i < manifold.length && engineSpeed[i] >= TURNING && manifold[i] < THROTTLED * idlePressure;
    }

    /** Fuel power that heats the air of these cylinders as far as a catalyst needs, W. */
    static double fuelPower(VehicleSpec.Engine engine, double manifold, double engineSpeed) {
        double density = manifold / (AIR_GAS_CONSTANT * INTAKE);
        double air = BREATHING * density * engine.displacement() * engineSpeed / (4.0 * Math.PI);
        return air * EXHAUST_SPECIFIC_HEAT * EXHAUST_RISE / EXHAUST_SHARE;
    }
}
