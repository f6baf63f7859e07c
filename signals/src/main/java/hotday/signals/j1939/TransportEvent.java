package hotday.signals.j1939;

/** What became of a message of several packets, or of a frame that fits into none. */
public enum TransportEvent {
    /** Whole, and handed on. */
    COMPLETE("complete"),
    /** Another message between the same two began before this one was whole. */
    INTERRUPTED("another message began before it was whole"),
    /** A packet is missing, doubled or out of turn. */
    OUT_OF_SEQUENCE("a packet was missing or out of turn"),
    /** The next packet did not come in time. */
    SILENT("the next packet did not come in time"),
    /** One of the two gave it up. */
    ABORTED("one of the two gave it up"),
    /** More than {@link J1939Transport#SESSIONS} at once: the one that was quiet longest gave way. */
    DISPLACED("too many messages at once"),
    /** Still on its way: lost when the recording is over. */
    UNFINISHED("the recording ended before it was whole"),
    /** A packet of a message whose beginning was not seen. */
    STRAY("a packet without a beginning"),
    /** A frame that is none of this transport, such as a size that does not fit its number of packets. */
    MALFORMED("no frame of this transport");

    private final String words;

    TransportEvent(String words) {
        this.words = words;
    }

    /** For people. */
    public String words() {
        return words;
    }
}
