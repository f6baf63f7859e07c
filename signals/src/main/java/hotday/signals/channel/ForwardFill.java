package hotday.signals.channel;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * Recordings with one row for every value received, all other columns repeating their last value. Such a file shows
 * itself by never changing two columns in one row. A column is then taken as received where its value changes, and once
 * every turn (as many rows as the file has columns) while it does not: that is when it was asked for again.
 */
final class ForwardFill {
    private static final int FEWEST_CHANGES = 100;
    private static final int FEWEST_COLUMNS = 3;
    /** Share of the changing rows that may change two columns: a value seldom arrives together with another. */
    private static final double TOGETHER = 0.005;

    private ForwardFill() {}

    /** True when nearly no row changes more than one of the columns, and enough change to tell. */
    static boolean recognised(Collection<double[]> columns) {
        List<double[]> moving = new ArrayList<>();
        for (double[] column : columns) {
            if (changes(column)) {
                moving.add(column);
            }
        }
        if (moving.size() < FEWEST_COLUMNS) {
            return false;
        }
        int rows = moving.get(0).length;
        int any = 0;
        int several = 0;
        for (int i = 1; i < rows; i++) {
            int changed = 0;
            for (double[] column : moving) {
                changed += changed(column, i) ? 1 : 0;
            }
            any += changed > 0 ? 1 : 0;
            several += changed > 1 ? 1 : 0;
        }
        return any >= FEWEST_CHANGES && several <= TOGETHER * any;
    }

    private static boolean changes(double[] column) {
        for (int i = 1; i < column.length; i++) {
            if (changed(column, i)) {
                return true;
            }
        }
        return false;
    }

    private static boolean changed(double[] column, int row) {
        return Double.compare(column[row], column[row - 1]) != 0;
    }

    /**
     * Marks the repeats.
     *
     * @param turn rows after which every column has been asked for once
     */
    static void mark(double[] column, byte[] flags, int turn) {
        int received = 0;
        for (int i = 1; i < column.length; i++) {
            if (changed(column, i) || i - received >= turn) {
                received = i;
            } else {
                flags[i] |= Channel.HELD;
            }
        }
    }
}
