package hotday.study.prove;

import hotday.vehicle.spec.VehicleSpec;
import java.util.Arrays;

/**
 * Fuel of a turbo-diesel from manifold pressure and engine speed, when nobody recorded fuel. A diesel is not throttled and its
 * mixture is not known, so air says nothing about fuel; but boost is what load makes. Two points of the sheet draw the line: at
 * the manifold pressure of idle the engine carries itself and its accessories, at rated boost it burns its rated fuel. The level
 * stays in doubt ({@link Unknowns}); the shape is a closure, docs/physics/prove.md.
 */
final class BoostFuel {
    /** A diesel's intake at idle stays above this share of the outside pressure, a throttled engine's far below. */
    private static final double OPEN_INTAKE = 0.75;

    private static final double AT_REST = 1.0; // m/s
    /** Samples at idle that make its manifold pressure certain. */
    private static final int ENOUGH = 20;
    /** Where nobody idles: the share of the lowest pressures of the turning engine taken as idle. */
    private static final double LOW_SHARE = 0.1;

    private final VehicleSpec spec;
    private final double idlePressure;
    private final double slope;

    private BoostFuel(VehicleSpec spec, double idlePressure, double outside) {
        this.spec = spec;
        this.idlePressure = idlePressure;
        VehicleSpec.Engine engine = spec.engine();
        double boost = spec.chargeAir().map(VehicleSpec.ChargeAir::boostAtRated).orElse(1.0);
        double own = engine.fuelLine().fuelPower(Preparation.ACCESSORY_POWER, engine.ratedSpeed());
        double rated = engine.fuelLine().fuelPower(engine.ratedPower(), engine.ratedSpeed());
        this.slope = (rated - own) / (engine.ratedSpeed() * (boost - 1.0) * outside);
    }

    static boolean suits(VehicleSpec spec) {
        return spec.engine().fuel() == VehicleSpec.Fuel.DIESEL
                && spec.chargeAir().map(VehicleSpec.ChargeAir::boostAtRated).orElse(1.0) > 1.2;
    }

    /**
     * @param idlePressure of the manifold, Pa, from {@link #idlePressure}
     * @param outside Pa
     */
    static BoostFuel of(VehicleSpec spec, double idlePressure, double outside) {
        return new BoostFuel(spec, idlePressure, outside);
    }

    /**
     * Manifold pressure of the idling engine, Pa: median of the standing vehicle's, else the low end of the turning engine's. NaN
     * when the engine never turns.
     *
     * @param manifold Pa
     * @param engineSpeed rad/s
     * @param speed m/s
     */
    static double idlePressure(double[] manifold, double[] engineSpeed, double[] speed) {
        double[] idle = new double[manifold.length];
        double[] turning = new double[manifold.length];
        int nIdle = 0;
        int nTurning = 0;
        for (int i = 0; i < manifold.length; i++) {
            if (!Double.isNaN(manifold[i]) && engineSpeed[i] >= Preparation.ENGINE_STANDS) {
                turning[nTurning++] = manifold[i];
                if (speed[i] < AT_REST) {
                    idle[nIdle++] = manifold[i];
                }
            }
        }
        if (nIdle >= ENOUGH) {
            return quantile(idle, nIdle, 0.5);
        }
        return nTurning == 0 ? Double.NaN : quantile(turning, nTurning, LOW_SHARE);
    }

    private static double quantile(double[] values, int n, double share) {
        double[] sorted = Arrays.copyOf(values, n);
        Arrays.sort(sorted);
        return Quantile.of(sorted, share);
    }

    /** Whether an idling engine with this manifold pressure breathes freely, as a diesel does. */
    static boolean breathesFreely(double idlePressure, double outside) {
        return idlePressure >= OPEN_INTAKE * outside;
    }

    /**
     * Fuel power of the turning engine, W.
     *
     * @param manifold Pa
     * @param engineSpeed rad/s
     */
    double power(double manifold, double engineSpeed) {
        double own = spec.engine().fuelLine().fuelPower(Preparation.ACCESSORY_POWER, engineSpeed);
        return own + slope * engineSpeed * Math.max(0.0, manifold - idlePressure);
    }
}
