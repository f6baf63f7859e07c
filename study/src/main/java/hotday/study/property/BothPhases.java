package hotday.study.property;

import hotday.physics.refrigerant.FluidState;
import hotday.physics.refrigerant.Refrigerant;

/**
 * Saturated liquid beside saturated vapour of the same temperature and pressure.
 *
 * @param surfaceTension N/m
 */
public record BothPhases(FluidState liquid, FluidState vapour, double surfaceTension) {

    static BothPhases of(Refrigerant fluid, FluidState liquid, FluidState vapour) {
        return new BothPhases(liquid, vapour, fluid.surfaceTension(liquid.temperature()));
    }

    /** K. */
    public double temperature() {
        return liquid.temperature();
    }

    /** Pa absolute. */
    public double pressure() {
        return liquid.pressure();
    }
}
