package hotday.signals.mdf;

import java.io.Closeable;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The records of a data group in the order of the file. What does not go on as it must ends the data and is told; the records
 * before it are handed out.
 */
final class RecordCursor implements Closeable {
    /** A longer record is none. */
    static final int LONGEST = 16 << 20;

    private static final int LENGTH_BYTES = 4;
    private static final Set<String> RECORDS = Set.of("##DT", "##DV");

    private final DataGroup data;
    private final List<Group> groups;
    private final boolean unfinished;
    private final Faults faults;
    private final DataStream stream;
    private final DataStream validity;
    private final Map<Long, Integer> byId = new HashMap<>();
    private final long[] counts;
    private final boolean told;
    /** Group whose values of any length are handed out; others of that kind are passed over. */
    private int wanted = -1;

    private int group;
    private int from;
    private int length;
    private boolean over;

    /**
     * @param buffer bytes to read at a time
     * @param told whether what breaks is told: where the data are read a second time it is not
     */
    RecordCursor(BlockFile file, DataGroup data, boolean unfinished, int buffer, boolean told, Faults faults) {
        this.data = data;
        this.groups = data.groups();
        this.unfinished = unfinished;
        this.told = told;
        this.faults = faults;
        this.counts = new long[groups.size()];
        Faults chainFaults = told ? faults : new Faults("");
        String link = "the data of block ##DG at byte " + data.position();
        DataChain chain = DataChain.of(file, data.data(), link, RECORDS, chainFaults);
        this.stream = new DataStream(file, chain, buffer, chainFaults);
        boolean apart = chain.count() > 0 && groups.get(0).invalidBytes() > 0 && chain.isOf("##DV");
        DataChain bits = apart
                ? DataChain.of(file, data.data(), link, Set.of("##DI"), chainFaults)
                : DataChain.of(file, 0, link, RECORDS, chainFaults);
        this.validity = apart ? new DataStream(file, bits, buffer, chainFaults) : stream;
        for (int i = 0; i < groups.size(); i++) {
            byId.putIfAbsent(groups.get(i).recordId(), i);
        }
        over = !isReadable();
    }

    private boolean isReadable() {
        if (data.idBytes() == 0 && groups.size() > 1) {
            fault(
                    data.position(),
                    "block ##DG has " + groups.size()
                            + " groups and no identifiers before its records: they cannot be told apart");
            return false;
        }
        for (Group g : groups) {
            if (!g.isValues()
                    && (g.recordBytes() > LONGEST || g.recordBytes() == 0 && (unfinished || g.cycles() > 0))) {
                fault(
                        g.position(),
                        g.shown() + " has records of " + g.recordBytes() + " bytes, 1 to " + LONGEST
                                + " are read; its data are not");
                return false;
            }
        }
        return true;
    }

    private void fault(long position, String what) {
        if (told) {
            faults.add(new BrokenBlock("records-broken", position, what));
        }
    }

    /** Hands out records of a group of values of any length, too. */
    RecordCursor handingOut(int valuesGroup) {
        wanted = valuesGroup;
        return this;
    }

    /** Goes to the next record; false at the end. */
    boolean next() {
        if (over) {
            return false;
        }
        stream.pass(length);
        if (validity != stream && counts[group] > 0) {
            validity.pass((int) groups.get(0).invalidBytes());
        }
        length = 0;
        over = !(data.idBytes() == 0 ? nextOfOne() : nextOfMany());
        if (over) {
            judge();
        }
        return !over;
    }

    private boolean nextOfOne() {
        Group only = groups.get(0);
        long bytes = validity == stream ? only.recordBytes() : only.dataBytes();
        if (!unfinished && counts[0] == only.cycles()) {
            if (bytes > 0 && stream.has((int) bytes)) {
                warnBeyond(only);
            }
            return false;
        }
        return take(0, 0, bytes) && (validity == stream || validity.has((int) only.invalidBytes()));
    }

    private void warnBeyond(Group only) {
        if (told) {
            faults.warning(
                    "records-beyond-count",
                    only.shown() + " says it has " + only.cycles()
                            + " records, and its data hold more: those beyond are not read");
        }
    }

    private boolean nextOfMany() {
        int idBytes = data.idBytes();
        while (stream.has(idBytes)) {
            long id = little(idBytes);
            Integer known = byId.get(id);
            if (known == null) {
                fault(
                        data.position(),
                        "block ##DG: at " + stream.where() + " stands a record of group " + id
                                + ", which there is not; what is behind it is not read");
                return false;
            }
            Group g = groups.get(known);
            if (!g.isValues()) {
                return take(known, idBytes, g.recordBytes());
            }
            if (!stream.has(idBytes + LENGTH_BYTES)) {
                return false;
            }
            long bytes = Integer.toUnsignedLong(LittleEndian.i32(stream.bytes(), stream.at() + idBytes));
            if (known == wanted) {
                return bytes <= LONGEST && take(known, idBytes + LENGTH_BYTES, bytes);
            }
            counts[known]++;
            if (!stream.skip(idBytes + LENGTH_BYTES + bytes)) {
                return false;
            }
        }
        return false;
    }

    private long little(int count) {
        long value = 0;
        for (int i = 0; i < count; i++) {
            value |= (stream.bytes()[stream.at() + i] & 0xFFL) << 8 * i;
        }
        return value;
    }

    private boolean take(int index, int before, long bytes) {
        if (!stream.has((int) (before + bytes))) {
            return false;
        }
        group = index;
        from = before;
        length = (int) (before + bytes);
        counts[index]++;
        return true;
    }

    private void judge() {
        if (!told) {
            return;
        }
        if (stream.ready() > 0 && unfinished) {
            faults.note(
                    "last-record-open",
                    "the data of block ##DG at byte " + data.position() + " end inside a record: it is not read");
        }
        for (int i = 0; i < counts.length && !unfinished; i++) {
            Group g = groups.get(i);
            if (!g.isValues() && counts[i] != g.cycles()) {
                fault(
                        g.position(),
                        g.shown() + " says it has " + g.cycles() + " records, and its data hold " + counts[i]);
            }
        }
    }

    /** Which group the record is of, by its place in the data group. */
    int group() {
        return group;
    }

    /** How many records of its group came before. */
    long index() {
        return counts[group] - 1;
    }

    byte[] bytes() {
        return stream.bytes();
    }

    /** First byte of the record, behind its identifier. */
    int at() {
        return stream.at() + from;
    }

    /** Bytes of a record of values of any length. */
    int length() {
        return length - from;
    }

    /** Where the bits of validity lie. */
    byte[] validity() {
        return validity.bytes();
    }

    /** First byte of the bits of validity. */
    int validityAt() {
        return validity == stream ? at() + (int) groups.get(group).dataBytes() : validity.at();
    }

    @Override
    public void close() {
        stream.close();
        validity.close();
    }
}
