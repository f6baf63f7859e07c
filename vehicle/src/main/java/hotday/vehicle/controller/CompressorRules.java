package hotday.vehicle.controller;

/**
 * When the compressor is engaged: limits and a state. {@link #step} is called every 0.1 s, allocates nothing and uses
 * whole numbers only, so that rules written in another language from docs/controller.md switch in the same ticks.
 * Instances are independent; one instance serves one thread.
 */
public final class CompressorRules {
    /** Time off assumed at power-up: long enough for any least time off. */
    private static final int LONG_AGO = 100_000;
    /** Counters stop here, so that nothing overflows in a car that is never switched off. */
    static final int COUNTED = 1_000_000;

    private static final Hold[] ORDER = Hold.values();
    private static final int STRONGER = stronger();

    private final CompressorLimits limits;

    private boolean ran;
    private int startTicks;
    private boolean slow;
    private boolean freezing;
    private boolean high;
    private boolean low;
    private boolean open;
    private int openTicks;
    private boolean hot;
    private boolean engaged;
    private int switchTicks;
    private int leadTicks;
    private boolean requested;
    private boolean announced;
    private Hold hold = Hold.TIME_OUT;

    public CompressorRules(CompressorLimits limits) {
        this.limits = limits;
        reset();
    }

    private static int stronger() {
        int all = 0;
        for (Hold hold : ORDER) {
            all |= bit(hold, hold.stronger());
        }
        return all;
    }

    private static int bit(Hold hold, boolean stands) {
        return stands ? 1 << hold.ordinal() : 0;
    }

    /** Back to the state at power-up. */
    public void reset() {
        ran = false;
        startTicks = 0;
        slow = true;
        freezing = false;
        high = false;
        low = false;
        open = false;
        openTicks = 0;
        hot = false;
        engaged = false;
        switchTicks = LONG_AGO;
        leadTicks = 0;
        requested = false;
        announced = false;
        hold = Hold.TIME_OUT;
    }

    /** Takes over the whole state of rules with the same limits. */
    public void copyFrom(CompressorRules other) {
        ran = other.ran;
        startTicks = other.startTicks;
        slow = other.slow;
        freezing = other.freezing;
        high = other.high;
        low = other.low;
        open = other.open;
        openTicks = other.openTicks;
        hot = other.hot;
        engaged = other.engaged;
        switchTicks = other.switchTicks;
        leadTicks = other.leadTicks;
        requested = other.requested;
        announced = other.announced;
        hold = other.hold;
    }

    /**
     * One tick. The order of the five parts is part of the definition.
     *
     * @return engaged
     */
    public boolean step(CompressorInputs in) {
        switchTicks = counted(switchTicks);
        boolean delayed = watchEngine(in);
        latch(in);
        int standing = standing(in, delayed);
        switchClutch(standing);
        announced = in.running
                && (engaged || leadTicks > 0 || switchTicks < limits.clutch().trail());
        hold = engaged ? Hold.NONE : first(standing);
        return engaged;
    }

    /** True while the start delay runs. */
    private boolean watchEngine(CompressorInputs in) {
        if (in.running && !ran) {
            startTicks = limits.engine().startDelay();
        }
        ran = in.running;
        if (in.running && startTicks > 0) {
            startTicks--;
            return true;
        }
        return false;
    }

    private void latch(CompressorInputs in) {
        slow = limits.engine().speed().stands(slow, in.engineSpeed);
        freezing = limits.freeze().used() && limits.freeze().temperature().stands(freezing, in.evaporator);
        high = limits.headPressure().stands(high, in.headPressure);
        low = !blanked() && limits.suction().pressure().stands(low, in.suctionPressure);
        open = limits.throttle().load().stands(open, in.load);
        openTicks = open ? counted(openTicks) : 0;
        hot = in.coolant == Inputs.INVALID ? hot : limits.coolant().stands(hot, in.coolant);
    }

    private boolean blanked() {
        return engaged && switchTicks < limits.suction().blanking();
    }

    /** A bit for every rule that holds at present. */
    private int standing(CompressorInputs in, boolean delayed) {
        boolean fresh = in.requestAge >= 0 && in.requestAge < limits.timeOut();
        requested = fresh && in.request;
        return bit(Hold.TIME_OUT, !fresh)
                | bit(Hold.REQUEST, !in.request)
                | bit(Hold.ENGINE, !in.running)
                | bit(Hold.START_DELAY, delayed)
                | bit(Hold.SPEED, slow)
                | bit(Hold.FREEZE, freezing)
                | bit(Hold.HIGH_PRESSURE, high)
                | bit(Hold.LOW_PRESSURE, low)
                | bit(Hold.THROTTLE, open && openTicks <= limits.throttle().longest())
                | bit(Hold.COOLANT, hot)
                | bit(Hold.LEAST_OFF, !engaged && switchTicks < limits.clutch().leastOff());
    }

    private void switchClutch(int standing) {
        if (engaged) {
            boolean held =
                    (standing & STRONGER) == 0 && switchTicks < limits.clutch().leastOn();
            turn(standing == 0 || held);
        } else if (standing != 0) {
            leadTicks = 0;
        } else if (leadTicks < limits.clutch().lead()) {
            leadTicks++;
        } else {
            leadTicks = 0;
            turn(true);
        }
    }

    private void turn(boolean to) {
        switchTicks = to == engaged ? switchTicks : 0;
        engaged = to;
    }

    private static Hold first(int standing) {
        return standing == 0 ? Hold.LEAD : ORDER[Integer.numberOfTrailingZeros(standing)];
    }

    private static int counted(int ticks) {
        return Math.min(ticks + 1, COUNTED);
    }

    public CompressorLimits limits() {
        return limits;
    }

    /** Clutch closed. */
    public boolean engaged() {
        return engaged;
    }

    /** What the idle governor is told: engaged, about to be, or just released. */
    public boolean announced() {
        return announced;
    }

    /** A fresh message asks for the compressor, held or not; the fan controller's air-conditioning flag. */
    public boolean requested() {
        return requested;
    }

    /** The first rule that keeps the compressor off; {@link Hold#NONE} while it is engaged. */
    public Hold hold() {
        return hold;
    }

    /** Ticks since the clutch last changed, up to 1,000,000. */
    public int sinceSwitch() {
        return switchTicks;
    }
}
