package hotday.signals.framelog;

import hotday.signals.bus.FrameLength;
import hotday.signals.frame.Frame;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The unit of stamps that names none, told by what a network can do. In the unit that is meant the most frequent
 * identifier comes at least every two seconds (common practice, no source), and all frames between two of its kind go over
 * wires of 1 Mbit/s. As units are a thousand apart, most recordings leave one; where none or several are left, nothing is
 * said.
 */
final class StampRule {
    private static final double LONGEST_PERIOD = 2.0;
    private static final double HIGHEST_BIT_RATE = 1e6;
    /** Periods of the most frequent identifier that make a median worth the name. */
    private static final int FEWEST_PERIODS = 20;

    private StampRule() {}

    static Optional<StampUnit> of(Columns columns, List<List<String>> rows) {
        List<Frame> frames = frames(columns, rows);
        Map<Long, List<Double>> stamps = new HashMap<>();
        frames.forEach(
                f -> stamps.computeIfAbsent(key(f), k -> new ArrayList<>()).add(f.time()));
        Optional<List<Double>> busiest = stamps.values().stream()
                .max(Comparator.comparingInt(List::size))
                .filter(s -> s.size() > FEWEST_PERIODS);
        return busiest.flatMap(s -> onlyUnit(medianStep(s), bitsBetween(frames, s.size())));
    }

    /** Frames of the rows with their stamps as they are written, in whatever unit. */
    private static List<Frame> frames(Columns columns, List<List<String>> rows) {
        DelimitedLine line = new DelimitedLine(new BusNames(), columns);
        Frame frame = new Frame();
        List<Frame> frames = new ArrayList<>();
        for (List<String> row : rows) {
            byte[] text = String.join(String.valueOf(columns.delimiter()), row).getBytes(StandardCharsets.ISO_8859_1);
            if (line.read(text, 0, text.length, frame) == LineForm.FRAME) {
                frames.add(frame.copy());
            }
        }
        return frames;
    }

    private static long key(Frame f) {
        return (long) f.bus() << 32 | (f.extended() ? 1L << 31 : 0) | f.id();
    }

    private static double medianStep(List<Double> stamps) {
        double[] steps = new double[stamps.size() - 1];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = stamps.get(i + 1) - stamps.get(i);
        }
        Arrays.sort(steps);
        return steps[steps.length / 2];
    }

    /** Fewest bits on the busiest wires between two frames of the most frequent identifier. */
    private static double bitsBetween(List<Frame> frames, int times) {
        Map<Integer, Long> bits = new HashMap<>();
        frames.forEach(f -> bits.merge(
                f.bus(),
                (long) FrameLength.shortest(f.extended(), Math.min(f.length(), FrameLength.MOST_BYTES)),
                Long::sum));
        return (double) bits.values().stream().mapToLong(Long::longValue).max().orElse(0) / times;
    }

    private static Optional<StampUnit> onlyUnit(double step, double bits) {
        List<StampUnit> possible = Arrays.stream(StampUnit.values())
                .filter(u -> step * u.seconds() <= LONGEST_PERIOD)
                .filter(u -> step * u.seconds() * HIGHEST_BIT_RATE >= bits)
                .toList();
        return possible.size() == 1 ? Optional.of(possible.get(0)) : Optional.empty();
    }
}
