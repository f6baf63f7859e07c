package hotday.signals.gateway;

import hotday.core.finding.Place;
import java.util.List;
import java.util.Map;

/**
 * What must reach its end in time. Times in ns.
 *
 * @param limit longest time from a change at the sender of the first signal to the arrival of the last
 * @param steps signals, each following from the one before: through the gateway, or through a node
 * @param takes own time of nodes
 * @param stepPlaces where the steps stand
 */
record PathPlan(
        String name,
        long limit,
        List<SignalName> steps,
        Map<String, Long> takes,
        List<Place> stepPlaces,
        Place place,
        Place limitPlace) {}
