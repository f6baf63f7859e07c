package hotday.physics.exchanger;

import java.util.Arrays;

/**
 * The front face cut into rows x columns of tiles, seen from the front: tile = row x columns + column, row 0 on top, column 0 on the
 * left. Rows and columns need not be equally wide, so that the edges of small cores fall on edges of tiles. Immutable.
 */
public final class FaceGrid {
    private final double[] heights;
    private final double[] widths;

    /**
     * @param rowHeights from the top, m, each above 0
     * @param columnWidths from the left, m, each above 0
     */
    public FaceGrid(double[] rowHeights, double[] columnWidths) {
        heights = positive("row height", rowHeights);
        widths = positive("column width", columnWidths);
    }

    /** Equal tiles over a face of a height and width (m). */
    public static FaceGrid even(int rows, int columns, double height, double width) {
        double[] heights = new double[rows];
        double[] widths = new double[columns];
        Arrays.fill(heights, height / rows);
        Arrays.fill(widths, width / columns);
        return new FaceGrid(heights, widths);
    }

    private static double[] positive(String what, double[] values) {
        if (values.length == 0) {
            throw new IllegalArgumentException("face without any " + what + ", at least 1 is needed");
        }
        for (double v : values) {
            if (!(v > 0) || Double.isInfinite(v)) {
                throw new IllegalArgumentException(what + " " + v + " m must be above 0");
            }
        }
        return values.clone();
    }

    public int rows() {
        return heights.length;
    }

    public int columns() {
        return widths.length;
    }

    public int tiles() {
        return heights.length * widths.length;
    }

    public int tile(int row, int column) {
        return row * widths.length + column;
    }

    /** m. */
    public double height(int row) {
        return heights[row];
    }

    /** m. */
    public double width(int column) {
        return widths[column];
    }

    /** m2. */
    public double area(int tile) {
        return heights[tile / widths.length] * widths[tile % widths.length];
    }

    /** The whole face as a footprint. */
    public Footprint whole() {
        return new Footprint(this, 0, rows() - 1, 0, columns() - 1);
    }
}
