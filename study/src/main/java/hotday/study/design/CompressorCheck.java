package hotday.study.design;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.unit.Display;
import hotday.study.design.CompressorReport.CoolingDown;
import hotday.study.design.CompressorReport.Line;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Case.Phase;
import hotday.vehicle.cases.Hardware;
import hotday.vehicle.cases.Trial;
import hotday.vehicle.controller.CompressorLimits;
import hotday.vehicle.controller.Hold;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.State;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/** Runs the cases with air conditioning and watches which rule keeps the compressor off, beside a fan at full speed; then judges the rules. */
public final class CompressorCheck {
    /** s that a steady case is watched. */
    private static final double STEADY = 300.0;
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
     * @param cases of which those with air conditioning at the design ambient are looked at
     * @param places where a key of the build sheet stands
     */
    public static Optional<CompressorReport> of(
            VehicleSpec spec,
            Plant plant,
            List<Case> cases,
            Display display,
            Function<String, Optional<Place>> places) {
        if (spec.airConditioning().isEmpty()) {
            return Optional.empty();
        }
        CompressorCheck check = new CompressorCheck(spec, plant);
        List<Line> lines = cases.stream()
                .filter(c ->
                        !c.forCold() && c.phases().stream().anyMatch(p -> p.conditioning() != Case.Conditioning.OFF))
                .parallel()
                .map(check::line)
                .flatMap(Optional::stream)
                .toList();
        List<CoolingDown> cooling = Stream.of(spec.schedule(), Schedules.full())
                .parallel()
                .map(check::coolingDown)
                .toList();
        List<Finding> findings = new ArrayList<>();
        CompressorFindings judge = new CompressorFindings(spec, display, places);
        findings.addAll(judge.ofRules(CompressorLimits.of(spec), check.atRest()));
        findings.addAll(judge.ofCases(lines));
        findings.addAll(judge.ofCooling(cooling.get(0), cooling.get(1)));
        return Optional.of(new CompressorReport(lines, cooling.get(0), cooling.get(1), findings));
    }

    private Trial trial(FanSchedule schedule, Case kase) {
        return new Trial(spec.with(schedule), plant.with(schedule), kase, Hardware.USUAL);
    }

    /** Nothing of a case whose air conditioning is on only until it begins. A fan at full speed is looked at where something keeps the compressor off. */
    private Optional<Line> line(Case kase) {
        Watched own = watched(spec.schedule(), kase);
        if (own.strides == 0) {
            return Optional.empty();
        }
        Map<Hold, Double> held = own.held();
        Map<Hold, Double> full =
                held.isEmpty() ? Map.of() : watched(Schedules.full(), kase).held();
        return Optional.of(new Line(kase, own.clutchPerMinute(), held, full));
    }

    private Watched watched(FanSchedule schedule, Case kase) {
        Trial trial = trial(schedule, kase);
        trial.begin(spec.designAmbient());
        trial.run().restart();
        Watched seen = new Watched();
        for (Phase phase : kase.phases()) {
            double lasts = kase.steady() ? STEADY : phase.endless() ? 0.0 : phase.duration();
            for (double t = 0.0; t < lasts; t += Trial.STRIDE) {
                boolean before = trial.run().get(Input.COMPRESSOR) > 0.5;
                trial.stride(phase, t);
                seen.add(phase, trial.hold(), !before && trial.run().get(Input.COMPRESSOR) > 0.5);
            }
        }
        return seen;
    }

    /** Counts strides while the engine runs and the compressor is asked for. */
    private static final class Watched {
        private final Map<Hold, Integer> holds = new EnumMap<>(Hold.class);
        private int strides;
        private int engaged;

        void add(Phase phase, Hold hold, boolean comesIn) {
            if (phase.conditioning() == Case.Conditioning.OFF || phase.engine() == Case.Engine.OFF) {
                return;
            }
            strides++;
            engaged += comesIn ? 1 : 0;
            if (hold != Hold.NONE && hold != Hold.LEAD && hold != Hold.REQUEST) {
                holds.merge(hold, 1, Integer::sum);
            }
        }

        double clutchPerMinute() {
            return engaged * 60.0 / (strides * Trial.STRIDE);
        }

        Map<Hold, Double> held() {
            Map<Hold, Double> shares = new EnumMap<>(Hold.class);
            holds.forEach((hold, count) -> shares.put(hold, count / (double) strides));
            return shares;
        }
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
