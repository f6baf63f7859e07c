package hotday.vehicle.cases;

import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A case for the cold, run through once at its own outside temperature: does the engine get warm, does it stay warm, what comes
 * into the cabin.
 *
 * @param kase a case with an ambient of its own
 * @param reached when coolant first passed 40, 60 and 80 degC
 * @param coolant at the end, K
 * @param coldest coolant after it had first been warm, K; NaN where it never was
 * @param cabin air at the end, K
 * @param warm coolant that counts as warm, K: {@value #SHORT_OF_OPENING} K below where the thermostat opens
 */
public record WarmUp(Case kase, List<Reached> reached, double coolant, double coldest, double cabin, double warm) {
    /** K */
    public static final double SHORT_OF_OPENING = 8.0;

    private static final double[] MARKS = {313.15, 333.15, 353.15};
    private static final double FALL = 5.0; // K below warm before it counts as cooled out again

    /** How it came out. */
    public enum Verdict {
        WARM,
        /** It got warm and cooled out again in the same half hour: the thermostat leaks, or heater and air take more than the engine gives. */
        COOLS_OUT,
        STAYS_COLD
    }

    /**
     * @param mark coolant, K
     * @param time s from the start; empty: not within the case
     */
    public record Reached(double mark, OptionalDouble time) {}

    public WarmUp {
        reached = List.copyOf(reached);
    }

    public Verdict verdict() {
        if (Double.isNaN(coldest)) {
            return Verdict.STAYS_COLD;
        }
        return coldest < warm - FALL ? Verdict.COOLS_OUT : Verdict.WARM;
    }

    /** K */
    public double ambient() {
        return kase.day().ambient().orElseThrow();
    }

    /** Runs a case that has an ambient of its own. */
    public static WarmUp of(VehicleSpec spec, Plant plant, Case kase) {
        return new Watch(spec, plant, kase).run();
    }

    /** The course, and what is seen on the way. */
    private static final class Watch {
        final Trial trial;
        final Case kase;
        final double warm;
        final double[] times = {Double.NaN, Double.NaN, Double.NaN};
        double now;
        double coldest = Double.NaN;

        Watch(VehicleSpec spec, Plant plant, Case kase) {
            this.trial = new Trial(spec, plant, kase);
            this.kase = kase;
            this.warm = spec.thermostat().opens() - SHORT_OF_OPENING;
        }

        WarmUp run() {
            trial.begin(kase.day().ambient().orElseThrow());
            kase.phases().forEach(this::live);
            Run run = trial.run();
            List<Reached> reached = new ArrayList<>();
            for (int i = 0; i < MARKS.length; i++) {
                reached.add(new Reached(
                        MARKS[i], Double.isNaN(times[i]) ? OptionalDouble.empty() : OptionalDouble.of(times[i])));
            }
            return new WarmUp(kase, reached, run.get(State.JACKET), coldest, run.get(State.CABIN), warm);
        }

        private void live(Case.Phase phase) {
            trial.run().restart();
            for (double elapsed = 0.0; elapsed < phase.duration(); elapsed += Controls.TICK) {
                trial.tick(phase, elapsed);
                now += Controls.TICK;
                look(trial.run().get(State.JACKET));
            }
        }

        private void look(double coolant) {
            for (int i = 0; i < MARKS.length; i++) {
                if (Double.isNaN(times[i]) && coolant >= MARKS[i]) {
                    times[i] = now;
                }
            }
            if (coolant >= warm || !Double.isNaN(coldest)) {
                coldest = Double.isNaN(coldest) ? coolant : Math.min(coldest, coolant);
            }
        }
    }
}
