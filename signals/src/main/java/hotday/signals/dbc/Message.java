package hotday.signals.dbc;

import hotday.core.finding.Place;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A message of a network.
 *
 * @param id of its frames, without the bit that marks extended ones
 * @param extended whether the identifier has 29 bits
 * @param length bytes
 * @param sender name of a node; empty when none is given
 * @param moreSenders further nodes that send it
 * @param signals in the order of the file
 * @param comment empty when there is none
 * @param attributes those given to this message itself
 * @param place where it is described
 */
public record Message(
        int id,
        boolean extended,
        String name,
        int length,
        String sender,
        List<String> moreSenders,
        List<Signal> signals,
        String comment,
        Map<String, String> attributes,
        Place place) {
    /** Set in the identifiers of a file for those of 29 bits. */
    static final long EXTENDED_BIT = 0x8000_0000L;
    /** The identifier under which files keep signals that belong to no message. */
    static final long NO_MESSAGE = 0xC000_0000L;

    /** The first signal of a name. */
    public Optional<Signal> signal(String name) {
        return signals.stream().filter(s -> s.name().equals(name)).findFirst();
    }
}
