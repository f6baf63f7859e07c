package hotday.app.cli;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.unit.Quantity;
import hotday.core.unit.UnitException;
import hotday.core.unit.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Values typed behind options, in the units people type; keeps every fault until all have been read. */
final class TypedOptions {
    private final List<Finding> faults = new ArrayList<>();

    /** In SI; the other value when the option was not given or is wrong. */
    double value(String option, Optional<String> typed, Quantity quantity, double otherwise) {
        if (typed.isEmpty()) {
            return otherwise;
        }
        try {
            return Units.parse(quantity, typed.get());
        } catch (UnitException e) {
            fault(option, e.key(), e.getMessage());
            return otherwise;
        }
    }

    /** In SI, within a range that is said in the message. */
    double between(
            String option, Optional<String> typed, Quantity quantity, double otherwise, double low, double high) {
        double value = value(option, typed, quantity, otherwise);
        if (value >= low && value <= high) {
            return value;
        }
        String unit = quantity.units().get(0).symbol();
        fault(
                option,
                "out-of-range",
                (typed.orElse("") + " must lie between " + low + " and " + high + " " + unit).trim());
        return otherwise;
    }

    /** Pa absolute; what a gauge shows (psi, bar) counts from the air outside. NaN when not given or wrong. */
    double pressure(String option, Optional<String> typed, double air) {
        if (typed.isEmpty()) {
            return Double.NaN;
        }
        try {
            return Units.parse(Quantity.PRESSURE_ABSOLUTE, typed.get());
        } catch (UnitException absolute) {
            return value(option, typed, Quantity.PRESSURE_GAUGE, Double.NaN) + air;
        }
    }

    /** What a reader gives; empty, its faults kept, where it refuses. */
    <T> Optional<T> read(Supplier<T> reader) {
        try {
            return Optional.of(reader.get());
        } catch (InputException e) {
            faults.addAll(e.findings());
            return Optional.empty();
        }
    }

    void fault(String option, String key, String message) {
        faults.add(Finding.fault(key, Place.of(option), message));
    }

    void throwIfAny() {
        if (!faults.isEmpty()) {
            throw new InputException(faults);
        }
    }
}
