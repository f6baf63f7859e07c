package hotday.study.prove;

import hotday.vehicle.cases.AmbientCeiling;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Ceiling;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import java.util.stream.IntStream;

/** Carries a vehicle, with the doubt about it, to the ambient ceilings of the cases. */
public final class HotDay {
    /** Lower ends of the widest intervals (demo estate) move by 1.5 to 3 K from seed to seed with so many; by 4 to 7 K with 200 independent ones. */
    private static final int DRAWS = 400;
    /** Of a case that is run through in time; each costs as much as a dozen settled ones. */
    private static final int DRAWS_MOVING = 40;

    private final FittedVehicle vehicle;
    private final VehicleSpec spec;
    private final AmbientCeiling ceiling;
    private final long seed;

    HotDay(FittedVehicle vehicle, VehicleSpec spec, long seed) {
        this.vehicle = vehicle;
        this.spec = spec;
        this.ceiling = new AmbientCeiling(spec);
        this.seed = seed;
    }

    /** Ceilings of a sheet before any run, with the doubt that a sheet of catalogue dimensions leaves. */
    public static List<CeilingReport> ofSheet(VehicleSpec spec, List<Case> cases, long seed) {
        return ofSheet(spec, cases, spec.designAmbient(), seed, share -> {}, () -> false);
    }

    /**
     * The same judged on another day than the design day.
     *
     * @param day outside temperature, K
     * @param progress told the share done, 0..1
     * @param cancelled asked for every draw; then {@link java.util.concurrent.CancellationException}
     */
    public static List<CeilingReport> ofSheet(
            VehicleSpec spec,
            List<Case> cases,
            double day,
            long seed,
            DoubleConsumer progress,
            BooleanSupplier cancelled) {
        Plant plant = Plant.compile(spec);
        Unknowns unknowns = new Unknowns(plant, false, false, cancelled);
        return new HotDay(FittedVehicle.ofSheet(unknowns), spec, seed).ceilings(plant, cases, day, progress);
    }

    List<CeilingReport> ceilings(List<Case> cases) {
        Plant best = vehicle.unknowns().plant(vehicle.z());
        return ceilings(best, cases, spec.designAmbient(), share -> {});
    }

    private List<CeilingReport> ceilings(Plant plant, List<Case> cases, double day, DoubleConsumer progress) {
        List<Ceiling> best = ceiling.find(plant, cases, 0.0, day);
        List<CeilingReport> all = new ArrayList<>();
        for (Ceiling each : best) {
            all.add(report(each, day));
            progress.accept((double) all.size() / cases.size());
        }
        return all;
    }

    private CeilingReport report(Ceiling best, double day) {
        double[] draws = draws(best.kase(), best.ambient());
        long hold = Arrays.stream(draws).filter(t -> t >= day).count();
        return new CeilingReport(
                best, Quantile.of(draws, 0.05), Quantile.of(draws, 0.95), (double) hold / draws.length, day);
    }

    /** Sorted ceilings over draws of the unknowns and of what the model misses, K. */
    private double[] draws(Case kase, double guess) {
        double[] out = new double[kase.steady() ? DRAWS : DRAWS_MOVING];
        int n = vehicle.z().length;
        EvenDraws draws = new EvenDraws(
                out.length, n + 1, (int) seed, (int) (seed >>> 32), kase.id().hashCode());
        IntStream.range(0, out.length).parallel().forEach(i -> {
            double[] normal = draws.at(i);
            double miss = vehicle.discrepancy() * normal[n];
            out[i] = ceiling.ambient(vehicle.unknowns().plant(vehicle.at(normal)), kase, miss, guess);
        });
        Arrays.sort(out);
        return out;
    }
}
