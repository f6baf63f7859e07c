package hotday.signals.framelog;

import hotday.signals.frame.Frame;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/** Counts what passes, bus by bus and identifier by identifier. A frame of an identifier met before allocates nothing. */
public final class LogCounts {
    /** More than any vehicle sends; a recording full of errors may hold more, which are not told apart. */
    private static final int MOST_IDENTIFIERS = 1 << 16;

    private final List<BusCount> buses = new ArrayList<>();
    private IdentifierCount[] table = new IdentifierCount[256];
    private int identifiers;
    private long untold;
    private double zero = Double.NaN;

    /**
     * Counts a frame.
     *
     * @param known whether a decoder knew it
     * @param namer asked for the message's name when an identifier is met first
     */
    public void add(Frame frame, boolean known, Function<Frame, String> namer) {
        if (Double.isNaN(zero)) {
            zero = frame.time();
        }
        while (frame.bus() >= buses.size()) {
            buses.add(new BusCount());
        }
        buses.get(frame.bus()).add(frame, frame.time() - zero, known);
        if (frame.kind() != Frame.Kind.ERROR) {
            identifier(frame, known, namer);
        }
    }

    private void identifier(Frame frame, boolean known, Function<Frame, String> namer) {
        int slot = slot(table, frame.bus(), frame.id(), frame.extended());
        if (table[slot] == null) {
            if (identifiers == MOST_IDENTIFIERS) {
                untold++;
                return;
            }
            slot = room(slot, frame);
            table[slot] = new IdentifierCount(frame, namer.apply(frame));
            identifiers++;
        }
        table[slot].add(frame, known);
    }

    private int room(int slot, Frame frame) {
        if (2 * (identifiers + 1) <= table.length) {
            return slot;
        }
        IdentifierCount[] wider = new IdentifierCount[2 * table.length];
        for (IdentifierCount one : table) {
            if (one != null) {
                wider[slot(wider, one.bus(), one.id(), one.extended())] = one;
            }
        }
        table = wider;
        return slot(table, frame.bus(), frame.id(), frame.extended());
    }

    private static int slot(IdentifierCount[] table, int bus, int id, boolean extended) {
        int mask = table.length - 1;
        int slot = ((id + 31 * bus + (extended ? 7 : 0)) * 0x9E37_79B9 >>> 8) & mask;
        for (IdentifierCount one = table[slot]; one != null; one = table[slot]) {
            if (one.id() == id && one.bus() == bus && one.extended() == extended) {
                return slot;
            }
            slot = slot + 1 & mask;
        }
        return slot;
    }

    /** By number of the bus. */
    public List<BusCount> buses() {
        return List.copyOf(buses);
    }

    /** By bus and identifier, those of 11 bits first. */
    public List<IdentifierCount> identifiers() {
        return Arrays.stream(table)
                .filter(i -> i != null)
                .sorted(Comparator.comparingInt(IdentifierCount::bus)
                        .thenComparing(IdentifierCount::extended)
                        .thenComparingInt(IdentifierCount::id))
                .toList();
    }

    /** Frames of identifiers beyond those that are told apart. */
    public long untold() {
        return untold;
    }

    /** Share of the data frames that no decoder knew, 0 to 1; NaN without data frames. */
    public double unknownShare() {
        long unknown = buses.stream().mapToLong(BusCount::unknown).sum();
        long data = buses.stream().mapToLong(b -> b.of(Frame.Kind.DATA)).sum();
        return data == 0 ? Double.NaN : (double) unknown / data;
    }
}
