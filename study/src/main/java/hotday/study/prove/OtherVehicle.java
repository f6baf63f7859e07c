package hotday.study.prove;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.vehicle.drive.Drive;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.Run;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a recording shows that the sheet's vehicle cannot do, before anything is fitted: a thermal model with thirty unknowns follows
 * the coolant of nearly every car, so its residuals do not tell whose run it is. Limits and how they were found:
 * docs/physics/prove.md.
 */
final class OtherVehicle {
    /** Of the engine's most, rated: what no engine exceeds by chance, mean over {@link #FUEL_TIME}. */
    private static final double FUEL_BEYOND = 1.3;

    private static final double FUEL_TIME = 10.0; // s
    /** Engines turn up to some 1.2 times rated speed. */
    private static final double SPEED_BEYOND = 1.35;

    private static final double SPEED_TIME = 5.0; // s
    /** Own recordings of an open data set and of the demo lay at 0.93 to 1.55. */
    private static final double LIGHT = 0.65;

    private static final double HEAVY = 2.0;
    private static final double ROLLING = 8.0; // m/s
    private static final double ROLLING_TIME = 300.0; // s
    private static final double RPM = Math.PI / 30.0;

    private final VehicleSpec spec;

    OtherVehicle(VehicleSpec spec) {
        this.spec = spec;
    }

    /** Faults, none when nothing speaks against the sheet. */
    List<Finding> evidence(RunData run) {
        List<Finding> all = new ArrayList<>();
        if (run.engineSpeedRecorded()) {
            new GearLines(spec).foreign(run).ifPresent(f -> all.add(gears(run, f)));
            double fastest = highest(run, Input.ENGINE_SPEED, SPEED_TIME);
            if (fastest > SPEED_BEYOND * spec.engine().ratedSpeed()) {
                all.add(speed(run, fastest));
            }
        }
        double most = spec.engine()
                .fuelLine()
                .fuelPower(spec.engine().ratedPower(), spec.engine().ratedSpeed());
        double burned = highest(run, Input.FUEL_POWER, FUEL_TIME);
        if (!run.fuelWorkedOut() && burned > FUEL_BEYOND * most) {
            all.add(fuel(run, burned, most));
        }
        return all;
    }

    /**
     * A warning where recorded fuel is far from what the sheet's vehicle needs for the road: another vehicle, a trailer left
     * at home, or a mountain. Not enough to refuse a run.
     */
    Optional<Finding> doubt(RunData run) {
        if (run.fuelWorkedOut()) {
            return Optional.empty();
        }
        double share = fuelOverRoadLoad(run);
        return share >= LIGHT && share <= HEAVY || Double.isNaN(share)
                ? Optional.empty()
                : Optional.of(Finding.warning(
                                "fuel-unlike-sheet",
                                String.format(
                                        Locale.ROOT,
                                        "run %s burned %.2f times the fuel that the sheet's vehicle needs for this speed on a"
                                                + " level road (usual: %.2f to %.2f): another vehicle, a trailer that the sheet"
                                                + " has and the run had not (or the other way), or a road that only climbs or"
                                                + " falls?",
                                        run.name(),
                                        share,
                                        LIGHT,
                                        HEAVY))
                        .with("run", run.name())
                        .with("fuel_over_road_load", share));
    }

    private double fuelOverRoadLoad(RunData run) {
        Drive drive = new Drive(spec);
        Run plant = new Run(Plant.compile(spec));
        int second = (int) Math.round(1.0 / run.step());
        double burned = 0.0;
        double needed = 0.0;
        double time = 0.0;
        for (int i = second; i < run.size() - second; i++) {
            double speed = run.input(i, Input.SPEED);
            if (speed >= ROLLING && run.input(i, Input.ENGINE_SPEED) >= Preparation.ENGINE_STANDS) {
                double gain = run.input(i + second, Input.SPEED) - run.input(i - second, Input.SPEED);
                plant.setInputs(run.inputs(), i * Input.COUNT);
                drive.apply(plant, speed, gain / (2 * second * run.step()), 0.0);
                needed += plant.get(Input.FUEL_POWER);
                burned += run.input(i, Input.FUEL_POWER);
                time += run.step();
            }
        }
        return time < ROLLING_TIME ? Double.NaN : burned / needed;
    }

    /** Largest mean over a time. */
    private static double highest(RunData run, Input slot, double time) {
        int width = (int) Math.round(time / run.step());
        double sum = 0.0;
        double highest = 0.0;
        for (int i = 0; i < run.size(); i++) {
            sum += run.input(i, slot) - (i >= width ? run.input(i - width, slot) : 0.0);
            highest = i >= width - 1 ? Math.max(highest, sum / width) : highest;
        }
        return highest;
    }

    private Finding gears(RunData run, GearLines.Foreign f) {
        return fault(
                        run,
                        "gears",
                        String.format(
                                Locale.ROOT,
                                "for %.0f of %.0f s of steady driving the engine turned as in no gear of the sheet, mostly at"
                                        + " %.1f rpm per km/h; the sheet's gears stand for %s (tyre and speedometer may be"
                                        + " %.1f %% off, one gear %.1f %%). If it is this vehicle, correct ratios, final_drive"
                                        + " or tyre_radius.",
                                f.foreign(),
                                f.steady(),
                                perKmh(f.most()),
                                gears(),
                                100.0 * GearLines.TYRE,
                                100.0 * GearLines.GEAR))
                .with("steady_s", f.steady())
                .with("in_no_gear_s", f.foreign())
                .with("rpm_per_km_h", perKmh(f.most()));
    }

    private String gears() {
        return Arrays.toString(Arrays.stream(GearLines.of(spec))
                        .mapToObj(k -> String.format(Locale.ROOT, "%.1f", perKmh(k)))
                        .toArray())
                .replaceAll("[\\[\\]]", "");
    }

    private static double perKmh(double radPerMetre) {
        return radPerMetre / RPM / 3.6;
    }

    private Finding speed(RunData run, double fastest) {
        double rated = spec.engine().ratedSpeed();
        return fault(
                        run,
                        "engine-speed",
                        String.format(
                                Locale.ROOT,
                                "the engine turned %.0f rpm over %.0f s; the sheet's engine has its rated power at %.0f rpm and"
                                        + " does not turn beyond %.0f rpm. If it is this vehicle, correct rated_speed.",
                                fastest / RPM,
                                SPEED_TIME,
                                rated / RPM,
                                SPEED_BEYOND * rated / RPM))
                .with("engine_speed_rpm", fastest / RPM)
                .with("rated_speed_rpm", rated / RPM);
    }

    private Finding fuel(RunData run, double burned, double most) {
        double perGram = 1e3 / spec.engine().heatingValue();
        return fault(
                        run,
                        "fuel",
                        String.format(
                                Locale.ROOT,
                                "the engine burned %.1f g/s over %.0f s; the sheet's engine burns %.1f g/s at rated power. If"
                                        + " it is this vehicle, correct rated_power, or the unit of the fuel column.",
                                burned * perGram,
                                FUEL_TIME,
                                most * perGram))
                .with("fuel_g_s", burned * perGram)
                .with("rated_fuel_g_s", most * perGram);
    }

    private static Finding fault(RunData run, String evidence, String message) {
        return Finding.fault(
                        "other-vehicle",
                        Place.of(run.name()),
                        "this is not the recording of the sheet's vehicle, nothing is fitted: " + message)
                .with("run", run.name())
                .with("evidence", evidence);
    }
}
