package hotday.study.prove;

import hotday.vehicle.controller.Controller;
import hotday.vehicle.controller.Inputs;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;
import java.util.Optional;

/** Runs the plant over a recorded run from its inputs and its first readings only. */
final class Simulation {
    private Simulation() {}

    /**
     * @param z the unknowns; start states are taken from here
     * @param coolant filled with the reading the car's sensor would show, K
     * @param oil filled with oil temperature, K
     */
    static void run(
            Unknowns unknowns, Plant plant, double[] z, RunData data, Branch branch, double[] coolant, double[] oil) {
        Run run = new Run(data.asItWas(plant));
        start(run, unknowns, z, data);
        double level = unknowns.workedOutFuel(z);
        Optional<Controller> controller = data.schedule().map(Controller::new);
        Inputs seen = new Inputs();
        for (int i = 0; i < data.size(); i++) {
            run.setInputs(data.inputs(), i * Input.COUNT);
            if (data.fuelWorkedOut()) {
                double load = Math.max(0.0, run.get(Input.FUEL_POWER) - data.ownFuel()[i]);
                run.set(Input.FUEL_POWER, run.get(Input.FUEL_POWER) + (level - 1.0) * load);
            }
            if (controller.isPresent()) {
                run.set(Input.FAN_DEMAND, scheduled(controller.get(), seen, run, branch, data.step()));
            }
            branch.apply(run);
            run.step(data.step());
            coolant[i] = run.coolantReading();
            oil[i] = run.get(State.OIL);
        }
    }

    /** Runs the controller at its own rate over one grid step, on the readings at the start of the step. */
    private static double scheduled(Controller controller, Inputs seen, Run run, Branch branch, double step) {
        boolean running = run.get(Input.ENGINE_SPEED) > 0.0;
        seen.running(running);
        seen.airConditioning(running && (branch.airConditioning() || run.get(Input.COMPRESSOR) > 0.5));
        seen.coolantTemperature(run.coolantReading());
        seen.chargeAirTemperature(run.get(Output.CHARGE_TEMPERATURE));
        seen.headPressure(run.get(Output.HEAD_PRESSURE));
        seen.roadSpeed(run.get(Input.SPEED));
        for (int tick = 0; tick < Math.round(step * Controller.RATE); tick++) {
            controller.step(seen);
        }
        return controller.outputShare();
    }

    static void start(Run run, Unknowns unknowns, double[] z, RunData data) {
        double coolant = data.startCoolant();
        run.start(run.plant().soaked(coolant), data.time()[0] - data.step());
        if (data.hasOil()) {
            run.set(State.OIL, data.startOil());
        }
        if (data.hotStart()) {
            double ambient = data.input(0, Input.AMBIENT);
            double radiator = ambient + unknowns.startRadiator(z) * (coolant - ambient);
            run.set(State.RADIATOR_INLET, radiator);
            run.set(State.RADIATOR_MIDDLE, radiator);
            run.set(State.RADIATOR_OUTLET, radiator);
            run.set(State.METAL, coolant + unknowns.startMetal(z));
        }
    }
}
