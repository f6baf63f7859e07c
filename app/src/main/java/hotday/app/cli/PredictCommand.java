package hotday.app.cli;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.typed.TypedText;
import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.study.face.FacePicture;
import hotday.study.predict.PredictJson;
import hotday.study.predict.RoadMap;
import hotday.study.predict.RoadMapChart;
import hotday.study.predict.Sensitivity;
import hotday.study.predict.WhatIf;
import hotday.study.prove.CeilingReport;
import hotday.study.prove.HotDay;
import hotday.study.workspace.AtomicFile;
import hotday.vehicle.cases.AmbientCeiling;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Cases;
import hotday.vehicle.cases.WarmUp;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tools.jackson.databind.node.ObjectNode;

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

    @Option(
            names = "--ambient",
            paramLabel = "TEMP",
            description = "judge this day instead of the sheet's, such as 115degF")
    private String ambient;

    @Option(
            names = "--map",
            paramLabel = "FILE.svg",
            description = "ceilings over speed and grade, drawn, and as numbers in FILE.csv beside it")
    private Path map;

    @Option(
            names = "--what-if",
            paramLabel = "KEY=VALUE",
            description =
                    "what the ceilings would be with another value in the sheet, such as \"radiator.depth=40 mm\" (repeatable, taken together)")
    private List<String> whatIf = List.of();

    @Option(names = "--sensitivity", description = "which values of the sheet move the ceilings most")
    private boolean sensitivity;

    @Option(names = "--json", description = "for machines")
    private boolean json;

    PredictCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Optional<Path> drawing = Optional.ofNullable(picture);
        Optional<Path> roads = Optional.ofNullable(map);
        drawing.ifPresent(file -> requireSvg("--picture", file));
        roads.ifPresent(file -> requireSvg("--map", file));
        BuildSheet sheet = BuildSheet.read(build);
        List<Case> all = chosen();
        List<Case> chosen = all.stream().filter(c -> !c.forCold()).toList();
        TypedOptions typed = new TypedOptions();
        double day = typed.between(
                "--ambient",
                Optional.ofNullable(ambient),
                Quantity.TEMPERATURE,
                sheet.vehicle().designAmbient(),
                AmbientCeiling.LOWEST,
                AmbientCeiling.HIGHEST);
        typed.throwIfAny();
        List<WhatIf> changes = whatIf.isEmpty() ? List.of() : WhatIf.of(build, chosen, "--what-if", whatIf);
        List<CeilingReport> ceilings = HotDay.ofSheet(
                sheet.vehicle(), chosen, day, seed, share -> console.progress("ceilings", share), () -> false);
        List<WarmUp> cold = all.stream()
                .filter(Case::forCold)
                .map(c -> WarmUp.of(sheet.vehicle(), Plant.compile(sheet.vehicle()), c))
                .toList();
        List<Case> steady = chosen.stream().filter(Case::steady).toList();
        List<Sensitivity.Row> rows = sensitivity
                ? Sensitivity.of(
                        build,
                        TypedText.read(build),
                        steady,
                        share -> console.progress("one value after the other", share),
                        () -> false)
                : List.of();
        console.clear();
        if (json) {
            ObjectNode root = PredictJson.of(sheet, ceilings, cold);
            if (!whatIf.isEmpty()) {
                PredictJson.whatIf(root, whatIf, changes);
            }
            if (sensitivity) {
                PredictJson.sensitivity(root, steady, rows);
            }
            console.json(root);
        } else {
            text(sheet, ceilings, cold, changes, steady, rows);
        }
        drawing.ifPresent(file -> draw(sheet, file));
        roads.ifPresent(file -> map(sheet, file));
        boolean stays = cold.stream().allMatch(c -> c.verdict() == WarmUp.Verdict.WARM);
        return stays && ceilings.stream().allMatch(c -> c.best().ambient() >= c.designAmbient())
                ? CommandLineDoor.HOLDS
                : CommandLineDoor.DOES_NOT_HOLD;
    }

    private void text(
            BuildSheet sheet,
            List<CeilingReport> ceilings,
            List<WarmUp> cold,
            List<WhatIf> changes,
            List<Case> steady,
            List<Sensitivity.Row> rows) {
        Display show = new Display(sheet.units());
        console.result(sheet.vehicle().name() + ", from the sheet alone:");
        CeilingText.lines(ceilings, show).forEach(console::result);
        PredictText.cold(cold, show).forEach(console::result);
        if (!ceilings.isEmpty()) {
            console.result("");
            PredictText.advice(ceilings, show).forEach(console::result);
            console.result("");
            PredictText.day(ceilings, show).forEach(console::result);
        }
        if (!changes.isEmpty()) {
            console.result("");
            PredictText.whatIf(whatIf, changes, show).forEach(console::result);
        }
        if (!rows.isEmpty()) {
            console.result("");
            PredictText.sensitivity(steady, rows, show).forEach(console::result);
        }
        console.result("");
        console.result(
                "A wide interval is honest: nothing has been driven yet. A recorded mild-day run narrows it (hotday prove).");
        console.result(CeilingText.CAUTION);
    }

    private static void requireSvg(String option, Path file) {
        if (!file.toString().toLowerCase(Locale.ROOT).endsWith(".svg")) {
            throw new InputException(Finding.fault(
                    "picture-form", Place.of(option), "'" + file + "' must end in .svg: that is what is drawn"));
        }
        AtomicFile.requireTarget(file);
    }

    /** The first of the chosen cases, one for hot days where there is one. */
    private void draw(BuildSheet sheet, Path file) {
        List<Case> all = chosen();
        Case kase = all.stream().filter(c -> !c.forCold()).findFirst().orElse(all.get(0));
        FacePicture front = FacePicture.of(sheet, kase);
        byte[] svg = front.svg().getBytes(StandardCharsets.UTF_8);
        AtomicFile.write(file, out -> out.write(svg));
        if (!json) {
            console.result("");
            console.result(kase.title() + ", drawn in " + file + ":");
            front.notes().forEach(console::result);
        }
    }

    /** The map as a picture, and its numbers beside it. */
    private void map(BuildSheet sheet, Path file) {
        VehicleSpec spec = sheet.vehicle();
        List<Case> all = Cases.ofBuild(build);
        Case like = RoadMap.like(all);
        RoadMap roads = RoadMap.of(spec, Plant.compile(spec), like, () -> false);
        Display show = new Display(sheet.units());
        byte[] svg = RoadMapChart.of(spec, roads, show).svg().getBytes(StandardCharsets.UTF_8);
        String name = file.getFileName().toString();
        Path numbers = file.resolveSibling(name.substring(0, name.length() - ".svg".length()) + ".csv");
        AtomicFile.requireTarget(numbers);
        byte[] csv = roads.csv().getBytes(StandardCharsets.UTF_8);
        AtomicFile.write(file, out -> out.write(svg));
        AtomicFile.write(numbers, out -> out.write(csv));
        if (!json) {
            console.result("");
            console.result("Ceilings over speed and grade: drawn in " + file + ", numbers in " + numbers + ".");
        }
    }

    private List<Case> chosen() {
        List<Case> all = Cases.ofBuild(build);
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
