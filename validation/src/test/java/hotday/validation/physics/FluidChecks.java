package hotday.validation.physics;

import hotday.physics.component.AirPath;
import hotday.physics.component.FanCurve;
import hotday.physics.fluid.Air;
import hotday.physics.fluid.Boiling;
import hotday.physics.fluid.Coolant;
import hotday.physics.fluid.MoistAir;
import hotday.physics.fluid.Oil;
import hotday.validation.Check;
import hotday.validation.Topic;
import java.util.ArrayList;
import java.util.List;

/** Dry and moist air, coolant, boiling, gearbox fluid and the fan laws. */
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
        moistAir(out);
        boiling(out);
        coolant(out);
        gearboxFluid(out);
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
        double[][] dry = {{20, 1.821, 25.87, 1006.1}, {40, 1.917, 27.35, 1006.9}, {100, 2.190, 31.62, 1011.2}};
        for (double[] row : dry) {
            String at = "air at " + Math.round(row[0]) + " degC: ";
            double t = row[0] + 273.15;
            out.add(Check.relative(at + "viscosity", 1e5 * Air.viscosity(t), row[1], 0.01, "1e-5 Pa s", air));
            out.add(Check.relative(at + "conductivity", 1e3 * Air.conductivity(t), row[2], 0.01, "mW/(m K)", air));
            out.add(Check.relative(at + "specific heat", Air.specificHeat(t), row[3], 1e-3, "J/(kg K)", air));
        }
    }

    private static void moistAir(List<Check> out) {
        String handbook = "ASHRAE Handbook, worked chart example; from memory";
        double w = 0.0065;
        String at = ", 40 degC and 6.5 g/kg at sea level";
        double wet = MoistAir.wetBulb(313.15, w, 101325) - 273.15;
        out.add(Check.near("moist air: wet bulb" + at, wet, 20, 0.1, "degC", handbook));
        double enthalpy = MoistAir.enthalpy(313.15, w) / 1e3;
        out.add(Check.near("moist air: enthalpy" + at, enthalpy, 56.7, 0.4, "kJ/kg", handbook));
        double volume = MoistAir.specificVolume(313.15, w, 101325);
        out.add(Check.near("moist air: specific volume" + at, volume, 0.896, 1e-3, "m3/kg", handbook));
        double relative = 100 * MoistAir.relativeHumidity(313.15, w, 101325);
        out.add(Check.near("moist air: relative humidity" + at, relative, 14, 0.5, "%", handbook));
        double grains = 7000 * MoistAir.humidityRatio(308.15, 0.40, 101325);
        String cycle = "A/C test cycle, 40 CFR 86.160; from memory";
        out.add(Check.near("moist air: water at 95 degF and 40 %", grains, 100, 1.5, "grains/lb", cycle));
    }

    private static void boiling(List<Check> out) {
        out.add(Check.near(
                "half and half boils, open", Boiling.temperature(101325, 0.5) - 273.15, 108, 1, "degC", OPEN));
        double cap = Boiling.temperature(101325 + 15 * PSI, 0.5);
        out.add(Check.near("half and half boils under a 15 psi cap", cap - 273.15, 129.4, 1, "degC", CAP));
        double water = Boiling.temperature(101325 + 15 * PSI, 0);
        String thinAir = "table by cap and altitude, recomputed";
        double high = Boiling.temperature(Air.isaPressure(10000 * 0.3048) + 15 * PSI, 0.5);
        out.add(Check.near("the same at 10000 ft", high - 273.15, 124.2, 0.1, "degC", thinAir));
        out.add(Check.near("water boils under a 15 psi cap", water - 273.15, 120.9, 0.2, "degC", STEAM));
    }

    private static void coolant(List<Check> out) {
        String published = "Melinder 2010, recomputed";
        double[][] rows = {{20, 34.1}, {60, 12.6}, {100, 6.14}};
        for (double[] row : rows) {
            double t = row[0] + 273.15;
            double prandtl = Coolant.viscosity(t, 0.5) * Coolant.specificHeat(t, 0.5) / Coolant.conductivity(t, 0.5);
            String what = "half and half at " + Math.round(row[0]) + " degC: Prandtl number";
            out.add(Check.relative(what, prandtl, row[1], 3e-3, "-", published));
        }
        out.add(Check.relative(
                "half and half at 20 degC: density", Coolant.density(293.15, 0.5), 1067.1, 0.015, "kg/m3", MANUAL));
        double share = Coolant.specificHeat(353.15, 0.5) / Coolant.specificHeat(353.15, 0);
        String manual = "service manual, minivan 2000: 0.82 of water";
        out.add(Check.relative("half and half: specific heat over that of water", share, 0.82, 0.03, "-", manual));
        double vapour = Boiling.glycolPressure(373.15);
        out.add(Check.relative("neat glycol at 100 degC: vapour pressure", vapour, 2133, 0.01, "Pa", "engine manual"));
    }

    private static void gearboxFluid(List<Check> out) {
        String line = "ASTM D341 line, recomputed";
        double[][] rows = {{20, 71.01}, {80, 9.156}, {120, 4.236}};
        for (double[] row : rows) {
            String what = "gearbox fluid 30/6.0 mm2/s at " + Math.round(row[0]) + " degC";
            double ours = 1e6 * Oil.GEARBOX.kinematicViscosity(row[0] + 273.15);
            out.add(Check.relative(what, ours, row[1], 2e-4, "mm2/s", line));
        }
        double conventional = 1e6 * Oil.GEARBOX_CONVENTIONAL.kinematicViscosity(353.15);
        out.add(Check.relative("gearbox fluid 35/7.4 mm2/s at 80 degC", conventional, 11.189, 2e-4, "mm2/s", line));
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
