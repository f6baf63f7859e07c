package hotday.signals.gateway;

import hotday.core.finding.Place;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * What a sheet says about a message of a network. Times in ns.
 *
 * @param from node that sends it, in place of the one of the DBC file
 * @param every longest time from one frame to the next
 * @param onChange shortest time between two frames when it is sent on change, too
 * @param jitter longest delay of a frame until it waits for the bus
 * @param deadline longest response time allowed
 * @param counter the signal that counts frames; {@code none} where the file is wrong about one
 * @param counterFirst value that the counter begins with
 * @param counterLast highest value of the counter; 0 for all that its bits hold
 * @param counterStep from one value to the next
 * @param checksum the signal that holds a checksum; {@code none} where the file is wrong about one
 * @param checksumRule how it is worked out
 * @param place where it stands in the sheet
 */
record MessagePlan(
        Optional<String> from,
        OptionalLong every,
        OptionalLong onChange,
        OptionalLong jitter,
        OptionalLong deadline,
        Optional<String> counter,
        int counterFirst,
        int counterLast,
        int counterStep,
        Optional<String> checksum,
        Optional<ChecksumPlan> checksumRule,
        Place place) {
    /** Says that there is no such signal. */
    static final String NONE = "none";
}
