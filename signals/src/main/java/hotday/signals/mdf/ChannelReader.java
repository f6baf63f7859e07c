package hotday.signals.mdf;

import hotday.signals.frame.SampleState;
import java.util.Optional;

/** The value of one channel from a record. For one thread. */
final class ChannelReader {
    private final Channel channel;
    private final Field field;
    /** Of values that lie apart: how they are to be taken. */
    private final Field form;

    private final Conversion conversion;
    private final Optional<Values> apart;
    private final Optional<Field> used;
    private final Faults faults;

    /**
     * @param field what stands in the record
     * @param form what the value is
     * @param used how many bytes of the field are in use
     */
    ChannelReader(
            Channel channel,
            Field field,
            Field form,
            Conversion conversion,
            Optional<Values> apart,
            Optional<Field> used,
            Faults faults) {
        this.channel = channel;
        this.field = field;
        this.form = form;
        this.conversion = conversion;
        this.apart = apart;
        this.used = used;
        this.faults = faults;
    }

    Optional<Values> apart() {
        return apart;
    }

    /** Whether the record says that the value is none, or the bit that should say so lies nowhere. */
    static boolean isInvalid(Channel channel, RecordCursor record) {
        if ((channel.flags() & 1) != 0) {
            return true;
        }
        if ((channel.flags() & 2) == 0) {
            return false;
        }
        long at = record.validityAt() + (channel.invalidBit() >> 3);
        boolean missing = at < 0 || at >= record.validity().length;
        return missing || (record.validity()[(int) at] >> (channel.invalidBit() & 7) & 1) != 0;
    }

    /**
     * Reads the value of the record that a cursor stands at.
     *
     * @param to filled where the answer is {@link SampleState#VALID}
     */
    SampleState read(RecordCursor record, Physical to) {
        if (isInvalid(channel, record)) {
            return SampleState.NOT_AVAILABLE;
        }
        if (form.isNumber() && apart.isEmpty()) {
            conversion.number(channel.isVirtual() ? record.index() : field.number(record.bytes(), record.at()), to);
        } else if (!text(record, to)) {
            return SampleState.ERROR;
        }
        if (to.isNothing()) {
            return SampleState.RESERVED;
        }
        return to.text().isPresent() || Double.isFinite(to.number()) ? SampleState.VALID : SampleState.NOT_AVAILABLE;
    }

    private boolean text(RecordCursor record, Physical to) {
        if (apart.isEmpty()) {
            int length = field.bytes();
            if (used.isPresent()) {
                length = (int) Math.min(length, used.get().raw(record.bytes(), record.at()));
            }
            conversion.text(form.text(record.bytes(), record.at() + field.first(), Math.max(0, length)), to);
            return true;
        }
        Values values = apart.get();
        long offset = field.raw(record.bytes(), record.at());
        if (!values.go(offset, record.index())) {
            faults.fault(
                    "value-missing",
                    "channel '" + channel.name() + "' (block ##CN at byte " + channel.position() + "): record "
                            + record.index() + " names a value at byte " + Long.toUnsignedString(offset)
                            + " of its data, where there is none");
            return false;
        }
        if (form.isNumber()) {
            return number(values, to);
        }
        conversion.text(form.text(values.bytes(), values.at(), values.length()), to);
        return true;
    }

    private boolean number(Values values, Physical to) {
        if (values.length() < form.bytes()) {
            return false;
        }
        conversion.number(form.number(values.bytes(), values.at()), to);
        return true;
    }
}
