package hotday.signals.log;

import java.nio.charset.Charset;
import java.util.Arrays;

/**
 * One line of text, cut into cells: outer blanks and quotes taken off. The same object is filled again for the next line. A row
 * that cannot be cut keeps its line and says why in {@link #damage()}.
 */
final class TextRow implements Row {
    /** Cells kept of one row; further ones are counted only. */
    static final int WIDEST = 4096;

    private final byte delimiter;
    /** The delimiter eight times. */
    private final long delimiters;

    private final char mark;
    private final Charset charset;
    private byte[] bytes = new byte[0];
    private int[] from = new int[64];
    private int[] to = new int[64];
    private int count;
    private int line;
    private boolean unfinished;
    private Damage damage = Damage.NONE;

    TextRow(char delimiter, char mark, Charset charset) {
        this.delimiter = (byte) delimiter;
        this.delimiters = EightBytes.of(delimiter);
        this.mark = mark;
        this.charset = charset;
    }

    @Override
    public int count() {
        return count;
    }

    @Override
    public int line() {
        return line;
    }

    @Override
    public boolean unfinished() {
        return unfinished;
    }

    @Override
    public Damage damage() {
        return damage;
    }

    @Override
    public boolean blank(int cell) {
        return !there(cell) || from[cell] == to[cell];
    }

    @Override
    public double number(int cell) {
        return there(cell) ? CellNumber.parse(bytes, from[cell], to[cell], mark) : Double.NaN;
    }

    @Override
    public String text(int cell) {
        if (!there(cell)) {
            return "";
        }
        String text = new String(bytes, from[cell], to[cell] - from[cell], charset);
        return text.contains("\"\"") ? text.replace("\"\"", "\"") : text;
    }

    private boolean there(int cell) {
        return cell < count && cell < from.length;
    }

    /** Takes a line and cuts it. */
    void cut(LineReader reader) {
        bytes = reader.bytes();
        line = reader.line();
        unfinished = reader.unfinished();
        cut(reader.start(), reader.end());
    }

    /** Takes a line of characters and cuts it. */
    void cut(String text) {
        bytes = text.getBytes(charset);
        cut(0, bytes.length);
    }

    private void cut(int start, int end) {
        count = 0;
        damage = Damage.NONE;
        int at = start;
        while (at <= end) {
            int begin = at;
            while (begin < end && bytes[begin] == ' ') {
                begin++;
            }
            boolean quoted = begin < end && bytes[begin] == '"';
            int stop = quoted ? closing(begin + 1, end) : begin;
            if (stop < 0) {
                damage = Damage.OPEN_QUOTE;
                return;
            }
            int cellEnd = delimiterFrom(stop, end);
            if (quoted && onlyBlanks(stop + 1, cellEnd)) {
                cell(begin + 1, stop);
            } else {
                cell(begin, cellEnd);
            }
            at = cellEnd + 1;
        }
    }

    private int closing(int start, int end) {
        for (int at = start; at < end; at++) {
            if (bytes[at] == '"') {
                if (at + 1 < end && bytes[at + 1] == '"') {
                    at++;
                } else {
                    return at;
                }
            }
        }
        return -1;
    }

    private int delimiterFrom(int start, int end) {
        int at = start;
        for (; at + EightBytes.SIZE <= bytes.length && at < end; at += EightBytes.SIZE) {
            long word = EightBytes.at(bytes, at);
            long marks = EightBytes.zeros(word ^ delimiters);
            long zeros = EightBytes.zeros(word);
            if (marks != 0 || zeros != 0) {
                int mark = marks == 0 ? end : Math.min(end, at + EightBytes.first(marks));
                if (zeros != 0 && at + EightBytes.first(zeros) < mark) {
                    damage = Damage.ZERO_BYTES;
                }
                if (marks != 0) {
                    return mark;
                }
            }
        }
        for (at = Math.min(at, end); at < end && bytes[at] != delimiter; at++) {
            if (bytes[at] == 0) {
                damage = Damage.ZERO_BYTES;
            }
        }
        return at;
    }

    private boolean onlyBlanks(int start, int end) {
        int at = start;
        while (at < end && bytes[at] == ' ') {
            at++;
        }
        return at >= end;
    }

    private void cell(int start, int end) {
        if (count == from.length && from.length < WIDEST) {
            from = Arrays.copyOf(from, 2 * from.length);
            to = Arrays.copyOf(to, 2 * to.length);
        }
        if (count < from.length) {
            int first = start;
            int last = end;
            while (first < last && isBlank(bytes[first])) {
                first++;
            }
            while (last > first && isBlank(bytes[last - 1])) {
                last--;
            }
            from[count] = first;
            to[count] = last;
        }
        count++;
    }

    private static boolean isBlank(byte b) {
        return b == ' ' || b == '\t';
    }
}
