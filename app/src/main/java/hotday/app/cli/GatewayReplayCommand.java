package hotday.app.cli;

import hotday.core.finding.InputException;
import hotday.signals.expect.Expected;
import hotday.signals.framelog.FrameLogOptions;
import hotday.signals.gateway.TranslationSheet;
import hotday.study.replay.Replay;
import hotday.study.replay.ReplayReport;
import hotday.study.replay.ReplayRequest;
import hotday.study.workspace.AtomicFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code hotday gateway replay}: recordings run through a translation sheet. */
@Command(
        name = "replay",
        mixinStandardHelpOptions = true,
        description = {
            "run recordings through a translation sheet: what the other side would have seen, and whether what is expected holds",
            "Recordings are read as by 'hotday decode'; several must be on one clock. Exit status 1: an expectation does not hold."
        })
final class GatewayReplayCommand implements Callable<Integer> {
    private static final Pattern SPEED = Pattern.compile("[0-9]{1,3}(?:\\.[0-9]{1,3})?");
    private static final double SLOWEST = 0.01;

    private final Console console;

    @Parameters(index = "0", paramLabel = "SHEET", description = "translation sheet (network/*.yaml)")
    private Path sheet;

    @Parameters(
            index = "1..*",
            arity = "1..*",
            paramLabel = "LOG",
            description = "recordings of one network or several")
    private List<Path> logs = List.of();

    @Option(
            names = "--network",
            paramLabel = "NAME=WHERE",
            description =
                    "where a network of the sheet was recorded: a bus (engine=can0), a log, or log:bus; not said, it is the bus of its own name")
    private List<String> networks = List.of();

    @Option(names = "--to", paramLabel = "LOG", description = "write the frames of the gateway here (candump text)")
    private Optional<Path> to = Optional.empty();

    @Option(
            names = "--decoded",
            paramLabel = "CSV",
            description = "write the signals of both sides here: time_s,signal,value,unit,state")
    private Optional<Path> decoded = Optional.empty();

    @Option(
            names = "--expect",
            paramLabel = "FILE",
            description = "what must hold (YAML), beside what the sheet expects")
    private List<Path> expect = List.of();

    @Option(
            names = "--speed",
            paramLabel = "N",
            defaultValue = "max",
            description = "times the recorded speed, or max (default ${DEFAULT-VALUE})")
    private String speed;

    @Option(names = "--json", description = "for machines")
    private boolean json;

    GatewayReplayCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (!json) {
            return work();
        }
        try {
            return work();
        } catch (InputException wrong) {
            GatewayJson.refused(console, wrong);
            return CommandLineDoor.WRONG_INPUT;
        }
    }

    private int work() {
        TypedOptions typed = new TypedOptions();
        double times = speed(typed);
        Optional<TranslationSheet> read = typed.read(() -> TranslationSheet.read(sheet));
        Map<String, String> where = networks(read, typed);
        List<Expected> expected = new ArrayList<>();
        read.ifPresent(s -> {
            expected.addAll(s.expectations());
            expect.forEach(file -> typed.read(() -> s.expectations(file)).ifPresent(expected::addAll));
        });
        targets(typed);
        typed.throwIfAny();
        ReplayReport report = Replay.of(new ReplayRequest(
                read.orElseThrow(),
                logs,
                FrameLogOptions.NONE,
                where,
                expected,
                to,
                decoded,
                times,
                (what, ns) -> console.progress("replay: " + what, 0)));
        console.clear();
        if (json) {
            ReplayJson.print(console, report);
        } else {
            ReplayText.print(console, report, to, decoded);
        }
        return report.holds() ? CommandLineDoor.HOLDS : CommandLineDoor.DOES_NOT_HOLD;
    }

    /** 0 for as fast as it goes. */
    private double speed(TypedOptions typed) {
        if (speed.equals("max")) {
            return 0;
        }
        double times = SPEED.matcher(speed).matches() ? Double.parseDouble(speed) : 0;
        if (times < SLOWEST) {
            typed.fault(
                    "--speed", "number-wrong", "'" + speed + "' must be a number from " + SLOWEST + " to 999, or max");
        }
        return times;
    }

    private Map<String, String> networks(Optional<TranslationSheet> read, TypedOptions typed) {
        Map<String, String> where = new LinkedHashMap<>();
        for (String option : networks) {
            int at = option.indexOf('=');
            String name = at < 0 ? "" : option.substring(0, at).strip();
            String place = at < 0 ? "" : option.substring(at + 1).strip();
            if (name.isEmpty() || place.isEmpty()) {
                typed.fault("--network", "value-wrong", "'" + option + "' is typed like engine=can0");
            } else if (read.filter(s -> !s.networkNames().contains(name)).isPresent()) {
                typed.fault(
                        "--network",
                        "network-unknown",
                        "'" + name + "' is no network of the sheet; those are "
                                + String.join(", ", read.get().networkNames()));
            } else if (where.put(name, place) != null) {
                typed.fault("--network", "option-twice", "'" + name + "' is said twice");
            }
        }
        return where;
    }

    private void targets(TypedOptions typed) {
        to.ifPresent(target -> target("--to", target, typed));
        decoded.ifPresent(target -> target("--decoded", target, typed));
        if (to.isPresent() && to.equals(decoded)) {
            typed.fault("--decoded", "same-file", "'" + to.get() + "' is written by --to already");
        }
    }

    private void target(String option, Path target, TypedOptions typed) {
        typed.read(() -> {
            AtomicFile.requireTarget(target);
            return target;
        });
        List<Path> inputs = new ArrayList<>(logs);
        inputs.add(sheet);
        inputs.addAll(expect);
        if (inputs.stream().anyMatch(input -> isSame(input, target))) {
            typed.fault(option, "same-file", "'" + target + "' is read, it must not be written over");
        }
    }

    private static boolean isSame(Path a, Path b) {
        try {
            return Files.exists(a) && Files.exists(b) && Files.isSameFile(a, b);
        } catch (IOException e) {
            return false;
        }
    }
}
