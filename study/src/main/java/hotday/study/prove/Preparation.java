package hotday.study.prove;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.physics.fluid.Air;
import hotday.signals.channel.Channel;
import hotday.signals.channel.Fact;
import hotday.signals.channel.ModelChannel;
import hotday.signals.channel.Recording;
import hotday.study.events.Event;
import hotday.study.events.Kind;
import hotday.vehicle.controller.Schedule;
import hotday.vehicle.drive.Drive;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.List;
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

    /** What alternator and pumps take, W; common practice, no source. */
    static final double ACCESSORY_POWER = Drive.ACCESSORY_POWER;

    private final Recording recording;
    private final VehicleSpec spec;
    private final ToldSwitching told;
    private final double[] grid;
    private final double step;
    private final GridChannels channels;
    private final double[] inputs;
    private final List<Finding> findings = new ArrayList<>();

    private Preparation(Recording recording, VehicleSpec spec, List<Event> switching) {
        this.recording = recording;
        this.spec = spec;
        this.step = length(recording) > LONG ? COARSE_STEP : FINE_STEP;
        this.grid = grid(recording, step);
        this.channels = new GridChannels(recording, grid, step);
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
        double[] coolant = channels.measured(ModelChannel.COOLANT_TEMPERATURE).orElseThrow();
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
        EngineInputs engine = new EngineInputs(channels, spec, inputs, findings);
        engine.fill(speed);
        double start = GridChannels.first(coolant);
        boolean blocked = RunData.thermostatHeldOpen(recording);
        Plant sheet = Plant.compile(spec);
        new GivenHeats(
                        blocked ? RunData.heldOpen(sheet) : sheet,
                        inputs,
                        step,
                        !compressor && fact("air_conditioning") != Fact.OFF,
                        schedule(fan).isPresent())
                .fill(start);
        Optional<double[]> oil = channels.measured(ModelChannel.OIL_TEMPERATURE);
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
                GridChannels.first(measuredOil),
                fact("fan"),
                heater ? Fact.OFF : fact("heater"),
                compressor ? Fact.OFF : fact("air_conditioning"),
                fan,
                schedule(fan),
                blocked,
                engine.ownFuel(),
                channels.sources(),
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

    private double[] filled(double value) {
        double[] out = new double[grid.length];
        java.util.Arrays.fill(out, value);
        return out;
    }

    private Optional<double[]> optional(ModelChannel channel) {
        return channels.read(channel);
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
            channels.sources().merge(ModelChannel.AMBIENT_TEMPERATURE.key(), ", heat soak taken out", String::concat);
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
        channels.sources()
                .put(ModelChannel.AMBIENT_TEMPERATURE.key(), "intake air of the first minute after a cold start");
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
            channels.sources().put("barometer", "standard pressure at the sheet's altitude");
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
}
