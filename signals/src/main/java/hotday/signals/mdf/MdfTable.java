package hotday.signals.mdf;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.finding.Severity;
import hotday.signals.frame.Frame;
import hotday.signals.frame.SampleSink;
import hotday.signals.frame.SampleState;
import hotday.signals.log.Row;
import hotday.signals.log.Table;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The measured values of a recording in ASAM MDF 4 as a table: time and a column for every signal, a row for every time at
 * which a value came, cells blank where none did. Immutable; it may be read several times.
 */
public final class MdfTable implements Table {
    private static final String TIME = "time";

    private final Path path;
    private final List<String> header;
    private final List<String> units;

    private MdfTable(Path path, List<String> header, List<String> units) {
        this.path = path;
        this.header = List.copyOf(header);
        this.units = List.copyOf(units);
    }

    /** Throws {@link InputException} when the file cannot be read or holds no values. */
    public static MdfTable open(Path path) {
        Columns columns = new Columns();
        try (MdfLog log = MdfLog.open(path)) {
            log.samplesTo(columns);
            if (columns.names.size() == 1) {
                throw noValues(path, log);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new MdfTable(path, columns.names, columns.units);
    }

    private static InputException noValues(Path path, MdfLog log) {
        List<Finding> all = new ArrayList<>();
        all.add(Finding.fault(
                "no-values",
                Place.of(path.toString()),
                log.holdsFrames()
                        ? "holds frames and no measured values: 'hotday decode' with a description of the network makes a table of them"
                        : "holds no measured values that can be read"));
        all.addAll(log.findings());
        return new InputException(all);
    }

    @Override
    public Path path() {
        return path;
    }

    @Override
    public List<String> header() {
        return header;
    }

    @Override
    public Optional<String> unit(int column) {
        return Optional.of(units.get(column)).filter(u -> !u.isEmpty());
    }

    @Override
    public int headerLine() {
        return 0;
    }

    @Override
    public int unitsLine() {
        return 0;
    }

    /** Throws {@link InputException}, after the rows that are whole, when something in the file is broken. */
    @Override
    public void rows(RowReader to, int most) {
        try (MdfLog log = MdfLog.open(path)) {
            Rows rows = new Rows(header.size(), to, most);
            log.samplesTo(rows);
            Frame frame = new Frame();
            while (rows.left > 0 && log.step(frame)) {}
            rows.end();
            if (rows.left > 0) {
                requireWhole(log);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void requireWhole(MdfLog log) {
        List<Finding> faults = log.findings().stream()
                .filter(f -> f.severity() == Severity.FAULT)
                .toList();
        if (!faults.isEmpty()) {
            List<Finding> all = new ArrayList<>(faults);
            all.add(Finding.fault(
                    "recording-damaged",
                    Place.of(path.toString()),
                    "is damaged: 'hotday decode FILE --wide --to whole.csv' writes what is whole in it"));
            throw new InputException(all);
        }
    }

    /** Names and units, time first. */
    private static final class Columns implements SampleSink {
        private final List<String> names = new ArrayList<>(List.of(TIME));
        private final List<String> units = new ArrayList<>(List.of("s"));

        @Override
        public int signal(String name, String unit) {
            names.add(name);
            units.add(unit);
            return names.size() - 1;
        }

        @Override
        public void sample(double time, int signal, double value, SampleState state) {}

        @Override
        public void text(double time, int signal, String value) {}
    }

    /** Gathers the samples of one time; shows itself as their row. */
    private static final class Rows implements SampleSink, Row {
        private final RowReader to;
        private final double[] numbers;
        private final String[] texts;
        private int left;
        private int line;
        private int signals;
        private boolean any;

        Rows(int width, RowReader to, int most) {
            this.to = to;
            this.left = most;
            this.numbers = new double[width];
            this.texts = new String[width];
            clear();
        }

        private void clear() {
            Arrays.fill(numbers, Double.NaN);
            Arrays.fill(texts, "");
            any = false;
        }

        @Override
        public int signal(String name, String unit) {
            return ++signals;
        }

        @Override
        public void sample(double time, int signal, double value, SampleState state) {
            if (state == SampleState.VALID && isAt(time, signal)) {
                numbers[signal] = value;
            }
        }

        @Override
        public void text(double time, int signal, String value) {
            if (isAt(time, signal)) {
                texts[signal] = value;
            }
        }

        /** Ends the row where the sample belongs to the next; false when no more are wanted, or it has no time. */
        private boolean isAt(double time, int signal) {
            boolean twice = !Double.isNaN(numbers[signal]) || !texts[signal].isEmpty();
            if (any && (time != numbers[0] || twice)) {
                end();
            }
            if (left == 0 || Double.isNaN(time)) {
                return false;
            }
            numbers[0] = time;
            any = true;
            return true;
        }

        void end() {
            if (any) {
                line++;
                left--;
                to.row(this);
                clear();
            }
        }

        @Override
        public int count() {
            return numbers.length;
        }

        @Override
        public int line() {
            return line;
        }

        @Override
        public boolean unfinished() {
            return false;
        }

        @Override
        public Damage damage() {
            return Damage.NONE;
        }

        @Override
        public boolean blank(int cell) {
            return cell >= numbers.length || Double.isNaN(numbers[cell]) && texts[cell].isEmpty();
        }

        @Override
        public double number(int cell) {
            return cell < numbers.length ? numbers[cell] : Double.NaN;
        }

        @Override
        public String text(int cell) {
            if (cell >= numbers.length) {
                return "";
            }
            return Double.isNaN(numbers[cell]) ? texts[cell] : shown(numbers[cell]);
        }

        private static String shown(double number) {
            return number == Math.rint(number) && Math.abs(number) < 1e15
                    ? String.valueOf((long) number)
                    : String.valueOf(number);
        }
    }
}
