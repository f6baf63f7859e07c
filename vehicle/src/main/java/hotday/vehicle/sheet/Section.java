package hotday.vehicle.sheet;

import hotday.core.typed.TypedMap;
import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.core.unit.UnitSystem;
import java.util.List;
import java.util.Optional;

/** One block of a build sheet: typed values with ranges, and defaults that are written down when they are used. */
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
        Optional<TypedMap> map = root.map(name);
        map.ifPresent(m -> m.refuseUnknown(keys));
        return new Section(name, map, assumptions);
    }

    /** A block that must be there. */
    static Section required(TypedMap root, String name, List<Assumption> assumptions, String... keys) {
        Optional<TypedMap> map = root.requiredMap(name);
        map.ifPresent(m -> m.refuseUnknown(keys));
        return new Section(name, map, assumptions);
    }

    boolean present() {
        return map.isPresent();
    }

    boolean has(String key) {
        return map.isPresent() && map.get().has(key);
    }

    Optional<TypedMap> map() {
        return map;
    }

    /** A value that must be typed; NaN after a fault. */
    double required(String key, Quantity q, double low, double high) {
        return map.map(m -> m.requiredQuantity(key, q, low, high)).orElse(Double.NaN);
    }

    /** A typed value, or the default, which is then listed with its reason. */
    double value(String key, Quantity q, double low, double high, double otherwise, String reason) {
        if (has(key)) {
            return map.orElseThrow().quantity(key, q, low, high, otherwise);
        }
        assume(key, METRIC.format(q, otherwise), reason);
        return otherwise;
    }

    int integer(String key, int low, int high, int otherwise, String reason) {
        if (has(key)) {
            return map.orElseThrow().integer(key, low, high, otherwise);
        }
        assume(key, Integer.toString(otherwise), reason);
        return otherwise;
    }

    /** One of a few words. */
    String word(String key, String otherwise, String reason, String... allowed) {
        if (has(key)) {
            return map.orElseThrow().text(key, allowed).orElse(otherwise);
        }
        assume(key, otherwise, reason);
        return otherwise;
    }

    private void assume(String key, String value, String reason) {
        assumptions.add(new Assumption(name + "." + key, value, reason));
    }

    void fault(String key, String message) {
        map.ifPresent(m -> m.fault(key, message));
    }
}
