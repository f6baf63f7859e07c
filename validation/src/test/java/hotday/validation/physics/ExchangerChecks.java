package hotday.validation.physics;

import hotday.core.solve.Bracket;
import hotday.physics.component.Core;
import hotday.physics.transfer.Arrangement;
import hotday.physics.transfer.Effectiveness;
import hotday.validation.Check;
import hotday.validation.Topic;
import java.util.ArrayList;
import java.util.List;

/** Solved examples of heat-transfer books. Answers read from charts get the width of a chart reading. */
public final class ExchangerChecks implements Topic {
    /** Answers computed from the same formula, rounded to four digits in print. */
    private static final double PRINTED = 1e-3;

    private static final String CENGEL = "Cengel, Heat Transfer, heat exchangers, radiator example; from memory";
    private static final String INCROPERA = "Incropera and DeWitt, ch. 11, NTU example; from memory";
    private static final String HOLMAN = "Holman, Heat Transfer, example 10.";
    private static final String AGAIN = "the same example, recomputed with the approximate relation";
    private static final String SOM = "Som, Introduction to Heat Transfer, ch. 10 example 7";
    private static final String NELLIS = "worked example to the relations of Nellis and Klein";

    @Override
    public String title() {
        return "Heat exchangers: solved examples";
    }

    @Override
    public List<Check> checks() {
        List<Check> out = new ArrayList<>();
        radiators(out);
        gasAndWater(out);
        airHeater(out);
        oilCoolers(out);
        condenser(out);
        relations(out);
        return out;
    }

    private static double ntu(Arrangement a, double effectiveness, double cr) {
        return a.ntu(effectiveness, cr).orElse(Double.NaN);
    }

    private static void radiators(List<Check> out) {
        double water = 0.6 * 4195.0;
        double air = water * 25.0 / 20.0;
        double area = 40 * Math.PI * 0.005 * 0.65;
        double u = ntu(Arrangement.CROSS_BOTH_UNMIXED, 25.0 / 70.0, water / air) * water / area;
        out.add(Check.relative("car radiator: U from four temperatures", u, 3347, 0.01, "W/(m2 K)", CENGEL));
        double approximate = ntu(Arrangement.CROSS_BOTH_UNMIXED_APPROXIMATE, 25.0 / 70.0, water / air) * water / area;
        out.add(Check.relative("car radiator: U, usual approximation", approximate, 3480, PRINTED, "W/(m2 K)", AGAIN));

        double ua = ntu(Arrangement.CROSS_BOTH_UNMIXED, 0.4, 0.5) * 10e3;
        Core core = new Core(2 * ua, 1, 0, 2 * ua, 1, 0);
        Core.Outlet o = core.outlet(
                Arrangement.CROSS_BOTH_UNMIXED, new Core.Inlet(10, 1000, 303.15), new Core.Inlet(5, 4000, 353.15));
        String source = "Cengel, Heat Transfer, radiator problem with effectiveness 0.4; from memory";
        out.add(Check.relative("radiator: heat", o.heat() / 1e3, 200, 1e-6, "kW", source));
        out.add(Check.near("radiator: air out", o.air() - 273.15, 50, 1e-4, "degC", source));
        out.add(Check.near("radiator: coolant out", o.coolant() - 273.15, 70, 1e-4, "degC", source));
    }

    private static void gasAndWater(List<Check> out) {
        double gas = 4197.0 * 90.0 / 200.0;
        double area = ntu(Arrangement.CROSS_BOTH_UNMIXED, 200.0 / 265.0, gas / 4197.0) * gas / 100.0;
        out.add(Check.relative("finned exchanger: area for a duty (chart)", area, 39.7, 0.015, "m2", INCROPERA));
        double rough = ntu(Arrangement.CROSS_BOTH_UNMIXED_APPROXIMATE, 200.0 / 265.0, gas / 4197.0) * gas / 100.0;
        out.add(Check.relative("finned exchanger: area, usual approximation", rough, 38.22, PRINTED, "m2", AGAIN));
        double heat = Effectiveness.crossBothUnmixed(4000.0 / 1500.0, 1500.0 / 4197.0) * 1500.0 * 215.0;
        out.add(Check.relative("the same off design: heat (chart)", heat / 1e3, 265, 0.03, "kW", INCROPERA));
        out.add(Check.near("the same: gas out (chart)", 250 - heat / 1500.0, 73.3, 5.3, "degC", INCROPERA));
        out.add(Check.near("the same: water out (chart)", 35 + heat / 4197.0, 98.1, 1.9, "degC", INCROPERA));
        double eps = Effectiveness.crossBothUnmixed(220.0 * 250.0 / 10100.0, 10100.0 / 29260.0);
        out.add(Check.near("air and water, both unmixed: effectiveness", eps, 0.9528, 0.011, "-", SOM));
        double q = eps * 10100.0 * 105.0;
        out.add(Check.relative("air and water, both unmixed: heat", q / 1e6, 1.0, 0.02, "MW", SOM));
        out.add(Check.near("air and water: air out (printed rounded)", 125 - q / 10100.0, 26, 1.5, "degC", SOM));
    }

    /** Which side is the smaller is not known beforehand: the water flow is looked for. */
    private static void airHeater(List<Check> out) {
        double air = 101325.0 / (287.0 * 288.7) * 2.36 * 1006.0;
        double heat = air * (29.44 - 15.55);
        double water = Bracket.root(
                        c -> Effectiveness.crossBothUnmixed(227.0 * 9.29 / c, c / air) * c * (82.22 - 15.55) - heat,
                        300,
                        air,
                        1e-9,
                        100)
                .value();
        out.add(Check.relative("hot-water air heater: heat", heat / 1e3, 40.33, PRINTED, "kW", HOLMAN + "11"));
        out.add(Check.relative("hot-water air heater: water rate (chart)", water, 660, 0.02, "W/K", HOLMAN + "11"));
        out.add(Check.near("hot-water air heater: water out", 82.22 - heat / water, 21.1, 1.2, "degC", HOLMAN + "11"));
    }

    private static void oilCoolers(List<Check> out) {
        double oil = 68.0 / 60.0 * 4180.0 * 40.0 / 35.0;
        double water = 40.0 / 60.0 * 4180.0;
        double eps = Effectiveness.counterFlow(320.0 * 15.8146 / water, water / oil);
        out.add(Check.relative("counter-flow off design: effectiveness", eps, 0.744, PRINTED, "-", HOLMAN + "10"));
        out.add(Check.relative(
                "counter-flow off design: heat", eps * water * 75 / 1e3, 155.5, PRINTED, "kW", HOLMAN + "10"));
        double warm = 35 + eps * 75;
        out.add(Check.near("counter-flow off design: water out", warm, 90.8, 0.05, "degC", HOLMAN + "10"));
        double shell = ntu(Arrangement.SHELL_TUBES, 0.75, 2018.0 / 6300.0);
        out.add(Check.relative("shell and tubes: NTU", shell, 1.9907, PRINTED, "-", HOLMAN + "13"));
        out.add(Check.relative("shell and tubes: area", shell * 2018.0 / 200.0, 20.09, PRINTED, "m2", HOLMAN + "13"));
        double air = 0.21 * 1007.0;
        double cooler = 0.026 * 2047.0;
        double e = Effectiveness.crossBothUnmixed(53.0 / cooler, cooler / air);
        String problem = "published textbook problem; its answer recomputed with the approximate relation";
        out.add(Check.near("oil cooler in air: oil out", 75 - e * 45, 48.65, 0.2, "degC", problem));
        double usual = Effectiveness.crossBothUnmixedApproximate(53.0 / cooler, cooler / air);
        out.add(Check.near("oil cooler in air, usual approximation", 75 - usual * 45, 48.65, 0.005, "degC", problem));
        double length = ntu(Arrangement.COUNTER_FLOW, 40.0 / 70.0, 213.1 / 835.6) * 213.1 / (38.1 * Math.PI * 0.025);
        String tube = "Incropera and DeWitt, ch. 11, first example; from memory";
        out.add(Check.relative("counter-flow oil and water: tube length", length, 65.9, 0.005, "m", tube));
    }

    private static void condenser(List<Check> out) {
        String source = HOLMAN + "14";
        double ntu = ntu(Arrangement.COUNTER_FLOW, 0.6, 0);
        out.add(Check.relative("condenser: area", ntu * 10e3 / 1e3, 9.163, PRINTED, "m2", source));
        double half = Effectiveness.isothermal(2 * ntu);
        out.add(Check.relative("condenser, half the flow: effectiveness", half, 0.84, 1e-6, "-", source));
        out.add(Check.relative("condenser, half the flow: heat", half * 5 * 30, 126, 1e-6, "kW", source));
    }

    private static void relations(List<Check> out) {
        double unmixed = Effectiveness.crossBothUnmixedApproximate(2.5, 0.6);
        double mixed = Effectiveness.crossBothMixed(2.5, 0.6);
        out.add(Check.near("both unmixed, usual approximation", unmixed, 0.7632, 5e-5, "-", NELLIS));
        out.add(Check.near("both mixed", mixed, 0.6841, 5e-5, "-", NELLIS));
        double back = ntu(Arrangement.CROSS_BOTH_UNMIXED_APPROXIMATE, 0.61, 0.6);
        out.add(Check.near("both unmixed, NTU for 0.61", back, 1.341, 5e-4, "-", NELLIS));
        out.add(Check.near(
                "both mixed, NTU for 0.61", ntu(Arrangement.CROSS_BOTH_MIXED, 0.61, 0.6), 1.478, 5e-4, "-", NELLIS));
        double exact = Effectiveness.crossBothUnmixed(2.5, 0.6);
        out.add(Check.near("both unmixed, exact against its approximation", exact, 0.7632, 0.011, "-", NELLIS));
    }
}
