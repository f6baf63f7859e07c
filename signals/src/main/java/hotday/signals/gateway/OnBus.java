package hotday.signals.gateway;

import hotday.core.finding.Place;
import hotday.signals.bus.FrameLength;
import hotday.signals.dbc.Message;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * A message that is sent on a network. Times in ns.
 *
 * @param senders nodes that send it
 * @param ours whether the gateway is among them
 * @param every longest time from one frame to the next
 * @param shortest time between two frames
 * @param plan what the sheet says about it
 * @param place where to look: in the sheet if it stands there, else in the DBC file
 */
record OnBus(
        Message message,
        List<String> senders,
        boolean ours,
        OptionalLong every,
        OptionalLong shortest,
        long jitter,
        OptionalLong deadline,
        Optional<MessagePlan> plan,
        Place place) {
    boolean classic() {
        return message.length() <= FrameLength.MOST_BYTES;
    }

    /** Whether its share of the bus is known. */
    boolean timed() {
        return classic() && shortest.isPresent();
    }

    String sender() {
        return senders.isEmpty() ? "nobody named" : String.join(", ", senders);
    }
}
