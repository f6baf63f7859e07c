package hotday.study.prove;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.finding.Sentence;
import hotday.core.finding.Setting;
import hotday.core.finding.Severity;
import hotday.signals.channel.ModelChannel;
import hotday.signals.channel.Recording;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** What a recording must have before anything can be fitted to it, each with the quantity it stands for. */
public final class MissingChannels {
    private static final List<ModelChannel> HEAT = List.of(
            ModelChannel.FUEL_FLOW,
            ModelChannel.AIR_FLOW,
            ModelChannel.TRACTIVE_FORCE,
            ModelChannel.MANIFOLD_PRESSURE,
            ModelChannel.VEHICLE_SPEED);

    private MissingChannels() {}

    /** @param has whether a channel holds at least one value */
    static void refuse(String run, Predicate<ModelChannel> has) {
        List<Finding> faults = of(run, has);
        if (!faults.isEmpty()) {
            throw new InputException(faults);
        }
    }

    /** A warning for each quantity without which a recording can be looked at and nothing proven. */
    public static List<Finding> warnings(Recording recording) {
        return of(recording.name(), kind -> recording.channel(kind).isPresent()).stream()
                .map(f -> new Finding(
                        f.key(), Severity.WARNING, f.place(), Sentence.of("for a proof: ", f.sentence()), f.values()))
                .toList();
    }

    private static List<Finding> of(String run, Predicate<ModelChannel> has) {
        List<Finding> faults = new ArrayList<>();
        if (!has.test(ModelChannel.COOLANT_TEMPERATURE)) {
            faults.add(missing(
                    run,
                    ModelChannel.COOLANT_TEMPERATURE,
                    "coolant temperature is needed: it is what the model is fitted to. Map a column to ",
                    named(ModelChannel.COOLANT_TEMPERATURE)));
        }
        if (!has.test(ModelChannel.AMBIENT_TEMPERATURE) && !has.test(ModelChannel.INTAKE_TEMPERATURE)) {
            faults.add(missing(
                    run,
                    ModelChannel.AMBIENT_TEMPERATURE,
                    "outside temperature is needed: it is what the heat goes to. Map a column to ",
                    named(ModelChannel.AMBIENT_TEMPERATURE),
                    " or give ",
                    constant(ModelChannel.AMBIENT_TEMPERATURE, "a constant")));
        }
        if (!has.test(ModelChannel.VEHICLE_SPEED)) {
            faults.add(missing(
                    run,
                    ModelChannel.VEHICLE_SPEED,
                    "road speed is needed: it is the air through the front. Map a column to ",
                    named(ModelChannel.VEHICLE_SPEED),
                    ", or where the vehicle stood still give 0 km/h as ",
                    constant(ModelChannel.VEHICLE_SPEED, "constant")));
        }
        if (HEAT.stream().noneMatch(has)) {
            faults.add(missing(
                    run,
                    ModelChannel.FUEL_FLOW,
                    "the heat of the engine is needed: best from ",
                    named(ModelChannel.FUEL_FLOW),
                    " (with ",
                    named(ModelChannel.ENGINE_SPEED),
                    "), else from ",
                    named(ModelChannel.AIR_FLOW),
                    " on a petrol engine, from ",
                    named(ModelChannel.MANIFOLD_PRESSURE),
                    " and ",
                    named(ModelChannel.ENGINE_SPEED),
                    " on a turbo-diesel, from ",
                    named(ModelChannel.TRACTIVE_FORCE),
                    ", or at least from ",
                    named(ModelChannel.VEHICLE_SPEED)));
        }
        return faults;
    }

    private static Finding missing(String run, ModelChannel channel, Object... advice) {
        return Finding.fault(
                        "channel-missing",
                        Place.of(run),
                        Sentence.of("no ", named(channel), " in this run: ", Sentence.of(advice)))
                .with("run", run)
                .with("channel", channel.key());
    }

    private static Setting named(ModelChannel channel) {
        return Setting.named("channels." + channel.key(), channel.key());
    }

    private static Setting constant(ModelChannel channel, String inFile) {
        return Setting.named("channels." + channel.key() + ".constant", inFile);
    }
}
