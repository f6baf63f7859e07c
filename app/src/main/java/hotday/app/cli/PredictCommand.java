package hotday.app.cli;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.unit.Display;
import hotday.study.face.FacePicture;
import hotday.study.prove.CeilingReport;
import hotday.study.prove.HotDay;
import hotday.study.workspace.AtomicFile;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Cases;
import hotday.vehicle.sheet.BuildSheet;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code hotday predict}: ambient ceilings of a build before anything has been driven. */
@Command(
        name = "predict",
        mixinStandardHelpOptions = true,
        description = "how hot a day the build stands, case by case, from its sheet alone")
final class PredictCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "BUILD", description = "build sheet (build.yaml)")
    private Path build;

    @Option(names = "--case", paramLabel = "ID", description = "this case only (repeatable); default: all")
    private List<String> cases = List.of();

    @Option(
            names = "--seed",
            defaultValue = "1",
            description = "of the draws behind the intervals (default ${DEFAULT-VALUE})")
    private long seed;

    @Option(
            names = "--picture",
            paramLabel = "FILE.svg",
            description =
                    "draw the front at the design day, fan at full speed: air speed and temperature at every core")
    private Path picture;

    @Option(names = "--json", description = "for machines")
    private boolean json;

    PredictCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Optional<Path> drawing = Optional.ofNullable(picture);
        drawing.ifPresent(PredictCommand::requireSvg);
        BuildSheet sheet = BuildSheet.read(build);
        List<CeilingReport> ceilings = HotDay.ofSheet(sheet.vehicle(), chosen(), seed);
        if (json) {
            PredictJson.print(console, sheet, ceilings);
        } else {
            Display show = new Display(sheet.units());
            console.result(sheet.vehicle().name() + ", from the sheet alone:");
            CeilingText.lines(ceilings, show).forEach(console::result);
            console.result("");
            console.result(
                    "A wide interval is honest: nothing has been driven yet. A recorded mild-day run narrows it (hotday prove).");
            console.result(CeilingText.CAUTION);
        }
        drawing.ifPresent(file -> draw(sheet, file));
        return ceilings.stream().allMatch(c -> c.best().ambient() >= c.designAmbient())
                ? CommandLineDoor.HOLDS
                : CommandLineDoor.DOES_NOT_HOLD;
    }

    private static void requireSvg(Path file) {
        if (!file.toString().toLowerCase(Locale.ROOT).endsWith(".svg")) {
            throw new InputException(Finding.fault(
                    "picture-form", Place.of("--picture"), "'" + file + "' must end in .svg: that is what is drawn"));
        }
        AtomicFile.requireTarget(file);
    }

    /** The first of the chosen cases. */
    private void draw(BuildSheet sheet, Path file) {
        Case kase = chosen().get(0);
        FacePicture front = FacePicture.of(sheet, kase);
        byte[] svg = front.svg().getBytes(StandardCharsets.UTF_8);
        AtomicFile.write(file, out -> out.write(svg));
        if (!json) {
            console.result("");
            console.result(kase.title() + ", drawn in " + file + ":");
            front.notes().forEach(console::result);
        }
    }

    private List<Case> chosen() {
        List<Case> all = Cases.ofBuild(build).stream().filter(Case::steady).toList();
        List<String> known = all.stream().map(Case::id).toList();
        for (String id : cases) {
            if (!known.contains(id)) {
                throw new InputException(Finding.fault(
                        "unknown-case",
                        Place.of("--case"),
                        "'" + id + "' is not a case; there are " + String.join(", ", known)));
            }
        }
        return cases.isEmpty()
                ? all
                : all.stream().filter(c -> cases.contains(c.id())).toList();
    }
}
