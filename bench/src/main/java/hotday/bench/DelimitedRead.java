package hotday.bench;

import hotday.signals.log.DelimitedText;
import hotday.signals.log.ReaderOptions;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.Locale;
import java.util.Properties;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A recording of delimited text into numbers, from a file that the system holds in memory: delimiter and head are told from the file,
 * every cell of every column is parsed. The peer is DuckDB's reader on one thread, which tells delimiter and types from the file and parses all columns; it
 * sums each of them up where the numbers are, which spares it the way to the JVM.
 */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@State(Scope.Thread)
@Fork(1)
@Warmup(iterations = 5)
@Measurement(iterations = 7)
public class DelimitedRead {
    private static final int ROWS = 1_000_000;
    private static final int COLUMNS = 11;

    /** Digits behind the point: as loggers write, and as programs write. */
    @Param({"3", "15"})
    public int digits;

    private Path file;
    private Connection duck;
    private long rows;

    @Setup(Level.Trial)
    public void write() throws IOException, SQLException {
        file = Files.createTempFile("bench", ".csv");
        Random random = new Random(1);
        try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.US_ASCII)) {
            out.write("time [s]");
            for (int i = 1; i < COLUMNS; i++) {
                out.write(",channel " + i + " [degC]");
            }
            out.write('\n');
            for (int row = 0; row < ROWS; row++) {
                out.write(String.format(Locale.ROOT, "%d.%02d", row / 100, row % 100));
                for (int i = 1; i < COLUMNS; i++) {
                    double value = 200 * random.nextDouble() - 40;
                    out.write(',');
                    out.write(digits > 10 ? Double.toString(value) : Double.toString(Math.rint(value * 1000) / 1000));
                }
                out.write('\n');
            }
        }
        Properties settings = new Properties();
        settings.put("threads", "1");
        settings.put("autoinstall_known_extensions", "false");
        settings.put("autoload_known_extensions", "false");
        duck = DriverManager.getConnection("jdbc:duckdb:", settings);
    }

    @TearDown(Level.Trial)
    public void remove() throws IOException, SQLException {
        duck.close();
        Files.delete(file);
    }

    /** The product. */
    @Benchmark
    public double[] own() {
        DelimitedText text = DelimitedText.open(file, ReaderOptions.auto());
        double[] sums = new double[text.header().size()];
        rows = 0;
        text.rows(row -> {
            rows++;
            for (int i = 0; i < sums.length; i++) {
                sums[i] += row.number(i);
            }
        });
        return checked(sums);
    }

    /** The product, into arrays. */
    @Benchmark
    public double[][] ownArrays() {
        DelimitedText text = DelimitedText.open(file, ReaderOptions.auto());
        double[][] columns = new double[text.header().size()][4096];
        int[] size = new int[1];
        text.rows(row -> {
            int at = size[0]++;
            for (int i = 0; i < columns.length; i++) {
                if (at == columns[i].length) {
                    columns[i] = Arrays.copyOf(columns[i], 2 * at);
                }
                columns[i][at] = row.number(i);
            }
        });
        rows = size[0];
        checked(Arrays.stream(columns).mapToDouble(c -> Arrays.stream(c).sum()).toArray());
        return columns;
    }

    /** The peer. */
    @Benchmark
    public double[] duckdb() throws SQLException {
        try (Statement statement = duck.createStatement();
                ResultSet all =
                        statement.executeQuery("SELECT count(*), sum(COLUMNS(*)) FROM read_csv('" + file + "')")) {
            all.next();
            rows = all.getLong(1);
            double[] sums = new double[COLUMNS];
            for (int i = 0; i < COLUMNS; i++) {
                sums[i] = all.getDouble(i + 2);
            }
            return checked(sums);
        }
    }

    private double[] checked(double[] sums) {
        // the middle of the values is 60
        if (rows != ROWS || Math.abs(sums[1] / ROWS - 60) > 0.5 || Math.abs(sums[COLUMNS - 1] / ROWS - 60) > 0.5) {
            throw new IllegalStateException(rows + " rows, " + Arrays.toString(sums));
        }
        return sums;
    }
}
