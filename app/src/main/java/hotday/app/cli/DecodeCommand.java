package hotday.app.cli;

import hotday.core.finding.InputException;
import hotday.signals.dbc.DbcFile;
import hotday.signals.dbc.NetworkDecoder;
import hotday.signals.frame.FrameDecoder;
import hotday.signals.framelog.FrameLogOptions;
import hotday.signals.framelog.NumberBase;
import hotday.signals.framelog.StampUnit;
import hotday.signals.j1939.J1939Decoder;
import hotday.signals.obd.ObdDecoder;
import hotday.study.decode.LogDecoding;
import hotday.study.decode.LogSummary;
import hotday.study.workspace.AtomicFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code hotday decode}: what the description of a network says, and what a recording of its frames holds. */
@Command(
        name = "decode",
        mixinStandardHelpOptions = true,
        description = {
            "say what a recording of frames holds (identifiers, rates, load, signals), and write its signals;"
                    + " without a recording, say what a network's description (DBC file) holds",
            "Recordings: candump text, or rows under a header that names identifier and data, plain or packed with gzip; Parquet"
                    + " and ASAM MDF 4, of frames or of measured values."
        },
        footer = {
            "",
            "Exit status 1: something in a file was not understood or contradicts itself; it is told with file:line:column."
        })
final class DecodeCommand implements Callable<Integer> {
    private static final Pattern BIT_RATE = Pattern.compile("(\\d{1,7}(?:\\.\\d+)?)\\s*([kM]?)(?:bit/s)?");
    private static final double LOWEST_BIT_RATE = 5_000;
    private static final double HIGHEST_BIT_RATE = 1_000_000;
    private static final Pattern SECONDS = Pattern.compile("(\\d{1,6}(?:\\.\\d{1,6})?)\\s*(m?s)?");

    private final Console console;

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "LOG",
            description = "recording of frames or of measured values")
    private Optional<Path> log = Optional.empty();

    @Option(
            names = "--dbc",
            paramLabel = "FILE",
            description = "description of the network; several, the first that knows an identifier holds")
    private List<Path> dbc = List.of();

    @Option(
            names = "--j1939",
            description = {
                "the network is one of SAE J1939: known parameters are read, and messages of --dbc with identifiers of 29 bits"
                        + " stand for parameter groups, whoever sends"
            })
    private boolean j1939;

    @Option(
            names = "--obd",
            description = "read the diagnostic connector (OBD-II, UDS): values and texts of its answers")
    private boolean obd;

    @Option(
            names = "--to",
            paramLabel = "FILE",
            description =
                    "write the decoded signals here: time_s, signal, value, unit, state; CSV text, or Parquet where the name ends in .parquet")
    private Optional<Path> to = Optional.empty();

    @Option(names = "--wide", description = "write a column for every signal instead of a row for every sample")
    private boolean wide;

    @Option(
            names = "--raster",
            paramLabel = "T",
            description = "with --wide, time from row to row such as '100 ms' (default: a row whenever a sample came)")
    private Optional<String> raster = Optional.empty();

    @Option(names = "--summary", description = "describe the recording, or the description message by message")
    private boolean summary;

    @Option(names = "--bitrate", paramLabel = "RATE", description = "of the buses, such as 250k: loads in percent")
    private Optional<String> bitRate = Optional.empty();

    @Option(names = "--time-unit", paramLabel = "UNIT", description = "of stamps that name none: s, ms, us or ns")
    private Optional<String> timeUnit = Optional.empty();

    @Option(names = "--id-base", paramLabel = "BASE", description = "of identifiers in rows: hex or dec")
    private Optional<String> idBase = Optional.empty();

    @Option(names = "--data-base", paramLabel = "BASE", description = "of payload bytes in rows: hex or dec")
    private Optional<String> dataBase = Optional.empty();

    @Option(names = "--json", description = "the summary for machines")
    private boolean json;

    DecodeCommand(Console console) {
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
            DecodeJson.refused(console, wrong);
            return CommandLineDoor.WRONG_INPUT;
        }
    }

    private int work() {
        TypedOptions typed = new TypedOptions();
        if (log.isEmpty()) {
            requireDescription(typed);
            typed.throwIfAny();
            return describe();
        }
        double step = raster.map(r -> seconds(r, typed)).orElse(0.0);
        double rate = bitRate.map(r -> bitRate(r, typed)).orElse(Double.NaN);
        FrameLogOptions said = new FrameLogOptions(
                timeUnit.flatMap(u -> unit(u, typed)),
                idBase.flatMap(b -> base("--id-base", b, typed)),
                dataBase.flatMap(b -> base("--data-base", b, typed)));
        requireTarget(typed);
        List<DbcFile> files = new ArrayList<>();
        dbc.forEach(path -> typed.read(() -> DbcFile.read(path)).ifPresent(files::add));
        typed.throwIfAny();
        return decode(new LogDecoding(log.orElseThrow(), said, decoders(files)), files, step, rate);
    }

    private void requireDescription(TypedOptions typed) {
        boolean forLogs = to.isPresent() || wide || raster.isPresent() || bitRate.isPresent() || j1939 || obd;
        if (dbc.isEmpty() || forLogs) {
            typed.fault(
                    "LOG",
                    "option-missing",
                    "give a recording of frames, or --dbc and --summary alone; 'hotday decode --help' lists what can be given");
        } else if (dbc.size() > 1) {
            typed.fault("--dbc", "option-twice", "one description at a time is described");
        } else if (!summary) {
            typed.fault("--summary", "option-missing", "say --summary to describe the file");
        }
    }

    private int describe() {
        DbcFile file = DbcFile.read(dbc.get(0));
        if (json) {
            DecodeJson.print(console, file);
        } else {
            DecodeText.print(console, file);
        }
        return status(file.hasFaults());
    }

    private static int status(boolean faults) {
        return faults ? CommandLineDoor.DOES_NOT_HOLD : CommandLineDoor.HOLDS;
    }

    private void requireTarget(TypedOptions typed) {
        if (to.isEmpty() && (wide || raster.isPresent())) {
            typed.fault("--to", "option-missing", "say where the columns go");
        }
        if (raster.isPresent() && !wide) {
            typed.fault("--raster", "option-alone", "needs --wide: a row for every sample has no raster");
        }
        if (to.isPresent() && dbc.isEmpty() && !j1939 && !obd && !LogDecoding.holdsSamples(log.orElseThrow())) {
            typed.fault(
                    "--dbc",
                    "option-missing",
                    "nothing says what the bytes mean: give a description of the network, --j1939 or --obd");
        }
        to.ifPresent(target -> {
            typed.read(() -> {
                AtomicFile.requireTarget(target);
                return target;
            });
            List<Path> inputs = new ArrayList<>(dbc);
            inputs.add(log.orElseThrow());
            if (inputs.stream().anyMatch(input -> isSame(input, target))) {
                typed.fault("--to", "same-file", "'" + target + "' is read, it must not be written over");
            }
        });
    }

    private static boolean isSame(Path a, Path b) {
        try {
            return Files.exists(a) && Files.exists(b) && Files.isSameFile(a, b);
        } catch (IOException e) {
            return false;
        }
    }

    /** In the order in which they are asked: what is described for this network comes first. */
    private List<Supplier<FrameDecoder>> decoders(List<DbcFile> files) {
        List<Supplier<FrameDecoder>> decoders = new ArrayList<>();
        if (!files.isEmpty()) {
            decoders.add(() -> new NetworkDecoder(files, j1939));
        }
        if (j1939) {
            decoders.add(J1939Decoder::new);
        }
        if (obd) {
            decoders.add(ObdDecoder::new);
        }
        return decoders;
    }

    private int decode(LogDecoding decoding, List<DbcFile> files, double step, double rate) {
        LogSummary done = to.map(target -> wide ? decoding.writeColumns(target, step) : decoding.writeRows(target))
                .orElseGet(decoding::summary);
        FrameLogReport report = new FrameLogReport(done, files, rate);
        if (json) {
            FrameLogJson.print(console, report);
        } else if (summary || to.isEmpty()) {
            FrameLogText.print(console, report);
        } else {
            FrameLogText.printWritten(console, report, to.orElseThrow());
        }
        return status(report.hasFaults());
    }

    private static double seconds(String typed, TypedOptions faults) {
        Matcher m = SECONDS.matcher(typed.strip());
        double value = m.matches() ? Double.parseDouble(m.group(1)) * ("ms".equals(m.group(2)) ? 1e-3 : 1) : 0;
        if (value < 1e-3 || value > 3600) {
            faults.fault(
                    "--raster", "out-of-range", "'" + typed + "' must be a time such as 0.1 s, from 1 ms to 3600 s");
        }
        return value;
    }

    private static double bitRate(String typed, TypedOptions faults) {
        Matcher m = BIT_RATE.matcher(typed.strip());
        double scale = m.matches() ? m.group(2).equals("k") ? 1e3 : m.group(2).equals("M") ? 1e6 : 1 : 0;
        double value = scale == 0 ? 0 : Double.parseDouble(m.group(1)) * scale;
        if (value < LOWEST_BIT_RATE || value > HIGHEST_BIT_RATE) {
            faults.fault(
                    "--bitrate", "out-of-range", "'" + typed + "' must be a rate such as 250k, from 5k to 1M (bit/s)");
        }
        return value;
    }

    private static Optional<StampUnit> unit(String typed, TypedOptions faults) {
        for (StampUnit unit : StampUnit.values()) {
            if (unit.symbol().equals(typed)) {
                return Optional.of(unit);
            }
        }
        faults.fault("--time-unit", "unknown-unit", "'" + typed + "' must be s, ms, us or ns");
        return Optional.empty();
    }

    private static Optional<NumberBase> base(String option, String typed, TypedOptions faults) {
        switch (typed.toLowerCase(Locale.ROOT)) {
            case "hex":
                return Optional.of(NumberBase.HEX);
            case "dec":
                return Optional.of(NumberBase.DECIMAL);
            default:
                faults.fault(option, "unknown-base", "'" + typed + "' must be hex or dec");
                return Optional.empty();
        }
    }
}
