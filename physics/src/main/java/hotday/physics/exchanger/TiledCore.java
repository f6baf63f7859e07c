package hotday.physics.exchanger;

/** A core that gives heat to the air of the tiles it covers; what flows in it is set beforehand on the core itself. */
public interface TiledCore {
    /**
     * Follows what flows in the core once through all its tiles. Air of tiles it does not cover is left alone.
     *
     * @param airRate capacity rate of the air per tile of the face, W/K; only its size counts, not its sign
     * @param air temperature per tile of the face, K: as it comes, afterwards as it leaves
     */
    void march(double[] airRate, double[] air);

    /** From the core to the air in the last march, W; negative where the air is cooled. */
    double heat();
}
