package hotday.signals.channel;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A run as recorded: channels with unit on one rising time base, and what was found while reading. Arrays handed out are
 * not to be written to; with that kept it may be shared between threads.
 */
public final class Recording {
    /** Grid points and samples closer than this count as one instant, s. */
    private static final double SAME_INSTANT = 1e-9;

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

    /** s, strictly rising; may begin below zero. Wall clocks begin at 0. */
    public double[] time() {
        return time;
    }

    /** Line of a sample in its file, from 1. */
    public int line(int sample) {
        return lines[sample];
    }

    /** Where a sample stands, for findings. */
    public Place place(int sample) {
        return new Place(file, lines[sample], 0);
    }

    public boolean has(ModelChannel kind) {
        return channels.containsKey(kind);
    }

    public Optional<Channel> channel(ModelChannel kind) {
        return Optional.ofNullable(channels.get(kind));
    }

    /** Channels of this run in the order of {@link ModelChannel}. */
    public List<Channel> channels() {
        return List.copyOf(channels.values());
    }

    /** What the map states about the run: {@code fan}, {@code heater}, {@code air_conditioning}; each is there. */
    public Map<String, Fact> facts() {
        return facts;
    }

    /** What was found while reading, in the order found. */
    public List<Finding> findings() {
        return findings;
    }

    /**
     * A channel on a grid, good samples only, its lag undone; before the first good sample that one, after the last the
     * last. NaN throughout when there is no good sample.
     *
     * @param kind must be there, see {@link #has}
     * @param grid s, rising
     */
    public double[] sampled(ModelChannel kind, double[] grid, Sampling sampling) {
        Channel channel =
                channel(kind).orElseThrow(() -> new IllegalArgumentException("run " + name + " has no " + kind.key()));
        double[] at = new double[time.length];
        double[] values = new double[time.length];
        int n = 0;
        for (int i = 0; i < time.length; i++) {
            if (channel.good(i)) {
                at[n] = time[i] - channel.lag();
                values[n++] = channel.values()[i];
            }
        }
        double[] out = new double[grid.length];
        if (n == 0) {
            Arrays.fill(out, Double.NaN);
        } else {
            fill(grid, Arrays.copyOf(at, n), Arrays.copyOf(values, n), sampling, out);
        }
        return out;
    }

    private static void fill(double[] grid, double[] at, double[] values, Sampling sampling, double[] out) {
        double width = grid.length > 1 ? grid[1] - grid[0] : 0.0;
        int next = 0;
        for (int i = 0; i < grid.length; i++) {
            double begin = i == 0 ? grid[0] - width : grid[i - 1];
            double sum = 0.0;
            int inside = 0;
            while (next < at.length && at[next] <= grid[i] + SAME_INSTANT) {
                if (at[next] > begin + SAME_INSTANT) {
                    sum += values[next];
                    inside++;
                }
                next++;
            }
            out[i] = sampling == Sampling.MEAN && inside > 0
                    ? sum / inside
                    : between(at, values, next - 1, grid[i], sampling);
        }
    }

    /** @param before last sample at or before t; -1 when there is none */
    private static double between(double[] at, double[] values, int before, double t, Sampling sampling) {
        if (before < 0) {
            return values[0];
        }
        if (before == at.length - 1 || sampling != Sampling.LINEAR) {
            return values[before];
        }
        double share = (t - at[before]) / (at[before + 1] - at[before]);
        return values[before] + Math.max(0.0, share) * (values[before + 1] - values[before]);
    }
}
