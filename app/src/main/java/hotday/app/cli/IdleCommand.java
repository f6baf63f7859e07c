package hotday.app.cli;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.study.idle.IdleCompensation;
import hotday.study.idle.IdleTable;
import hotday.study.workspace.AtomicFile;
import hotday.vehicle.cases.Cases;
import hotday.vehicle.sheet.BuildSheet;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code hotday idle}: how to announce the compressor to the idle control. */
@Command(
        name = "idle",
        mixinStandardHelpOptions = true,
        description = {
            "the table that announces the compressor to the idle control: torque and lead over head pressure and engine speed",
            "Exit status 1: some cell sags, flares or settles worse than allowed."
        })
final class IdleCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "BUILD", description = "build sheet (build.yaml)")
    private Path build;

    @Option(names = "--to", paramLabel = "FILE.csv", description = "write the table here, too; columns in docs/idle.md")
    private Optional<Path> to = Optional.empty();

    @Option(
            names = "--picture",
            paramLabel = "FILE.svg",
            description = "draw the speed over time without and with the table, where it sags most without")
    private Optional<Path> picture = Optional.empty();

    @Option(names = "--json", description = "for machines")
    private boolean json;

    IdleCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        to.ifPresent(file -> require("--to", file, ".csv"));
        picture.ifPresent(file -> require("--picture", file, ".svg"));
        BuildSheet sheet = BuildSheet.read(build);
        IdleCompensation made = IdleCompensation.of(
                sheet.vehicle(),
                Place.of(build.toString()),
                Cases.ofBuild(build),
                share -> console.progress("cells of the table", share));
        console.clear();
        to.ifPresent(file -> write(file, IdleTable.csv(made)));
        picture.ifPresent(file -> write(file, IdleTable.svg(made)));
        if (json) {
            IdleJson.print(console, made);
        } else {
            IdleText.print(console, made, sheet.units());
            to.ifPresent(file -> console.result("Table written to " + file));
            picture.ifPresent(file -> console.result("Picture written to " + file));
        }
        return made.holds() ? CommandLineDoor.HOLDS : CommandLineDoor.DOES_NOT_HOLD;
    }

    private static void require(String option, Path file, String ending) {
        if (!file.toString().toLowerCase(Locale.ROOT).endsWith(ending)) {
            throw new InputException(Finding.fault(
                    "file-form",
                    Place.of(option),
                    "'" + file + "' must end in " + ending + ": that is what is written"));
        }
        AtomicFile.requireTarget(file);
    }

    private static void write(Path file, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        AtomicFile.write(file, out -> out.write(bytes));
    }
}
