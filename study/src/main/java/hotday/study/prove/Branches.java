package hotday.study.prove;

import hotday.signals.channel.Fact;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * All ways the unrecorded actuators of one run may have behaved, each combination once with its weight before anything
 * is compared. Never one branch as the truth.
 */
final class Branches {
    /** Below this mean outside temperature a heater may well be on, K; common practice, no source. */
    static final double HEATER_WEATHER = 273.15 + 18.0;
    /** Above this mean outside temperature the A/C may well be on, K; common practice, no source. */
    static final double COOLING_WEATHER = 273.15 + 15.0;

    /** One combination: what each unknown actuator is taken to do. */
    record Combination(Branch branch, Map<HiddenState, String> labels, double weight) {}

    private Branches() {}

    /**
     * Actuators whose state in this run nobody knows and that could matter in its weather.
     *
     * @param habit true when the heater of such runs follows {@link HeaterHabit} and so is accounted for
     */
    static List<HiddenState> unknown(RunData run, VehicleSpec spec, boolean habit) {
        List<HiddenState> states = new ArrayList<>();
        if (!run.fanRecorded() && run.fan() == Fact.UNKNOWN && spec.fan().control() == VehicleSpec.FanControl.UNKNOWN) {
            states.add(HiddenState.FAN);
        }
        if (heaterUnknown(run) && !habit) {
            states.add(HiddenState.HEATER);
        }
        if (run.airConditioning() == Fact.UNKNOWN
                && spec.airConditioning().isPresent()
                && run.meanAmbient() >= COOLING_WEATHER) {
            states.add(HiddenState.AIR_CONDITIONING);
        }
        return states;
    }

    static boolean heaterUnknown(RunData run) {
        return run.heater() == Fact.UNKNOWN && run.meanAmbient() < HEATER_WEATHER;
    }

    static List<Combination> of(RunData run, VehicleSpec spec, boolean habit) {
        List<Combination> all = List.of(new Combination(plain(run, habit), new EnumMap<>(HiddenState.class), 1.0));
        for (HiddenState state : unknown(run, spec, habit)) {
            List<Combination> wider = new ArrayList<>();
            for (Combination c : all) {
                wider.addAll(split(c, state));
            }
            all = wider;
        }
        return all;
    }

    /** What was stated, and the heater by habit where nothing was. */
    static Branch plain(RunData run, boolean habit) {
        double heater = HeaterHabit.rules(run, habit)
                ? HeaterHabit.setting(run.meanAmbient())
                : run.heater() == Fact.ON ? 1.0 : 0.0;
        return new Branch(Branch.FanRule.AS_RECORDED, heater, run.airConditioning() == Fact.ON);
    }

    private static List<Combination> split(Combination c, HiddenState state) {
        Branch b = c.branch();
        return switch (state) {
            case FAN ->
                List.of(
                        with(c, state, "off", b),
                        with(
                                c,
                                state,
                                "full from 105 degC to 97 degC",
                                new Branch(Branch.FanRule.TWO_POINT, b.heater(), b.airConditioning())));
            case HEATER ->
                List.of(with(c, state, "off", b), with(c, state, "on", new Branch(b.fan(), 1.0, b.airConditioning())));
            case AIR_CONDITIONING ->
                List.of(with(c, state, "off", b), with(c, state, "on", new Branch(b.fan(), b.heater(), true)));
        };
    }

    private static Combination with(Combination c, HiddenState state, String label, Branch branch) {
        Map<HiddenState, String> labels = new EnumMap<>(HiddenState.class);
        labels.putAll(c.labels());
        labels.put(state, label);
        return new Combination(branch, labels, 0.5 * c.weight());
    }
}
