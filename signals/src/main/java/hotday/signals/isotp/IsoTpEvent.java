package hotday.signals.isotp;

/** What became of a message, or of a frame that fits into none. */
public enum IsoTpEvent {
    /** Whole, and handed on. */
    COMPLETE("complete"),
    /** Another message of the same sender began before this one was whole. */
    INTERRUPTED("another message began before it was whole"),
    /** A frame is missing, doubled or out of turn. */
    OUT_OF_SEQUENCE("a frame was missing or out of turn"),
    /** The next frame did not come within {@link IsoTpListener#SILENCE}. */
    SILENT("the next frame did not come within 1 s"),
    /** The receiver was asked to go on and did not say so within {@link IsoTpListener#SILENCE}. */
    UNANSWERED("the receiver did not let it go on within 1 s"),
    /** The receiver said that it has no room for it. */
    REFUSED("the receiver had no room for it"),
    /** Longer than {@link IsoTpListener#LONGEST}, or there was no room left; not put together. */
    TOO_LONG("longer than is kept"),
    /** More than {@link IsoTpListener#SESSIONS} at once: the one that was quiet longest gave way. */
    DISPLACED("too many messages at once"),
    /** Still on its way: lost when the recording is over. */
    UNFINISHED("the recording ended before it was whole"),
    /** A continuing frame of a message whose beginning was not seen. */
    STRAY("a continuing frame without a beginning"),
    /** A frame that is no frame of this transport, such as one that promises more bytes than it has. */
    MALFORMED("no frame of this transport");

    private final String words;

    IsoTpEvent(String words) {
        this.words = words;
    }

    /** For people. */
    public String words() {
        return words;
    }
}
