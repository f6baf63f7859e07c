package hotday.signals.dbc;

import hotday.core.finding.Place;
import hotday.signals.dbc.Statement.AttributeDefinition;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Definitions, common values and the network's own attributes; values of an {@code ENUM} are its words. */
final class Attributes {
    private final Map<String, AttributeDefinition> definitions = new HashMap<>();
    private final Map<String, String> common = new HashMap<>();
    private final Map<String, String> ofNetwork = new LinkedHashMap<>();

    void define(AttributeDefinition definition) {
        definitions.put(definition.name(), definition);
    }

    void common(Statement.AttributeDefault value) {
        common.put(value.name(), value.value());
    }

    Map<String, String> ofNetwork() {
        return ofNetwork;
    }

    Optional<String> of(Map<String, String> own, String name) {
        return Optional.ofNullable(own.getOrDefault(name, common.get(name)));
    }

    /** The value as a word where it is the number of one. */
    String value(Statement.AttributeValue typed, Place place, FindingList findings) {
        AttributeDefinition definition = definitions.get(typed.name());
        if (definition == null) {
            findings.warning("attribute-undefined", place, "attribute '" + typed.name() + "' is defined nowhere");
            return typed.value();
        }
        if (!definition.type().equals("ENUM") || typed.quoted()) {
            return typed.value();
        }
        double number = Double.parseDouble(typed.value());
        List<String> words = definition.words();
        if (number != Math.rint(number) || number < 0 || number >= words.size()) {
            findings.warning(
                    "attribute-out-of-range",
                    place,
                    "attribute '" + typed.name() + "' has the value " + typed.value() + ", must be 0 to "
                            + (words.size() - 1));
            return typed.value();
        }
        return words.get((int) number);
    }
}
