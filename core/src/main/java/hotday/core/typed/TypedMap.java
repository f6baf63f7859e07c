package hotday.core.typed;

import hotday.core.finding.Place;
import hotday.core.finding.Setting;
import hotday.core.unit.Amount;
import hotday.core.unit.Nearest;
import hotday.core.unit.Quantity;
import hotday.core.unit.Unit;
import hotday.core.unit.UnitException;
import hotday.core.unit.Units;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * A block of typed keys and values. Asking for a value that is not right books a fault at its place and gives the
 * default or NaN, so that reading goes on and all faults come out together.
 */
public final class TypedMap {
    private final Place place;
    private final Faults faults;
    private final String path;
    private final Map<String, Node> values = new LinkedHashMap<>();
    private final Map<String, Place> keyPlaces = new LinkedHashMap<>();

    TypedMap(MappingNode node, Place place, Faults faults, String path) {
        this.place = place;
        this.faults = faults;
        this.path = path;
        for (NodeTuple tuple : node.getValue()) {
            Place keyPlace = placeOf(tuple.getKeyNode());
            if (!(tuple.getKeyNode() instanceof ScalarNode key)) {
                faults.add("key-wrong", keyPlace, "a key must be a single word");
            } else if (values.containsKey(key.getValue())) {
                faults.add(
                        "key-twice",
                        keyPlace,
                        "'" + key.getValue() + "' stands here again; first at " + keyPlaces.get(key.getValue()));
            } else {
                values.put(key.getValue(), tuple.getValueNode());
                keyPlaces.put(key.getValue(), keyPlace);
            }
        }
    }

    private Place placeOf(Node node) {
        return node.getStartMark().map(TypedFile::place).orElse(place);
    }

    /** Where the block begins. */
    public Place place() {
        return place;
    }

    /** Where a value stands, or its key, or the block. */
    public Place place(String key) {
        Node node = values.get(key);
        return node == null ? keyPlaces.getOrDefault(key, place) : placeOf(node);
    }

    /** Where an item of a list stands, counted from 0; the list where there is no such item. */
    public Place place(String key, int item) {
        return values.get(key) instanceof SequenceNode list
                        && item < list.getValue().size()
                ? placeOf(list.getValue().get(item))
                : place(key);
    }

    public List<String> keys() {
        return List.copyOf(values.keySet());
    }

    public boolean has(String key) {
        return values.containsKey(key);
    }

    private String full(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    private Setting named(String key) {
        return Setting.named(full(key), "'" + full(key) + "'");
    }

    /**
     * Books a fault at a key.
     *
     * @param message pieces of a {@link hotday.core.finding.Sentence}
     */
    public void fault(String key, Object... message) {
        faults.add("value-wrong", place(key), message);
    }

    /** Books something to look at, at a key; the sheet can be used. */
    public void remark(String key, String finding, String message) {
        faults.remark(finding, place(key), message);
    }

    /** Books a fault for every key that is none of these, with the nearest that is. */
    public void refuseUnknown(String... known) {
        List<String> list = Arrays.asList(known);
        for (String key : values.keySet()) {
            if (!list.contains(key)) {
                String meant = Nearest.to(key, list)
                        .map(n -> " (did you mean '" + n + "'?)")
                        .orElse("");
                faults.add(
                        "unknown-key",
                        keyPlaces.get(key),
                        named(key),
                        " is not a key known here",
                        meant + ". Known: " + String.join(", ", list));
            }
        }
    }

    private <T> Optional<T> missing(String key, String what) {
        faults.add("key-missing", place, named(key), " is missing: ", what);
        return Optional.empty();
    }

    /** Every single value in this block and the blocks inside it, by its full key, as typed; lists are left out. */
    public Map<String, String> singles() {
        Map<String, String> out = new LinkedHashMap<>();
        values.forEach((key, node) -> {
            if (node instanceof ScalarNode scalar) {
                out.put(full(key), scalar.getValue());
            } else if (node instanceof MappingNode) {
                map(key).ifPresent(inner -> out.putAll(inner.singles()));
            }
        });
        return out;
    }

    /** Every value in this block and the blocks inside it that is no block, by its full key, as it could be typed on one line: single ones and lists. */
    public Map<String, String> inLine() {
        Map<String, String> out = new LinkedHashMap<>();
        values.forEach((key, node) -> {
            if (node instanceof MappingNode) {
                map(key).ifPresent(inner -> out.putAll(inner.inLine()));
            } else {
                out.put(full(key), inLine(node));
            }
        });
        return out;
    }

    private static String inLine(Node node) {
        if (node instanceof ScalarNode scalar) {
            return scalar.getValue();
        }
        return node instanceof SequenceNode list
                ? list.getValue().stream().map(TypedMap::inLine).collect(Collectors.joining(", ", "[", "]"))
                : "";
    }

    /** Where every value in this block and the blocks inside it stands, by its full key; of a block, where its key stands. */
    public Map<String, Place> places() {
        Map<String, Place> out = new LinkedHashMap<>();
        values.forEach((key, node) -> {
            boolean block = node instanceof MappingNode;
            out.put(full(key), block ? keyPlaces.get(key) : placeOf(node));
            if (block) {
                map(key).ifPresent(inner -> out.putAll(inner.places()));
            }
        });
        return out;
    }

    /** A nested block. */
    public Optional<TypedMap> map(String key) {
        Node node = values.get(key);
        if (node == null) {
            return Optional.empty();
        }
        if (node instanceof MappingNode mapping) {
            return Optional.of(new TypedMap(mapping, keyPlaces.get(key), faults, full(key)));
        }
        faults.add("not-a-mapping", placeOf(node), named(key), " must hold lines such as 'key: value'");
        return Optional.empty();
    }

    /** Nested blocks typed as one, or as a list of several; empty when absent or wrong. */
    public List<TypedMap> maps(String key) {
        if (!(values.get(key) instanceof SequenceNode list)) {
            return map(key).map(List::of).orElse(List.of());
        }
        List<TypedMap> out = new ArrayList<>();
        for (Node node : list.getValue()) {
            if (node instanceof MappingNode mapping) {
                out.add(new TypedMap(mapping, placeOf(node), faults, full(key)));
            } else {
                faults.add("not-a-mapping", placeOf(node), named(key), " must list blocks such as {key: value}");
            }
        }
        return out;
    }

    /** A nested block that must be there. */
    public Optional<TypedMap> requiredMap(String key) {
        return has(key) ? map(key) : missing(key, "this block is needed");
    }

    private Optional<String> scalar(String key) {
        Node node = values.get(key);
        if (node == null) {
            return Optional.empty();
        }
        if (node instanceof ScalarNode scalar) {
            return Optional.of(scalar.getValue());
        }
        faults.add("value-wrong", placeOf(node), named(key), " must be a single value, a list or block stands here");
        return Optional.empty();
    }

    /** Text as typed; with allowed words, one of them. */
    public Optional<String> text(String key, String... allowed) {
        Optional<String> text = scalar(key);
        if (text.isPresent() && allowed.length > 0 && !Arrays.asList(allowed).contains(text.get())) {
            String meant = Nearest.to(text.get(), Arrays.asList(allowed))
                    .map(n -> "; did you mean '" + n + "'?")
                    .orElse("");
            faults.add(
                    "word-wrong",
                    place(key),
                    named(key),
                    " is '",
                    text.get() + "', it must be one of " + String.join(", ", allowed) + meant);
            return Optional.empty();
        }
        return text;
    }

    public Optional<String> requiredText(String key) {
        Optional<String> text = has(key) ? text(key) : missing(key, "a text is needed");
        if (text.isPresent() && text.get().isBlank()) {
            faults.add("value-wrong", place(key), named(key), " must not be empty");
        }
        return text;
    }

    /** A typed value in SI, or the default when the key is absent; NaN after a fault. */
    public double quantity(String key, Quantity quantity, double low, double high, double otherwise) {
        return has(key) ? read(key, quantity, low, high).orElse(Double.NaN) : otherwise;
    }

    /** A typed value in SI that must be there; NaN after a fault. */
    public double requiredQuantity(String key, Quantity quantity, double low, double high) {
        Optional<Double> value = has(key)
                ? read(key, quantity, low, high)
                : missing(key, "needed here: " + quantity.title() + ", such as '" + quantity.example() + "'");
        return value.orElse(Double.NaN);
    }

    public Optional<Double> optionalQuantity(String key, Quantity quantity, double low, double high) {
        return has(key) ? read(key, quantity, low, high) : Optional.empty();
    }

    private Optional<Double> read(String key, Quantity quantity, double low, double high) {
        if (measures(key, quantity)) {
            faults.measured(full(key), quantity);
        }
        return scalar(key).flatMap(typed -> parse(named(key), typed, place(key), quantity, low, high));
    }

    private Optional<Double> parse(Setting name, String typed, Place at, Quantity quantity, double low, double high) {
        try {
            Amount amount = Units.amount(quantity, typed);
            double si = amount.si();
            if (si >= low && si <= high) {
                return Optional.of(si);
            }
            Unit unit = amount.unit();
            faults.add(
                    "out-of-range",
                    at,
                    name,
                    " is ",
                    typed.strip() + "; it must lie between " + unit.text(low) + " and " + unit.text(high));
        } catch (UnitException e) {
            faults.add(e.key(), at, name, ": ", e.getMessage());
        }
        return Optional.empty();
    }

    /** A whole number, or the default. */
    public int integer(String key, int low, int high, int otherwise) {
        Optional<String> typed = scalar(key);
        if (typed.isEmpty()) {
            return otherwise;
        }
        try {
            int value = Integer.parseInt(typed.get().trim());
            if (value >= low && value <= high) {
                return value;
            }
            faults.add(
                    "out-of-range",
                    place(key),
                    named(key),
                    " is ",
                    value + "; it must lie between " + low + " and " + high);
        } catch (NumberFormatException e) {
            faults.add("number-wrong", place(key), named(key), " is '", typed.get() + "'; a whole number is needed");
        }
        return otherwise;
    }

    /** A unit that must measure the quantity. */
    public Optional<Unit> unit(String key, Quantity quantity) {
        Optional<String> typed = scalar(key);
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Units.unit(quantity, typed.get()));
        } catch (UnitException e) {
            faults.add(e.key(), place(key), named(key), ": ", e.getMessage());
            return Optional.empty();
        }
    }

    private List<Node> sequence(String key) {
        Node node = values.get(key);
        if (node == null) {
            return List.of();
        }
        if (node instanceof SequenceNode list) {
            if (list.getValue().isEmpty()) {
                faults.add("value-wrong", placeOf(node), named(key), " is an empty list; fill it or take it out");
            }
            return list.getValue();
        }
        faults.add("not-a-list", placeOf(node), named(key), " must be a list such as [a, b]");
        return List.of();
    }

    /** A list of texts. */
    public List<String> texts(String key) {
        List<String> out = new ArrayList<>();
        for (Node node : sequence(key)) {
            if (node instanceof ScalarNode scalar) {
                out.add(scalar.getValue());
            } else {
                faults.add("value-wrong", placeOf(node), named(key), " must list single words");
            }
        }
        return out;
    }

    /** One word or a list of words, each of them allowed; empty when absent or wrong. */
    public List<String> words(String key, String... allowed) {
        if (!(values.get(key) instanceof SequenceNode)) {
            return text(key, allowed).map(List::of).orElse(List.of());
        }
        List<String> out = texts(key);
        for (String word : out) {
            if (!Arrays.asList(allowed).contains(word)) {
                faults.add(
                        "word-wrong",
                        place(key),
                        named(key),
                        " lists '",
                        word + "', it may list " + String.join(", ", allowed));
                return List.of();
            }
        }
        return out;
    }

    /** True when a value is typed in a unit of this quantity. */
    public boolean measures(String key, Quantity quantity) {
        if (!(values.get(key) instanceof ScalarNode scalar)) {
            return false;
        }
        try {
            Units.amount(quantity, scalar.getValue());
            return true;
        } catch (UnitException e) {
            return false;
        }
    }

    /** A list of values in SI; empty when absent or wrong. */
    public List<Double> quantities(String key, Quantity quantity, double low, double high) {
        List<Double> out = new ArrayList<>();
        for (Node node : sequence(key)) {
            item(key, node, quantity, low, high).ifPresent(out::add);
        }
        return out;
    }

    private Optional<Double> item(String key, Node node, Quantity quantity, double low, double high) {
        if (node instanceof ScalarNode scalar) {
            return parse(named(key), scalar.getValue(), placeOf(node), quantity, low, high);
        }
        faults.add("value-wrong", placeOf(node), named(key), " must list values such as '", quantity.example() + "'");
        return Optional.empty();
    }

    /** A curve typed as [[x, share], ...], x rising; empty when absent or wrong. */
    public List<List<Double>> pairs(String key, Quantity x, Quantity y) {
        return pairs(key, x, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, y, 0.0, 1.0);
    }

    /** A curve typed as [[x, y], ...], x rising, both within their SI ranges; empty when absent or wrong. */
    public List<List<Double>> pairs(
            String key, Quantity x, double lowX, double highX, Quantity y, double lowY, double highY) {
        List<List<Double>> out = new ArrayList<>();
        boolean whole = true;
        for (Node node : sequence(key)) {
            if (!(node instanceof SequenceNode pair) || pair.getValue().size() != 2) {
                faults.add(
                        "not-a-pair",
                        placeOf(node),
                        named(key),
                        " must list pairs such as [",
                        x.example() + ", " + y.example() + "]");
                whole = false;
                continue;
            }
            Optional<Double> a = item(key, pair.getValue().get(0), x, lowX, highX);
            Optional<Double> b = item(key, pair.getValue().get(1), y, lowY, highY);
            if (a.isEmpty() || b.isEmpty()) {
                whole = false;
                continue;
            }
            if (!out.isEmpty() && a.get() <= out.get(out.size() - 1).get(0)) {
                faults.add("not-rising", placeOf(node), named(key), " must rise from pair to pair");
                whole = false;
            }
            out.add(List.of(a.get(), b.get()));
        }
        return whole ? out : List.of();
    }
}
