package hotday.study.replay;

import hotday.signals.expect.Watched;
import hotday.signals.frame.SampleSink;
import hotday.signals.frame.SampleState;
import hotday.signals.translator.Field;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Samples of the frames of all networks: numbers, and words where a raw value has one. */
final class Signals {
    private record Key(int network, int id, boolean extended) {}

    private final Map<Key, List<Watched>> byFrame = new HashMap<>();
    private final Map<Watched, Integer> numbers = new HashMap<>();
    private final SampleSink samples;

    Signals(List<Watched> signals, SampleSink samples) {
        this.samples = samples;
        signals.forEach(s -> byFrame.computeIfAbsent(new Key(s.network(), s.id(), s.extended()), k -> new ArrayList<>())
                .add(s));
    }

    /** @param time s */
    void frame(double time, int network, int id, boolean extended, byte[] data, int from, int length) {
        int classic = Math.min(length, Field.MOST_BYTES);
        long word = Field.word(data, from, classic);
        for (Watched s : byFrame.getOrDefault(new Key(network, id, extended), List.of())) {
            if (s.source().isThere(word, classic)) {
                sample(time, s, s.source().field().raw(word));
            }
        }
    }

    private void sample(double time, Watched s, long raw) {
        int number = numbers.computeIfAbsent(s, w -> samples.signal(w.name(), w.unit()));
        String word = s.words().get(raw);
        if (word != null) {
            samples.text(time, number, word);
            return;
        }
        double value = s.number(raw);
        samples.sample(time, number, value, Double.isNaN(value) ? SampleState.RESERVED : SampleState.VALID);
    }
}
