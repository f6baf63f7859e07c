package hotday.study.design;

import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Hardware;
import hotday.vehicle.cases.Limit;
import hotday.vehicle.controller.Schedule;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** Says what a schedule costs and whether it holds what a fan at full speed holds. Immutable; any number of threads may ask. */
final class Judge {
    private static final int TURNS = 5;
    private static final double NEAR = 0.93;

    private final Aim aim;
    private final List<Demanded> parts;
    /** What a piece that moves is taken to cost until it is run through. */
    private final double[] expected;
    /** Of all days, K. */
    private final double hottest;

    /**
     * A piece of the day, or one that only must hold.
     *
     * @param stand with the vehicle, or one that it may turn out to be
     * @param kept by a fan at full speed
     */
    record Demanded(DayPart part, Stand stand, Kept kept) {
        List<Limit> must() {
            return kept.limits();
        }

        /** The same with other sensors and drives; what must hold stays. */
        Demanded with(Hardware other) {
            return new Demanded(part, stand.with(other), kept);
        }
    }

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
    }

    private Judge(Aim aim, List<Demanded> parts, double[] expected) {
        this.aim = aim;
        this.parts = List.copyOf(parts);
        this.expected = expected;
        this.hottest = parts.stream().mapToDouble(d -> d.part().ambient()).max().orElse(0.0);
    }

    Judge(Aim aim, List<Demanded> parts) {
        this(aim, parts, new double[parts.size()]);
    }

    /** The same, which breaks off sooner: no schedule makes a piece that moves cheaper than a share of what this one makes of it. */
    Judge near(FanSchedule schedule) {
        double[] about = new double[parts.size()];
        for (int i = 0; i < about.length; i++) {
            Demanded d = parts.get(i);
            if (!d.part().kase().steady() && d.part().share() > 0.0) {
                about[i] = NEAR * d.part().share() * aim.cost(passage(schedule, d));
            }
        }
        return new Judge(aim, parts, about);
    }

    /** @param parts of the day, and such with a share of 0 that only must hold */
    static Judge of(VehicleSpec spec, Plant plant, Hardware hardware, Aim aim, List<DayPart> parts) {
        List<Demanded> demanded = parts.stream()
                .parallel()
                .map(p -> demanded(spec, plant, hardware, p))
                .toList();
        return new Judge(aim, demanded);
    }

    /** The same with other sensors and drives; what must hold stays. */
    Judge with(Hardware other) {
        return new Judge(aim, parts.stream().map(d -> d.with(other)).toList());
    }

    /** The same by another aim. */
    Judge with(Aim other) {
        return new Judge(other, parts);
    }

    /** The same with more that must hold. */
    Judge with(List<Demanded> more) {
        List<Demanded> all = new ArrayList<>(parts);
        all.addAll(more);
        return new Judge(aim, all, Arrays.copyOf(expected, all.size()));
    }

    /** The same without cases that stop the engine: what is then is a matter of the after-run. */
    Judge driving() {
        return only(d -> d.part().kase().phases().stream().noneMatch(p -> p.engine() == Case.Engine.OFF));
    }

    /** Only what counts in means of the day. */
    Judge day() {
        return only(d -> d.part().share() > 0.0);
    }

    private Judge only(Predicate<Demanded> which) {
        return new Judge(aim, parts.stream().filter(which).toList());
    }

    static Demanded demanded(VehicleSpec spec, Plant plant, Hardware hardware, DayPart part) {
        return demanded(spec, plant, hardware, part, 0.0);
    }

    /** @param spare K of outside temperature about that a fan at full speed must have left */
    static Demanded demanded(VehicleSpec spec, Plant plant, Hardware hardware, DayPart part, double spare) {
        Stand stand = new Stand(spec, plant, part, hardware);
        return new Demanded(part, stand, new Kept(() -> stand.passage(Schedules.full()), spare));
    }

    List<Demanded> parts() {
        return parts;
    }

    Passage passage(FanSchedule schedule, Demanded demanded) {
        return demanded.stand().passage(schedule);
    }

    /** All pieces of the day. */
    List<Passage> passages(FanSchedule schedule) {
        return SideBySide.map(parts, d -> passage(schedule, d));
    }

    Verdict verdict(FanSchedule schedule) {
        return verdict(schedule, new Verdict(Double.MAX_VALUE, Double.MAX_VALUE));
    }

    /** Broken off as soon as it is certain, or as good as certain, not to be better than another. */
    Verdict verdict(FanSchedule schedule, Verdict best) {
        return verdict(schedule, so -> so.compareTo(best) > 0);
    }

    /**
     * Broken off as soon as what was added up is enough: first balances are looked at, which is quick, then what
     * tells most for its time is run through.
     */
    Verdict verdict(FanSchedule schedule, Predicate<Verdict> enough) {
        Schedule whole = Schedule.of(schedule);
        Tally tally = new Tally(expected);
        boolean[] calm = new boolean[parts.size()];
        for (int i = 0; i < calm.length; i++) {
            Optional<Calm> rest = parts.get(i).stand().calm(whole);
            calm[i] = rest.isPresent();
            if (calm[i]) {
                note(tally, i, rest.get());
            }
        }
        for (int turn = 0; turn < TURNS; turn++) {
            for (int i = 0; i < calm.length; i++) {
                if (enough.test(tally.verdict())) {
                    return tally.verdict();
                }
                if (turn(parts.get(i).part(), calm[i]) == turn) {
                    note(tally, i, passage(schedule, parts.get(i)));
                }
            }
        }
        return tally.verdict();
    }

    /**
     * When a piece is run through: first what balances and tells whether limits hold, which is quick, then a fan that comes and goes, then what is
     * left that balances, then what moves and counts, at last what moves and must only hold.
     */
    private int turn(DayPart part, boolean calm) {
        if (!part.kase().steady()) {
            return part.share() > 0.0 ? 3 : 4;
        }
        boolean telling = part.share() == 0.0 || part.ambient() >= hottest;
        return !calm ? 1 : telling ? 0 : 2;
    }

    /** A balance costs what it costs; whether it holds is for the run to say, where the compressor may be cut out. */
    private void note(Tally tally, int i, Calm calm) {
        Demanded d = parts.get(i);
        double cost = d.part().share() * aim.cost(d.part().kase(), calm);
        tally.note(i, 0.0, cost);
    }

    private void note(Tally tally, int i, Passage p) {
        Demanded d = parts.get(i);
        double violation = d.kept().violation(p.headroom()) + Hunting.excess(p);
        tally.note(i, violation, d.part().share() * aim.cost(p));
    }

    /** What was added up so far; the last that is noted about a piece counts. */
    private static final class Tally {
        private final double[] violation;
        private final double[] cost;

        Tally(double[] expected) {
            violation = new double[expected.length];
            cost = expected.clone();
        }

        void note(int part, double itsViolation, double itsCost) {
            violation[part] = itsViolation;
            cost[part] = itsCost;
        }

        Verdict verdict() {
            return new Verdict(
                    Arrays.stream(violation).sum(), Arrays.stream(cost).sum());
        }
    }

    /** The same from passages that are there. */
    Verdict verdict(List<Passage> passages) {
        Tally tally = new Tally(expected);
        for (int i = 0; i < passages.size(); i++) {
            note(tally, i, passages.get(i));
        }
        return tally.verdict();
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
            boolean there = day.stream().anyMatch(p -> p.kase().equals(kase) && p.ambient() == ambient);
            if (!there && !kase.forCold()) {
                all.add(new DayPart(kase, ambient, 0.0));
            }
        }
        return all;
    }
}
