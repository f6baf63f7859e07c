package hotday.vehicle.controller;

/**
 * One fan controller: a schedule and its state. {@link #step} is called every 0.1 s, allocates nothing and uses whole
 * numbers only, so that a controller written in another language from docs/controller.md gives the same output to the
 * last digit. Instances are independent; one instance serves one thread.
 */
public final class Controller {
    /** Ticks a second. */
    public static final int RATE = 10;

    /** Time off assumed at power-up: long enough for any least time off. */
    private static final int LONG_AGO = 100_000;
    /** Counters stop here, so that nothing overflows on a controller that is never switched off. */
    private static final int COUNTED = 1_000_000;

    private final Schedule schedule;

    private boolean ran;
    private int startTicks;
    private int held;
    private int badTicks;
    private int goodTicks;
    private boolean fault;
    private boolean coolantLatch;
    private boolean gearboxLatch;
    private boolean airConditioningLatch;
    private boolean chargeAirLatch;
    private boolean slow;
    private boolean afterRun;
    private int afterRunTicks;
    private int lowBatteryTicks;
    private boolean on;
    private int onTicks;
    private int offTicks;
    private int output;
    private int want;
    private Source source = Source.NONE;

    public Controller(Schedule schedule) {
        this.schedule = schedule;
        reset();
    }

    /** Back to the state at power-up. */
    public void reset() {
        ran = false;
        startTicks = 0;
        held = schedule.sensor().first();
        badTicks = 0;
        goodTicks = 0;
        fault = false;
        coolantLatch = false;
        gearboxLatch = false;
        airConditioningLatch = false;
        chargeAirLatch = false;
        slow = false;
        afterRun = false;
        afterRunTicks = 0;
        lowBatteryTicks = 0;
        on = false;
        onTicks = 0;
        offTicks = LONG_AGO;
        output = 0;
        want = 0;
        source = Source.NONE;
    }

    /** Takes over the whole state of a controller with the same schedule. */
    public void copyFrom(Controller other) {
        ran = other.ran;
        startTicks = other.startTicks;
        held = other.held;
        badTicks = other.badTicks;
        goodTicks = other.goodTicks;
        fault = other.fault;
        coolantLatch = other.coolantLatch;
        gearboxLatch = other.gearboxLatch;
        airConditioningLatch = other.airConditioningLatch;
        chargeAirLatch = other.chargeAirLatch;
        slow = other.slow;
        afterRun = other.afterRun;
        afterRunTicks = other.afterRunTicks;
        lowBatteryTicks = other.lowBatteryTicks;
        on = other.on;
        onTicks = other.onTicks;
        offTicks = other.offTicks;
        output = other.output;
        want = other.want;
        source = other.source;
    }

    /**
     * One tick. The order of the seven parts is part of the definition.
     *
     * @return output, 0.01 %
     */
    public int step(Inputs in) {
        watchSensor(in);
        boolean inhibited = watchEngine(in);
        if (in.running) {
            latch(in);
            arbitrate(in);
            allow(in);
            floor(in);
            want = inhibited ? 0 : want;
        } else {
            runOn(in);
        }
        switchFan(inhibited || (!in.running && !afterRun));
        slew(in);
        ran = in.running;
        return output;
    }

    private void watchSensor(Inputs in) {
        if (in.coolant == Inputs.INVALID) {
            badTicks = counted(badTicks);
            goodTicks = 0;
        } else {
            held = in.coolant;
            badTicks = 0;
            goodTicks = counted(goodTicks);
        }
        if (!fault && badTicks >= schedule.sensor().bad()) {
            fault = true;
        } else if (fault && goodTicks >= schedule.sensor().good()) {
            fault = false;
        }
    }

    /** Start and stop of the engine; true while the start delay forbids the fan. */
    private boolean watchEngine(Inputs in) {
        if (in.running && !ran) {
            startTicks = schedule.switching().startDelay();
            afterRun = false;
        }
        if (!in.running && ran && held >= schedule.afterRun().begin()) {
            afterRun = true;
            afterRunTicks = 0;
            lowBatteryTicks = 0;
        }
        if (in.running && startTicks > 0) {
            startTicks--;
            return true;
        }
        return false;
    }

    private void latch(Inputs in) {
        coolantLatch = latched(coolantLatch, schedule.coolant(), held);
        gearboxLatch = latched(gearboxLatch, schedule.gearbox(), in.gearbox);
        airConditioningLatch =
                latched(airConditioningLatch, schedule.airConditioning(), in.headPressure) && in.airConditioning;
        chargeAirLatch = latched(chargeAirLatch, schedule.chargeAir(), in.chargeAir);
    }

    private static boolean latched(boolean before, Schedule.Curve curve, int at) {
        return before ? at > curve.off() : at >= curve.on();
    }

    /** The largest curve decides; the earlier one of equals. */
    private void arbitrate(Inputs in) {
        int coolant = coolantLatch ? schedule.coolant().demand().demand(held) : 0;
        coolant = fault ? schedule.sensor().demand() : coolant;
        int gearbox = gearboxLatch ? schedule.gearbox().demand().demand(in.gearbox) : 0;
        int airConditioning =
                airConditioningLatch ? schedule.airConditioning().demand().demand(in.headPressure) : 0;
        int chargeAir = chargeAirLatch ? schedule.chargeAir().demand().demand(in.chargeAir) : 0;
        want = 0;
        source = Source.NONE;
        raise(coolant, Source.COOLANT);
        raise(gearbox, Source.GEARBOX);
        raise(airConditioning, Source.AIR_CONDITIONING);
        raise(chargeAir, Source.CHARGE_AIR);
    }

    private void raise(int demand, Source from) {
        if (demand > want) {
            want = demand;
            source = from;
        }
    }

    private void allow(Inputs in) {
        if (held < schedule.allowance().hottest() && !fault) {
            want = Math.max(0, want - schedule.allowance().demand().demand(in.speed));
        }
    }

    private void floor(Inputs in) {
        Schedule.Floor floor = schedule.floor();
        slow = slow ? in.speed <= floor.above() : in.speed < floor.below();
        if (slow && held >= floor.coolant()) {
            raise(floor.demand(), Source.FLOOR);
        }
        if (want == 0) {
            source = Source.NONE;
        }
    }

    /** Engine off: nothing but the after-run asks for the fan. */
    private void runOn(Inputs in) {
        Schedule.AfterRun rule = schedule.afterRun();
        coolantLatch = false;
        gearboxLatch = false;
        airConditioningLatch = false;
        chargeAirLatch = false;
        slow = false;
        if (afterRun) {
            afterRunTicks = counted(afterRunTicks);
            lowBatteryTicks = in.battery < rule.battery() ? counted(lowBatteryTicks) : 0;
            afterRun = held > rule.end() && afterRunTicks < rule.longest() && lowBatteryTicks < rule.lowTicks();
        }
        want = afterRun ? rule.demand().demand(held) : 0;
        source = afterRun ? Source.AFTER_RUN : Source.NONE;
    }

    /** @param forced key off or start delay: stronger than the least time on */
    private void switchFan(boolean forced) {
        Schedule.Switching rule = schedule.switching();
        if (on) {
            onTicks = counted(onTicks);
            if (forced || (want < rule.off() && onTicks >= rule.leastOn())) {
                on = false;
                offTicks = 0;
            }
        } else {
            offTicks = counted(offTicks);
            if (!forced && want >= rule.on() && offTicks >= rule.leastOff()) {
                on = true;
                onTicks = 0;
            }
        }
    }

    private void slew(Inputs in) {
        Schedule.Slew rule = schedule.slew();
        int target = on ? Math.max(want, schedule.switching().least()) : 0;
        int up = in.running && in.speed < rule.restSpeed() ? rule.upAtRest() : rule.up();
        output = Math.max(output - rule.down(), Math.min(output + up, target));
        if (!on && output < rule.stop()) {
            output = 0;
        }
    }

    private static int counted(int ticks) {
        return Math.min(ticks + 1, COUNTED);
    }

    public Schedule schedule() {
        return schedule;
    }

    /** Fan command, 0..10000 in 0.01 %. */
    public int output() {
        return output;
    }

    /** Fan command, 0..1. */
    public double outputShare() {
        return output / (double) DemandCurve.FULL;
    }

    /** Demand before minimum times and slew, 0.01 %. */
    public int want() {
        return want;
    }

    public Source source() {
        return source;
    }

    /** Fan switched on; the output may still be on its way. */
    public boolean on() {
        return on;
    }

    /** Coolant sensor fault stands. */
    public boolean fault() {
        return fault;
    }

    public boolean coolantLatched() {
        return coolantLatch;
    }

    public boolean gearboxLatched() {
        return gearboxLatch;
    }

    public boolean airConditioningLatched() {
        return airConditioningLatch;
    }

    public boolean chargeAirLatched() {
        return chargeAirLatch;
    }

    /** Counts as at rest. */
    public boolean slow() {
        return slow;
    }

    public boolean afterRun() {
        return afterRun;
    }
}
