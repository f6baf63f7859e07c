package hotday.study.demo;

import hotday.study.prove.RunData;
import hotday.study.prove.TestStep;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Case.Conditioning;
import hotday.vehicle.cases.Case.Engine;
import hotday.vehicle.cases.Case.Phase;
import hotday.vehicle.cases.Trace;
import hotday.vehicle.cases.Trial;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.random.Well19937c;

/**
 * Drives a virtual car, all of it, over a list of legs with the sheet's own fan schedule and compressor rules, and writes what a logger would
 * have caught: coolant in whole degrees, a little noise on the rest, 2 rows a second.
 */
final class VirtualDrive {
    private static final double TICK = 0.1; // s, the controllers'
    private static final int TICKS_PER_ROW = 5;
    private static final double PULL_AWAY = 1.2; // m/s2
    private static final double BRAKE = 1.8; // m/s2
    /** Until this many seconds the logger runs and the engine stands. */
    private static final double KEY_ON = 5.0;

    private static final double SUN = 500.0; // W/m2
    private static final double HUMIDITY = 0.5;

    private final VehicleSpec spec;
    private final Plant hidden;
    private final Well19937c noise;
    private final double ambient;
    private final StringBuilder rows = new StringBuilder();
    private TestStep held;
    private Phase heldPhase;
    private boolean late; // coolant has been hot in the last phase
    private double speed;
    private int tick;

    VirtualDrive(VehicleSpec spec, Plant hidden, double ambient, long seed) {
        this.spec = spec;
        this.hidden = hidden;
        this.noise = new Well19937c(seed);
        this.ambient = ambient;
    }

    /** The same with a step of a commissioning test after the legs. */
    String record(List<Leg> legs, TestStep step) {
        held = step;
        List<Leg> all = new ArrayList<>(legs);
        all.add(new Leg(step.title(), step.duration(), step.speed(), step.grade(), step.airConditioning()));
        return record(all);
    }

    /** The whole recording as delimited text, header first. */
    String record(List<Leg> legs) {
        rows.append(
                "time [s],speed [km/h],engine speed [rpm],fuel flow [g/s],outside air [degC],barometer [kPa],coolant [degC],"
                        + "oil [degC],fan demand [%],compressor [%]\n");
        List<Phase> phases = new ArrayList<>();
        phases.add(phase(KEY_ON, 0.0, Engine.OFF, false, Optional.empty()));
        legs.forEach(leg -> phases.add(phase(leg)));
        heldPhase = held == null ? null : phases.get(phases.size() - 1);
        Case drive = new Case(
                "drive",
                "drive",
                Case.Start.SOAKED,
                new Case.Day(SUN, HUMIDITY, OptionalDouble.empty()),
                phases,
                List.of());
        boolean open = held != null && held.thermostatBlocked();
        Trial trial = new Trial(spec, open ? RunData.heldOpen(hidden) : hidden, drive);
        trial.begin(ambient);
        for (Phase phase : phases) {
            trial.run().restart();
            for (int i = 0; i < Math.round(phase.duration() / TICK); i++) {
                trial.control(phase, i * TICK);
                hold(trial.run(), phase);
                if (tick++ % TICKS_PER_ROW == 0) {
                    row(trial.run());
                }
                trial.run().advance(TICK);
            }
        }
        return rows.toString();
    }

    /** What the technician holds against schedule and road during the last phase. */
    private void hold(Run run, Phase phase) {
        if (phase != heldPhase) {
            return;
        }
        late |= run.coolantReading() >= TestStep.hot(spec);
        if (held.fan() >= 0.0) {
            run.set(Input.FAN_DEMAND, held.heldBack() && !late ? 0.0 : held.fan());
        }
        if (held.engineSpeed() > 0.0) {
            double drag = spec.gearbox().idleDragPower();
            run.set(Input.ENGINE_SPEED, held.engineSpeed());
            run.set(Input.GEARBOX_SPEED, held.engineSpeed());
            run.set(Input.CRANK_POWER, drag);
            run.set(Input.CONVERTER_HEAT, drag);
            run.set(Input.GEAR_POWER, 0.0);
        }
    }

    private Phase phase(Leg leg) {
        double change = (leg.speed() - speed) / (leg.speed() > speed ? PULL_AWAY : -BRAKE);
        double from = speed;
        double reached = Math.min(change, leg.seconds());
        speed = reached < change ? from + (leg.speed() - from) * reached / change : leg.speed();
        double[] time = change > 0.0 && reached < leg.seconds()
                ? new double[] {0.0, reached, leg.seconds()}
                : new double[] {0.0, leg.seconds()};
        double[] speeds = time.length == 3 ? new double[] {from, speed, speed} : new double[] {from, speed};
        double[] grades = new double[time.length];
        java.util.Arrays.fill(grades, leg.grade());
        return phase(
                leg.seconds(),
                leg.grade(),
                Engine.DRIVE,
                leg.airConditioning(),
                Optional.of(new Trace(time, speeds, grades)));
    }

    private static Phase phase(double seconds, double grade, Engine engine, boolean cooled, Optional<Trace> trace) {
        return new Phase(
                seconds,
                0.0,
                grade,
                engine,
                false,
                cooled ? Conditioning.OUTSIDE_AIR : Conditioning.OFF,
                cooled ? 1.0 : 0.0,
                0.0,
                trace);
    }

    private void row(Run run) {
        double engineSpeed = run.get(Input.ENGINE_SPEED) * 30.0 / Math.PI;
        double fuel =
                engineSpeed > 0.0 ? run.get(Output.FUEL_POWER) / spec.engine().heatingValue() * 1000.0 : 0.0;
        rows.append(String.format(
                Locale.ROOT,
                "%.1f,%.1f,%.0f,%.3f,%.1f,%.0f,%d,%.1f,%.0f,%.0f\n",
                (tick - 1) * TICK,
                run.get(Input.SPEED) * 3.6,
                engineSpeed > 0 ? engineSpeed + 5.0 * noise.nextGaussian() : 0.0,
                fuel > 0 ? Math.max(0.0, fuel * (1.0 + 0.02 * noise.nextGaussian())) : 0.0,
                run.get(Input.AMBIENT) - 273.15 + 0.2 * noise.nextGaussian(),
                run.get(Input.PRESSURE) / 1e3,
                Math.round(run.coolantReading() - 273.15 + 0.2 * noise.nextGaussian()),
                run.get(State.OIL) - 273.15 + 0.3 * noise.nextGaussian(),
                100.0 * run.get(State.FAN),
                100.0 * run.get(Input.COMPRESSOR)));
    }
}
