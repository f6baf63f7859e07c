package hotday.study.prove;

import hotday.core.finding.Finding;
import hotday.signals.channel.ModelChannel;
import hotday.vehicle.drive.Drive;
import hotday.vehicle.drive.DriveTrain;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.Run;
import hotday.vehicle.spec.VehicleSpec;
import java.util.List;
import java.util.Optional;

/** Engine speed, fuel and driveline of a recorded run: recorded, or worked out from what was; order in docs/physics/prove.md. */
final class EngineInputs {
    private static final double ACCELERATION_WINDOW = 2.0; // s

    private final GridChannels channels;
    private final VehicleSpec spec;
    private final DriveTrain train;
    private final double[] inputs;
    private final List<Finding> findings;
    private double[] ownFuel = {};

    /**
     * @param inputs table of the run's inputs, {@link Input#COUNT} values a row, with outside pressure and what is known of the compressor
     * @param findings what is found is added here
     */
    EngineInputs(GridChannels channels, VehicleSpec spec, double[] inputs, List<Finding> findings) {
        this.channels = channels;
        this.spec = spec;
        this.train = new DriveTrain(spec);
        this.inputs = inputs;
        this.findings = findings;
    }

    /** As in {@link RunData}: fuel power the engine needs for itself, W a row; empty where fuel was recorded. */
    double[] ownFuel() {
        return ownFuel;
    }

    /** Fills engine speed, fuel and driveline for a road speed, m/s a row. */
    void fill(double[] speed) {
        Optional<double[]> engineSpeed = channels.read(ModelChannel.ENGINE_SPEED);
        Optional<double[]> force = channels.read(ModelChannel.TRACTIVE_FORCE);
        Optional<double[]> manifold =
                engineSpeed.isPresent() ? channels.read(ModelChannel.MANIFOLD_PRESSURE) : Optional.empty();
        double outside = inputs[Input.PRESSURE.index()];
        double idle = manifold.map(m -> BoostFuel.idlePressure(m, engineSpeed.get(), speed))
                .orElse(Double.NaN);
        boolean free = BoostFuel.breathesFreely(idle, outside);
        Optional<double[]> fuel = fuelFlow(free, idle / outside);
        Optional<BoostFuel> boost = fuel.isEmpty() && force.isEmpty() && free && BoostFuel.suits(spec)
                ? Optional.of(BoostFuel.of(spec, idle, outside))
                : Optional.empty();
        if (fuel.isEmpty()) {
            workedOut(
                    force.isPresent()
                            ? "recorded force at the wheels"
                            : boost.isPresent()
                                    ? "manifold pressure and engine speed"
                                    : "road load from speed and its change",
                    force.isEmpty() && boost.isEmpty());
        }
        load(speed, engineSpeed, fuel, force, boost, manifold);
    }

    /**
     * Fuel flow from its channel, or from air flow on a petrol engine, whose mixture is controlled.
     *
     * @param breathesFreely the manifold of the idling engine is not throttled, so no petrol engine
     * @param idleShare its pressure over the outside's
     */
    private Optional<double[]> fuelFlow(boolean breathesFreely, double idleShare) {
        Optional<double[]> fuel = channels.read(ModelChannel.FUEL_FLOW).filter(f -> largest(f) > 0.0);
        if (fuel.isPresent()) {
            return fuel;
        }
        Optional<double[]> air = channels.read(ModelChannel.AIR_FLOW).filter(f -> largest(f) > 0.0);
        if (air.isEmpty() || spec.engine().fuel() != VehicleSpec.Fuel.PETROL) {
            return Optional.empty();
        }
        if (breathesFreely) {
            findings.add(Finding.warning(
                            "air-flow-is-no-fuel",
                            "run " + channels.name() + ": at idle the intake manifold holds "
                                    + Math.round(100.0 * idleShare)
                                    + " % of the outside pressure; the sheet's petrol engine would be throttled there, a"
                                    + " diesel is not. Air flow is not turned into fuel. Check 'fuel' in the sheet.")
                    .with("run", channels.name())
                    .with("idle_manifold_share", idleShare));
            return Optional.empty();
        }
        channels.sources().put("fuel_flow", "air flow over the stoichiometric ratio");
        double ratio = spec.engine().stoichiometricRatio();
        return air.map(a -> java.util.Arrays.stream(a).map(v -> v / ratio).toArray());
    }

    private void workedOut(String from, boolean blind) {
        ownFuel = new double[channels.size()];
        channels.sources().put("fuel_flow", from);
        findings.add(Finding.warning(
                        "fuel-worked-out",
                        "run " + channels.name() + ": no usable fuel or air flow; fuel is worked out from " + from
                                + (blind ? ", so grades and load are not seen" : "") + ".")
                .with("run", channels.name())
                .with("source", from));
    }

    private static double largest(double[] values) {
        double largest = 0.0;
        for (double v : values) {
            largest = Math.max(largest, Double.isNaN(v) ? 0.0 : v);
        }
        return largest;
    }

    private void load(
            double[] speed,
            Optional<double[]> engineSpeed,
            Optional<double[]> fuel,
            Optional<double[]> force,
            Optional<BoostFuel> boost,
            Optional<double[]> manifold) {
        if (engineSpeed.isEmpty()) {
            channels.sources().put("engine_speed", RunData.GEARS_OF_THE_SHEET);
        }
        Drive drive = new Drive(spec);
        Run run = new Run(Plant.compile(spec));
        double heating = spec.engine().heatingValue();
        boolean[] burning = boost.map(b -> burning(manifold.orElseThrow(), engineSpeed.orElseThrow(), speed))
                .orElseGet(() -> new boolean[channels.size()]);
        for (int i = 0; i < channels.size(); i++) {
            int at = i * Input.COUNT;
            run.setInputs(inputs, at);
            if (force.isPresent() && !Double.isNaN(force.get()[i])) {
                drive.applyForce(run, speed[i], force.get()[i]);
            } else {
                drive.apply(run, speed[i], acceleration(speed, i), 0.0);
            }
            double n = engineSpeed.isPresent() ? engineSpeed.get()[i] : run.get(Input.ENGINE_SPEED);
            double own = fuel.isPresent() ? heating * fuel.get()[i] : run.get(Input.FUEL_POWER);
            if (boost.isPresent() && !Double.isNaN(manifold.get()[i])) {
                own = boost.get().power(manifold.get()[i], n);
                own = burning[i] ? Math.max(own, FilterBurning.fuelPower(spec.engine(), manifold.get()[i], n)) : own;
            }
            boolean turns = n >= Preparation.ENGINE_STANDS;
            inputs[at + Input.ENGINE_SPEED.index()] = turns ? n : 0.0;
            inputs[at + Input.FUEL_POWER.index()] = turns ? Math.max(0.0, own) : 0.0;
            if (turns && ownFuel.length > 0) {
                ownFuel[i] = burning[i]
                        ? inputs[at + Input.FUEL_POWER.index()]
                        : spec.engine().fuelLine().fuelPower(Preparation.ACCESSORY_POWER, n);
            }
            if (turns) {
                driveline(at);
            }
        }
    }

    private boolean[] burning(double[] manifold, double[] engineSpeed, double[] speed) {
        double idle = BoostFuel.idlePressure(manifold, engineSpeed, speed);
        boolean[] burning = FilterBurning.in(manifold, engineSpeed, idle, channels.step());
        int rows = 0;
        for (boolean b : burning) {
            rows += b ? 1 : 0;
        }
        if (rows > 0) {
            findings.add(Finding.note(
                            "filter-burning",
                            "run " + channels.name() + ": for " + Math.round(rows * channels.step() / 60.0)
                                    + " min the intake of the diesel is throttled, as it is while its exhaust filter burns"
                                    + " itself clean; fuel is worked out from the air that the exhaust's heat needs.")
                    .with("run", channels.name())
                    .with("length_s", rows * channels.step()));
        }
        return burning;
    }

    /** What the driveline takes from the crank: what the fuel stands for less the accessories. */
    private void driveline(int at) {
        double engineSpeed = inputs[at + Input.ENGINE_SPEED.index()];
        double engaged = inputs[at + Input.COMPRESSOR.index()];
        double compressor = spec.airConditioning()
                .map(VehicleSpec.AirConditioning::compressorPower)
                .orElse(0.0);
        double crank = spec.engine().fuelLine().brakePower(inputs[at + Input.FUEL_POWER.index()], engineSpeed)
                - Preparation.ACCESSORY_POWER
                - engaged * compressor;
        double slip = train.slipHeat(inputs[at + Input.SPEED.index()], engineSpeed, crank);
        inputs[at + Input.CRANK_POWER.index()] = crank;
        inputs[at + Input.CONVERTER_HEAT.index()] = slip;
        inputs[at + Input.GEAR_POWER.index()] = crank - slip;
        inputs[at + Input.GEARBOX_SPEED.index()] = engineSpeed;
    }

    private double acceleration(double[] speed, int i) {
        int half = (int) Math.round(0.5 * ACCELERATION_WINDOW / channels.step());
        int before = Math.max(0, i - half);
        int after = Math.min(speed.length - 1, i + half);
        return after > before ? (speed[after] - speed[before]) / ((after - before) * channels.step()) : 0.0;
    }
}
