package hotday.core.finding;

import java.util.Objects;

/**
 * Where a typed value or a recorded sample stands. Lines and columns count from 1 as editors do; 0 means "the whole
 * file" (or the whole line, for the column).
 */
public record Place(String file, int line, int column) {
    public Place {
        Objects.requireNonNull(file, "file");
        if (line < 0 || column < 0) {
            throw new IllegalArgumentException("line " + line + " and column " + column + " must not be negative");
        }
    }

    /** The file as a whole. */
    public static Place of(String file) {
        return new Place(file, 0, 0);
    }

    /** {@code file:line:column}, shortened where line or column are not known. */
    @Override
    public String toString() {
        if (line == 0) {
            return file;
        }
        return column == 0 ? file + ":" + line : file + ":" + line + ":" + column;
    }
}
