package hotday.physics.exchanger;

/**
 * A liquid that cools down or warms up on its way through a core (coolant, oil, charge air): the passes followed tile by tile, air
 * of any temperature and speed at every tile. Fill {@link #airConductance} and {@link #liquidConductance}, set the {@link #flow}, march. No
 * heat where air or liquid stands still. Both sides balance to rounding. Not for several threads.
 */
public final class LiquidMarch implements TiledCore {
    /** Capacity rates up to here count as standing still, W/K. */
    static final double STILL = 1e-9;

    private final Passes passes;
    private final TileLaw law;
    private final double[] airConductance;
    private final double[] liquidConductance;
    private final double[] heats;
    private double liquidRate;
    private double inlet;
    private double outlet;
    private double heat;

    public LiquidMarch(Passes passes, TileLaw law) {
        this.passes = passes;
        this.law = law;
        int tiles = passes.footprint().face().tiles();
        airConductance = new double[tiles];
        liquidConductance = new double[tiles];
        heats = new double[tiles];
    }

    public Passes passes() {
        return passes;
    }

    /** To be filled: from wall to air per tile of the face, W/K, 0 or more. */
    public double[] airConductance() {
        return airConductance;
    }

    /** To be filled: from liquid to wall per tile of the face, W/K, 0 or more. */
    public double[] liquidConductance() {
        return liquidConductance;
    }

    /**
     * What enters.
     *
     * @param capacityRate of all liquid, W/K, 0 or more
     * @param temperature K
     */
    public void flow(double capacityRate, double temperature) {
        liquidRate = capacityRate;
        inlet = temperature;
    }

    @Override
    public void march(double[] airRate, double[] air) {
        heat = 0;
        double temperature = inlet;
        for (int pass = 0; pass < passes.passes(); pass++) {
            double cooled = 0;
            for (int lane = passes.firstLane(pass); lane < passes.firstLane(pass + 1); lane++) {
                cooled += passes.share(lane) * (temperature - lane(lane, temperature, airRate, air));
            }
            temperature -= cooled;
        }
        outlet = temperature;
    }

    private double lane(int lane, double start, double[] airRate, double[] air) {
        double rate = liquidRate * passes.share(lane);
        double temperature = start;
        for (int i = passes.firstPlace(lane); i < passes.firstPlace(lane + 1); i++) {
            int tile = passes.tile(i);
            double through = Math.abs(airRate[tile]);
            double perKelvin = through > STILL && rate > STILL ? perKelvin(tile, through, rate) : 0.0;
            double given = perKelvin * (temperature - air[tile]);
            heats[tile] = given;
            if (perKelvin > 0.0) {
                air[tile] += given / through;
                temperature -= given / rate;
                heat += given;
            }
        }
        return temperature;
    }

    private double perKelvin(int tile, double airRate, double rate) {
        double outside = airConductance[tile];
        double inside = liquidConductance[tile];
        double both = outside + inside;
        return both > 0.0 ? law.heatPerKelvin(airRate, rate, outside * inside / both) : 0.0;
    }

    @Override
    public double heat() {
        return heat;
    }

    /** Heat of a tile of the face in the last march, W; only tiles of this core are written. */
    public double heat(int tile) {
        return heats[tile];
    }

    /** Temperature of the liquid that leaves, mixed, K; the inlet's where it stands still. */
    public double outlet() {
        return outlet;
    }
}
