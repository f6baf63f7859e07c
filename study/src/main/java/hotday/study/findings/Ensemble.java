package hotday.study.findings;

import hotday.vehicle.spec.VehicleSpec;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * What a run would have shown of drawn cars: sound ones, and some of them again with every fault. A draw depends on its number and the seed only.
 */
final class Ensemble {
    /** Compiled sheets, and cars drawn from each: compiling is dear. */
    private static final int SHEETS = 15;

    private static final int CARS_OF_SHEET = 4;
    /** Sound cars that are given every fault, each in another size. */
    static final int WITH_FAULT = 5;

    /** Cars are drawn from this share of the doubt about a sheet: more than a shop that works with care leaves, so that a sound car is rarely blamed. */
    private static final double SHARE = 0.75;

    private final Log measured;
    private final Windows windows;
    private final Replay replay;
    private final List<Feature> features = Feature.all();
    private final int turns;
    private final Car.Compiled[] sheets;
    private final long seed;
    private final BooleanSupplier cancelled;

    /** @param cancelled asked for every car; then {@link CancellationException} */
    Ensemble(Log measured, Windows windows, VehicleSpec sheet, long seed, BooleanSupplier cancelled) {
        this.cancelled = cancelled;
        this.measured = measured;
        this.windows = windows;
        this.replay = new Replay(measured);
        this.turns = features.indexOf(Feature.TURNS);
        this.seed = seed;
        this.sheets = IntStream.range(0, SHEETS)
                .parallel()
                .mapToObj(i -> wanted(Car.compiled(sheet, FaultKind.NONE, 0.0, sheetSeed(i))))
                .toArray(Car.Compiled[]::new);
    }

    List<Feature> features() {
        return features;
    }

    /** Features of the recording itself. */
    double[] measured() {
        return features(measured);
    }

    private double[] features(Log log) {
        return features.stream().mapToDouble(f -> f.of(log, windows)).toArray();
    }

    /** Features of sound cars, one row a car. */
    double[][] sound() {
        double[] turns = IntStream.range(0, WITH_FAULT)
                .parallel()
                .mapToDouble(i -> turns(car(FaultKind.NONE, i)))
                .toArray();
        return IntStream.range(0, SHEETS)
                .parallel()
                .mapToObj(i -> ofSheet(i, turns[i % WITH_FAULT]))
                .flatMap(List::stream)
                .toArray(double[][]::new);
    }

    private List<double[]> ofSheet(int number, double turns) {
        return IntStream.range(0, CARS_OF_SHEET)
                .mapToObj(i -> Car.draw(sheets[number], FaultKind.NONE, 0.0, SHARE, carSeed(number, i)))
                .map(car -> withTurns(features(replay.of(wanted(car), seed)), turns))
                .toList();
    }

    private Car car(FaultKind kind, int number) {
        double size = (number + 0.5) / WITH_FAULT;
        Car.Compiled compiled = Car.compiled(sheets[number], kind, size);
        return wanted(Car.draw(compiled, kind, size, SHARE, carSeed(number, 0)));
    }

    private <T> T wanted(T what) {
        if (cancelled.getAsBoolean()) {
            throw new CancellationException();
        }
        return what;
    }

    private double turns(Car car) {
        return features.get(turns).of(replay.bySchedule(car), windows);
    }

    private double[] withTurns(double[] row, double turned) {
        row[turns] = turned;
        return row;
    }

    /** Of faults that the recorded channels can show: features of the first car of each of the first sheets, with the fault; row i belongs to the sound car {@link #sibling}. */
    Map<FaultKind, double[][]> faulty(double[][] sound) {
        List<FaultKind> kinds = FaultKind.faults().stream()
                .filter(k -> k.shownBy().stream().anyMatch(measured::has))
                .toList();
        double[][] rows = IntStream.range(0, kinds.size() * WITH_FAULT)
                .parallel()
                .mapToObj(i -> faulty(kinds.get(i / WITH_FAULT), i % WITH_FAULT, sound))
                .toArray(double[][]::new);
        Map<FaultKind, double[][]> all = new EnumMap<>(FaultKind.class);
        for (int k = 0; k < kinds.size(); k++) {
            all.put(kinds.get(k), Arrays.copyOfRange(rows, k * WITH_FAULT, (k + 1) * WITH_FAULT));
        }
        return all;
    }

    private double[] faulty(FaultKind kind, int number, double[][] sound) {
        double[] sibling = sound[sibling(number)];
        return kind == FaultKind.FAN_HUNTS
                ? withTurns(sibling.clone(), turns(car(kind, number)))
                : withTurns(features(replay.of(car(kind, number), seed)), sibling[turns]);
    }

    /** Row of the sound car that differs from the i-th one with a fault by the fault alone. */
    static int sibling(int i) {
        return i * CARS_OF_SHEET;
    }

    private long sheetSeed(int number) {
        return seed * 1_000_003L + 7919L * number;
    }

    private long carSeed(int number, int car) {
        return sheetSeed(number) + 101L * car + 13L;
    }
}
