package hotday.vehicle.plant;

import hotday.physics.component.CoolerFeed;
import hotday.physics.component.GearboxLosses;
import hotday.physics.exchanger.Decay;
import hotday.physics.exchanger.LiquidCooler;
import hotday.physics.fluid.Oil;
import hotday.physics.fluid.ViscosityFactor;
import hotday.physics.transfer.Arrangement;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.VehicleSpec.FluidCooler;
import java.util.List;

/** Losses of the gearbox, its fluid and its coolers. The sump is one node. Page: docs/physics/gearbox.md. */
final class GearboxSide {
    private static final double FLUID_HEAT = 2150.0; // J/(kg K), 100 degC
    private static final double FLOW_POWER = 0.3; // of the fluid side of a cooler; worked example of the reference data
    private static final double COOLANT_POWER = 0.6;
    private static final double OIL_SHARE = 0.8; // of the resistance of an in-tank cooler; common practice, no source
    private static final double LEAST = 1e-9; // kg/s

    private final GearboxLosses losses;
    private final CoolerFeed feed;
    private final double fullFlow;
    private final double capacity;
    private final double frontConductance;
    private final LiquidCooler tankCooler; // null without
    private final double coolantHeat;
    private final double caseLoss;
    private final double caseLossPerSpeed;
    private final boolean tank;
    private final boolean tankFirst;

    GearboxSide(VehicleSpec spec) {
        VehicleSpec.GearboxFluid g = spec.gearboxFluid();
        Oil oil = new Oil(850.0, 1950.0, 3.5, 0.135, g.viscosityAt40(), g.viscosityAt100());
        losses = new GearboxLosses(
                g.meshLoss(),
                g.spinLoss(),
                g.spinSpeed(),
                new ViscosityFactor(oil, GearboxLosses.STATED_AT, GearboxLosses.VISCOSITY_POWER));
        feed = new CoolerFeed(g.bypassOpens(), g.bypassFull(), g.flow(), g.flowSpeed());
        fullFlow = g.flow();
        capacity = g.capacity();
        frontConductance = g.frontConductance();
        coolantHeat = NominalCoefficients.coolantHeatCapacity(spec);
        caseLoss = g.caseLoss();
        caseLossPerSpeed = g.caseLossPerSpeed();
        List<FluidCooler> coolers = g.coolers();
        tank = coolers.contains(FluidCooler.TANK);
        tankFirst = tank && coolers.get(0) == FluidCooler.TANK;
        tankCooler = !tank
                ? null
                : new LiquidCooler(
                        Arrangement.COUNTER_FLOW,
                        g.tankConductance(),
                        g.flow(),
                        spec.radiator().coolantFlow(),
                        OIL_SHARE,
                        FLOW_POWER,
                        COOLANT_POWER);
    }

    double capacity() {
        return capacity;
    }

    /** Heat made, and a tank cooler that comes first; the coupling of the radiator's last cell must stand. */
    void losses(double[] k, double[] x, double[] u, Work work) {
        double sump = x[State.SUMP.ordinal()];
        double[] w = work.w;
        w[Output.GEARBOX_LOSS.ordinal()] = k[Coefficient.GEARBOX_HEAT_LEVEL.ordinal()]
                * (u[Input.CONVERTER_HEAT.ordinal()]
                        + losses.mesh(u[Input.GEAR_POWER.ordinal()])
                        + losses.spin(u[Input.GEARBOX_SPEED.ordinal()], sump));
        w[Output.GEARBOX_AIR_HEAT.ordinal()] = 0.0;
        w[Output.GEARBOX_TANK_HEAT.ordinal()] = 0.0;
        work.fluidFlow = feed.massFlow(sump, u[Input.ENGINE_SPEED.ordinal()]);
        work.fluid = sump;
        if (tankFirst) {
            tank(x, work);
        }
    }

    private double conductance(double atFullFlow, double flow) {
        return fullFlow > 0.0 ? atFullFlow * Math.pow(Math.max(0.0, flow / fullFlow), FLOW_POWER) : 0.0;
    }

    /** Fluid to the air of the core in the stack, W. */
    double frontHeat(int core, FrontAir front, Work work) {
        double flow = work.fluidFlow;
        if (flow <= LEAST) {
            return 0.0;
        }
        double k = front.conductance(core, conductance(frontConductance, flow), 1.0, work);
        double rate = flow * FLUID_HEAT;
        double heat = rate * Decay.gone(k / rate) * (work.fluid - work.mean);
        front.give(heat, work);
        work.fluid -= heat / rate;
        work.w[Output.GEARBOX_AIR_HEAT.ordinal()] = heat;
        return heat;
    }

    /** A tank cooler that comes last. */
    void afterFront(double[] x, Work work) {
        if (tank && !tankFirst) {
            tank(x, work);
        }
    }

    /** Fluid to the coolant of the radiator's outlet, in counterflow. */
    private void tank(double[] x, Work work) {
        double flow = work.fluidFlow;
        double coolant = work.w[Output.RADIATOR_FLOW.ordinal()];
        if (flow <= LEAST || coolant <= LEAST) {
            return;
        }
        double rate = flow * FLUID_HEAT;
        double heat = tankCooler.heatPerKelvin(flow, FLUID_HEAT, coolant, coolantHeat)
                * (work.fluid - x[State.RADIATOR_OUTLET.ordinal()]);
        work.fluid -= heat / rate;
        work.w[Output.GEARBOX_TANK_HEAT.ordinal()] = heat;
        work.coupling[EngineLoop.TANK_HEAT] = heat;
    }

    void rates(double[] x, double[] u, Work work, double[] dx) {
        double[] w = work.w;
        double sump = x[State.SUMP.ordinal()];
        double loss = caseLoss + caseLossPerSpeed * u[Input.SPEED.ordinal()];
        double around = 0.5 * (u[Input.AMBIENT.ordinal()] + x[State.BAY.ordinal()]);
        double lost = loss * (sump - around);
        w[Output.GEARBOX_CASE_HEAT.ordinal()] = lost;
        dx[State.SUMP.ordinal()] = (w[Output.GEARBOX_LOSS.ordinal()]
                        - w[Output.GEARBOX_AIR_HEAT.ordinal()]
                        - w[Output.GEARBOX_TANK_HEAT.ordinal()]
                        - lost)
                / capacity;
    }
}
