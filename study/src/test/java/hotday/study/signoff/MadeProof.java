package hotday.study.signoff;

import hotday.core.finding.Finding;
import hotday.study.events.Event;
import hotday.study.events.Inferred;
import hotday.study.events.Kind;
import hotday.study.events.Summary;
import hotday.study.prove.Bracket;
import hotday.study.prove.CeilingReport;
import hotday.study.prove.HiddenState;
import hotday.study.prove.ParameterReport;
import hotday.study.prove.Proof;
import hotday.study.prove.RunReport;
import hotday.study.prove.Score;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Ceiling;
import hotday.vehicle.cases.Limit;
import hotday.vehicle.cases.StandardCases;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Proofs with invented numbers: what a document must be able to show. */
final class MadeProof {
    private static final double DESIGN = 273.15 + 43.0;

    private MadeProof() {}

    static Proof of(String build, String run, int predicted, List<Finding> findings) {
        List<RunReport> runs = new ArrayList<>();
        runs.add(run(run, RunReport.Role.FIT, true));
        for (int i = 0; i < predicted; i++) {
            runs.add(run(run + " " + (i + 1), RunReport.Role.PREDICT, i % 3 != 2));
        }
        Score none = new Score(Double.NaN, Double.NaN, Double.NaN, 0, 0.0, 0.0);
        boolean any = predicted > 0;
        return new Proof(
                build,
                runs,
                score(),
                any ? score() : none,
                any ? score() : none,
                any ? score() : none,
                any ? 4.0 : Double.NaN,
                any ? 0.9 : Double.NaN,
                273.15 + 88.0,
                60.0,
                1.5,
                List.of(
                        parameter("pump_flow", "coolant pump flow", "m3/s", 0.5),
                        parameter("fan_flow", "fan flow", "1", 0.95)),
                ceilings(),
                ceilings(),
                new Inferred(
                        List.of(
                                event(run, 40.0, Kind.FAN_ON),
                                event(run, 70.0, Kind.FAN_OFF),
                                event(run, 90.0, Kind.THERMOSTAT_OPEN),
                                event("another", 95.0, Kind.HEATER_ON)),
                        new Summary(
                                0,
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                0,
                                OptionalDouble.empty())),
                List.of(),
                findings,
                7,
                true);
    }

    private static Event event(String run, double time, Kind kind) {
        return new Event(run, time, kind, 360.0, "K", 0.8, "made");
    }

    private static Score score() {
        return new Score(1.25, -0.5, 4.0, 100, 156.25, -50.0);
    }

    private static ParameterReport parameter(String id, String label, String unit, double narrowed) {
        return new ParameterReport(id, label, unit, 1.0, 0.5, 2.0, 1.1, 0.9, 1.3, 0.2, narrowed);
    }

    private static List<CeilingReport> ceilings() {
        List<CeilingReport> all = new ArrayList<>();
        double ambient = 273.15 + 38.0;
        for (Case kase : StandardCases.steady()) {
            Ceiling best = new Ceiling(
                    kase,
                    ambient,
                    Ceiling.Reach.FOUND,
                    Limit.COOLANT,
                    Limit.BOILING,
                    false,
                    385.0,
                    398.0,
                    330.0,
                    List.of(),
                    DESIGN,
                    List.of(),
                    null);
            all.add(new CeilingReport(best, ambient - 3.0, ambient + 3.0, 0.5, DESIGN));
            ambient += 4.0;
        }
        return all;
    }

    private static RunReport run(String name, RunReport.Role role, boolean single) {
        int n = 600;
        double[] time = new double[n];
        double[] measured = new double[n];
        double[] predicted = new double[n];
        double[] lower = new double[n];
        double[] upper = new double[n];
        for (int i = 0; i < n; i++) {
            time[i] = 0.5 * i;
            measured[i] = i > 200 && i < 240 ? Double.NaN : 273.15 + 85.0 + 3.0 * Math.sin(0.02 * i);
            predicted[i] = 273.15 + 85.5 + 3.0 * Math.sin(0.02 * i - 0.1);
            lower[i] = predicted[i] - 3.0;
            upper[i] = predicted[i] + 3.0;
        }
        List<Bracket> brackets = single
                ? List.of()
                : List.of(
                        new Bracket(HiddenState.FAN, "off", score(), 365.0, 0.5),
                        new Bracket(HiddenState.FAN, "full from 105 degC to 97 degC", score(), 362.0, 0.5));
        return new RunReport(
                name,
                role,
                time,
                measured,
                predicted,
                lower,
                upper,
                single,
                score(),
                score(),
                score(),
                4.0,
                0.9,
                3.0,
                new RunReport.Peak(361.0, 361.5, 359.0, 364.0),
                List.of(),
                role == RunReport.Role.FIT
                        ? Optional.of(new RunReport.Oil(measured, predicted, lower, upper, score(), 0.8, 3.0))
                        : Optional.empty(),
                brackets,
                List.of());
    }
}
