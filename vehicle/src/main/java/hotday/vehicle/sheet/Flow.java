package hotday.vehicle.sheet;

import hotday.core.unit.Quantity;
import hotday.core.unit.Units;

/** A flow of air, typed as mass or as volume of air of 1.2 kg/m3. */
record Flow(Section section) {
    private static final double DENSITY = 1.2; // kg/m3, as blowers and fans are rated

    /** kg/s, from a range and a default in kg/s; the default is listed when it was used. */
    double derived(String key, String low, String high, double otherwise, String reason) {
        if (!section.measures(key, Quantity.VOLUME_FLOW)) {
            return section.derived(key, Quantity.MASS_FLOW, low, high, otherwise, reason);
        }
        return DENSITY * section.required(key, Quantity.VOLUME_FLOW, volume(low), volume(high));
    }

    private static String volume(String mass) {
        return Units.parse(Quantity.MASS_FLOW, mass) / DENSITY + " m3/s";
    }
}
