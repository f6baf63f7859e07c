package hotday.signals.frame;

import hotday.core.finding.Finding;
import java.io.Closeable;
import java.util.List;

/**
 * A recording being read from the first to the last: frames, samples that it holds as such, or both. What is no frame is
 * passed over, counted and told; nothing is guessed. For one thread.
 */
public interface FrameSource extends Closeable {
    /** Whether there can be a frame in it; false when its kind or its head rule that out. */
    default boolean holdsFrames() {
        return true;
    }

    /**
     * Says where samples go that the recording itself holds; before the first {@link #next}, or not at all.
     *
     * @param samples takes those between one frame and the next while that next one is looked for
     */
    default void samplesTo(SampleSink samples) {}

    /**
     * Goes to the next frame.
     *
     * @param frame shows it until the next call
     * @return false at the end of the recording
     */
    boolean next(Frame frame);

    /** The layout in words. */
    String layout();

    /** Names of the networks met so far, by their numbers; empty when the recording names none. */
    List<String> buses();

    /** Frames read so far. */
    long frames();

    /** Samples so far that the recording itself holds. */
    default long samples() {
        return 0;
    }

    /** Lines or records so far that should be frames and are none. */
    long broken();

    /** First time stamp, s; NaN when there is none. */
    double firstTime();

    /** Stamp from which rows count that are written of it, s; NaN when there are no stamps. */
    default double zero() {
        return firstTime();
    }

    /** How far the clock went forward so far, s; NaN when there is none. */
    double duration();

    /** What a person should know about what was read so far. */
    List<Finding> findings();
}
