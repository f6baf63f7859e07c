package hotday.study.property;

import hotday.physics.refrigerant.FluidState;
import hotday.physics.refrigerant.PropertyTable;
import hotday.physics.refrigerant.Refrigerant;

/**
 * Answers from the table. Its own way in is pressure with enthalpy, temperature or quality; where the pressure is not
 * known it is taken from the equation of state.
 */
final class TableAnswers implements Answers {
    private final Refrigerant fluid;
    private final PropertyTable table;

    TableAnswers(Refrigerant fluid) {
        this.fluid = fluid;
        this.table = PropertyTable.of(fluid);
    }

    @Override
    public FluidState state(Known known) {
        double pressure = Double.isNaN(known.pressure()) ? known.state(fluid).pressure() : known.pressure();
        if (!Double.isNaN(known.quality())) {
            return table.saturatedState(pressure, known.quality());
        }
        return Double.isNaN(known.enthalpy())
                ? table.stateAtTemperature(pressure, known.temperature())
                : table.state(pressure, known.enthalpy());
    }

    @Override
    public BothPhases bothPhases(Known known) {
        double pressure =
                Double.isNaN(known.pressure()) ? fluid.saturationPressure(known.temperature()) : known.pressure();
        return BothPhases.of(fluid, table.saturatedState(pressure, 0), table.saturatedState(pressure, 1));
    }
}
