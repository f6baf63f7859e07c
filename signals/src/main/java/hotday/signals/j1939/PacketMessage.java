package hotday.signals.j1939;

import java.util.BitSet;

/** One message of several packets on its way. Objects are used again and again. */
final class PacketMessage {
    /** Bytes of a packet. */
    static final int PACKET = 7;
    /** Packets of the longest message. */
    static final int PACKETS = 255;

    final byte[] data = new byte[PACKET * PACKETS];
    private final BitSet there = new BitSet(PACKETS + 1);

    int bus;
    int source;
    int destination;
    int group;
    int size;
    /** s, of the last frame that moved it on. */
    double last;
    /** Whether it goes to everybody: then packets come in turn or it is lost, and nobody asks for one again. */
    boolean broadcast;

    private int packets;
    private int missing;
    private int next;

    void begin(double time, int group, int size, int packets, boolean broadcast) {
        this.last = time;
        this.group = group;
        this.size = size;
        this.packets = packets;
        this.broadcast = broadcast;
        this.missing = packets;
        this.next = 1;
        there.clear();
    }

    boolean isBetween(int bus, int source, int destination) {
        return this.source == source && this.destination == destination && this.bus == bus;
    }

    /** Whether a packet of this number may come now. */
    boolean mayBe(int number) {
        return broadcast ? number == next : number >= 1 && number <= packets;
    }

    boolean isWhole() {
        return missing == 0;
    }

    void put(int number, byte[] from, int offset, double time) {
        last = time;
        next = number + 1;
        if (!there.get(number)) {
            there.set(number);
            missing--;
            System.arraycopy(from, offset, data, (number - 1) * PACKET, PACKET);
        }
    }
}
