package hotday.study.findings;

import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Case.Conditioning;
import hotday.vehicle.cases.Case.Engine;
import hotday.vehicle.cases.Case.Phase;
import hotday.vehicle.cases.Trace;
import hotday.vehicle.cases.Trial;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.random.Well19937c;

/**
 * Drives a virtual car, with whatever is wrong with it, over a commissioning run and writes what the logger would have caught: two rows a second, noise and the
 * steps of usual sensors. The technician switches off when the gauge or the gearbox gets too hot.
 */
final class Commission {
    private static final double TICK = 0.1; // s, the controllers'
    private static final int TICKS_PER_ROW = 5;
    private static final double PULL_AWAY = 1.2; // m/s2
    private static final double BRAKE = 1.8; // m/s2
    private static final double TOO_HOT = 273.15 + 122.0; // gauge
    private static final double GEARBOX_TOO_HOT = 273.15 + 150.0;
    private static final double LEFT_STANDING = 120.0; // s, after switching off too hot
    static final double SLUG_EVERY = 45.0; // s, mean; from memory, like its length
    static final double SLUG_LASTS = 6.0; // s
    static final double WARM_ENOUGH_FOR_VAPOUR = 273.15 + 60.0;

    private final Car car;
    private final Well19937c noise;
    private final double ambient;
    private final StringBuilder rows = new StringBuilder();
    private final IdleDip dip;
    private double speed;
    private int tick;
    private double command;
    private double slugEnds;
    private boolean stopped;

    Commission(Car car, double ambient, long seed) {
        this.car = car;
        this.ambient = ambient;
        this.noise = new Well19937c(seed);
        this.dip = new IdleDip(car);
    }

    /** The whole recording as delimited text, header first. */
    String record(List<Step> steps) {
        rows.append(
                "time [s],speed [km/h],engine speed [rpm],fuel flow [g/s],outside air [degC],intake air [degC],barometer [kPa],"
                        + "coolant [degC],oil [degC],gearbox [degC],fan command [%],fan current [A],compressor [%],high side [kPa],low side [kPa],liquid line [degC],vent [degC],supply [V]\n");
        List<Phase> phases = new ArrayList<>();
        steps.forEach(step -> phases.add(phase(step)));
        Case drive = new Case(
                "commissioning",
                "commissioning run",
                Case.Start.SOAKED,
                new Case.Day(car.parts().sun, car.parts().humidity, OptionalDouble.empty()),
                phases,
                List.of());
        Trial trial = new Trial(car.spec(), car.plant(), drive);
        trial.begin(ambient);
        trial.run().warm(ambient + car.parts().rest);
        for (int i = 0; i < phases.size() && !stopped; i++) {
            drive(trial, phases.get(i), steps.get(i).fan());
        }
        if (stopped) {
            speed = 0.0;
            drive(trial, phase(new Step(LEFT_STANDING, false, 0.0, 0.0, false, -1.0)), -1.0);
        }
        return rows.toString();
    }

    private void drive(Trial trial, Phase phase, double held) {
        Run run = trial.run();
        run.restart();
        boolean before = stopped;
        for (int i = 0; i < Math.round(phase.duration() / TICK) && stopped == before; i++) {
            trial.control(phase, i * TICK);
            command = held >= 0.0 ? held : run.get(Input.FAN_DEMAND);
            run.set(Input.FAN_DEMAND, car.parts().fanSpeed(command));
            dip.tick(run, TICK);
            if (tick++ % TICKS_PER_ROW == 0) {
                row(run);
            }
            run.advance(TICK);
            stopped |= run.coolantReading() > TOO_HOT || run.get(State.SUMP) > GEARBOX_TOO_HOT;
        }
    }

    private Phase phase(Step step) {
        double change = (step.speed() - speed) / (step.speed() > speed ? PULL_AWAY : -BRAKE);
        double from = speed;
        double reached = Math.min(change, step.seconds());
        speed = reached < change ? from + (step.speed() - from) * reached / change : step.speed();
        double[] time = change > 0.0 && reached < step.seconds()
                ? new double[] {0.0, reached, step.seconds()}
                : new double[] {0.0, step.seconds()};
        double[] speeds = time.length == 3 ? new double[] {from, speed, speed} : new double[] {from, speed};
        double[] grades = new double[time.length];
        Arrays.fill(grades, step.grade());
        return new Phase(
                step.seconds(),
                0.0,
                step.grade(),
                step.engine() ? Engine.DRIVE : Engine.OFF,
                false,
                step.airConditioning() ? Conditioning.OUTSIDE_AIR : Conditioning.OFF,
                step.airConditioning() ? 1.0 : 0.0,
                0.0,
                step.engine() ? Optional.of(new Trace(time, speeds, grades)) : Optional.empty());
    }

    private double gauss(double width) {
        return width * noise.nextGaussian();
    }

    /** Vapour passes the sensor now and then once the engine is warm. */
    private double slug(Run run) {
        double now = tick * TICK;
        boolean may = run.get(Input.ENGINE_SPEED) > 0.0 && run.get(State.JACKET) > WARM_ENOUGH_FOR_VAPOUR;
        if (may && now > slugEnds && noise.nextDouble() < TICK * TICKS_PER_ROW / SLUG_EVERY) {
            slugEnds = now + SLUG_LASTS;
        }
        return now < slugEnds ? -car.parts().slug : 0.0;
    }

    private void row(Run run) {
        Parts p = car.parts();
        double engineSpeed = run.get(Input.ENGINE_SPEED) * 30.0 / Math.PI;
        double fuel = engineSpeed > 0.0
                ? run.get(Output.FUEL_POWER) / car.spec().engine().heatingValue() * 1000.0
                : 0.0;
        double intake = ambient - 273.15 + 6.0 * Math.exp(-run.get(Input.SPEED) / 8.0) * (fuel > 0.0 ? 1.0 : 0.0);
        rows.append(String.format(
                Locale.ROOT,
                "%.1f,%.1f,%.0f,%.3f,%.1f,%.0f,%.0f,%d,%.1f,%d,%.0f,%.1f,%.0f,%.0f,%.0f,%.1f,%.1f,%.2f\n",
                (tick - 1) * TICK,
                run.get(Input.SPEED) * 3.6,
                engineSpeed > 0 ? engineSpeed + dip.below() * 30.0 / Math.PI + gauss(5.0) : 0.0,
                fuel > 0 ? Math.max(0.0, fuel * (1.0 + gauss(0.02))) : 0.0,
                ambient - 273.15 + gauss(0.2),
                intake + gauss(0.3),
                run.get(Input.PRESSURE) / 1e3,
                Math.round(run.coolantReading() - 273.15 + slug(run) + gauss(0.2)),
                run.get(State.OIL) - 273.15 + p.oilOffset + gauss(0.3),
                Math.round(run.get(State.SUMP) - 273.15 + p.gearboxOffset + gauss(0.2)),
                100.0 * command,
                Math.max(0.0, run.get(Output.FAN_CURRENT) * p.currentLevel + gauss(0.3)),
                100.0 * run.get(Input.COMPRESSOR),
                (run.get(Output.HEAD_PRESSURE) + p.headOffset) / 1e3 + gauss(5.0),
                (run.get(Output.SUCTION_PRESSURE) + p.suctionOffset) / 1e3 + gauss(3.0),
                run.get(State.CONDENSING) - run.get(Output.SUBCOOLING) - 273.15 + p.liquidOffset + gauss(0.3),
                run.get(Output.VENT_TEMPERATURE) - 273.15 + p.ventOffset + gauss(0.3),
                run.get(Output.BUS) + gauss(0.03)));
    }
}
