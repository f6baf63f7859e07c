package hotday.signals.mdf;

import hotday.signals.frame.Frame;
import hotday.signals.frame.SampleSink;
import java.io.Closeable;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The records of a data group with their times, and what becomes of them. */
final class GroupSource implements Closeable {
    /**
     * How the records of a group are taken.
     *
     * @param frames where they are frames
     * @param samples where they hold values
     */
    record Reading(Group group, GroupTime time, Optional<FrameGroup> frames, Optional<SampleGroup> samples) {
        boolean isUsed() {
            return frames.isPresent() || samples.isPresent();
        }
    }

    private final List<Reading> readings;
    private final RecordCursor cursor;
    private final Faults faults;
    private final double[] last;
    private final long[] back;
    private double time = Double.NaN;

    GroupSource(List<Reading> readings, RecordCursor cursor, Faults faults) {
        this.readings = List.copyOf(readings);
        this.cursor = cursor;
        this.faults = faults;
        this.last = new double[readings.size()];
        this.back = new long[readings.size()];
        Arrays.fill(last, Double.NEGATIVE_INFINITY);
    }

    List<Reading> readings() {
        return readings;
    }

    /** Goes to the next record that is of use; false at the end. */
    boolean next() {
        while (cursor.next()) {
            int group = cursor.group();
            if (readings.get(group).isUsed()) {
                time = readings.get(group).time().of(cursor);
                back[group] += time < last[group] ? 1 : 0;
                last[group] = time;
                return true;
            }
        }
        tellClock();
        return false;
    }

    private void tellClock() {
        for (int i = 0; i < back.length; i++) {
            if (back[i] > 0) {
                faults.warning(
                        "clock-goes-back",
                        readings.get(i).group().shown() + ": the clock goes back " + back[i] + " time"
                                + (back[i] == 1 ? "" : "s") + "; records are taken in the order of the file");
            }
        }
    }

    /** Of the record, s; NaN where it has none. */
    double time() {
        return time;
    }

    /** Which group the record is of, for people. */
    String shown() {
        return readings.get(cursor.group()).group().shown() + ", record " + cursor.index();
    }

    /** Hands out the values of the record; returns how many. */
    int put(SampleSink sink) {
        Optional<SampleGroup> samples = readings.get(cursor.group()).samples();
        return samples.isPresent() ? samples.get().put(cursor, time, sink) : 0;
    }

    boolean isFrame() {
        return readings.get(cursor.group()).frames().isPresent();
    }

    /** Shows the record as a frame; false when it is none. */
    boolean put(Frame frame) {
        return readings.get(cursor.group()).frames().orElseThrow().put(cursor, time, frame);
    }

    @Override
    public void close() {
        cursor.close();
        for (Reading reading : readings) {
            reading.time().close();
            reading.frames().flatMap(FrameGroup::apart).ifPresent(Values::close);
            reading.samples().ifPresent(s -> s.apart().forEach(Values::close));
        }
    }
}
