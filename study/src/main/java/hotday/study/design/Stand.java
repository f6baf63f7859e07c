package hotday.study.design;

import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Hardware;
import hotday.vehicle.controller.Schedule;
import hotday.vehicle.controller.Tape;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedDeque;

/**
 * One piece of the day on one vehicle, to be run through with one schedule after another. A schedule that would have answered in every tick as
 * an earlier one did gets what that got, which is the same to the last digit and takes no time. Any number of threads.
 */
final class Stand {
    /** Runs that are remembered. */
    private static final int REMEMBERED = 12;
    /** Share of full speed by which a run and the balance of its case may differ: about a step of a sensor. */
    private static final double ALIKE = 0.05;
    /** K by which their coolant may; more where the compressor is cut out. */
    private static final double ALIKE_COOLANT = 2.0;

    private final VehicleSpec spec;
    private final Plant plant;
    private final DayPart part;
    private final Hardware hardware;
    private final Rests rests;
    private final ConcurrentLinkedDeque<Seen> remembered = new ConcurrentLinkedDeque<>();

    private record Seen(double[] from, Tape tape, Passage passage) {}

    Stand(VehicleSpec spec, Plant plant, DayPart part, Hardware hardware) {
        this(spec, plant, part, hardware, new Rests(spec, plant, part));
    }

    private Stand(VehicleSpec spec, Plant plant, DayPart part, Hardware hardware, Rests rests) {
        this.spec = spec;
        this.plant = plant;
        this.part = part;
        this.hardware = hardware;
        this.rests = rests;
    }

    /** The same with other sensors and drives. */
    Stand with(Hardware other) {
        return new Stand(spec, plant, part, other, rests);
    }

    /** Where fan and vehicle balance in a steady case; empty where they do not, or the case moves. Quick. */
    Optional<Calm> calm(Schedule schedule) {
        return part.kase().steady() && hardware.direct() ? rests.balance(schedule) : Optional.empty();
    }

    /**
     * What a schedule does here. Where the fan stays near the speed at which it balances, means are those of the balance; the run tells what
     * swings and how near limits come.
     */
    Passage passage(FanSchedule schedule) {
        Schedule whole = Schedule.of(schedule);
        Optional<Calm> calm = calm(whole);
        Passage run = run(schedule, whole, calm);
        return calm.filter(c -> alike(c, run)).map(run::with).orElse(run);
    }

    /** Runs that it knows. */
    int remembered() {
        return remembered.size();
    }

    private static boolean alike(Calm calm, Passage run) {
        return run.fanSwing() < Hunting.SWING
                && Math.abs(run.fan() - calm.fan()) < ALIKE
                && Math.abs(run.coolant() - calm.coolant()) < ALIKE_COOLANT;
    }

    private Passage run(FanSchedule schedule, Schedule whole, Optional<Calm> calm) {
        Optional<double[]> near = part.kase().start() == Case.Start.SETTLED
                ? rests.near(calm.map(Calm::asked).orElseGet(() -> rests.begin(whole)))
                : Optional.empty();
        if (near.isEmpty()) {
            return new Rehearsal(spec.with(schedule), plant.with(schedule), part.kase(), part.ambient(), hardware)
                    .passage();
        }
        double[] from = near.get();
        for (Seen seen : remembered) {
            if (seen.from == from && seen.tape.agrees(whole)) {
                return seen.passage;
            }
        }
        Tape tape = new Tape();
        Passage passage =
                new Rehearsal(spec.with(schedule), plant, part.kase(), part.ambient(), hardware).passage(from, tape);
        remembered.addFirst(new Seen(from, tape.trimmed(), passage));
        if (remembered.size() > REMEMBERED) {
            remembered.pollLast();
        }
        return passage;
    }
}
