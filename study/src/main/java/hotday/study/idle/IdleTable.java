package hotday.study.idle;

import hotday.study.picture.PairChart;
import hotday.study.picture.SvgCanvas;
import hotday.vehicle.idle.IdleRun;
import hotday.vehicle.idle.IdleStudy;
import java.util.Comparator;
import java.util.Locale;

/** The table as a file, and its hardest cell as a picture. */
public final class IdleTable {
    private static final double RPM = Math.PI / 30.0;
    private static final double WIDTH = 640;
    private static final double HEIGHT = 360;
    private static final double SHOWN = 6.0; // s

    private IdleTable() {}

    /** One line a cell; columns in docs/idle.md. */
    public static String csv(IdleCompensation made) {
        StringBuilder out = new StringBuilder("head_bar_abs,engine_rpm,suction_bar_abs,load_N_m,announce_N_m,lead_s,"
                + (made.byAir() ? "air" : "fuel")
                + "_percent,sag_without_rpm,flare_without_rpm,settling_without_s,sag_rpm,flare_rpm,settling_s,"
                + "sag_lead_short_rpm,flare_lead_short_rpm,sag_lead_long_rpm,flare_lead_long_rpm\n");
        for (IdleCell c : made.cells()) {
            out.append(String.format(
                    Locale.ROOT,
                    "%.1f,%.0f,%.2f,%.2f,%.1f,%.2f,%.1f,%s,%s,%.1f,%.1f,%.1f,%.1f\n",
                    c.head() / 1e5,
                    c.speed() / RPM,
                    c.suction() / 1e5,
                    c.load(),
                    c.forward().torque(),
                    c.forward().lead(),
                    100.0 * c.share(),
                    run(c.unannounced()),
                    run(c.announced()),
                    c.tooShort().sag() / RPM,
                    c.tooShort().flare() / RPM,
                    c.tooLong().sag() / RPM,
                    c.tooLong().flare() / RPM));
        }
        return out.toString();
    }

    private static String run(IdleRun r) {
        return String.format(Locale.ROOT, "%.1f,%.1f,%.2f", r.sag() / RPM, r.flare() / RPM, r.settling());
    }

    /** Speed against time without and with the table, in the cell that sags most without, as SVG text. */
    public static String svg(IdleCompensation made) {
        IdleCell cell = made.cells().stream()
                .max(Comparator.comparingDouble(c -> c.unannounced().sag()))
                .orElseThrow();
        int points = (int) Math.round(SHOWN / IdleStudy.STEP) + 1;
        double[] time = new double[points];
        double[] without = new double[points];
        double[] with = new double[points];
        for (int i = 0; i < points; i++) {
            time[i] = i * IdleStudy.STEP - IdleStudy.ENGAGED;
            without[i] = cell.unannounced().trace().speed(i) / RPM;
            with[i] = cell.announced().trace().speed(i) / RPM;
        }
        String title = String.format(
                Locale.ROOT,
                "%s: clutch at %.1f bar abs, %.0f rpm",
                made.vehicle().name(),
                cell.head() / 1e5,
                cell.speed() / RPM);
        SvgCanvas canvas = new SvgCanvas(WIDTH, HEIGHT, title);
        new PairChart(
                        title,
                        time,
                        without,
                        with,
                        "without",
                        "with the table",
                        "time since the clutch closed, s",
                        "engine speed, rpm")
                .draw(canvas, 10, 8, WIDTH - 20, HEIGHT - 16);
        return canvas.finish();
    }
}
