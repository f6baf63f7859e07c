package hotday.signals.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A map and a log of a test in one folder. */
final class Logged {
    /** Maps the columns of {@link #HEADER}. */
    static final String MAP = """
            time: {column: "t [s]"}
            channels:
              vehicle_speed: {column: "speed [km/h]"}
              engine_speed: {column: "engine [rpm]"}
              coolant_temperature: {column: "coolant [°C]"}
            """;

    static final String HEADER = "t [s],speed [km/h],engine [rpm],coolant [°C]\n";

    private Logged() {}

    static ChannelMap map(Path folder, String map) {
        try {
            return ChannelMap.read(Files.writeString(folder.resolve("channels.yaml"), map));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Recording read(Path folder, String map, String log) {
        try {
            return map(folder, map).recording(Files.writeString(folder.resolve("run 1.csv"), log));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every fault as key@line:column. */
    static List<String> refused(Path folder, String map, String log) {
        return faults(folder, map, log).stream().map(Logged::at).toList();
    }

    static List<Finding> faults(Path folder, String map, String log) {
        InputException wrong = catchThrowableOfType(InputException.class, () -> read(folder, map, log));
        assertThat(wrong).as("must be refused").isNotNull();
        return wrong.findings();
    }

    static String at(Finding finding) {
        return finding.key()
                + finding.place().map(p -> "@" + p.line() + ":" + p.column()).orElse("");
    }

    static Finding finding(Recording recording, String key) {
        return recording.findings().stream()
                .filter(f -> f.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + key + " in " + recording.findings()));
    }

    static List<String> keys(Recording recording) {
        return recording.findings().stream().map(Finding::key).toList();
    }

    static double[] values(Recording recording, ModelChannel kind) {
        return recording.channel(kind).orElseThrow().values();
    }
}
