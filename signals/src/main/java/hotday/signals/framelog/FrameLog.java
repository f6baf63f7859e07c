package hotday.signals.framelog;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.signals.frame.Frame;
import hotday.signals.frame.FrameSource;
import hotday.signals.log.LineReader;
import hotday.signals.log.Table;
import hotday.signals.log.TextSource;
import hotday.signals.parquet.ParquetTable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A recording of frames being read, plain or packed with gzip, whatever its name:
 *
 * <pre>{@code
 * try (FrameLog log = FrameLog.open(path, FrameLogOptions.NONE)) {
 *     Frame frame = new Frame();
 *     while (log.next(frame)) {
 *         ...
 *     }
 *     log.findings();
 * }
 * }</pre>
 *
 * A line that is no frame is passed over, counted and told; nothing is guessed. A frame allocates nothing. For one thread.
 */
public final class FrameLog implements FrameSource {
    private static final String NEEDED = "a recording of frames as text (candump, or rows under a header)";
    private static final int HEAD_LINES = 4000;
    private static final int HEAD_BYTES = 1 << 19;

    private final Path path;
    private final LineForm form;
    private final BusNames buses;
    private final LineReader lines;
    private final BrokenLines broken;
    private final StampOrder order;
    private long frames;
    private boolean open;

    private FrameLog(Path path, LineForm form, BusNames buses, LineReader lines) {
        this.path = path;
        this.form = form;
        this.buses = buses;
        this.lines = lines;
        this.broken = new BrokenLines(path.toString());
        this.order = new StampOrder(path.toString());
    }

    /** Throws {@link InputException} when the file cannot be read or is no recording of frames. */
    public static FrameLog open(Path path, FrameLogOptions options) {
        if (ParquetTable.isParquet(path)) {
            ParquetTable table = ParquetTable.open(path);
            return open(path, () -> new LineReader(table.text()), typed(table, options));
        }
        return open(path, TextSource.open(path, NEEDED, Long.MAX_VALUE)::lines, options);
    }

    /** Whole numbers and bytes of a file with types have no base that must be told. */
    private static FrameLogOptions typed(ParquetTable table, FrameLogOptions options) {
        Optional<NumberBase> identifiers = options.identifiers();
        Optional<NumberBase> data = options.data();
        for (int i = 0; i < table.header().size(); i++) {
            String name = table.header().get(i);
            Optional<Role> role = Role.of(name);
            boolean whole = table.holdsWholeNumbers(i);
            if (whole && role.filter(r -> r == Role.ID || r == Role.PGN).isPresent()) {
                identifiers = Optional.of(NumberBase.DECIMAL);
            } else if (whole && Role.byteNumber(name) >= 0) {
                data = Optional.of(NumberBase.DECIMAL);
            } else if (table.holdsBytes(i) && role.filter(r -> r == Role.DATA).isPresent()) {
                data = Optional.of(NumberBase.HEX);
            }
        }
        return new FrameLogOptions(options.stampUnit(), identifiers, data);
    }

    /** Whether a table names an identifier and a payload, as a recording of frames does. */
    public static boolean namesFrames(Table table) {
        return DelimitedHead.namesFrames(table.header());
    }

    /** Whether the first lines of a text are frames, or one of them names an identifier and a payload. */
    public static boolean isFrames(Path path) {
        try {
            List<byte[]> head = head(TextSource.open(path, NEEDED, Long.MAX_VALUE)::lines);
            return candump(head, new BusNames()).isPresent() || DelimitedHead.isAmong(head);
        } catch (IOException e) {
            throw TextSource.unreadable(path, e);
        }
    }

    /** Lines from the beginning, each time they are asked for. */
    @FunctionalInterface
    private interface Lines {
        LineReader begin() throws IOException;
    }

    private static FrameLog open(Path path, Lines source, FrameLogOptions options) {
        try {
            List<byte[]> head = head(source);
            BusNames buses = new BusNames();
            Optional<CandumpLine> candump = candump(head, buses);
            Optional<Columns> columns =
                    candump.isPresent() ? Optional.empty() : DelimitedHead.columns(path.toString(), head, options);
            LineForm form = candump.<LineForm>map(c -> c)
                    .or(() -> columns.map(c -> new DelimitedLine(buses, c)))
                    .orElseThrow(() -> notFrames(path, head));
            int skip = columns.map(Columns::headerLine).orElse(0);
            return begun(path, source, form, buses, skip);
        } catch (IOException e) {
            throw TextSource.unreadable(path, e);
        }
    }

    private static List<byte[]> head(Lines source) throws IOException {
        List<byte[]> head = new ArrayList<>();
        int size = 0;
        try (LineReader lines = source.begin()) {
            while (size < HEAD_BYTES && head.size() < HEAD_LINES && lines.next()) {
                head.add(Arrays.copyOfRange(lines.bytes(), lines.start(), lines.end()));
                size += lines.end() - lines.start();
            }
        }
        return head;
    }

    /** Present when more than half of the lines are of that kind. */
    private static Optional<CandumpLine> candump(List<byte[]> head, BusNames buses) {
        CandumpLine any = new CandumpLine(new BusNames(), null);
        Frame frame = new Frame();
        int filled = 0;
        int read = 0;
        int timed = 0;
        for (byte[] line : head) {
            int code = any.read(line, 0, line.length, frame);
            filled += code == LineForm.NOTHING ? 0 : 1;
            read += code == LineForm.FRAME ? 1 : 0;
            timed += code == LineForm.FRAME && any.hadTime() ? 1 : 0;
        }
        return 2 * read > filled ? Optional.of(new CandumpLine(buses, 2 * timed > read)) : Optional.empty();
    }

    private static InputException notFrames(Path path, List<byte[]> head) {
        String first = head.stream()
                .map(b -> new String(b, StandardCharsets.ISO_8859_1).strip())
                .filter(s -> !s.isEmpty())
                .findFirst()
                .orElse("");
        String shown = first.substring(0, Math.min(60, first.length())).replaceAll("\\p{Cntrl}", "?");
        return InputException.at(
                new Place(path.toString(), 1, 0),
                "not-a-frame-log",
                "is no recording of frames: neither are its lines such as '(1622547830.084000) can0 123#1122', nor has it"
                        + " a header that names an identifier and data; it begins '" + shown + "'");
    }

    private static FrameLog begun(Path path, Lines source, LineForm form, BusNames buses, int skip) throws IOException {
        LineReader lines = source.begin();
        for (int i = 0; i < skip; i++) {
            lines.next();
        }
        return new FrameLog(path, form, buses, lines);
    }

    @Override
    public boolean next(Frame frame) {
        try {
            while (lines.next()) {
                open = lines.unfinished();
                int code = form.read(lines.bytes(), lines.start(), lines.end(), frame);
                if (code == LineForm.FRAME) {
                    frames++;
                    order.add(frame.time(), lines.line());
                    return true;
                }
                if (code > 0) {
                    broken.add(lines.line(), lines.bytes(), lines.start(), lines.end(), code, form.why());
                }
            }
            return false;
        } catch (IOException e) {
            throw TextSource.unreadable(path, e);
        }
    }

    @Override
    public String layout() {
        return form.title();
    }

    @Override
    public List<String> buses() {
        return buses.all();
    }

    @Override
    public long frames() {
        return frames;
    }

    @Override
    public long broken() {
        return broken.count();
    }

    @Override
    public double firstTime() {
        return order.first();
    }

    /** Steps back are left out. */
    @Override
    public double duration() {
        return order.duration();
    }

    @Override
    public List<Finding> findings() {
        List<Finding> all = new ArrayList<>(broken.findings(frames));
        all.addAll(order.findings());
        if (open) {
            all.add(Finding.note(
                    "last-line-open",
                    new Place(path.toString(), lines.line(), 0),
                    "the last line has no end: nothing says whether it is whole"));
        }
        return all;
    }

    @Override
    public void close() throws IOException {
        lines.close();
    }
}
