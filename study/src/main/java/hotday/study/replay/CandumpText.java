package hotday.study.replay;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Locale;

/** Writes frames as candump does: {@code (seconds) bus 123#1122}. */
final class CandumpText {
    private static final HexFormat HEX = HexFormat.of().withUpperCase();

    private final OutputStream out;

    CandumpText(OutputStream out) {
        this.out = out;
    }

    /** @param time s */
    void put(double time, String bus, int id, boolean extended, byte[] data, int length) {
        String line = String.format(
                Locale.ROOT,
                extended ? "(%.6f) %s %08X#%s%n" : "(%.6f) %s %03X#%s%n",
                time,
                bus,
                id,
                HEX.formatHex(data, 0, length));
        try {
            out.write(line.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
