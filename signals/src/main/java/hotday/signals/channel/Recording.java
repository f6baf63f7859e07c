package hotday.signals.channel;

import hotday.core.finding.Finding;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A run as recorded: channels with unit on one rising time base, and what was found while reading. Immutable by custom:
 * arrays handed out are not to be written to.
 */
public final class Recording {
    private final String name;
    private final String file;
    private final double[] time;
    private final int[] lines;
    private final Map<ModelChannel, Channel> channels;
    private final Map<String, Fact> facts;
    private final List<Finding> findings;

    Recording(
            String name,
            String file,
            double[] time,
            int[] lines,
            Map<ModelChannel, Channel> channels,
            Map<String, Fact> facts,
            List<Finding> findings) {
        this.name = name;
        this.file = file;
        this.time = time;
        this.lines = lines;
        this.channels = new EnumMap<>(ModelChannel.class);
        this.channels.putAll(channels);
        this.facts = Map.copyOf(facts);
        this.findings = List.copyOf(findings);
    }

    /** File name without its endings. */
    public String name() {
        return name;
    }

    /** Path as given. */
    public String file() {
        return file;
    }

    /** s, strictly rising; may begin below zero. */
    public double[] time() {
        return time;
    }

    /** Line of a sample in its file, from 1. */
    public int line(int sample) {
        return lines[sample];
    }

    public boolean has(ModelChannel kind) {
        return channels.containsKey(kind);
    }

    public Optional<Channel> channel(ModelChannel kind) {
        return Optional.ofNullable(channels.get(kind));
    }

    /** What the map states about the run: {@code fan}, {@code heater}, {@code air_conditioning}. */
    public Map<String, Fact> facts() {
        return facts;
    }

    public List<Finding> findings() {
        return findings;
    }

    /**
     * A channel on a grid, usable samples only; before the first usable sample that one, after the last the last. NaN
     * throughout when there is no usable sample.
     *
     * @param grid s, rising
     */
    public double[] sampled(ModelChannel kind, double[] grid, Sampling sampling) {
        double[] values = channels.get(kind).values();
        double[] out = new double[grid.length];
        int from = 0;
        int before = -1;
        int after = next(values, 0);
        for (int i = 0; i < grid.length; i++) {
            double sum = 0.0;
            int n = 0;
            while (from < time.length && time[from] <= grid[i] + 1e-9) {
                if (!Double.isNaN(values[from])) {
                    sum += values[from];
                    n++;
                    before = from;
                    after = next(values, from + 1);
                }
                from++;
            }
            out[i] = sampling == Sampling.MEAN && n > 0 ? sum / n : between(values, before, after, grid[i], sampling);
        }
        return out;
    }

    private double between(double[] values, int before, int after, double t, Sampling sampling) {
        if (before < 0) {
            return after < 0 ? Double.NaN : values[after];
        }
        if (after < 0 || sampling != Sampling.LINEAR) {
            return values[before];
        }
        double share = (t - time[before]) / (time[after] - time[before]);
        return values[before] + share * (values[after] - values[before]);
    }

    private static int next(double[] values, int from) {
        for (int i = from; i < values.length; i++) {
            if (!Double.isNaN(values[i])) {
                return i;
            }
        }
        return -1;
    }
}
