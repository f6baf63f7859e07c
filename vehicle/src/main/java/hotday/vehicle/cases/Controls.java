package hotday.vehicle.cases;

import hotday.vehicle.cases.Case.Conditioning;
import hotday.vehicle.cases.Case.Phase;
import hotday.vehicle.controller.CompressorInputs;
import hotday.vehicle.controller.CompressorLimits;
import hotday.vehicle.controller.CompressorRules;
import hotday.vehicle.controller.Controller;
import hotday.vehicle.controller.Hold;
import hotday.vehicle.controller.Inputs;
import hotday.vehicle.controller.Schedule;
import hotday.vehicle.controller.Source;
import hotday.vehicle.controller.Witness;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;
import hotday.vehicle.spec.VehicleSpec;
import java.util.function.Supplier;

/** Fan schedule and compressor rules between the vehicle's readings and its inputs, ten times a second. */
final class Controls {
    /** s. */
    static final double TICK = 1.0 / Controller.RATE;

    /** A request that comes with every tick. */
    private static final int FRESH = 0;

    private final Controller fan;
    private final CompressorRules compressor;
    private final Inputs seen = new Inputs();
    private final CompressorInputs felt = new CompressorInputs();
    private final double rated;
    private final Sensing sensing;
    private final Supplier<FanDrive> drives;
    private FanDrive drive;
    private Witness witness = Witness.NONE;
    private double coolant; // as the lagging sensors have them, K
    private double gearbox;
    private double chargeAir;
    private boolean running;
    private boolean cutOut;

    Controls(VehicleSpec spec, Hardware hardware) {
        this.sensing = hardware.sensing();
        this.drives = hardware.drive();
        this.drive = drives.get();
        fan = new Controller(Schedule.of(spec.schedule()));
        compressor = new CompressorRules(CompressorLimits.of(spec));
        rated = spec.engine().ratedPower();
    }

    void watchedBy(Witness other) {
        witness = other;
    }

    /** Switched on afresh; {@code warmUp} seconds of the vehicle as it stands bring controllers of a settled vehicle to rest. */
    void begin(Run run, Phase phase, double warmUp) {
        fan.reset();
        compressor.reset();
        drive = drives.get();
        coolant = run.coolantReading();
        gearbox = run.get(State.SUMP);
        chargeAir = run.get(Output.CHARGE_TEMPERATURE);
        read(run, phase);
        for (int i = 0; i < warmUp * Controller.RATE; i++) {
            again(run);
        }
        cutOut = false;
    }

    void tick(Run run, Phase phase) {
        read(run, phase);
        again(run);
    }

    /** What follows the vehicle at once. */
    private void read(Run run, Phase phase) {
        running = run.get(Input.ENGINE_SPEED) > 0.0;
        double headPressure = sensing.pressure(run.get(Output.HEAD_PRESSURE));
        felt.request(phase.conditioning() != Conditioning.OFF && run.plant().conditioned(), FRESH);
        felt.running(running);
        felt.engineSpeed(run.get(Input.ENGINE_SPEED));
        felt.evaporatorTemperature(run.get(State.EVAPORATING));
        felt.headPressure(headPressure);
        felt.suctionPressure(run.get(Output.SUCTION_PRESSURE));
        felt.load(Math.max(0.0, run.get(Output.BRAKE_POWER)) / rated);
        seen.running(running);
        seen.headPressure(headPressure);
        seen.roadSpeed(run.get(Input.SPEED));
        seen.batteryVoltage(run.get(Output.BUS));
    }

    /** A tick in which the vehicle is where it was in the last one: sensors that lag come closer, and time goes on. */
    void again(Run run) {
        lag(run);
        boolean engaged = compressor.step(felt);
        cutOut |= compressor.hold() == Hold.HIGH_PRESSURE || compressor.hold() == Hold.COOLANT;
        run.set(Input.COMPRESSOR, engaged ? 1.0 : 0.0);
        seen.airConditioning(running && compressor.requested());
        fan.step(seen);
        witness.tick(seen, fan);
        run.set(Input.FAN_DEMAND, drive.of(fan.outputShare()));
    }

    private void lag(Run run) {
        coolant = sensing.lagged(coolant, run.coolantReading(), TICK);
        gearbox = sensing.lagged(gearbox, run.get(State.SUMP), TICK);
        chargeAir = sensing.lagged(chargeAir, run.get(Output.CHARGE_TEMPERATURE), TICK);
        double shown = sensing.temperature(coolant);
        felt.coolantTemperature(shown);
        seen.coolantTemperature(shown);
        seen.gearboxTemperature(sensing.temperature(gearbox));
        seen.chargeAirTemperature(sensing.temperature(chargeAir));
    }

    /** What decides the fan's demand at present. */
    Source source() {
        return fan.source();
    }

    /** Which rule keeps the compressor off at present. */
    Hold hold() {
        return compressor.hold();
    }

    /** Whether coolant or head pressure have cut the compressor out since the start. */
    boolean cutOut() {
        return cutOut;
    }
}
