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
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;
import hotday.vehicle.spec.VehicleSpec;

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
    private boolean cutOut;

    Controls(VehicleSpec spec) {
        fan = new Controller(Schedule.of(spec.schedule()));
        compressor = new CompressorRules(spec.airConditioning()
                .map(VehicleSpec.AirConditioning::circuit)
                .map(c -> CompressorLimits.of(c.cutOut(), c.cutIn(), c.lowCutOut(), c.freezeLimit(), c.variable()))
                .orElse(CompressorLimits.standard()));
        rated = spec.engine().ratedPower();
    }

    /** Switched on afresh; {@code warmUp} seconds of the vehicle as it stands bring controllers of a settled vehicle to rest. */
    void begin(Run run, Phase phase, double warmUp) {
        fan.reset();
        compressor.reset();
        for (int i = 0; i < warmUp * Controller.RATE; i++) {
            tick(run, phase);
        }
        cutOut = false;
    }

    void tick(Run run, Phase phase) {
        boolean running = run.get(Input.ENGINE_SPEED) > 0.0;
        boolean asked = phase.conditioning() != Conditioning.OFF && run.plant().conditioned();
        boolean engaged = engaged(run, running, asked);
        run.set(Input.COMPRESSOR, engaged ? 1.0 : 0.0);
        seen.running(running);
        seen.airConditioning(running && compressor.requested());
        seen.coolantTemperature(run.coolantReading());
        seen.gearboxTemperature(run.get(State.SUMP));
        seen.headPressure(run.get(Output.HEAD_PRESSURE));
        seen.roadSpeed(run.get(Input.SPEED));
        seen.batteryVoltage(run.get(Output.BUS));
        fan.step(seen);
        run.set(Input.FAN_DEMAND, fan.outputShare());
    }

    /** Whether coolant or head pressure have cut the compressor out since the start. */
    boolean cutOut() {
        return cutOut;
    }

    private boolean engaged(Run run, boolean running, boolean asked) {
        felt.request(asked, FRESH);
        felt.running(running);
        felt.engineSpeed(run.get(Input.ENGINE_SPEED));
        felt.evaporatorTemperature(run.get(State.EVAPORATING));
        felt.headPressure(run.get(Output.HEAD_PRESSURE));
        felt.suctionPressure(run.get(Output.SUCTION_PRESSURE));
        felt.load(Math.max(0.0, run.get(Output.BRAKE_POWER)) / rated);
        felt.coolantTemperature(run.coolantReading());
        boolean engaged = compressor.step(felt);
        cutOut |= compressor.hold() == Hold.HIGH_PRESSURE || compressor.hold() == Hold.COOLANT;
        return engaged;
    }
}
