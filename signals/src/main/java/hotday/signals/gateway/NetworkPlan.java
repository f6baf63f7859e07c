package hotday.signals.gateway;

import hotday.core.finding.Place;
import hotday.signals.dbc.DbcFile;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/**
 * A network as a sheet describes it.
 *
 * @param bitRate bit/s
 * @param gateway name that the gateway has as a node of this network
 * @param jitter of messages that say nothing else, ns
 * @param loadLimit highest load allowed, share; empty for what is common practice
 * @param messages by name
 * @param silent messages of the file that nobody sends in this vehicle
 * @param place where it stands in the sheet
 */
record NetworkPlan(
        String name,
        DbcFile dbc,
        double bitRate,
        String gateway,
        OptionalLong jitter,
        Optional<Double> loadLimit,
        Map<String, MessagePlan> messages,
        Set<String> silent,
        Place place) {
    private static final double NANO = 1e9;

    /** Of one bit, ns, rounded up. */
    long bitTime() {
        return (long) Math.ceil(NANO / bitRate);
    }

    /** Of so many bits, ns, rounded up. */
    long time(int bits) {
        return (long) Math.ceil(bits * NANO / bitRate);
    }
}
