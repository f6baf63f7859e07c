package hotday.signals.mdf;

import hotday.signals.frame.Frame;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The channels of a group that are frames of a CAN network, by the names of the standard for bus logging. */
final class FrameGroup {
    private static final byte[] NO_BYTES = new byte[Frame.LONGEST];
    private static final int MARK_EXTENDED = 0x8000_0000;
    private static final int MOST_CLASSIC = 8;
    private static final int[] FLEXIBLE_LENGTHS = {12, 16, 20, 24, 32, 48, 64};

    /** Channels that hold frames, and what those are. */
    private enum Event {
        CAN_DataFrame(Frame.Kind.DATA),
        CAN_RemoteFrame(Frame.Kind.REMOTE),
        CAN_ErrorFrame(Frame.Kind.ERROR);

        private final Frame.Kind kind;

        Event(Frame.Kind kind) {
            this.kind = kind;
        }
    }

    private final Frame.Kind kind;
    private final Parts parts;
    private final int[] numbers = new int[256];
    private final BusList buses;

    /** Where a part of a frame stands; absent ones are not recorded. */
    record Part(Channel channel, Field field) {
        boolean isThere(RecordCursor record) {
            return !ChannelReader.isInvalid(channel, record);
        }

        long of(RecordCursor record) {
            return field.raw(record.bytes(), record.at());
        }
    }

    /**
     * Parts by name.
     *
     * @param apart values of any length that are the payload
     */
    record Parts(
            Optional<Part> id,
            Optional<Part> extended,
            Optional<Part> bus,
            Optional<Part> length,
            Optional<Part> code,
            Optional<Part> flexible,
            Optional<Part> remote,
            Optional<Part> bytes,
            Optional<Values> apart) {}

    /** Makes parts of channels. */
    interface PartMaker {
        Optional<Part> part(Channel channel);

        Optional<Values> apart(Channel channel);
    }

    private FrameGroup(Frame.Kind kind, Parts parts, BusList buses) {
        this.kind = kind;
        this.parts = parts;
        this.buses = buses;
        Arrays.fill(numbers, -1);
    }

    /** The channel that is a frame of CAN, or a note of an error; empty where the group has none. */
    static Optional<Channel> frameOf(Group group) {
        List<String> names = Arrays.stream(Event.values()).map(Event::name).toList();
        return group.channels().stream().filter(c -> names.contains(c.name())).findFirst();
    }

    /** Empty, where what a frame must have is not there. */
    static Optional<FrameGroup> of(Group group, Channel frame, BusList buses, PartMaker maker) {
        Frame.Kind kind = Event.valueOf(frame.name()).kind;
        Optional<Channel> bytes = named(group, frame, "DataBytes");
        Parts parts = new Parts(
                named(group, frame, "ID").flatMap(maker::part),
                named(group, frame, "IDE").flatMap(maker::part),
                named(group, frame, "BusChannel").flatMap(maker::part),
                named(group, frame, "DataLength").flatMap(maker::part),
                named(group, frame, "DLC").flatMap(maker::part),
                named(group, frame, "EDL").flatMap(maker::part),
                named(group, frame, "RTR").flatMap(maker::part),
                bytes.flatMap(maker::part),
                bytes.flatMap(maker::apart));
        boolean whole = kind == Frame.Kind.ERROR
                || parts.id().isPresent()
                        && (kind == Frame.Kind.REMOTE || parts.bytes().isPresent());
        return whole ? Optional.of(new FrameGroup(kind, parts, buses)) : Optional.empty();
    }

    private static Optional<Channel> named(Group group, Channel frame, String part) {
        String name = frame.name() + "." + part;
        return group.channels().stream().filter(c -> c.name().equals(name)).findFirst();
    }

    Optional<Values> apart() {
        return parts.apart();
    }

    /** Shows the frame of a record; false when it is none. */
    boolean put(RecordCursor record, double time, Frame frame) {
        int bus = bus(record);
        if (bus < 0) {
            return false;
        }
        if (kind == Frame.Kind.ERROR) {
            frame.set(time, bus, 0, false, NO_BYTES, 0, 0).as(kind);
            return true;
        }
        Part id = parts.id().orElseThrow();
        long raw = id.of(record);
        boolean marked = (raw & Integer.toUnsignedLong(MARK_EXTENDED)) != 0;
        long number = raw & ~Integer.toUnsignedLong(MARK_EXTENDED);
        boolean extended = parts.extended().isPresent()
                ? isSet(parts.extended(), record)
                : marked || number > Frame.HIGHEST_STANDARD;
        if (!id.isThere(record) || number > (extended ? Frame.HIGHEST_EXTENDED : Frame.HIGHEST_STANDARD)) {
            return false;
        }
        return kind == Frame.Kind.REMOTE || isSet(parts.remote(), record)
                ? remote(record, time, bus, (int) number, extended, frame)
                : data(record, time, bus, (int) number, extended, frame);
    }

    private static boolean isSet(Optional<Part> part, RecordCursor record) {
        return part.isPresent() && part.get().of(record) != 0;
    }

    private int bus(RecordCursor record) {
        if (parts.bus().isEmpty()) {
            return buses.unnamed();
        }
        long number = parts.bus().get().of(record);
        if (number < 0 || number >= numbers.length) {
            return -1;
        }
        if (numbers[(int) number] < 0) {
            numbers[(int) number] = buses.number((int) number);
        }
        return numbers[(int) number];
    }

    private boolean remote(RecordCursor record, double time, int bus, int id, boolean extended, Frame frame) {
        long length = parts.code().isPresent() ? Math.min(MOST_CLASSIC, code(record)) : length(record, 0);
        if (length < 0 || length > MOST_CLASSIC) {
            return false;
        }
        frame.set(time, bus, id, extended, NO_BYTES, 0, (int) length).as(Frame.Kind.REMOTE);
        return true;
    }

    private boolean data(RecordCursor record, double time, int bus, int id, boolean extended, Frame frame) {
        Part bytes = parts.bytes().orElseThrow();
        if (!bytes.isThere(record)) {
            return false;
        }
        byte[] from = record.bytes();
        int at = record.at() + bytes.field().first();
        int room = bytes.field().bytes();
        if (parts.apart().isPresent()) {
            Values values = parts.apart().get();
            if (!values.go(bytes.of(record), record.index())) {
                return false;
            }
            from = values.bytes();
            at = values.at();
            room = values.length();
        }
        long length = length(record, room);
        if (length < 0 || length > Math.min(room, Frame.LONGEST)) {
            return false;
        }
        frame.set(time, bus, id, extended, from, at, (int) length);
        if (length > MOST_CLASSIC || isSet(parts.flexible(), record)) {
            frame.asFlexible();
        }
        return true;
    }

    private int code(RecordCursor record) {
        return (int) (parts.code().orElseThrow().of(record) & 15);
    }

    /** Of the payload, bytes. */
    private long length(RecordCursor record, int room) {
        if (parts.length().isPresent()) {
            return parts.length().get().of(record);
        }
        if (parts.code().isEmpty()) {
            return room;
        }
        int code = code(record);
        if (code <= MOST_CLASSIC) {
            return code;
        }
        boolean flexible = parts.flexible().isPresent() ? isSet(parts.flexible(), record) : room > MOST_CLASSIC;
        return flexible ? FLEXIBLE_LENGTHS[code - MOST_CLASSIC - 1] : MOST_CLASSIC;
    }
}
