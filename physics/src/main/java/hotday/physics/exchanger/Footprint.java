package hotday.physics.exchanger;

/**
 * The tiles a core covers: a rectangle, first and last included, counted from 0.
 *
 * @param face the grid it lies on
 */
public record Footprint(FaceGrid face, int firstRow, int lastRow, int firstColumn, int lastColumn) {
    public Footprint {
        inside("row", firstRow, lastRow, face.rows());
        inside("column", firstColumn, lastColumn, face.columns());
    }

    private static void inside(String what, int first, int last, int count) {
        if (first < 0 || last < first || last >= count) {
            throw new IllegalArgumentException(
                    "core on " + what + "s " + first + ".." + last + " must lie within 0.." + (count - 1));
        }
    }

    public int rows() {
        return lastRow - firstRow + 1;
    }

    public int columns() {
        return lastColumn - firstColumn + 1;
    }

    public int tiles() {
        return rows() * columns();
    }
}
