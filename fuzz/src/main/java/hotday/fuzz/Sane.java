package hotday.fuzz;

import hotday.signals.frame.SampleSink;
import hotday.signals.frame.SampleState;
import java.util.HashMap;
import java.util.Map;

/** Takes samples and looks at what every decoder promises. */
final class Sane implements SampleSink {
    private final Map<String, Integer> signals = new HashMap<>();

    @Override
    public int signal(String name, String unit) {
        return signals.computeIfAbsent(name, n -> signals.size());
    }

    @Override
    public void sample(double time, int signal, double value, SampleState state) {
        boolean known = signal >= 0 && signal < signals.size();
        boolean silent = state == SampleState.VALID || Double.isNaN(value);
        if (!known || !silent) {
            throw new IllegalStateException("signal " + signal + ", state " + state + ", value " + value);
        }
    }

    @Override
    public void text(double time, int signal, String value) {
        sample(time, signal, Double.NaN, SampleState.VALID);
    }
}
