package hotday.app.cli;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.study.findings.FaultReport;
import hotday.study.findings.FaultStudy;
import hotday.study.workspace.ScratchFolder;
import hotday.vehicle.spec.VehicleSpec;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

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

    @Mixin
    private DrawnBuilds builds;

    @Option(
            names = "--each",
            defaultValue = "10",
            description = "cars of each kind of fault (default ${DEFAULT-VALUE})")
    private int each;

    @Option(names = "--healthy", defaultValue = "100", description = "sound cars (default ${DEFAULT-VALUE})")
    private int healthy;

    @Option(
            names = "--whole-doubt",
            description =
                    "draw cars from the whole doubt about a sheet, not from what a shop that works with care leaves of it")
    private boolean wholeDoubt;

    @Mixin
    private StudyOptions options;

    FaultsCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        inRange("--each", each);
        inRange("--healthy", healthy);
        try (ScratchFolder scratch = ScratchFolder.open()) {
            List<VehicleSpec> sheets = builds.read(scratch.path());
            FaultStudy study = wholeDoubt
                    ? new FaultStudy(sheets, scratch.path(), options.seed(), 1.0)
                    : FaultStudy.withCare(sheets, scratch.path(), options.seed());
            FaultReport report =
                    study.of(each, healthy, options.threads(), share -> console.progress("virtual cars", share));
            console.clear();
            if (options.json()) {
                console.json(FaultsJson.of(report, options.seed()));
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
