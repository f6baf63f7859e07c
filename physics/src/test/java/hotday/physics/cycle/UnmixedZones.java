package hotday.physics.cycle;

import hotday.core.solve.Bracket;
import hotday.physics.WorkedProblem;
import hotday.physics.refrigerant.FluidState;
import hotday.physics.transfer.Effectiveness;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * The steady cycle as worked problem ac-cycle-steady defines it: three zones side by side, each cross flow with both streams unmixed, subcooling
 * and evaporator load given. Both pressures by one bracket inside the other.
 */
final class UnmixedZones {
    private static final double RELATIVE = 1e-11;

    private final WorkedProblem problem;
    private final Fluid fluid;
    private final Compressor compressor;
    private final double criticalPressure;
    private final double speed;
    private final double load;
    private final double air;
    private final double airRate;
    private final double airConductance;

    // the last state looked at
    private FluidState suction;
    private FluidState vapour;
    private FluidState liquid;
    private double low;
    private double flow;
    private double h2;
    private double h3;
    private double desuperheating;
    private double condensing;
    private double subcooling;

    UnmixedZones(WorkedProblem problem, Fluid fluid, double criticalPressure, double load, double air, double airFlow) {
        this.problem = problem;
        this.fluid = fluid;
        this.criticalPressure = criticalPressure;
        this.load = load;
        this.air = air;
        compressor = Compressor.fixed(problem.in("V_d"), 1.0);
        speed = 2.0 * Math.PI * problem.in("N");
        airRate = airFlow * problem.in("cp_a");
        airConductance = problem.in("G_a0") * Math.pow(airFlow / problem.in("m_0"), problem.in("n"));
    }

    /** All quantities of the problem by its names. */
    Map<String, Double> solve() {
        double saturationAtAir = 1.0;
        while (fluid.saturationTemperature(saturationAtAir * 1e5) < air + problem.in("SC") + 0.05) {
            saturationAtAir += 0.02;
        }
        double high = root(this::overfull, saturationAtAir * 1e5, 0.9 * criticalPressure);
        overfull(high);
        double work = flow * (h2 - suction.enthalpy());
        Map<String, Double> out = new LinkedHashMap<>();
        out.put("p_low", low);
        out.put("p_high", high);
        out.put("T_evap", fluid.saturationTemperature(low));
        out.put("T_cond", vapour.temperature());
        out.put("m_dot", flow);
        out.put("W", work);
        out.put("torque", work / speed);
        out.put("COP", load / work);
        out.put("Q_cond", flow * (h2 - h3));
        out.put("T_discharge", fluid.temperature(high, h2));
        out.put("h1", suction.enthalpy());
        out.put("h2", h2);
        out.put("h3", h3);
        out.put("x_ds", desuperheating);
        out.put("x_tp", condensing);
        out.put("x_sc", subcooling);
        out.put("T_air_out", air + flow * (h2 - h3) / airRate);
        return out;
    }

    private static double root(DoubleUnaryOperator f, double low, double high) {
        Bracket.Root root = Bracket.root(f, low, high, RELATIVE * low, 200);
        if (!root.found()) {
            throw new AssertionError(root + " between " + low + " and " + high);
        }
        return root.value();
    }

    /** Face the three zones need beyond the one there is. */
    private double overfull(double high) {
        vapour = fluid.saturated(high, 1.0);
        liquid = fluid.saturated(high, 0.0);
        double outlet = vapour.temperature() - problem.in("SC");
        h3 = fluid.single(high, outlet).enthalpy();
        low = root(p -> spare(p, high), 0.5e5, Math.min(0.9 * high, 12e5));
        spare(low, high);
        desuperheating = share(
                flow * (h2 - vapour.enthalpy()), fluid.temperature(high, h2), vapour.temperature(), problem.in("G_ds"));
        subcooling = share(flow * (liquid.enthalpy() - h3), vapour.temperature(), outlet, problem.in("G_sc"));
        double conductance = 1.0 / (1.0 / airConductance + 1.0 / problem.in("G_tp"));
        condensing = flow
                * (vapour.enthalpy() - liquid.enthalpy())
                / (airRate * Effectiveness.isothermal(conductance / airRate) * (vapour.temperature() - air));
        return desuperheating + condensing + subcooling - 1.0;
    }

    /** Cooling beyond the load, W. */
    private double spare(double pressure, double high) {
        suction = fluid.single(pressure, fluid.saturationTemperature(pressure) + problem.in("SH"));
        double ratio = high / pressure;
        double ideal = fluid.enthalpyAtEntropy(high, suction.entropy(), suction.enthalpy() + 30e3);
        h2 = suction.enthalpy()
                + (ideal - suction.enthalpy()) / compressor.isentropic().at(ratio, speed);
        flow = suction.density() * compressor.drawn(ratio, speed) * speed;
        return flow * (suction.enthalpy() - h3) - load;
    }

    private double share(double heat, double inlet, double outlet, double refrigerantConductance) {
        double rate = heat / (inlet - outlet);
        double conductance = 1.0 / (1.0 / airConductance + 1.0 / refrigerantConductance);
        return root(x -> given(x, rate, x * conductance) * (inlet - air) - heat, 1e-6, 20.0);
    }

    /** Effectiveness times the smaller capacity rate, W/K. */
    private double given(double x, double rate, double conductance) {
        double small = Math.min(rate, x * airRate);
        double large = Math.max(rate, x * airRate);
        return small * Effectiveness.crossBothUnmixedApproximate(conductance / small, small / large);
    }
}
