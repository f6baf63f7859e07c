package hotday.signals.channel;

import hotday.core.finding.Place;
import hotday.core.unit.Unit;
import java.util.Optional;

/**
 * What a channel map says about time.
 *
 * @param column name in the header
 * @param position from 1, used when no header cell has the name; 0 when not given
 * @param unit of a column of numbers; empty when the header must carry it
 * @param clock true for stamps such as hh:mm:ss
 * @param step from row to row of a recording without a time column, s; 0 where time stands in one
 * @param place in the map file
 */
record TimeRule(String column, int position, Optional<Unit> unit, boolean clock, double step, Place place) {
    boolean counted() {
        return step > 0.0;
    }
}
