package hotday.study.prove;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.physics.fluid.Air;
import hotday.signals.channel.Channel;
import hotday.signals.channel.Fact;
import hotday.signals.channel.ModelChannel;
import hotday.signals.channel.Recording;
import hotday.signals.channel.Sampling;
import hotday.study.events.Event;
import hotday.study.events.Kind;
import hotday.vehicle.controller.Schedule;
import hotday.vehicle.drive.Drive;
import hotday.vehicle.drive.DriveTrain;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.Run;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns a recording into the plant's inputs on an even grid and says where each input came from. */
final class Preparation {
    /** Grid of the fit, s: a tenth of the fastest thing a coolant gauge shows. */
    private static final double FINE_STEP = 0.5;
    /** Runs longer than this are put on the coarse grid, s. */
    private static final double LONG = 2400.0;

    private static final double COARSE_STEP = 1.0; // s; engines and their loops do not show the difference
    /** Below this the engine does not run by itself, rad/s (200 rpm). */
    static final double ENGINE_STANDS = 21.0;
    /** Shortest run worth looking at, s. */
    private static final double SHORTEST = 60.0;

    private static final double ACCELERATION_WINDOW = 2.0; // s

    /** What alternator and pumps take, W; common practice, no source. */
    static final double ACCESSORY_POWER = Drive.ACCESSORY_POWER;

    private final Recording recording;
    private final VehicleSpec spec;
    private final ToldSwitching told;
    private final DriveTrain train;
    private final double[] grid;
    private final double step;
    private final double[] inputs;
    private final Map<String, String> sources = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();
    private double[] ownFuel = {};

    private Preparation(Recording recording, VehicleSpec spec, List<Event> switching) {
        this.recording = recording;
        this.spec = spec;
        this.train = new DriveTrain(spec);
        this.step = length(recording) > LONG ? COARSE_STEP : FINE_STEP;
        this.grid = grid(recording, step);
        this.inputs = new double[grid.length * Input.COUNT];
        this.findings.addAll(recording.findings());
        this.told = new ToldSwitching(recording.name(), switching, grid, inputs, findings);
    }

    static RunData of(Recording recording, VehicleSpec spec) {
        return of(recording, spec, List.of());
    }

    /**
     * @param switching what was told of fan and compressor of this run though nobody recorded them; used where it is likely enough and nothing else is known
     */
    static RunData of(Recording recording, VehicleSpec spec, List<Event> switching) {
        return new Preparation(recording, spec, switching).prepare();
    }

    private static double length(Recording recording) {
        double[] time = recording.time();
        return time.length == 0 ? 0.0 : time[time.length - 1] - time[0];
    }

    private static double[] grid(Recording recording, double step) {
        double length = length(recording);
        if (length < SHORTEST) {
            throw InputException.at(
                    Place.of(recording.name()),
                    "run-too-short",
                    "run lasts " + Math.round(length) + " s; at least " + Math.round(SHORTEST)
                            + " s are needed. Record a longer run.");
        }
        double[] grid = new double[(int) Math.floor(length / step)];
        for (int i = 0; i < grid.length; i++) {
            grid[i] = recording.time()[0] + (i + 1) * step;
        }
        return grid;
    }

    private RunData prepare() {
        MissingChannels.refuse(recording.name(), channel -> optional(channel).isPresent());
        double[] coolant = measured(ModelChannel.COOLANT_TEMPERATURE).orElseThrow();
        fill(Input.AMBIENT, ambient(coolant));
        pressure();
        double[] speed = optional(ModelChannel.VEHICLE_SPEED).orElseThrow();
        for (int i = 0; i < speed.length; i++) {
            speed[i] = Math.max(0.0, speed[i]);
        }
        fill(Input.SPEED, speed);
        boolean fan = fan();
        boolean heater = share(ModelChannel.HEATER, Input.HEATER);
        boolean compressor = share(ModelChannel.COMPRESSOR, Input.COMPRESSOR)
                || (spec.airConditioning().isPresent()
                        && fact("air_conditioning") == Fact.UNKNOWN
                        && told.fill(Kind.COMPRESSOR_ON, Kind.COMPRESSOR_OFF, Input.COMPRESSOR, "compressor"));
        engine(speed);
        double start = first(coolant);
        boolean blocked = RunData.thermostatHeldOpen(recording);
        Plant sheet = Plant.compile(spec);
        new GivenHeats(
                        blocked ? RunData.heldOpen(sheet) : sheet,
                        inputs,
                        step,
                        !compressor && fact("air_conditioning") != Fact.OFF,
                        schedule(fan).isPresent())
                .fill(start);
        Optional<double[]> oil = measured(ModelChannel.OIL_TEMPERATURE);
        double[] measuredOil = oil.orElseGet(() -> filled(Double.NaN));
        double resolution = recording
                .channel(ModelChannel.COOLANT_TEMPERATURE)
                .map(Channel::resolution)
                .orElse(0.0);
        return new RunData(
                recording.name(),
                grid,
                step,
                inputs,
                coolant,
                measuredOil,
                resolution,
                start,
                first(measuredOil),
                fact("fan"),
                heater ? Fact.OFF : fact("heater"),
                compressor ? Fact.OFF : fact("air_conditioning"),
                fan,
                schedule(fan),
                blocked,
                ownFuel,
                sources,
                findings);
    }

    private Optional<Schedule> schedule(boolean fanRecorded) {
        boolean inTheCar = spec.fan().control() == VehicleSpec.FanControl.SCHEDULE;
        return !fanRecorded && inTheCar && fact("fan") == Fact.UNKNOWN
                ? Optional.of(Schedule.of(spec.schedule()))
                : Optional.empty();
    }

    private Fact fact(String state) {
        return recording.facts().getOrDefault(state, Fact.UNKNOWN);
    }

    private static double first(double[] values) {
        for (double v : values) {
            if (!Double.isNaN(v)) {
                return v;
            }
        }
        return Double.NaN;
    }

    private double[] filled(double value) {
        double[] out = new double[grid.length];
        java.util.Arrays.fill(out, value);
        return out;
    }

    private Optional<double[]> optional(ModelChannel channel) {
        Optional<double[]> values = recording.has(channel)
                ? Optional.of(recording.sampled(channel, grid, Sampling.MEAN))
                : Optional.empty();
        values.ifPresent(v -> recording
                .channel(channel)
                .ifPresent(c -> sources.put(channel.key(), c.column() + " [" + c.unit() + "]")));
        return values.filter(v -> !Double.isNaN(first(v)));
    }

    /** A channel that the model is held against: what a pause of the logger hides is not measured. */
    private Optional<double[]> measured(ModelChannel channel) {
        return optional(channel).map(v -> Pauses.blank(v, grid, step, recording.time()));
    }

    private void fill(Input slot, double[] values) {
        for (int i = 0; i < values.length; i++) {
            inputs[i * Input.COUNT + slot.index()] = values[i];
        }
    }

    private double[] ambient(double[] coolant) {
        Optional<double[]> own = optional(ModelChannel.AMBIENT_TEMPERATURE);
        if (own.isEmpty()) {
            return ambientFromIntake(coolant);
        }
        double[] ambient = own.get();
        double soak = OutsideTemperature.unsoak(ambient, step);
        if (soak > 0.0) {
            sources.merge(ModelChannel.AMBIENT_TEMPERATURE.key(), ", heat soak taken out", String::concat);
            findings.add(Finding.note(
                            "ambient-heat-soaked",
                            "run " + recording.name() + ": the outside sensor falls by up to " + Math.round(soak)
                                    + " K after the start, as one does that stood in a warm front end; until then the"
                                    + " lowest reading of the following quarter of an hour is used.")
                    .with("run", recording.name())
                    .with("largest_correction_K", soak));
        }
        return ambient;
    }

    private double[] ambientFromIntake(double[] coolant) {
        double intake = optional(ModelChannel.INTAKE_TEMPERATURE)
                .map(t -> OutsideTemperature.fromIntake(t, coolant, step))
                .orElse(Double.NaN);
        if (Double.isNaN(intake)) {
            throw InputException.at(
                    Place.of(recording.name()),
                    "channel-missing",
                    "no ambient_temperature in this run: outside temperature is needed: map a column to"
                            + " ambient_temperature or give a constant");
        }
        sources.put(ModelChannel.AMBIENT_TEMPERATURE.key(), "intake air of the first minute after a cold start");
        findings.add(Finding.warning(
                        "ambient-from-intake",
                        "run " + recording.name()
                                + ": no outside temperature; the engine starts cold and its intake air"
                                + " reads " + Math.round(intake - 273.15)
                                + " degC, which is taken for the whole run.")
                .with("run", recording.name())
                .with("ambient_degC", intake - 273.15));
        return filled(intake);
    }

    private void pressure() {
        Optional<double[]> barometer = optional(ModelChannel.BAROMETER);
        Optional<double[]> altitude = optional(ModelChannel.ALTITUDE);
        if (barometer.isPresent()) {
            fill(Input.PRESSURE, barometer.get());
        } else if (altitude.isPresent()) {
            double[] h = altitude.get();
            for (int i = 0; i < h.length; i++) {
                inputs[i * Input.COUNT + Input.PRESSURE.index()] = Air.isaPressure(h[i]);
            }
        } else {
            fill(Input.PRESSURE, filled(Air.isaPressure(spec.altitude())));
            sources.put("barometer", "standard pressure at the sheet's altitude");
        }
    }

    private boolean fan() {
        boolean recorded =
                share(ModelChannel.FAN_SPEED, Input.FAN_DEMAND) || share(ModelChannel.FAN_DEMAND, Input.FAN_DEMAND);
        if (!recorded && fact("fan") == Fact.ON) {
            fill(Input.FAN_DEMAND, filled(1.0));
        }
        boolean open =
                !recorded && fact("fan") == Fact.UNKNOWN && schedule(false).isEmpty();
        return recorded || (open && told.fill(Kind.FAN_ON, Kind.FAN_OFF, Input.FAN_DEMAND, "fan"));
    }

    private boolean share(ModelChannel channel, Input slot) {
        Optional<double[]> values = optional(channel);
        values.ifPresent(v -> {
            for (int i = 0; i < v.length; i++) {
                inputs[i * Input.COUNT + slot.index()] = Math.min(1.0, Math.max(0.0, v[i]));
            }
        });
        return values.isPresent();
    }

    private void engine(double[] speed) {
        Optional<double[]> engineSpeed = optional(ModelChannel.ENGINE_SPEED);
        Optional<double[]> force = optional(ModelChannel.TRACTIVE_FORCE);
        Optional<double[]> manifold =
                engineSpeed.isPresent() ? optional(ModelChannel.MANIFOLD_PRESSURE) : Optional.empty();
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
        Optional<double[]> fuel = optional(ModelChannel.FUEL_FLOW).filter(f -> largest(f) > 0.0);
        if (fuel.isPresent()) {
            return fuel;
        }
        Optional<double[]> air = optional(ModelChannel.AIR_FLOW).filter(f -> largest(f) > 0.0);
        if (air.isEmpty() || spec.engine().fuel() != VehicleSpec.Fuel.PETROL) {
            return Optional.empty();
        }
        if (breathesFreely) {
            findings.add(Finding.warning(
                            "air-flow-is-no-fuel",
                            "run " + recording.name() + ": at idle the intake manifold holds "
                                    + Math.round(100.0 * idleShare)
                                    + " % of the outside pressure; the sheet's petrol engine would be throttled there, a"
                                    + " diesel is not. Air flow is not turned into fuel. Check 'fuel' in the sheet.")
                    .with("run", recording.name())
                    .with("idle_manifold_share", idleShare));
            return Optional.empty();
        }
        sources.put("fuel_flow", "air flow over the stoichiometric ratio");
        double ratio = spec.engine().stoichiometricRatio();
        return air.map(a -> java.util.Arrays.stream(a).map(v -> v / ratio).toArray());
    }

    private void workedOut(String from, boolean blind) {
        ownFuel = new double[grid.length];
        sources.put("fuel_flow", from);
        findings.add(Finding.warning(
                        "fuel-worked-out",
                        "run " + recording.name() + ": no usable fuel or air flow; fuel is worked out from " + from
                                + (blind ? ", so grades and load are not seen" : "") + ".")
                .with("run", recording.name())
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
            sources.put("engine_speed", RunData.GEARS_OF_THE_SHEET);
        }
        Drive drive = new Drive(spec);
        Run run = new Run(Plant.compile(spec));
        double heating = spec.engine().heatingValue();
        boolean[] burning = boost.map(b -> burning(manifold.orElseThrow(), engineSpeed.orElseThrow(), speed))
                .orElseGet(() -> new boolean[grid.length]);
        for (int i = 0; i < grid.length; i++) {
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
            boolean turns = n >= ENGINE_STANDS;
            inputs[at + Input.ENGINE_SPEED.index()] = turns ? n : 0.0;
            inputs[at + Input.FUEL_POWER.index()] = turns ? Math.max(0.0, own) : 0.0;
            if (turns && ownFuel.length > 0) {
                ownFuel[i] = burning[i]
                        ? inputs[at + Input.FUEL_POWER.index()]
                        : spec.engine().fuelLine().fuelPower(ACCESSORY_POWER, n);
            }
            if (turns) {
                driveline(at);
            }
        }
    }

    private boolean[] burning(double[] manifold, double[] engineSpeed, double[] speed) {
        double idle = BoostFuel.idlePressure(manifold, engineSpeed, speed);
        boolean[] burning = FilterBurning.in(manifold, engineSpeed, idle, step);
        int rows = 0;
        for (boolean b : burning) {
            rows += b ? 1 : 0;
        }
        if (rows > 0) {
            findings.add(Finding.note(
                            "filter-burning",
                            "run " + recording.name() + ": for " + Math.round(rows * step / 60.0)
                                    + " min the intake of the diesel is throttled, as it is while its exhaust filter burns"
                                    + " itself clean; fuel is worked out from the air that the exhaust's heat needs.")
                    .with("run", recording.name())
                    .with("length_s", rows * step));
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
                - ACCESSORY_POWER
                - engaged * compressor;
        double slip = train.slipHeat(inputs[at + Input.SPEED.index()], engineSpeed, crank);
        inputs[at + Input.CRANK_POWER.index()] = crank;
        inputs[at + Input.CONVERTER_HEAT.index()] = slip;
        inputs[at + Input.GEAR_POWER.index()] = crank - slip;
        inputs[at + Input.GEARBOX_SPEED.index()] = engineSpeed;
    }

    private double acceleration(double[] speed, int i) {
        int half = (int) Math.round(0.5 * ACCELERATION_WINDOW / step);
        int before = Math.max(0, i - half);
        int after = Math.min(speed.length - 1, i + half);
        return after > before ? (speed[after] - speed[before]) / ((after - before) * step) : 0.0;
    }
}
