package hotday.study.prove;

import hotday.core.finding.Finding;
import java.util.ArrayList;
import java.util.List;

/** Load, weather and starts that the fitted runs span, and predictions that lie beyond. */
final class FittedRange {
    /** A prediction counts as extrapolated when its load exceeds the fitted by this factor. */
    private static final double LOAD_BEYOND = 1.15;

    private static final double AMBIENT_BEYOND = 8.0; // K
    private static final double LOAD_WINDOW = 60.0; // s

    private FittedRange() {}

    /** Whether the run was driven in weather far from that of every fitted run. */
    static boolean strangeWeather(RunData run, List<RunData> fitRuns) {
        double ambient = run.meanAmbient();
        return ambient < coldest(fitRuns) - AMBIENT_BEYOND || ambient > warmest(fitRuns) + AMBIENT_BEYOND;
    }

    private static double coldest(List<RunData> fitRuns) {
        return fitRuns.stream().mapToDouble(RunData::meanAmbient).min().orElseThrow();
    }

    private static double warmest(List<RunData> fitRuns) {
        return fitRuns.stream().mapToDouble(RunData::meanAmbient).max().orElseThrow();
    }

    static List<Finding> beyond(RunData run, List<RunData> fitRuns) {
        List<Finding> all = new ArrayList<>();
        double load = run.highestFuelPower(LOAD_WINDOW);
        double fitted = fitRuns.stream()
                .mapToDouble(r -> r.highestFuelPower(LOAD_WINDOW))
                .max()
                .orElse(0.0);
        if (load > LOAD_BEYOND * fitted) {
            all.add(Finding.warning(
                            "beyond-fitted-load",
                            "run " + run.name() + " works the engine harder (" + kilowatts(load)
                                    + " of fuel over a minute) than any fitted run (" + kilowatts(fitted)
                                    + "): the prediction is an extrapolation.")
                    .with("run", run.name())
                    .with("fuel_power_W", load)
                    .with("fitted_fuel_power_W", fitted));
        }
        double ambient = run.meanAmbient();
        if (strangeWeather(run, fitRuns)) {
            all.add(Finding.warning(
                            "beyond-fitted-weather",
                            "run " + run.name() + " was driven at " + degrees(ambient) + ", the fitted runs at "
                                    + degrees(coldest(fitRuns)) + " to " + degrees(warmest(fitRuns)) + ".")
                    .with("run", run.name())
                    .with("mean_ambient_degC", ambient - 273.15));
        }
        if (!run.hotStart() && fitRuns.stream().allMatch(RunData::hotStart)) {
            all.add(Finding.warning(
                            "cold-start-not-fitted",
                            "run " + run.name()
                                    + " starts cold and no fitted run does: heat capacities come from the sheet, so warm-up times are rough.")
                    .with("run", run.name()));
        }
        return all;
    }

    private static String kilowatts(double watts) {
        return Math.round(watts / 1000.0) + " kW";
    }

    private static String degrees(double kelvin) {
        return Math.round(kelvin - 273.15) + " degC";
    }
}
