package hotday.signals.log;

/** One row of a recording. The same object shows the next row after that: valid during the call only. */
public interface Row {
    /** Why a row cannot be trusted. */
    enum Damage {
        NONE,
        /** A quote is opened and not closed in the same line. */
        OPEN_QUOTE,
        /** Zero bytes stand in it, as left by a logger that lost its power. */
        ZERO_BYTES
    }

    /** Cells in this row; a delimiter at the end of a line counts one more, empty, cell. */
    int count();

    /** Line in the file, from 1; number of the row where a file has no lines. */
    int line();

    /** True when the file ends inside this row, without a line end. */
    boolean unfinished();

    Damage damage();

    /** True for an empty cell and for one behind the end of the row. */
    boolean blank(int cell);

    /** The number in a cell; NaN when it is blank or no number. */
    double number(int cell);

    /** A cell as text; empty when it is not there. */
    String text(int cell);
}
