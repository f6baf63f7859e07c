package hotday.signals.log;

import hotday.core.finding.Finding;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A recording as names of columns, their units and rows, whatever kind of file it lies in. Rows are handed out one at a time:
 * memory does not grow with the file. It may be read several times.
 */
public interface Table {
    /** Takes the rows of a file one after the other. */
    @FunctionalInterface
    interface RowReader {
        /** @param row valid during the call only */
        void row(Row row);
    }

    Path path();

    /** Names of the columns in their order. */
    List<String> header();

    /** Symbol of a column's unit that stands beside its name, not in it; empty where there is none. */
    Optional<String> unit(int column);

    /** Line of the names, from 1; 0 where a file has no lines. */
    int headerLine();

    /** Line of a row of units; 0 when there is none. */
    int unitsLine();

    /** What a person should know about the file itself. */
    default List<Finding> findings() {
        return List.of();
    }

    /** Reads all rows. */
    default void rows(RowReader to) {
        rows(to, Integer.MAX_VALUE);
    }

    /** Reads at most so many rows, from the first. */
    void rows(RowReader to, int most);
}
