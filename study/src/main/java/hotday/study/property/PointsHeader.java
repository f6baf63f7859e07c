package hotday.study.property;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.unit.Nearest;
import hotday.signals.log.DelimitedText;
import java.util.ArrayList;
import java.util.List;

/** Which column of a points file holds what. */
final class PointsHeader {
    static final List<String> KNOWN = List.of("T_K", "p_Pa", "h_J_kg", "x");
    private static final List<String> CARRIED = List.of("id", "note");

    private final int[] known = {-1, -1, -1, -1};
    private final List<String> carried = new ArrayList<>();
    private final List<Integer> carriedCells = new ArrayList<>();
    private final int width;

    private PointsHeader(int width) {
        this.width = width;
    }

    /** Refuses unknown names and names that stand twice, all at once. */
    static PointsHeader of(DelimitedText text) {
        PointsHeader header = new PointsHeader(text.header().size());
        List<Finding> faults = new ArrayList<>();
        for (int i = 0; i < text.header().size(); i++) {
            String name = text.header().get(i);
            Place place = new Place(text.path().toString(), text.headerLine(), i + 1);
            if (text.header().indexOf(name) < i) {
                faults.add(Finding.fault("column-twice", place, "there are two columns '" + name + "'; take one out"));
            } else if (!header.take(name, i)) {
                faults.add(Finding.fault("no-such-column", place, unknown(name)));
            }
        }
        if (faults.isEmpty() && !header.possible()) {
            Place place = new Place(text.path().toString(), text.headerLine(), 0);
            faults.add(Finding.fault("pair-needed", place, "these columns cannot fix a state: " + RowKnown.NEEDED));
        }
        if (!faults.isEmpty()) {
            throw new InputException(faults);
        }
        return header;
    }

    private static String unknown(String name) {
        List<String> all = new ArrayList<>(KNOWN);
        all.addAll(CARRIED);
        return "'" + name + "' is no column of a points file"
                + Nearest.to(name, all).map(n -> " (did you mean '" + n + "'?)").orElse("")
                + "; there are T_K, p_Pa (absolute), h_J_kg, x, and id, note to carry through";
    }

    private boolean take(String name, int cell) {
        if (CARRIED.contains(name)) {
            carried.add(name);
            carriedCells.add(cell);
            return true;
        }
        int which = KNOWN.indexOf(name);
        if (which >= 0) {
            known[which] = cell;
        }
        return which >= 0;
    }

    private boolean possible() {
        return known[0] >= 0 || known[1] >= 0 || known[2] >= 0 && known[3] >= 0;
    }

    /** Cell of T_K, p_Pa, h_J_kg and x; -1 where there is no such column. */
    int cell(int which) {
        return known[which];
    }

    int width() {
        return width;
    }

    /** Names of the columns that are copied. */
    List<String> carried() {
        return carried;
    }

    List<Integer> carriedCells() {
        return carriedCells;
    }
}
