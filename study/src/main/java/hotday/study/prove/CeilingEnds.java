package hotday.study.prove;

import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.vehicle.cases.AmbientCeiling;

/** An outside temperature that was searched for, in words: where the search ended it is said so. */
public final class CeilingEnds {
    private CeilingEnds() {}

    /**
     * As in "119.4", "above 176.0" or "below -4.0", in the chosen unit, which is not named.
     *
     * @param kelvin ceiling or end of an interval, K
     */
    public static String words(double kelvin, Display show) {
        return marked(kelvin, show, "above ", "below ");
    }

    /** The same for narrow places: ">176.0", "<-4.0". */
    public static String sign(double kelvin, Display show) {
        return marked(kelvin, show, ">", "<");
    }

    private static String marked(double kelvin, Display show, String above, String below) {
        if (kelvin >= AmbientCeiling.HIGHEST) {
            return above + show.number(Quantity.TEMPERATURE, AmbientCeiling.HIGHEST);
        }
        return kelvin <= AmbientCeiling.LOWEST
                ? below + show.number(Quantity.TEMPERATURE, AmbientCeiling.LOWEST)
                : show.number(Quantity.TEMPERATURE, kelvin);
    }
}
