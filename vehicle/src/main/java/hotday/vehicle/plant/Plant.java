package hotday.vehicle.plant;

import hotday.core.table.Curve;
import hotday.vehicle.airpath.Sealing;
import hotday.vehicle.spec.VehicleSpec;
import java.util.Arrays;

/**
 * A vehicle ready to run: coefficients in slots and the fixed geometry behind them. Immutable, shared between threads;
 * each thread brings its own arrays.
 *
 * <p>One step is linearly implicit: conductances and flows are taken at the start of the step, temperatures at its end.
 * The network is a tree (radiator and heater hang on the jacket, oil on the metal), so elimination leaves two equations
 * and the heat balance of the step closes to rounding. Equations and sources: docs/physics/plant.md.
 */
public final class Plant {
    private static final int CELLS = 3;
    private static final double AIR_HEAT_CAPACITY = 1007.0; // J/(kg K), 20..60 degC
    private static final double AIR_GAS_CONSTANT = 287.055; // J/(kg K)
    private static final double REFERENCE_AIR_DENSITY = 1.2; // kg/m3
    private static final double REFERENCE_FACE_SPEED = 3.0; // m/s
    private static final double GRAVITY = 9.80665; // m/s2
    /** Part of the way from face to coolant temperature that the leaving air has come, for draught and recirculation. */
    private static final double REAR_AIR_SHARE = 0.7;
    /** Coupling left when the engine and its pump stand. */
    private static final double STANDING_SHARE = 0.15;

    private final double[] k;
    private final GasSide gasSide;
    private final double faceArea;
    private final double airExponent;
    private final double resistanceLinear;
    private final double resistanceSquare;
    private final double exitLoss;
    private final double ramRecovery;
    private final double draughtHeight;
    private final double fanStall;
    private final double fanLinear;
    private final double fanSquare;
    private final double fanWindmill;
    private final double fanSlewUp;
    private final double fanSlewDown;
    private final double pumpSpeed;
    private final double coolantHeatCapacity;
    private final Curve coolantSide;
    private final double coolantFlow;

    Plant(VehicleSpec spec, double[] coefficients, double coolantHeatCapacity) {
        this.k = coefficients;
        this.gasSide = new GasSide(spec);
        this.faceArea = spec.radiator().faceArea();
        this.airExponent = spec.radiator().airExponent();
        this.resistanceLinear = spec.radiator().resistanceLinear();
        this.resistanceSquare =
                spec.radiator().resistanceSquare() + spec.frontEnd().stackResistanceSquare();
        this.exitLoss = spec.frontEnd().exitLoss();
        this.ramRecovery = spec.frontEnd().ramRecovery() - spec.frontEnd().basePressure();
        this.draughtHeight = spec.frontEnd().draughtHeight();
        this.fanStall = spec.fan().stallPressure();
        this.fanLinear = spec.fan().linear();
        this.fanSquare = spec.fan().square();
        this.fanWindmill = spec.fan().windmill();
        this.fanSlewUp = spec.fan().slewUp();
        this.fanSlewDown = spec.fan().slewDown();
        this.pumpSpeed = spec.coolant().pumpSpeed();
        this.coolantHeatCapacity = coolantHeatCapacity;
        this.coolantSide = Curve.of(spec.radiator().flowShare(), spec.radiator().conductanceShare());
        this.coolantFlow = spec.radiator().coolantFlow();
    }

    private Plant(Plant other, double[] coefficients) {
        this.k = coefficients;
        this.gasSide = other.gasSide;
        this.faceArea = other.faceArea;
        this.airExponent = other.airExponent;
        this.resistanceLinear = other.resistanceLinear;
        this.resistanceSquare = other.resistanceSquare;
        this.exitLoss = other.exitLoss;
        this.ramRecovery = other.ramRecovery;
        this.draughtHeight = other.draughtHeight;
        this.fanStall = other.fanStall;
        this.fanLinear = other.fanLinear;
        this.fanSquare = other.fanSquare;
        this.fanWindmill = other.fanWindmill;
        this.fanSlewUp = other.fanSlewUp;
        this.fanSlewDown = other.fanSlewDown;
        this.pumpSpeed = other.pumpSpeed;
        this.coolantHeatCapacity = other.coolantHeatCapacity;
        this.coolantSide = other.coolantSide;
        this.coolantFlow = other.coolantFlow;
    }

    /** The plant of a sheet as it stands. */
    public static Plant compile(VehicleSpec spec) {
        return new Plant(spec, NominalCoefficients.of(spec), NominalCoefficients.coolantHeatCapacity(spec));
    }

    /** One coefficient, in its own unit. */
    public double coefficient(Coefficient c) {
        return k[c.ordinal()];
    }

    /** A copy of all coefficients, by {@link Coefficient#index()}. */
    public double[] coefficients() {
        return k.clone();
    }

    /** The same vehicle with other coefficients. */
    public Plant with(double[] coefficients) {
        if (coefficients.length != Coefficient.COUNT) {
            throw new IllegalArgumentException(
                    coefficients.length + " coefficients given, " + Coefficient.COUNT + " needed");
        }
        return new Plant(this, coefficients.clone());
    }

    /** Engine, oil, radiator and everything else at one temperature, fan at rest. */
    public double[] soaked(double temperature) {
        double[] x = new double[State.COUNT];
        Arrays.fill(x, temperature);
        x[State.FAN.ordinal()] = 0.0;
        return x;
    }

    /**
     * Moves the state on by one step.
     *
     * @param x state by {@link State#index()}, changed in place
     * @param u inputs by {@link Input#index()}, taken as constant over the step
     * @param w outputs by {@link Output#index()}, overwritten
     * @param dt step, s; {@link Double#POSITIVE_INFINITY} gives the state that the present flows would settle to
     */
    public void step(double[] x, double[] u, double[] w, double dt) {
        double rate = 1.0 / dt;
        moveFan(x, u, dt);
        double density = u[Input.PRESSURE.ordinal()] / (AIR_GAS_CONSTANT * u[Input.AMBIENT.ordinal()]);
        double faceSpeed = faceSpeed(x, u, density);
        double airFlow = density * faceSpeed * faceArea;
        double airCapacity = airFlow * AIR_HEAT_CAPACITY;
        w[Output.CONDENSER_HEAT.ordinal()] = condenserHeat(u);
        w[Output.CHARGE_HEAT.ordinal()] = gasSide.chargeHeat(u);
        double faceTemperature = faceTemperature(x, u, w, airCapacity);
        double opening = opening(x[State.WAX_PLAY.ordinal()]);
        double pumpFlow = pumpFlow(u[Input.ENGINE_SPEED.ordinal()]);
        double leak = k[Coefficient.THERMOSTAT_LEAK.ordinal()];
        double radiatorFlow = pumpFlow * (leak + (1.0 - leak) * opening);

        w[Output.OPENING.ordinal()] = opening;
        w[Output.RADIATOR_FLOW.ordinal()] = radiatorFlow;
        w[Output.FACE_SPEED.ordinal()] = faceSpeed;
        w[Output.AIR_FLOW.ordinal()] = airFlow;
        w[Output.FACE_TEMPERATURE.ordinal()] = faceTemperature;

        double cell = cellConductance(faceSpeed, density, airCapacity, radiatorFlow);
        exchange(x, u, w, rate, radiatorFlow * coolantHeatCapacity, pumpFlow, cell, faceTemperature);
        moveWax(x, pumpFlow > 0.0 ? radiatorFlow / pumpFlow : 0.0, dt);
    }

    private void moveFan(double[] x, double[] u, double dt) {
        int fan = State.FAN.ordinal();
        double gap = u[Input.FAN_DEMAND.ordinal()] - x[fan];
        x[fan] += Math.min(Math.max(gap, -fanSlewDown * dt), fanSlewUp * dt);
    }

    private void moveWax(double[] x, double radiatorShare, double dt) {
        int wax = State.WAX.ordinal();
        int play = State.WAX_PLAY.ordinal();
        double jacket = x[State.JACKET.ordinal()];
        double mixed = radiatorShare * (x[State.RADIATOR_OUTLET.ordinal()] - jacket);
        double felt = jacket + k[Coefficient.THERMOSTAT_INLET_SHARE.ordinal()] * mixed;
        double share = dt / (dt + k[Coefficient.WAX_LAG.ordinal()]);
        x[wax] += (Double.isNaN(share) ? 1.0 : share) * (felt - x[wax]);
        double width = k[Coefficient.THERMOSTAT_HYSTERESIS.ordinal()];
        x[play] = Math.max(x[wax] - width, Math.min(x[wax], x[play]));
    }

    /**
     * Opening 0..1 for a wax temperature behind the play: warming, the play lags by the hysteresis, so opening begins at
     * the sheet's temperature; cooling, the play follows at once, so it shuts lower. Linear over the range with corners rounded
     * over a tenth of it, so that a fit sees no kink.
     */
    double opening(double wax) {
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

    private double pumpFlow(double engineSpeed) {
        return k[Coefficient.PUMP_FLOW.ordinal()] * engineSpeed / pumpSpeed;
    }

    /**
     * Mean face speed, m/s: ram, natural draught and fan against core, grille and exit. With the fan turning there are
     * two candidates, the fan's own curve and the free rotor; the fan never takes more pressure than the free rotor, so
     * the larger flow is the right one. Both are roots of a quadratic.
     */
    private double faceSpeed(double[] x, double[] u, double density) {
        double relative = density / REFERENCE_AIR_DENSITY;
        double speed = u[Input.SPEED.ordinal()];
        double ram = k[Coefficient.RAM_LEVEL.ordinal()] * ramRecovery * 0.5 * density * speed * speed;
        double ambient = u[Input.AMBIENT.ordinal()];
        double rear = ambient + REAR_AIR_SHARE * Math.max(0.0, x[State.RADIATOR_MIDDLE.ordinal()] - ambient);
        double drive = ram + density * GRAVITY * draughtHeight * (1.0 - ambient / rear);
        double square = relative * resistanceSquare + exitLoss * 0.5 * density;
        double area2 = faceArea * faceArea * relative;
        double free = positiveRoot(square + fanWindmill * area2, resistanceLinear, drive);
        double ratio = x[State.FAN.ordinal()] * k[Coefficient.FAN_LEVEL.ordinal()];
        double driven = ratio <= 0.0
                ? 0.0
                : positiveRoot(
                        square - fanSquare * area2,
                        resistanceLinear - fanLinear * ratio * faceArea * relative,
                        drive + ratio * ratio * fanStall * relative);
        return Math.hypot(Math.max(free, driven), k[Coefficient.STILL_AIR_SPEED.ordinal()]);
    }

    /** Positive v of a v^2 + b v = c; zero when nothing drives. */
    private static double positiveRoot(double a, double b, double c) {
        if (c <= 0.0) {
            return 0.0;
        }
        return 2.0 * c / (b + Math.sqrt(b * b + 4.0 * a * c));
    }

    private double faceTemperature(double[] x, double[] u, double[] w, double airCapacity) {
        double ambient = u[Input.AMBIENT.ordinal()];
        double back = k[Coefficient.RECIRCULATION.ordinal()] * Sealing.remaining(u[Input.SPEED.ordinal()]);
        double radiator = Math.max(ambient, x[State.RADIATOR_MIDDLE.ordinal()]);
        double mixed =
                (ambient * (1.0 - back) + REAR_AIR_SHARE * back * radiator) / (1.0 - (1.0 - REAR_AIR_SHARE) * back);
        double upstream =
                w[Output.CONDENSER_HEAT.ordinal()] + w[Output.CHARGE_HEAT.ordinal()] + u[Input.GEARBOX_HEAT.ordinal()];
        return mixed + upstream / Math.max(airCapacity, 1.0);
    }

    /** Condenser heat grows with the outside temperature: linear, nothing at 0 degC, nominal at 35 degC. */
    private double condenserHeat(double[] u) {
        double warm = (u[Input.AMBIENT.ordinal()] - 273.15) / 35.0;
        return u[Input.COMPRESSOR.ordinal()]
                * k[Coefficient.CONDENSER_HEAT.ordinal()]
                * Math.min(Math.max(warm, 0.0), 1.5);
    }

    /** Heat to air per kelvin between one radiator cell and the air at the face: eps C of a third of the core, W/K. */
    private double cellConductance(double faceSpeed, double density, double airCapacity, double radiatorFlow) {
        if (airCapacity <= 0.0) {
            return 0.0;
        }
        double air = k[Coefficient.RADIATOR_AIR_CONDUCTANCE.ordinal()]
                * Math.pow(faceSpeed * density / (REFERENCE_FACE_SPEED * REFERENCE_AIR_DENSITY), airExponent);
        double coolant =
                k[Coefficient.RADIATOR_COOLANT_CONDUCTANCE.ordinal()] * coolantSide.value(radiatorFlow / coolantFlow);
        double ua = air * coolant / (air + coolant);
        return airCapacity * -Math.expm1(-ua / airCapacity) / CELLS;
    }

    /** Solves the node balances of one step and books its heats. */
    private void exchange(
            double[] x, double[] u, double[] w, double rate, double wr, double pumpFlow, double cell, double face) {
        double ambient = u[Input.AMBIENT.ordinal()];
        double speed = u[Input.SPEED.ordinal()];
        double turning = Math.sqrt(u[Input.ENGINE_SPEED.ordinal()] / pumpSpeed);
        double coupled = STANDING_SHARE + (1.0 - STANDING_SHARE) * turning;
        double metalCoolant = k[Coefficient.METAL_COOLANT_CONDUCTANCE.ordinal()] * coupled;
        double metalOil = k[Coefficient.METAL_OIL_CONDUCTANCE.ordinal()] * coupled;
        double metalLoss = k[Coefficient.METAL_LOSS.ordinal()] + k[Coefficient.METAL_LOSS_PER_SPEED.ordinal()] * speed;
        double oilLoss = k[Coefficient.OIL_LOSS.ordinal()] + k[Coefficient.OIL_LOSS_PER_SPEED.ordinal()] * speed;
        double gasConductance = gasSide.conductance(k, u);
        double gasTemperature = gasSide.temperature(u);
        double friction = gasSide.frictionHeat(k, u, x[State.OIL.ordinal()]);
        double toOil = friction * k[Coefficient.FRICTION_TO_OIL.ordinal()];
        double heaterSetting = u[Input.HEATER.ordinal()];
        double wh = k[Coefficient.HEATER_FLOW_SHARE.ordinal()] * pumpFlow * coolantHeatCapacity;
        double heater = heaterSetting * k[Coefficient.HEATER_CONDUCTANCE.ordinal()];

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

        // radiator cells and heater as (constant) + (factor) * jacket
        double cellSum = Math.max(cr + wr + cell, Double.MIN_NORMAL);
        double pass = wr / cellSum;
        double ra = (cr * a0 + cell * face) / cellSum;
        double rb = (cr * b0 + cell * face) / cellSum + pass * ra;
        double rc = (cr * c0 + cell * face) / cellSum + pass * rb;
        double passAll = pass * pass * pass;
        double heaterSum = ch + wh + heater;
        double hConstant = heaterSum > 0.0 ? (ch * h0 + heater * ambient) / heaterSum : j0;
        double hFactor = heaterSum > 0.0 ? wh / heaterSum : 0.0;

        // oil as (constant) + (factor) * metal
        double oilSum = co + metalOil + oilLoss;
        double oConstant = (co * o0 + toOil + oilLoss * ambient) / oilSum;
        double oFactor = metalOil / oilSum;

        // metal and jacket
        double mm = cm + gasConductance + metalCoolant + metalLoss + metalOil * (1.0 - oFactor);
        double mRight = cm * m0
                + gasConductance * gasTemperature
                + (friction - toOil)
                + metalLoss * ambient
                + metalOil * oConstant;
        double jj = cj + metalCoolant + wr * (1.0 - passAll) + wh * (1.0 - hFactor);
        double jRight = cj * j0 + wr * rc + wh * hConstant;
        double determinant = mm * jj - metalCoolant * metalCoolant;
        double metal = (mRight * jj + metalCoolant * jRight) / determinant;
        double jacket = (mm * jRight + metalCoolant * mRight) / determinant;

        double oil = oConstant + oFactor * metal;
        double a = ra + pass * jacket;
        double b = rb + pass * pass * jacket;
        double c = rc + passAll * jacket;
        double h = hConstant + hFactor * jacket;

        w[Output.GAS_HEAT.ordinal()] = gasConductance * (gasTemperature - metal);
        w[Output.FRICTION_HEAT.ordinal()] = friction;
        w[Output.RADIATOR_HEAT.ordinal()] = cell * (a + b + c - 3.0 * face);
        w[Output.HEATER_HEAT.ordinal()] = heater * (h - ambient);
        w[Output.SURFACE_HEAT.ordinal()] = metalLoss * (metal - ambient) + oilLoss * (oil - ambient);
        w[Output.STORED.ordinal()] = cm * (metal - m0)
                + cj * (jacket - j0)
                + co * (oil - o0)
                + cr * (a - a0 + b - b0 + c - c0)
                + ch * (h - h0);

        x[State.METAL.ordinal()] = metal;
        x[State.JACKET.ordinal()] = jacket;
        x[State.OIL.ordinal()] = oil;
        x[State.RADIATOR_INLET.ordinal()] = a;
        x[State.RADIATOR_MIDDLE.ordinal()] = b;
        x[State.RADIATOR_OUTLET.ordinal()] = c;
        x[State.HEATER.ordinal()] = h;
    }
}
