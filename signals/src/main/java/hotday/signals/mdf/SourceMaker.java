package hotday.signals.mdf;

import hotday.core.unit.Quantity;
import hotday.core.unit.Unit;
import hotday.core.unit.Units;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Makes of groups and channels as described what reads them. What cannot be read is told by name and left out. */
final class SourceMaker {
    private static final int BUFFERS = 32 << 20;
    private static final int SMALLEST_BUFFER = 1 << 12;
    private static final int LARGEST_BUFFER = 1 << 18;
    /** Values may be named in any order, and every step back reads a buffer anew. */
    private static final int VALUE_BUFFER = 1 << 14;

    private final BlockFile file;
    private final FileHead head;
    private final List<DataGroup> groups;
    private final BusList buses;
    private final Faults faults;
    private final Conversions conversions;
    private final Map<Channel, String> names = new HashMap<>();
    private final int buffer;

    SourceMaker(BlockFile file, FileHead head, List<DataGroup> groups, BusList buses, Faults faults) {
        this.file = file;
        this.head = head;
        this.groups = groups;
        this.buses = buses;
        this.faults = faults;
        this.conversions = new Conversions(file, faults);
        long streams = groups.stream()
                .flatMap(d -> d.groups().stream())
                .mapToLong(g -> 1
                        + g.channels().stream()
                                .filter(c -> c.kind() == Channel.VARIABLE_LENGTH)
                                .count())
                .sum();
        this.buffer = (int) Math.min(LARGEST_BUFFER, Math.max(SMALLEST_BUFFER, BUFFERS / Math.max(1, streams)));
        nameSignals();
    }

    /** The channel's own name where the file has it once, else with that of its group, else with the group's number too. */
    private void nameSignals() {
        Map<String, Integer> own = new HashMap<>();
        Map<String, Integer> inGroup = new HashMap<>();
        for (Group group : allGroups()) {
            for (Channel c : signalsOf(group)) {
                own.merge(c.name(), 1, Integer::sum);
                inGroup.merge(group.name() + ":" + c.name(), 1, Integer::sum);
            }
        }
        int number = 0;
        Set<String> given = new HashSet<>();
        for (Group group : allGroups()) {
            number++;
            for (Channel c : signalsOf(group)) {
                String name = group.name() + ":" + c.name();
                if (own.get(c.name()) == 1) {
                    name = c.name();
                } else if (group.name().isEmpty() || inGroup.get(name) > 1) {
                    name = group.name() + "#" + number + ":" + c.name();
                }
                names.put(c, given.add(name) ? name : name + " at byte " + c.position());
            }
        }
    }

    private List<Group> allGroups() {
        return groups.stream().flatMap(d -> d.groups().stream()).toList();
    }

    /** Channels that are measured values. */
    private static List<Channel> signalsOf(Group group) {
        Optional<Channel> frame = FrameGroup.frameOf(group);
        return group.channels().stream()
                .filter(c -> !c.isTime() && c.composed() != Channel.Composition.STRUCTURE)
                .filter(c -> frame.isEmpty() || !isPartOf(c, frame.get()))
                .toList();
    }

    private static boolean isPartOf(Channel c, Channel frame) {
        return c == frame || c.name().startsWith(frame.name() + ".");
    }

    /** Data groups with anything in them that is read. */
    List<GroupSource> sources() {
        List<GroupSource> all = new ArrayList<>();
        for (DataGroup data : groups) {
            List<GroupSource.Reading> readings =
                    data.groups().stream().map(g -> reading(data, g)).toList();
            if (readings.stream().anyMatch(GroupSource.Reading::isUsed)) {
                all.add(new GroupSource(readings, cursor(data, true), faults));
            }
        }
        return all;
    }

    private RecordCursor cursor(DataGroup data, boolean told) {
        return new RecordCursor(file, data, head.unfinished(), buffer, told, faults);
    }

    private GroupSource.Reading reading(DataGroup data, Group group) {
        GroupSource.Reading nothing =
                new GroupSource.Reading(group, GroupTime.none(), Optional.empty(), Optional.empty());
        if (group.isValues() || group.cycles() == 0 && !head.unfinished()) {
            return nothing;
        }
        Optional<Channel> event = FrameGroup.frameOf(group);
        Parts parts = new Parts(data, group);
        Optional<FrameGroup> frames = event.flatMap(e -> frames(group, e, parts));
        if (frames.isEmpty() && (event.isPresent() || group.isBusEvent())) {
            tellBusEvent(group, event.isPresent());
            return nothing;
        }
        Optional<GroupTime> time = time(group);
        if (time.isEmpty() && frames.isEmpty()) {
            return nothing;
        }
        List<SampleGroup.Signal> signals = time.isPresent() ? parts.signals() : List.of();
        return new GroupSource.Reading(
                group,
                time.orElseGet(GroupTime::none),
                frames,
                signals.isEmpty() ? Optional.empty() : Optional.of(new SampleGroup(signals)));
    }

    private Optional<FrameGroup> frames(Group group, Channel event, Parts parts) {
        try {
            return FrameGroup.of(group, event, buses, parts);
        } catch (BrokenBlock broken) {
            faults.add(broken);
            return Optional.empty();
        }
    }

    private void tellBusEvent(Group group, boolean can) {
        String first = group.channels().stream()
                .filter(c -> !c.isMaster())
                .map(Channel::name)
                .findFirst()
                .orElse("without channels");
        faults.warning(
                "bus-event-not-read",
                group.shown() + " holds " + group.cycles() + " bus events of the kind " + first
                        + (can ? ", without the parts a frame must have" : "; frames of CAN are read")
                        + ": passed over");
    }

    /** Empty, and told, where its records have no time. */
    private Optional<GroupTime> time(Group group) {
        try {
            return group.hasRemoteMaster() ? Optional.of(beside(group)) : own(group);
        } catch (BrokenBlock broken) {
            faults.add(broken, "; " + group.shown() + " has no times and is not read");
            return Optional.empty();
        }
    }

    private Optional<GroupTime> own(Group group) {
        Optional<Channel> channel = group.time();
        if (channel.isEmpty()) {
            faults.warning(
                    "group-without-time",
                    group.shown() + " has no channel of time: its "
                            + group.channels().size() + " channels are not read");
            return Optional.empty();
        }
        Channel c = channel.get();
        double second = 1;
        if (!c.unit().isEmpty()) {
            Unit unit = Units.find(Quantity.TIME, c.unit())
                    .orElseThrow(() -> new BrokenBlock(
                            "time-unit-unknown",
                            c.position(),
                            "the time channel '" + c.name() + "' has the unit '" + c.unit() + "', which is no time"));
            second = unit.toSi(1.0);
        }
        return Optional.of(GroupTime.own(reader(group, c, Optional.empty(), Optional.empty()), second));
    }

    private GroupTime beside(Group group) {
        for (DataGroup data : groups) {
            for (Group other : data.groups()) {
                if (other.position() == group.master() && data.groups().size() == 1 && !other.hasRemoteMaster()) {
                    GroupTime its = own(other).orElseThrow(() -> lacksMaster(group));
                    return GroupTime.beside(cursor(data, false), its);
                }
            }
        }
        throw lacksMaster(group);
    }

    private static BrokenBlock lacksMaster(Group group) {
        return new BrokenBlock(
                "link-broken", group.position(), group.shown() + " has its times in a group that is not there");
    }

    private ChannelReader reader(Group group, Channel c, Optional<Values> apart, Optional<Field> used) {
        boolean elsewhere = c.kind() == Channel.VARIABLE_LENGTH;
        Field form = c.isVirtual() ? Field.virtual() : Field.of(c, elsewhere ? Integer.MAX_VALUE : group.dataBytes());
        Field field = elsewhere ? Field.offset(c, group.dataBytes()) : form;
        if ((c.flags() & 2) != 0 && c.invalidBit() >= 8 * group.invalidBytes()) {
            throw new BrokenBlock(
                    "channel-broken",
                    c.position(),
                    "channel '" + c.name() + "' (block ##CN) has its bit of validity at " + c.invalidBit()
                            + ", and the record has " + 8 * group.invalidBytes());
        }
        Conversion conversion =
                conversions.at(c.conversion(), form.isWhole(), "the conversion of block ##CN at byte " + c.position());
        return new ChannelReader(c, field, form, conversion, apart, used, faults);
    }

    /** Channels of one group. */
    private final class Parts implements FrameGroup.PartMaker {
        private final DataGroup data;
        private final Group group;

        Parts(DataGroup data, Group group) {
            this.data = data;
            this.group = group;
        }

        List<SampleGroup.Signal> signals() {
            List<SampleGroup.Signal> all = new ArrayList<>();
            for (Channel c : signalsOf(group)) {
                try {
                    requireRead(c);
                    ChannelReader reader = reader(group, c, apart(c), used(c));
                    all.add(new SampleGroup.Signal(names.get(c), c, reader));
                } catch (BrokenBlock broken) {
                    leftOut(c, broken);
                }
            }
            return all;
        }

        private void leftOut(Channel c, BrokenBlock broken) {
            if (broken.key().endsWith("-not-read")) {
                faults.warning(
                        broken.key(),
                        "channel '" + c.name() + "' is not read: at byte " + broken.position() + ": "
                                + broken.getMessage());
            } else {
                faults.add(broken, "; channel '" + c.name() + "' is not read");
            }
        }

        private void requireRead(Channel c) {
            boolean known = c.kind() == Channel.FIXED
                    || c.isMaster()
                    || c.kind() == Channel.VARIABLE_LENGTH
                    || c.kind() == Channel.LIMITED_LENGTH
                    || c.kind() == Channel.VIRTUAL;
            if (!known || c.composed() == Channel.Composition.ARRAY) {
                throw new BrokenBlock(
                        "channel-not-read",
                        c.position(),
                        known
                                ? "block ##CN has an array of values"
                                : "block ##CN is of kind " + c.kind() + " (4: synchronisation with another medium)");
            }
        }

        @Override
        public Optional<FrameGroup.Part> part(Channel c) {
            try {
                Field field = c.kind() == Channel.VARIABLE_LENGTH
                        ? Field.offset(c, group.dataBytes())
                        : Field.of(c, group.dataBytes());
                return Optional.of(new FrameGroup.Part(c, field));
            } catch (BrokenBlock broken) {
                leftOut(c, broken);
                return Optional.empty();
            }
        }

        @Override
        public Optional<Values> apart(Channel c) {
            if (c.kind() != Channel.VARIABLE_LENGTH) {
                return Optional.empty();
            }
            for (int i = 0; i < data.groups().size(); i++) {
                if (data.groups().get(i).position() == c.data()) {
                    return Optional.of(inRecords(i));
                }
            }
            String from = "the values of channel '" + c.name() + "' (block ##CN at byte " + c.position() + ")";
            return Optional.of(Values.inBlocks(file, c.data(), from, Math.min(buffer, VALUE_BUFFER), faults));
        }

        private Values inRecords(int values) {
            return Values.inRecords(() -> cursor(data, false).handingOut(values), values, head.lacksValueOffsets());
        }

        /** Where the channel's length stands. */
        private Optional<Field> used(Channel c) {
            if (c.kind() != Channel.LIMITED_LENGTH) {
                return Optional.empty();
            }
            return group.channels().stream()
                    .filter(o -> o.position() == c.data())
                    .findFirst()
                    .map(o -> Field.of(o, group.dataBytes()));
        }
    }
}
