package hotday.study.findings;

import hotday.physics.fluid.MoistAir;
import hotday.study.prove.RunData;
import hotday.vehicle.controller.Controller;
import hotday.vehicle.controller.Inputs;
import hotday.vehicle.controller.Schedule;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;
import org.hipparchus.random.Well19937c;

/**
 * Drives a drawn car by what a recording says of road, engine, weather, compressor and fan command, and gives what its sensors would have
 * shown.
 */
final class Replay {
    /** Longest step of the vehicle, s; the fan takes 0.3 s. */
    private static final double STRIDE = 0.25;

    private static final double BLOWER = 1.0;
    private final RunData data;
    private final boolean cold;
    private final int strides;

    Replay(Log measured) {
        this.data = measured.run();
        this.cold = measured.coldStart();
        this.strides = (int) Math.ceil(data.step() / STRIDE - 1e-9);
    }

    /** With the fan command as recorded. */
    Log of(Car car, long seed) {
        Log log = new Log(data);
        Run run = start(car);
        IdleDip dip = new IdleDip(car);
        Well19937c random = new Well19937c(seed);
        double slugEnds = 0.0;
        for (int i = 0; i < data.size(); i++) {
            inputs(run, car.parts(), i);
            double below = 0.0;
            for (int s = 0; s < strides; s++) {
                dip.tick(run, data.step() / strides);
                run.advance(data.step() / strides);
                below += dip.below() / strides;
            }
            double now = data.time()[i];
            if (run.get(State.JACKET) > Commission.WARM_ENOUGH_FOR_VAPOUR
                    && now > slugEnds
                    && random.nextDouble() < data.step() / Commission.SLUG_EVERY) {
                slugEnds = now + Commission.SLUG_LASTS;
            }
            read(log, i, run, car, now < slugEnds ? -car.parts().slug : 0.0, below);
        }
        return log;
    }

    /** Fan command that the car's own schedule would have given, the fan following it. */
    Log bySchedule(Car car) {
        Log log = new Log(data);
        Run run = start(car);
        Controller controller = new Controller(Schedule.of(car.spec().schedule()));
        Inputs seen = new Inputs();
        int ticks = (int) Math.round(data.step() * Controller.RATE);
        for (int i = 0; i < data.size(); i++) {
            inputs(run, car.parts(), i);
            run.set(Input.FAN_BY_SCHEDULE, 0.0);
            see(run, seen);
            for (int t = 0; t < ticks; t++) {
                controller.step(seen);
            }
            run.set(Input.FAN_DEMAND, car.parts().fanSpeed(controller.outputShare()));
            for (int s = 0; s < strides; s++) {
                run.advance(data.step() / strides);
            }
            log.of(Signal.COMMAND)[i] = controller.outputShare();
        }
        return log;
    }

    private static void see(Run run, Inputs seen) {
        boolean running = run.get(Input.ENGINE_SPEED) > 0.0;
        seen.running(running);
        seen.airConditioning(running && run.get(Input.COMPRESSOR) > 0.5);
        seen.coolantTemperature(run.coolantReading());
        seen.gearboxTemperature(run.get(State.SUMP));
        seen.chargeAirTemperature(run.get(Output.CHARGE_TEMPERATURE));
        seen.headPressure(run.get(Output.HEAD_PRESSURE));
        seen.roadSpeed(run.get(Input.SPEED));
        seen.batteryVoltage(run.get(Output.BUS));
    }

    private Run start(Car car) {
        Run run = new Run(car.plant());
        double ambient = data.input(0, Input.AMBIENT);
        run.start(run.plant().soaked(ambient), 0.0);
        run.warm(cold ? ambient + car.parts().rest : data.startCoolant());
        return run;
    }

    private void inputs(Run run, Parts parts, int row) {
        run.setInputs(data.inputs(), row * Input.COUNT);
        run.set(Input.FAN_BY_SCHEDULE, data.schedule().isPresent() ? 1.0 : 0.0);
        run.set(Input.FAN_DEMAND, parts.fanSpeed(run.get(Input.FAN_DEMAND)));
        run.set(Input.BLOWER, run.get(Input.COMPRESSOR) > 0.0 || run.get(Input.HEATER) > 0.0 ? BLOWER : 0.0);
        run.set(Input.SUN, parts.sun);
        run.set(
                Input.HUMIDITY,
                MoistAir.humidityRatio(run.get(Input.AMBIENT), parts.humidity, run.get(Input.PRESSURE)));
    }

    /** As a gauge of that step shows it; its steps lie at whole degrees Celsius. */
    private static double rounded(double kelvin, double step) {
        return step > 0.0 ? 273.15 + step * Math.round((kelvin - 273.15) / step) : kelvin;
    }

    private static void read(Log log, int i, Run run, Car car, double slug, double below) {
        Parts p = car.parts();
        log.of(Signal.COOLANT)[i] =
                rounded(run.coolantReading() + slug, log.run().coolantResolution());
        log.of(Signal.OIL)[i] = run.get(State.OIL) + p.oilOffset;
        log.of(Signal.GEARBOX)[i] = run.get(State.SUMP) + p.gearboxOffset;
        log.of(Signal.HEAD)[i] = run.get(Output.HEAD_PRESSURE) + p.headOffset;
        log.of(Signal.SUBCOOLING)[i] = Log.saturation(car.spec(), log.of(Signal.HEAD)[i])
                - (run.get(State.CONDENSING) - run.get(Output.SUBCOOLING) + p.liquidOffset);
        log.of(Signal.SUCTION)[i] = run.get(Output.SUCTION_PRESSURE) + p.suctionOffset;
        log.of(Signal.VENT)[i] = run.get(Output.VENT_TEMPERATURE) + p.ventOffset;
        log.of(Signal.VOLTAGE)[i] = run.get(Output.BUS);
        log.of(Signal.CURRENT)[i] = run.get(Output.FAN_CURRENT) * p.currentLevel;
        log.of(Signal.ENGINE_SPEED)[i] = below;
    }
}
