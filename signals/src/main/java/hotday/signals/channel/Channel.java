package hotday.signals.channel;

/**
 * One mapped channel of a recording, sample for sample as recorded. Nothing is dropped: a sample that cannot be used
 * keeps its place, is NaN and carries the reason in its flags.
 *
 * @param kind what it means to the model
 * @param column name in the file, or {@code constant}
 * @param unit the file's unit
 * @param values SI; NaN where there is no usable sample
 * @param flags one byte a sample, bits of this class
 * @param resolution step of the recorded value, SI; 0 when unknown
 * @param lag s by which the samples are late: a sample of time t tells of t - lag
 */
public record Channel(
        ModelChannel kind, String column, String unit, double[] values, byte[] flags, double resolution, double lag) {
    public static final byte OK = 0;
    /** The cell was empty or held a word that says that there is no value. */
    public static final byte BLANK = 1;
    /** Outside what can be right; NaN. */
    public static final byte OUT_OF_RANGE = 2;
    /** The cell held text; NaN. */
    public static final byte NOT_A_NUMBER = 4;
    /** A repeat in a file that fills columns forward: the value stands, but was not received at this time. */
    public static final byte HELD = 8;
    /** Far from the samples before and after; NaN. */
    public static final byte SPIKE = 16;
    /** Moved to the floor or ceiling of the map. */
    public static final byte CLIPPED = 32;
    /** Replaced by the map's value for a standing engine. */
    public static final byte ENGINE_OFF = 64;

    /** Column of a channel that the map gives as one value for the whole run. */
    public static final String CONSTANT = "constant";

    /** Samples that carry any of the bits. */
    public int count(int bits) {
        int n = 0;
        for (byte f : flags) {
            n += (f & bits) != 0 ? 1 : 0;
        }
        return n;
    }

    /** True when there is a value that was received with this sample. */
    public boolean good(int sample) {
        return !Double.isNaN(values[sample]) && (flags[sample] & HELD) == 0;
    }

    /** Number of good samples. */
    public int good() {
        int n = 0;
        for (int i = 0; i < values.length; i++) {
            n += good(i) ? 1 : 0;
        }
        return n;
    }
}
