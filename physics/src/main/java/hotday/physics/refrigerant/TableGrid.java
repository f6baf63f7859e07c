package hotday.physics.refrigerant;

import java.util.Locale;

/** Grid of a property table: rows on a pressure scale, even columns in enthalpy, J/kg. Immutable. */
final class TableGrid {
    /** Keeps a look inside the last cell. */
    private static final double INSIDE = 1e-9;

    private final PressureScale scale;
    private final double firstColumn;
    private final double columnSize;
    private final double perColumn;
    private final int columns;
    private final double[] widths;

    TableGrid(PressureScale scale, double low, double high, int columns) {
        this.scale = scale;
        this.firstColumn = low;
        this.columnSize = (high - low) / (columns - 1);
        this.perColumn = 1.0 / columnSize;
        this.columns = columns;
        this.widths = new double[scale.size() - 1];
        for (int i = 0; i < widths.length; i++) {
            widths[i] = scale.width(i);
        }
    }

    int rows() {
        return scale.size();
    }

    int columns() {
        return columns;
    }

    /** J/kg. */
    double columnSize() {
        return columnSize;
    }

    /** J/kg. */
    double firstColumn() {
        return firstColumn;
    }

    /** From a row to the next, Pa. */
    double rowWidth(int row) {
        return widths[row];
    }

    /** Place among the rows, cut to the grid. */
    double row(double pressure) {
        return scale.inside(pressure);
    }

    /** Place among the columns, cut to the grid. */
    double column(double enthalpy) {
        return Math.min(columns - 1 - INSIDE, Math.max(0.0, (enthalpy - firstColumn) * perColumn));
    }

    boolean covers(double pressure, double enthalpy) {
        return pressure >= pressureOf(0)
                && pressure <= pressureOf(rows() - 1)
                && enthalpy >= firstColumn
                && enthalpy <= enthalpyOf(columns - 1);
    }

    int node(int i, int j) {
        return i * columns + j;
    }

    int cell(int i, int j) {
        return i * (columns - 1) + j;
    }

    double pressureOf(int row) {
        return scale.node(row);
    }

    double enthalpyOf(int column) {
        return firstColumn + column * columnSize;
    }

    String description(String label, int version) {
        return String.format(
                Locale.ROOT,
                "%s, table version %d: %d pressures from %.2f to %.1f bar, %d enthalpies from %.1f to %.1f kJ/kg",
                label,
                version,
                rows(),
                pressureOf(0) / 1e5,
                pressureOf(rows() - 1) / 1e5,
                columns,
                firstColumn / 1e3,
                enthalpyOf(columns - 1) / 1e3);
    }
}
