package hotday.study.prove;

import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.VehicleSpec;
import org.hipparchus.random.Well19937c;

/**
 * A virtual car whose true values differ from its sheet as the engineer's doubt allows; used to try proofs where the
 * truth is known. It keeps the thermostat's loop, which the fit does not have.
 */
public final class HiddenVehicle {
    /** Draws beyond this many prior standard deviations are pulled back, so that the car remains one that runs. */
    private static final double LARGEST = 2.5;

    /** The doubt about a sheet is wide on purpose; cars that a shop builds with care lie closer to it. */
    private static final double WITH_CARE = 0.6;

    private HiddenVehicle() {}

    /**
     * A car from the whole doubt.
     *
     * @param seed decides everything
     */
    public static Plant draw(VehicleSpec spec, long seed) {
        return draw(spec, seed, 1.0);
    }

    /**
     * A car that a shop has built with care.
     *
     * @param seed decides everything
     */
    public static Plant drawWithCare(VehicleSpec spec, long seed) {
        return draw(spec, seed, WITH_CARE);
    }

    private static Plant draw(VehicleSpec spec, long seed, double share) {
        return draw(Plant.compile(spec), seed, share);
    }

    /**
     * The same from a compiled sheet.
     *
     * @param share of the doubt, 0..1
     */
    public static Plant draw(Plant sheet, long seed, double share) {
        Unknowns unknowns = new Unknowns(sheet, false, false);
        Well19937c random = new Well19937c(seed);
        double[] z = new double[unknowns.size()];
        for (int i = 0; i < z.length; i++) {
            z[i] = share * Math.max(-LARGEST, Math.min(LARGEST, random.nextGaussian()));
        }
        return Unknowns.withLoop(unknowns.plant(z), sheet);
    }
}
