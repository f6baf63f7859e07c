package hotday.vehicle.airpath;

/**
 * How well the stack is sealed against hot air that comes back from under the bonnet. The share at rest is from memory and is
 * fitted when seen; it falls e-fold per 20 km/h of road speed.
 */
public enum Sealing {
    GOOD(0.10),
    FAIR(0.22),
    POOR(0.40);

    private static final double SPEED = 20.0 / 3.6; // m/s

    private final double atRest;

    Sealing(double atRest) {
        this.atRest = atRest;
    }

    /** Share of underhood air in the air at the face with the vehicle at rest, 0..1. */
    public double atRest() {
        return atRest;
    }

    /** Share of underhood air that comes round the stack at a road speed in m/s (either way), 0..1. */
    public double share(double speed) {
        return atRest * remaining(speed);
    }

    /** What a road speed in m/s (either way) leaves of the share at rest, 0..1. */
    public static double remaining(double speed) {
        return Math.exp(-Math.abs(speed) / SPEED);
    }

    /** The same with what blows back through reversed tiles and is drawn in again by the others, 0..1. */
    public double share(double speed, TileFlow flow) {
        double fresh =
                1.0 - Math.min(1.0, flow.reversedMassFlow() / Math.max(flow.intakeMassFlow(), Double.MIN_NORMAL));
        return 1.0 - (1.0 - share(speed)) * fresh;
    }

    /** Air at the face, K, from outside and underhood temperature, K. */
    public static double faceTemperature(double ambient, double underhood, double share) {
        return ambient + share * (underhood - ambient);
    }
}
