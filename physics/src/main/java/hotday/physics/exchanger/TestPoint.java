package hotday.physics.exchanger;

/**
 * Heat of a whole core as measured under even air, and what its dimensions let expect at the same flows.
 *
 * @param airRate capacity rate of the air, W/K, above 0
 * @param liquidRate capacity rate of the liquid, W/K, above 0
 * @param inletDifference liquid inlet less air inlet, K, not 0
 * @param heat from liquid to air, W, of the sign of {@code inletDifference}
 * @param airConductance expected of the air side, W/K, above 0
 * @param liquidConductance expected of the liquid side, W/K, above 0
 */
public record TestPoint(
        double airRate,
        double liquidRate,
        double inletDifference,
        double heat,
        double airConductance,
        double liquidConductance) {
    public TestPoint {
        if (!(airRate > 0 && liquidRate > 0)) {
            throw new IllegalArgumentException("test point: capacity rates of air " + airRate + " and liquid "
                    + liquidRate + " W/K must be above 0");
        }
        if (!(airConductance > 0 && liquidConductance > 0)) {
            throw new IllegalArgumentException("test point: conductances of air " + airConductance + " and liquid side "
                    + liquidConductance + " W/K must be above 0");
        }
        if (!(heat * inletDifference > 0)) {
            throw new IllegalArgumentException("test point: heat " + heat + " W and inlet difference " + inletDifference
                    + " K must have one sign and not be 0");
        }
    }
}
