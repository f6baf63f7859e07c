package hotday.signals.log;

import java.util.Objects;
import java.util.Optional;

/**
 * What is known beforehand about the form of a text file.
 *
 * @param delimiter between cells; empty to tell it from the head of the file
 * @param decimal mark of numbers
 * @param comment lines that start with it are skipped; empty for none
 * @param header which line holds the names, from 1, blank and comment lines not counted
 * @param fewestNames a header with fewer is refused: 2 for recordings, where a single name means a delimiter nobody
 *     thought of
 */
public record ReaderOptions(
        Optional<Character> delimiter, Decimal decimal, String comment, int header, int fewestNames) {
    private static final int TIME_AND_VALUE = 2;

    /** The mark between whole and fraction of a number. */
    public enum Decimal {
        /** A comma where the cells are not cut by commas and numbers show it; otherwise a point. */
        AUTO,
        POINT,
        COMMA
    }

    public ReaderOptions {
        Objects.requireNonNull(delimiter, "delimiter");
        Objects.requireNonNull(decimal, "decimal");
        Objects.requireNonNull(comment, "comment");
        if (header < 1) {
            throw new IllegalArgumentException("header line " + header + " must be 1 or more");
        }
    }

    /** True for recordings, where lines may stand above the names and a row of units under them; in a list of values neither. */
    boolean isRecording() {
        return fewestNames >= TIME_AND_VALUE;
    }

    ReaderOptions withHeader(int line) {
        return new ReaderOptions(delimiter, decimal, comment, line, fewestNames);
    }

    /** Of a recording. */
    public ReaderOptions(Optional<Character> delimiter, Decimal decimal, String comment, int header) {
        this(delimiter, decimal, comment, header, TIME_AND_VALUE);
    }

    /** A recording; everything told from the file, names in its first line. */
    public static ReaderOptions auto() {
        return new ReaderOptions(Optional.empty(), Decimal.AUTO, "", 1);
    }

    /** A list of values, which may have a single column; everything told from the file, names in its first line. */
    public static ReaderOptions list() {
        return new ReaderOptions(Optional.empty(), Decimal.AUTO, "", 1, 1);
    }
}
