package hotday.validation.physics;

import hotday.physics.transfer.EngineHeat;
import hotday.physics.transfer.Fin;
import hotday.physics.transfer.TubeFlow;
import hotday.validation.Check;
import hotday.validation.Topic;
import java.util.ArrayList;
import java.util.List;

/** Tubes, fins and the heat of engines. */
public final class TransferChecks implements Topic {
    private static final double RPM = Math.PI / 30.0;
    private static final String TUBE = "Holman, Heat Transfer, example 6.1";
    private static final String STRAIGHT = "Holman, Heat Transfer, example 2.8";
    private static final String ANNULAR = "Holman, Heat Transfer, example 2.9";
    private static final String FRICTION = "Heywood 1988, eq. 13.6; from memory";
    private static final String BALANCE = "Heywood 1988, table 12.1, coolant; from memory";

    @Override
    public String title() {
        return "Tubes, fins and engine heat";
    }

    @Override
    public List<Check> checks() {
        List<Check> out = new ArrayList<>();
        tube(out);
        fins(out);
        friction(out);
        out.add(fullLoadPetrol());
        out.add(fullLoadDiesel());
        return out;
    }

    private static void tube(List<Check> out) {
        double density = 2 * 101325.0 / (287.0 * 473.15);
        double re = density * 10 * 0.0254 / 2.57e-5;
        double h = TubeFlow.dittusBoelter(re, 0.681, 0.4) * 0.0386 / 0.0254;
        out.add(Check.relative("air in a tube: Reynolds number", re, 14749, 5e-4, "-", TUBE));
        out.add(Check.relative("air in a tube: coefficient (Dittus-Boelter)", h, 64.8, 2e-3, "W/(m2 K)", TUBE));
        out.add(Check.relative("air in a tube: heat per length", h * Math.PI * 0.0254 * 20, 103.5, 2e-3, "W/m", TUBE));
        double massFlow = density * 10 * Math.PI / 4 * 0.0254 * 0.0254;
        double rise = h * Math.PI * 0.0254 * 20 * 3 / (massFlow * 1025);
        out.add(Check.relative("air in a tube: mass flow", 1e3 * massFlow, 7.5618, 5e-4, "g/s", TUBE));
        out.add(Check.near("air in a tube: rise over 3 m", rise, 40.0, 0.1, "K", TUBE));
        double gnielinski = TubeFlow.gnielinski(re, 0.681) * 0.0386 / 0.0254;
        String spread = "Incropera, ch. 8: Dittus-Boelter may be 25 % off; from memory";
        out.add(Check.relative("the same by Gnielinski", gnielinski, 64.8, 0.25, "W/(m2 K)", spread));
        double plates = TubeFlow.laminarNusselt(0);
        String laminar = "Incropera, table 8.1; Shah and London 1978";
        out.add(Check.near("laminar, parallel plates: Nusselt number", plates, 7.54, 0.005, "-", laminar));
        out.add(Check.relative(
                "laminar, square: Nusselt number", TubeFlow.laminarNusselt(1), 2.98, 3e-3, "-", laminar));
        out.add(Check.relative(
                "laminar, 1:4: Nusselt number", TubeFlow.laminarNusselt(0.25), 4.44, 3e-3, "-", laminar));
        out.add(Check.relative("laminar, 1:4: friction x Re", TubeFlow.laminarFriction(0.25), 73, 3e-3, "-", laminar));
    }

    private static void fins(List<Check> out) {
        double length = 0.075 + 0.0015;
        double straight = Fin.straight(10, 200, 0.003, length) * 10 * 2 * length * 250;
        out.add(Check.inside("straight fin: heat per width", straight, 359, 360, "W/m", STRAIGHT));
        double inner = 0.0125;
        double outer = inner + 0.0155;
        double efficiency = Fin.annular(130, 200, 0.001, inner, outer);
        double most = 2 * Math.PI * (outer * outer - inner * inner) * 130 * 145;
        out.add(Check.relative("annular fin: most it could give", most, 74.35, 1e-3, "W", ANNULAR));
        out.add(Check.relative("annular fin: efficiency (chart)", efficiency, 0.82, 0.06, "-", ANNULAR));
        out.add(Check.relative("annular fin: heat (chart)", efficiency * most, 60.97, 0.06, "W", ANNULAR));
    }

    private static void friction(List<Check> out) {
        double[][] rows = {{1000, 1.17}, {2000, 1.47}, {3000, 1.87}, {5000, 2.97}};
        for (double[] row : rows) {
            double ours = EngineHeat.frictionMeanPressure(
                            EngineHeat.FRICTION_CONSTANT,
                            EngineHeat.FRICTION_LINEAR,
                            EngineHeat.FRICTION_SQUARE,
                            row[0] * RPM)
                    / 1e5;
            String what = "friction mean effective pressure at " + Math.round(row[0]) + " rpm";
            out.add(Check.near(what, ours, row[1], 0.005, "bar", FRICTION));
        }
    }

    /** Two-litre naturally aspirated petrol engine at 5000 rpm, stoichiometric; half of the friction on top of the gas side. */
    private static Check fullLoadPetrol() {
        double air = 0.9 * 1.17 * 2e-3 * 5000.0 / 120.0;
        double share = share(air, 1.0, EngineHeat.PETROL_GAS_TEMPERATURE, 14.7, 42.5e6, 0.086, 4, 2e-3, 5000);
        return Check.inside("petrol 2.0 l, full load: coolant heat of fuel", 100 * share, 17, 26, "%", BALANCE);
    }

    /** Three-litre turbocharged diesel at 3500 rpm, charge air 2.2 kg/m3, equivalence ratio 0.65. */
    private static Check fullLoadDiesel() {
        double air = 0.9 * 2.2 * 3e-3 * 3500.0 / 120.0;
        double share = share(air, 0.65, EngineHeat.DIESEL_GAS_TEMPERATURE, 14.5, 42.8e6, 0.084, 6, 3e-3, 3500);
        return Check.inside("diesel 3.0 l, full load: coolant heat of fuel", 100 * share, 16, 35, "%", BALANCE);
    }

    private static double share(
            double air,
            double equivalence,
            double gasTemperature,
            double stoichiometric,
            double heatingValue,
            double bore,
            int cylinders,
            double displacement,
            double rpm) {
        double fuel = air * equivalence / stoichiometric;
        double gas = EngineHeat.conductance(air + fuel, bore, cylinders, 0.06, 4.3e-5)
                * (EngineHeat.gasTemperature(equivalence, gasTemperature) - 370.0);
        double friction = EngineHeat.power(
                EngineHeat.frictionMeanPressure(
                        EngineHeat.FRICTION_CONSTANT,
                        EngineHeat.FRICTION_LINEAR,
                        EngineHeat.FRICTION_SQUARE,
                        rpm * RPM),
                displacement,
                rpm * RPM);
        return (gas + 0.5 * friction) / (fuel * heatingValue);
    }
}
