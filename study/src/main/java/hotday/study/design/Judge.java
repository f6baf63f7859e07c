package hotday.study.design;

import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Hardware;
import hotday.vehicle.cases.Limit;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** Says what a schedule costs and whether it holds what a fan at full speed holds. Immutable; any number of threads may ask. */
final class Judge {
    private final VehicleSpec spec;
    private final Hardware hardware;
    private final Aim aim;
    private final List<Demanded> parts;

    /**
     * A piece of the day, or one that only must hold.
     *
     * @param plant the vehicle, or one that it may turn out to be
     * @param must limits that a fan at full speed keeps there
     */
    record Demanded(DayPart part, Plant plant, List<Limit> must) {}

    /**
     * @param violation how far limits gave way that need not, in kelvins of outside temperature about, and how much it hunts; 0 when all is well
     * @param cost W of fan power, mean of the day; what was added up so far when judging was broken off
     */
    record Verdict(double violation, double cost) implements Comparable<Verdict> {
        @Override
        public int compareTo(Verdict other) {
            int byViolation = Double.compare(violation, other.violation);
            return byViolation != 0 ? byViolation : Double.compare(cost, other.cost);
        }

        boolean holds() {
            return violation == 0.0;
        }
    }

    private Judge(VehicleSpec spec, Hardware hardware, Aim aim, List<Demanded> parts) {
        this.spec = spec;
        this.hardware = hardware;
        this.aim = aim;
        this.parts = List.copyOf(parts);
    }

    /** @param parts of the day, and such with a share of 0 that only must hold */
    static Judge of(VehicleSpec spec, Plant plant, Hardware hardware, Aim aim, List<DayPart> parts) {
        List<Demanded> demanded = parts.stream()
                .parallel()
                .map(p -> demanded(spec, plant, hardware, p))
                .toList();
        return new Judge(spec, hardware, aim, demanded);
    }

    /** The same with other sensors and drives; what must hold stays. */
    Judge with(Hardware other) {
        return new Judge(spec, other, aim, parts);
    }

    /** The same by another aim. */
    Judge with(Aim other) {
        return new Judge(spec, hardware, other, parts);
    }

    /** The same with more that must hold. */
    Judge with(List<Demanded> more) {
        List<Demanded> all = new ArrayList<>(parts);
        all.addAll(more);
        return new Judge(spec, hardware, aim, all);
    }

    static Demanded demanded(VehicleSpec spec, Plant plant, Hardware hardware, DayPart part) {
        return new Demanded(part, plant, kept(passage(spec, plant, Schedules.full(), part, hardware)));
    }

    private static List<Limit> kept(Passage full) {
        return full.headroom().entrySet().stream()
                .filter(e -> e.getValue() >= 0.0)
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
    }

    List<Demanded> parts() {
        return parts;
    }

    private static Passage passage(
            VehicleSpec spec, Plant plant, FanSchedule schedule, DayPart part, Hardware hardware) {
        return new Rehearsal(spec.with(schedule), plant.with(schedule), part.kase(), part.ambient(), hardware)
                .passage();
    }

    Passage passage(FanSchedule schedule, Demanded demanded) {
        return passage(spec, demanded.plant(), schedule, demanded.part(), hardware);
    }

    /** All pieces of the day. */
    List<Passage> passages(FanSchedule schedule) {
        return parts.stream().parallel().map(d -> passage(schedule, d)).toList();
    }

    Verdict verdict(FanSchedule schedule) {
        return verdict(schedule, new Verdict(Double.MAX_VALUE, Double.MAX_VALUE));
    }

    /** Broken off as soon as it is certain not to be better than another. */
    Verdict verdict(FanSchedule schedule, Verdict best) {
        double violation = 0.0;
        double cost = 0.0;
        for (Demanded d : parts) {
            Passage p = passage(schedule, d);
            violation += violation(p, d.must()) + Hunting.excess(p);
            cost += d.part().share() * aim.cost(p);
            Verdict soFar = new Verdict(violation, cost);
            if (soFar.compareTo(best) > 0) {
                return soFar;
            }
        }
        return new Verdict(violation, cost);
    }

    /** The same from passages that are there. */
    Verdict verdict(List<Passage> passages) {
        double violation = 0.0;
        double cost = 0.0;
        for (int i = 0; i < passages.size(); i++) {
            violation += violation(passages.get(i), parts.get(i).must()) + Hunting.excess(passages.get(i));
            cost += parts.get(i).part().share() * aim.cost(passages.get(i));
        }
        return new Verdict(violation, cost);
    }

    static double violation(Passage p, List<Limit> must) {
        double all = 0.0;
        for (Limit limit : must) {
            all += Math.max(0.0, -p.headroom().get(limit) / limit.perKelvin());
        }
        return all;
    }

    /** Cost of an hour of one piece, W. */
    double cost(Passage passage) {
        return aim.cost(passage);
    }

    /** Mean of something over the day. */
    double mean(List<Passage> passages, ToDoubleFunction<Passage> what) {
        double sum = 0.0;
        for (int i = 0; i < passages.size(); i++) {
            sum += parts.get(i).part().share() * what.applyAsDouble(passages.get(i));
        }
        return sum;
    }

    /** The pieces that must hold only, with the day's in front of them. */
    static List<DayPart> withHolding(List<DayPart> day, List<Case> cases, double ambient) {
        List<DayPart> all = new ArrayList<>(day);
        for (Case kase : cases) {
            boolean there = day.stream().anyMatch(p -> p.kase().id().equals(kase.id()) && p.ambient() == ambient);
            if (!there && !kase.forCold()) {
                all.add(new DayPart(kase, ambient, 0.0));
            }
        }
        return all;
    }
}
