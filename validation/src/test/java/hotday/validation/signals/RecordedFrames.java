package hotday.validation.signals;

import hotday.signals.frame.Frame;
import hotday.signals.frame.FrameDecoder;
import hotday.signals.frame.SampleSink;
import hotday.signals.frame.SampleState;
import hotday.validation.SharedData;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;

/**
 * The recordings of networks among the reference data, read in the plainest way and by nothing of the product's, and
 * what a decoder makes of one.
 */
final class RecordedFrames {
    private static final String FOLDER = "data/can-logs/";

    private RecordedFrames() {}

    /** {@code (seconds) can0 18FEEE00#0102}, packed or not; identifiers of eight digits have 29 bits. */
    static List<Frame> ofText(String name) {
        return lines(name)
                .map(line -> {
                    String[] words = line.split(" ");
                    String[] parts = words[2].split("#");
                    return frame(
                            Double.parseDouble(words[0].substring(1, words[0].length() - 1)),
                            words[1].charAt(3) - '0',
                            Integer.parseInt(parts[0], 16),
                            parts[0].length() == 8,
                            parts.length < 2 ? "" : parts[1]);
                })
                .toList();
    }

    /** Index, time in ms, group, priority, source, destination, bytes, words. */
    static List<Frame> ofGroups(String name) {
        return lines(name)
                .skip(1)
                .map(line -> line.split(","))
                .map(c -> {
                    int group = Integer.parseInt(c[2]);
                    int low = (group >> 8 & 0xFF) < 240 ? Integer.parseInt(c[5]) : group & 0xFF;
                    int id = Integer.parseInt(c[3]) << 26 | (group & 0x3FF00 | low) << 8 | Integer.parseInt(c[4]);
                    return frame(Double.parseDouble(c[1]) / 1000, 0, id, true, c[6].replace(" ", ""));
                })
                .toList();
    }

    /** Time in microseconds, identifier, whether 29 bits, network, length, bytes. */
    static List<Frame> ofBytes(String name) {
        return lines(name)
                .skip(1)
                .map(line -> line.split(","))
                .map(c -> frame(
                        Double.parseDouble(c[0]) / 1e6,
                        0,
                        Integer.parseInt(c[1], 16),
                        Boolean.parseBoolean(c[2]),
                        String.join("", List.of(c).subList(5, 5 + Integer.parseInt(c[4])))))
                .toList();
    }

    private static Frame frame(double time, int bus, int id, boolean extended, String hex) {
        byte[] data = HexFormat.of().parseHex(hex);
        return new Frame().set(time, bus, id, extended, data, 0, data.length);
    }

    private static Stream<String> lines(String name) {
        Path file = SharedData.file(FOLDER + name);
        try (InputStream in = Files.newInputStream(file);
                BufferedReader reader = new BufferedReader(new InputStreamReader(
                        name.endsWith(".gz") ? new GZIPInputStream(in) : in, StandardCharsets.UTF_8))) {
            return reader.lines().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Everything that a decoder makes of frames, by name of the signal. */
    static Map<String, Heard> decoded(FrameDecoder decoder, List<Frame> frames) {
        Map<String, Heard> all = new LinkedHashMap<>();
        List<Heard> byNumber = new ArrayList<>();
        SampleSink sink = new SampleSink() {
            @Override
            public int signal(String name, String unit) {
                Heard heard = all.computeIfAbsent(name, n -> {
                    byNumber.add(new Heard(unit));
                    return byNumber.get(byNumber.size() - 1);
                });
                return byNumber.indexOf(heard);
            }

            @Override
            public void sample(double time, int signal, double value, SampleState state) {
                if (state == SampleState.VALID) {
                    byNumber.get(signal).values.add(value);
                } else {
                    byNumber.get(signal).states.merge(state, 1, Integer::sum);
                }
            }

            @Override
            public void text(double time, int signal, String value) {
                byNumber.get(signal).texts.add(value);
            }
        };
        frames.forEach(frame -> decoder.decode(frame, sink));
        return all;
    }

    /** What was heard of one signal. */
    static final class Heard {
        final String unit;
        final List<Double> values = new ArrayList<>();
        final List<String> texts = new ArrayList<>();
        final Map<SampleState, Integer> states = new LinkedHashMap<>();

        Heard(String unit) {
            this.unit = unit;
        }

        double least() {
            return values.stream().mapToDouble(v -> v).min().orElseThrow();
        }

        double most() {
            return values.stream().mapToDouble(v -> v).max().orElseThrow();
        }

        double first() {
            return values.get(0);
        }

        double last() {
            return values.get(values.size() - 1);
        }
    }
}
