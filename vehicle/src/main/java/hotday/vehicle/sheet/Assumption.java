package hotday.vehicle.sheet;

/**
 * A value that the sheet left open and the program filled in.
 *
 * @param key where it would be typed, such as {@code engine.metal_mass}
 * @param value with unit, as it could be typed
 * @param reason where it comes from
 */
public record Assumption(String key, String value, String reason) {}
