package hotday.vehicle.plant;

import hotday.physics.fluid.Coolant;
import hotday.vehicle.spec.VehicleSpec;

/**
 * Engine metal, jacket, oil, three radiator cells and heater core. {@link #couple} works out everything that links them at
 * one instant; {@link #settle} closes one implicit step with it, {@link #rates} gives time derivatives. Both book their heats
 * from the same numbers. Equations and sources: docs/physics/plant.md.
 */
final class EngineLoop {
    static final int CELLS = 3;
    /** Coupling left when the engine and its pump stand. */
    private static final double STANDING_SHARE = 0.15;

    // what couples the nodes at one instant
    static final int METAL_COOLANT = 0; // W/K
    static final int METAL_OIL = 1;
    static final int METAL_LOSS = 2;
    static final int OIL_LOSS = 3;
    static final int GAS = 4;
    static final int GAS_TEMPERATURE = 5; // K
    static final int FRICTION = 6; // W
    static final int TO_OIL = 7;
    static final int RADIATOR_FLOW = 8; // capacity rate, W/K
    static final int HEATER_FLOW = 9;
    static final int HEATER = 10; // W/K
    static final int CELL = 11; // one radiator cell to the air that reaches it, W/K
    static final int FACE = 12; // that air, K
    static final int SURROUNDINGS = 13; // air that engine and oil lose heat to, K
    static final int HEATER_AIR = 14; // K
    static final int TANK_HEAT = 15; // gearbox fluid to the radiator's last cell, W
    static final int COUPLINGS = 16;

    private final GasSide gasSide;
    private final double pumpSpeed;
    private final double coolantHeatCapacity;

    EngineLoop(VehicleSpec spec) {
        gasSide = new GasSide(spec);
        pumpSpeed = spec.coolant().pumpSpeed();
        coolantHeatCapacity =
                Coolant.specificHeat(NominalCoefficients.WARM, spec.coolant().glycolVolumeShare());
    }

    double pumpFlow(double[] k, double engineSpeed) {
        return k[Coefficient.PUMP_FLOW.ordinal()] * engineSpeed / pumpSpeed;
    }

    /** @param w where heat and temperature of the charge air go */
    void cool(double[] u, double fuelPower, double airIn, double[] w) {
        double compressed = gasSide.compressed(u, fuelPower);
        w[Output.CHARGE_HEAT.ordinal()] = gasSide.chargeHeat(u, fuelPower, compressed, airIn);
        w[Output.CHARGE_TEMPERATURE.ordinal()] = gasSide.chargeTemperature(compressed, airIn);
    }

    /** Fills opening and coolant flow of the outputs, and all couplings but {@link #CELL} and {@link #FACE}. */
    void couple(double[] k, double[] x, double[] u, double[] w, double[] c, double fuelPower) {
        double engineSpeed = u[Input.ENGINE_SPEED.ordinal()];
        double pump = pumpFlow(k, engineSpeed);
        double opening = opening(k, x[State.WAX_PLAY.ordinal()]);
        double leak = k[Coefficient.THERMOSTAT_LEAK.ordinal()];
        double radiatorFlow = pump * (leak + (1.0 - leak) * opening);
        w[Output.OPENING.ordinal()] = opening;
        w[Output.RADIATOR_FLOW.ordinal()] = radiatorFlow;
        w[Output.RADIATOR_SHARE.ordinal()] = leak + (1.0 - leak) * opening;

        double speed = u[Input.SPEED.ordinal()];
        double coupled = STANDING_SHARE + (1.0 - STANDING_SHARE) * Math.sqrt(engineSpeed / pumpSpeed);
        c[METAL_COOLANT] = k[Coefficient.METAL_COOLANT_CONDUCTANCE.ordinal()] * coupled;
        c[METAL_OIL] = k[Coefficient.METAL_OIL_CONDUCTANCE.ordinal()] * coupled;
        c[METAL_LOSS] = k[Coefficient.METAL_LOSS.ordinal()] + k[Coefficient.METAL_LOSS_PER_SPEED.ordinal()] * speed;
        c[OIL_LOSS] = k[Coefficient.OIL_LOSS.ordinal()] + k[Coefficient.OIL_LOSS_PER_SPEED.ordinal()] * speed;
        c[GAS] = gasSide.conductance(k, u, fuelPower);
        c[GAS_TEMPERATURE] = gasSide.temperature(u, fuelPower);
        c[FRICTION] = gasSide.frictionHeat(k, u, x[State.OIL.ordinal()]);
        c[TO_OIL] = c[FRICTION] * k[Coefficient.FRICTION_TO_OIL.ordinal()];
        c[RADIATOR_FLOW] = radiatorFlow * coolantHeatCapacity;
        c[HEATER_FLOW] = k[Coefficient.HEATER_FLOW_SHARE.ordinal()] * pump * coolantHeatCapacity;
        c[HEATER] = u[Input.HEATER.ordinal()] * k[Coefficient.HEATER_CONDUCTANCE.ordinal()];
        c[HEATER_AIR] = u[Input.AMBIENT.ordinal()];
        c[TANK_HEAT] = 0.0;
    }

    /**
     * Opening 0..1 for a wax temperature behind the play: warming, the play lags by the hysteresis, so opening begins at
     * the sheet's temperature; cooling, the play follows at once, so it shuts lower. Linear over the range with corners rounded
     * over a tenth of it, so that a fit sees no kink.
     */
    static double opening(double[] k, double wax) {
        double shut = k[Coefficient.THERMOSTAT_OPENS.ordinal()] - k[Coefficient.THERMOSTAT_HYSTERESIS.ordinal()];
        double z = (wax - shut) / k[Coefficient.THERMOSTAT_RANGE.ordinal()];
        return roundedRamp(z) - roundedRamp(z - 1.0);
    }

    private static double roundedRamp(double z) {
        double half = 0.1;
        if (z <= -half) {
            return 0.0;
        }
        return z >= half ? z : (z + half) * (z + half) / (4.0 * half);
    }

    /** What the wax feels: engine-out coolant and a part of the mixture going back into the engine, K. */
    static double felt(double[] k, double[] x, double radiatorShare) {
        double jacket = x[State.JACKET.ordinal()];
        double mixed = radiatorShare * (x[State.RADIATOR_OUTLET.ordinal()] - jacket);
        return jacket + k[Coefficient.THERMOSTAT_INLET_SHARE.ordinal()] * mixed;
    }

    /** Moves the play of the valve after its wax. */
    static void play(double[] k, double[] x) {
        int play = State.WAX_PLAY.ordinal();
        double wax = x[State.WAX.ordinal()];
        double width = k[Coefficient.THERMOSTAT_HYSTERESIS.ordinal()];
        x[play] = Math.max(wax - width, Math.min(wax, x[play]));
    }

    /** Time derivatives of the nodes and of the wax, K/s, and the heats of this instant. */
    void rates(double[] k, double[] x, double[] w, double[] c, double[] dx) {
        double metal = x[State.METAL.ordinal()];
        double jacket = x[State.JACKET.ordinal()];
        double oil = x[State.OIL.ordinal()];
        double r1 = x[State.RADIATOR_INLET.ordinal()];
        double r2 = x[State.RADIATOR_MIDDLE.ordinal()];
        double r3 = x[State.RADIATOR_OUTLET.ordinal()];
        double heater = x[State.HEATER.ordinal()];
        double gas = c[GAS] * (c[GAS_TEMPERATURE] - metal);
        double toJacket = c[METAL_COOLANT] * (metal - jacket);
        double toOil = c[METAL_OIL] * (metal - oil);
        double metalLoss = c[METAL_LOSS] * (metal - c[SURROUNDINGS]);
        double oilLoss = c[OIL_LOSS] * (oil - c[SURROUNDINGS]);
        double flow = c[RADIATOR_FLOW];
        double heaterFlow = c[HEATER_FLOW] * (jacket - heater);
        double heaterHeat = c[HEATER] * (heater - c[HEATER_AIR]);
        double a1 = c[CELL] * (r1 - c[FACE]);
        double a2 = c[CELL] * (r2 - c[FACE]);
        double a3 = c[CELL] * (r3 - c[FACE]);
        double cell = k[Coefficient.RADIATOR_CAPACITY.ordinal()] / CELLS;

        dx[State.METAL.ordinal()] = (gas + (c[FRICTION] - c[TO_OIL]) - toJacket - toOil - metalLoss)
                / k[Coefficient.METAL_CAPACITY.ordinal()];
        dx[State.JACKET.ordinal()] =
                (toJacket - flow * (jacket - r3) - heaterFlow) / k[Coefficient.JACKET_CAPACITY.ordinal()];
        dx[State.OIL.ordinal()] = (c[TO_OIL] + toOil - oilLoss) / k[Coefficient.OIL_CAPACITY.ordinal()];
        dx[State.RADIATOR_INLET.ordinal()] = (flow * (jacket - r1) - a1) / cell;
        dx[State.RADIATOR_MIDDLE.ordinal()] = (flow * (r1 - r2) - a2) / cell;
        dx[State.RADIATOR_OUTLET.ordinal()] = (flow * (r2 - r3) - a3 + c[TANK_HEAT]) / cell;
        dx[State.HEATER.ordinal()] = (heaterFlow - heaterHeat) / k[Coefficient.HEATER_CAPACITY.ordinal()];
        dx[State.WAX.ordinal()] = (felt(k, x, w[Output.RADIATOR_SHARE.ordinal()]) - x[State.WAX.ordinal()])
                / Math.max(1.0, k[Coefficient.WAX_LAG.ordinal()]);
        dx[State.WAX_PLAY.ordinal()] = 0.0;

        w[Output.GAS_HEAT.ordinal()] = gas;
        w[Output.FRICTION_HEAT.ordinal()] = c[FRICTION];
        w[Output.RADIATOR_HEAT.ordinal()] = a1 + a2 + a3;
        w[Output.HEATER_HEAT.ordinal()] = heaterHeat;
        w[Output.SURFACE_HEAT.ordinal()] = metalLoss + oilLoss;
        w[Output.STORED.ordinal()] = stored(k, dx);
    }

    /** The fastest rate at which a coolant node follows what flows through it, 1/s: an explicit step must be short beside it. */
    static double fastest(double[] k, double[] c) {
        double cell = (c[RADIATOR_FLOW] + c[CELL]) * CELLS / k[Coefficient.RADIATOR_CAPACITY.ordinal()];
        double jacket =
                (c[RADIATOR_FLOW] + c[METAL_COOLANT] + c[HEATER_FLOW]) / k[Coefficient.JACKET_CAPACITY.ordinal()];
        double heater = (c[HEATER_FLOW] + c[HEATER]) / k[Coefficient.HEATER_CAPACITY.ordinal()];
        return Math.max(cell, Math.max(jacket, heater));
    }

    /** Heat that goes into the nodes for a change of their temperatures, J or W. */
    private static double stored(double[] k, double[] change) {
        return k[Coefficient.METAL_CAPACITY.ordinal()] * change[State.METAL.ordinal()]
                + k[Coefficient.JACKET_CAPACITY.ordinal()] * change[State.JACKET.ordinal()]
                + k[Coefficient.OIL_CAPACITY.ordinal()] * change[State.OIL.ordinal()]
                + k[Coefficient.RADIATOR_CAPACITY.ordinal()]
                        / CELLS
                        * (change[State.RADIATOR_INLET.ordinal()]
                                + change[State.RADIATOR_MIDDLE.ordinal()]
                                + change[State.RADIATOR_OUTLET.ordinal()])
                + k[Coefficient.HEATER_CAPACITY.ordinal()] * change[State.HEATER.ordinal()];
    }

    /**
     * One implicit step: couplings as they stand, temperatures at the end of the step. Radiator and heater hang on the jacket,
     * oil on the metal, so elimination leaves two equations.
     *
     * @param rate one over the step, 1/s; 0 for an endless one
     */
    void settle(double[] k, double[] x, double[] w, double[] c, double rate) {
        double cm = rate * k[Coefficient.METAL_CAPACITY.ordinal()];
        double cj = rate * k[Coefficient.JACKET_CAPACITY.ordinal()];
        double co = rate * k[Coefficient.OIL_CAPACITY.ordinal()];
        double cr = rate * k[Coefficient.RADIATOR_CAPACITY.ordinal()] / CELLS;
        double ch = rate * k[Coefficient.HEATER_CAPACITY.ordinal()];
        double m0 = x[State.METAL.ordinal()];
        double j0 = x[State.JACKET.ordinal()];
        double o0 = x[State.OIL.ordinal()];
        double a0 = x[State.RADIATOR_INLET.ordinal()];
        double b0 = x[State.RADIATOR_MIDDLE.ordinal()];
        double c0 = x[State.RADIATOR_OUTLET.ordinal()];
        double h0 = x[State.HEATER.ordinal()];
        double wr = c[RADIATOR_FLOW];
        double wh = c[HEATER_FLOW];
        double cell = c[CELL];
        double face = c[FACE];
        double heater = c[HEATER];
        double metalCoolant = c[METAL_COOLANT];
        double metalOil = c[METAL_OIL];
        double metalLoss = c[METAL_LOSS];
        double oilLoss = c[OIL_LOSS];
        double around = c[SURROUNDINGS];
        double friction = c[FRICTION];
        double toOil = c[TO_OIL];

        // radiator cells and heater as (constant) + (factor) * jacket
        double cellSum = Math.max(cr + wr + cell, Double.MIN_NORMAL);
        double pass = wr / cellSum;
        double ra = (cr * a0 + cell * face) / cellSum;
        double rb = (cr * b0 + cell * face) / cellSum + pass * ra;
        double rc = (cr * c0 + cell * face + c[TANK_HEAT]) / cellSum + pass * rb;
        double passAll = pass * pass * pass;
        double heaterSum = ch + wh + heater;
        double hConstant = heaterSum > 0.0 ? (ch * h0 + heater * c[HEATER_AIR]) / heaterSum : j0;
        double hFactor = heaterSum > 0.0 ? wh / heaterSum : 0.0;

        // oil as (constant) + (factor) * metal
        double oilSum = co + metalOil + oilLoss;
        double oConstant = (co * o0 + toOil + oilLoss * around) / oilSum;
        double oFactor = metalOil / oilSum;

        // metal and jacket
        double mm = cm + c[GAS] + metalCoolant + metalLoss + metalOil * (1.0 - oFactor);
        double mRight =
                cm * m0 + c[GAS] * c[GAS_TEMPERATURE] + (friction - toOil) + metalLoss * around + metalOil * oConstant;
        double jj = cj + metalCoolant + wr * (1.0 - passAll) + wh * (1.0 - hFactor);
        double jRight = cj * j0 + wr * rc + wh * hConstant;
        double determinant = mm * jj - metalCoolant * metalCoolant;
        double metal = (mRight * jj + metalCoolant * jRight) / determinant;
        double jacket = (mm * jRight + metalCoolant * mRight) / determinant;

        double oil = oConstant + oFactor * metal;
        double a = ra + pass * jacket;
        double b = rb + pass * pass * jacket;
        double last = rc + passAll * jacket;
        double h = hConstant + hFactor * jacket;

        w[Output.GAS_HEAT.ordinal()] = c[GAS] * (c[GAS_TEMPERATURE] - metal);
        w[Output.FRICTION_HEAT.ordinal()] = friction;
        w[Output.RADIATOR_HEAT.ordinal()] = cell * (a + b + last - 3.0 * face);
        w[Output.HEATER_HEAT.ordinal()] = heater * (h - c[HEATER_AIR]);
        w[Output.SURFACE_HEAT.ordinal()] = metalLoss * (metal - around) + oilLoss * (oil - around);
        w[Output.STORED.ordinal()] = cm * (metal - m0)
                + cj * (jacket - j0)
                + co * (oil - o0)
                + cr * (a - a0 + b - b0 + last - c0)
                + ch * (h - h0);

        x[State.METAL.ordinal()] = metal;
        x[State.JACKET.ordinal()] = jacket;
        x[State.OIL.ordinal()] = oil;
        x[State.RADIATOR_INLET.ordinal()] = a;
        x[State.RADIATOR_MIDDLE.ordinal()] = b;
        x[State.RADIATOR_OUTLET.ordinal()] = last;
        x[State.HEATER.ordinal()] = h;
    }
}
