package hotday.signals.channel;

/**
 * One mapped channel of a recording, sample for sample as recorded. Nothing is dropped: a sample that cannot be used
 * keeps its place, is NaN and carries the reason in its flags.
 *
 * @param kind what it means to the model
 * @param column name in the file, or {@code constant}
 * @param unit as typed in map or header
 * @param values SI; NaN where there is no usable sample
 * @param flags one byte a sample, bits of this class
 * @param resolution step of the recorded value, SI; 0 when unknown
 */
public record Channel(ModelChannel kind, String column, String unit, double[] values, byte[] flags, double resolution) {
    public static final byte OK = 0;
    /** The cell was empty or said that there is no value. */
    public static final byte BLANK = 1;
    /** Outside what can be right; the value is set to NaN. */
    public static final byte OUT_OF_RANGE = 2;
    /** A repeat of the last received value in a file that fills columns forward. */
    public static final byte HELD = 4;
    /** Moved to the floor or ceiling of the map. */
    public static final byte CLIPPED = 8;

    /** Samples that carry any of the bits. */
    public int count(int bits) {
        int n = 0;
        for (byte f : flags) {
            n += (f & bits) != 0 ? 1 : 0;
        }
        return n;
    }

    public boolean usable(int i) {
        return !Double.isNaN(values[i]);
    }
}
