package hotday.study.predict;

import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.core.unit.Unit;
import hotday.study.picture.GridChart;
import hotday.vehicle.cases.Ceiling;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The map of ceilings over speed and grade as a picture, in the units of the sheet. */
public final class RoadMapChart {
    private static final double SPAN = 25.0; // K either side of the design ambient that colours tell apart

    private RoadMapChart() {}

    /** A picture of a map. */
    public static GridChart of(VehicleSpec spec, RoadMap map, Display show) {
        Unit temperature = show.unitFor(Quantity.TEMPERATURE);
        Unit speed = show.unitFor(Quantity.SPEED);
        List<Double> values = new ArrayList<>();
        List<String> words = new ArrayList<>();
        for (RoadMap.Point p : map.points()) {
            values.add(p.reachable() ? temperature.fromSi(p.ambient()) : Double.NaN);
            words.add(word(p));
        }
        double design = spec.designAmbient();
        return new GridChart(
                spec.name() + ": ambient ceiling in " + temperature.symbol()
                        + ", air conditioning as in the loaded climb",
                List.of(
                        "Below each number: what gives way first. Design day: "
                                + show.format(Quantity.TEMPERATURE, design)
                                + ". A dash: the engine has not the power.",
                        "Settled states, fan at full speed, from the sheet alone. Advice, not a warranty."),
                "speed, " + speed.symbol(),
                map.speeds().stream()
                        .map(v -> String.format(Locale.ROOT, "%.0f", speed.fromSi(v)))
                        .toList(),
                "grade",
                map.grades().stream()
                        .map(g -> String.format(Locale.ROOT, "%.0f %%", 100.0 * g))
                        .toList(),
                values,
                words,
                temperature.fromSi(design - SPAN),
                temperature.fromSi(design + SPAN));
    }

    private static String word(RoadMap.Point p) {
        if (!p.reachable()) {
            return "";
        }
        if (p.reach() == Ceiling.Reach.ABOVE_RANGE) {
            return "or more";
        }
        if (p.reach() == Ceiling.Reach.BELOW_RANGE) {
            return "or less";
        }
        return p.binding()
                .map(limit -> switch (limit) {
                    case COOLANT -> "coolant";
                    case BOILING -> "boiling";
                    case GEARBOX -> "gearbox";
                    case HEAD_PRESSURE -> "A/C head";
                    case CABIN_COOLING -> "cabin";
                    case SUPPLY -> "supply";
                    case CHARGE_AIR -> "charge air";
                })
                .orElse("");
    }
}
