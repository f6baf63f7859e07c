package hotday.study.property;

import hotday.physics.refrigerant.FluidState;
import hotday.physics.refrigerant.RangeException;
import hotday.physics.refrigerant.Refrigerant;

/**
 * What is known of a state: two of the four, or temperature or pressure alone for liquid and vapour in equilibrium. What
 * is not known is NaN.
 *
 * @param temperature K
 * @param pressure Pa absolute
 * @param enthalpy J/kg, from saturated liquid at 0 degC = 200 kJ/kg
 * @param quality mass share of vapour, 0..1
 */
public record Known(double temperature, double pressure, double enthalpy, double quality) {

    private static boolean given(double value) {
        return !Double.isNaN(value);
    }

    /** How many of the four are known. */
    public int count() {
        int count = 0;
        for (double value : new double[] {temperature, pressure, enthalpy, quality}) {
            count += given(value) ? 1 : 0;
        }
        return count;
    }

    /** True for temperature or pressure alone. */
    public boolean saturation() {
        return count() == 1 && (given(temperature) || given(pressure));
    }

    /** True when a state or a saturation follows from it. */
    public boolean enough() {
        return count() == 2 || saturation();
    }

    /**
     * The state of two known values.
     *
     * @throws RangeException outside the equation's range
     */
    public FluidState state(Refrigerant fluid) {
        if (given(temperature)) {
            if (given(pressure)) {
                return fluid.atPressureTemperature(pressure, temperature);
            }
            return given(enthalpy)
                    ? fluid.atTemperatureEnthalpy(temperature, enthalpy)
                    : fluid.atTemperatureQuality(temperature, quality);
        }
        if (given(pressure)) {
            return given(enthalpy)
                    ? fluid.atPressureEnthalpy(pressure, enthalpy)
                    : fluid.atPressureQuality(pressure, quality);
        }
        return fluid.atEnthalpyQuality(enthalpy, quality);
    }

    /**
     * Liquid and vapour in equilibrium at the temperature or pressure known.
     *
     * @throws RangeException outside the equation's range
     */
    public BothPhases bothPhases(Refrigerant fluid) {
        return given(temperature)
                ? BothPhases.of(
                        fluid, fluid.atTemperatureQuality(temperature, 0), fluid.atTemperatureQuality(temperature, 1))
                : BothPhases.of(fluid, fluid.atPressureQuality(pressure, 0), fluid.atPressureQuality(pressure, 1));
    }
}
