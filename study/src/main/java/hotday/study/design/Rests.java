package hotday.study.design;

import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Hardware;
import hotday.vehicle.cases.Trial;
import hotday.vehicle.controller.Schedule;
import hotday.vehicle.controller.Tape;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.State;
import hotday.vehicle.spec.VehicleSpec;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * Rests of one case with the fan held at some speeds, found when first asked for: where runs with a schedule begin, and between which fan and
 * vehicle balance. Any number of threads.
 */
final class Rests {
    private static final int STEPS = 40;
    private static final double STEP = 1.0 / STEPS;
    private static final int HALVINGS = 12;
    /** Fan share by which wish and speed may differ for a balance; more is a jump of the schedule. */
    private static final double BALANCED = 0.01;

    private final VehicleSpec spec;
    private final Plant plant;
    private final DayPart part;
    private final AtomicReferenceArray<Rest> rests = new AtomicReferenceArray<>(STEPS + 1);

    /** What a fan controller reads at a rest from power-up until it has settled. */
    private final AtomicReferenceArray<Tape> seen = new AtomicReferenceArray<>(STEPS + 1);

    /** A rest with the fan held. */
    private record Rest(double[] state, Calm calm) {}

    /** Stands for a case that comes to no rest. */
    private static final Rest NONE = new Rest(new double[0], Calm.NONE);

    Rests(VehicleSpec spec, Plant plant, DayPart part) {
        this.spec = spec;
        this.plant = plant;
        this.part = part;
    }

    /** State of a rest with the fan at about a share of full speed; empty where there is none. */
    Optional<double[]> near(double fan) {
        Rest rest = at((int) Math.round(Math.min(1.0, Math.max(0.0, fan)) * STEPS));
        return rest == NONE ? Optional.empty() : Optional.of(rest.state());
    }

    /** The slowest fan at which the controller, just switched on, asks for no more than that. */
    double begin(Schedule schedule) {
        int low = 0;
        int enough = STEPS;
        while (low < enough) {
            int middle = (low + enough) / 2;
            Rest rest = at(middle);
            if (rest == NONE || seen(middle, rest).answer(schedule) * STEPS > middle + 0.5) {
                low = middle + 1;
            } else {
                enough = middle;
            }
        }
        return enough * STEP;
    }

    /**
     * Where fan and vehicle balance, with sensors that miss nothing: at rest if nothing starts the fan there, else where a running fan turns as
     * fast as the schedule wants it. Empty where there is no such speed, and the fan comes and goes.
     */
    Optional<Calm> balance(Schedule schedule) {
        Rest still = at(0);
        if (still != NONE
                && Wish.of(schedule, still.calm(), false) < schedule.switching().on()) {
            return Optional.of(still.calm());
        }
        int least = Math.max(0, schedule.switching().least() * STEPS / 10_000);
        int low = least;
        int enough = STEPS;
        while (low < enough) {
            int middle = (low + enough) / 2;
            Rest rest = at(middle);
            if (rest == NONE || Wish.running(schedule, rest.calm()) > middle * STEP) {
                low = middle + 1;
            } else {
                enough = middle;
            }
        }
        Rest above = at(enough);
        if (above == NONE) {
            return Optional.empty();
        }
        Rest below = enough == 0 ? NONE : at(enough - 1);
        return below == NONE ? balanced(schedule, above.calm()) : between(schedule, below.calm(), above.calm());
    }

    private static Optional<Calm> between(Schedule schedule, Calm below, Calm above) {
        double low = 0.0;
        double high = 1.0;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            Calm calm = Calm.between(below, above, middle);
            if (Wish.running(schedule, calm) > calm.asked()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return balanced(schedule, Calm.between(below, above, high));
    }

    private static Optional<Calm> balanced(Schedule schedule, Calm calm) {
        boolean goesOn = Wish.of(schedule, calm, true) >= schedule.switching().off();
        boolean fits = Math.abs(Wish.running(schedule, calm) - calm.asked()) < BALANCED || calm.asked() >= 1.0;
        return goesOn && fits ? Optional.of(calm) : Optional.empty();
    }

    private Rest at(int step) {
        Rest known = rests.get(step);
        if (known == null) {
            rests.compareAndSet(step, null, found(step * STEP));
            known = rests.get(step);
        }
        return known;
    }

    private Rest found(double fan) {
        Case kase = part.kase();
        Trial trial = new Trial(spec, plant, kase, Hardware.USUAL);
        double[] state = new double[State.COUNT];
        trial.settle(part.ambient(), fan);
        if (!trial.rest(state)) {
            return NONE;
        }
        return new Rest(state, Calm.of(trial, kase, fan));
    }

    private Tape seen(int step, Rest rest) {
        Tape known = seen.get(step);
        if (known == null) {
            Tape fresh = new Tape();
            Trial trial = new Trial(spec, plant, part.kase(), Hardware.USUAL);
            trial.watchedBy(fresh);
            trial.begin(part.ambient(), rest.state());
            seen.compareAndSet(step, null, fresh.trimmed());
            known = seen.get(step);
        }
        return known;
    }
}
