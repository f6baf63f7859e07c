package hotday.vehicle.sheet;

import hotday.core.unit.Quantity;
import java.util.Optional;

/**
 * A value that the sheet left open and the program filled in.
 *
 * @param key where it would be typed, such as {@code engine.metal_mass}
 * @param value with unit, as it could be typed
 * @param reason where it comes from
 * @param quantity it measures; empty where it has no unit
 */
public record Assumption(String key, String value, String reason, Optional<Quantity> quantity) {
    Assumption(String key, String value, String reason) {
        this(key, value, reason, Optional.empty());
    }
}
