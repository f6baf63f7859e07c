package hotday.signals.uds;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.stream.Collectors;

/** Why control units refuse: a table beside this class, with where each row comes from. */
public final class Refusals {
    /** The answer comes later. */
    public static final int PENDING = 0x78;

    private static final Map<Integer, String> WORDS = read();

    private Refusals() {}

    /** The reason in words, with its code where the table has none. */
    public static String words(int code) {
        String words = WORDS.get(code);
        return words == null ? String.format("reason %02X", code) : words;
    }

    private static Map<Integer, String> read() {
        try (InputStream in = Refusals.class.getResourceAsStream("refusals.csv");
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split(",", -1))
                    .collect(Collectors.toUnmodifiableMap(cells -> Integer.parseInt(cells[0], 16), cells -> cells[1]));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
