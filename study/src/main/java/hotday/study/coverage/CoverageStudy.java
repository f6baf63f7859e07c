package hotday.study.coverage;

import hotday.core.finding.InputException;
import hotday.signals.channel.Recording;
import hotday.study.demo.VirtualCar;
import hotday.study.prove.CeilingReport;
import hotday.study.prove.HotDay;
import hotday.study.prove.NextTest;
import hotday.study.prove.Proof;
import hotday.study.prove.Prove;
import hotday.study.prove.ProveRequest;
import hotday.study.prove.TestStep;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Ceiling;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleConsumer;
import java.util.stream.IntStream;

/**
 * Draws virtual cars from the doubt about a sheet, lets each drive a mild day, proves it from that recording and asks what it really stands. A car
 * depends on its number and the seed only, so the answer does not depend on the number of threads.
 */
public final class CoverageStudy {
    /** Every so many cars one drives further tests. */
    private static final int EVERY = 3;

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
        Recording mildDay = car.recording();
        Proof proof = prove(spec, List.of(mildDay), own);
        List<Case> cases = StandardCases.steady();
        List<Ceiling> truth = car.truth(cases);
        List<CaseOutcome> outcomes = new ArrayList<>();
        for (int i = 0; i < cases.size(); i++) {
            CeilingReport said = proof.ceilings().get(i);
            CeilingReport sheet = before.get(i);
            outcomes.add(new CaseOutcome(
                    cases.get(i).id(), truth.get(i).ambient(), said.low(), said.high(), sheet.low(), sheet.high()));
        }
        Optional<NextTestOutcome> next =
                number % EVERY == 0 ? Optional.of(further(spec, car, mildDay, proof, own)) : Optional.empty();
        return new CarOutcome(spec.name(), own, proof.pooledFit().rmse(), outcomes, next);
    }

    private static Proof prove(VehicleSpec spec, List<Recording> runs, long seed) {
        return Prove.prove(new ProveRequest(
                spec, StandardCases.steady(), runs, List.of(), false, seed, 1, (stage, share) -> {}, () -> false));
    }

    /** Drives the recommended test and one drawn from the others, and proves the car again with each. */
    private static NextTestOutcome further(
            VehicleSpec spec, VirtualCar car, Recording mildDay, Proof proof, long seed) {
        NextTest best = proof.nextTests().get(0);
        List<NextTest> others = proof.nextTests().subList(1, proof.nextTests().size());
        NextTest drawn = others.get(new SplittableRandom(seed).nextInt(others.size()));
        double before = width(proof, best.kase());
        return new NextTestOutcome(
                best.kase(),
                best.id(),
                drawn.id(),
                best.narrowing(),
                narrowed(spec, car, mildDay, best, best.kase(), before, seed),
                narrowed(spec, car, mildDay, drawn, best.kase(), before, seed));
    }

    /** Share by which a further test narrows an interval; a test that is refused narrows nothing. */
    private static double narrowed(
            VehicleSpec spec, VirtualCar car, Recording mildDay, NextTest test, String kase, double before, long seed) {
        try {
            Proof both = prove(spec, List.of(mildDay, car.test(TestStep.of(test.id()))), seed);
            return 1.0 - width(both, kase) / before;
        } catch (InputException refused) {
            return 0.0;
        }
    }

    private static double width(Proof proof, String kase) {
        return proof.ceilings().stream()
                .filter(c -> c.best().kase().id().equals(kase))
                .mapToDouble(c -> c.high() - c.low())
                .findFirst()
                .orElseThrow();
    }
}
