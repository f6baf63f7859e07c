package hotday.physics.exchanger;

import hotday.physics.transfer.Arrangement;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A cooler between two liquids: a plate or tube bundle in the radiator's tank, or a plate cooler of its own. Its conductance follows both
 * flows from a reference: 1/UA = (s (mh/mh0)^-a + (1 - s) (mc/mc0)^-b) / UA0.
 *
 * @param arrangement {@link Arrangement#COUNTER_FLOW}, {@link Arrangement#PARALLEL_FLOW} or {@link Arrangement#SHELL_TUBES} (one shell pass, two
 *     tube passes)
 * @param conductance UA0 at the reference flows, W/K, above 0
 * @param hotFlow mh0, kg/s, above 0
 * @param coldFlow mc0, kg/s, above 0
 * @param hotShare s, share of the resistance on the hot side at the reference, 0..1; oil against coolant about 0.8 (common practice, no
 *     source)
 * @param hotPower a, 0.3 (oil, laminar in turbulators) to 0.8 (turbulent); 0..1
 * @param coldPower b, 0..1
 */
public record LiquidCooler(
        Arrangement arrangement,
        double conductance,
        double hotFlow,
        double coldFlow,
        double hotShare,
        double hotPower,
        double coldPower) {

    public LiquidCooler {
        if (!(conductance > 0 && hotFlow > 0 && coldFlow > 0)) {
            throw new IllegalArgumentException("liquid cooler: conductance " + conductance + " W/K and flows " + hotFlow
                    + " and " + coldFlow + " kg/s must be above 0");
        }
        if (!share(hotShare) || !share(hotPower) || !share(coldPower)) {
            throw new IllegalArgumentException("liquid cooler: hot share " + hotShare + " and powers " + hotPower
                    + " and " + coldPower + " must lie within 0..1");
        }
    }

    private static boolean share(double value) {
        return value >= 0 && value <= 1;
    }

    /**
     * A measured point.
     *
     * @param hotFlow, coldFlow kg/s
     * @param hotHeat, coldHeat specific heats, J/(kg K)
     * @param inletDifference hot inlet less cold inlet, K
     * @param heat W
     */
    public record Test(
            double hotFlow, double hotHeat, double coldFlow, double coldHeat, double inletDifference, double heat) {}

    /** The cooler that gives the tested heat; empty when these flows cannot exchange it in this arrangement. */
    public static Optional<LiquidCooler> tested(
            Arrangement arrangement, Test test, double hotShare, double hotPower, double coldPower) {
        double hot = test.hotFlow() * test.hotHeat();
        double cold = test.coldFlow() * test.coldHeat();
        double least = Math.min(hot, cold);
        double effectiveness = test.heat() / (least * test.inletDifference());
        OptionalDouble units = arrangement.ntu(effectiveness, least / Math.max(hot, cold));
        return units.isEmpty() || !(units.getAsDouble() > 0)
                ? Optional.empty()
                : Optional.of(new LiquidCooler(
                        arrangement,
                        units.getAsDouble() * least,
                        test.hotFlow(),
                        test.coldFlow(),
                        hotShare,
                        hotPower,
                        coldPower));
    }

    /** W/K; 0 where one side stands still. */
    public double conductance(double hot, double cold) {
        if (!(hot > 0 && cold > 0)) {
            return 0.0;
        }
        double resistance = hotShare * Math.pow(hot / hotFlow, -hotPower)
                + (1.0 - hotShare) * Math.pow(cold / coldFlow, -coldPower);
        return conductance / resistance;
    }

    /**
     * Heat over the difference of the inlets, W/K; 0 where one side stands still.
     *
     * @param hot, cold mass flows, kg/s, 0 or more
     * @param hotHeat, coldHeat specific heats, J/(kg K)
     */
    public double heatPerKelvin(double hot, double hotHeat, double cold, double coldHeat) {
        double ua = conductance(hot, cold);
        if (ua == 0.0) {
            return 0.0;
        }
        double hotRate = hot * hotHeat;
        double coldRate = cold * coldHeat;
        double least = Math.min(hotRate, coldRate);
        return least * arrangement.effectiveness(ua / least, least / Math.max(hotRate, coldRate));
    }
}
