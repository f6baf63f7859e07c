package hotday.vehicle.idle;

/**
 * State of engine and governor, and one Runge-Kutta step of it. The spark is taken as linear or held within a step; {@link #crossing} finds where a
 * step must end for that to be true. Speed counts from the set one, so that rest is exactly rest.
 */
final class IdleLoop {
    /** What {@link #crossing} looks for: the spark meets or leaves its reserve. */
    static final int RESERVE = 0;

    /** The speed stops falling or rising. */
    static final int TURNING = 1;

    /** The speed is the band away from the set one. */
    static final int BAND = 2;

    /** Width of the band of {@link #BAND}, rad/s. */
    static final double BAND_WIDTH = 25.0 * Math.PI / 30.0;

    private static final double ON_THE_EDGE = 1e-9; // rad/s
    private static final double CLOSE = 1e-11; // s
    private static final int MOST_TRIES = 60;

    private final IdleSettings engine;
    private final IdleLoad load;
    private final FeedForward forward;
    private final double edgeUp; // rad/s below the set speed at which the reserve is used up
    private final double edgeDown;

    private double time;
    private double speed; // less the set one, rad/s
    private double air; // N m
    private double sum; // integral of what is missing, rad
    private int held; // spark: 0 linear, 1 all added, -1 all taken away
    private double announced; // N m

    private double nextTime;
    private double nextSpeed;
    private double nextAir;
    private double nextSum;
    private double loadNow;
    private double loadMiddle;
    private double loadNext;

    IdleLoop(IdleSettings engine, IdleLoad load, FeedForward forward) {
        this.engine = engine;
        this.load = load;
        this.forward = forward;
        this.edgeUp = engine.reserveUp() / engine.spark();
        this.edgeDown = engine.reserveDown() / engine.spark();
    }

    double time() {
        return time;
    }

    /** At the start of the step, rad/s above the set speed. */
    double speed() {
        return speed;
    }

    /** At the end of the step tried. */
    double nextSpeed() {
        return nextSpeed;
    }

    double nextTime() {
        return nextTime;
    }

    /** Decides which way the spark acts in the steps tried from here; before the first of them. {@code longest} s is that of the steps. */
    void begin(double longest) {
        announced = time + 0.5 * longest > IdleStudy.ENGAGED - forward.lead() ? forward.torque() : 0.0;
        loadNow = loadAt(time);
        double missing = -speed;
        double growing = -acceleration(speed, air, loadNow, spark(speed));
        held = beyond(missing - edgeUp, growing) ? 1 : beyond(-missing - edgeDown, -growing) ? -1 : 0;
    }

    private static boolean beyond(double excess, double growing) {
        return excess > ON_THE_EDGE || (excess > -ON_THE_EDGE && growing > 0.0);
    }

    private double spark(double atSpeed) {
        return Math.max(-engine.reserveDown(), Math.min(engine.reserveUp(), -engine.spark() * atSpeed));
    }

    private double sparkOfStep(double atSpeed) {
        return held == 0 ? -engine.spark() * atSpeed : held > 0 ? engine.reserveUp() : -engine.reserveDown();
    }

    private double loadAt(double at) {
        double since = at - IdleStudy.ENGAGED;
        return since > 0.0 ? load.torque() * -Math.expm1(-since / load.lag()) : 0.0;
    }

    private double acceleration(double atSpeed, double atAir, double atLoad, double atSpark) {
        return (atAir + atSpark - engine.drag() * atSpeed - atLoad) / engine.inertia();
    }

    private double speedRate(double atSpeed, double atAir, double atLoad) {
        return acceleration(atSpeed, atAir, atLoad, sparkOfStep(atSpeed));
    }

    private double airRate(double atSpeed, double atAir, double atSum) {
        return (announced - engine.proportional() * atSpeed + engine.integral() * atSum - atAir) / engine.airLag();
    }

    /** Classical fourth-order Runge-Kutta over {@code h} s from the last accepted state. */
    void attempt(double h) {
        double half = 0.5 * h;
        loadMiddle = loadAt(time + half);
        loadNext = loadAt(time + h);
        double v1 = speedRate(speed, air, loadNow);
        double a1 = airRate(speed, air, sum);
        double s2 = speed + half * v1;
        double v2 = speedRate(s2, air + half * a1, loadMiddle);
        double a2 = airRate(s2, air + half * a1, sum - half * speed);
        double s3 = speed + half * v2;
        double v3 = speedRate(s3, air + half * a2, loadMiddle);
        double a3 = airRate(s3, air + half * a2, sum - half * s2);
        double s4 = speed + h * v3;
        double v4 = speedRate(s4, air + h * a3, loadNext);
        double a4 = airRate(s4, air + h * a3, sum - h * s3);
        nextTime = time + h;
        nextSpeed = speed + h / 6.0 * (v1 + 2.0 * (v2 + v3) + v4);
        nextAir = air + h / 6.0 * (a1 + 2.0 * (a2 + a3) + a4);
        nextSum = sum - h / 6.0 * (speed + 2.0 * (s2 + s3) + s4);
    }

    void accept() {
        time = nextTime;
        speed = nextSpeed;
        air = nextAir;
        sum = nextSum;
    }

    /** Above or below zero on either side of what is looked for; at the start of the step. */
    double before(int event) {
        return signal(event, speed, air, loadNow);
    }

    /** At the end of the step tried. */
    double after(int event) {
        return signal(event, nextSpeed, nextAir, loadNext);
    }

    private double signal(int event, double atSpeed, double atAir, double atLoad) {
        return switch (event) {
            case RESERVE -> inside(-atSpeed);
            case TURNING -> speedRate(atSpeed, atAir, atLoad);
            default -> Math.abs(atSpeed) - BAND_WIDTH;
        };
    }

    /** rad/s to the edge at which the spark would act the other way; below zero beyond it. */
    private double inside(double missing) {
        return held > 0
                ? missing - edgeUp
                : held < 0 ? -missing - edgeDown : Math.min(edgeUp - missing, missing + edgeDown);
    }

    /**
     * Length of the step, up to {@code h} s, at which the signal of an event passes zero, by regula falsi (Illinois). The signal must change sign on the
     * way; the step tried last ends there.
     */
    double crossing(int event, double h) {
        double low = 0.0;
        double high = h;
        double atLow = before(event);
        double atHigh = after(event);
        double at = h;
        int side = 0;
        for (int i = 0; i < MOST_TRIES && high - low > CLOSE; i++) {
            double last = at;
            at = low + (high - low) * atLow / (atLow - atHigh);
            attempt(at);
            double value = after(event);
            if (value * atHigh > 0.0) {
                high = at;
                atHigh = value;
                atLow *= side == 1 ? 0.5 : 1.0;
                side = 1;
            } else {
                low = at;
                atLow = value;
                atHigh *= side == -1 ? 0.5 : 1.0;
                side = -1;
            }
            if (value == 0.0 || Math.abs(at - last) <= CLOSE) {
                break;
            }
        }
        return at;
    }
}
