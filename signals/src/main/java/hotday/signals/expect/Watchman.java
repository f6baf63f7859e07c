package hotday.signals.expect;

import hotday.signals.translator.Field;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Looks at frames as they pass, whoever sent them, and judges what was expected. Frames must come in the order of time. */
public final class Watchman {
    private record Key(int network, int id, boolean extended) {}

    private final List<Judge> judges = new ArrayList<>();
    private final Map<Watched, Seen> seen = new LinkedHashMap<>();
    private final Map<Key, List<Seen>> byFrame = new HashMap<>();
    /** Of the frame at hand: all of its values are taken before any is judged. */
    private final List<Seen> came = new ArrayList<>();

    public Watchman(List<Expected> expected) {
        expected.forEach(e -> judges.add(Judges.of(e, this::seen)));
    }

    private Seen seen(Watched signal) {
        return seen.computeIfAbsent(signal, s -> {
            Seen made = new Seen(s);
            byFrame.computeIfAbsent(new Key(s.network(), s.id(), s.extended()), k -> new ArrayList<>())
                    .add(made);
            return made;
        });
    }

    /**
     * A data frame passed.
     *
     * @param time ns from the beginning
     */
    public void frame(long time, int network, int id, boolean extended, byte[] data, int from, int length) {
        if (judges.isEmpty()) {
            return;
        }
        for (Judge judge : judges) {
            judge.now(time);
            judge.frame(network, id, extended, time);
        }
        List<Seen> here = byFrame.getOrDefault(new Key(network, id, extended), List.of());
        long word = here.isEmpty() ? 0 : Field.word(data, from, Math.min(length, Field.MOST_BYTES));
        came.clear();
        for (Seen one : here) {
            if (one.take(word, Math.min(length, Field.MOST_BYTES))) {
                came.add(one);
            }
        }
        came.forEach(one -> judges.forEach(judge -> judge.value(one, time)));
    }

    /** The frames end; nothing is judged behind. */
    public void end(long time) {
        judges.forEach(judge -> judge.end(time));
    }

    /** In the order of the expectations. */
    public List<Verdict> verdicts() {
        return judges.stream().map(Judge::verdict).toList();
    }
}
