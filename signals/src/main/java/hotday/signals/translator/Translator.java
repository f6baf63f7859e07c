package hotday.signals.translator;

import hotday.signals.translator.Program.Incoming;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A gateway at work. Frames are handed in as they come ({@link #receive}); once a round the gateway looks at what has come
 * and sends what is due ({@link #look}). Neither allocates anything. For one thread.
 *
 * <pre>{@code
 * Translator gateway = new Translator(program);
 * gateway.receive(network, id, extended, data, 0, length);
 * gateway.look((network, id, extended, data, length) -> ...);
 * }</pre>
 */
public final class Translator {
    /** Counters of looks stop here. */
    private static final int COUNTED = 1_000_000_000;

    private static final int EXTENDED_BIT = 29;
    private static final int NETWORK_BIT = 32;

    /** What became of a frame. */
    public enum Reception {
        /** Its values were taken. */
        TAKEN,
        /** Nobody listens to it. */
        UNKNOWN,
        /** Counts as not come: damaged, or too short to hold its checksum. */
        WRONG_CHECKSUM,
        /** Counts as not come: the same frame again, or a value that the counter never takes. */
        WRONG_COUNTER
    }

    /** What a frame carries for a line. */
    public enum Content {
        /** A value that came in time. */
        LIVE,
        /** The last one, although its source is missing. */
        HELD,
        SAFE
    }

    /** Takes the frames that leave. */
    @FunctionalInterface
    public interface Outlet {
        /** @param data of the payload, from 0; valid during this call only */
        void send(int network, int id, boolean extended, byte[] data, int length);
    }

    private final long[] keys;
    private final int[] byKey;
    private final RunningSource[] sources;
    private final RunningLine[] lines;
    private final RunningTarget[] targets;
    private long unknown;

    public Translator(Program program) {
        lines = program.lines().stream().map(RunningLine::new).toArray(RunningLine[]::new);
        sources = IntStream.range(0, program.incoming().size())
                .mapToObj(i ->
                        new RunningSource(program.incoming().get(i), lines(program.lines(), l -> l.incoming() == i)))
                .toArray(RunningSource[]::new);
        targets = IntStream.range(0, program.outgoing().size())
                .mapToObj(i ->
                        new RunningTarget(program.outgoing().get(i), lines(program.lines(), l -> l.outgoing() == i)))
                .toArray(RunningTarget[]::new);
        byKey = IntStream.range(0, sources.length)
                .boxed()
                .sorted(Comparator.comparingLong(i -> key(program.incoming().get(i))))
                .mapToInt(Integer::intValue)
                .toArray();
        keys = Arrays.stream(byKey)
                .mapToLong(i -> key(program.incoming().get(i)))
                .toArray();
    }

    private interface Chosen {
        boolean is(Program.Line line);
    }

    private RunningLine[] lines(List<Program.Line> all, Chosen chosen) {
        return IntStream.range(0, all.size())
                .filter(i -> chosen.is(all.get(i)))
                .mapToObj(i -> lines[i])
                .toArray(RunningLine[]::new);
    }

    private static long key(Incoming message) {
        return key(message.network(), message.id(), message.extended());
    }

    private static long key(int network, int id, boolean extended) {
        return (long) network << NETWORK_BIT | (extended ? 1L << EXTENDED_BIT : 0) | id;
    }

    static int counted(int looks) {
        return Math.min(looks + 1, COUNTED);
    }

    /**
     * A data frame came.
     *
     * @param network place in {@link Program#networks}
     * @param from of the first byte in {@code data}
     * @param length of the payload; a frame of more than eight bytes is none that anybody listens to
     */
    public Reception receive(int network, int id, boolean extended, byte[] data, int from, int length) {
        int at = length > Field.MOST_BYTES ? -1 : Arrays.binarySearch(keys, key(network, id, extended));
        if (at < 0) {
            unknown++;
            return Reception.UNKNOWN;
        }
        return sources[byKey[at]].receive(data, from, length);
    }

    /** One round: takes over what came since the last one, and sends what is due. */
    public void look(Outlet outlet) {
        for (RunningLine line : lines) {
            line.look();
        }
        for (RunningTarget target : targets) {
            target.look(outlet);
        }
    }

    /** Frames so far of a message listened to. */
    public long received(int incoming, Reception reception) {
        return sources[incoming].count(reception);
    }

    /** Frames that its counter says were lost so far, at least. */
    public long lost(int incoming) {
        return sources[incoming].lost();
    }

    /** Frames so far that nobody listens to. */
    public long unknown() {
        return unknown;
    }

    /** Frames sent so far of a message. */
    public long sent(int outgoing) {
        return targets[outgoing].frames();
    }

    /** Frames sent so far whose content for a line was of that kind. */
    public long sent(int line, Content content) {
        return lines[line].count(content);
    }
}
