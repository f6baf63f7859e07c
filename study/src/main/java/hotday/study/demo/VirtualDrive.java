package hotday.study.demo;

import hotday.physics.fluid.Air;
import hotday.vehicle.controller.Controller;
import hotday.vehicle.controller.Inputs;
import hotday.vehicle.controller.Schedule;
import hotday.vehicle.drive.Drive;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;
import hotday.vehicle.spec.VehicleSpec;
import java.util.List;
import java.util.Locale;
import org.hipparchus.random.Well19937c;

/**
 * Drives a virtual car over a list of legs with the sheet's own fan schedule and writes what a logger would have caught:
 * coolant in whole degrees, a little noise on the rest, 2 rows a second.
 */
final class VirtualDrive {
    private static final double TICK = 0.1; // s, the controller's
    private static final int TICKS_PER_ROW = 5;
    private static final double PULL_AWAY = 1.2; // m/s2
    private static final double BRAKE = 1.8; // m/s2
    /** Until this many seconds the logger runs and the engine stands. */
    private static final double KEY_ON = 5.0;

    private final VehicleSpec spec;
    private final Drive drive;
    private final Controller controller;
    private final Inputs inputs = new Inputs();
    private final Run run;
    private final Well19937c noise;
    private final double ambient;
    private final StringBuilder rows = new StringBuilder();
    private double speed;
    private int tick;

    VirtualDrive(VehicleSpec spec, Plant hidden, double ambient, long seed) {
        this.spec = spec;
        this.drive = new Drive(spec);
        this.controller = new Controller(Schedule.of(spec.schedule()));
        this.run = new Run(hidden);
        this.noise = new Well19937c(seed);
        this.ambient = ambient;
    }

    /** The whole recording as delimited text, header first. */
    String record(List<Leg> legs) {
        rows.append("time [s],speed [km/h],engine speed [rpm],fuel flow [g/s],outside air [degC],coolant [degC],"
                + "oil [degC],fan demand [%],compressor [%]\n");
        run.start(run.plant().soaked(ambient), 0.0);
        run.set(Input.AMBIENT, ambient);
        run.set(Input.PRESSURE, Air.isaPressure(spec.altitude()));
        for (int i = 0; i < Math.round(KEY_ON / TICK); i++) {
            stand();
        }
        for (Leg leg : legs) {
            for (int i = 0; i < Math.round(leg.seconds() / TICK); i++) {
                drive(leg);
            }
        }
        return rows.toString();
    }

    private void stand() {
        run.set(Input.SPEED, 0.0);
        run.set(Input.ENGINE_SPEED, 0.0);
        run.set(Input.FUEL_POWER, 0.0);
        advance(false, false);
    }

    private void drive(Leg leg) {
        double before = speed;
        double gap = leg.speed() - speed;
        speed += Math.max(-BRAKE * TICK, Math.min(PULL_AWAY * TICK, gap));
        run.set(Input.COMPRESSOR, leg.airConditioning() ? 1.0 : 0.0);
        drive.apply(run, speed, (speed - before) / TICK, leg.grade());
        advance(true, leg.airConditioning());
    }

    private void advance(boolean running, boolean airConditioning) {
        inputs.running(running);
        inputs.airConditioning(airConditioning);
        inputs.coolantTemperature(run.coolantReading());
        inputs.headPressure(run.get(Output.HEAD_PRESSURE));
        inputs.roadSpeed(speed);
        controller.step(inputs);
        run.set(Input.FAN_DEMAND, controller.outputShare());
        if (tick % TICKS_PER_ROW == 0) {
            row();
        }
        run.step(TICK);
        tick++;
    }

    private void row() {
        double engineSpeed = run.get(Input.ENGINE_SPEED) * 30.0 / Math.PI;
        double fuel = run.get(Input.FUEL_POWER) / spec.engine().heatingValue() * 1000.0;
        rows.append(String.format(
                Locale.ROOT,
                "%.1f,%.1f,%.0f,%.3f,%.1f,%d,%.1f,%.0f,%.0f\n",
                tick * TICK,
                speed * 3.6,
                engineSpeed > 0 ? engineSpeed + 5.0 * noise.nextGaussian() : 0.0,
                fuel > 0 ? Math.max(0.0, fuel * (1.0 + 0.02 * noise.nextGaussian())) : 0.0,
                run.get(Input.AMBIENT) - 273.15 + 0.2 * noise.nextGaussian(),
                Math.round(run.coolantReading() - 273.15 + 0.2 * noise.nextGaussian()),
                run.get(State.OIL) - 273.15 + 0.3 * noise.nextGaussian(),
                100.0 * run.get(State.FAN),
                100.0 * run.get(Input.COMPRESSOR)));
    }
}
