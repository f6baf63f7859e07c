package hotday.physics.cycle;

/** What lies between condenser and evaporator: it sets superheat and how much of the condenser is flooded. */
public sealed interface Expansion permits ThermostaticValve, Orifice {
    /** At the compressor's suction, K; asked before {@link CycleLoop#compress}. */
    double superheat(Charge charge);

    /**
     * Flooded share of the condenser's face, 0..1; asked between {@link CycleLoop#compress} and {@link CycleLoop#condense}.
     *
     * @param loop array filled by compress
     * @param kLiquid conductance of the whole face in the liquid zone, W/K
     * @param airTemperature at the condenser's inlet, K
     */
    double liquidShare(Charge charge, double[] loop, double kLiquid, double airTemperature);
}
