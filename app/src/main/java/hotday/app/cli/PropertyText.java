package hotday.app.cli;

import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.physics.refrigerant.FluidState;
import hotday.physics.refrigerant.PropertyTable;
import hotday.physics.refrigerant.Refrigerant;
import hotday.physics.refrigerant.TableError;
import hotday.study.property.BothPhases;
import hotday.study.property.SaturationChart;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Refrigerant properties in words and in the units somebody chose. */
final class PropertyText {
    private static final double MICRO = 1e6;
    private static final double MILLI = 1e3;

    private final Display show;
    private final Refrigerant fluid;
    private final double air;

    /** @param air pressure of the air outside, Pa: where gauges count from */
    PropertyText(Display show, Refrigerant fluid, double air) {
        this.show = show;
        this.fluid = fluid;
        this.air = air;
    }

    static List<String> lines(PropertyTable table, TableError error) {
        return List.of(
                table.description(),
                "largest error over " + error.states()
                        + " random states, 1 to 35 bar, -30 to 150 degC, a third two-phase:",
                String.format(Locale.ROOT, "  temperature  %.2g K", error.temperature()),
                String.format(Locale.ROOT, "  density      %.2g %%", 100.0 * error.density()),
                String.format(Locale.ROOT, "  enthalpy     %.2g J/kg at a pressure and temperature", error.enthalpy()),
                String.format(Locale.ROOT, "  entropy      %.2g J/(kg K)", error.entropy()));
    }

    List<String> lines(FluidState s) {
        List<String> out = new ArrayList<>();
        out.add(fluid.label() + ": " + s.region().word().replace('_', ' '));
        out.add(row("temperature", show.format(Quantity.TEMPERATURE, s.temperature())));
        out.add(row("pressure", pressure(s.pressure())));
        beside(s).ifPresent(out::add);
        if (s.saturated()) {
            out.add(row("quality", show.format(Quantity.RATIO, s.quality()) + " vapour by mass"));
        }
        out.add(row("density", show.format(Quantity.DENSITY, s.density())));
        out.add(row("enthalpy", show.format(Quantity.SPECIFIC_ENTHALPY, s.enthalpy())));
        out.add(row("entropy", show.format(Quantity.SPECIFIC_HEAT, s.entropy())));
        if (!Double.isNaN(s.cp())) {
            out.add(row("specific heat", show.format(Quantity.SPECIFIC_HEAT, s.cp()) + " at constant pressure"));
            out.add(row("", show.format(Quantity.SPECIFIC_HEAT, s.cv()) + " at constant volume"));
            out.add(row("speed of sound", plain(s.speedOfSound()) + " m/s"));
            out.add(row("viscosity", plain(MICRO * s.viscosity()) + " uPa s"));
            out.add(row("conductivity", plain(MILLI * s.conductivity()) + " mW/(m K)"));
        }
        out.add("");
        if (s.temperature() > fluid.publishedTemperatureLimit()) {
            out.add("Extrapolated: the authors of the equation stop at "
                    + show.format(Quantity.TEMPERATURE, fluid.publishedTemperatureLimit()) + ".");
        }
        out.add("Enthalpy counts from saturated liquid at 0 degC = 200 kJ/kg; air outside "
                + show.format(Quantity.PRESSURE_ABSOLUTE, air) + ".");
        return out;
    }

    /** How far from boiling, which is what a technician reads from two gauges and a thermometer. */
    private Optional<String> beside(FluidState s) {
        if (s.saturated()
                || s.pressure() >= fluid.criticalPressure()
                || s.pressure() < fluid.saturationPressure(fluid.lowestTemperature())) {
            return Optional.empty();
        }
        double boiling = fluid.saturationTemperature(s.pressure());
        double above = s.temperature() - boiling;
        return Optional.of(row(
                above >= 0 ? "superheat" : "subcooling",
                show.format(Quantity.TEMPERATURE_DIFFERENCE, Math.abs(above)) + ", boils at "
                        + show.format(Quantity.TEMPERATURE, boiling)));
    }

    List<String> lines(BothPhases both) {
        List<String> out = new ArrayList<>();
        out.add(fluid.label() + ": liquid and vapour in equilibrium");
        out.add(row("temperature", show.format(Quantity.TEMPERATURE, both.temperature())));
        out.add(row("pressure", pressure(both.pressure())));
        out.add(row("surface tension", plain(MILLI * both.surfaceTension()) + " mN/m"));
        out.add("");
        FluidState l = both.liquid();
        FluidState v = both.vapour();
        out.add(columns("", "liquid", "vapour", ""));
        out.add(pair("density", Quantity.DENSITY, l.density(), v.density()));
        out.add(pair("enthalpy", Quantity.SPECIFIC_ENTHALPY, l.enthalpy(), v.enthalpy()));
        out.add(pair("entropy", Quantity.SPECIFIC_HEAT, l.entropy(), v.entropy()));
        out.add(pair("specific heat", Quantity.SPECIFIC_HEAT, l.cp(), v.cp()));
        out.add(columns("speed of sound", plain(l.speedOfSound()), plain(v.speedOfSound()), "m/s"));
        out.add(columns("viscosity", plain(MICRO * l.viscosity()), plain(MICRO * v.viscosity()), "uPa s"));
        out.add(columns("conductivity", plain(MILLI * l.conductivity()), plain(MILLI * v.conductivity()), "mW/(m K)"));
        return out;
    }

    /** Temperature, gauge and absolute pressure, one row a step. */
    static List<String> lines(SaturationChart chart, Display show) {
        List<String> out = new ArrayList<>();
        out.add(chart.fluid().label() + ", liquid and vapour in equilibrium; gauges at " + chart.altitudeText(show)
                + ", air " + show.format(Quantity.PRESSURE_ABSOLUTE, chart.air()));
        out.add(columns(
                show.unitFor(Quantity.TEMPERATURE).symbol(),
                show.unitFor(Quantity.PRESSURE_GAUGE).symbol() + " gauge",
                show.unitFor(Quantity.PRESSURE_ABSOLUTE).symbol(),
                ""));
        for (SaturationChart.Row row : chart.rows()) {
            out.add(columns(
                    show.number(Quantity.TEMPERATURE, row.temperature()),
                    show.number(Quantity.PRESSURE_GAUGE, row.gauge()),
                    show.number(Quantity.PRESSURE_ABSOLUTE, row.pressure()),
                    ""));
        }
        return out;
    }

    private String pressure(double absolute) {
        return show.format(Quantity.PRESSURE_GAUGE, absolute - air) + " gauge, "
                + show.format(Quantity.PRESSURE_ABSOLUTE, absolute);
    }

    private String pair(String name, Quantity quantity, double liquid, double vapour) {
        return columns(
                name,
                show.number(quantity, liquid),
                show.number(quantity, vapour),
                show.unitFor(quantity).symbol());
    }

    private String plain(double value) {
        return show.number(Quantity.NUMBER, value);
    }

    private static String row(String name, String value) {
        return String.format(Locale.ROOT, "  %-15s %s", name, value);
    }

    private static String columns(String first, String second, String third, String fourth) {
        return String.format(Locale.ROOT, "  %-15s %12s %12s  %s", first, second, third, fourth)
                .stripTrailing();
    }
}
