package hotday.signals.j1939;

import hotday.core.finding.Finding;
import hotday.signals.frame.Frame;
import hotday.signals.frame.FrameDecoder;
import hotday.signals.frame.SampleSink;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Values of the parameters of {@link SpnTable} from frames of 29 bits and from messages of several packets. Senders are
 * kept apart: a signal is called {@code EEC1.EngineSpeed@00} after group, parameter and the sender's address, with
 * {@code >21} behind where the group names a receiver. Codes for "not available" and "error" are states, never values.
 *
 * <p>A frame of a sender met before allocates nothing, texts aside. For one network, one thread and one sink.
 */
public final class J1939Decoder implements FrameDecoder {
    /** Pairs of group and sender that are told apart; more do not exist on real networks. */
    static final int SENDERS = 4096;

    private static final int SLOTS = 4 * SENDERS;
    private static final long FREE = -1;

    private final Map<Integer, Spn[]> groups;
    /** Open addressing; key of the sender beside its signals. */
    private final long[] keys = new long[SLOTS];

    private final GroupSignals[] values = new GroupSignals[SLOTS];
    /** One bit for every group that is known, so that others are passed over without a look at the map. */
    private final long[] known = new long[(J1939Id.HIGHEST_GROUP + 1) / Long.SIZE];

    private final J1939Transport transport = new J1939Transport(this::message);
    private final Set<Integer> groupsMet = new HashSet<>();
    private SampleSink current;
    private int senders;
    private long tooMany;

    public J1939Decoder() {
        this(SpnTable.shipped());
    }

    J1939Decoder(List<Spn> spns) {
        Arrays.fill(keys, FREE);
        this.groups = SpnTable.byGroup(spns).entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, e -> e.getValue().toArray(Spn[]::new)));
        groups.keySet().forEach(group -> known[group / Long.SIZE] |= 1L << group);
    }

    /** What became of messages of several packets. */
    public J1939Transport transport() {
        return transport;
    }

    @Override
    public boolean decode(Frame frame, SampleSink samples) {
        if (!frame.extended()) {
            return false;
        }
        current = samples;
        if (transport.take(frame)) {
            return true;
        }
        int id = frame.id();
        return payload(
                frame.time(),
                J1939Id.group(id),
                J1939Id.source(id),
                J1939Id.destination(id),
                frame.data(),
                frame.offset(),
                frame.length());
    }

    private void message(double time, int bus, int group, int source, int destination, byte[] data, int length) {
        int addressed = J1939Id.isAddressed(group) ? destination : J1939Id.EVERYBODY;
        payload(time, group, source, addressed, data, 0, length);
    }

    private boolean payload(double time, int group, int source, int destination, byte[] data, int from, int length) {
        if ((known[group / Long.SIZE] & 1L << group) == 0) {
            return false;
        }
        GroupSignals signals = signals(group, source, destination);
        if (signals == null) {
            tooMany++;
            return false;
        }
        signals.decode(time, data, from, length, current);
        return true;
    }

    private GroupSignals signals(int group, int source, int destination) {
        long key = (long) group << 16 | source << 8 | destination;
        int slot = (int) ((key * 0x9E37_79B9_7F4A_7C15L) >>> 50);
        while (keys[slot] != key) {
            if (keys[slot] == FREE) {
                return senders < SENDERS ? met(slot, key, group, source, destination) : null;
            }
            slot = slot + 1 & SLOTS - 1;
        }
        return values[slot];
    }

    private GroupSignals met(int slot, long key, int group, int source, int destination) {
        senders++;
        groupsMet.add(group);
        keys[slot] = key;
        values[slot] = new GroupSignals(groups.get(group), source, destination, current);
        return values[slot];
    }

    /** Short name of the group of a frame. */
    @Override
    public String name(Frame frame) {
        int group = frame.extended() ? J1939Id.group(frame.id()) : -1;
        if (group == J1939Transport.CONTROL || group == J1939Transport.PACKETS) {
            return "packets";
        }
        Spn[] spns = groups.get(group);
        return spns == null ? "" : spns[0].group();
    }

    @Override
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (TransportEvent event : TransportEvent.values()) {
            if (event != TransportEvent.COMPLETE && transport.count(event) > 0) {
                findings.add(broken(event.name(), event.words(), transport.count(event)));
            }
        }
        if (tooMany > 0) {
            findings.add(Finding.warning(
                            "j1939-too-many-senders",
                            tooMany + " frames not read: more than " + SENDERS
                                    + " pairs of group and sender; this is no recording of such a network")
                    .with("frames", tooMany)
                    .with("limit", SENDERS));
        }
        remembered(findings);
        return findings;
    }

    private static Finding broken(String event, String words, long count) {
        return Finding.warning(
                        "j1939-message-broken", "J1939 messages of several packets, " + count + " times: " + words)
                .with("event", event)
                .with("count", count);
    }

    /** Which of the decoded parameters nobody has looked up. */
    private void remembered(List<Finding> findings) {
        List<String> names = groupsMet.stream()
                .sorted()
                .flatMap(group -> Arrays.stream(groups.get(group)))
                .filter(Spn::isFromMemory)
                .map(spn -> spn.group() + "." + spn.name())
                .toList();
        if (!names.isEmpty()) {
            findings.add(Finding.note(
                            "j1939-from-memory",
                            "position or scale of these J1939 parameters is remembered, not read in the standard; compare one with a known"
                                    + " value before leaning on it: " + String.join(", ", names))
                    .with("signals", names));
        }
    }
}
