package hotday.vehicle.idle;

/**
 * Engine at idle with its governor; of a diesel read fuel for air. Torques count from those of the engine at rest on its set speed, so that the friction there cancels.
 *
 * <pre>
 *   J dw/dt = air + spark - drag (w - set) - load
 *   lag d air/dt = proportional e + integral z + feed-forward - air,   dz/dt = e = set - w
 *   spark = clip(spark gain e, -reserveDown, reserveUp)
 * </pre>
 *
 * @param inertia of all that turns with the crankshaft, kg m2, above 0
 * @param speed set, rad/s, above 0
 * @param drag growth of friction with speed, N m s, 0 or more
 * @param airLag of torque by air, s, above 0
 * @param proportional gain by air, N m s/rad, 0 or more
 * @param integral gain by air, N m/rad, 0 or more
 * @param spark gain by ignition, without lag, N m s/rad, 0 or more
 * @param reserveUp torque the ignition can add, N m, 0 or more
 * @param reserveDown torque it can take away, N m, 0 or more
 */
public record IdleSettings(
        double inertia,
        double speed,
        double drag,
        double airLag,
        double proportional,
        double integral,
        double spark,
        double reserveUp,
        double reserveDown) {
    private static final double RPM = Math.PI / 30.0;
    private static final double DISPLACEMENT = 4.8e-3; // m3
    private static final double SPEED = 700.0 * RPM;

    public IdleSettings {
        above("inertia", inertia, "kg m2");
        above("speed", speed, "rad/s");
        above("air lag", airLag, "s");
        orMore("drag", drag, "N m s");
        orMore("proportional gain", proportional, "N m s/rad");
        orMore("integral gain", integral, "N m/rad");
        orMore("spark gain", spark, "N m s/rad");
        orMore("spark reserve up", reserveUp, "N m");
        orMore("spark reserve down", reserveDown, "N m");
    }

    private static void above(String what, double value, String unit) {
        if (!(value > 0.0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("idle " + what + " " + value + " " + unit + " must be above 0");
        }
    }

    private static void orMore(String what, double value, String unit) {
        if (!(value >= 0.0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("idle " + what + " " + value + " " + unit + " must be 0 or more");
        }
    }

    /**
     * A usual engine (from memory): 0.28 kg m2 with flywheel or converter, 0.35 s, and 8 N m of reserve for 4.8 l at 700 rpm. Torques, gains and
     * inertia grow with the displacement, the lag of the air falls with the speed (a fixed number of strokes).
     *
     * @param displacement m3, above 0
     * @param speed set, rad/s, above 0
     */
    public static IdleSettings of(double displacement, double speed) {
        above("displacement", displacement, "m3");
        above("speed", speed, "rad/s");
        double size = displacement / DISPLACEMENT;
        return new IdleSettings(
                0.28 * size,
                speed,
                0.06 * size,
                0.35 * SPEED / speed,
                0.1 * size / RPM,
                0.1 * size / RPM,
                0.2 * size / RPM,
                8.0 * size,
                12.0 * size);
    }

    /**
     * A usual diesel (from memory): inertia as {@link #of}; no throttle and no ignition, torque by fuel follows within about two injections of six cylinders,
     * 0.05 s at 700 rpm, so that the gains are three times as high.
     *
     * @param displacement m3, above 0
     * @param speed set, rad/s, above 0
     */
    public static IdleSettings diesel(double displacement, double speed) {
        above("displacement", displacement, "m3");
        above("speed", speed, "rad/s");
        double size = displacement / DISPLACEMENT;
        return new IdleSettings(
                0.28 * size,
                speed,
                0.06 * size,
                0.05 * SPEED / speed,
                0.3 * size / RPM,
                0.3 * size / RPM,
                0.0,
                0.0,
                0.0);
    }
}
