package hotday.study.prove;

import hotday.vehicle.plant.Coefficient;
import java.util.Optional;

/**
 * Something the sheet only estimates. The fit works on z, in prior standard deviations from the sheet's value: log
 * unknowns multiply the coefficient by exp(z sd), shifts add z sd.
 *
 * @param id for programs
 * @param label for people
 * @param coefficient moved by it; empty for start states
 * @param log true for a multiplier
 * @param sd prior standard deviation: of the logarithm, or in the coefficient's unit
 */
record Unknown(String id, String label, Optional<Coefficient> coefficient, boolean log, double sd) {

    static Unknown level(String id, String label, Coefficient c, double sd) {
        return new Unknown(id, label, Optional.of(c), true, sd);
    }

    static Unknown shift(String id, String label, Coefficient c, double sd) {
        return new Unknown(id, label, Optional.of(c), false, sd);
    }

    static Unknown start(String id, String label, double sd) {
        return new Unknown(id, label, Optional.empty(), false, sd);
    }

    double apply(double nominal, double z) {
        return log ? nominal * Math.exp(z * sd) : nominal + z * sd;
    }
}
