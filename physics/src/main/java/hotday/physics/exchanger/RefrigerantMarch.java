package hotday.physics.exchanger;

/**
 * A refrigerant at one pressure through a core, condensing or evaporating: its enthalpy is followed tile by tile. Vapour and liquid
 * change temperature as in {@link TileLaw#TUBE_MIXED}; between them the refrigerant stands at saturation temperature. A tile
 * where the phase changes is split there exactly: with the share phi of the tile, m (h - hV) = m cp (T - T_air) (1 - exp(-phi Ca e / (m
 * cp))). Two-phase conductance is taken at the mean quality of a tile (foreseen without an exponential, second order).
 *
 * <p>Not modelled: pressure loss, condensation on a cold wall while the vapour is still superheated on average, moisture of the air. Fill
 * {@link #stream} and {@link #airConductance}, march. No heat where air or refrigerant stands still. Both sides balance to rounding. Not
 * for several threads.
 */
public final class RefrigerantMarch implements TiledCore {
    private final Passes passes;
    private final RefrigerantStream stream;
    private final double[] airConductance;
    private final double[] heats;
    private double heat;
    private double outlet;
    private double vapourArea;
    private double twoPhaseArea;
    private double liquidArea;

    // within one tile
    private double enthalpy;
    private double left;
    private double flow;
    private double airRate;
    private double airInlet;
    private double outside;
    private double tileArea;

    /** @param stream read at every march */
    public RefrigerantMarch(Passes passes, RefrigerantStream stream) {
        this.passes = passes;
        this.stream = stream;
        int tiles = passes.footprint().face().tiles();
        airConductance = new double[tiles];
        heats = new double[tiles];
    }

    public Passes passes() {
        return passes;
    }

    public RefrigerantStream stream() {
        return stream;
    }

    /** To be filled: from wall to air per tile of the face, W/K, 0 or more. */
    public double[] airConductance() {
        return airConductance;
    }

    @Override
    public void march(double[] rates, double[] air) {
        heat = 0;
        vapourArea = 0;
        twoPhaseArea = 0;
        liquidArea = 0;
        double entering = stream.enthalpy;
        for (int pass = 0; pass < passes.passes(); pass++) {
            double given = 0;
            for (int lane = passes.firstLane(pass); lane < passes.firstLane(pass + 1); lane++) {
                given += passes.share(lane) * (entering - lane(lane, entering, rates, air));
            }
            entering -= given;
        }
        outlet = entering;
    }

    private double lane(int lane, double entering, double[] rates, double[] air) {
        flow = stream.massFlow * passes.share(lane);
        enthalpy = entering;
        for (int i = passes.firstPlace(lane); i < passes.firstPlace(lane + 1); i++) {
            int tile = passes.tile(i);
            airRate = Math.abs(rates[tile]);
            airInlet = air[tile];
            outside = airConductance[tile];
            tileArea = passes.area(i);
            double before = enthalpy;
            tile();
            double given = flow * (before - enthalpy);
            heats[tile] = given;
            heat += given;
            if (given != 0.0) {
                air[tile] = airInlet + given / airRate;
            }
        }
        return enthalpy;
    }

    /** Through one tile, at most three phases in it. */
    private void tile() {
        left = 1.0;
        boolean moving = airRate > LiquidMarch.STILL && flow * stream.liquidHeat > LiquidMarch.STILL && outside > 0.0;
        boolean cooling = stream.temperature(enthalpy) > airInlet;
        while (left > 0.0) {
            if (enthalpy > stream.vapourEnthalpy || (enthalpy == stream.vapourEnthalpy && !cooling)) {
                double gone = moving ? vapour() : left;
                vapourArea += gone * tileArea;
                left -= gone;
            } else if (enthalpy < stream.liquidEnthalpy || (enthalpy == stream.liquidEnthalpy && cooling)) {
                double gone = moving ? liquid() : left;
                liquidArea += gone * tileArea;
                left -= gone;
            } else {
                double gone = moving ? twoPhase() : left;
                twoPhaseArea += gone * tileArea;
                left -= gone;
            }
        }
    }

    /** Share of the tile used up; moves the enthalpy, to the saturated vapour's where that is reached. */
    private double vapour() {
        double rate = flow * stream.vapourHeat;
        double above = (enthalpy - stream.vapourEnthalpy) / stream.vapourHeat;
        double exponent = exponent(stream.vapourConductance, rate);
        double drive = stream.saturationTemperature + above - airInlet;
        double next = enthalpy - stream.vapourHeat * drive * Decay.gone(left * exponent);
        if (next >= stream.vapourEnthalpy || drive <= above) {
            enthalpy = next;
            return left;
        }
        enthalpy = stream.vapourEnthalpy;
        return Math.min(left, Math.log1p(above / (drive - above)) / exponent);
    }

    private double liquid() {
        double rate = flow * stream.liquidHeat;
        double below = (stream.liquidEnthalpy - enthalpy) / stream.liquidHeat;
        double exponent = exponent(stream.liquidConductance, rate);
        double drive = airInlet - (stream.saturationTemperature - below);
        double next = enthalpy + stream.liquidHeat * drive * Decay.gone(left * exponent);
        if (next <= stream.liquidEnthalpy || drive <= below) {
            enthalpy = next;
            return left;
        }
        enthalpy = stream.liquidEnthalpy;
        return Math.min(left, Math.log1p(below / (drive - below)) / exponent);
    }

    private double exponent(double insidePerArea, double rate) {
        return airRate * Decay.gone(series(insidePerArea) / airRate) / rate;
    }

    private double series(double insidePerArea) {
        double inside = insidePerArea * tileArea;
        return outside * inside / (outside + inside);
    }

    private double twoPhase() {
        double drive = airRate * (stream.saturationTemperature - airInlet);
        double perTile = drive * Decay.gone(series(middleConductance(drive)) / airRate) / flow;
        double next = enthalpy - left * perTile;
        double end = perTile > 0 ? stream.liquidEnthalpy : stream.vapourEnthalpy;
        if (perTile > 0 ? next >= end : next <= end) {
            enthalpy = next;
            return left;
        }
        double gone = Math.min(left, (enthalpy - end) / perTile);
        enthalpy = end;
        return gone;
    }

    /** At the quality halfway through the rest of the tile; 1 - exp(-u) foreseen as u / (1 + u/2 + u^2/12). */
    private double middleConductance(double drive) {
        double latent = stream.vapourEnthalpy - stream.liquidEnthalpy;
        double quality = (enthalpy - stream.liquidEnthalpy) / latent;
        double u = series(stream.twoPhaseConductance(quality)) / airRate;
        double change = left * drive * u / (1.0 + u * (0.5 + u / 12.0)) / (flow * latent);
        double end = Math.min(1.0, Math.max(0.0, quality - change));
        return stream.twoPhaseConductance(0.5 * (quality + end));
    }

    @Override
    public double heat() {
        return heat;
    }

    /** Heat of a tile of the face in the last march, W; only tiles of this core are written. */
    public double heat(int tile) {
        return heats[tile];
    }

    /** Specific enthalpy of what leaves, mixed, J/kg; the inlet's where it stands still. */
    public double outletEnthalpy() {
        return outlet;
    }

    /** Temperature of what leaves, K. */
    public double outletTemperature() {
        return stream.temperature(outlet);
    }

    /** Share of the core's area with superheated vapour (desuperheating in a condenser), 0..1. */
    public double vapourShare() {
        return vapourArea / passes.area();
    }

    /** Share of the core's area with both phases, 0..1. */
    public double twoPhaseShare() {
        return twoPhaseArea / passes.area();
    }

    /** Share of the core's area with subcooled liquid, 0..1. */
    public double liquidShare() {
        return liquidArea / passes.area();
    }
}
