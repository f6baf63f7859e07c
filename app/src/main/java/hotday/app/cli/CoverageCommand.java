package hotday.app.cli;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.study.coverage.Coverage;
import hotday.study.coverage.CoverageStudy;
import hotday.study.coverage.NextTestOutcome;
import hotday.study.demo.DemoShop;
import hotday.study.workspace.ScratchFolder;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

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

    @Parameters(
            paramLabel = "BUILD",
            arity = "0..*",
            description = "build sheets the cars are drawn from in turn (default: both of the demo shop)")
    private List<Path> builds = List.of();

    @Option(names = "--cars", defaultValue = "100", description = "how many (default ${DEFAULT-VALUE})")
    private int cars;

    @Option(names = "--seed", defaultValue = "1", description = "of everything random (default ${DEFAULT-VALUE})")
    private long seed;

    @Option(
            names = "--threads",
            defaultValue = "0",
            description = "0: as many as the machine has; the answer does not depend on it")
    private int threads;

    @Option(names = "--json", description = "for machines; the contract is docs/formats.md")
    private boolean json;

    CoverageCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (cars < 1 || cars > MOST) {
            throw new InputException(Finding.fault(
                    "out-of-range", Place.of("--cars"), cars + " cars; it must lie between 1 and " + MOST));
        }
        int used = threads > 0 ? threads : Math.max(1, Runtime.getRuntime().availableProcessors());
        try (ScratchFolder scratch = ScratchFolder.open()) {
            Coverage coverage = new CoverageStudy(sheets(scratch.path()), scratch.path(), seed)
                    .of(cars, used, share -> console.progress("virtual cars", share));
            console.clear();
            if (json) {
                console.json(CoverageJson.of(coverage, seed));
            } else {
                text(coverage);
            }
            boolean trusted = coverage.share() >= LEAST_SHARE && coverage.share() <= MOST_SHARE;
            return trusted ? CommandLineDoor.HOLDS : CommandLineDoor.DOES_NOT_HOLD;
        }
    }

    private List<VehicleSpec> sheets(Path scratch) {
        if (builds.isEmpty()) {
            DemoShop shop = DemoShop.create(scratch.resolve("shop"));
            return DemoShop.BUILDS.stream()
                    .map(name -> BuildSheet.read(shop.build(name)).vehicle())
                    .toList();
        }
        return builds.stream().map(path -> BuildSheet.read(path).vehicle()).toList();
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
