package hotday.study.coverage;

import hotday.study.demo.VirtualCar;
import hotday.study.prove.CeilingReport;
import hotday.study.prove.HotDay;
import hotday.study.prove.Proof;
import hotday.study.prove.Prove;
import hotday.study.prove.ProveRequest;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Ceiling;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleConsumer;
import java.util.stream.IntStream;

/**
 * Draws virtual cars from the doubt about a sheet, lets each drive a mild day, proves it from that recording and asks what it really stands. A car
 * depends on its number and the seed only, so the answer does not depend on the number of threads.
 */
public final class CoverageStudy {
    private final List<VehicleSpec> sheets;
    private final Path folder;
    private final long seed;

    /**
     * @param sheets drawn from in turn
     * @param folder for the recordings
     */
    public CoverageStudy(List<VehicleSpec> sheets, Path folder, long seed) {
        this.sheets = List.copyOf(sheets);
        this.folder = folder;
        this.seed = seed;
    }

    /** Tries so many cars. */
    public Coverage of(int cars, int threads, DoubleConsumer progress) {
        List<List<CeilingReport>> before = sheets.stream()
                .map(s -> HotDay.ofSheet(s, StandardCases.steady(), seed))
                .toList();
        AtomicInteger done = new AtomicInteger();
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return new Coverage(pool.submit(() -> IntStream.range(0, cars)
                            .parallel()
                            .mapToObj(i -> {
                                CarOutcome car = car(i, before.get(i % sheets.size()));
                                progress.accept((double) done.incrementAndGet() / cars);
                                return car;
                            })
                            .toList())
                    .join());
        } finally {
            pool.shutdown();
        }
    }

    private CarOutcome car(int number, List<CeilingReport> before) {
        VehicleSpec spec = sheets.get(number % sheets.size());
        long own = seed * 100_003L + number;
        VirtualCar car = VirtualCar.drive("car", spec, folder.resolve("car-" + number), own);
        Proof proof = Prove.prove(new ProveRequest(
                spec, List.of(car.recording()), List.of(), false, own, 1, (stage, share) -> {}, () -> false));
        List<Case> cases = StandardCases.steady();
        List<Ceiling> truth = car.truth(cases);
        List<CaseOutcome> outcomes = new ArrayList<>();
        for (int i = 0; i < cases.size(); i++) {
            CeilingReport said = proof.ceilings().get(i);
            CeilingReport sheet = before.get(i);
            outcomes.add(new CaseOutcome(
                    cases.get(i).id(), truth.get(i).ambient(), said.low(), said.high(), sheet.low(), sheet.high()));
        }
        return new CarOutcome(spec.name(), own, proof.pooledFit().rmse(), outcomes);
    }
}
