package hotday.signals.frame;

import java.util.Arrays;
import java.util.Objects;

/**
 * One frame of a CAN network: identifier, bus, time and a view of its data. A reader keeps one object and moves it from
 * frame to frame with {@link #set}, so that millions of them allocate nothing; who wants to keep one takes a
 * {@link #copy}. For one thread at a time.
 */
public final class Frame {
    /** Highest identifier of 11 bits. */
    public static final int HIGHEST_STANDARD = 0x7FF;
    /** Highest identifier of 29 bits. */
    public static final int HIGHEST_EXTENDED = 0x1FFF_FFFF;
    /** Bytes of the longest frame (CAN FD). */
    public static final int LONGEST = 64;

    /** What a frame is, beside its identifier. */
    public enum Kind {
        /** Carries a payload. */
        DATA,
        /** Asks for a payload: has a length and no bytes. */
        REMOTE,
        /** What a recorder noted about an error on the wires; identifier and payload are its notes. */
        ERROR
    }

    private static final byte[] NOTHING = {};

    private double time;
    private int bus;
    private int id;
    private boolean extended;
    private byte[] data = NOTHING;
    private int offset;
    private int length;
    private Kind kind = Kind.DATA;
    private boolean flexible;

    /**
     * Lets this object show another frame. The bytes are not copied: they must stay as they are while it is looked at.
     *
     * @param time s, from whatever zero the recording has; NaN when it has none
     * @param bus number of the network, from 0
     * @param id 0 to 0x7FF, or to 0x1FFFFFFF when extended
     * @param extended whether the identifier has 29 bits
     * @param data where the payload lies
     * @param offset of the first payload byte in {@code data}
     * @param length of the payload, 0 to 64 bytes
     * @return this
     */
    public Frame set(double time, int bus, int id, boolean extended, byte[] data, int offset, int length) {
        int highest = extended ? HIGHEST_EXTENDED : HIGHEST_STANDARD;
        if (id < 0 || id > highest) {
            throw new IllegalArgumentException(
                    String.format("identifier 0x%X must lie between 0 and 0x%X", id, highest));
        }
        if (length > LONGEST) {
            throw new IllegalArgumentException("payload of " + length + " bytes, must be 0 to " + LONGEST);
        }
        Objects.checkFromIndexSize(offset, length, data.length);
        this.time = time;
        this.bus = bus;
        this.id = id;
        this.extended = extended;
        this.data = data;
        this.offset = offset;
        this.length = length;
        this.kind = Kind.DATA;
        this.flexible = false;
        return this;
    }

    /** Makes of the frame just {@link #set} one of another kind; of a remote one the length stays. */
    public Frame as(Kind other) {
        this.kind = other;
        return this;
    }

    /** Makes the frame just {@link #set} one of CAN FD. */
    public Frame asFlexible() {
        this.flexible = true;
        return this;
    }

    public Kind kind() {
        return kind;
    }

    /** Whether it is a frame of CAN FD. */
    public boolean flexible() {
        return flexible;
    }

    /** s. */
    public double time() {
        return time;
    }

    /** Number of the network, from 0. */
    public int bus() {
        return bus;
    }

    public int id() {
        return id;
    }

    /** Whether the identifier has 29 bits. */
    public boolean extended() {
        return extended;
    }

    /** The array that the payload lies in; not a copy. */
    public byte[] data() {
        return data;
    }

    /** Where in {@link #data} the payload begins. */
    public int offset() {
        return offset;
    }

    /** Bytes of payload; of a remote frame those asked for. */
    public int length() {
        return length;
    }

    /**
     * A byte of the payload, 0 to 255.
     *
     * @param index from 0
     */
    public int at(int index) {
        return data[offset + Objects.checkIndex(index, length)] & 0xFF;
    }

    /** The same frame with bytes of its own. */
    public Frame copy() {
        Frame copy =
                new Frame().set(time, bus, id, extended, Arrays.copyOfRange(data, offset, offset + length), 0, length);
        copy.kind = kind;
        copy.flexible = flexible;
        return copy;
    }
}
