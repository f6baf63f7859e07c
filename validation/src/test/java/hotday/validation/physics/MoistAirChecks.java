package hotday.validation.physics;

import hotday.physics.fluid.MoistAir;
import hotday.validation.Check;
import hotday.validation.SharedData;
import hotday.validation.Topic;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Moist air, state by state, against an independent program with the same relations and against real-gas moist air. */
public final class MoistAirChecks implements Topic {
    private static final String IDEAL = "ASHRAE Handbook relations, independent program";
    private static final String REAL = "real-gas moist air, ASHRAE RP-1485";

    /** That program works with no less water than this, kg/kg. */
    private static final double DRIEST = 1e-7;

    @Override
    public String title() {
        return "Moist air, worst of 220 states, 0 to 50 degC and 70 to 101 kPa";
    }

    @Override
    public List<Check> checks() {
        List<Check> out = new ArrayList<>();
        add(out, "saturation pressure", worst("pws_ashrae_Pa", true), 0.01, "%", IDEAL);
        add(out, "humidity ratio", worst("W_ashrae_kg_kgda", true), 0.01, "%", IDEAL);
        add(out, "specific volume", worst("v_ashrae_m3_kgda", true), 0.01, "%", IDEAL);
        add(out, "density", worst("rho_ashrae_kg_m3", true), 0.01, "%", IDEAL);
        add(out, "wet bulb", worst("Twb_ashrae_degC", false), 0.01, "K", IDEAL);
        add(out, "dew point", worst("Tdp_ashrae_degC", false), 0.01, "K", IDEAL);
        add(out, "humidity ratio", worst("W_kg_kgda", true), 0.62, "%", REAL);
        add(out, "enthalpy", worst("h_J_kgda", false) / 1e3, 1.57, "kJ/kg", REAL);
        add(out, "density", worst("rho_kg_m3", true), 0.062, "%", REAL);
        add(out, "dew point", worst("Tdp_degC", false), 0.018, "K", REAL);
        return out;
    }

    private static void add(List<Check> out, String what, double worst, double limit, String unit, String source) {
        out.add(Check.near(what + ": largest difference", worst, 0, limit, unit, source));
    }

    /** Largest difference over the table, in percent or in the column's unit; cells without a value do not count. */
    private static double worst(String column, boolean percent) {
        double worst = 0;
        for (Map<String, String> row : SharedData.rows("reference/moist_air.csv")) {
            if (!row.get(column).isEmpty()) {
                double expected = Double.parseDouble(row.get(column));
                double difference = Math.abs(ours(row, column) - expected);
                worst = Math.max(worst, percent ? 100 * difference / Math.max(expected, DRIEST) : difference);
            }
        }
        return worst;
    }

    private static double ours(Map<String, String> row, String column) {
        double t = Double.parseDouble(row.get("T_degC")) + 273.15;
        double p = Double.parseDouble(row.get("p_Pa"));
        double w = MoistAir.humidityRatio(t, Double.parseDouble(row.get("RH")), p);
        return switch (column.substring(0, column.indexOf('_'))) {
            case "pws" -> MoistAir.saturationPressure(t);
            case "W" -> w;
            case "h" -> MoistAir.enthalpy(t, w);
            case "v" -> MoistAir.specificVolume(t, w, p);
            case "rho" -> MoistAir.density(t, w, p);
            case "Twb" -> MoistAir.wetBulb(t, w, p) - 273.15;
            default -> MoistAir.dewPoint(w, p) - 273.15;
        };
    }
}
