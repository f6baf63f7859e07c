package hotday.vehicle.sheet;

import hotday.core.typed.TypedMap;
import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.core.unit.UnitSystem;
import hotday.core.unit.Units;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.stream.Collectors;

/**
 * One block of a build sheet: typed values with ranges, and defaults that are written down when they are used. Ranges and
 * fixed defaults are given as they could be typed.
 */
final class Section {
    private static final Display METRIC = new Display(UnitSystem.METRIC);

    private final String name;
    private final Optional<TypedMap> map;
    private final List<Assumption> assumptions;

    private Section(String name, Optional<TypedMap> map, List<Assumption> assumptions) {
        this.name = name;
        this.map = map;
        this.assumptions = assumptions;
    }

    /** A block that may be left out; its keys are all the caller will ask for. */
    static Section optional(TypedMap root, String name, List<Assumption> assumptions, String... keys) {
        return new Section(name, known(root.map(name), keys), assumptions);
    }

    /** A block that must be there. */
    static Section required(TypedMap root, String name, List<Assumption> assumptions, String... keys) {
        return new Section(name, known(root.requiredMap(name), keys), assumptions);
    }

    /** A block inside this one that may be left out. */
    Optional<Section> inner(String key, String... keys) {
        return known(map.flatMap(m -> m.map(key)), keys)
                .map(m -> new Section(name + "." + key, Optional.of(m), assumptions));
    }

    /** Blocks inside this one, typed as one or as a list. */
    List<Section> inners(String key, String... keys) {
        return map.stream()
                .flatMap(m -> m.maps(key).stream())
                .map(m -> new Section(name + "." + key, known(Optional.of(m), keys), assumptions))
                .toList();
    }

    /** A part of this block; left out, it hands out defaults, which go to a list of its own. */
    Section part(String key, List<Assumption> own, String... keys) {
        return new Section(name + "." + key, known(map.flatMap(m -> m.map(key)), keys), own);
    }

    /** Lists the defaults of a {@link #part}: one by one, or as one map when all of it was left out. */
    void settle(Section part, List<Assumption> own, String reason) {
        if (part.present()) {
            assumptions.addAll(own);
            return;
        }
        StringJoiner all = new StringJoiner(", ", "{", "}");
        own.forEach(a -> all.add(a.key().substring(part.name.length() + 1) + ": " + a.value()));
        assumptions.add(new Assumption(part.name, all.toString(), reason));
    }

    private static Optional<TypedMap> known(Optional<TypedMap> map, String... keys) {
        map.ifPresent(m -> m.refuseUnknown(keys));
        return map;
    }

    boolean present() {
        return map.isPresent();
    }

    boolean has(String key) {
        return map.isPresent() && map.get().has(key);
    }

    /** A text that must be typed; empty after a fault. */
    String requiredText(String key) {
        return map.flatMap(m -> m.requiredText(key)).orElse("");
    }

    /** One of a few words that must be typed; the first of them after a fault. */
    String requiredWord(String key, String... allowed) {
        if (present() && !has(key)) {
            fault(key, "'" + name + "." + key + "' is missing: one of " + String.join(", ", allowed));
        }
        return map.flatMap(m -> m.text(key, allowed)).orElse(allowed[0]);
    }

    /** One of a few words. */
    String word(String key, String otherwise, String reason, String... allowed) {
        if (has(key)) {
            return map.orElseThrow().text(key, allowed).orElse(otherwise);
        }
        assume(key, otherwise, reason);
        return otherwise;
    }

    /** One word or a list of words; the default when absent, empty after a fault. */
    List<String> words(String key, String otherwise, String reason, String... allowed) {
        if (has(key)) {
            return map.orElseThrow().words(key, allowed);
        }
        assume(key, otherwise, reason);
        return List.of(otherwise);
    }

    /** True when a value is typed in a unit of this quantity. */
    boolean measures(String key, Quantity q) {
        return map.isPresent() && map.get().measures(key, q);
    }

    /** A value that must be typed; NaN after a fault. */
    double required(String key, Quantity q, String low, String high) {
        return map.map(m -> m.requiredQuantity(key, q, Units.parse(q, low), Units.parse(q, high)))
                .orElse(Double.NaN);
    }

    /** A typed value, or the default, which is then listed with its reason; NaN after a fault. */
    double value(String key, Quantity q, String low, String high, String otherwise, String reason) {
        double si = Units.parse(q, otherwise);
        return has(key) ? typed(key, q, low, high) : assumed(key, q, si, otherwise, reason);
    }

    /** The same with a default that follows from other values, SI. */
    double derived(String key, Quantity q, String low, String high, double otherwise, String reason) {
        return has(key)
                ? typed(key, q, low, high)
                : assumed(key, q, otherwise, METRIC.unitFor(q).text(otherwise), reason);
    }

    /** A typed value, or another, which is no assumption about the vehicle and is not listed; NaN after a fault. */
    double typedOr(String key, Quantity q, String low, String high, double otherwise) {
        return has(key) ? typed(key, q, low, high) : otherwise;
    }

    private double typed(String key, Quantity q, String low, String high) {
        return map.orElseThrow().requiredQuantity(key, q, Units.parse(q, low), Units.parse(q, high));
    }

    private double assumed(String key, Quantity q, double si, String text, String reason) {
        assumptions.add(new Assumption(name + "." + key, text, reason, Optional.of(q)));
        return si;
    }

    int integer(String key, int low, int high, int otherwise, String reason) {
        if (has(key)) {
            return map.orElseThrow().integer(key, low, high, otherwise);
        }
        assume(key, Integer.toString(otherwise), reason);
        return otherwise;
    }

    /** A list of values in SI; empty when absent or wrong. */
    List<Double> list(String key, Quantity q, String low, String high) {
        return map.map(m -> m.quantities(key, q, Units.parse(q, low), Units.parse(q, high)))
                .orElse(List.of());
    }

    /** A list of values as it could be typed. */
    static String text(List<Double> values, Quantity q) {
        return values.stream().map(METRIC.unitFor(q)::text).collect(Collectors.joining(", ", "[", "]"));
    }

    /** A curve of pairs in SI; empty when absent or wrong. */
    List<List<Double>> pairs(String key, Quantity x, String lowX, String highX, Quantity y, String lowY, String highY) {
        return map.map(m -> m.pairs(
                        key,
                        x,
                        Units.parse(x, lowX),
                        Units.parse(x, highX),
                        y,
                        Units.parse(y, lowY),
                        Units.parse(y, highY)))
                .orElse(List.of());
    }

    void assume(String key, String value, String reason) {
        assumptions.add(new Assumption(name + "." + key, value, reason));
    }

    /** A fault of a part that may be all defaults: there, or else at the block around it. */
    void faultNear(String key, Section around, String message) {
        if (present()) {
            fault(key, message);
        } else {
            around.fault(name.substring(name.lastIndexOf('.') + 1), message);
        }
    }

    /** Something to look at in a value that is used all the same. */
    void remark(String key, String finding, String message) {
        map.ifPresent(m -> m.remark(key, finding, message));
    }

    void fault(String key, String message) {
        map.ifPresent(m -> m.fault(key, message));
    }
}
