package hotday.signals.mdf;

import java.util.List;
import java.util.Optional;

/**
 * Records of one layout.
 *
 * @param position of the block, bytes
 * @param recordId what stands before its records in a data group of several
 * @param cycles records it says it has
 * @param flags of the standard
 * @param dataBytes of a record, without identifier and bits of validity
 * @param invalidBytes of a record that hold the bits of validity
 * @param name of the acquisition, else of its source; may be empty
 * @param bus what the source says it is: 2 for CAN; 0 where nothing is said
 * @param master link to the group that holds its times; 0 where it holds them itself
 * @param channels in the order of the file
 */
record Group(
        long position,
        long recordId,
        long cycles,
        int flags,
        long dataBytes,
        long invalidBytes,
        String name,
        int bus,
        long master,
        List<Channel> channels) {
    private static final int VALUES_ONLY = 1;
    private static final int BUS_EVENT = 2;
    private static final int REMOTE_MASTER = 8;

    Group {
        channels = List.copyOf(channels);
    }

    /** Whether its records are values of any length of a channel of another group. */
    boolean isValues() {
        return (flags & VALUES_ONLY) != 0;
    }

    boolean isBusEvent() {
        return (flags & BUS_EVENT) != 0;
    }

    /** Whether its times stand in another group. */
    boolean hasRemoteMaster() {
        return (flags & REMOTE_MASTER) != 0;
    }

    /** Bytes of a record without identifier. */
    long recordBytes() {
        return dataBytes + invalidBytes;
    }

    Optional<Channel> time() {
        return channels.stream().filter(Channel::isTime).findFirst();
    }

    /** For people. */
    String shown() {
        return "group " + (name.isEmpty() ? "" : "'" + name + "' ") + "(##CG at byte " + position + ")";
    }
}
