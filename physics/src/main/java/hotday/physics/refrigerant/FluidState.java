package hotday.physics.refrigerant;

/**
 * A refrigerant in equilibrium. Enthalpy and entropy count from saturated liquid at 0 degC = 200 kJ/kg and 1 kJ/(kg K) (IIR).
 *
 * @param temperature K
 * @param pressure Pa absolute
 * @param density kg/m3
 * @param enthalpy J/kg
 * @param entropy J/(kg K)
 * @param quality mass share of vapour, 0..1; NaN outside the two-phase region
 * @param cp, cv specific heats, J/(kg K); NaN for a mixture of both phases
 * @param speedOfSound m/s; NaN for a mixture
 * @param viscosity dynamic, Pa s; NaN for a mixture
 * @param conductivity W/(m K); NaN for a mixture
 */
public record FluidState(
        double temperature,
        double pressure,
        double density,
        double enthalpy,
        double entropy,
        double quality,
        Region region,
        double cp,
        double cv,
        double speedOfSound,
        double viscosity,
        double conductivity) {

    /** True for liquid and vapour together, the ends (quality 0 and 1) included. */
    public boolean saturated() {
        return !Double.isNaN(quality);
    }
}
