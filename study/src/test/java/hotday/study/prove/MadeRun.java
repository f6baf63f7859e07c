package hotday.study.prove;

import hotday.signals.channel.ChannelMap;
import hotday.signals.channel.Fact;
import hotday.signals.channel.Recording;
import hotday.study.demo.DemoShop;
import hotday.vehicle.plant.Input;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.VehicleSpec;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;

/** Recordings, runs and sheets made up for tests. */
final class MadeRun {
    static final double MILD = 273.15 + 21.0;

    /** A column of a log: key and unit of the channel map, and its value over time. */
    record Column(String key, String unit, DoubleUnaryOperator value) {
        static Column of(String key, String unit, double value) {
            return new Column(key, unit, t -> value);
        }
    }

    private MadeRun() {}

    /** A recording of one row a second, read back through a channel map. */
    static Recording recording(Path folder, int seconds, List<Column> columns) {
        StringBuilder map = new StringBuilder("time: {column: \"t [s]\"}\nchannels:\n");
        StringJoiner header = new StringJoiner(",").add("t [s]");
        for (Column c : columns) {
            String name = c.key() + " [" + c.unit() + "]";
            map.append("  " + c.key() + ": {column: \"" + name + "\"}\n");
            header.add(name);
        }
        StringBuilder log = new StringBuilder(header + "\n");
        for (int t = 0; t <= seconds; t++) {
            StringJoiner row = new StringJoiner(",").add(Integer.toString(t));
            for (Column c : columns) {
                row.add(String.format(Locale.ROOT, "%.5f", c.value().applyAsDouble(t)));
            }
            log.append(row).append('\n');
        }
        try {
            Files.createDirectories(folder);
            Path channels = Files.writeString(folder.resolve("channels.yaml"), map);
            return ChannelMap.read(channels).recording(Files.writeString(folder.resolve("made.csv"), log));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A run on the fit's grid with nothing but coolant and outside temperature in it. */
    static RunData run(double[] coolant, double ambient, Fact fan, Fact heater, Fact airConditioning) {
        return run(coolant, ambient, fan, heater, airConditioning, false);
    }

    static RunData run(
            double[] coolant, double ambient, Fact fan, Fact heater, Fact airConditioning, boolean fanRecorded) {
        double step = 10.0;
        double[] time = new double[coolant.length];
        double[] inputs = new double[coolant.length * Input.COUNT];
        double[] oil = new double[coolant.length];
        Arrays.fill(oil, Double.NaN);
        for (int i = 0; i < time.length; i++) {
            time[i] = (i + 1) * step;
            inputs[i * Input.COUNT + Input.AMBIENT.index()] = ambient;
        }
        return new RunData(
                "made",
                time,
                step,
                inputs,
                coolant,
                oil,
                0.0,
                coolant[0],
                Double.NaN,
                fan,
                heater,
                airConditioning,
                fanRecorded,
                Optional.empty(),
                false,
                new double[0],
                Map.of(),
                List.of());
    }

    /** The demo's petrol estate or diesel pick-up, with one piece of its sheet typed anew. */
    static VehicleSpec sheet(Path folder, String build, String typed, String instead) {
        DemoShop shop = DemoShop.create(folder.resolve("shop"));
        Path file = shop.build(build);
        try {
            String text = Files.readString(file);
            if (!text.contains(typed)) {
                throw new IllegalArgumentException("the sheet has no '" + typed + "'");
            }
            Files.writeString(file, text.replace(typed, instead));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return BuildSheet.read(file).vehicle();
    }

    /** The same without the lines of its sheet that begin with one of these words. */
    static VehicleSpec without(Path folder, String build, String... words) {
        Path file = DemoShop.create(folder.resolve("shop")).build(build);
        try {
            List<String> left = Files.readAllLines(file).stream()
                    .filter(line -> Stream.of(words).noneMatch(line.strip()::startsWith))
                    .toList();
            Files.write(file, left);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return BuildSheet.read(file).vehicle();
    }

    static VehicleSpec petrol(Path folder) {
        return sheet(folder, "heron", "Heron", "Heron");
    }

    static VehicleSpec diesel(Path folder) {
        return sheet(folder, "oxbow", "Oxbow", "Oxbow");
    }
}
