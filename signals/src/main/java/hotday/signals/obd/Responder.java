package hotday.signals.obd;

import hotday.signals.frame.SampleSink;
import hotday.signals.frame.SampleState;
import hotday.signals.isotp.IsoTpMessage;
import java.util.Arrays;
import java.util.BitSet;

/** One control unit that answers service 01: what it says it supports, and what it says. */
final class Responder {
    private static final int PIDS = 256;
    /** Every so many parameters the next is a mask of what is supported behind it. */
    private static final int MASK_EVERY = 32;

    private static final int MASK_BYTES = 4;
    private static final int NOT_MET = -1;

    private final int id;
    private final boolean extended;
    private final Pid[] pids;
    private final int[] numbers = new int[PIDS];
    private final BitSet supported = new BitSet(PIDS);
    private final BitSet masks = new BitSet(PIDS / MASK_EVERY);
    private final BitSet denied = new BitSet(PIDS);
    private final BitSet met = new BitSet(PIDS);

    Responder(int id, boolean extended, Pid[] pids) {
        this.id = id;
        this.extended = extended;
        this.pids = pids;
        Arrays.fill(numbers, NOT_MET);
    }

    boolean is(int id, boolean extended) {
        return this.id == id && this.extended == extended;
    }

    String name() {
        return Addresses.name(id);
    }

    /** Parameters answered though the mask before them says that they are not supported. */
    BitSet denied() {
        return denied;
    }

    /** Parameters answered. */
    BitSet met() {
        return met;
    }

    /**
     * Reads an answer of one or more parameters.
     *
     * @return whether every byte of it was understood
     */
    boolean values(IsoTpMessage message, SampleSink samples) {
        int at = 1;
        while (at < message.length()) {
            int pid = message.at(at);
            boolean mask = pid % MASK_EVERY == 0;
            int length = mask ? MASK_BYTES : length(pid);
            if (length == 0 || at + length >= message.length()) {
                return false;
            }
            if (mask) {
                mask(pid, message, at + 1);
            } else {
                value(pid, message, at + 1, samples);
            }
            at += 1 + length;
        }
        return at > 1;
    }

    private int length(int pid) {
        return pids[pid] == null ? 0 : pids[pid].length();
    }

    private void mask(int pid, IsoTpMessage message, int at) {
        masks.set(pid / MASK_EVERY);
        for (int i = 0; i < MASK_EVERY && pid + 1 + i < PIDS; i++) {
            supported.set(pid + 1 + i, (message.at(at + i / 8) >> 7 - i % 8 & 1) == 1);
        }
    }

    private void value(int pid, IsoTpMessage message, int at, SampleSink samples) {
        met.set(pid);
        if (masks.get(pid / MASK_EVERY) && !supported.get(pid)) {
            denied.set(pid);
        }
        Pid known = pids[pid];
        if (!known.isNumber()) {
            return;
        }
        if (numbers[pid] == NOT_MET) {
            numbers[pid] = samples.signal("OBD." + known.name() + "@" + name(), known.unit());
        }
        int raw = 0;
        for (int i = 0; i < known.count(); i++) {
            raw = raw << 8 | message.at(at + known.first() + i);
        }
        samples.sample(message.time(), numbers[pid], known.value(raw), SampleState.VALID);
    }
}
