package hotday.signals.dbc;

import java.util.Arrays;

/** Where the lines of a text begin; they end with LF, CR LF or CR in any mixture. */
final class Lines {
    private final int[] starts;

    Lines(String text) {
        int[] found = new int[64];
        int count = 1;
        for (int i = 0; i < text.length(); i++) {
            if (ends(text, i)) {
                found = count == found.length ? Arrays.copyOf(found, 2 * count) : found;
                found[count++] = i + 1;
            }
        }
        this.starts = Arrays.copyOf(found, count);
    }

    private static boolean ends(String text, int i) {
        char c = text.charAt(i);
        return c == '\n' || c == '\r' && (i + 1 >= text.length() || text.charAt(i + 1) != '\n');
    }

    /** From 1. */
    int line(int position) {
        int found = Arrays.binarySearch(starts, position);
        return found >= 0 ? found + 1 : -found - 1;
    }

    /** From 1. */
    int column(int position) {
        return position - starts[line(position) - 1] + 1;
    }

    /** Where the line after the one of a position begins; {@code end} when it is the last. */
    int next(int position, int end) {
        int line = line(position);
        return line < starts.length ? starts[line] : end;
    }
}
