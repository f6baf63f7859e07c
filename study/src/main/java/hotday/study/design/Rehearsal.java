package hotday.study.design;

import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Case.Phase;
import hotday.vehicle.cases.Hardware;
import hotday.vehicle.cases.Limit;
import hotday.vehicle.cases.Trial;
import hotday.vehicle.controller.Source;
import hotday.vehicle.controller.Witness;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;
import hotday.vehicle.spec.VehicleSpec;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;

/**
 * One case run through with the schedule of a vehicle, controllers and sensors as they are. A steady case goes on until nothing moves any
 * more or enough cycles have gone by; a moving one is run through once. One a thread.
 */
final class Rehearsal {
    private static final double STRIDE = Trial.STRIDE;
    /** s given to a steady case before it is looked at. */
    private static final double SETTLING = 60.0;
    /** s of stillness that are looked at. */
    private static final double STILL = 60.0;
    /** s after which a steady case is taken as it is. */
    private static final double LONGEST = 1200.0;

    private static final int ENOUGH_CYCLES = 3;
    private static final int LOOK = (int) Math.round(30.0 / STRIDE);
    /** Fan share and tenths of a kelvin that a rest may drift in {@link #STILL}. */
    private static final double DRIFT = 0.002;

    private final Trial trial;
    private final Run run;
    private final Case kase;
    private final double ambient;
    private final double[] sums = new double[Sum.COUNT];
    private final double[][] history;
    private final Cycles cycles;
    private Wanted.Count wanted = new Wanted.Count();
    private Source decided = Source.NONE;

    /** What is summed up over time. */
    private static final class Sum {
        static final int FAN_POWER = 0;
        static final int COMPRESSOR = 1;
        static final int LOUDNESS = 2;
        static final int STARTS = 3;
        static final int CLUTCH = 4;
        static final int COOLANT = 5;
        static final int FAN = 6;
        static final int BATTERY = 7;
        static final int TURNS = 8;
        static final int COUNT = 9;
    }

    Rehearsal(VehicleSpec spec, Plant plant, Case kase, double ambient, Hardware hardware) {
        this.trial = new Trial(spec, plant, kase, hardware);
        this.run = trial.run();
        this.kase = kase;
        this.ambient = ambient;
        double longest = kase.steady()
                ? LONGEST
                : kase.phases().stream()
                        .mapToDouble(Phase::duration)
                        .filter(Double::isFinite)
                        .sum();
        this.cycles = new Cycles(STRIDE, longest + STRIDE);
        this.history = new double[(int) Math.ceil(longest / STRIDE) + 2][];
    }

    /** From where the schedule brings the case to rest, if it does. */
    Passage passage() {
        trial.begin(ambient);
        return passed();
    }

    /** From a rest at some fan speed, with somebody who looks on. */
    Passage passage(double[] rest, Witness witness) {
        trial.watchedBy(witness);
        trial.begin(ambient, rest);
        return passed();
    }

    private Passage passed() {
        cycles.clear();
        wanted = new Wanted.Count();
        decided = Source.NONE;
        run.restart();
        history[0] = new double[Sum.COUNT];
        Arrays.fill(sums, 0.0);
        int from = kase.steady() ? steady() : moving();
        return result(from);
    }

    private int steady() {
        int from = (int) Math.round(SETTLING / STRIDE);
        int still = (int) Math.round(STILL / STRIDE);
        int most = (int) Math.round(LONGEST / STRIDE);
        for (int i = 1; i <= most; i++) {
            stride(kase.first(), 0.0);
            boolean look = i % LOOK == 0 && i >= from + still;
            if (look && cycles.find(from) >= ENOUGH_CYCLES) {
                return from;
            }
            if (look && cycles.fanSwing(i - still) < Cycles.STILL && cycles.drift(i - still) < DRIFT) {
                return i - still;
            }
        }
        cycles.find(from);
        return from;
    }

    private int moving() {
        for (Phase phase : kase.phases()) {
            for (double elapsed = 0.0; !phase.endless() && elapsed < phase.duration(); elapsed += STRIDE) {
                stride(phase, elapsed);
            }
        }
        return 0;
    }

    private void stride(Phase phase, double elapsed) {
        boolean turning = run.get(Input.FAN_DEMAND) > 0.0;
        boolean engaged = run.get(Input.COMPRESSOR) > 0.5;
        trial.stride(phase, elapsed);
        double fan = run.get(State.FAN);
        sums[Sum.FAN_POWER] += run.get(Output.FAN_CURRENT) * run.get(Output.BUS);
        sums[Sum.COMPRESSOR] += run.get(Output.COMPRESSOR_POWER);
        sums[Sum.LOUDNESS] += fan * Math.sqrt(fan);
        sums[Sum.STARTS] += !turning && run.get(Input.FAN_DEMAND) > 0.0 ? 1 : 0;
        boolean comesIn = !engaged && run.get(Input.COMPRESSOR) > 0.5;
        sums[Sum.CLUTCH] += comesIn ? 1 : 0;
        wanted.add(phase, trial.hold(), comesIn);
        sums[Sum.COOLANT] += run.get(State.JACKET);
        sums[Sum.FAN] += fan;
        sums[Sum.BATTERY] += run.get(Output.BATTERY_CURRENT);
        sums[Sum.TURNS] += turned(trial.source()) ? 1 : 0;
        cycles.add(fan, run.get(State.JACKET));
        history[cycles.size()] = sums.clone();
    }

    /** Whether coolant and air conditioning have taken turns in deciding. */
    private boolean turned(Source now) {
        if (now != Source.COOLANT && now != Source.AIR_CONDITIONING) {
            return false;
        }
        boolean turned = decided != Source.NONE && decided != now;
        decided = now;
        return turned;
    }

    private Passage result(int from) {
        int first = cycles.first(from);
        int end = cycles.end();
        double n = Math.max(1, end - first);
        double[] mean = new double[Sum.COUNT];
        for (int i = 0; i < mean.length; i++) {
            mean[i] = (history[end][i] - history[first][i]) / n;
        }
        Map<Limit, Double> rooms = new EnumMap<>(Limit.class);
        for (Limit limit : Limit.values()) {
            if (trial.judges(limit)) {
                rooms.put(limit, trial.headroom(limit));
            }
        }
        double hour = 3600.0 / STRIDE;
        return new Passage(
                kase,
                ambient,
                rooms,
                n * STRIDE,
                mean[Sum.FAN_POWER],
                mean[Sum.COMPRESSOR],
                mean[Sum.LOUDNESS],
                mean[Sum.STARTS] * hour,
                mean[Sum.CLUTCH] * hour,
                mean[Sum.COOLANT],
                cycles.amplitude(),
                cycles.period(),
                mean[Sum.FAN],
                cycles.fanSwing(from),
                mean[Sum.BATTERY],
                mean[Sum.TURNS] * hour,
                wanted.sum());
    }
}
