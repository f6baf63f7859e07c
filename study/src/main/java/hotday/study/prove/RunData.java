package hotday.study.prove;

import hotday.core.finding.Finding;
import hotday.signals.channel.Fact;
import hotday.signals.channel.Recording;
import hotday.vehicle.controller.Schedule;
import hotday.vehicle.plant.Coefficient;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Plant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One recorded run on the fit's own even grid: inputs of the plant row by row, and what was measured. SI. Temperatures
 * that were not measured are NaN.
 *
 * @param name of the run, as the channel map knows it
 * @param time end of each grid step, s
 * @param step s
 * @param inputs flat table, {@link Input#COUNT} values a row; states that nobody recorded are zero there
 * @param coolant measured, K
 * @param oil measured, K
 * @param coolantResolution of the recorded coolant, K (0: unknown)
 * @param startCoolant first reading, K
 * @param startOil first reading, K; NaN when there is none
 * @param fan, heater, airConditioning what is known about the three actuators: recorded or stated (ON, OFF) or UNKNOWN
 * @param fanRecorded true when the fan demand or speed stands in {@code inputs}
 * @param schedule what drives the fan when nobody recorded it but the sheet says that its own schedule is in the car
 * @param thermostatBlocked true when the thermostat was held open, as field tests of cooling systems have it
 * @param ownFuel fuel power that the turning engine needs for itself and its accessories, W a row, where fuel was not recorded
 *     but follows from load: what lies above is in doubt (all of it where a filter burns itself clean); empty where fuel was recorded
 * @param sources what each input was taken from, for the report
 * @param findings what was found in the recording and done about it
 */
public record RunData(
        String name,
        double[] time,
        double step,
        double[] inputs,
        double[] coolant,
        double[] oil,
        double coolantResolution,
        double startCoolant,
        double startOil,
        Fact fan,
        Fact heater,
        Fact airConditioning,
        boolean fanRecorded,
        Optional<Schedule> schedule,
        boolean thermostatBlocked,
        double[] ownFuel,
        Map<String, String> sources,
        List<Finding> findings) {

    static final String GEARS_OF_THE_SHEET = "gears of the sheet";
    private static final double HELD_OPEN = 200.0; // K, below any start

    /** True when fuel was not recorded but follows from load. */
    public boolean fuelWorkedOut() {
        return ownFuel.length > 0;
    }

    /** False when engine speed follows from the gears of the sheet. */
    boolean engineSpeedRecorded() {
        return sources.containsKey("engine_speed")
                && !sources.get("engine_speed").equals(GEARS_OF_THE_SHEET);
    }

    /** Whether the channel map says that the thermostat was held open. */
    public static boolean thermostatHeldOpen(Recording recording) {
        return recording.facts().get("thermostat_blocked_open") == Fact.ON;
    }

    /** The plant as it was in this run. */
    Plant asItWas(Plant plant) {
        return thermostatBlocked ? heldOpen(plant) : plant;
    }

    /** The plant with its thermostat held open. */
    public static Plant heldOpen(Plant plant) {
        double[] k = plant.coefficients();
        k[Coefficient.THERMOSTAT_OPENS.index()] = HELD_OPEN;
        return plant.with(k);
    }

    /** The same run with air held back in front where {@code held} says. */
    RunData withFrontHeld(boolean[] held) {
        double[] own = inputs.clone();
        for (int i = 0; i < held.length; i++) {
            own[i * Input.COUNT + Input.FRONT_HELD.index()] = held[i] ? HeldAir.SHARE : 0.0;
        }
        return new RunData(
                name,
                time,
                step,
                own,
                coolant,
                oil,
                coolantResolution,
                startCoolant,
                startOil,
                fan,
                heater,
                airConditioning,
                fanRecorded,
                schedule,
                thermostatBlocked,
                ownFuel,
                sources,
                findings);
    }

    /** Begin and end of each spell in which air was held back in front, s. */
    List<double[]> frontHeldSpells() {
        List<double[]> spells = new ArrayList<>();
        boolean before = false;
        for (int i = 0; i < size(); i++) {
            boolean held = input(i, Input.FRONT_HELD) > 0.0;
            if (held && !before) {
                spells.add(new double[] {time[i] - step, time[i]});
            } else if (held) {
                spells.get(spells.size() - 1)[1] = time[i];
            }
            before = held;
        }
        return spells;
    }

    public int size() {
        return time.length;
    }

    public double input(int row, Input slot) {
        return inputs[row * Input.COUNT + slot.index()];
    }

    public boolean hasOil() {
        return !Double.isNaN(startOil);
    }

    /** Samples before this time are not scored, s: the cold slug and the first readings after key-on. */
    public double scoredFrom() {
        return Math.max(0.0, time[0] - step) + 20.0;
    }

    /** True when the engine starts clearly warmer than the air. */
    public boolean hotStart() {
        return startCoolant > input(0, Input.AMBIENT) + 15.0;
    }

    public double meanAmbient() {
        double sum = 0.0;
        for (int i = 0; i < size(); i++) {
            sum += input(i, Input.AMBIENT);
        }
        return sum / size();
    }

    /** Largest mean fuel power over {@code window} seconds, W. */
    public double highestFuelPower(double window) {
        int width = Math.max(1, Math.min(size(), (int) Math.round(window / step)));
        double sum = 0.0;
        double highest = 0.0;
        for (int i = 0; i < size(); i++) {
            sum += input(i, Input.FUEL_POWER);
            if (i >= width) {
                sum -= input(i - width, Input.FUEL_POWER);
            }
            if (i >= width - 1) {
                highest = Math.max(highest, sum / width);
            }
        }
        return highest;
    }
}
