package hotday.physics.exchanger;

/**
 * Air-side conductance of a core: grows with a power of the air's mass flux. The logarithm of the flux is taken once a tile ({@link
 * #logarithms}) for all cores behind one another.
 *
 * @param conductance per face area at the reference flux, fins included, W/(m2 K), above 0
 * @param flux reference, kg/(s m2), above 0
 * @param power 0.4..0.6 for louvered fins; 0..1
 */
public record AirSide(double conductance, double flux, double power) {
    /** Stands for no air at all; keeps the logarithm finite, kg/(s m2). */
    private static final double STILL = 1e-9;

    public AirSide {
        if (!(conductance > 0 && flux > 0 && power >= 0 && power <= 1)) {
            throw new IllegalArgumentException("air-side conductance " + conductance + " W/(m2 K) and flux " + flux
                    + " kg/(s m2) must be above 0, the power " + power + " within 0..1");
        }
    }

    /** @param flux kg/(s m2) per tile of the face, either sign */
    public static void logarithms(double[] flux, double[] logarithms) {
        for (int i = 0; i < flux.length; i++) {
            logarithms[i] = Math.log(Math.max(STILL, Math.abs(flux[i])));
        }
    }

    /**
     * Fills the tiles of a core.
     *
     * @param logarithms of the flux, per tile of the face
     * @param perTile out, W/K per tile of the face
     */
    public void fill(Passes passes, double[] logarithms, double[] perTile) {
        double constant = Math.log(conductance) - power * Math.log(flux);
        for (int i = 0; i < passes.size(); i++) {
            int tile = passes.tile(i);
            perTile[tile] = passes.area(i) * Math.exp(constant + power * logarithms[tile]);
        }
    }
}
