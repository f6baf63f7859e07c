package hotday.signals.frame;

import hotday.core.finding.Finding;
import java.util.List;

/**
 * Makes samples of frames: a network's description, a diagnostic protocol, whatever knows what bytes mean. To add one,
 * write a class of this kind, hand it to {@code hotday decode} beside the others ({@code app.cli.DecodeCommand}), and it
 * is given data frames of a recording in order. Every bus of a recording has a decoder of its own ({@link BusDecoders}), so
 * that none needs to look at {@link Frame#bus} or to name it. It may keep what it needs of earlier frames (parts of a longer
 * message), in bounded memory, and allocates nothing for a frame of a signal it has met before. For one thread.
 */
public interface FrameDecoder {
    /**
     * Looks at a data frame. Its bytes are valid during this call only.
     *
     * @param frame remote and error frames do not come here
     * @param samples takes what the frame says, at the time of the frame that completed it
     * @return whether this decoder knows what the frame is, even when it holds no sample (yet)
     */
    boolean decode(Frame frame, SampleSink samples);

    /** What people call the message of a frame that this decoder knows; empty when it has no name. */
    default String name(Frame frame) {
        return "";
    }

    /** What a person should know once the recording is over: broken messages, answers that did not come. */
    default List<Finding> findings() {
        return List.of();
    }
}
