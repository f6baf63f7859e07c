package hotday.study.findings;

import hotday.core.finding.Finding;
import hotday.core.finding.Severity;
import hotday.signals.channel.ChannelMap;
import hotday.signals.channel.Recording;
import hotday.study.workspace.AtomicFile;
import hotday.vehicle.spec.VehicleSpec;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleConsumer;

/**
 * Puts faults into virtual cars, commissions them and looks whether they are named; and commissions sound ones. Every car is drawn anew. A car
 * depends on its number and the seed only, so the answer does not depend on the number of threads.
 */
public final class FaultStudy {
    /** Cars of a shop that works with care differ from the sheet by this share of the doubt about it. */
    static final double WITH_CARE = 0.6;

    private static final double COOLEST = 273.15 + 18.0;
    private static final double WARMEST = 273.15 + 32.0;
    /** Runs given up too early last this long, s. */
    private static final double SHORTEST = 120.0;

    private static final double LONGEST_SHORT = 360.0;

    private final List<VehicleSpec> sheets;
    private final Path folder;
    private final long seed;
    private final double share;

    /**
     * @param sheets drawn from in turn
     * @param folder for the recordings
     * @param share of the doubt about a sheet that cars are drawn from, 0..1; {@link #withCare} for cars built with care
     */
    public FaultStudy(List<VehicleSpec> sheets, Path folder, long seed, double share) {
        this.sheets = List.copyOf(sheets);
        this.folder = folder;
        this.seed = seed;
        this.share = share;
    }

    /** Of cars that a shop has built with care. */
    public static FaultStudy withCare(List<VehicleSpec> sheets, Path folder, long seed) {
        return new FaultStudy(sheets, folder, seed, WITH_CARE);
    }

    private record Task(String fault, int number) {}

    /** Tries so many cars of each kind of fault, runs given up too early among them, and so many sound ones. */
    public FaultReport of(int each, int sound, int threads, DoubleConsumer progress) {
        List<Task> tasks = new ArrayList<>();
        FaultKind.faults().forEach(kind -> add(tasks, kind.key(), each));
        add(tasks, Commissioning.TOO_SHORT, each);
        add(tasks, FaultReport.SOUND, sound);
        return of(tasks, threads, progress);
    }

    /** Tries cars with one kind of fault only. */
    FaultReport of(FaultKind kind, int cars, int threads) {
        List<Task> tasks = new ArrayList<>();
        add(tasks, kind.key(), cars);
        return of(tasks, threads, done -> {});
    }

    private static void add(List<Task> tasks, String fault, int cars) {
        for (int i = 0; i < cars; i++) {
            tasks.add(new Task(fault, i));
        }
    }

    private FaultReport of(List<Task> tasks, int threads, DoubleConsumer progress) {
        Path map = folder.resolve("channels.yaml");
        byte[] content = resource();
        AtomicFile.write(map, out -> out.write(content));
        ChannelMap channels = ChannelMap.read(map);
        AtomicInteger done = new AtomicInteger();
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return new FaultReport(pool.submit(() -> tasks.parallelStream()
                            .map(task -> {
                                FaultOutcome car = car(task, channels);
                                progress.accept((double) done.incrementAndGet() / tasks.size());
                                return car;
                            })
                            .toList())
                    .join());
        } finally {
            pool.shutdown();
        }
    }

    private FaultOutcome car(Task task, ChannelMap channels) {
        boolean shortRun = task.fault().equals(Commissioning.TOO_SHORT);
        FaultKind kind = shortRun ? FaultKind.NONE : FaultKind.of(task.fault());
        VehicleSpec spec = sheets.get(task.number() % sheets.size());
        long own = seed * 100_003L + 1009L * task.fault().hashCode() + task.number();
        SplittableRandom random = new SplittableRandom(own);
        double size = random.nextDouble();
        double ambient = random.nextDouble(COOLEST, WARMEST);
        Car car = Car.draw(spec, kind, size, share, random.nextLong());
        List<Step> steps = Step.commissioning(random.nextLong());
        if (shortRun) {
            steps = Step.first(steps, SHORTEST + size * (LONGEST_SHORT - SHORTEST));
        }
        Path file = folder.resolve(task.fault() + "-" + task.number() + ".csv");
        byte[] text =
                new Commission(car, ambient, random.nextLong()).record(steps).getBytes(StandardCharsets.UTF_8);
        AtomicFile.write(file, out -> out.write(text));
        Recording recording = channels.recording(file);
        Examination seen = Commissioning.of(spec, recording, random.nextLong());
        double[] time = recording.time();
        return new FaultOutcome(
                spec.name(),
                task.fault(),
                size,
                ambient,
                own,
                time[time.length - 1] - time[0],
                1 + seen.suspects().stream().map(Suspect::kind).toList().indexOf(kind),
                seen.findings().stream()
                        .filter(f -> f.severity() != Severity.NOTE)
                        .map(Finding::key)
                        .toList());
    }

    private static byte[] resource() {
        try (InputStream in = FaultStudy.class.getResourceAsStream("channels.yaml")) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its own file channels.yaml");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
