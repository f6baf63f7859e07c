package hotday.signals.mdf;

import hotday.signals.frame.SampleState;
import java.io.Closeable;

/** The time of a record, s from the beginning of the recording. For one thread. */
abstract class GroupTime implements Closeable {
    /** NaN where the record has none. */
    abstract double of(RecordCursor record);

    @Override
    public void close() {}

    /** In no record. */
    static GroupTime none() {
        return new GroupTime() {
            @Override
            double of(RecordCursor record) {
                return Double.NaN;
            }
        };
    }

    /**
     * In every record.
     *
     * @param second s in the unit of the channel
     */
    static GroupTime own(ChannelReader reader, double second) {
        Physical value = new Physical();
        return new GroupTime() {
            @Override
            double of(RecordCursor record) {
                boolean valid = reader.read(record, value) == SampleState.VALID;
                return valid && value.text().isEmpty() ? value.number() * second : Double.NaN;
            }
        };
    }

    /** In the record of the same number of another group, which is read beside this one. */
    static GroupTime beside(RecordCursor other, GroupTime its) {
        return new GroupTime() {
            @Override
            double of(RecordCursor record) {
                return other.next() ? its.of(other) : Double.NaN;
            }

            @Override
            public void close() {
                other.close();
            }
        };
    }
}
