package hotday.study.property;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.physics.refrigerant.Refrigerant;
import hotday.signals.log.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Turns the rows of a points file into what is known, and faults into places. */
final class RowKnown {
    static final String NEEDED =
            "needed are two of T_K, p_Pa, h_J_kg, x, or T_K or p_Pa alone for liquid and vapour in equilibrium";

    private final PointsHeader header;
    private final String file;
    private final double[] values = new double[PointsHeader.KNOWN.size()];

    RowKnown(PointsHeader header, String file) {
        this.header = header;
        this.file = file;
    }

    /** What the filled cells say, unchecked; cells without a number count as blank. */
    Known of(Row row) {
        for (int i = 0; i < values.length; i++) {
            values[i] = header.cell(i) < 0 ? Double.NaN : row.number(header.cell(i));
        }
        return new Known(values[0], values[1], values[2], values[3]);
    }

    /** What is wrong with the form of a row; true when nothing is. */
    boolean wellFormed(Row row, Consumer<Finding> faults) {
        if (row.damage() != Row.Damage.NONE) {
            faults.accept(fault("row-damaged", row, 1, "a quote is opened and not closed, or zero bytes stand here"));
            return false;
        }
        boolean good = true;
        for (int cell = header.width(); cell < row.count(); cell++) {
            if (!row.blank(cell)) {
                faults.accept(
                        fault("row-too-wide", row, cell + 1, "'" + row.text(cell) + "' stands behind the last column"));
                good = false;
            }
        }
        for (int i = 0; i < values.length; i++) {
            good &= number(row, i, faults);
        }
        return good && enough(row, faults);
    }

    private boolean number(Row row, int which, Consumer<Finding> faults) {
        int cell = header.cell(which);
        if (cell < 0 || row.blank(cell) || !Double.isNaN(row.number(cell))) {
            return true;
        }
        String message = "'" + PointsHeader.KNOWN.get(which) + "' is '" + row.text(cell) + "'; a number is needed";
        faults.accept(fault("text-in-number-column", row, cell + 1, message));
        return false;
    }

    private boolean enough(Row row, Consumer<Finding> faults) {
        Known known = of(row);
        if (known.enough()) {
            return true;
        }
        List<String> filled = new ArrayList<>();
        int last = 0;
        for (int i = 0; i < values.length; i++) {
            if (!Double.isNaN(values[i])) {
                filled.add(PointsHeader.KNOWN.get(i) + " " + row.text(header.cell(i)));
                last = Math.max(last, header.cell(i));
            }
        }
        String given = filled.isEmpty() ? "nothing is given" : String.join(", ", filled) + " alone will not do";
        given = filled.size() > 2 ? String.join(", ", filled) + " are too many" : given;
        faults.accept(fault("pair-needed", row, last + 1, given + "; " + NEEDED));
        return false;
    }

    /** A row outside the range of the equation, at the cell that is out. */
    Finding outOfRange(Row row, Known known, Refrigerant fluid, String message) {
        return fault("out-of-range", row, header.cell(culprit(known, fluid)) + 1, message);
    }

    private static int culprit(Known known, Refrigerant fluid) {
        if (known.temperature() < fluid.lowestTemperature() || known.temperature() > fluid.highestTemperature()) {
            return 0;
        }
        if (known.pressure() <= 0 || known.pressure() > fluid.highestPressure()) {
            return 1;
        }
        if (known.quality() < 0 || known.quality() > 1) {
            return 3;
        }
        if (!Double.isNaN(known.enthalpy())) {
            return 2;
        }
        return Double.isNaN(known.temperature()) ? 1 : 0;
    }

    private Finding fault(String key, Row row, int column, String message) {
        return Finding.fault(key, new Place(file, row.line(), column), message);
    }
}
