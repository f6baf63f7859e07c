package hotday.signals.sample;

import hotday.signals.frame.SampleSink;
import hotday.signals.frame.SampleState;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Sums up the samples of every signal. */
public final class SampleStatistics implements SampleSink {
    private final Map<String, Integer> numbers = new HashMap<>();
    private final List<SignalStatistics> signals = new ArrayList<>();

    @Override
    public int signal(String name, String unit) {
        return numbers.computeIfAbsent(name, n -> {
            signals.add(new SignalStatistics(n, unit));
            return signals.size() - 1;
        });
    }

    @Override
    public void sample(double time, int signal, double value, SampleState state) {
        signals.get(signal).add(value, state);
    }

    @Override
    public void text(double time, int signal, String value) {
        signals.get(signal).add(value);
    }

    /** Those with samples, in the order in which they were met. */
    public List<SignalStatistics> signals() {
        return signals.stream().filter(s -> s.count() > 0).toList();
    }
}
