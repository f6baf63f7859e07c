package hotday.signals.isotp;

import hotday.signals.frame.Frame;

/**
 * Puts the messages of ISO 15765-2 together from the frames of both directions, many at once, and counts those that
 * break. It takes every frame it is given for one of this transport: which identifiers carry it is the caller's
 * business. Nothing is sent. Frames come in the order of time. For one thread at a time.
 *
 * <p>Lengths: 1 to 4095 bytes, and the 32-bit length of the edition of 2016 up to {@link #LONGEST}; classic frames and
 * those of up to 64 bytes. What a message claims to be long is never reserved: room grows with the bytes that come, to
 * {@link #ROOM} for all. Once the buffers have grown nothing is allocated.
 *
 * <p>Flow control is seen on another identifier than the message it is for. It is understood where the two are a pair
 * by rule: eleven bits 8 apart, or 29 bits with the last two bytes swapped. Elsewhere it is passed over, and only
 * silence ends such a message early. A message that goes on without flow control is taken: the listener may have missed
 * it.
 */
public final class IsoTpListener {
    /** s without the next frame, or without flow control, after which a message is given up (N_Cr, N_Bs). */
    public static final double SILENCE = 1.0;
    /** Bytes of the longest message that is put together. */
    public static final int LONGEST = 1 << 20;
    /** Messages on their way at once. */
    public static final int SESSIONS = 256;
    /** Bytes of all buffers together. */
    public static final int ROOM = 16 << 20;

    private static final int CLASSIC = 8;
    private static final int LONGEST_OF_12_BITS = 0xFFF;
    private static final double SWEEP = 0.25;

    private final Addressing addressing;
    private final IsoTpSink sink;
    private final IsoTpMessage view = new IsoTpMessage();
    private final long[] counts = new long[IsoTpEvent.values().length];
    /** The first {@link #active} are on their way, the others wait to be used again. */
    private final Reception[] receptions = new Reception[SESSIONS];

    private int active;
    private int grown;
    private double swept = Double.NEGATIVE_INFINITY;

    public IsoTpListener(Addressing addressing, IsoTpSink sink) {
        this.addressing = addressing;
        this.sink = sink;
    }

    /** How often something happened so far. */
    public long count(IsoTpEvent event) {
        return event == IsoTpEvent.UNFINISHED ? active : counts[event.ordinal()];
    }

    /** Bytes of all buffers. */
    int held() {
        int held = 0;
        for (int i = 0; i < SESSIONS && receptions[i] != null; i++) {
            held += receptions[i].data.length;
        }
        return held;
    }

    /** Looks at the next frame. */
    public void take(Frame frame) {
        sweep(frame.time());
        int at = addressing.bytes;
        if (frame.length() <= at) {
            lost(IsoTpEvent.MALFORMED, frame);
            return;
        }
        switch (frame.at(at) >> 4) {
            case 0 -> single(frame);
            case 1 -> first(frame);
            case 2 -> consecutive(frame);
            case 3 -> flow(frame);
            default -> lost(IsoTpEvent.MALFORMED, frame);
        }
    }

    private void single(Frame frame) {
        int at = addressing.bytes;
        boolean classic = frame.length() <= CLASSIC;
        int head = classic ? 1 : 2;
        int length = frame.at(at) & 0xF;
        if (!classic) {
            length = length == 0 ? frame.at(at + 1) : 0;
        }
        if (length == 0 || at + head + length > frame.length()) {
            lost(IsoTpEvent.MALFORMED, frame);
            return;
        }
        interrupt(frame);
        show(frame, frame.time()).showing(frame.data(), frame.offset() + at + head, length);
        complete();
    }

    private void first(Frame frame) {
        int at = addressing.bytes;
        if (frame.length() < CLASSIC) {
            lost(IsoTpEvent.MALFORMED, frame);
            return;
        }
        long total = (frame.at(at) & 0xF) << 8 | frame.at(at + 1);
        int head = 2;
        boolean wide = total == 0;
        if (wide) {
            total = unsigned32(frame, at + 2);
            head = 6;
        }
        int least = frame.length() == CLASSIC ? CLASSIC - at : frame.length() - 1 - at;
        if (wide ? total <= LONGEST_OF_12_BITS : total < least) {
            lost(IsoTpEvent.MALFORMED, frame);
            return;
        }
        interrupt(frame);
        begin(frame, total, at + head);
    }

    private static long unsigned32(Frame frame, int at) {
        return (long) frame.at(at) << 24 | frame.at(at + 1) << 16 | frame.at(at + 2) << 8 | frame.at(at + 3);
    }

    private void begin(Frame frame, long total, int from) {
        if (active == SESSIONS) {
            giveUp(quietest(), IsoTpEvent.DISPLACED, frame.time());
        }
        Reception reception = receptions[active];
        if (reception == null) {
            reception = new Reception();
            receptions[active] = reception;
        }
        active++;
        reception.bus = frame.bus();
        reception.id = frame.id();
        reception.extended = frame.extended();
        reception.address = address(frame);
        reception.begin(frame.time(), total);
        if (total > LONGEST) {
            countOnly(reception, frame);
        }
        append(reception, frame, from);
    }

    private void consecutive(Frame frame) {
        int i = find(frame);
        if (i < 0) {
            lost(IsoTpEvent.STRAY, frame);
            return;
        }
        Reception reception = receptions[i];
        int from = addressing.bytes + 1;
        if (isOverdue(reception, frame.time())) {
            giveUp(i, reception.silence(), frame.time());
        } else if (!reception.isDue(frame.at(from - 1) & 0xF)) {
            giveUp(i, IsoTpEvent.OUT_OF_SEQUENCE, frame.time());
        } else if (frame.length() - from < Math.min(reception.total - reception.received, CLASSIC - from)) {
            giveUp(i, IsoTpEvent.MALFORMED, frame.time());
        } else {
            append(reception, frame, from);
            reception.step(frame.time());
            if (reception.isWhole()) {
                finish(i, frame);
            }
        }
    }

    private static boolean isOverdue(Reception reception, double time) {
        return time - reception.last > SILENCE;
    }

    private void append(Reception reception, Frame frame, int from) {
        int piece = (int) Math.min(frame.length() - from, reception.total - reception.received);
        int growth = reception.growth(piece);
        if (growth > ROOM - grown) {
            countOnly(reception, frame);
        } else if (growth > 0) {
            reception.grow(growth);
            grown += growth;
        }
        reception.append(frame.data(), frame.offset() + from, piece);
    }

    private void countOnly(Reception reception, Frame frame) {
        reception.kept = false;
        lost(IsoTpEvent.TOO_LONG, frame);
    }

    private void finish(int i, Frame frame) {
        Reception reception = receptions[i];
        if (reception.kept) {
            show(frame, reception.start).showing(reception.data, 0, (int) reception.total);
            complete();
        }
        remove(i);
    }

    private void flow(Frame frame) {
        int at = addressing.bytes;
        if (frame.length() < at + 3 || (frame.at(at) & 0xF) > 2) {
            lost(IsoTpEvent.MALFORMED, frame);
            return;
        }
        int i = findPartner(frame);
        if (i < 0) {
            return;
        }
        switch (frame.at(at) & 0xF) {
            case 0 -> receptions[i].goOn(frame.time(), frame.at(at + 1));
            case 1 -> receptions[i].last = frame.time();
            default -> giveUp(i, IsoTpEvent.REFUSED, frame.time());
        }
    }

    private int find(Frame frame) {
        int address = address(frame);
        for (int i = 0; i < active; i++) {
            if (receptions[i].isOf(frame.bus(), frame.id(), frame.extended(), address)) {
                return i;
            }
        }
        return -1;
    }

    private int findPartner(Frame frame) {
        for (int i = 0; i < active; i++) {
            Reception r = receptions[i];
            if (r.bus == frame.bus() && r.extended == frame.extended() && arePartners(r.id, frame.id(), r.extended)) {
                return i;
            }
        }
        return -1;
    }

    private static boolean arePartners(int one, int other, boolean extended) {
        if (!extended) {
            return Math.abs(one - other) == 8;
        }
        int swapped = (one & 0xFF) << 8 | one >> 8 & 0xFF;
        return (other & 0xFFFF) == swapped && one >> 16 == other >> 16;
    }

    private int address(Frame frame) {
        return addressing == Addressing.NORMAL ? -1 : frame.at(0);
    }

    private void interrupt(Frame frame) {
        int i = find(frame);
        if (i >= 0) {
            giveUp(i, IsoTpEvent.INTERRUPTED, frame.time());
        }
    }

    /** Gives up what has been quiet for too long; looked for four times a second. */
    private void sweep(double time) {
        if (Math.abs(time - swept) < SWEEP) {
            return;
        }
        swept = time;
        for (int i = active - 1; i >= 0; i--) {
            if (isOverdue(receptions[i], time)) {
                giveUp(i, receptions[i].silence(), time);
            }
        }
    }

    private int quietest() {
        int quietest = 0;
        for (int i = 1; i < active; i++) {
            quietest = receptions[i].last < receptions[quietest].last ? i : quietest;
        }
        return quietest;
    }

    /** Ends a reception with its event, unless that was told before (too long). */
    private void giveUp(int i, IsoTpEvent event, double time) {
        Reception reception = receptions[i];
        if (reception.kept) {
            counts[event.ordinal()]++;
            sink.lost(event, time, reception.bus, reception.id);
        }
        remove(i);
    }

    private void remove(int i) {
        Reception ended = receptions[i];
        grown -= ended.shrink();
        active--;
        receptions[i] = receptions[active];
        receptions[active] = ended;
    }

    private IsoTpMessage show(Frame frame, double start) {
        return view.from(start, frame.time(), frame.bus(), frame.id(), frame.extended(), address(frame));
    }

    private void complete() {
        counts[IsoTpEvent.COMPLETE.ordinal()]++;
        sink.message(view);
    }

    private void lost(IsoTpEvent event, Frame frame) {
        counts[event.ordinal()]++;
        sink.lost(event, frame.time(), frame.bus(), frame.id());
    }
}
