package hotday.signals.channel;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.finding.Sentence;
import java.util.List;
import java.util.Map;

/** Gives a channel its stated value while the engine stands: a fuel signal that is smeared in time does not end by itself. */
final class EngineOff {
    /** Below this no engine keeps turning, rad/s (50 rpm); common practice, no source. */
    private static final double STANDS = 5.2;

    private EngineOff() {}

    /** Works in place on the channel's samples; does nothing without an engine speed. */
    static void apply(
            ChannelRule rule, Map<ModelChannel, Channel> channels, double[] time, String file, List<Finding> findings) {
        Channel speed = channels.get(ModelChannel.ENGINE_SPEED);
        Channel channel = channels.get(rule.kind());
        if (speed == null || channel == null) {
            return;
        }
        double off = rule.limits().engineOff().orElseThrow();
        int changed = 0;
        int at = -1;
        for (int i = 0; i < time.length; i++) {
            double instant = time[i] - channel.lag() + speed.lag();
            while (at + 1 < time.length && time[at + 1] <= instant + 1e-9) {
                at++;
            }
            boolean stands = at >= 0 && speed.values()[at] < STANDS;
            if (stands && !Double.isNaN(channel.values()[i]) && channel.values()[i] != off) {
                channel.values()[i] = off;
                channel.flags()[i] |= Channel.ENGINE_OFF;
                changed++;
            }
        }
        if (changed > 0) {
            findings.add(Finding.note(
                            "samples-with-engine-off",
                            Place.of(file),
                            Sentence.of(
                                    changed + " of " + time.length + " samples of ",
                                    Named.channel(rule.kind()),
                                    " were recorded while the engine stood and are replaced by the value that ",
                                    Named.MAP,
                                    " gives for that"))
                    .with("channel", rule.kind().key())
                    .with("samples", changed));
        }
    }
}
