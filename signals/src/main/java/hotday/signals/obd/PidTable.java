package hotday.signals.obd;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The parameters of service 01 that are known; a table beside this class, with where each row comes from. */
public final class PidTable {
    private PidTable() {}

    /** The shipped table, in its order. */
    public static List<Pid> shipped() {
        try (InputStream in = PidTable.class.getResourceAsStream("pids.csv");
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> row(line.split(",", -1)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Pid row(String[] cells) {
        boolean number = !cells[3].isEmpty();
        return new Pid(
                Integer.parseInt(cells[0], 16),
                Integer.parseInt(cells[1]),
                cells[2],
                number ? Integer.parseInt(cells[3]) - 1 : 0,
                number ? Integer.parseInt(cells[4]) : 0,
                number ? Double.parseDouble(cells[5]) : 1,
                number ? Double.parseDouble(cells[6]) : 1,
                number ? Double.parseDouble(cells[7]) : 0,
                cells[8],
                !"seen".equals(cells[9]));
    }
}
