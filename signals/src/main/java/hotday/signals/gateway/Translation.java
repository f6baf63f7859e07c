package hotday.signals.gateway;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * A line of a sheet: what a signal of one network becomes on another. Times in ns.
 *
 * @param from empty when the target has a fixed value
 * @param fixed that value as typed
 * @param fromUnit unit of the source where its file says none or a wrong one
 * @param toUnit the same for the target
 * @param measures kind of quantity, needed where units alone leave it open
 * @param factor applied behind the conversion of units
 * @param table source value to target value, for all of them; words or raw values
 * @param special the same for some values only; the others are converted
 * @param otherwise target value for what stands in no row of the table
 * @param timeOut age of the source from which on it counts as missing
 * @param hold how often the last value is sent then, before the safe one
 * @param safe value to send then, as typed
 * @param clip whether values that the target has no room for may be cut off
 * @param coarser whether the target may have coarser steps
 */
record Translation(
        Optional<SignalName> from,
        SignalName to,
        Optional<String> fixed,
        Optional<String> fromUnit,
        Optional<String> toUnit,
        Optional<String> measures,
        double factor,
        Map<String, String> table,
        Map<String, String> special,
        Optional<String> otherwise,
        OptionalLong timeOut,
        int hold,
        Optional<String> safe,
        boolean clip,
        boolean coarser,
        Places places) {}
