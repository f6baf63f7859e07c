package hotday.signals.sample;

import hotday.signals.frame.SampleState;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;

/** Writes a row for every sample: {@code time_s,signal,value,unit,state}; the value is empty where there is none. */
public final class SampleRows implements SampleWriter {
    private static final byte[][] STATES = Arrays.stream(SampleState.values())
            .map(s -> (s.word() + "\n").getBytes(StandardCharsets.US_ASCII))
            .toArray(byte[][]::new);

    private final TextBuffer text;
    private final DoubleSupplier zero;
    private final Map<String, Integer> numbers = new HashMap<>();
    private final List<byte[]> names = new ArrayList<>();
    private final List<byte[]> units = new ArrayList<>();

    /**
     * @param out stays open; {@link #finish} before it is closed
     * @param zero s on the recording's clock from which rows count; NaN when it has none, and times are empty then
     */
    public SampleRows(OutputStream out, DoubleSupplier zero) {
        this.text = new TextBuffer(out);
        this.zero = zero;
        text.put("time_s,signal,value,unit,state\n".getBytes(StandardCharsets.US_ASCII));
    }

    @Override
    public int signal(String name, String unit) {
        return numbers.computeIfAbsent(name, n -> {
            names.add(TextBuffer.cell(n));
            units.add(TextBuffer.cell(unit));
            return names.size() - 1;
        });
    }

    @Override
    public void sample(double time, int signal, double value, SampleState state) {
        begin(time, signal);
        if (state == SampleState.VALID) {
            text.put(value);
        }
        end(signal, state);
    }

    @Override
    public void text(double time, int signal, String value) {
        begin(time, signal);
        text.put(TextBuffer.cell(value));
        end(signal, SampleState.VALID);
    }

    private void begin(double time, int signal) {
        if (!Double.isNaN(time)) {
            text.putTime(time - zero.getAsDouble());
        }
        text.put(',');
        text.put(names.get(signal));
        text.put(',');
    }

    private void end(int signal, SampleState state) {
        text.put(',');
        text.put(units.get(signal));
        text.put(',');
        text.put(STATES[state.ordinal()]);
    }

    @Override
    public void finish() {
        text.flush();
    }
}
