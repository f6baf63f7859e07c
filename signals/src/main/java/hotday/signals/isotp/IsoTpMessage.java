package hotday.signals.isotp;

import java.util.Arrays;
import java.util.Objects;

/** A whole message and who sent it when; a view that its {@link IsoTpListener} moves from message to message. */
public final class IsoTpMessage {
    private double start;
    private double time;
    private int bus;
    private int id;
    private boolean extended;
    private int address;
    private byte[] data = {};
    private int offset;
    private int length;

    IsoTpMessage() {}

    /** A message whose bytes come from elsewhere. */
    public static IsoTpMessage of(double time, int bus, int id, boolean extended, byte[] data) {
        return new IsoTpMessage().from(time, time, bus, id, extended, -1).showing(data, 0, data.length);
    }

    IsoTpMessage from(double start, double time, int bus, int id, boolean extended, int address) {
        this.start = start;
        this.time = time;
        this.bus = bus;
        this.id = id;
        this.extended = extended;
        this.address = address;
        return this;
    }

    IsoTpMessage showing(byte[] data, int offset, int length) {
        this.data = data;
        this.offset = offset;
        this.length = length;
        return this;
    }

    /** s, of the first frame. */
    public double start() {
        return start;
    }

    /** s, of the last frame. */
    public double time() {
        return time;
    }

    /** Number of the network, from 0. */
    public int bus() {
        return bus;
    }

    /** Identifier of the frames. */
    public int id() {
        return id;
    }

    /** Whether the identifier has 29 bits. */
    public boolean extended() {
        return extended;
    }

    /** The address in front of the transport, 0 to 255; -1 with {@link Addressing#NORMAL}. */
    public int address() {
        return address;
    }

    /** Bytes, at least 1. */
    public int length() {
        return length;
    }

    /**
     * A byte, 0 to 255.
     *
     * @param index from 0
     */
    public int at(int index) {
        return data[offset + Objects.checkIndex(index, length)] & 0xFF;
    }

    /** A copy of the bytes from a place to the end; empty from the end on. */
    public byte[] bytes(int from) {
        Objects.checkFromToIndex(from, length, length);
        return Arrays.copyOfRange(data, offset + from, offset + length);
    }
}
