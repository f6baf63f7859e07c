package hotday.validation.property;

import hotday.validation.Check;
import hotday.validation.CommandLineRun;
import hotday.validation.Topic;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** The pressure-temperature chart of the command against published charts, in psi as gauges show them at sea level. */
public final class GaugeChartChecks implements Topic {
    private static final double PSI = 6894.757293168;
    private static final String EQUATIONS = "reference equations of state, recomputed";
    private static final String TRUCK_BODY = "truck-body service table, whole psi";
    private static final String PUBLIC_TABLE = "public R-1234yf table, kPa";

    @Override
    public String title() {
        return "Refrigerant charts";
    }

    @Override
    public List<Check> checks() {
        List<Check> out = new ArrayList<>();
        int[] temperatures = {0, 20, 32, 40, 50, 60, 70, 80, 90, 100, 110, 120, 130, 140, 150, 160, 170, 180};
        double[] r134a = {
            6.5, 18.4, 27.8, 35.0, 45.4, 57.4, 71.1, 86.7, 104.3, 124.2, 146.4, 171.2, 198.7, 229.2, 262.9, 300.0,
            340.8, 385.6
        };
        double[] r1234yf = {
            9.2, 21.6, 31.1, 38.4, 48.8, 60.6, 74.0, 89.0, 106.0, 124.9, 145.9, 169.2, 195.0, 223.4, 254.7, 288.9,
            326.5, 367.6
        };
        for (int i = 0; i < temperatures.length; i++) {
            String t = temperatures[i] + " degF";
            out.add(Check.near("R-134a at " + t, psig("R-134a", t, "0 m"), r134a[i], 0.3, "psi", EQUATIONS));
            out.add(Check.near("R-1234yf at " + t, psig("R-1234yf", t, "0 m"), r1234yf[i], 0.3, "psi", EQUATIONS));
        }
        published(out);
        return out;
    }

    private static void published(List<Check> out) {
        double[][] service = {{20, 18}, {40, 35}, {70, 71}, {90, 104}, {100, 124}, {120, 171}, {140, 229}, {160, 300}};
        for (double[] row : service) {
            String t = Math.round(row[0]) + " degF";
            out.add(Check.near(
                    "R-134a at " + t + ", in print", psig("R-134a", t, "0 m"), row[1], 0.6, "psi", TRUCK_BODY));
        }
        double[][] kilopascal = {{-20, 150.9}, {0, 315.8}, {40, 1018.4}, {70, 2044.5}};
        for (double[] row : kilopascal) {
            String t = Math.round(row[0]) + " degC";
            double ours = row("R-1234yf", t, "0 m").get("p_Pa").asDouble() / 1e3;
            out.add(Check.relative("R-1234yf at " + t + ", in print", ours, row[1], 5e-4, "kPa", PUBLIC_TABLE));
        }
        double more = psig("R-134a", "100 degF", "5000 ft") - psig("R-134a", "100 degF", "0 m");
        String atmosphere = "US Standard Atmosphere 1976; from memory";
        out.add(Check.near("a gauge reads more at 5000 ft", more, 2.47, 0.01, "psi", atmosphere));
    }

    private static double psig(String fluid, String temperature, String altitude) {
        return row(fluid, temperature, altitude).get("gauge_Pa").asDouble() / PSI;
    }

    private static JsonNode row(String fluid, String temperature, String altitude) {
        CommandLineRun run = CommandLineRun.of(
                "property",
                "--fluid",
                fluid,
                "--chart",
                "--from-temperature",
                temperature,
                "--to-temperature",
                temperature,
                "--altitude",
                altitude,
                "--json");
        return run.json().get("rows").get(0);
    }
}
