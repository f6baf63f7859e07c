package hotday.signals.dbc;

import hotday.core.finding.Finding;
import hotday.signals.frame.Frame;
import hotday.signals.frame.FrameDecoder;
import hotday.signals.frame.SampleSink;
import hotday.signals.frame.SampleState;
import hotday.signals.j1939.J1939Id;
import hotday.signals.j1939.Spn;
import java.util.ArrayList;
import java.util.List;

/**
 * Samples of the frames that network descriptions speak of, named {@code Message.Signal}. On networks of SAE J1939 a message
 * stands for its parameter group, whoever sends it: the sender's address follows the name ({@code EEC1.EngineSpeed@00}), and
 * codes that are no values ({@link Spn#state(long, int)}) become states.
 */
public final class NetworkDecoder implements FrameDecoder {
    private static final int ADDRESSES = 256;
    /** The sender of messages that stand for any sender. */
    private static final int ANYBODY = 0xFE;

    private final List<MessageDecoder> messages = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final boolean[] grouped;
    private final IdTable byId = new IdTable();
    private final IdTable byGroup = new IdTable();
    /** Numbers of a message's signals, by sender; the sender is 0 where it does not matter. */
    private final int[][][] numbers;

    private final double[] values;

    /**
     * @param files of several that describe the same identifier the first holds
     * @param allGroups whether all messages of 29 bits stand for parameter groups, even where the file does not say so
     */
    public NetworkDecoder(List<DbcFile> files, boolean allGroups) {
        List<Boolean> groups = new ArrayList<>();
        for (DbcFile file : files) {
            for (Message message : file.messages()) {
                if (byId.putIfAbsent(IdTable.key(message.id(), message.extended()), messages.size())) {
                    messages.add(MessageDecoder.of(message));
                    groups.add(message.extended() && (allGroups || isGroup(file, message)));
                } else if (!file.equals(files.get(0))) {
                    findings.add(Finding.warning(
                            "message-in-two-files",
                            message.place(),
                            "message '" + message.name() + "' has the identifier of another in a file before; that one"
                                    + " is used"));
                }
            }
        }
        this.grouped = new boolean[messages.size()];
        for (int i = 0; i < grouped.length; i++) {
            grouped[i] = groups.get(i);
        }
        this.numbers = new int[messages.size()][][];
        this.values = new double
                [messages.stream().mapToInt(MessageDecoder::size).max().orElse(0)];
        groups();
    }

    private static boolean isGroup(DbcFile file, Message message) {
        return file.attribute(message, "VFrameFormat")
                .or(() -> file.attribute("ProtocolType"))
                .map(v -> v.startsWith("J1939"))
                .orElse(false);
    }

    /** Of several messages of a group the one from anybody stands for all senders, else the only one. */
    private void groups() {
        List<Integer> template = new ArrayList<>();
        for (int i = 0; i < grouped.length; i++) {
            int m = i;
            boolean alone = grouped[m]
                    && messages.stream()
                                    .filter(o -> isOfGroup(o, J1939Id.group(id(m))))
                                    .count()
                            == 1;
            if (grouped[m] && (J1939Id.source(id(m)) == ANYBODY || alone)) {
                template.add(m);
            }
        }
        template.forEach(m -> byGroup.putIfAbsent(J1939Id.group(id(m)), m));
    }

    private static boolean isOfGroup(MessageDecoder other, int group) {
        return other.message().extended() && J1939Id.group(other.message().id()) == group;
    }

    private int id(int message) {
        return messages.get(message).message().id();
    }

    @Override
    public boolean decode(Frame frame, SampleSink samples) {
        int m = message(frame);
        if (m < 0) {
            return false;
        }
        MessageDecoder decoder = messages.get(m);
        int[] signals = numbers(m, grouped[m] ? J1939Id.source(frame.id()) : 0, samples);
        decoder.decode(frame, values);
        for (int i = 0; i < signals.length; i++) {
            if (!Double.isNaN(values[i])) {
                put(frame, decoder, i, signals[i], samples, grouped[m]);
            }
        }
        return true;
    }

    private void put(Frame frame, MessageDecoder decoder, int i, int number, SampleSink samples, boolean codes) {
        SampleState state = codes ? decoder.state(i, frame) : SampleState.VALID;
        samples.sample(frame.time(), number, state == SampleState.VALID ? values[i] : Double.NaN, state);
    }

    private int message(Frame frame) {
        int m = byId.get(IdTable.key(frame.id(), frame.extended()));
        return m < 0 && frame.extended() ? byGroup.get(J1939Id.group(frame.id())) : m;
    }

    private int[] numbers(int m, int sender, SampleSink samples) {
        if (numbers[m] == null) {
            numbers[m] = new int[grouped[m] ? ADDRESSES : 1][];
        }
        if (numbers[m][sender] == null) {
            String behind = grouped[m] ? String.format("@%02X", sender) : "";
            Message message = messages.get(m).message();
            numbers[m][sender] = message.signals().stream()
                    .mapToInt(s -> samples.signal(message.name() + "." + s.name() + behind, s.unit()))
                    .toArray();
        }
        return numbers[m][sender];
    }

    @Override
    public String name(Frame frame) {
        int m = message(frame);
        return m < 0 ? "" : messages.get(m).message().name();
    }

    /** What in the descriptions does not go together; known from the beginning. */
    @Override
    public List<Finding> findings() {
        return List.copyOf(findings);
    }
}
