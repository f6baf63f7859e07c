package hotday.signals.j1939;

import hotday.signals.frame.Frame;

/**
 * Puts messages of 9 to 1785 bytes together from their packets, as a listener sees them: broadcast (TP.BAM) and between
 * two (TP.CM with RTS, CTS, end and abort, TP.DT), many at once. Source: SAE J1939-21, public descriptions; time-outs
 * from memory. The longer messages of the extended transport (ETP) are not put together. Nothing is sent. Frames come in
 * the order of time. Memory is bounded and reused; for one thread at a time.
 *
 * <p>Between two, packets are placed by their number: a receiver may ask for one again, and the listener need not have
 * seen that. A broadcast whose packets do not come in turn is given up.
 */
public final class J1939Transport {
    /** Group of the frames that begin, steer and end a message. */
    public static final int CONTROL = 0xEC00;
    /** Group of the packets. */
    public static final int PACKETS = 0xEB00;
    /** Messages on their way at once. */
    public static final int SESSIONS = 256;
    /** s without the next packet after which a broadcast is given up (T1). */
    public static final double BROADCAST_SILENCE = 0.75;
    /** s without a packet or an answer after which a message between two is given up (T2, T3). */
    public static final double SILENCE = 1.25;

    private static final int RTS = 16;
    private static final int CTS = 17;
    private static final int END = 19;
    private static final int BAM = 32;
    private static final int ABORT = 255;
    private static final int FRAME = 8;
    private static final int SHORTEST = 9;
    private static final double SWEEP = 0.25;

    private final TransportSink sink;
    private final long[] counts = new long[TransportEvent.values().length];
    /** The first {@link #active} are on their way, the others wait to be used again. */
    private final PacketMessage[] messages = new PacketMessage[SESSIONS];

    private int active;
    private double swept = Double.NEGATIVE_INFINITY;

    public J1939Transport(TransportSink sink) {
        this.sink = sink;
    }

    /** How often something happened so far. */
    public long count(TransportEvent event) {
        return event == TransportEvent.UNFINISHED ? active : counts[event.ordinal()];
    }

    /**
     * Looks at the next frame.
     *
     * @return whether it is one of this transport
     */
    public boolean take(Frame frame) {
        int group = frame.extended() ? J1939Id.group(frame.id()) : -1;
        if (group != CONTROL && group != PACKETS) {
            return false;
        }
        sweep(frame.time());
        if (frame.length() != FRAME) {
            counts[TransportEvent.MALFORMED.ordinal()]++;
        } else if (group == PACKETS) {
            packet(frame);
        } else {
            control(frame);
        }
        return true;
    }

    private void control(Frame frame) {
        switch (frame.at(0)) {
            case RTS, BAM -> first(frame);
            case CTS -> answer(frame);
            case END -> end(frame);
            case ABORT -> abort(frame);
            default -> counts[TransportEvent.MALFORMED.ordinal()]++;
        }
    }

    private void first(Frame frame) {
        boolean broadcast = frame.at(0) == BAM;
        int size = frame.at(1) | frame.at(2) << 8;
        int packets = frame.at(3);
        int group = groupAtEnd(frame);
        int destination = J1939Id.destination(frame.id());
        if (broadcast != (destination == J1939Id.EVERYBODY)
                || size < SHORTEST
                || packets != (size + PacketMessage.PACKET - 1) / PacketMessage.PACKET
                || group > J1939Id.HIGHEST_GROUP) {
            counts[TransportEvent.MALFORMED.ordinal()]++;
            return;
        }
        int source = J1939Id.source(frame.id());
        giveUp(find(frame.bus(), source, destination), TransportEvent.INTERRUPTED);
        PacketMessage message = free();
        message.bus = frame.bus();
        message.source = source;
        message.destination = destination;
        message.begin(frame.time(), group, size, packets, broadcast);
    }

    private PacketMessage free() {
        if (active == SESSIONS) {
            giveUp(quietest(), TransportEvent.DISPLACED);
        }
        if (messages[active] == null) {
            messages[active] = new PacketMessage();
        }
        return messages[active++];
    }

    private void packet(Frame frame) {
        int i = find(frame.bus(), J1939Id.source(frame.id()), J1939Id.destination(frame.id()));
        if (i < 0) {
            counts[TransportEvent.STRAY.ordinal()]++;
            return;
        }
        PacketMessage message = messages[i];
        if (isOverdue(message, frame.time())) {
            giveUp(i, TransportEvent.SILENT);
        } else if (!message.mayBe(frame.at(0))) {
            giveUp(i, TransportEvent.OUT_OF_SEQUENCE);
        } else {
            message.put(frame.at(0), frame.data(), frame.offset() + 1, frame.time());
            if (message.isWhole()) {
                finish(i, frame.time());
            }
        }
    }

    private void finish(int i, double time) {
        PacketMessage m = messages[i];
        counts[TransportEvent.COMPLETE.ordinal()]++;
        remove(i);
        sink.message(time, m.bus, m.group, m.source, m.destination, m.data, m.size);
    }

    /** The receiver asks for packets, or for patience. */
    private void answer(Frame frame) {
        int i = findAnswered(frame);
        if (i >= 0) {
            messages[i].last = frame.time();
        }
    }

    /** The receiver has all; if the listener has not, it missed some. */
    private void end(Frame frame) {
        giveUp(findAnswered(frame), TransportEvent.OUT_OF_SEQUENCE);
    }

    private void abort(Frame frame) {
        int i = findAnswered(frame);
        int own = find(frame.bus(), J1939Id.source(frame.id()), J1939Id.destination(frame.id()));
        boolean byTheSender = i < 0 && own >= 0 && messages[own].group == groupAtEnd(frame);
        giveUp(byTheSender ? own : i, TransportEvent.ABORTED);
    }

    /** The message that a frame of its receiver speaks of, or -1. */
    private int findAnswered(Frame frame) {
        int i = find(frame.bus(), J1939Id.destination(frame.id()), J1939Id.source(frame.id()));
        return i >= 0 && !messages[i].broadcast && messages[i].group == groupAtEnd(frame) ? i : -1;
    }

    private static int groupAtEnd(Frame frame) {
        return frame.at(5) | frame.at(6) << 8 | frame.at(7) << 16;
    }

    private int find(int bus, int source, int destination) {
        for (int i = 0; i < active; i++) {
            if (messages[i].isBetween(bus, source, destination)) {
                return i;
            }
        }
        return -1;
    }

    private int quietest() {
        int quietest = 0;
        for (int i = 1; i < active; i++) {
            quietest = messages[i].last < messages[quietest].last ? i : quietest;
        }
        return quietest;
    }

    /** Gives up what has been quiet for too long; looked for four times a second. */
    private void sweep(double time) {
        if (Math.abs(time - swept) < SWEEP) {
            return;
        }
        swept = time;
        for (int i = active - 1; i >= 0; i--) {
            if (isOverdue(messages[i], time)) {
                giveUp(i, TransportEvent.SILENT);
            }
        }
    }

    private static boolean isOverdue(PacketMessage message, double time) {
        return time - message.last > (message.broadcast ? BROADCAST_SILENCE : SILENCE);
    }

    private void giveUp(int i, TransportEvent event) {
        if (i >= 0) {
            counts[event.ordinal()]++;
            remove(i);
        }
    }

    private void remove(int i) {
        PacketMessage ended = messages[i];
        active--;
        messages[i] = messages[active];
        messages[active] = ended;
    }
}
