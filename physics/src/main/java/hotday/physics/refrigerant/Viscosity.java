package hotday.physics.refrigerant;

/** Dynamic viscosity of one refrigerant. */
sealed interface Viscosity permits DensityViscosity, EntropyViscosity {
    /**
     * @param temperature K
     * @param molarDensity mol/m3
     * @param residualEntropy -(residual entropy) times molar density, J/(m3 K), 0 or more
     * @return Pa s
     */
    double at(double temperature, double molarDensity, double residualEntropy);
}
