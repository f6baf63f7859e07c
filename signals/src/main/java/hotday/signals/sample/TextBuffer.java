package hotday.signals.sample;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Text on its way into a stream; numbers are put without making strings of them, but for very large and small ones. */
final class TextBuffer {
    private static final int SIZE = 1 << 16;
    /** Longest number, bytes. */
    private static final int NUMBER = 32;
    /** Below it a whole number is exact in a double, and 15 digits are what a double always holds. */
    private static final double FIFTEEN_DIGITS = 1e15;

    private static final double[] TEN_TO = new double[19];

    static {
        double power = 1;
        for (int i = 0; i < TEN_TO.length; i++) {
            TEN_TO[i] = power;
            power *= 10;
        }
    }

    private final OutputStream out;
    private final byte[] buffer = new byte[SIZE];
    private final byte[] digits = new byte[NUMBER];
    private int filled;

    TextBuffer(OutputStream out) {
        this.out = out;
    }

    void put(char ascii) {
        if (filled == SIZE) {
            flush();
        }
        buffer[filled++] = (byte) ascii;
    }

    void put(byte[] text) {
        if (text.length > SIZE - filled) {
            flush();
        }
        if (text.length > SIZE) {
            write(text, text.length);
        } else {
            System.arraycopy(text, 0, buffer, filled, text.length);
            filled += text.length;
        }
    }

    /** A time in s with microseconds. */
    void putTime(double seconds) {
        putDecimal(Math.round(seconds * 1e6), 6, false);
    }

    /** A number with up to 15 digits, which hides the dust of scaling; zeros behind the point are left out. */
    void put(double value) {
        double size = Math.abs(value);
        if (size == 0) {
            put('0');
        } else if (size < 1e-4 || size >= FIFTEEN_DIGITS) {
            put(Double.toString(value).getBytes(StandardCharsets.US_ASCII));
        } else {
            int places = TEN_TO.length - 1;
            while (places > 0 && size * TEN_TO[places] >= FIFTEEN_DIGITS) {
                places--;
            }
            putDecimal(Math.round(value * TEN_TO[places]), places, true);
        }
    }

    /** @param trimmed whether zeros behind the point are left out */
    private void putDecimal(long scaled, int places, boolean trimmed) {
        long rest = Math.abs(scaled);
        int left = places;
        while (trimmed && left > 0 && rest % 10 == 0) {
            rest /= 10;
            left--;
        }
        int at = NUMBER;
        for (int i = 0; i < left || rest > 0 || i == left; i++) {
            if (i == left && left > 0) {
                digits[--at] = '.';
            }
            digits[--at] = (byte) ('0' + rest % 10);
            rest /= 10;
        }
        if (scaled < 0) {
            put('-');
        }
        for (; at < NUMBER; at++) {
            put((char) digits[at]);
        }
    }

    void flush() {
        write(buffer, filled);
        filled = 0;
    }

    private void write(byte[] text, int length) {
        try {
            out.write(text, 0, length);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A cell of delimited text, quoted where it must be. */
    static byte[] cell(String text) {
        boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        String cell = plain ? text : '"' + text.replace("\"", "\"\"") + '"';
        return cell.getBytes(StandardCharsets.UTF_8);
    }
}
