package hotday.signals.mdf;

import hotday.signals.frame.SampleSink;
import hotday.signals.frame.SampleState;

/** Takes samples and keeps none. */
final class Counting implements SampleSink {
    private int signals;

    @Override
    public int signal(String name, String unit) {
        return signals++;
    }

    @Override
    public void sample(double time, int signal, double value, SampleState state) {}

    @Override
    public void text(double time, int signal, String value) {}
}
