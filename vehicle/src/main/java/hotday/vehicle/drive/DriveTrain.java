package hotday.vehicle.drive;

import hotday.physics.component.Converter;
import hotday.physics.component.GearboxLosses;
import hotday.physics.fluid.Oil;
import hotday.physics.fluid.ViscosityFactor;
import hotday.vehicle.spec.VehicleSpec;

/**
 * From the road through axle, gears and torque converter to the crank, quasi-steady. Writes results to an array, allocates nothing;
 * immutable, shared between threads.
 *
 * <p>Gear: the highest whose turbine turns at least at the lowest speed kept and in which the engine gives no more than 85 % of what it has
 * there; the converter is locked from its lock gear and lock speed on. Where locked gears do not pull, the next lower does. Where
 * none pulls: the lowest that does not turn the engine past its rated speed, open, with the engine giving what it has. Common practice, no
 * source; there is no hysteresis, a driven-out transient holds a gear with {@link #inGear}.
 *
 * <p>Open, the engine turns as fast as the converter needs for the road's torque, at least at idle, at most as fast as its
 * torque drives the pump. What the turbine then gives too much (creep) stays in the wheel brakes; too little shows in {@link #LOAD}. At
 * rest in gear with a foot on the brake everything the idling engine gives is heat.
 *
 * <p>Crank power = converter heat + gear power + drag of the gearbox with fluid at 80 degC at engine speed (its pump turns with the
 * engine); accessories come on top. Page: docs/physics/gearbox.md.
 */
public final class DriveTrain {
    /** Force times speed that the road asks, W; negative when the vehicle pushes. */
    public static final int WHEEL_POWER = 0;
    /** Gear, 1 is the lowest. */
    public static final int GEAR = 1;
    /** 1 when the converter is locked, else 0. */
    public static final int LOCKED = 2;
    /** rad/s. */
    public static final int ENGINE_SPEED = 3;
    /** Input shaft of the gears, rad/s. */
    public static final int TURBINE_SPEED = 4;
    /** What gearbox and converter take from the crank, W; negative when they push. */
    public static final int CRANK_POWER = 5;
    /** W, 0 or more. */
    public static final int CONVERTER_HEAT = 6;
    /** Through the input shaft of the gears, W; negative when the wheels push. */
    public static final int GEAR_POWER = 7;
    /** Crank power the road asks over the most the engine has at this speed; above 1 the vehicle falls behind. */
    public static final int LOAD = 8;
    /** Length of the results. */
    public static final int COUNT = 9;

    private static final double LOAD_SHARE = 0.85;
    /** Share of the engine's speed within which a logger shows a locked converter. */
    private static final double AS_ONE = 0.02;

    private final Drive road;
    private final Converter converter;
    private final GearboxLosses losses;
    private final double[] ratios;
    private final double finalDrive;
    private final double tyreRadius;
    private final double efficiency;
    private final double lowestSpeed;
    private final double idleSpeed;
    private final double ratedSpeed;
    private final double mostTorque;
    private final int lockGear;
    private final double lockSpeed;

    public DriveTrain(VehicleSpec spec) {
        VehicleSpec.Gearbox gearbox = spec.gearbox();
        VehicleSpec.Converter table = gearbox.converter();
        VehicleSpec.GearboxFluid fluid = spec.gearboxFluid();
        this.road = new Drive(spec);
        this.converter = Converter.of(table.speedRatio(), table.capacity(), table.torqueRatio());
        Oil oil = new Oil(850.0, 1950.0, 3.5, 0.135, fluid.viscosityAt40(), fluid.viscosityAt100());
        this.losses = new GearboxLosses(
                fluid.meshLoss(),
                fluid.spinLoss(),
                fluid.spinSpeed(),
                new ViscosityFactor(oil, GearboxLosses.STATED_AT, GearboxLosses.VISCOSITY_POWER));
        this.ratios = gearbox.ratios().stream().mapToDouble(Double::doubleValue).toArray();
        this.finalDrive = gearbox.finalDrive();
        this.tyreRadius = spec.roadLoad().tyreRadius();
        this.efficiency = gearbox.efficiency();
        this.lowestSpeed = gearbox.lowestSpeed();
        this.idleSpeed = spec.engine().idleSpeed();
        this.ratedSpeed = spec.engine().ratedSpeed();
        this.mostTorque = spec.engine().ratedPower() / ratedSpeed;
        this.lockGear = table.lockGear();
        this.lockSpeed = table.lockSpeed();
    }

    /**
     * Chooses gear and lock-up for an ordinary day's air and writes to {@code out} what they do in today's, so that what follows from
     * the weather is continuous in it.
     *
     * @param speed m/s, 0 or more
     * @param acceleration m/s2
     * @param grade rise over run
     * @param usualDensity of the air for which a gear is chosen, kg/m3
     * @param airDensity of today's air, kg/m3
     * @param range further ratio of the transfer box in use, 1 without
     * @param out of length {@link #COUNT}
     */
    public void solve(
            double speed,
            double acceleration,
            double grade,
            double usualDensity,
            double airDensity,
            double range,
            double[] out) {
        choose(speed, range, force(speed, acceleration, grade, usualDensity), out);
        double force = force(speed, acceleration, grade, airDensity);
        inGear((int) out[GEAR], out[LOCKED] > 0.0, speed, force, range, out);
    }

    private double force(double speed, double acceleration, double grade, double airDensity) {
        return standing(speed, acceleration) ? 0.0 : road.force(speed, acceleration, grade, airDensity);
    }

    private void choose(double speed, double range, double force, double[] out) {
        for (int gear = ratios.length; gear >= 1; gear--) {
            double turbine = turbineSpeed(gear, speed, range);
            boolean last = gear == 1 || turbineSpeed(gear - 1, speed, range) > ratedSpeed;
            if (turbine < lowestSpeed && !last) {
                continue;
            }
            boolean locks = gear >= lockGear && turbine >= Math.max(lockSpeed, idleSpeed);
            inGear(gear, locks, speed, force, range, out);
            if (out[LOAD] <= LOAD_SHARE && (out[ENGINE_SPEED] <= ratedSpeed || last)) {
                return;
            }
            if (last) {
                inGear(gear, false, speed, force, range, out);
                return;
            }
        }
    }

    /** Held by the brakes. */
    private static boolean standing(double speed, double acceleration) {
        return speed <= 0.0 && acceleration <= 0.0;
    }

    private double turbineSpeed(int gear, double speed, double range) {
        return Math.max(0.0, speed) / tyreRadius * finalDrive * range * ratios[gear - 1];
    }

    /**
     * The same in a given gear; continuous in everything but the gear and the lock.
     *
     * @param gear 1 is the lowest
     * @param locked converter locked; only where the turbine is not below idle speed
     * @param force at the wheels, N
     */
    public void inGear(int gear, boolean locked, double speed, double force, double range, double[] out) {
        double turbine = turbineSpeed(gear, speed, range);
        double through = force > 0.0 ? 1.0 / efficiency : efficiency;
        double torque = through * force * tyreRadius / (finalDrive * range * ratios[gear - 1]);
        out[WHEEL_POWER] = force * speed;
        out[GEAR] = gear;
        out[TURBINE_SPEED] = turbine;
        if (locked) {
            locked(turbine, torque, out);
        } else {
            open(turbine, torque, out);
        }
    }

    /**
     * Converter heat of a recorded moment, W: the gear whose turbine turns with the engine (within 2 %) is locked; where there is none, the one in
     * whose slip the pump takes what the engine gives. At most what the engine gives.
     *
     * @param speed m/s
     * @param engineSpeed rad/s
     * @param crank what the driveline takes, W
     */
    public double slipHeat(double speed, double engineSpeed, double crank) {
        double least = Double.POSITIVE_INFINITY;
        double heat = 0.0;
        for (int gear = 1; gear <= ratios.length; gear++) {
            double turbine = turbineSpeed(gear, speed, 1.0);
            if (gear >= lockGear && Math.abs(turbine - engineSpeed) < AS_ONE * engineSpeed) {
                return 0.0;
            }
            double off = Math.abs(converter.pumpTorque(engineSpeed, turbine) * engineSpeed - crank);
            if (turbine < engineSpeed && off < least) {
                least = off;
                heat = converter.heat(engineSpeed, turbine);
            }
        }
        return Math.max(0.0, Math.min(heat, crank));
    }

    private void locked(double turbine, double torque, double[] out) {
        out[LOCKED] = 1.0;
        out[ENGINE_SPEED] = turbine;
        out[CONVERTER_HEAT] = 0.0;
        out[GEAR_POWER] = torque * turbine;
        out[CRANK_POWER] = torque * turbine + losses.warmSpin(turbine);
        out[LOAD] = load(out[CRANK_POWER], turbine);
    }

    private void open(double turbine, double torque, double[] out) {
        double needed = Math.max(idleSpeed, converter.engineSpeedForOutput(turbine, torque));
        double most = Math.max(idleSpeed, converter.engineSpeed(turbine, mostTorque));
        double engine = Math.min(needed, most);
        out[LOCKED] = 0.0;
        out[ENGINE_SPEED] = engine;
        out[CONVERTER_HEAT] = converter.heat(engine, turbine);
        out[GEAR_POWER] = converter.turbineTorque(engine, turbine) * turbine;
        out[CRANK_POWER] = converter.pumpTorque(engine, turbine) * engine + losses.warmSpin(engine);
        out[LOAD] = load(converter.pumpTorque(needed, turbine) * needed + losses.warmSpin(needed), needed);
    }

    private double load(double power, double engineSpeed) {
        return power / (mostTorque * Math.min(engineSpeed, ratedSpeed));
    }
}
