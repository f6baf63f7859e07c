package hotday.study.property;

import hotday.physics.refrigerant.FluidState;
import hotday.physics.refrigerant.RangeException;
import hotday.physics.refrigerant.Refrigerant;

/** What answers known values: the equation of state, or the table of time loops. */
public interface Answers {
    /** @throws RangeException outside its range */
    FluidState state(Known known);

    /** For a temperature or a pressure alone. */
    BothPhases bothPhases(Known known);

    /** By the equation of state: everything, to rounding. */
    static Answers ofEquation(Refrigerant fluid) {
        return new Answers() {
            @Override
            public FluidState state(Known known) {
                return known.state(fluid);
            }

            @Override
            public BothPhases bothPhases(Known known) {
                return known.bothPhases(fluid);
            }
        };
    }

    /** By the table: what it does not hold stays NaN. */
    static Answers ofTable(Refrigerant fluid) {
        return new TableAnswers(fluid);
    }
}
