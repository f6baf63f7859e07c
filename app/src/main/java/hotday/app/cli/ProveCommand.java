package hotday.app.cli;

import hotday.core.finding.InputException;
import hotday.core.unit.Display;
import hotday.signals.channel.ChannelMap;
import hotday.signals.channel.Recording;
import hotday.study.prove.Proof;
import hotday.study.prove.ProofJson;
import hotday.study.prove.ProveRequest;
import hotday.study.shop.ProofWork;
import hotday.study.workspace.AtomicFile;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Cases;
import hotday.vehicle.sheet.BuildSheet;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code hotday prove}: recorded runs to fit, findings and hot-day ceilings. */
@Command(
        name = "prove",
        mixinStandardHelpOptions = true,
        description = "fit the build to recorded runs, predict further runs, and carry both to the hot day")
final class ProveCommand implements Callable<Integer> {
    private final Console console;

    @Option(names = "--build", required = true, paramLabel = "FILE", description = "build sheet (build.yaml)")
    private Path build;

    @Option(names = "--map", required = true, paramLabel = "FILE", description = "channel map (channels.yaml)")
    private Path map;

    @Option(
            names = "--fit",
            required = true,
            paramLabel = "RUN",
            description = "recording the fit may see (repeatable)")
    private List<Path> fit;

    @Option(
            names = "--predict",
            paramLabel = "RUN",
            description = "recording to predict from its inputs only (repeatable)")
    private List<Path> predict = List.of();

    @Option(names = "--observe", paramLabel = "oil", description = "fit this temperature too, besides coolant")
    private Optional<Observe> observe = Optional.empty();

    @Option(names = "--signoff", paramLabel = "PDF", description = "write the sign-off document here")
    private Optional<Path> signoff = Optional.empty();

    @Option(
            names = "--plots",
            paramLabel = "FOLDER",
            description = "write the pictures here as SVG: ceilings, unknowns, and every run")
    private Optional<Path> plots = Optional.empty();

    @Mixin
    private StudyOptions options;

    /** Temperatures that can be fitted besides coolant. */
    enum Observe {
        OIL
    }

    ProveCommand(Console console) {
        this.console = console;
    }

    /** For machines a refusal is the result; its words are the door's. */
    @Override
    public Integer call() {
        try {
            return proven();
        } catch (InputException e) {
            console.clear();
            if (!options.json()) {
                throw e;
            }
            console.json(ProofJson.refused(e.findings()));
            return CommandLineDoor.WRONG_INPUT;
        }
    }

    private int proven() {
        signoff.ifPresent(AtomicFile::requireTarget);
        plots.ifPresent(AtomicFile::requireFolder);
        BuildSheet sheet = BuildSheet.read(build);
        ChannelMap channels = ChannelMap.read(map);
        List<Recording> seen = InputException.each(fit, channels::recording);
        List<Recording> unseen = InputException.each(predict, channels::recording);
        List<Case> cases =
                Cases.ofBuild(build).stream().filter(c -> !c.forCold()).toList();
        Proof proof = ProofWork.of(new ProveRequest(
                sheet.vehicle(),
                cases,
                seen,
                unseen,
                observe.isPresent(),
                options.seed(),
                options.threads(),
                console::progress,
                () -> false));
        console.clear();
        signoff.ifPresent(path -> SignOffDoor.write(path, sheet, proof));
        plots.ifPresent(folder -> SignOffDoor.plots(folder, sheet, proof));
        if (options.json()) {
            console.json(ProofJson.of(proof));
        } else {
            new ProofText(new Display(sheet.units())).lines(proof).forEach(console::result);
            signoff.ifPresent(path -> console.result("Sign-off written to " + path));
            plots.ifPresent(folder -> console.result("Pictures written to " + folder));
        }
        return proof.ceilings().stream().allMatch(c -> c.low() >= c.designAmbient())
                ? CommandLineDoor.HOLDS
                : CommandLineDoor.DOES_NOT_HOLD;
    }
}
