package hotday.validation.signals;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Severity;
import hotday.signals.frame.Frame;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Files of MDF 4 written by a program that shares nothing with the reader ({@code mdf_samples.py}, in another language, from
 * memory of the standard too), beside what it says must come out of them. Skipped, with a line, without Python.
 */
class MdfSamplesTest {
    /** Values that a reader cannot deliver and must tell: their group has no time, or their kind is not read. */
    private static final List<String> TOLD = List.of("group-without-time", "channel-not-read");
    /** A sum of roundings of double precision. */
    private static final double ROUNDING = 1e-12;

    private final List<String> unlike = new ArrayList<>();
    private long compared;

    @TempDir
    private Path folder;

    @Test
    void everySampleComesOutAsItsWriterSays() throws IOException, InterruptedException {
        List<Path> files = samples();
        for (Path file : files) {
            String name = file.getFileName().toString().replace(".mf4", "");
            JsonNode said =
                    JsonMapper.builder().build().readTree(Files.readString(file.resolveSibling(name + ".json")));
            compare(name, file, said);
        }
        assertThat(unlike).isEmpty();
        assertThat(files).hasSizeGreaterThan(70);
        assertThat(compared).isGreaterThan(5000);
    }

    private List<Path> samples() throws IOException, InterruptedException {
        Path script = folder.resolve("mdf_samples.py");
        try (InputStream in = MdfSamplesTest.class.getResourceAsStream("mdf_samples.py")) {
            Files.copy(in, script, StandardCopyOption.REPLACE_EXISTING);
        }
        Path out = folder.resolve("samples");
        try {
            Process writing = new ProcessBuilder("python3", script.toString(), out.toString())
                    .redirectErrorStream(true)
                    .redirectOutput(folder.resolve("said.txt").toFile())
                    .start();
            assertThat(writing.waitFor(5, TimeUnit.MINUTES)).isTrue();
            assertThat(writing.exitValue())
                    .as(Files.readString(folder.resolve("said.txt")))
                    .isZero();
        } catch (IOException none) {
            String message = "skipped: no python3 to write sample files of MDF 4";
            System.err.println(message);
            Assumptions.abort(message);
        }
        try (Stream<Path> all = Files.list(out)) {
            return all.filter(p -> p.toString().endsWith(".mf4")).sorted().toList();
        }
    }

    private void compare(String name, Path file, JsonNode said) {
        MdfSamplesRead read;
        try {
            read = MdfSamplesRead.of(file);
        } catch (InputException refused) {
            if (!said.path("refused").asBoolean(false)) {
                unlike.add(name + " is refused: " + refused.getMessage());
            }
            return;
        }
        if (said.path("refused").asBoolean(false)) {
            unlike.add(name + " is read and should be refused");
            return;
        }
        boolean fault = read.findings().stream().anyMatch(f -> f.severity() == Severity.FAULT);
        if (fault != said.get("fault").asBoolean()) {
            unlike.add(name + (fault ? " has a fault: " + read.findings() : " should have a fault"));
        }
        frames(name, read.frames(), said.get("frames"));
        signals(name, read, said.get("groups"));
    }

    private void frames(String name, List<Frame> frames, JsonNode said) {
        if (frames.size() != said.size()) {
            unlike.add(name + ": " + frames.size() + " frames for " + said.size());
            return;
        }
        for (int i = 0; i < frames.size(); i++) {
            String ours = shown(frames.get(i));
            String theirs = shown(said.get(i));
            compared++;
            if (!ours.equals(theirs)) {
                unlike.add(name + " frame " + i + ": " + ours + " for " + theirs);
            }
        }
    }

    private static String shown(Frame f) {
        boolean data = f.kind() == Frame.Kind.DATA;
        String bytes = data ? HexFormat.of().formatHex(f.data(), f.offset(), f.offset() + f.length()) : "";
        String id = f.kind() == Frame.Kind.ERROR ? "" : f.id() + (f.extended() ? "x" : "");
        String length = f.kind() == Frame.Kind.REMOTE ? " asks for " + f.length() : "";
        return f.time() + " " + f.kind() + " bus " + f.bus() + " " + id + (f.flexible() ? " fd " : " ") + bytes
                + length;
    }

    private static String shown(JsonNode f) {
        Frame.Kind kind = switch (f.get("kind").asString()) {
            case "data" -> Frame.Kind.DATA;
            case "remote" -> Frame.Kind.REMOTE;
            default -> Frame.Kind.ERROR;
        };
        boolean data = kind == Frame.Kind.DATA;
        String id = kind == Frame.Kind.ERROR
                ? ""
                : f.get("id").asInt() + (f.get("extended").asBoolean() ? "x" : "");
        String length = kind == Frame.Kind.REMOTE ? " asks for " + f.get("dlc").asInt() : "";
        return f.get("t").asDouble() + " " + kind + " bus " + f.get("bus").asInt() + " " + id
                + (f.get("fd").asBoolean() ? " fd " : " ")
                + (data ? f.get("bytes").asString() : "") + length;
    }

    private void signals(String name, MdfSamplesRead read, JsonNode groups) {
        int at = 0;
        for (JsonNode group : groups) {
            for (JsonNode channel : group.get("channels")) {
                boolean there = at < read.signals().size()
                        && read.signals().get(at).isOf(channel.get("name").asString());
                if (there) {
                    channel(name, read.signals().get(at++), channel);
                } else if (!isTold(read.findings(), channel)) {
                    unlike.add(name + ": no channel " + channel.get("name") + " where "
                            + read.signals().stream()
                                    .map(MdfSamplesRead.Signal::name)
                                    .toList() + " are");
                }
            }
        }
        if (at != read.signals().size()) {
            unlike.add(name + ": a channel more, " + read.signals().get(at).name());
        }
    }

    private static boolean isTold(List<Finding> findings, JsonNode channel) {
        boolean faulty = channel.get("values").isEmpty();
        return faulty || findings.stream().anyMatch(f -> TOLD.contains(f.key()));
    }

    private void channel(String file, MdfSamplesRead.Signal ours, JsonNode theirs) {
        String name = file + " " + ours.name();
        if (!ours.unit().equals(theirs.get("unit").asString())) {
            unlike.add(name + ": unit '" + ours.unit() + "' for " + theirs.get("unit"));
        }
        if (ours.values().size() != theirs.get("values").size()) {
            unlike.add(name + ": " + ours.values().size() + " values for "
                    + theirs.get("values").size());
            return;
        }
        for (int i = 0; i < ours.values().size(); i++) {
            JsonNode value = theirs.get("values").get(i);
            double time = theirs.get("times").get(i).asDouble();
            compared++;
            if (!isAlike(ours.values().get(i), value, theirs.get("type").asString())
                    || Math.abs(ours.times().get(i) - time) > ROUNDING * Math.max(1, Math.abs(time))) {
                unlike.add(name + " " + i + ": " + ours.values().get(i) + " at "
                        + ours.times().get(i) + " for " + value + " at " + time);
                return;
            }
        }
    }

    private static boolean isAlike(Object ours, JsonNode theirs, String type) {
        if (theirs.isNull()) {
            return ours == MdfSamplesRead.NOTHING;
        }
        if (theirs.isNumber()) {
            double number = theirs.asDouble();
            return ours instanceof Double d && Math.abs(d - number) <= ROUNDING * Math.abs(number);
        }
        return ours instanceof String text
                && (type.equals("bytes") ? text.equalsIgnoreCase(theirs.asString()) : text.equals(theirs.asString()));
    }
}
