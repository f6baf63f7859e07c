package hotday.study.design;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.unit.Display;
import hotday.study.design.CompressorReport.CoolingDown;
import hotday.study.design.CompressorReport.Line;
import hotday.study.design.Judge.Demanded;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Case.Phase;
import hotday.vehicle.cases.Hardware;
import hotday.vehicle.cases.Trial;
import hotday.vehicle.controller.CompressorLimits;
import hotday.vehicle.controller.Hold;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.State;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Which rule keeps the compressor off in cases with air conditioning, beside a fan at full speed, and how a soaked cabin cools down; then judges the rules. */
final class CompressorCheck {
    /** s of driving a soaked cabin. */
    private static final double DRIVEN = 1200.0;

    private static final double VENT_AFTER = 600.0; // s
    private static final double DRIVE_SPEED = 50 / 3.6; // m/s
    private static final double SUN = 850.0; // W/m2
    private static final double HUMIDITY = 0.4;

    private final VehicleSpec spec;
    private final Plant plant;

    private CompressorCheck(VehicleSpec spec, Plant plant) {
        this.spec = spec;
        this.plant = plant;
    }

    /**
     * Nothing for a vehicle without air conditioning.
     *
     * @param spec with the schedule that is judged
     * @param plant the vehicle, whatever its schedule
     * @param passages of that schedule
     * @param parts which they are of
     * @param cases of which those with air conditioning at the design ambient are looked at
     * @param places where a key of the build sheet stands
     */
    static Optional<CompressorReport> of(
            VehicleSpec spec,
            Plant plant,
            List<Passage> passages,
            List<Demanded> parts,
            List<Case> cases,
            Display display,
            Function<String, Optional<Place>> places) {
        if (spec.airConditioning().isEmpty()) {
            return Optional.empty();
        }
        CompressorCheck check = new CompressorCheck(spec, plant);
        CompletableFuture<Double> atRest = CompletableFuture.supplyAsync(check::atRest);
        List<CoolingDown> cooling = SideBySide.map(List.of(spec.schedule(), Schedules.full()), check::coolingDown);
        List<Line> lines = IntStream.range(0, parts.size())
                .filter(i -> parts.get(i).part().ambient() == spec.designAmbient()
                        && cases.contains(parts.get(i).part().kase())
                        && passages.get(i).compressor().seconds() > 0.0)
                .mapToObj(i -> line(passages.get(i).compressor(), parts.get(i)))
                .toList();
        List<Finding> findings = new ArrayList<>();
        CompressorFindings judge = new CompressorFindings(spec, display, places);
        findings.addAll(judge.ofRules(CompressorLimits.of(spec), atRest.join()));
        findings.addAll(judge.ofCases(lines));
        findings.addAll(judge.ofCooling(cooling.get(0), cooling.get(1)));
        return Optional.of(new CompressorReport(lines, cooling.get(0), cooling.get(1), findings));
    }

    /** A fan at full speed is looked at where something keeps the compressor off. */
    private static Line line(Wanted own, Demanded part) {
        Map<Hold, Double> full = own.held().isEmpty()
                ? Map.of()
                : part.stand().passage(Schedules.full()).compressor().held();
        return new Line(part.part().kase(), own.clutchPerMinute(), own.held(), full);
    }

    private Trial trial(FanSchedule schedule, Case kase) {
        return new Trial(spec.with(schedule), plant.with(schedule), kase, Hardware.USUAL);
    }

    /** Everything at the design ambient, sun on the glass, then 20 minutes at 50 km/h with cabin air and the whole blower. */
    private CoolingDown coolingDown(FanSchedule schedule) {
        Phase drive = phase(DRIVEN, DRIVE_SPEED, Case.Conditioning.CABIN_AIR, 1.0);
        Trial trial = trial(schedule, kase(Case.Start.SOAKED, drive));
        trial.begin(spec.designAmbient());
        trial.run().restart();
        double target = spec.designAmbient() - CoolingDown.COOLER;
        OptionalDouble reached = OptionalDouble.empty();
        double vent = Double.NaN;
        for (double t = 0.0; t < DRIVEN; t += Trial.STRIDE) {
            trial.stride(drive, t);
            if (reached.isEmpty() && trial.run().get(State.CABIN) <= target) {
                reached = OptionalDouble.of(t);
            }
            vent = t < VENT_AFTER ? trial.run().get(Output.VENT_TEMPERATURE) : vent;
        }
        return new CoolingDown(target, reached, vent, trial.run().get(State.CABIN));
    }

    /** Head pressure that a stopped compressor leaves at hot idle on the design day, Pa; the fan at full speed. */
    private double atRest() {
        Phase idle = phase(Double.POSITIVE_INFINITY, 0.0, Case.Conditioning.OFF, 1.0);
        Trial trial = trial(spec.schedule(), kase(Case.Start.SETTLED, idle));
        trial.settle(spec.designAmbient(), 1.0);
        return trial.run().get(Output.HEAD_PRESSURE);
    }

    private static Phase phase(double duration, double speed, Case.Conditioning conditioning, double blower) {
        return new Phase(duration, speed, 0.0, Case.Engine.DRIVE, false, conditioning, blower, 0.0, Optional.empty());
    }

    private static Case kase(Case.Start start, Phase phase) {
        Case.Day day = new Case.Day(SUN, HUMIDITY, OptionalDouble.empty(), OptionalDouble.empty());
        return new Case("compressor", "compressor", start, day, List.of(phase), List.of());
    }
}
