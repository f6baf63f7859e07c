package hotday.validation.signals;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.core.finding.Finding;
import hotday.signals.channel.Channel;
import hotday.signals.channel.ChannelMap;
import hotday.signals.channel.ModelChannel;
import hotday.signals.channel.Recording;
import hotday.validation.SharedData;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** One folder of open recordings, its channel map, and what a run of it shows, in the units of its description. */
final class RecordedSet {
    private static final double KELVIN = 273.15;

    private final String folder;

    RecordedSet(String folder) {
        this.folder = folder;
    }

    /** The recording whose file name begins so; skips the test where the data are not. */
    Recording run(String name) {
        Path data = SharedData.file("data/" + folder);
        Path root = Path.of(System.getProperty("hotday.root", ".."));
        ChannelMap map = ChannelMap.read(root.resolve("validation/sets/" + folder + "/channels.yaml"));
        try (Stream<Path> files = Files.list(data)) {
            Path file = files.filter(f -> f.getFileName().toString().startsWith(name))
                    .findFirst()
                    .orElseThrow();
            return map.recording(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Good values in time, K and the like. */
    static DoubleStream good(Recording run, ModelChannel kind) {
        Channel channel = run.channel(kind).orElseThrow();
        return IntStream.range(0, channel.values().length).filter(channel::good).mapToDouble(i -> channel.values()[i]);
    }

    static double[] celsius(Recording run, ModelChannel kind) {
        return good(run, kind).map(v -> v - KELVIN).toArray();
    }

    static double greatest(double[] values) {
        return DoubleStream.of(values).max().orElseThrow();
    }

    static double least(double[] values) {
        return DoubleStream.of(values).min().orElseThrow();
    }

    static double last(double[] values) {
        return values[values.length - 1];
    }

    static double topSpeedKmh(Recording run) {
        return 3.6 * good(run, ModelChannel.VEHICLE_SPEED).max().orElseThrow();
    }

    static Finding finding(Recording run, String key) {
        return run.findings().stream()
                .filter(f -> f.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + key + " in " + run.findings()));
    }

    static void timeRises(Recording run) {
        double[] time = run.time();
        for (int i = 1; i < time.length; i++) {
            assertThat(time[i] - time[i - 1]).as("row %d", i).isPositive();
        }
    }
}
