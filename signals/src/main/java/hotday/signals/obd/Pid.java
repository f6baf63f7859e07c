package hotday.signals.obd;

/**
 * One value of service 01.
 *
 * @param number 0 to 255
 * @param length bytes that the parameter has in an answer
 * @param name one word
 * @param first byte of the value, from 0
 * @param count bytes of the value; 0 where it is bits and no number
 * @param multiply and
 * @param divide value = raw x multiply / divide + offset
 * @param unit as in the standard; empty for a bare number
 * @param fromMemory whether the row was remembered, not read
 */
public record Pid(
        int number,
        int length,
        String name,
        int first,
        int count,
        double multiply,
        double divide,
        double offset,
        String unit,
        boolean fromMemory) {
    /** Whether it is a number. */
    public boolean isNumber() {
        return count > 0;
    }

    double value(int raw) {
        return raw * multiply / divide + offset;
    }
}
