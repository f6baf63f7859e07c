package hotday.core.finding;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * One thing a technician should know. The key is stable and meant for programs and tests; the message is for people:
 * what happened, and what to do. Values carry the numbers behind the message; every key of a physical value ends in its
 * unit ({@code peak_degC}, {@code offset_K}).
 */
public record Finding(
        String key, Severity severity, Optional<Place> place, Sentence sentence, Map<String, Object> values) {
    public Finding {
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(sentence, "sentence");
        values = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    public Finding(String key, Severity severity, Optional<Place> place, String message, Map<String, Object> values) {
        this(key, severity, place, Sentence.of(message), values);
    }

    public static Finding fault(String key, Place place, String message) {
        return fault(key, place, Sentence.of(message));
    }

    public static Finding fault(String key, Place place, Sentence message) {
        return new Finding(key, Severity.FAULT, Optional.of(place), message, Map.of());
    }

    public static Finding warning(String key, Place place, String message) {
        return warning(key, place, Sentence.of(message));
    }

    public static Finding warning(String key, Place place, Sentence message) {
        return new Finding(key, Severity.WARNING, Optional.of(place), message, Map.of());
    }

    public static Finding warning(String key, String message) {
        return warning(key, Sentence.of(message));
    }

    public static Finding warning(String key, Sentence message) {
        return new Finding(key, Severity.WARNING, Optional.empty(), message, Map.of());
    }

    public static Finding note(String key, String message) {
        return new Finding(key, Severity.NOTE, Optional.empty(), message, Map.of());
    }

    public static Finding note(String key, Place place, String message) {
        return note(key, place, Sentence.of(message));
    }

    public static Finding note(String key, Place place, Sentence message) {
        return new Finding(key, Severity.NOTE, Optional.of(place), message, Map.of());
    }

    /** The same finding with one more value; the key should end in the unit where there is one. */
    public Finding with(String valueKey, Object value) {
        Map<String, Object> more = new LinkedHashMap<>(values);
        more.put(valueKey, value);
        return new Finding(key, severity, place, sentence, more);
    }

    /** As said to somebody who has the file open. */
    public String message() {
        return sentence.said(Wording.FILE);
    }

    /** One line for a person: {@code place: message}. */
    @Override
    public String toString() {
        return place.map(p -> p + ": " + message()).orElseGet(this::message);
    }
}
