package hotday.vehicle.controller;

import hotday.vehicle.spec.CompressorHolds;
import hotday.vehicle.spec.VehicleSpec;
import java.util.Objects;

/**
 * Everything about the compressor that is calibrated, in whole numbers: temperatures in 0.1 degC, pressures in kPa
 * absolute, engine speed in rpm, load in 0.01 %, times in ticks of 0.1 s. docs/controller.md says what each does and
 * when.
 *
 * @param timeOut age from which a request message is too old
 * @param headPressure cut-out and cut-in of the high side
 * @param coolant too hot, and cool enough again
 */
public record CompressorLimits(
        int timeOut,
        Engine engine,
        Freeze freeze,
        Above headPressure,
        Suction suction,
        Throttle throttle,
        Above coolant,
        Clutch clutch) {

    private static final int HOUR = 36_000;
    private static final int EXTREME = 32_000;
    private static final int COLDEST = -1_000;
    private static final int HOTTEST = 2_000;
    private static final int HIGHEST = 10_000;
    private static final int FREEZE_HYSTERESIS = 30; // 0.1 K
    private static final int SUCTION_HYSTERESIS = 40; // kPa

    /**
     * Holds from a value upward.
     *
     * @param from holds at or above
     * @param until no longer at or below, below {@code from}
     */
    public record Above(int from, int until) {
        public Above {
            Bounds.inside("value that holds", from, -EXTREME, EXTREME);
            Bounds.inside("value that releases", until, -EXTREME, from - 1);
        }

        boolean stands(boolean before, int at) {
            return before ? at > until : at >= from;
        }
    }

    /**
     * Holds from a value downward.
     *
     * @param from holds at or below
     * @param until no longer at or above, above {@code from}
     */
    public record Below(int from, int until) {
        public Below {
            Bounds.inside("value that holds", from, -EXTREME, EXTREME);
            Bounds.inside("value that releases", until, from + 1, EXTREME);
        }

        boolean stands(boolean before, int at) {
            return before ? at < until : at <= from;
        }
    }

    /**
     * @param startDelay ticks without compressor after the engine starts
     * @param speed cranking or stalling, and turning by itself again
     */
    public record Engine(int startDelay, Below speed) {
        public Engine {
            Bounds.inside("compressor start delay", startDelay, 0, HOUR);
            Bounds.inside("stall speed, rpm,", speed.from(), 0, EXTREME);
        }
    }

    /**
     * @param used false for a compressor that shortens its stroke and needs no clutch against freezing
     * @param temperature fin or air-off temperature
     */
    public record Freeze(boolean used, Below temperature) {
        public Freeze {
            Bounds.inside("freeze limit, 0.1 degC,", temperature.from(), COLDEST, HOTTEST);
        }
    }

    /**
     * @param pressure low cut-out, and good again
     * @param blanking ticks after engagement in which the low side may drop further
     */
    public record Suction(Below pressure, int blanking) {
        public Suction {
            Bounds.inside("low cut-out, kPa,", pressure.from(), 1, HIGHEST);
            Bounds.inside("suction blanking", blanking, 0, HOUR);
        }
    }

    /**
     * @param load wide open, and released
     * @param longest ticks of one cut; 0 switches the rule off
     */
    public record Throttle(Above load, int longest) {
        public Throttle {
            Bounds.inside("wide-open load, 0.01 %,", load.from(), 1, DemandCurve.FULL);
            Bounds.inside("throttle cut", longest, 0, HOUR);
        }
    }

    /**
     * @param leastOn ticks it stays engaged at least
     * @param leastOff ticks it rests at least
     * @param lead ticks from the announcement to the clutch
     * @param trail ticks the announcement stays after the clutch has dropped
     */
    public record Clutch(int leastOn, int leastOff, int lead, int trail) {
        public Clutch {
            Bounds.inside("compressor least time on", leastOn, 0, HOUR);
            Bounds.inside("compressor least time off", leastOff, 0, HOUR);
            Bounds.inside("announcement before the clutch", lead, 0, HOUR);
            Bounds.inside("announcement after the clutch", trail, 0, HOUR);
        }
    }

    public CompressorLimits {
        Bounds.inside("request time-out", timeOut, 1, HOUR);
        Objects.requireNonNull(engine, "engine");
        Objects.requireNonNull(freeze, "freeze");
        Bounds.inside("high cut-out, kPa,", headPressure.from(), 1, HIGHEST);
        Objects.requireNonNull(suction, "suction");
        Objects.requireNonNull(throttle, "throttle");
        Bounds.inside("coolant too hot, 0.1 degC,", coolant.from(), COLDEST, HOTTEST);
        Objects.requireNonNull(clutch, "clutch");
    }

    /** A clutched compressor nobody calibrated; the numbers are explained in docs/controller.md. */
    public static CompressorLimits standard() {
        return new CompressorLimits(
                10,
                new Engine(70, new Below(450, 550)),
                new Freeze(true, new Below(10, 40)),
                new Above(3100, 2000),
                new Suction(new Below(170, 210), 50),
                new Throttle(new Above(9000, 8000), 50),
                new Above(1160, 1100),
                new Clutch(30, 50, 5, 5));
    }

    /** Of a vehicle with its circuit; the standard ones without air conditioning. */
    public static CompressorLimits of(VehicleSpec vehicle) {
        return vehicle.airConditioning()
                .map(a -> of(a.circuit()).with(a.holds(), vehicle.limits().coolant()))
                .orElse(standard());
    }

    private static CompressorLimits of(VehicleSpec.RefrigerantCircuit c) {
        return of(c.cutOut(), c.cutIn(), c.lowCutOut(), c.freezeLimit(), c.variable());
    }

    /** @param hottest that coolant may get, K */
    private CompressorLimits with(CompressorHolds holds, double hottest) {
        CompressorHolds.HotCoolant hot = holds.hotCoolant().orElse(CompressorHolds.HotCoolant.below(hottest));
        CompressorHolds.Throttle pedal = holds.throttle();
        return new CompressorLimits(
                timeOut,
                new Engine(ticks(holds.startDelay()), engine.speed),
                freeze,
                headPressure,
                suction,
                new Throttle(new Above(load(pedal.wideOpen()), load(pedal.released())), ticks(pedal.longest())),
                new Above(Inputs.tenths(hot.cutOut()), Inputs.tenths(hot.cutIn())),
                new Clutch(ticks(holds.leastOn()), ticks(holds.leastOff()), clutch.lead, clutch.trail));
    }

    private static int ticks(double seconds) {
        return Inputs.whole(seconds * Controller.RATE);
    }

    private static int load(double share) {
        return Inputs.whole(share * DemandCurve.FULL);
    }

    /**
     * The pressures and the freeze limit of a refrigerant circuit, everything else {@link #standard()}. The low side is
     * good again 40 kPa above its cut-out, the evaporator 3 K above its limit.
     *
     * @param cutOut high-side pressure that stops the compressor, Pa absolute
     * @param cutIn high-side pressure at which it may start again, Pa absolute, below {@code cutOut}
     * @param lowCutOut low-side pressure that stops it, Pa absolute
     * @param freezeLimit evaporator temperature that stops it, K
     * @param variable displacement: the freeze rule is off
     */
    public static CompressorLimits of(
            double cutOut, double cutIn, double lowCutOut, double freezeLimit, boolean variable) {
        if (!(cutIn < cutOut)) {
            throw new IllegalArgumentException(
                    "cut-in is " + cutIn + " Pa, must lie below the cut-out of " + cutOut + " Pa");
        }
        CompressorLimits standard = standard();
        int low = Inputs.whole(lowCutOut / 1000);
        int freeze = Inputs.tenths(freezeLimit);
        return new CompressorLimits(
                standard.timeOut,
                standard.engine,
                new Freeze(!variable, new Below(freeze, freeze + FREEZE_HYSTERESIS)),
                new Above(Inputs.whole(cutOut / 1000), Inputs.whole(cutIn / 1000)),
                new Suction(new Below(low, low + SUCTION_HYSTERESIS), standard.suction.blanking),
                standard.throttle,
                standard.coolant,
                standard.clutch);
    }
}
