package hotday.study.prove;

import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * When air was held back in front during a run: the run is simulated window by window both ways from the best histories so far (beam search), each change costs; only a
 * great gain over never counts.
 */
final class HeldAirSearch {
    private static final double WINDOW = 20.0; // s
    /** Of a window's mean residual, K: gauge and model where nothing is hidden. */
    private static final double SIGMA = 1.0;

    private static final double CHANGE = 3.0; // in log likelihood
    private static final double LEAST_GAIN = 20.0; // likewise
    private static final int KEPT = 12; // histories that end each way

    private final FittedVehicle vehicle;
    private final Plant plant;
    private final RunData run;
    private final Branch branch;
    private final Run sim;
    private final int rows;

    private HeldAirSearch(FittedVehicle vehicle, RunData run) {
        this.vehicle = vehicle;
        this.run = run;
        this.plant = run.asItWas(vehicle.unknowns().plant(vehicle.z()));
        this.branch = Branches.plain(run, vehicle.unknowns().heaterByHabit());
        this.sim = new Run(plant);
        this.rows = Math.max(1, (int) Math.round(WINDOW / run.step()));
    }

    /** One way the air may have been up to now. */
    private record History(double[] state, double cost, History before, boolean held) {}

    /** The runs with the spells that were found in their inputs. */
    static List<RunData> in(FittedVehicle vehicle, List<RunData> runs) {
        return runs.stream()
                .parallel()
                .map(r -> new HeldAirSearch(vehicle, r.withFrontHeld(new boolean[r.size()])).search())
                .toList();
    }

    private RunData search() {
        if (run.schedule().isPresent() || run.fuelWorkedOut()) {
            return run; // too much else is open
        }
        History never = follow(false);
        History best = follow(true);
        if (never.cost() - best.cost() < LEAST_GAIN) {
            return run;
        }
        boolean[] held = new boolean[run.size()];
        int windows = (run.size() + rows - 1) / rows;
        History at = best;
        for (int w = windows - 1; w >= 0; w--) {
            java.util.Arrays.fill(held, w * rows, Math.min(run.size(), (w + 1) * rows), at.held());
            at = at.before();
        }
        return run.withFrontHeld(held);
    }

    private History follow(boolean free) {
        Simulation.start(sim, vehicle.unknowns(), vehicle.z(), run);
        double[] state = new double[State.COUNT];
        sim.state(state);
        List<History> beam = List.of(new History(state, 0.0, null, false));
        for (int from = 0; from < run.size(); from += rows) {
            vehicle.unknowns().endWhenCancelled();
            List<History> open = new ArrayList<>();
            List<History> held = new ArrayList<>();
            for (History h : beam) {
                open.add(further(h, from, false));
                if (free) {
                    held.add(further(h, from, true));
                }
            }
            beam = new ArrayList<>();
            beam.addAll(best(open));
            beam.addAll(best(held));
        }
        return best(beam).get(0);
    }

    private static List<History> best(List<History> all) {
        return all.stream()
                .sorted(Comparator.comparingDouble(History::cost))
                .limit(KEPT)
                .toList();
    }

    private History further(History h, int from, boolean held) {
        sim.start(h.state(), run.time()[from] - run.step());
        double squares = 0.0;
        int samples = 0;
        int to = Math.min(run.size(), from + rows);
        for (int i = from; i < to; i++) {
            sim.setInputs(run.inputs(), i * Input.COUNT);
            branch.apply(sim);
            sim.set(Input.FRONT_HELD, held ? HeldAir.SHARE : 0.0);
            sim.step(run.step());
            double miss = sim.coolantReading() - run.coolant()[i];
            if (!Double.isNaN(miss) && run.time()[i] >= run.scoredFrom()) {
                squares += miss * miss;
                samples++;
            }
        }
        double[] state = new double[State.COUNT];
        sim.state(state);
        double cost = h.cost()
                + (samples == 0 ? 0.0 : squares / samples / (2.0 * SIGMA * SIGMA))
                + (held != h.held() ? CHANGE : 0.0);
        return new History(state, cost, h, held);
    }
}
