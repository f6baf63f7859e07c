package hotday.validation.physics;

import hotday.physics.component.AirPath;
import hotday.physics.component.FanCurve;
import hotday.physics.fluid.Air;
import hotday.physics.fluid.Boiling;
import hotday.physics.fluid.Coolant;
import hotday.validation.Check;
import hotday.validation.Topic;
import java.util.ArrayList;
import java.util.List;

/** Air, coolant, boiling and the fan laws. */
public final class FluidChecks implements Topic {
    private static final double PSI = 6894.757293168;
    private static final String ATMOSPHERE = "US Standard Atmosphere 1976; from memory";
    private static final String OPEN = "ASTM D3306 requirement as widely quoted, at least 108 degC";
    private static final String CAP = "several public service pages: 265 degF at 15 psi";
    private static final String STEAM = "steam tables: 14.696 + 15 psia";
    private static final String MANUAL = "engine manual: 1.0671 g/ml for 50 %";

    @Override
    public String title() {
        return "Fluids and fans";
    }

    @Override
    public List<Check> checks() {
        List<Check> out = new ArrayList<>();
        atmosphere(out);
        boiling(out);
        coolant(out);
        fan(out);
        return out;
    }

    private static void atmosphere(List<Check> out) {
        double[][] rows = {{1000, 89.875, 1.1116}, {2000, 79.495, 1.0065}, {3000, 70.109, 0.9091}};
        for (double[] row : rows) {
            String where = " of the standard atmosphere at " + Math.round(row[0]) + " m";
            double p = Air.isaPressure(row[0]);
            out.add(Check.near("pressure" + where, p / 1e3, row[1], 0.005, "kPa", ATMOSPHERE));
            double density = Air.density(p, Air.isaTemperature(row[0]));
            out.add(Check.near("density" + where, density, row[2], 1e-4, "kg/m3", ATMOSPHERE));
        }
        String air = "reference equations for dry air at one atmosphere, recomputed";
        out.add(Check.relative(
                "air at 40 degC: viscosity", 1e5 * Air.viscosity(313.15), 1.917, 0.01, "1e-5 Pa s", air));
        out.add(Check.relative(
                "air at 40 degC: conductivity", 1e3 * Air.conductivity(313.15), 27.35, 0.01, "mW/(m K)", air));
        out.add(Check.relative(
                "air at 40 degC: specific heat", Air.specificHeat(313.15), 1006.9, 1e-3, "J/(kg K)", air));
    }

    private static void boiling(List<Check> out) {
        out.add(Check.near(
                "half and half boils, open", Boiling.temperature(101325, 0.5) - 273.15, 108, 1, "degC", OPEN));
        double cap = Boiling.temperature(101325 + 15 * PSI, 0.5);
        out.add(Check.near("half and half boils under a 15 psi cap", cap - 273.15, 129.4, 1, "degC", CAP));
        double water = Boiling.temperature(101325 + 15 * PSI, 0);
        out.add(Check.near("water boils under a 15 psi cap", water - 273.15, 120.9, 0.2, "degC", STEAM));
    }

    private static void coolant(List<Check> out) {
        out.add(Check.relative(
                "half and half at 20 degC: density", Coolant.density(293.15, 0.5), 1067.1, 0.015, "kg/m3", MANUAL));
        double share = Coolant.specificHeat(353.15, 0.5) / Coolant.specificHeat(353.15, 0);
        String manual = "service manual, minivan 2000: 0.82 of water";
        out.add(Check.relative("half and half: specific heat over that of water", share, 0.82, 0.03, "-", manual));
        double vapour = Boiling.glycolPressure(373.15);
        out.add(Check.relative("neat glycol at 100 degC: vapour pressure", vapour, 2133, 0.01, "Pa", "engine manual"));
    }

    private static void fan(List<Check> out) {
        FanCurve fan = new FanCurve(300, 0, -200, 60, 600, 0, 0, 1.1344);
        String laws = "fan laws (affinity), definition";
        double power = fan.shaftPower(0.4, 0.8, 1.1344);
        out.add(Check.near("600 W fan at 80 % speed", power, 307.2, 1e-6, "W", laws));
        out.add(Check.near("600 W fan at half speed", fan.shaftPower(0.2, 0.5, 1.1344), 75, 1e-6, "W", laws));
        double thin = fan.shaftPower(0.4, 1, 0.7849) / 600;
        out.add(Check.near("shaft power at 3000 m and 38 degC over sea level", thin, 0.692, 5e-4, "-", laws));
        double still = AirPath.flow(0, 300, 0, -200, 60, 0, 180);
        out.add(Check.near("300 - 200 Q2 against 180 Q2, at rest", still, 0.8885, 5e-5, "m3/s", "closed form by hand"));
        double[][] rows = {{40, 0.9386}, {80, 1.0750}, {100, 1.1669}, {110, 1.2173}};
        for (double[] row : rows) {
            double ram = AirPath.ram(0.5, 1.127, row[0] / 3.6);
            double flow = AirPath.flow(ram, 300, 0, -200, 200, 0, 180);
            String what = "the same with half the ram at " + Math.round(row[0]) + " km/h";
            out.add(Check.near(what, flow, row[1], 5e-5, "m3/s", "closed form by hand"));
        }
    }
}
