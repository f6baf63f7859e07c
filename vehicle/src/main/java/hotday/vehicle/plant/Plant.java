package hotday.vehicle.plant;

import hotday.core.table.Curve;
import hotday.physics.component.WillansLine;
import hotday.vehicle.airpath.Sealing;
import hotday.vehicle.front.Lanes;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.VehicleSpec.CoreKind;
import java.util.Arrays;

/**
 * A vehicle ready to run: coefficients in slots and the fixed geometry behind them. Immutable, shared between threads;
 * each thread brings its own arrays ({@link Run}).
 *
 * <p>Two ways through the same loops. {@link #rates} gives time derivatives of everything, driven by the road: for transients and
 * steady states. {@link #step} is one linearly implicit step of the engine side alone, driven by recorded fuel, with the
 * heats of condenser and gearbox cooler given: for fits over long runs at steps of a second. Equations and sources:
 * docs/physics/plant.md.
 */
public final class Plant {
    private static final double AIR_HEAT_CAPACITY = 1007.0; // J/(kg K), 20..60 degC
    private static final double AIR_GAS_CONSTANT = 287.055; // J/(kg K)
    private static final double SOME_SPEED = 10.0; // m/s, where the share of road speed at the face is taken
    private static final double FAN_LAG = 0.3; // s, a fan close to the speed it is asked for; from memory
    private static final double MOST_BACK = 0.9;
    /** Share of bay air that comes back at rest at the very worst: an open nose without any seal; from memory. */
    private static final double MOST_AT_REST = 0.6;

    private final double[] k;
    private final Loops loops;
    private final double radiatorLevel;
    private final FanDemand demand;

    private Plant(Loops loops, FanDemand demand, double[] coefficients) {
        this.loops = loops;
        this.demand = demand;
        this.k = coefficients;
        this.radiatorLevel = k[Coefficient.RADIATOR_AIR_CONDUCTANCE.ordinal()] / loops.radiatorAirConductance;
    }

    /** What a fit never moves. */
    private static final class Loops {
        final EngineLoop engine;
        final WillansLine fuelLine;
        final Lanes lanes;
        final FrontAir front;
        final GearboxSide gearbox;
        final RefrigerantSide refrigerant; // null without air conditioning
        final SupplySide supply;
        final Curve coolantSide;
        final double coolantFlow;
        final double radiatorAirConductance;
        final double faceArea;
        final double roadAtFace;
        final double fanSlewUp;
        final double fanSlewDown;

        Loops(VehicleSpec spec) {
            engine = new EngineLoop(spec);
            fuelLine = spec.engine().fuelLine();
            lanes = Lanes.compile(spec);
            front = new FrontAir(spec, lanes);
            gearbox = new GearboxSide(spec);
            refrigerant = RefrigerantSide.of(spec).orElse(null);
            supply = new SupplySide(spec);
            coolantSide = Curve.of(spec.radiator().flowShare(), spec.radiator().conductanceShare());
            coolantFlow = spec.radiator().coolantFlow();
            radiatorAirConductance = spec.radiator().airConductance();
            faceArea = spec.radiator().faceArea();
            roadAtFace = roadAtFace(lanes, front, faceArea);
            fanSlewUp = spec.fan().slewUp();
            fanSlewDown = spec.fan().slewDown();
        }

        /** Mean speed at the radiator over road speed, fan at rest. */
        private static double roadAtFace(Lanes lanes, FrontAir front, double faceArea) {
            Work work = new Work(lanes.columns(), lanes.lanes());
            front.start(SOME_SPEED, 0.0, 300.0, 101325.0, 1.0, work);
            return front.massFlow(work) / (101325.0 / (AIR_GAS_CONSTANT * 300.0)) / faceArea / SOME_SPEED;
        }
    }

    /** The plant of a sheet as it stands. */
    public static Plant compile(VehicleSpec spec) {
        return new Plant(new Loops(spec), new FanDemand(spec.schedule()), NominalCoefficients.of(spec));
    }

    /** One coefficient, in its own unit. */
    public double coefficient(Coefficient c) {
        return k[c.ordinal()];
    }

    /** The coefficients themselves, not to be changed. */
    double[] values() {
        return k;
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
        return new Plant(loops, demand, coefficients.clone());
    }

    /** The same vehicle with another fan schedule. */
    public Plant with(FanSchedule schedule) {
        return new Plant(loops, new FanDemand(schedule), k);
    }

    /** Everything at one temperature, nothing turning, cabin air as dry as outside. */
    public double[] soaked(double temperature) {
        double[] x = new double[State.COUNT];
        Arrays.fill(x, temperature);
        x[State.FAN.ordinal()] = 0.0;
        x[State.CABIN_HUMIDITY.ordinal()] = 0.0;
        x[State.CHARGE_DRAWN.ordinal()] = 0.0;
        return x;
    }

    /** Arrays for one thread. */
    Work work() {
        return new Work(loops.lanes.columns(), loops.lanes.lanes());
    }

    /** True with a compressor and a cabin. */
    public boolean conditioned() {
        return loops.refrigerant != null;
    }

    /**
     * Moves the engine side on by one step: recorded runs.
     *
     * @param x state by {@link State#index()}, changed in place
     * @param u inputs by {@link Input#index()}, taken as constant over the step
     * @param dt step, s; {@link Double#POSITIVE_INFINITY} gives the state that the present flows would settle to
     */
    void step(double[] x, double[] u, Work work, double dt) {
        double[] w = work.w;
        double rate = 1.0 / dt;
        int fan = State.FAN.ordinal();
        double gap = u[Input.FAN_DEMAND.ordinal()] - x[fan];
        x[fan] += Math.min(Math.max(gap, -loops.fanSlewDown * dt), loops.fanSlewUp * dt);
        double fuel = Math.max(0.0, u[Input.FUEL_POWER.ordinal()]);
        w[Output.FUEL_POWER.ordinal()] = fuel;
        loops.engine.couple(k, x, u, w, work.coupling, fuel);
        startAir(x, u, work);
        double gearbox = k[Coefficient.GEARBOX_HEAT_LEVEL.ordinal()];
        w[Output.CONDENSER_HEAT.ordinal()] =
                k[Coefficient.CONDENSER_HEAT.ordinal()] * u[Input.CONDENSER_HEAT.ordinal()];
        w[Output.GEARBOX_AIR_HEAT.ordinal()] = gearbox * u[Input.GEARBOX_HEAT.ordinal()];
        w[Output.GEARBOX_TANK_HEAT.ordinal()] = gearbox * u[Input.GEARBOX_TANK_HEAT.ordinal()];
        work.coupling[EngineLoop.TANK_HEAT] = w[Output.GEARBOX_TANK_HEAT.ordinal()];
        w[Output.CHARGE_HEAT.ordinal()] = 0.0;
        w[Output.CHARGE_TEMPERATURE.ordinal()] = u[Input.AMBIENT.ordinal()];
        double upstream = 0.0;
        for (int core = 0; core < loops.front.cores(); core++) {
            upstream += passRecorded(core, u, work);
        }
        w[Output.UPSTREAM_HEAT.ordinal()] = upstream;
        loops.engine.settle(k, x, w, work.coupling, rate);
        air(work, upstream);
        settleBay(x, u, work, rate);
        moveWax(x, w, dt);
    }

    private double passRecorded(int core, double[] u, Work work) {
        FrontAir front = loops.front;
        CoreKind kind = front.kind(core);
        if (kind == CoreKind.RADIATOR) {
            radiator(core, work);
            return 0.0;
        }
        front.conductance(core, front.inside(core), 1.0, work);
        double heat = switch (kind) {
            case CONDENSER -> work.w[Output.CONDENSER_HEAT.ordinal()];
            case GEARBOX_COOLER -> work.w[Output.GEARBOX_AIR_HEAT.ordinal()];
            default -> chargeHeat(u, work);
        };
        front.give(heat, work);
        return heat;
    }

    private double chargeHeat(double[] u, Work work) {
        loops.engine.cool(u, work.w[Output.FUEL_POWER.ordinal()], work.mean, work.w);
        return work.w[Output.CHARGE_HEAT.ordinal()];
    }

    private void moveWax(double[] x, double[] w, double dt) {
        int wax = State.WAX.ordinal();
        double felt = EngineLoop.felt(k, x, w[Output.RADIATOR_SHARE.ordinal()]);
        double share = dt / (dt + k[Coefficient.WAX_LAG.ordinal()]);
        x[wax] += (Double.isNaN(share) ? 1.0 : share) * (felt - x[wax]);
        EngineLoop.play(k, x);
    }

    /** Air through the stack for road, fan and temperatures as they stand, and the air in front of it. */
    private void startAir(double[] x, double[] u, Work work) {
        double ambient = u[Input.AMBIENT.ordinal()];
        double pressure = u[Input.PRESSURE.ordinal()];
        double bay = x[State.BAY.ordinal()];
        double speed = u[Input.SPEED.ordinal()] * Math.sqrt(k[Coefficient.RAM_LEVEL.ordinal()]);
        double still = k[Coefficient.STILL_AIR_SPEED.ordinal()] / loops.roadAtFace;
        double fan = x[State.FAN.ordinal()] * k[Coefficient.FAN_LEVEL.ordinal()];
        double back = Math.min(MOST_AT_REST, k[Coefficient.RECIRCULATION.ordinal()])
                * Sealing.remaining(u[Input.SPEED.ordinal()]);
        double face = ambient + back * (bay - ambient);
        double through = 1.0 - u[Input.FRONT_HELD.ordinal()];
        loops.front.start(through * Math.hypot(speed, still), fan, face, pressure, Math.max(1.0, bay / face), work);
        double reversed = loops.front.reversedShare(work);
        if (reversed > 0.0) {
            double all = Math.min(MOST_BACK, 1.0 - (1.0 - back) * (1.0 - reversed));
            face = ambient + all * (bay - ambient);
            loops.front.startAt(face, work);
        }
        double[] w = work.w;
        double flow = loops.front.massFlow(work);
        w[Output.AIR_FLOW.ordinal()] = flow;
        w[Output.FACE_SPEED.ordinal()] = flow * AIR_GAS_CONSTANT * ambient / pressure / loops.faceArea;
        work.face = face;
        work.coupling[EngineLoop.SURROUNDINGS] = 0.5 * (ambient + bay);
    }

    private void radiator(int core, Work work) {
        double[] w = work.w;
        double inside = k[Coefficient.RADIATOR_COOLANT_CONDUCTANCE.ordinal()]
                * loops.coolantSide.value(w[Output.RADIATOR_FLOW.ordinal()] / loops.coolantFlow);
        double conductance = loops.front.conductance(core, inside, radiatorLevel, work);
        work.coupling[EngineLoop.CELL] = conductance / EngineLoop.CELLS;
        work.coupling[EngineLoop.FACE] = work.mean;
        w[Output.FACE_TEMPERATURE.ordinal()] = work.mean;
    }

    /** Mean air behind the stack. */
    private static void air(Work work, double upstream) {
        double[] w = work.w;
        double rate = Math.max(1e-3, work.rateOfAll);
        w[Output.REAR_TEMPERATURE.ordinal()] = work.face + (upstream + w[Output.RADIATOR_HEAT.ordinal()]) / rate;
    }

    private double bayLoss(double[] u) {
        return k[Coefficient.BAY_LOSS.ordinal()]
                + k[Coefficient.BAY_LOSS_PER_SPEED.ordinal()] * u[Input.SPEED.ordinal()];
    }

    private void settleBay(double[] x, double[] u, Work work, double rate) {
        double capacity = rate * k[Coefficient.BAY_CAPACITY.ordinal()];
        double loss = bayLoss(u);
        double[] w = work.w;
        x[State.BAY.ordinal()] = (capacity * x[State.BAY.ordinal()]
                        + work.rateOfAll * w[Output.REAR_TEMPERATURE.ordinal()]
                        + w[Output.SURFACE_HEAT.ordinal()]
                        + loss * u[Input.AMBIENT.ordinal()])
                / (capacity + work.rateOfAll + loss);
    }

    /**
     * Time derivatives of the whole vehicle, and everything worked out on the way. The play of the thermostat stands still
     * here; who steps moves it.
     *
     * @param x state by {@link State#index()}
     * @param u inputs by {@link Input#index()}
     * @param dx derivatives, overwritten
     */
    void rates(double[] x, double[] u, Work work, double[] dx) {
        double[] w = work.w;
        double belt = 0.0;
        double conductance = 0.0;
        double current = 0.0;
        RefrigerantSide refrigerant = loops.refrigerant;
        if (refrigerant != null) {
            refrigerant.compress(x, u, work);
            belt = refrigerant.belt(w);
            conductance = refrigerant.conductance(u);
            current = refrigerant.current(u, w);
        }
        loops.supply.balance(x, u, work, conductance, current);
        double fuel = fuel(u, w, belt);
        loops.engine.couple(k, x, u, w, work.coupling, fuel);
        startAir(x, u, work);
        w[Output.CONDENSER_HEAT.ordinal()] = 0.0;
        w[Output.CHARGE_HEAT.ordinal()] = 0.0;
        w[Output.CHARGE_TEMPERATURE.ordinal()] = u[Input.AMBIENT.ordinal()];
        loops.gearbox.losses(k, x, u, work);
        double upstream = 0.0;
        for (int core = 0; core < loops.front.cores(); core++) {
            upstream += pass(core, x, u, work);
        }
        w[Output.UPSTREAM_HEAT.ordinal()] = upstream;
        loops.gearbox.afterFront(x, work);
        loops.engine.rates(k, x, w, work.coupling, dx);
        air(work, upstream);
        loops.gearbox.rates(x, u, work, dx);
        if (refrigerant != null) {
            refrigerant.rates(x, u, work, dx);
        } else {
            standStill(dx);
        }
        bay(x, u, work, dx);
        fan(x, u, w, dx);
        dx[State.CHARGE_DRAWN.ordinal()] = w[Output.BATTERY_CURRENT.ordinal()];
    }

    private static void standStill(double[] dx) {
        dx[State.CONDENSING.ordinal()] = 0.0;
        dx[State.EVAPORATING.ordinal()] = 0.0;
        dx[State.CABIN.ordinal()] = 0.0;
        dx[State.INTERIOR.ordinal()] = 0.0;
        dx[State.CABIN_HUMIDITY.ordinal()] = 0.0;
    }

    private double fuel(double[] u, double[] w, double belt) {
        double recorded = u[Input.FUEL_POWER.ordinal()];
        double engineSpeed = u[Input.ENGINE_SPEED.ordinal()];
        double brake = u[Input.CRANK_POWER.ordinal()] + belt + w[Output.ALTERNATOR_POWER.ordinal()];
        double fuel = recorded >= 0.0
                ? recorded
                : k[Coefficient.DRIVE_FUEL_LEVEL.ordinal()] * loops.fuelLine.fuelPower(brake, engineSpeed);
        w[Output.BRAKE_POWER.ordinal()] = brake;
        w[Output.FUEL_POWER.ordinal()] = fuel;
        return fuel;
    }

    private double pass(int core, double[] x, double[] u, Work work) {
        FrontAir front = loops.front;
        switch (front.kind(core)) {
            case RADIATOR:
                radiator(core, work);
                return 0.0;
            case CONDENSER:
                return loops.refrigerant.condense(core, front, k[Coefficient.CONDENSER_LEVEL.ordinal()], work);
            case GEARBOX_COOLER:
                return loops.gearbox.frontHeat(core, front, work);
            default:
                front.conductance(core, front.inside(core), 1.0, work);
                double heat = chargeHeat(u, work);
                front.give(heat, work);
                return heat;
        }
    }

    private void bay(double[] x, double[] u, Work work, double[] dx) {
        double[] w = work.w;
        double bay = x[State.BAY.ordinal()];
        double heat = work.rateOfAll * (w[Output.REAR_TEMPERATURE.ordinal()] - bay)
                + w[Output.SURFACE_HEAT.ordinal()]
                + w[Output.GEARBOX_CASE_HEAT.ordinal()];
        double loss = bayLoss(u) * (bay - u[Input.AMBIENT.ordinal()]);
        w[Output.BAY_HEAT.ordinal()] = heat;
        w[Output.BAY_LOSS.ordinal()] = loss;
        dx[State.BAY.ordinal()] = (heat - loss) / k[Coefficient.BAY_CAPACITY.ordinal()];
    }

    private void fan(double[] x, double[] u, double[] w, double[] dx) {
        boolean scheduled = u[Input.FAN_BY_SCHEDULE.ordinal()] > 0.5;
        double wanted = scheduled ? demand.of(k, x, u, w) : u[Input.FAN_DEMAND.ordinal()];
        double target = loops.supply.reachable(wanted, w);
        w[Output.FAN_TARGET.ordinal()] = target;
        double rate = (target - x[State.FAN.ordinal()]) / FAN_LAG;
        dx[State.FAN.ordinal()] = scheduled ? rate : Math.max(-loops.fanSlewDown, Math.min(loops.fanSlewUp, rate));
    }

    /**
     * Fan speed after {@code dt} seconds towards its target as it stands: at its slew as long as its lag asks for more, then by the lag.
     */
    double fanAfter(double dt, double[] x, double[] u, Work work) {
        double from = x[State.FAN.ordinal()];
        double gap = work.w[Output.FAN_TARGET.ordinal()] - from;
        double way = Math.abs(gap);
        double slewing = 0.0;
        if (u[Input.FAN_BY_SCHEDULE.ordinal()] <= 0.5) {
            double slew = gap > 0.0 ? loops.fanSlewUp : loops.fanSlewDown;
            slewing = Math.min(dt, Math.max(0.0, way / slew - FAN_LAG));
            way -= slew * slewing;
        }
        return from + gap - Math.copySign(way * Math.exp((slewing - dt) / FAN_LAG), gap);
    }

    /**
     * A rate that an explicit step must be short beside, 1/s: of coolant nodes, which going round doubles, or half that of a stroke that holds the
     * suction pressure.
     */
    double fastest(Work work) {
        double coolant = EngineLoop.fastest(k, work.coupling);
        return loops.refrigerant == null ? coolant : Math.max(coolant, 0.5 * loops.refrigerant.fastest(work));
    }
}
