package hotday.validation.physics;

import hotday.physics.component.Converter;
import hotday.physics.component.CoolerFeed;
import hotday.physics.fluid.FluidLife;
import hotday.physics.fluid.Oil;
import hotday.validation.Check;
import hotday.validation.Topic;
import java.util.ArrayList;
import java.util.List;

/** Torque converter, gearbox fluid and its life. */
public final class GearboxChecks implements Topic {
    private static final double RPM = Math.PI / 30.0;
    private static final double POUND_FOOT = 1.3558179483314004;
    private static final String TABLE = "public simulation data set, rows to s = 0.3; recomputed from the definitions";
    private static final String VISCOSITY = "ASTM D341 through 30.0 and 6.0 mm2/s; recomputed";
    private static final String LIFE = "table repeated on trade pages, rounded by hand, origin undocumented";

    @Override
    public String title() {
        return "Automatic gearbox";
    }

    @Override
    public List<Check> checks() {
        List<Check> out = new ArrayList<>();
        converter(out);
        fluid(out);
        return out;
    }

    private static void converter(List<Check> out) {
        Converter c = Converter.ofRpmPoundFoot(
                new double[] {0.0, 0.1, 0.2, 0.3, 0.85},
                new double[] {137.46, 137.06, 135.86, 135.66, 175.0},
                new double[] {2.23, 2.07, 1.97, 1.84, 1.0});
        double engine = 2000 * RPM;
        double torque = c.inputTorque(engine, 0.2) / POUND_FOOT;
        out.add(Check.relative("converter, 2000 rpm at s = 0.2: torque", torque, 216.71, 1e-4, "lb ft", TABLE));
        out.add(Check.relative("the same: heat", c.heat(engine, 0.2 * engine) / 1e3, 37.29, 2e-4, "kW", TABLE));
        out.add(Check.relative("stall at 1500 rpm: heat", c.heat(1500 * RPM, 0) / 1e3, 25.36, 2e-4, "kW", TABLE));
        out.add(Check.relative("stall at 2400 rpm: heat", c.heat(2400 * RPM, 0) / 1e3, 103.88, 2e-4, "kW", TABLE));
    }

    private static void fluid(List<Check> out) {
        double[][] viscosity = {{0, 224.1}, {20, 71.01}, {60, 15.455}, {80, 9.156}, {120, 4.236}};
        for (double[] row : viscosity) {
            double ours = 1e6 * Oil.GEARBOX.kinematicViscosity(row[0] + 273.15);
            out.add(Check.relative(
                    "gearbox fluid at " + (int) row[0] + " degC: viscosity", ours, row[1], 5e-4, "mm2/s", VISCOSITY));
        }
        double drop = 400.0 - CoolerFeed.after(400.0, 8000.0, 0.12, 2150.0);
        out.add(Check.near("8 kW from 0.12 kg/s: drop through the cooler", drop, 31.0, 0.05, "K", "recomputed"));
        double[][] life = {{195, 50000}, {212, 25000}, {235, 12000}, {255, 6250}, {275, 3000}, {295, 1500}, {315, 750}};
        for (double[] row : life) {
            double ours = FluidLife.miles((row[0] + 459.67) / 1.8);
            out.add(Check.relative("fluid at " + (int) row[0] + " degF: life", ours, row[1], 0.12, "miles", LIFE));
        }
    }
}
