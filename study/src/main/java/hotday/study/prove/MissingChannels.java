package hotday.study.prove;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.signals.channel.ModelChannel;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** What a recording must have before anything can be fitted to it, each with the quantity it stands for. */
final class MissingChannels {
    private static final List<ModelChannel> HEAT = List.of(
            ModelChannel.FUEL_FLOW,
            ModelChannel.AIR_FLOW,
            ModelChannel.TRACTIVE_FORCE,
            ModelChannel.MANIFOLD_PRESSURE,
            ModelChannel.VEHICLE_SPEED);

    private MissingChannels() {}

    /** @param has whether a channel holds at least one value */
    static void refuse(String run, Predicate<ModelChannel> has) {
        List<Finding> faults = new ArrayList<>();
        if (!has.test(ModelChannel.COOLANT_TEMPERATURE)) {
            faults.add(
                    missing(
                            run,
                            "coolant_temperature",
                            "coolant temperature is needed: it is what the model is fitted to. Map a column to coolant_temperature"));
        }
        if (!has.test(ModelChannel.AMBIENT_TEMPERATURE) && !has.test(ModelChannel.INTAKE_TEMPERATURE)) {
            faults.add(missing(
                    run,
                    "ambient_temperature",
                    "outside temperature is needed: it is what the heat goes to. Map a column to ambient_temperature or"
                            + " give a constant"));
        }
        if (!has.test(ModelChannel.VEHICLE_SPEED)) {
            faults.add(missing(
                    run,
                    "vehicle_speed",
                    "road speed is needed: it is the air through the front. Map a column to vehicle_speed, or give the"
                            + " constant 0 km/h where the vehicle stood still"));
        }
        if (HEAT.stream().noneMatch(has)) {
            faults.add(missing(
                    run,
                    "fuel_flow",
                    "the heat of the engine is needed: best from fuel_flow (with engine_speed), else from air_flow on a"
                            + " petrol engine, from manifold_pressure and engine_speed on a turbo-diesel, from"
                            + " tractive_force, or at least from vehicle_speed"));
        }
        if (!faults.isEmpty()) {
            throw new InputException(faults);
        }
    }

    private static Finding missing(String run, String channel, String advice) {
        return Finding.fault("channel-missing", Place.of(run), "no " + channel + " in this run: " + advice)
                .with("run", run)
                .with("channel", channel);
    }
}
