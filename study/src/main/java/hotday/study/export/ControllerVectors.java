package hotday.study.export;

import hotday.vehicle.controller.CompressorInputs;
import hotday.vehicle.controller.CompressorLimits;
import hotday.vehicle.controller.CompressorRules;
import hotday.vehicle.controller.Controller;
import hotday.vehicle.controller.Inputs;
import hotday.vehicle.controller.Schedule;
import java.util.SplittableRandom;

/** Ticks of both controllers and what comes of them, line by line as the runner in C reads it. */
public final class ControllerVectors {
    /** Inputs wander: so many ticks pass, on average, until one of them jumps. */
    private static final int JUMPS = 40;

    private final Controller fan;
    private final CompressorRules compressor;
    private final boolean chargeAir;
    private final Inputs fanInputs = new Inputs();
    private final CompressorInputs compressorInputs = new CompressorInputs();
    private final StringBuilder lines = new StringBuilder();
    private long fanOn;
    private long engaged;

    /** From the state at power-up on. */
    public ControllerVectors(Schedule schedule, CompressorLimits limits) {
        this.fan = new Controller(schedule);
        this.chargeAir = schedule.hasChargeAir();
        this.compressor = new CompressorRules(limits);
    }

    /** A tick of the fan controller, in its own units; charge air stands in its line only where the schedule has a curve for it. */
    public void fan(boolean run, int coolant, int gearbox, int head, boolean ac, int speed, int battery, int charge) {
        fanInputs.set(run, coolant, gearbox, head, ac, speed, battery, charge);
        int output = fan.step(fanInputs);
        fanOn += fan.on() ? 1 : 0;
        line('f', bit(run), coolant, gearbox, head, bit(ac), speed, battery);
        if (chargeAir) {
            lines.append(' ').append(charge);
        }
        values(output, fan.want(), fan.source().ordinal(), bit(fan.on()), bit(fan.fault()));
    }

    /** A tick of the compressor's rules, in their own units. */
    public void compressor(
            boolean request,
            int age,
            boolean run,
            int speed,
            int evaporator,
            int head,
            int suction,
            int load,
            int coolant) {
        compressorInputs.set(request, age, run, speed, evaporator, head, suction, load, coolant);
        boolean closed = compressor.step(compressorInputs);
        engaged += closed ? 1 : 0;
        line('c', bit(request), age, bit(run), speed, evaporator, head, suction, load, coolant);
        values(bit(closed), bit(compressor.announced()), compressor.hold().ordinal());
    }

    private static int bit(boolean is) {
        return is ? 1 : 0;
    }

    private void line(char kind, int... inputs) {
        lines.append(kind);
        for (int value : inputs) {
            lines.append(' ').append(value);
        }
    }

    private void values(int... outputs) {
        for (int value : outputs) {
            lines.append(' ').append(value);
        }
        lines.append('\n');
    }

    /** Ticks of both controllers whose inputs wander and jump, beyond every limit and through every latch. */
    public void random(int ticks, long seed) {
        Wander at = new Wander(new SplittableRandom(seed));
        for (int i = 0; i < ticks; i++) {
            boolean run = at.flag(0, 200);
            int coolant = at.reading(1, 800, 1250);
            fan(
                    run,
                    coolant,
                    at.value(2, 800, 1250),
                    at.value(3, 0, 3500),
                    at.flag(4, 60),
                    at.value(5, -20, 1500),
                    at.value(6, 11_000, 14_500),
                    chargeAir ? at.value(14, 200, 1000) : 0);
            compressor(
                    at.flag(7, 120),
                    at.value(8, -1, 12),
                    run,
                    at.value(9, 300, 1200),
                    at.reading(10, -30, 150),
                    at.value(11, 500, 3500),
                    at.value(12, 120, 400),
                    at.value(13, 0, 10_000),
                    coolant);
        }
    }

    /** All lines so far. */
    public String text() {
        return lines.toString();
    }

    /** Ticks so far in which the fan was on. */
    public long fanOn() {
        return fanOn;
    }

    /** Ticks so far in which the clutch was closed. */
    public long engaged() {
        return engaged;
    }

    /** Inputs that move in small steps and jump now and then. */
    private static final class Wander {
        private static final int INPUTS = 15;
        private final SplittableRandom random;
        private final int[] now = new int[INPUTS];
        private final boolean[] begun = new boolean[INPUTS];

        Wander(SplittableRandom random) {
            this.random = random;
        }

        int value(int input, int low, int high) {
            int step = Math.max(1, (high - low) / 100);
            boolean jumps = !begun[input] || random.nextInt(JUMPS) == 0;
            begun[input] = true;
            now[input] = jumps
                    ? random.nextInt(low, high + 1)
                    : Math.max(low, Math.min(high, now[input] + random.nextInt(-step, step + 1)));
            return now[input];
        }

        /** One reading in thirty is invalid, and then some more. */
        int reading(int input, int low, int high) {
            int value = value(input, low, high);
            return value % 30 == 0 ? Inputs.INVALID : value;
        }

        /** Changes every so many ticks on average. */
        boolean flag(int input, int every) {
            if (!begun[input] || random.nextInt(every) == 0) {
                begun[input] = true;
                now[input] = 1 - now[input];
            }
            return now[input] == 1;
        }
    }
}
