package hotday.signals.framelog;

import hotday.signals.bus.FrameLength;
import hotday.signals.frame.Frame;

/** What passed on one bus. Bits are those of classic data and remote frames; others are counted only. */
public final class BusCount {
    private final long[] kinds = new long[Frame.Kind.values().length];
    private long flexible;
    private long unknown;
    private long fewestBits;
    private long mostBits;
    private long second = Long.MIN_VALUE;
    private long inSecond;
    private long busiestSecond;

    /** @param time s from the first frame of the recording; NaN without stamps */
    void add(Frame frame, double time, boolean known) {
        kinds[frame.kind().ordinal()]++;
        unknown += known || frame.kind() != Frame.Kind.DATA ? 0 : 1;
        if (frame.flexible()) {
            flexible++;
        } else if (frame.kind() != Frame.Kind.ERROR) {
            bits(frame, time);
        }
    }

    private void bits(Frame frame, double time) {
        int bytes = frame.kind() == Frame.Kind.REMOTE ? 0 : frame.length();
        int most = FrameLength.longest(frame.extended(), bytes);
        fewestBits += FrameLength.shortest(frame.extended(), bytes);
        mostBits += most;
        long now = (long) Math.floor(time);
        inSecond = now == second ? inSecond + most : most;
        second = now;
        busiestSecond = Math.max(busiestSecond, inSecond);
    }

    /** Frames of a kind. */
    public long of(Frame.Kind kind) {
        return kinds[kind.ordinal()];
    }

    /** All frames. */
    public long frames() {
        long sum = 0;
        for (long kind : kinds) {
            sum += kind;
        }
        return sum;
    }

    /** Frames of CAN FD. */
    public long flexible() {
        return flexible;
    }

    /** Data frames that no decoder knew. */
    public long unknown() {
        return unknown;
    }

    /** Bits on the wires without any stuffing. */
    public long fewestBits() {
        return fewestBits;
    }

    /** Bits on the wires with as much stuffing as there can be. */
    public long mostBits() {
        return mostBits;
    }

    /** The most bits, stuffed as much as can be, in a whole second from the first frame on; meaningless without stamps. */
    public long busiestSecond() {
        return busiestSecond;
    }
}
