package hotday.study.demo;

import hotday.signals.channel.ChannelMap;
import hotday.signals.channel.Recording;
import hotday.study.prove.HiddenVehicle;
import hotday.study.prove.TestStep;
import hotday.study.workspace.AtomicFile;
import hotday.vehicle.cases.AmbientCeiling;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Ceiling;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/**
 * A car whose true values nobody but this class knows. It is driven on a mild day; afterwards its true ceilings can be
 * laid beside what a proof said.
 */
public final class VirtualCar {
    /** The mild day, K, and the next morning. */
    private static final double MILD = 273.15 + 21.0;

    private static final double NEXT_MORNING = 273.15 + 16.0;

    private static final double WARMING = 600.0; // s
    private static final double WARMING_SPEED = 60.0 / 3.6; // m/s

    private final VehicleSpec spec;
    private final Plant hidden;
    private final Path first;
    private final Path second;
    private final long seed;

    private VirtualCar(VehicleSpec spec, Plant hidden, Path first, Path second, long seed) {
        this.spec = spec;
        this.hidden = hidden;
        this.first = first;
        this.second = second;
        this.seed = seed;
    }

    /** A car drawn from a sheet's doubt that has driven the mild day; its recordings lie in {@code folder/runs}. */
    public static VirtualCar drive(String name, VehicleSpec spec, Path folder, long seed) {
        DemoShop.writeChannels(folder);
        Plant hidden = HiddenVehicle.draw(spec, seed);
        Path first = folder.resolve("runs").resolve(name + "-mild-day.csv");
        write(first, new VirtualDrive(spec, hidden, MILD, seed + 1).record(MildDay.legs(seed + 2, true)));
        return new VirtualCar(spec, hidden, first, first, seed);
    }

    /** Drives a step of a commissioning test, after ten minutes on the road to get warm, and reads what the logger wrote. */
    public Recording test(TestStep step) {
        Path file = first.resolveSibling(step.id() + ".csv");
        List<Leg> warming = List.of(new Leg("to get warm", WARMING, WARMING_SPEED, 0.0, false));
        write(file, new VirtualDrive(spec, hidden, MILD, seed + 5).record(warming, step));
        return channels().recording(file);
    }

    static VirtualCar of(String name, VehicleSpec spec, Path folder, long seed) {
        long own = seed * 1_000_003L + name.hashCode();
        Plant hidden = HiddenVehicle.drawWithCare(spec, own);
        Path first = folder.resolve("runs").resolve(name + "-mild-day.csv");
        Path second = folder.resolve("runs").resolve(name + "-next-morning.csv");
        write(first, new VirtualDrive(spec, hidden, MILD, own + 1).record(MildDay.legs(own + 2, true)));
        write(second, new VirtualDrive(spec, hidden, NEXT_MORNING, own + 3).record(MildDay.legs(own + 4, false)));
        return new VirtualCar(spec, hidden, first, second, own);
    }

    private static void write(Path path, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        AtomicFile.write(path, out -> out.write(bytes));
    }

    /** Its true values. */
    public Plant plant() {
        return hidden;
    }

    /** Recording of the commissioning drive. */
    public Path commissioning() {
        return first;
    }

    /** The same, read through the logger's channel map. */
    public Recording recording() {
        return channels().recording(first);
    }

    private ChannelMap channels() {
        return ChannelMap.read(DemoShop.channels(first.resolveSibling("..").normalize()));
    }

    /** Recording of another day, for the prediction. */
    public Path another() {
        return second;
    }

    /** What the car really stands, case by case. */
    public List<Ceiling> truth(List<Case> cases) {
        AmbientCeiling ceiling = new AmbientCeiling(spec);
        return cases.stream().map(c -> ceiling.find(hidden, c, 0.0)).toList();
    }
}
