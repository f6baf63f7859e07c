package hotday.app.cli;

import hotday.core.finding.Finding;
import hotday.core.finding.Wording;
import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.study.events.Estimate;
import hotday.study.events.Inferred;
import hotday.study.events.Summary;
import hotday.study.prove.Bracket;
import hotday.study.prove.NextTest;
import hotday.study.prove.ParameterReport;
import hotday.study.prove.Proof;
import hotday.study.prove.RunReport;
import hotday.study.prove.Score;
import hotday.study.signoff.ParameterText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** A proof for people: agreement first, then what it means for the hot day, then what to look at. */
final class ProofText {
    private static final int MOST_TESTS = 3;
    private static final double WORTH_DRIVING = 0.02;

    private static final String OIL = "  %-14s %-9s %9s %9s %9s   %s";

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
        oil(proof, out);
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
        switching(proof.inferred(), out);
        next(proof, out);
        findings(proof, out);
        out.add("");
        out.add(CeilingText.CAUTION);
        return out;
    }

    /** Oil beside what was measured, where the fit saw oil. */
    private void oil(Proof proof, List<String> out) {
        if (proof.runs().stream().noneMatch(r -> r.oil().isPresent())) {
            return;
        }
        out.add("");
        out.add("Agreement of oil, model less measured");
        out.add(String.format(Locale.ROOT, OIL, "run", "", "rms", "bias", "worst", "inside 90 % band")
                .stripTrailing());
        for (RunReport run : proof.runs()) {
            String role = run.role() == RunReport.Role.FIT ? "fitted" : "predicted";
            run.oil()
                    .ifPresent(oil -> out.add(oil(
                            run.name(),
                            role,
                            run.single() ? oil.score() : Score.NONE,
                            String.format(Locale.ROOT, "%.0f %%", 100.0 * oil.coverage()))));
        }
        pooledOil("all fitted", proof.pooledOil(RunReport.Role.FIT), out);
        pooledOil("all predicted", proof.pooledOil(RunReport.Role.PREDICT), out);
    }

    private void pooledOil(String name, Score score, List<String> out) {
        if (score.samples() > 0) {
            out.add(oil(name, "", score, "").stripTrailing());
        }
    }

    private String oil(String name, String role, Score score, String inside) {
        return String.format(
                Locale.ROOT,
                OIL,
                name,
                role,
                kelvin(score.rmse()),
                kelvin(score.bias()),
                kelvin(score.maxError()),
                inside);
    }

    /** What switched though nobody recorded it. */
    private void switching(Inferred inferred, List<String> out) {
        Summary s = inferred.summary();
        if (s.fanCycles() == 0 && s.compressorStarts() == 0) {
            return;
        }
        out.add("");
        out.add("Seen in the recordings though nobody recorded it");
        if (s.fanCycles() > 0) {
            out.add("  fan: " + s.fanCycles() + " starts" + around(", on at ", s.fanOn())
                    + around(", off at ", s.fanOff()) + around("; coolant falls to ", s.trough()));
        }
        if (s.compressorStarts() > 0) {
            out.add("  compressor: " + s.compressorStarts() + " starts at idle"
                    + (s.compressorDuty().isPresent()
                            ? String.format(
                                    Locale.ROOT,
                                    ", on %.0f %% of the time",
                                    100.0 * s.compressorDuty().getAsDouble())
                            : ""));
        }
    }

    private String around(String words, Optional<Estimate> estimate) {
        return estimate.map(e -> words + show.format(Quantity.TEMPERATURE, e.mean()) + " ("
                        + show.number(Quantity.TEMPERATURE, e.low()) + " to "
                        + show.number(Quantity.TEMPERATURE, e.high()) + ")")
                .orElse("");
    }

    private static void next(Proof proof, List<String> out) {
        List<NextTest> best = proof.nextTests().stream()
                .filter(t -> t.narrowing() >= WORTH_DRIVING)
                .limit(MOST_TESTS)
                .toList();
        if (best.isEmpty()) {
            return;
        }
        out.add("");
        out.add("What to drive next: expected to narrow the interval of '"
                + best.get(0).kase() + "'");
        for (NextTest t : best) {
            out.add(String.format(
                    Locale.ROOT,
                    "  by %2.0f %%  %-45s %2.0f min",
                    100.0 * t.narrowing(),
                    t.title(),
                    t.duration() / 60.0));
        }
        out.add("  Cautions:");
        best.stream()
                .flatMap(t -> Stream.of(t.caution().said(Wording.FILE).split("; ")))
                .distinct()
                .forEach(c -> out.add("    - " + c));
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

    private String value(ParameterReport p, double value) {
        return ParameterText.of(show, p, value);
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
