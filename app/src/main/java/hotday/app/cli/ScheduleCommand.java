package hotday.app.cli;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.unit.Display;
import hotday.study.design.Aim;
import hotday.study.design.CompressorReport;
import hotday.study.design.DesignJson;
import hotday.study.design.RenderedFindings;
import hotday.study.design.RenderedText;
import hotday.study.design.Rendering;
import hotday.study.design.ScheduleDesign;
import hotday.study.design.ScheduleReport;
import hotday.study.prove.KnownVehicle;
import hotday.study.workspace.AtomicFile;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Cases;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.sheet.ScheduleFile;
import hotday.vehicle.sheet.ScheduleText;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tools.jackson.databind.node.ObjectNode;

/** {@code hotday schedule}: the fan schedule of a build, designed or judged. */
@Command(
        name = "schedule",
        mixinStandardHelpOptions = true,
        description = {
            "design the fan schedule of a build: the cheapest that holds every case a fan at full speed holds; or judge one that is there",
            "Exit status 1: something gives way that a fan at full speed holds, or a finding is a fault."
        })
final class ScheduleCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "BUILD", description = "build sheet (build.yaml)")
    private Path build;

    @Option(
            names = "--aim",
            defaultValue = "balanced",
            paramLabel = "AIM",
            description = "quiet, balanced or cold: what noise, energy, starts and compressor power count")
    private String aim;

    @Option(
            names = "--check",
            paramLabel = "FILE",
            description =
                    "judge the schedule in this file (a block 'schedule' as in a build sheet) instead of designing one")
    private Optional<Path> check = Optional.empty();

    @Option(names = "--sheet", description = "judge the schedule of the build sheet instead of designing one")
    private boolean sheet;

    @Option(
            names = "--seed",
            defaultValue = "1",
            description = "of the vehicles it must hold in (default ${DEFAULT-VALUE})")
    private long seed;

    @Option(names = "--to", paramLabel = "FILE", description = "write the designed schedule here (YAML)")
    private Optional<Path> to = Optional.empty();

    @Option(
            names = "--render",
            paramLabel = "FOLDER",
            description = "write it here as tables for a controller (CSV and Markdown), with what that costs")
    private Optional<Path> render = Optional.empty();

    @Mixin
    private RunOptions fit = new RunOptions();

    @Mixin
    private ControllerOptions has = new ControllerOptions();

    @Option(names = "--json", description = "for machines")
    private boolean json;

    ScheduleCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        TypedOptions typed = new TypedOptions();
        Aim chosen = Arrays.stream(Aim.values())
                .filter(a -> a.word().equals(aim))
                .findFirst()
                .orElse(null);
        if (chosen == null) {
            typed.fault("--aim", "unknown-word", "'" + aim + "' is none of quiet, balanced, cold");
        }
        if (sheet && check.isPresent()) {
            typed.fault("--sheet", "option-twice", "stands beside --check; one schedule at a time is judged");
        }
        if (to.isPresent() && (sheet || check.isPresent())) {
            typed.fault("--to", "option-alone", "nothing is designed, so nothing is written; leave it out");
        }
        if (render.isEmpty() && has.given()) {
            typed.fault("--render", "option-missing", "say where the tables go");
        }
        fit.check(typed);
        BuildSheet read = BuildSheet.read(build);
        Rendering.Controller controller = has.read(typed, read.units());
        typed.throwIfAny();
        to.ifPresent(AtomicFile::requireTarget);
        render.ifPresent(AtomicFile::requireFolder);
        Optional<ScheduleFile> given = check.map(file -> ScheduleFile.read(file, read.vehicle()))
                .or(() -> sheet ? Optional.of(ScheduleFile.ofSheet(build, read.vehicle())) : Optional.empty());
        Display display = new Display(read.units());
        List<Case> cases = Cases.ofBuild(build);
        KnownVehicle known = fit.vehicle(read.vehicle(), seed, console);
        ScheduleDesign design = new ScheduleDesign(read.vehicle(), known, cases, chosen, display);
        ScheduleReport report = given.map(file -> design.judged(file.schedule(), file::place))
                .orElseGet(() -> design.designed(seed, share -> console.progress("fan schedule", share), () -> false));
        Optional<CompressorReport> compressor = design.compressor(report, sheetPlaces(read, given));
        console.clear();
        to.ifPresent(file -> write(report, read, display, file));
        if (!json) {
            DesignText.print(console, read.vehicle().name(), report, compressor, display, given.isPresent());
        }
        Optional<Rendering> made = render.map(folder -> rendered(report, read, known, controller));
        console.clear();
        List<Finding> ofTables = made.map(r -> RenderedFindings.of(r, display, Place.of(tables().toString())))
                .orElse(List.of());
        if (json) {
            json(report, compressor, ofTables);
        } else {
            DesignText.tell(console, ofTables);
        }
        made.ifPresent(r -> write(r, read, display));
        boolean faults = report.hasFaults()
                || compressor.map(CompressorReport::hasFaults).orElse(false)
                || !ofTables.isEmpty();
        return report.holds() && !faults ? CommandLineDoor.HOLDS : CommandLineDoor.DOES_NOT_HOLD;
    }

    /** Where a key of the sheet stands; those of the schedule in the file that holds it. */
    private static Function<String, Optional<Place>> sheetPlaces(BuildSheet sheet, Optional<ScheduleFile> given) {
        String block = "schedule.";
        return key -> key.startsWith(block)
                ? given.map(file -> file.place(key.substring(block.length())))
                        .or(() -> Optional.of(Place.of("designed")))
                : sheet.place(key);
    }

    private void json(ScheduleReport report, Optional<CompressorReport> compressor, List<Finding> ofTables) {
        ObjectNode root = DesignJson.of(report, compressor);
        List<Finding> all = new ArrayList<>(report.findings());
        compressor.ifPresent(c -> all.addAll(c.findings()));
        all.addAll(ofTables);
        FindingJson.put(root.putArray("findings"), all);
        console.json(root);
    }

    private Rendering rendered(
            ScheduleReport report, BuildSheet read, KnownVehicle known, Rendering.Controller controller) {
        return Rendering.of(
                read.vehicle().with(report.schedule()),
                known.likeliest(),
                Cases.ofBuild(build),
                report.aim(),
                controller,
                share -> console.progress("tables", share));
    }

    private Path tables() {
        return render.orElseThrow().resolve("schedule.csv");
    }

    private void write(Rendering made, BuildSheet read, Display display) {
        String text = RenderedText.markdown("Fan schedule of " + read.vehicle().name(), made, display);
        Path page = render.orElseThrow().resolve("schedule.md");
        AtomicFile.write(tables(), out -> out.write(RenderedText.csv(made).getBytes(StandardCharsets.UTF_8)));
        AtomicFile.write(page, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
        if (!json) {
            console.result("");
            console.result("Rendered: tables in " + tables() + ", what they cost in " + page + ".");
        }
    }

    private static void write(ScheduleReport report, BuildSheet read, Display display, Path file) {
        String text = "# Fan schedule of " + read.vehicle().name() + ", designed by hotday schedule, aim "
                + report.aim().word() + ".\n" + ScheduleText.of(report.schedule(), display);
        AtomicFile.write(file, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    }
}
