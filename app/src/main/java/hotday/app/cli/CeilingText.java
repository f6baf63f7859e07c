package hotday.app.cli;

import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.study.prove.CeilingEnds;
import hotday.study.prove.CeilingReport;
import hotday.vehicle.cases.AmbientCeiling;
import hotday.vehicle.cases.Ceiling;
import java.util.ArrayList;
import java.util.List;

/** Ambient ceilings in the words of the trade. */
final class CeilingText {
    static final String CAUTION =
            "A prediction is advice with an interval, not a warranty. Local codes and licensed practice come first.";

    private CeilingText() {}

    static List<String> lines(List<CeilingReport> ceilings, Display show) {
        List<String> out = new ArrayList<>();
        for (CeilingReport c : ceilings) {
            out.add(line(c, show));
        }
        return out;
    }

    private static String line(CeilingReport c, Display show) {
        String verdict = c.low() >= c.designAmbient()
                ? "holds      "
                : c.high() < c.designAmbient() ? "DOES NOT   " : "not certain";
        return String.format(
                "  %s  %-38s %s (%s to %s); %s",
                verdict,
                c.best().kase().title(),
                answer(c.best(), show),
                CeilingEnds.words(c.low(), show),
                CeilingEnds.words(c.high(), show),
                c.best().reach() == Ceiling.Reach.ABOVE_RANGE
                        ? "nothing gives way"
                        : c.best().binding().title() + " gives way first");
    }

    private static String answer(Ceiling c, Display show) {
        return switch (c.reach()) {
            case FOUND -> "holds to " + show.format(Quantity.TEMPERATURE, c.ambient());
            case ABOVE_RANGE -> "holds beyond " + show.format(Quantity.TEMPERATURE, AmbientCeiling.HIGHEST);
            case BELOW_RANGE -> "fails even at " + show.format(Quantity.TEMPERATURE, AmbientCeiling.LOWEST);
        };
    }
}
