package hotday.study.events;

import hotday.signals.channel.Channel;
import hotday.signals.channel.ModelChannel;
import hotday.signals.channel.Recording;
import java.util.Arrays;

/**
 * The channels of one run that tell of switching. All arrays have the length of {@code time}; a sample that is not there is
 * NaN, so is a whole channel that was not recorded. Not to be written to afterwards.
 *
 * @param run name
 * @param time s, rising
 * @param coolant K
 * @param engineSpeed rad/s
 * @param speed of the vehicle, m/s
 * @param load share of full engine load
 * @param manifold absolute pressure, Pa
 * @param voltage of the supply, V
 * @param coolantResolution step of the coolant gauge, K; 0 when it is fine or unknown
 */
public record Trace(
        String run,
        double[] time,
        double[] coolant,
        double[] engineSpeed,
        double[] speed,
        double[] load,
        double[] manifold,
        double[] voltage,
        double coolantResolution) {

    public Trace {
        for (double[] channel : new double[][] {coolant, engineSpeed, speed, load, manifold, voltage}) {
            if (channel.length != time.length) {
                throw new IllegalArgumentException(
                        "channel of run " + run + " has " + channel.length + " samples, time has " + time.length);
            }
        }
    }

    /** The good samples of a recording, each at its own time. */
    public static Trace of(Recording recording) {
        return new Trace(
                recording.name(),
                recording.time(),
                good(recording, ModelChannel.COOLANT_TEMPERATURE),
                good(recording, ModelChannel.ENGINE_SPEED),
                good(recording, ModelChannel.VEHICLE_SPEED),
                good(recording, ModelChannel.ENGINE_LOAD),
                good(recording, ModelChannel.MANIFOLD_PRESSURE),
                good(recording, ModelChannel.SUPPLY_VOLTAGE),
                recording
                        .channel(ModelChannel.COOLANT_TEMPERATURE)
                        .map(Channel::resolution)
                        .orElse(0.0));
    }

    private static double[] good(Recording recording, ModelChannel kind) {
        double[] out = new double[recording.time().length];
        Arrays.fill(out, Double.NaN);
        recording.channel(kind).ifPresent(c -> {
            for (int i = 0; i < out.length; i++) {
                out[i] = c.good(i) ? c.values()[i] : Double.NaN;
            }
        });
        return out;
    }
}
