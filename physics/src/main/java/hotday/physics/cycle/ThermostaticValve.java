package hotday.physics.cycle;

/**
 * Holds the superheat behind the evaporator; a receiver keeps what the charge has over, so that the flooded share of the condenser is that of
 * its subcooling section.
 *
 * @param superheat held, K, 0..30; usually 5 to 10 (common practice, no source)
 * @param liquidShare of the condenser's face, 0..0.5; 0.05 to 0.2 (common practice, no source)
 */
public record ThermostaticValve(double superheat, double liquidShare) implements Expansion {
    public ThermostaticValve {
        if (!(superheat >= 0 && superheat <= 30)) {
            throw new IllegalArgumentException("expansion valve superheat " + superheat + " K, must be 0 to 30 K");
        }
        if (!(liquidShare >= 0 && liquidShare <= 0.5)) {
            throw new IllegalArgumentException("liquid share of the condenser " + liquidShare + ", must be 0 to 0.5");
        }
    }

    @Override
    public double superheat(Charge charge) {
        return charge.superheat(superheat);
    }

    @Override
    public double liquidShare(Charge charge, double[] loop, double kLiquid, double airTemperature) {
        return charge.liquidShare(liquidShare);
    }
}
