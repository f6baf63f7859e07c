package hotday.app.cli;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.study.demo.DemoShop;
import hotday.study.findings.FaultReport;
import hotday.study.findings.FaultStudy;
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

/** {@code hotday faults}: whether the findings of a proof name what is wrong with a car. */
@Command(
        name = "faults",
        mixinStandardHelpOptions = true,
        description = {
            "whether findings can be trusted: faults are put into virtual cars, which are commissioned and examined, sound cars among them",
            "(takes some seconds a car)"
        })
final class FaultsCommand implements Callable<Integer> {
    private static final int MOST = 1000;
    /** What is asked of the findings: named first or second in this share of the faulty cars. */
    private static final double LEAST_NAMED = 0.85;

    private static final double MOST_FALSE = 0.05;

    private final Console console;

    @Parameters(
            paramLabel = "BUILD",
            arity = "0..*",
            description = "build sheets the cars are drawn from in turn (default: both of the demo shop)")
    private List<Path> builds = List.of();

    @Option(
            names = "--each",
            defaultValue = "10",
            description = "cars of each kind of fault (default ${DEFAULT-VALUE})")
    private int each;

    @Option(names = "--healthy", defaultValue = "100", description = "sound cars (default ${DEFAULT-VALUE})")
    private int healthy;

    @Option(names = "--seed", defaultValue = "1", description = "of everything random (default ${DEFAULT-VALUE})")
    private long seed;

    @Option(
            names = "--whole-doubt",
            description =
                    "draw cars from the whole doubt about a sheet, not from what a shop that works with care leaves of it")
    private boolean wholeDoubt;

    @Option(
            names = "--threads",
            defaultValue = "0",
            description = "0: as many as the machine has; the answer does not depend on it")
    private int threads;

    @Option(names = "--json", description = "for machines; the contract is docs/formats.md")
    private boolean json;

    FaultsCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        inRange("--each", each);
        inRange("--healthy", healthy);
        int used = threads > 0 ? threads : Math.max(1, Runtime.getRuntime().availableProcessors());
        try (ScratchFolder scratch = ScratchFolder.open()) {
            List<VehicleSpec> sheets = sheets(scratch.path());
            FaultStudy study = wholeDoubt
                    ? new FaultStudy(sheets, scratch.path(), seed, 1.0)
                    : FaultStudy.withCare(sheets, scratch.path(), seed);
            FaultReport report = study.of(each, healthy, used, share -> console.progress("virtual cars", share));
            console.clear();
            if (json) {
                console.json(FaultsJson.of(report, seed));
            } else {
                text(report);
            }
            boolean trusted = !(report.named(2) < LEAST_NAMED) && !(report.falseAlarms() > MOST_FALSE);
            return trusted ? CommandLineDoor.HOLDS : CommandLineDoor.DOES_NOT_HOLD;
        }
    }

    private static void inRange(String option, int cars) {
        if (cars < 0 || cars > MOST) {
            throw new InputException(
                    Finding.fault("out-of-range", Place.of(option), cars + " cars; it must lie between 0 and " + MOST));
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

    private void text(FaultReport report) {
        if (report.faults() > 0) {
            console.result(String.format(
                    Locale.ROOT,
                    "%d virtual cars with a fault: %.0f %% named first, %.0f %% first or second (85 are asked for).",
                    report.faults(),
                    100.0 * report.named(1),
                    100.0 * report.named(2)));
            for (String kind : report.kinds()) {
                console.result(String.format(
                        Locale.ROOT,
                        "  %-24s %4.0f %% first, %4.0f %% first or second",
                        kind,
                        100.0 * report.named(kind, 1),
                        100.0 * report.named(kind, 2)));
            }
        }
        if (!report.sound().isEmpty()) {
            console.result(String.format(
                    Locale.ROOT,
                    "%d sound cars: of %.0f %% something was named all the same (5 at most are asked for).",
                    report.sound().size(),
                    100.0 * report.falseAlarms()));
        }
        console.result(CeilingText.CAUTION);
    }
}
