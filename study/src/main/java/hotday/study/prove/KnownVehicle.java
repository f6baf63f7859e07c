package hotday.study.prove;

import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.VehicleSpec;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A vehicle as far as it is known, by its sheet alone or by recorded runs too: the likeliest one, and those it may turn out to be. Immutable; any
 * number of threads may ask.
 */
public final class KnownVehicle {
    private final Plant sheet;
    private final FittedVehicle vehicle;
    private final int runs;

    private KnownVehicle(Plant sheet, FittedVehicle vehicle, int runs) {
        this.sheet = sheet;
        this.vehicle = vehicle;
        this.runs = runs;
    }

    /** By a sheet of catalogue dimensions, with the doubt that such a sheet leaves. */
    public static KnownVehicle ofSheet(VehicleSpec spec) {
        Plant plant = Plant.compile(spec);
        return new KnownVehicle(plant, FittedVehicle.ofSheet(new Unknowns(plant, false, false, () -> false)), 0);
    }

    /**
     * Fitted as a proof fits it; cases and runs to predict do not matter. Throws {@link hotday.core.finding.InputException} when the
     * recordings cannot carry a fit and {@link java.util.concurrent.CancellationException} when it is cancelled.
     */
    public static KnownVehicle ofRuns(ProveRequest request) {
        return new KnownVehicle(
                Plant.compile(request.spec()),
                Prove.fitted(request),
                request.fit().size());
    }

    /** Recorded runs it was fitted to; 0 when only the sheet is known. */
    public int runs() {
        return runs;
    }

    /** The vehicle of the sheet; with runs the one that fits them best. */
    public Plant likeliest() {
        return runs == 0 ? sheet : Unknowns.withLoop(vehicle.unknowns().plant(vehicle.z()), sheet);
    }

    /** Vehicles it may turn out to be, all as likely as each other. */
    public List<Plant> possible(int count, long seed) {
        EvenDraws draws = new EvenDraws(count, vehicle.z().length + 1, (int) seed, (int) (seed >>> 32), 0);
        return IntStream.range(0, count)
                .mapToObj(i -> vehicle.unknowns().plant(vehicle.at(draws.at(i))))
                .toList();
    }
}
