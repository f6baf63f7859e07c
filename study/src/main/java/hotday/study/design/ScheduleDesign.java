package hotday.study.design;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.unit.Display;
import hotday.study.design.Judge.Demanded;
import hotday.study.design.Judge.Verdict;
import hotday.study.design.ScheduleReport.Doubt;
import hotday.study.design.ScheduleReport.KeyOff;
import hotday.study.design.ScheduleReport.Line;
import hotday.study.design.ScheduleReport.Plain;
import hotday.study.design.ScheduleReport.Reason;
import hotday.study.prove.KnownVehicle;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Hardware;
import hotday.vehicle.cases.Trial;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Designs a fan schedule for a vehicle, or judges one that somebody wrote. Methods may be called from any thread. */
public final class ScheduleDesign {
    /** Vehicles that the sheet leaves possible. */
    private static final int DRAWS = 40;
    /** Share of them that has to hold. */
    private static final double SURE = 0.95;
    /** Times that vehicles which fail are put among those the design must hold. */
    private static final int ROUNDS = 3;

    private final VehicleSpec spec;
    private final KnownVehicle known;
    private final Plant plant;
    private final Aim aim;
    private final List<Case> cases;
    private final Display display;
    private final Judge judge;
    private final double boiling;
    private final Plain plain;

    /** Of a vehicle of which only the sheet is known. */
    public ScheduleDesign(VehicleSpec spec, List<Case> cases, Aim aim, Display display) {
        this(spec, KnownVehicle.ofSheet(spec), cases, aim, display);
    }

    /**
     * @param known the vehicle of the sheet, or as recorded runs have shown it
     * @param cases that must hold at the design ambient
     */
    public ScheduleDesign(VehicleSpec spec, KnownVehicle known, List<Case> cases, Aim aim, Display display) {
        this.spec = spec;
        this.known = known;
        this.plant = known.likeliest();
        this.aim = aim;
        this.cases = cases.stream().filter(c -> !c.forCold()).toList();
        this.display = display;
        List<Begun> begun = SideBySide.map(parts(), this::begun);
        this.judge = new Judge(aim, begun.stream().map(Begun::demanded).toList());
        List<Passage> switched = begun.stream().flatMap(b -> b.plain().stream()).toList();
        Judge day = judge.day();
        this.plain = new Plain(day.mean(switched, Passage::energy), day.mean(switched, Passage::startsPerHour));
        this.boiling =
                new Trial(spec, plant, cases.get(0)).boiling() - spec.limits().boilMargin();
    }

    private ScheduleDesign(ScheduleDesign other, Aim aim, Display display) {
        this.spec = other.spec;
        this.known = other.known;
        this.plant = other.plant;
        this.aim = aim;
        this.cases = other.cases;
        this.display = display;
        this.judge = other.judge.with(aim);
        this.boiling = other.boiling;
        this.plain = other.plain;
    }

    /** The same vehicle and cases, by another aim and in other units. */
    ScheduleDesign with(Aim other, Display units) {
        return new ScheduleDesign(this, other, units);
    }

    Judge judge() {
        return judge;
    }

    /** What the compressor's rules do with a schedule that was judged here; nothing for a vehicle without air conditioning. */
    public Optional<CompressorReport> compressor(ScheduleReport report, Function<String, Optional<Place>> places) {
        List<Passage> passages = report.lines().stream().map(Line::passage).toList();
        return CompressorCheck.of(spec.with(report.schedule()), plant, passages, judge.parts(), cases, display, places);
    }

    private AfterRunDesign afterRun() {
        return new AfterRunDesign(spec, plant, cases, display);
    }

    /** What must hold in a piece, and what a plain switch does there if it counts in means of the day. */
    private record Begun(Demanded demanded, Optional<Passage> plain) {}

    private Begun begun(DayPart part) {
        Demanded demanded = Judge.demanded(spec, plant, Hardware.USUAL, part);
        demanded.must();
        return new Begun(
                demanded,
                part.share() > 0.0 ? Optional.of(demanded.stand().passage(Schedules.plain())) : Optional.empty());
    }

    private List<DayPart> parts() {
        return Judge.withHolding(StandardDay.of(spec), cases, spec.designAmbient());
    }

    /** What a schedule does; quick. */
    public ScheduleReport judged(FanSchedule schedule, Function<String, Place> places) {
        return report(schedule, places, List.of(), Optional.empty());
    }

    /** The same of one that was run through already. */
    ScheduleReport judged(FanSchedule schedule, List<Passage> passages, Function<String, Place> places) {
        return report(schedule, passages, afterRun().keyOff(schedule), places, List.of(), Optional.empty());
    }

    /**
     * The cheapest schedule that holds, in the likeliest vehicle and in 95 of 100 that it may turn out to be.
     *
     * @param seed of the vehicles
     * @param progress told the share done, 0..1
     */
    public ScheduleReport designed(long seed, DoubleConsumer progress, BooleanSupplier cancelled) {
        AfterRunDesign afterRun = afterRun();
        Knobs knobs = new Knobs(spec, boiling, AfterRunDesign.strongest());
        SpotCheck milder = new SpotCheck(MilderDays.of(spec, plant, cases, Hardware.USUAL));
        ScheduleSearch search =
                new ScheduleSearch(judge.driving(), milder, knobs, s -> progress.accept(0.7 * s), cancelled);
        ScheduleSearch.Found found = search.find();
        SpotCheck possible = new SpotCheck(possible(seed));
        int spared = (int) ((1.0 - SURE) * possible.all().size()); // the worst, which nobody asks for
        for (int round = 0; round < ROUNDS; round++) {
            List<Demanded> failing = possible.failing(found.schedule());
            double done = 0.75 + 0.05 * round;
            progress.accept(done);
            if (failing.size() <= spared) {
                break;
            }
            Judge strict = search.judge().with(SpotCheck.few(failing.subList(spared, failing.size())));
            search = new ScheduleSearch(strict, milder, knobs, s -> progress.accept(done + 0.05 * s), cancelled);
            found = search.improved(found.at());
        }
        progress.accept(0.95);
        Doubt doubt = doubt(found.schedule(), possible);
        List<Reason> reasons = new ArrayList<>(new Reasons(search.judge(), knobs, display).of(found));
        AfterRunDesign.Designed whole = afterRun.designed(found.schedule());
        reasons.addAll(whole.reasons());
        return report(whole.schedule(), key -> Place.of("designed"), reasons, Optional.of(doubt));
    }

    /**
     * Cases at the design ambient of vehicles that this one may turn out to be: those that settle, and where runs have shown the vehicle those that
     * move too. What is after key-off is a matter of the after-run.
     */
    private List<Demanded> possible(long seed) {
        List<Plant> plants = known.possible(DRAWS, seed);
        List<Case> driving = cases.stream()
                .filter(kase -> kase.steady() || (known.runs() > 0 && !Soak.has(kase)))
                .toList();
        return IntStream.range(0, plants.size() * driving.size())
                .mapToObj(i -> Judge.demanded(
                        spec,
                        plants.get(i / driving.size()),
                        Hardware.USUAL,
                        new DayPart(driving.get(i % driving.size()), spec.designAmbient(), 0.0)))
                .toList();
    }

    private static Doubt doubt(FanSchedule schedule, SpotCheck possible) {
        List<Demanded> failing = possible.failing(schedule);
        Map<String, Integer> count = new HashMap<>();
        failing.forEach(d -> count.merge(d.part().kase().title(), 1, Integer::sum));
        String worst = count.entrySet().stream()
                .max(Map.Entry.<String, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .orElse("");
        return new Doubt(DRAWS, 1.0 - (double) failing.size() / possible.all().size(), worst);
    }

    private ScheduleReport report(
            FanSchedule schedule, Function<String, Place> places, List<Reason> reasons, Optional<Doubt> doubt) {
        CompletableFuture<Optional<KeyOff>> keyOff =
                CompletableFuture.supplyAsync(() -> afterRun().keyOff(schedule));
        List<Passage> passages = judge.passages(schedule);
        return report(schedule, passages, keyOff.join(), places, reasons, doubt);
    }

    /** One case, and what must hold there. */
    static Line line(Passage passage, Demanded demanded) {
        return new Line(passage, demanded.part().share(), demanded.must());
    }

    private ScheduleReport report(
            FanSchedule schedule,
            List<Passage> passages,
            Optional<KeyOff> keyOff,
            Function<String, Place> places,
            List<Reason> reasons,
            Optional<Doubt> doubt) {
        Verdict verdict = judge.verdict(passages);
        ScheduleFindings findings = new ScheduleFindings(spec.with(schedule), boiling, display, places);
        findings.ofNumbers();
        keyOff.ifPresent(findings::ofKeyOff);
        List<Finding> all = findings.ofPassages(judge.parts(), passages);
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < passages.size(); i++) {
            lines.add(line(passages.get(i), judge.parts().get(i)));
        }
        return new ScheduleReport(
                schedule,
                aim,
                lines.stream().allMatch(Line::holds),
                verdict.cost(),
                judge.mean(passages, Passage::energy),
                judge.mean(passages, Passage::startsPerHour),
                plain,
                known.runs(),
                lines,
                reasons,
                doubt,
                keyOff,
                all);
    }
}
