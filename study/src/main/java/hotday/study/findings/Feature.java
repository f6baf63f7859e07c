package hotday.study.findings;

import java.util.ArrayList;
import java.util.List;

/**
 * One number that a run gives about a car.
 *
 * @param at s after start or stop, where it belongs to one moment
 * @param floor by how much it may differ from the best model, SI: gauge and what the model leaves out; common practice, no source
 */
record Feature(Signal signal, Stat stat, Window window, double at, double floor) {
    private static final double KELVIN = 1.0;
    /** Whether a loaded alternator just holds or just does not hangs on its heat and on the battery. */
    private static final double WEAK_SUPPLY = 0.35; // V

    private static final double RPM = Math.PI / 30.0;

    /** What a schedule does by itself, so it is drawn with the fan following it. */
    static final Feature TURNS = new Feature(Signal.COMMAND, Stat.TURNS, Window.ALL, 0.0, 1.5);

    static List<Feature> all() {
        List<Feature> all = new ArrayList<>();
        for (Signal s : List.of(Signal.COOLANT, Signal.OIL, Signal.GEARBOX)) {
            all.add(new Feature(s, Stat.MEAN, Window.COLD_SOAK, 0.0, 0.7));
        }
        all.add(new Feature(Signal.HEAD, Stat.MEAN, Window.COLD_SOAK, 0.0, 15e3));
        for (double at : new double[] {120.0, 240.0, 360.0, 480.0, 660.0}) {
            all.add(new Feature(Signal.COOLANT, Stat.AFTER_START, Window.ALL, at, 1.5 * KELVIN));
        }
        for (Window w : List.of(
                Window.IDLE_QUIET,
                Window.IDLE_FAN,
                Window.IDLE_FULL,
                Window.IDLE_COOLED,
                Window.IDLE_LOADED,
                Window.ROAD,
                Window.ROAD_COOLED,
                Window.CLIMB)) {
            all.add(new Feature(Signal.COOLANT, Stat.MEAN, w, 0.0, KELVIN));
        }
        for (Window w : List.of(Window.IDLE_QUIET, Window.IDLE_FAN, Window.IDLE_FULL, Window.IDLE_COOLED)) {
            all.add(new Feature(Signal.COOLANT, Stat.SLOPE, w, 0.0, 0.7 * KELVIN));
        }
        all.add(new Feature(Signal.COOLANT, Stat.HIGHEST, Window.ALL, 0.0, 1.5 * KELVIN));
        all.add(new Feature(Signal.COOLANT, Stat.AFTER_STOP, Window.KEY_OFF, 60.0, 1.5 * KELVIN));
        all.add(new Feature(Signal.COOLANT, Stat.AFTER_STOP, Window.KEY_OFF, 140.0, 1.5 * KELVIN));
        all.add(new Feature(Signal.COOLANT, Stat.ROUGHNESS, Window.ALL, 0.0, 0.3 * KELVIN));
        for (Window w : List.of(Window.ROAD, Window.CLIMB)) {
            all.add(new Feature(Signal.OIL, Stat.MEAN, w, 0.0, 2.0 * KELVIN));
        }
        for (Window w : List.of(Window.IDLE_COOLED, Window.ROAD, Window.ROAD_COOLED, Window.CLIMB)) {
            all.add(new Feature(Signal.GEARBOX, Stat.MEAN, w, 0.0, 4.0 * KELVIN));
        }
        all.add(new Feature(Signal.GEARBOX, Stat.HIGHEST, Window.ALL, 0.0, 4.0 * KELVIN));
        for (Window w : List.of(Window.IDLE_COOLED, Window.IDLE_LOADED, Window.ROAD_COOLED, Window.CLIMB)) {
            all.add(new Feature(Signal.HEAD, Stat.MEAN, w, 0.0, 35e3));
            all.add(new Feature(Signal.SUCTION, Stat.MEAN, w, 0.0, 10e3));
            all.add(new Feature(Signal.SUBCOOLING, Stat.MEAN, w, 0.0, 1.5 * KELVIN));
            all.add(new Feature(Signal.VENT, Stat.MEAN, w, 0.0, 1.0 * KELVIN));
        }
        for (Window w :
                List.of(Window.IDLE_QUIET, Window.IDLE_FAN, Window.IDLE_FULL, Window.IDLE_COOLED, Window.IDLE_LOADED)) {
            all.add(new Feature(Signal.CURRENT, Stat.MEAN, w, 0.0, 0.7));
            all.add(new Feature(Signal.VOLTAGE, Stat.MEAN, w, 0.0, w == Window.IDLE_LOADED ? WEAK_SUPPLY : 0.08));
        }
        all.add(new Feature(Signal.CURRENT, Stat.MEAN, Window.ROAD_COOLED, 0.0, 0.7));
        all.add(new Feature(Signal.VOLTAGE, Stat.MEAN, Window.ROAD, 0.0, 0.08));
        all.add(TURNS);
        all.add(new Feature(Signal.ENGINE_SPEED, Stat.DIP, Window.ALL, 0.0, 10.0 * RPM));
        return all;
    }

    /** Of a log; NaN where it does not tell. */
    double of(Log log, Windows windows) {
        return log.has(signal) ? stat.of(log.of(signal), windows, window, at) : Double.NaN;
    }

    /** Whether it is a difference, not a reading. */
    boolean difference() {
        return stat == Stat.SLOPE || stat == Stat.AFTER_STOP || stat == Stat.ROUGHNESS || stat == Stat.DIP;
    }

    String unit() {
        boolean temperature = signal.unit().equals("degC");
        return switch (stat) {
            case SLOPE -> "K/min";
            case TURNS -> "turns";
            default -> difference() && temperature ? "K" : signal.unit();
        };
    }

    /** SI to {@link #unit}. */
    double shown(double si) {
        return difference() && signal.unit().equals("degC") ? si : signal.shown(si);
    }

    /** A spread of it. */
    double shownSpread(double si) {
        return signal.shown(si) - signal.shown(0.0);
    }

    String words() {
        return switch (stat) {
            case MEAN -> signal.words() + " " + window.words();
            case HIGHEST -> "highest " + signal.words();
            case SLOPE -> "change of " + signal.words() + " " + window.words();
            case AFTER_START -> signal.words() + " " + Math.round(at) + " s after the start";
            case AFTER_STOP -> "rise of " + signal.words() + " in " + Math.round(at) + " s after switching off";
            case ROUGHNESS -> "unrest of the " + signal.words() + " reading";
            case TURNS -> "turns of the fan command in four minutes";
            case DIP -> "fall of engine speed when the compressor comes in";
        };
    }

    /** First and last second it was read; empty when it was not. */
    double[] span(Windows windows) {
        double[] time = windows.run().time();
        return switch (stat) {
            case AFTER_START -> {
                double t = time[Math.min(time.length - 1, windows.start())];
                yield new double[] {t, t + at};
            }
            case AFTER_STOP -> {
                double t = time[Math.max(0, windows.stop())];
                yield new double[] {t, t + at};
            }
            default -> windows.span(window);
        };
    }
}
