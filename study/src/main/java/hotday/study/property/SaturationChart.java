package hotday.study.property;

import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.core.unit.Unit;
import hotday.core.unit.UnitSystem;
import hotday.core.unit.Units;
import hotday.physics.fluid.Air;
import hotday.physics.refrigerant.Refrigerant;
import hotday.study.picture.CurveChart;
import hotday.study.picture.SvgCanvas;
import java.util.ArrayList;
import java.util.List;

/**
 * The pressure-temperature chart of a refrigerant as gauges show it at an altitude.
 *
 * @param fluid whose chart it is
 * @param altitude m above sea level
 * @param rows temperatures rising
 */
public record SaturationChart(Refrigerant fluid, double altitude, List<Row> rows) {
    private static final double WIDTH = 640;
    private static final double HEIGHT = 420;

    public SaturationChart {
        rows = List.copyOf(rows);
    }

    /**
     * @param temperature K
     * @param pressure Pa absolute
     * @param gauge Pa above the air outside, negative below
     */
    public record Row(double temperature, double pressure, double gauge) {}

    /**
     * Rows every step from the first temperature, as far as the last.
     *
     * @param from K
     * @param to K
     * @param step K, above 0
     * @param altitude m above sea level, standard atmosphere
     */
    public static SaturationChart of(Refrigerant fluid, double from, double to, double step, double altitude) {
        double air = Air.isaPressure(altitude);
        List<Row> rows = new ArrayList<>();
        long steps = (long) Math.floor((to - from) / step + 1e-9);
        for (long i = 0; i <= steps; i++) {
            double t = from + i * step;
            double p = fluid.saturationPressure(t);
            rows.add(new Row(t, p, p - air));
        }
        return new SaturationChart(fluid, altitude, rows);
    }

    /** Pressure of the air outside, Pa. */
    public double air() {
        return Air.isaPressure(altitude);
    }

    /** "5000 ft", "1524 m". */
    public String altitudeText(Display show) {
        Unit unit = Units.unit(Quantity.LENGTH, show.system() == UnitSystem.US ? "ft" : "m");
        return Math.round(unit.fromSi(altitude)) + " " + unit.symbol();
    }

    /** As SVG text in the units somebody chose. */
    public String svg(Display show) {
        Unit temperature = show.unitFor(Quantity.TEMPERATURE);
        Unit pressure = show.unitFor(Quantity.PRESSURE_GAUGE);
        double[] x = rows.stream()
                .mapToDouble(r -> temperature.fromSi(r.temperature()))
                .toArray();
        double[] y = rows.stream().mapToDouble(r -> pressure.fromSi(r.gauge())).toArray();
        String title = fluid.label() + " at " + altitudeText(show);
        SvgCanvas canvas = new SvgCanvas(WIDTH, HEIGHT, title);
        new CurveChart(
                        title,
                        x,
                        y,
                        "temperature, " + temperature.symbol(),
                        "gauge pressure, liquid and vapour, " + pressure.symbol())
                .draw(canvas, 10, 8, WIDTH - 20, HEIGHT - 16);
        return canvas.finish();
    }
}
