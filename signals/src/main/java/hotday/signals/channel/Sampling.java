package hotday.signals.channel;

/** How a channel is put on a grid. */
public enum Sampling {
    /** Last good sample at or before the grid point. */
    HOLD,
    /** Straight line between the good samples around. */
    LINEAR,
    /** Mean of the good samples since the previous grid point; the last good one when there are none. */
    MEAN
}
