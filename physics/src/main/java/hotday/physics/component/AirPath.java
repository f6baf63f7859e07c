package hotday.physics.component;

/**
 * Air through fan, core and exit in one stream: ram + draught + fan = core + exit, all pressures in Pa, one volume flow in
 * m3/s of either sign.
 *
 * <p>Every part is linear plus square in the flow, so the flow is closed-form: one root with the fan driven, one with the rotor free; the fan
 * delivers the larger pressure of the two curves, hence the larger flow holds. No iteration, no allocation, some 30 ns. A
 * drive below zero gives a flow backwards. Nothing that is finite gives NaN.
 *
 * <p>Branch rule: a fan curve that rises at small flow can meet the system twice; the largest flow is taken, the stable
 * point right of the stall.
 */
public final class AirPath {
    private static final double GRAVITY = 9.80665; // m/s2

    private AirPath() {}

    /**
     * Flow, m3/s.
     *
     * @param drive all that does not depend on flow: ram and natural draught, Pa
     * @param fan what turns
     * @param speedRatio of the fan, 0..1
     * @param density of the air in fan, core and exit, kg/m3
     * @param linear resistance of the system, Pa/(m3/s), 0 or more
     * @param square resistance of the system, Pa/(m3/s)^2, 0 or more, not both 0
     */
    public static double flow(
            double drive, FanCurve fan, double speedRatio, double density, double linear, double square) {
        double ratio = density / fan.referenceDensity();
        return flow(
                drive,
                ratio * speedRatio * speedRatio * fan.stall(),
                ratio * speedRatio * fan.linear(),
                ratio * fan.square(),
                ratio * fan.windmill(),
                linear,
                square);
    }

    /**
     * Flow, m3/s, from plain numbers at the density and fan speed at hand.
     *
     * @param drive Pa
     * @param stall fan pressure without flow, Pa
     * @param fanLinear Pa/(m3/s)
     * @param fanSquare Pa/(m3/s)^2, 0 or less
     * @param windmill resistance of the free rotor, Pa/(m3/s)^2, 0 or more
     * @param linear resistance of the system, Pa/(m3/s), 0 or more
     * @param square resistance of the system, Pa/(m3/s)^2, 0 or more
     */
    public static double flow(
            double drive,
            double stall,
            double fanLinear,
            double fanSquare,
            double windmill,
            double linear,
            double square) {
        double driven = root(drive + stall, linear - fanLinear, square - fanSquare);
        double free = root(drive, linear, square + windmill);
        return Math.max(driven, free);
    }

    /**
     * The flow Q of the largest value with drive = a Q + b Q|Q|; b 0 or more. With a below 0 there may be three: see the
     * branch rule. No resistance at all lets any drive through without limit (infinite), none without drive.
     */
    static double root(double drive, double a, double b) {
        if (drive == 0.0 && a >= 0.0) {
            return 0.0;
        }
        double inside = a * a + 4.0 * b * drive;
        if (drive < 0.0 && (a >= 0.0 || inside < 0.0)) {
            return -larger(-drive, a, b);
        }
        return a >= 0.0 ? larger(drive, a, b) : (Math.sqrt(inside) - a) / (2.0 * b);
    }

    private static double larger(double drive, double a, double b) {
        double root = Math.sqrt(a * a + 4.0 * b * drive);
        return a >= 0.0 ? 2.0 * drive / (a + root) : (root - a) / (2.0 * b);
    }

    /**
     * Ram pressure, Pa: (front - base pressure coefficient) x density / 2 x speed |speed|.
     *
     * @param coefficient front less base, usual 0.4..0.9
     * @param speed of the air against the face, m/s; below 0 from behind
     */
    public static double ram(double coefficient, double density, double speed) {
        return 0.5 * coefficient * density * speed * Math.abs(speed);
    }

    /**
     * Natural draught of warm air behind the core, Pa: density g height (1 - front / rear temperature).
     *
     * @param density in front, kg/m3
     * @param height between inlet and exit, m
     * @param front K
     * @param rear K
     */
    public static double draught(double density, double height, double front, double rear) {
        return density * GRAVITY * height * (1.0 - front / rear);
    }

    /**
     * Square resistance of an opening, Pa/(m3/s)^2: loss x density / (2 area^2).
     *
     * @param loss coefficient on the speed in the opening
     * @param area m2
     */
    public static double opening(double loss, double density, double area) {
        return 0.5 * loss * density / (area * area);
    }
}
