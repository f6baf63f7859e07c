package hotday.app.cli;

import hotday.core.finding.Finding;
import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.study.prove.Bracket;
import hotday.study.prove.ParameterReport;
import hotday.study.prove.Proof;
import hotday.study.prove.RunReport;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A proof for people: agreement first, then what it means for the hot day, then what to look at. */
final class ProofText {
    private final Display show;

    ProofText(Display show) {
        this.show = show;
    }

    List<String> lines(Proof proof) {
        List<String> out = new ArrayList<>();
        out.add(proof.build());
        out.add("");
        out.add("Agreement of coolant, model less measured"
                + (proof.converged() ? "" : " (the fit did not settle: read with care)"));
        out.add(String.format(
                "  %-14s %-8s %9s %9s %9s %9s   %-22s %s",
                "run", "", "rms", "bias", "worst", "no model", "peak measured/model", "inside 90 % band"));
        proof.runs().forEach(run -> run(run, out));
        if (proof.pooledPrediction().samples() > 0) {
            out.add(String.format(
                    "  %-14s %-8s %9s %9s %9s %9s   %-22s %.0f %%",
                    "all predicted",
                    "",
                    kelvin(proof.pooledPrediction().rmse()),
                    kelvin(proof.pooledPrediction().bias()),
                    kelvin(proof.pooledPrediction().maxError()),
                    kelvin(proof.pooledNull()),
                    "",
                    100 * proof.pooledCoverage()));
        }
        out.add("  'no model' is what saying " + show.format(Quantity.TEMPERATURE, proof.warmLevel())
                + " throughout would give: the level the fitted runs sat at once warm.");
        out.add("");
        out.add("Hot day: ambient ceilings with 90 % interval"
                + proof.ceilings().stream()
                        .findFirst()
                        .map(c -> "; the build must stand " + show.format(Quantity.TEMPERATURE, c.designAmbient()))
                        .orElse(""));
        out.addAll(CeilingText.lines(proof.ceilings(), show));
        out.add("");
        out.add("What the runs told");
        proof.parameters().stream().filter(ParameterReport::informed).forEach(p -> out.add(parameter(p)));
        findings(proof, out);
        out.add("");
        out.add(CeilingText.CAUTION);
        return out;
    }

    private String kelvin(double k) {
        return Double.isNaN(k) ? "-" : show.format(Quantity.TEMPERATURE_DIFFERENCE, k);
    }

    private void run(RunReport run, List<String> out) {
        String role = run.role() == RunReport.Role.FIT ? "fitted" : "predicted";
        if (run.single()) {
            out.add(String.format(
                    "  %-14s %-8s %9s %9s %9s %9s   %-22s %.0f %%",
                    run.name(),
                    role,
                    kelvin(run.score().rmse()),
                    kelvin(run.score().bias()),
                    kelvin(run.score().maxError()),
                    kelvin(run.nullRmse()),
                    temperature(run.peak().measured()) + "/"
                            + show.format(Quantity.TEMPERATURE, run.peak().predicted()),
                    100 * run.coverage()));
        } else {
            out.add(String.format(
                    "  %-14s %-8s no single number; peak between %s and %s, measured %s; %.0f %% inside the bracket",
                    run.name(),
                    role,
                    temperature(run.peak().low()),
                    show.format(Quantity.TEMPERATURE, run.peak().high()),
                    show.format(Quantity.TEMPERATURE, run.peak().measured()),
                    100 * run.coverage()));
            for (Bracket b :
                    run.brackets().stream().filter(b -> matters(run, b)).toList()) {
                out.add(String.format(
                        "      %-40s rms %s, peak %s",
                        b.state().title() + " " + b.branch(),
                        kelvin(b.score().rmse()),
                        show.format(Quantity.TEMPERATURE, b.peak())));
            }
        }
    }

    /** Whether the actuator made a difference in this run. */
    private static boolean matters(RunReport run, Bracket bracket) {
        return run.brackets().stream()
                        .filter(b -> b.state() == bracket.state())
                        .mapToDouble(Bracket::peak)
                        .distinct()
                        .count()
                > 1;
    }

    private String temperature(double k) {
        return Double.isNaN(k) ? "-" : show.number(Quantity.TEMPERATURE, k);
    }

    private String parameter(ParameterReport p) {
        return String.format(
                Locale.ROOT,
                "  %-30s sheet %s, now %s (%s to %s)",
                p.label(),
                value(p, p.sheet()),
                value(p, p.fitted()),
                value(p, p.low()),
                value(p, p.high()));
    }

    /** Temperatures of hundreds of kelvin are readings, shown on the scale somebody chose; the rest keeps its unit. */
    private String value(ParameterReport p, double value) {
        return switch (p.unit()) {
            case "K" ->
                p.sheet() > 200.0
                        ? show.format(Quantity.TEMPERATURE, value)
                        : show.format(Quantity.TEMPERATURE_DIFFERENCE, value);
            case "J/K" -> show.format(Quantity.HEAT_CAPACITY, value);
            case "1" -> String.format(Locale.ROOT, "%.3g", value);
            default -> String.format(Locale.ROOT, "%.3g %s", value, p.unit());
        };
    }

    private static void findings(Proof proof, List<String> out) {
        List<Finding> all = new ArrayList<>(proof.findings());
        proof.runs()
                .forEach(r -> r.findings().stream()
                        .filter(f -> f.severity() != hotday.core.finding.Severity.NOTE)
                        .forEach(all::add));
        if (!all.isEmpty()) {
            out.add("");
            out.add("Look at");
            all.stream().map(Finding::toString).distinct().forEach(f -> out.add("  - " + f));
        }
    }
}
