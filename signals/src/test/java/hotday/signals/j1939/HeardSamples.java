package hotday.signals.j1939;

import hotday.signals.frame.SampleSink;
import hotday.signals.frame.SampleState;
import java.util.ArrayList;
import java.util.List;

/** Keeps samples as lines {@code name = value unit} or {@code name: state}. */
final class HeardSamples implements SampleSink {
    final List<String> lines = new ArrayList<>();
    final List<String> names = new ArrayList<>();
    final List<String> units = new ArrayList<>();

    @Override
    public int signal(String name, String unit) {
        if (!names.contains(name)) {
            names.add(name);
            units.add(unit);
        }
        return names.indexOf(name);
    }

    @Override
    public void sample(double time, int signal, double value, SampleState state) {
        boolean valid = state == SampleState.VALID;
        String said = valid ? " = " + value + " " + units.get(signal) : ": " + state.word() + " " + value;
        lines.add((names.get(signal) + said).strip());
    }

    @Override
    public void text(double time, int signal, String value) {
        lines.add(names.get(signal) + " = '" + value + "'");
    }
}
