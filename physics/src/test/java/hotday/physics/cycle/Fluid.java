package hotday.physics.cycle;

import hotday.physics.refrigerant.FluidState;
import hotday.physics.refrigerant.PropertyTable;
import hotday.physics.refrigerant.Refrigerant;

/** The states a cycle needs, from the equation of state or from the tables. */
interface Fluid {
    double saturationTemperature(double pressure);

    FluidState saturated(double pressure, double quality);

    FluidState single(double pressure, double temperature);

    /** J/kg. */
    double enthalpyAtEntropy(double pressure, double entropy, double guess);

    /** K. */
    double temperature(double pressure, double enthalpy);

    static Fluid exact(Refrigerant r) {
        return new Fluid() {
            @Override
            public double saturationTemperature(double pressure) {
                return r.saturationTemperature(pressure);
            }

            @Override
            public FluidState saturated(double pressure, double quality) {
                return r.atPressureQuality(pressure, quality);
            }

            @Override
            public FluidState single(double pressure, double temperature) {
                return r.atPressureTemperature(pressure, temperature);
            }

            @Override
            public double enthalpyAtEntropy(double pressure, double entropy, double guess) {
                return r.atPressureEntropy(pressure, entropy).enthalpy();
            }

            @Override
            public double temperature(double pressure, double enthalpy) {
                return r.atPressureEnthalpy(pressure, enthalpy).temperature();
            }
        };
    }

    static Fluid tables(Refrigerant r) {
        PropertyTable table = PropertyTable.of(r);
        double[] scratch = new double[6];
        return new Fluid() {
            @Override
            public double saturationTemperature(double pressure) {
                return table.saturation().temperature(pressure);
            }

            @Override
            public FluidState saturated(double pressure, double quality) {
                return table.saturatedState(pressure, quality);
            }

            @Override
            public FluidState single(double pressure, double temperature) {
                return table.stateAtTemperature(pressure, temperature);
            }

            @Override
            public double enthalpyAtEntropy(double pressure, double entropy, double guess) {
                return table.enthalpyAtEntropy(pressure, entropy, guess, scratch);
            }

            @Override
            public double temperature(double pressure, double enthalpy) {
                table.look(pressure, enthalpy, scratch);
                return scratch[PropertyTable.TEMPERATURE];
            }
        };
    }
}
