package hotday.app.cli;

import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.study.design.CompressorReport;
import hotday.study.design.CompressorReport.CoolingDown;
import hotday.study.design.CompressorReport.Line;
import hotday.vehicle.controller.Hold;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What the compressor's rules do with a fan schedule, for people. */
final class CompressorText {
    private CompressorText() {}

    static void print(Console console, CompressorReport report, Display display) {
        console.result("");
        console.result(String.format(
                "%-36s %10s  %-40s %s",
                "compressor, design ambient", "clutch/min", "held off by", "with the fan at full speed"));
        report.lines().forEach(line -> console.result(line(line)));
        console.result("A cabin that stood in the heat: " + words(report.cooling(), display)
                + "; with the fan at full speed " + words(report.fullFan(), display) + ".");
    }

    private static String line(Line line) {
        return String.format(
                        Locale.ROOT,
                        "%-36s %10.1f  %-40s %s",
                        line.kase().title(),
                        line.clutchPerMinute(),
                        held(line.held()),
                        held(line.fullFan()))
                .stripTrailing();
    }

    private static String held(Map<Hold, Double> shares) {
        return new TreeMap<>(shares)
                .entrySet().stream()
                        .map(e -> String.format(
                                Locale.ROOT, "%s %.0f %%", e.getKey().label(), 100 * e.getValue()))
                        .collect(Collectors.joining(", "));
    }

    private static String words(CoolingDown cooling, Display display) {
        String target = display.format(Quantity.TEMPERATURE, cooling.target());
        String when = cooling.seconds().isPresent()
                ? String.format(
                        Locale.ROOT,
                        "%s after %.0f s",
                        target,
                        cooling.seconds().getAsDouble())
                : target + " not within 20 min";
        return when + ", " + display.format(Quantity.TEMPERATURE, cooling.cabin()) + " after 20 min, vents "
                + display.format(Quantity.TEMPERATURE, cooling.vent()) + " after ten";
    }
}
