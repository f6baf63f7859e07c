package hotday.study.prove;

import hotday.signals.channel.ModelChannel;
import hotday.signals.channel.Recording;
import hotday.signals.channel.Sampling;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Channels of a recording as means over the steps of an even grid; remembers which column each came from. */
final class GridChannels {
    private final Recording recording;
    private final double[] grid;
    private final double step;
    private final Map<String, String> sources = new LinkedHashMap<>();

    /**
     * @param grid end of each step, s
     * @param step s
     */
    GridChannels(Recording recording, double[] grid, double step) {
        this.recording = recording;
        this.grid = grid;
        this.step = step;
    }

    String name() {
        return recording.name();
    }

    int size() {
        return grid.length;
    }

    /** s. */
    double step() {
        return step;
    }

    /** What each input was taken from, for the report; whoever works one out puts it here. */
    Map<String, String> sources() {
        return sources;
    }

    /** A channel in SI units; empty when nobody recorded it or no sample is usable. */
    Optional<double[]> read(ModelChannel channel) {
        Optional<double[]> values = recording.has(channel)
                ? Optional.of(recording.sampled(channel, grid, Sampling.MEAN))
                : Optional.empty();
        values.ifPresent(v -> recording
                .channel(channel)
                .ifPresent(c -> sources.put(channel.key(), c.column() + " [" + c.unit() + "]")));
        return values.filter(v -> !Double.isNaN(first(v)));
    }

    /** A channel that the model is held against: what a pause of the logger hides is not measured. */
    Optional<double[]> measured(ModelChannel channel) {
        return read(channel).map(v -> Pauses.blank(v, grid, step, recording.time()));
    }

    /** First value that was measured; NaN when there is none. */
    static double first(double[] values) {
        for (double v : values) {
            if (!Double.isNaN(v)) {
                return v;
            }
        }
        return Double.NaN;
    }
}
