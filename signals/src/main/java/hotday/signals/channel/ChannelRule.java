package hotday.signals.channel;

import hotday.core.finding.Place;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a channel map says about one channel.
 *
 * @param column name in the header; empty for a constant
 * @param position from 1, used when no header cell has the name; 0 when not given
 * @param optional true when files may lack the column
 * @param unit as typed; empty when the header must carry it
 * @param constant SI, for the whole run; empty for a column
 * @param limits what is done to samples
 * @param lag s by which the column is late
 * @param resolution SI; 0 when unknown
 * @param missing words and numbers that mean no value, lower case
 * @param typed its keys besides column, position and unit, in YAML
 * @param place in the map file
 */
record ChannelRule(
        ModelChannel kind,
        String column,
        int position,
        boolean optional,
        Optional<String> unit,
        Optional<Double> constant,
        Limits limits,
        double lag,
        double resolution,
        Set<String> missing,
        Map<String, String> typed,
        Place place) {

    /**
     * @param lowest, highest range of samples that can be right, SI
     * @param floor, ceiling samples beyond are moved here, SI; infinite for none
     * @param spike distance from the samples around that cannot be right, SI; infinite for none
     * @param engineOff value while the engine stands, SI; empty to leave samples alone
     */
    record Limits(
            double lowest, double highest, double floor, double ceiling, double spike, Optional<Double> engineOff) {}
}
