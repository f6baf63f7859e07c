package hotday.study.design;

import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Case.Phase;
import hotday.vehicle.cases.Hardware;
import hotday.vehicle.cases.Limit;
import hotday.vehicle.cases.Trial;
import hotday.vehicle.controller.Source;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;

/**
 * What happens after key-off in a case.
 *
 * @param rooms of each judged limit at its worst, SI; below 0 it gave way
 * @param charge the battery gives while the engine is off, A s
 * @param seconds of after-run
 * @param voltage lowest of the battery meanwhile, V
 * @param rise of the coolant over what it was at key-off, K
 * @param highest coolant that no judged limit minds, K; infinite where none is judged
 */
record Soak(
        Case kase,
        Map<Limit, Double> rooms,
        double charge,
        double seconds,
        double voltage,
        double rise,
        double highest) {

    static boolean has(Case kase) {
        return kase.phases().stream().anyMatch(p -> p.engine() == Case.Engine.OFF);
    }

    static Soak of(VehicleSpec spec, Plant plant, FanSchedule schedule, Case kase, Hardware hardware) {
        Trial trial = new Trial(spec.with(schedule), plant.with(schedule), kase, hardware);
        trial.begin(spec.designAmbient());
        Watched seen = new Watched(trial.run());
        trial.run().restart();
        for (Phase phase : kase.phases()) {
            for (double t = 0.0; !phase.endless() && t < phase.duration(); t += Trial.STRIDE) {
                seen.before();
                trial.stride(phase, t);
                seen.after(phase, trial.source());
            }
        }
        Map<Limit, Double> rooms = new EnumMap<>(Limit.class);
        Arrays.stream(Limit.values()).filter(trial::judges).forEach(l -> rooms.put(l, trial.headroom(l)));
        double highest = Arrays.stream(new Limit[] {Limit.COOLANT, Limit.BOILING})
                .filter(trial::judges)
                .mapToDouble(trial::limit)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        return new Soak(kase, rooms, seen.charge, seen.seconds, seen.voltage, seen.rise, highest);
    }

    /** The judged limit that is nearest to giving way. */
    Limit tightest() {
        return rooms.keySet().stream()
                .min(Comparator.comparingDouble(this::room))
                .orElse(Limit.BOILING);
    }

    /** To that limit, K of outside temperature about; infinite where nothing is judged. */
    double room() {
        return rooms.isEmpty() ? Double.POSITIVE_INFINITY : room(tightest());
    }

    private double room(Limit limit) {
        return rooms.get(limit) / limit.perKelvin();
    }

    /** Whether it holds what another does. */
    boolean holdsWhat(Soak other) {
        return rooms.entrySet().stream().allMatch(e -> e.getValue() >= 0.0 || other.rooms.get(e.getKey()) < 0.0);
    }

    /** Sums over the time with the engine off. */
    private static final class Watched {
        private final Run run;
        private double drawn;
        private double atKeyOff = Double.NaN;
        private double charge;
        private double seconds;
        private double voltage = Double.POSITIVE_INFINITY;
        private double rise;

        Watched(Run run) {
            this.run = run;
        }

        void before() {
            drawn = run.get(State.CHARGE_DRAWN);
        }

        void after(Phase phase, Source source) {
            double coolant = run.get(State.JACKET);
            if (phase.engine() != Case.Engine.OFF) {
                atKeyOff = Double.NaN;
                return;
            }
            atKeyOff = Double.isNaN(atKeyOff) ? coolant : atKeyOff;
            charge += run.get(State.CHARGE_DRAWN) - drawn;
            seconds += source == Source.AFTER_RUN ? Trial.STRIDE : 0.0;
            voltage = Math.min(voltage, run.get(Output.BUS));
            rise = Math.max(rise, coolant - atKeyOff);
        }
    }
}
