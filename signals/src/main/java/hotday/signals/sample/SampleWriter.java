package hotday.signals.sample;

import hotday.signals.frame.SampleSink;

/** Writes samples into a stream that somebody else opened, and closes when {@link #finish} is through. */
public interface SampleWriter extends SampleSink {
    /** Writes what is not written yet. */
    void finish();
}
