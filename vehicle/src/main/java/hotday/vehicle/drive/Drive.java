package hotday.vehicle.drive;

import hotday.physics.component.WillansLine;
import hotday.vehicle.plant.Coefficient;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Run;
import hotday.vehicle.spec.VehicleSpec;

/**
 * From the road to the engine: force, gear, brake power, fuel. Fuel by a Willans line with friction mean effective
 * pressure (Guzzella and Onder, Introduction to Modeling and Control of Internal Combustion Engine Systems): fuel power
 * = (brake + friction + pumping) / e.
 */
public final class Drive {
    private static final double GRAVITY = 9.80665;
    /** Rotating parts count as this much more mass when accelerating; from memory. */
    private static final double ROTATING_MASS = 1.05;
    /** Lights, pumps, blower and the rest on the alternator, as shaft power, W; common practice, no source. */
    public static final double ACCESSORY_POWER = 900.0;
    /** A gear is held while it asks for no more than this share of the power there is at its speed. */
    private static final double LOAD_SHARE = 0.85;

    private static final double REFERENCE_AIR_DENSITY = 1.2;
    private static final double AIR_GAS_CONSTANT = 287.055;

    private final VehicleSpec spec;
    private final WillansLine fuelLine;

    public Drive(VehicleSpec spec) {
        this.spec = spec;
        this.fuelLine = spec.engine().fuelLine();
    }

    /** Force at the wheels, N; negative when the vehicle pushes. */
    public double force(double speed, double acceleration, double grade, double airDensity) {
        VehicleSpec.RoadLoad road = spec.roadLoad();
        double rolling = speed > 0.0 ? road.constant() + road.linear() * speed : 0.0;
        double air = road.square() * speed * speed * airDensity / REFERENCE_AIR_DENSITY;
        double slope = road.mass() * GRAVITY * grade / Math.sqrt(1.0 + grade * grade);
        return rolling + air + slope + ROTATING_MASS * road.mass() * acceleration;
    }

    /**
     * Fills engine speed and fuel power of a run for a vehicle moving at {@code speed}; ambient, pressure
     * and compressor must already be set.
     *
     * @param speed m/s
     * @param acceleration m/s2
     * @param grade rise over run
     */
    public void apply(Run run, double speed, double acceleration, double grade) {
        double density = run.get(Input.PRESSURE) / (AIR_GAS_CONSTANT * run.get(Input.AMBIENT));
        applyForce(run, speed, force(speed, acceleration, grade, density));
    }

    /**
     * The same for a known force at the wheels.
     *
     * @param speed m/s
     * @param force N, negative when the vehicle pushes
     */
    public void applyForce(Run run, double speed, double force) {
        double wheel = force * speed;
        double driveline = driveline(wheel, speed);
        double brake = driveline + accessories(run);
        double engineSpeed = engineSpeed(speed, Math.max(0.0, brake));
        run.set(Input.SPEED, speed);
        run.set(Input.ENGINE_SPEED, engineSpeed);
        run.set(
                Input.FUEL_POWER,
                run.plant().coefficient(Coefficient.DRIVE_FUEL_LEVEL) * fuelPower(brake, engineSpeed));
    }

    private double driveline(double wheel, double speed) {
        if (speed <= 0.0) {
            return spec.gearbox().idleDragPower();
        }
        double efficiency = spec.gearbox().efficiency();
        return wheel > 0.0 ? wheel / efficiency : wheel * efficiency;
    }

    private double accessories(Run run) {
        double compressor = spec.airConditioning()
                .map(VehicleSpec.AirConditioning::compressorPower)
                .orElse(0.0);
        return ACCESSORY_POWER + compressor * run.get(Input.COMPRESSOR);
    }

    /** Engine speed in the highest gear that can carry the load, rad/s. */
    public double engineSpeed(double speed, double brake) {
        VehicleSpec.Engine engine = spec.engine();
        double wheelSpeed =
                speed / spec.roadLoad().tyreRadius() * spec.gearbox().finalDrive();
        double chosen = Math.max(
                engine.idleSpeed(), wheelSpeed * spec.gearbox().ratios().get(0));
        for (double ratio : spec.gearbox().ratios()) {
            double n = wheelSpeed * ratio;
            boolean pulls = brake <= LOAD_SHARE * engine.ratedPower() * Math.min(1.0, n / engine.ratedSpeed());
            if (n >= spec.gearbox().lowestSpeed() && (pulls || n > engine.ratedSpeed())) {
                chosen = n;
            }
        }
        return Math.max(engine.idleSpeed(), chosen);
    }

    /** Fuel power, W; zero when the vehicle drives the engine hard enough for the fuel to be cut. */
    public double fuelPower(double brake, double engineSpeed) {
        return fuelLine.fuelPower(brake, engineSpeed);
    }
}
