package hotday.vehicle.cases;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.unit.Quantity;
import hotday.core.unit.Unit;
import hotday.core.unit.UnitException;
import hotday.core.unit.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Speed and grade against time as delimited text with units in its header: {@code time [s],speed [km/h],grade [%]}. In
 * places the column is the number of the cell in its row.
 */
final class TraceFile {
    private static final int MOST_FAULTS = 50;
    /** m/s2; beyond what tyres hold, so that a wrong unit is seen. */
    private static final double HARDEST = 12.0;

    private static final Pattern NAME = Pattern.compile("\"?\\s*(\\w+)\\s*[\\[(](.*)[\\])]\\s*\"?");

    private enum Column {
        TIME(Quantity.TIME, 0.0, 86_400.0),
        SPEED(Quantity.SPEED, 0.0, PhaseBlock.FASTEST),
        GRADE(Quantity.RATIO, -PhaseBlock.STEEPEST, PhaseBlock.STEEPEST);

        private final Quantity quantity;
        private final double low;
        private final double high;

        Column(Quantity quantity, double low, double high) {
            this.quantity = quantity;
            this.low = low;
            this.high = high;
        }
    }

    private static final Column[] COLUMNS = Column.values();

    private final String file;
    private final List<Finding> faults = new ArrayList<>();
    private final List<double[]> rows = new ArrayList<>();
    private final int[] cells = {-1, -1, -1};
    private final Unit[] units = new Unit[COLUMNS.length];
    private String mark = "";
    private int width;
    private int line;

    private TraceFile(String file) {
        this.file = file;
    }

    /** Reads text; throws {@link InputException} with its faults, the first fifty where there are more. */
    static Trace read(String file, String text) {
        TraceFile reader = new TraceFile(file);
        text.lines().forEach(reader::line);
        return reader.trace();
    }

    private void line(String text) {
        line++;
        if (text.isBlank() || text.startsWith("#") || faults.size() >= MOST_FAULTS) {
            return;
        }
        if (width == 0) {
            header(text);
        } else {
            row(text.split(mark, -1));
        }
    }

    private void header(String text) {
        mark = text.contains("\t") ? "\t" : text.contains(";") ? ";" : ",";
        String[] names = text.split(mark, -1);
        width = names.length;
        for (int i = 0; i < width; i++) {
            name(i, names[i].strip());
        }
        for (Column column : List.of(Column.TIME, Column.SPEED)) {
            if (faults.isEmpty() && cells[column.ordinal()] < 0) {
                fault("no-such-column", 0, "there is no column '" + CaseFile.word(column) + "'; " + needed());
            }
        }
        throwIfAny();
    }

    private void name(int cell, String name) {
        Matcher m = NAME.matcher(name);
        int which = m.matches() ? named(m.group(1)) : -1;
        if (which < 0) {
            boolean bare = named(name) >= 0;
            fault(
                    bare ? "unit-missing" : "no-such-column",
                    cell + 1,
                    "'" + name + "' " + (bare ? "has no unit" : "is no column of a trace") + "; " + needed());
        } else if (cells[which] >= 0) {
            fault("column-twice", cell + 1, "there are two columns '" + m.group(1) + "'; take one out");
        } else {
            cells[which] = cell;
            unit(which, cell, m.group(2).strip());
        }
    }

    private void unit(int which, int cell, String symbol) {
        try {
            units[which] = Units.unit(COLUMNS[which].quantity, symbol);
        } catch (UnitException e) {
            fault(e.key(), cell + 1, e.getMessage());
        }
    }

    private static int named(String name) {
        for (Column column : COLUMNS) {
            if (CaseFile.word(column).equals(name.toLowerCase(Locale.ROOT))) {
                return column.ordinal();
            }
        }
        return -1;
    }

    private static String needed() {
        return "a header such as 'time [s],speed [km/h],grade [%]' is needed, grade may be left out";
    }

    private void row(String[] row) {
        if (row.length != width) {
            fault("row-width", 0, "this row has " + row.length + " cells, the header has " + width);
            return;
        }
        double[] si = new double[COLUMNS.length];
        boolean whole = true;
        for (Column column : COLUMNS) {
            int cell = cells[column.ordinal()];
            si[column.ordinal()] = cell < 0 ? 0.0 : value(column, cell, row[cell].strip());
            whole &= !Double.isNaN(si[column.ordinal()]);
        }
        if (whole && follows(si)) {
            rows.add(si);
        }
    }

    private double value(Column column, int cell, String typed) {
        Unit unit = units[column.ordinal()];
        double si;
        try {
            si = unit.toSi(Double.parseDouble(typed));
        } catch (NumberFormatException e) {
            fault("number-wrong", cell + 1, "'" + typed + "' is not a number; decimals are written with a point");
            return Double.NaN;
        }
        if (!(si >= column.low && si <= column.high)) {
            fault(
                    "out-of-range",
                    cell + 1,
                    CaseFile.word(column) + " is " + typed + " " + unit.symbol() + "; it must lie between "
                            + unit.text(column.low) + " and " + unit.text(column.high));
            return Double.NaN;
        }
        return si;
    }

    private boolean follows(double[] si) {
        double[] last = rows.isEmpty() ? null : rows.get(rows.size() - 1);
        if (last == null) {
            return true;
        }
        double step = si[0] - last[0];
        if (!(step > 0.0)) {
            Unit unit = units[0];
            fault(
                    "not-rising",
                    cells[0] + 1,
                    "time is " + unit.text(si[0]) + " after " + unit.text(last[0]) + "; it must rise from row to row");
            return false;
        }
        double acceleration = (si[1] - last[1]) / step;
        if (Math.abs(acceleration) > HARDEST) {
            fault(
                    "out-of-range",
                    cells[1] + 1,
                    String.format(
                            Locale.ROOT,
                            "speed changes by %.1f m/s2 from the row before; tyres hold no more than %.0f m/s2",
                            acceleration,
                            HARDEST));
        }
        return true;
    }

    private Trace trace() {
        if (faults.isEmpty() && rows.size() < 2) {
            faults.add(Finding.fault(
                    "no-rows", Place.of(file), "has " + rows.size() + " rows of numbers; a trace needs two or more"));
        }
        throwIfAny();
        return new Trace(column(Column.TIME), column(Column.SPEED), column(Column.GRADE));
    }

    private double[] column(Column column) {
        return rows.stream().mapToDouble(row -> row[column.ordinal()]).toArray();
    }

    private void fault(String key, int cell, String message) {
        faults.add(Finding.fault(key, new Place(file, line, cell), message));
    }

    private void throwIfAny() {
        if (!faults.isEmpty()) {
            throw new InputException(faults);
        }
    }
}
