package hotday.core.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is said to a person, its settings not yet named: the same facts read well in a terminal and on a page. */
public record Sentence(List<Part> parts) {
    /**
     * Words, or a setting instead.
     *
     * @param words empty where a setting stands
     */
    public record Part(String words, Optional<Setting> setting) {
        public Part {
            Objects.requireNonNull(words, "words");
            Objects.requireNonNull(setting, "setting");
        }
    }

    public Sentence {
        parts = List.copyOf(parts);
    }

    /** One after the other: settings, other sentences, and what goes as words. */
    public static Sentence of(Object... pieces) {
        List<Part> parts = new ArrayList<>();
        for (Object piece : pieces) {
            if (piece instanceof Sentence other) {
                parts.addAll(other.parts());
            } else if (piece instanceof Setting setting) {
                parts.add(new Part("", Optional.of(setting)));
            } else {
                parts.add(new Part(String.valueOf(piece), Optional.empty()));
            }
        }
        return new Sentence(parts);
    }

    public String said(Wording wording) {
        return parts.stream()
                .map(p -> p.setting().map(wording::of).orElse(p.words()))
                .collect(Collectors.joining());
    }

    /** Settings named, in order. */
    public List<Setting> settings() {
        return parts.stream().flatMap(p -> p.setting().stream()).toList();
    }
}
