package hotday.app.cli;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.study.coverage.Coverage;
import hotday.study.coverage.CoverageStudy;
import hotday.study.coverage.NextTestOutcome;
import hotday.study.workspace.ScratchFolder;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code hotday coverage}: how far the intervals of a proof can be trusted. */
@Command(
        name = "coverage",
        mixinStandardHelpOptions = true,
        description = {
            "how far the intervals of a proof can be trusted: virtual cars whose truth is known drive a mild day and are proven",
            "(takes some seconds a car)"
        })
final class CoverageCommand implements Callable<Integer> {
    private static final int MOST = 10_000;
    /** Nine in ten are meant to lie inside; this much either way is the luck of the draw. */
    private static final double LEAST_SHARE = 0.85;

    private static final double MOST_SHARE = 0.95;

    private final Console console;

    @Mixin
    private DrawnBuilds builds;

    @Option(names = "--cars", defaultValue = "100", description = "how many (default ${DEFAULT-VALUE})")
    private int cars;

    @Mixin
    private StudyOptions options;

    CoverageCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (cars < 1 || cars > MOST) {
            throw new InputException(Finding.fault(
                    "out-of-range", Place.of("--cars"), cars + " cars; it must lie between 1 and " + MOST));
        }
        try (ScratchFolder scratch = ScratchFolder.open()) {
            Coverage coverage = new CoverageStudy(builds.read(scratch.path()), scratch.path(), options.seed())
                    .of(cars, options.threads(), share -> console.progress("virtual cars", share));
            console.clear();
            if (options.json()) {
                console.json(CoverageJson.of(coverage, options.seed()));
            } else {
                text(coverage);
            }
            boolean trusted = coverage.share() >= LEAST_SHARE && coverage.share() <= MOST_SHARE;
            return trusted ? CommandLineDoor.HOLDS : CommandLineDoor.DOES_NOT_HOLD;
        }
    }

    private void text(Coverage coverage) {
        console.result(String.format(
                Locale.ROOT,
                "%d virtual cars, %d ceilings: %.1f %% of the truths lie in their 90 %% interval (85 to 95 are meant to).",
                coverage.cars().size(),
                coverage.asked(),
                100.0 * coverage.share()));
        for (String kase : coverage.cases()) {
            console.result(String.format(Locale.ROOT, "  %-18s %5.1f %%", kase, 100.0 * coverage.share(kase)));
        }
        console.result(String.format(
                Locale.ROOT,
                "The intervals are %.0f %% as wide as without the mild day.",
                100.0 * coverage.widthRatio()));
        if (!coverage.nextTests().isEmpty()) {
            console.result(String.format(
                    Locale.ROOT,
                    "%d cars drove the recommended next test and another: it narrowed the interval by %.0f %%, the other by %.0f %%.",
                    coverage.nextTests().size(),
                    100.0 * coverage.mean(NextTestOutcome::narrowed),
                    100.0 * coverage.mean(NextTestOutcome::narrowedByRandom)));
        }
        console.result(CeilingText.CAUTION);
    }
}
