package hotday.study.findings;

import hotday.study.prove.RunData;
import hotday.vehicle.plant.Input;
import hotday.vehicle.spec.VehicleSpec;

/** Which rows of a run belong to which situation; decided from what drove the car, so that every drawn car is looked at in the same rows. */
final class Windows {
    private static final double STANDS = 0.5; // m/s
    private static final double ROAD = 15.0; // m/s
    private static final double HIGH_LOAD = 0.22; // fuel over that of rated power
    private static final double SLOW_ROAD = 23.0; // m/s, above which drag makes the load
    private static final double LOAD_MEAN = 20.0; // s
    private static final double SLOW_FAN = 0.15;
    private static final double FAST_FAN = 0.7;
    /** A cold engine is looked at from this long after its start, a hot one earlier, s. */
    private static final double WARMING = 480.0;

    private static final double SETTLING = 120.0;
    private static final double EFFICIENCY = 0.33; // rated; common practice, no source

    private final RunData run;
    private final Window[] rows;
    private final int start;
    private final int stop;
    private final boolean cold;

    Windows(Log measured, VehicleSpec spec) {
        this.run = measured.run();
        this.start = firstRunning(run);
        this.stop = lastRunning(run);
        this.cold = measured.coldStart();
        this.rows = new Window[run.size()];
        double rated = spec.engine().ratedPower() / EFFICIENCY;
        Window last = Window.OTHER;
        double since = 0.0;
        double load = 0.0;
        for (int i = 0; i < rows.length; i++) {
            load += Math.min(1.0, run.step() / LOAD_MEAN) * (run.input(i, Input.FUEL_POWER) - load);
            Window now = of(i, load / rated);
            since = now == last ? since + run.step() : 0.0;
            last = now;
            rows[i] = since >= now.settle() ? now : Window.OTHER;
        }
    }

    private static int firstRunning(RunData run) {
        int i = 0;
        while (i < run.size() && !(run.input(i, Input.ENGINE_SPEED) > 0.0)) {
            i++;
        }
        return i;
    }

    private static int lastRunning(RunData run) {
        int i = run.size() - 1;
        while (i >= 0 && !(run.input(i, Input.ENGINE_SPEED) > 0.0)) {
            i--;
        }
        return i;
    }

    private Window of(int i, double load) {
        if (i < start) {
            return Window.COLD_SOAK;
        }
        if (i > stop) {
            return Window.KEY_OFF;
        }
        double sinceStart = (i - start) * run.step();
        if (sinceStart < (cold ? WARMING : SETTLING)) {
            return Window.OTHER;
        }
        boolean cooled = run.input(i, Input.COMPRESSOR) > 0.5;
        double speed = run.input(i, Input.SPEED);
        if (speed > STANDS) {
            return load > HIGH_LOAD && speed < SLOW_ROAD
                    ? Window.CLIMB
                    : speed < ROAD ? Window.OTHER : cooled ? Window.ROAD_COOLED : Window.ROAD;
        }
        double fan = run.input(i, Input.FAN_DEMAND);
        if (cooled) {
            return fan < FAST_FAN ? Window.IDLE_COOLED : Window.IDLE_LOADED;
        }
        return fan < SLOW_FAN ? Window.IDLE_QUIET : fan < FAST_FAN ? Window.IDLE_FAN : Window.IDLE_FULL;
    }

    /** Whether engine or compressor were switched, or the car stopped or drove off, at a row. */
    boolean switched(int row) {
        return row > 0
                && (on(row, Input.COMPRESSOR) != on(row - 1, Input.COMPRESSOR)
                        || on(row, Input.SPEED) != on(row - 1, Input.SPEED)
                        || on(row, Input.ENGINE_SPEED) != on(row - 1, Input.ENGINE_SPEED));
    }

    private boolean on(int row, Input input) {
        return run.input(row, input) > STANDS;
    }

    RunData run() {
        return run;
    }

    boolean in(Window window, int row) {
        return window == Window.ALL || rows[row] == window;
    }

    /** Started at about the temperature of the air. */
    boolean cold() {
        return cold;
    }

    /** First row with the engine running. */
    int start() {
        return start;
    }

    /** Last one. */
    int stop() {
        return stop;
    }

    /** First and last second of a situation; empty when it never was. */
    double[] span(Window window) {
        double from = Double.NaN;
        double to = Double.NaN;
        for (int i = 0; i < rows.length; i++) {
            if (in(window, i)) {
                from = Double.isNaN(from) ? run.time()[i] : from;
                to = run.time()[i];
            }
        }
        return Double.isNaN(from) ? new double[0] : new double[] {from, to};
    }
}
