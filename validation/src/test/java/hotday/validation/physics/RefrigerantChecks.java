package hotday.validation.physics;

import hotday.physics.refrigerant.FluidState;
import hotday.physics.refrigerant.PropertyTable;
import hotday.physics.refrigerant.Refrigerant;
import hotday.physics.refrigerant.TableError;
import hotday.validation.Check;
import hotday.validation.SharedData;
import hotday.validation.Topic;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Equations of state, transport and tables of the refrigerants: largest deviations over whole reference tables, and printed values. */
public final class RefrigerantChecks implements Topic {
    private static final double PSI = 6894.757293168;
    private static final String REFERENCE = "reference tables by CoolProp 8.0.1dev, same published equation";
    private static final String SERVICE = "truck-body service table and public tables, within 0.6 psi of these";

    @Override
    public String title() {
        return "Refrigerants";
    }

    @Override
    public List<Check> checks() {
        List<Check> out = new ArrayList<>();
        for (Refrigerant r : Refrigerant.values()) {
            saturation(r, out);
            onePhase(r, out);
            table(r, out);
        }
        gauge(out);
        return out;
    }

    private static void zero(String what, double deviation, double tolerance, List<Check> out) {
        out.add(Check.near(what + ", largest relative deviation", deviation, 0.0, tolerance, "-", REFERENCE));
    }

    private static void saturation(Refrigerant r, List<Check> out) {
        double pressure = 0.0;
        double state = 0.0;
        double transport = 0.0;
        for (Map<String, String> row : SharedData.rows("reference/" + name(r) + "_sat.csv")) {
            double t = number(row, "T_K");
            pressure = Math.max(pressure, off(r.saturationPressure(t), number(row, "p_Pa")));
            transport = Math.max(transport, off(r.surfaceTension(t), number(row, "sigma_N_m")));
            for (int x = 0; x <= 1; x++) {
                FluidState s = r.atTemperatureQuality(t, x);
                String phase = x == 0 ? "L" : "V";
                state = Math.max(state, stateOff(s, row, phase));
                transport = Math.max(transport, transportOff(s, row, phase));
            }
        }
        zero(r.label() + " saturation pressure, -40 degC to near the critical point", pressure, 1e-9, out);
        zero(r.label() + " saturated density, enthalpy, entropy, heats, speed of sound", state, 1e-9, out);
        zero(r.label() + " saturated viscosity, conductivity, surface tension", transport, 1e-6, out);
    }

    private static void onePhase(Refrigerant r, List<Check> out) {
        double state = 0.0;
        double transport = 0.0;
        double flash = 0.0;
        for (Map<String, String> row : SharedData.rows("reference/" + name(r) + "_single.csv")) {
            double p = number(row, "p_Pa");
            double t = number(row, "T_K");
            FluidState s = r.atPressureTemperature(p, t);
            state = Math.max(state, stateOff(s, row, ""));
            transport = Math.max(transport, transportOff(s, row, ""));
            flash = Math.max(
                    flash, off(r.atPressureEnthalpy(p, number(row, "h_J_kg")).temperature(), t));
            flash = Math.max(
                    flash, off(r.atPressureEntropy(p, number(row, "s_J_kgK")).temperature(), t));
        }
        zero(r.label() + " one phase, 1 to 35 bar, -30 to 150 degC", state, 1e-8, out);
        zero(r.label() + " viscosity and conductivity there", transport, 1e-6, out);
        zero(r.label() + " temperature from p, h and from p, s there", flash, 1e-8, out);
    }

    private static void table(Refrigerant r, List<Check> out) {
        TableError e = TableError.of(PropertyTable.of(r), 60_000, 5);
        String source = "our equation of state, 60,000 random states";
        String what = r.label() + " time-loop table against the equation: ";
        out.add(Check.near(what + "temperature", e.temperature(), 0.0, 0.05, "K", source));
        out.add(Check.near(what + "density, relative", e.density(), 0.0, 5e-4, "-", source));
        out.add(Check.near(what + "enthalpy", e.enthalpy(), 0.0, 50.0, "J/kg", source));
    }

    private static void gauge(List<Check> out) {
        double[][] rows = {{40, 35.0, 38.4}, {100, 124.2, 124.9}, {120, 171.2, 169.2}, {160, 300.0, 288.9}};
        for (double[] row : rows) {
            double t = (row[0] - 32.0) / 1.8 + 273.15;
            for (Refrigerant r : Refrigerant.values()) {
                double ours = r.saturationPressure(t) / PSI - 14.696;
                String what = r.label() + " gauge pressure at " + Math.round(row[0]) + " degF";
                out.add(Check.near(what, ours, row[1 + r.ordinal()], 0.3, "psi", SERVICE));
            }
        }
    }

    private static double stateOff(FluidState s, Map<String, String> row, String phase) {
        double worst = off(s.density(), number(row, "rho" + phase + "_kg_m3"));
        worst = Math.max(worst, off(s.enthalpy(), number(row, "h" + phase + "_J_kg")));
        worst = Math.max(worst, off(s.entropy(), number(row, "s" + phase + "_J_kgK")));
        worst = Math.max(worst, off(s.cp(), number(row, "cp" + phase + "_J_kgK")));
        worst = Math.max(worst, off(s.cv(), number(row, "cv" + phase + "_J_kgK")));
        return Math.max(worst, off(s.speedOfSound(), number(row, "w" + phase + "_m_s")));
    }

    private static double transportOff(FluidState s, Map<String, String> row, String phase) {
        return Math.max(
                off(s.viscosity(), number(row, "mu" + phase + "_Pa_s")),
                off(s.conductivity(), number(row, "k" + phase + "_W_mK")));
    }

    private static double off(double ours, double reference) {
        return Math.abs(ours - reference) / Math.abs(reference);
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }

    private static String name(Refrigerant r) {
        return r.label().replace("-", "");
    }
}
