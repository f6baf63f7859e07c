package hotday.vehicle.airpath;

import hotday.physics.fluid.Air;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Inputs and results of the air through a face; one per thread, not shared. What was found last is where the next solution
 * begins, and does not change it beyond the tolerance. Pressures are gauge, Pa against the air outside; flows are positive rearwards.
 */
public final class TileFlow {
    /** What the stream and a fan do to each other. */
    public enum FanState {
        /** The shaft drives the air; beyond the free flow of the fan it does so as a restriction. */
        POWERED,
        /** The stream turns the rotor, or the fan is off. */
        WINDMILLING,
        /** Driven, but left of the peak of its curve or with air coming back through it. */
        STALLED
    }

    private static final double NO_AIR = 1e-6; // kg/s

    // inputs
    double speed;
    double ambient;
    double pressure;
    double density;
    double rearTemperature;
    double rearDensity;
    final double[] fanSpeed;

    // set up for one solution, tiles in the order of their groups
    final double[] linear;
    final double[] square;
    final double[] front;
    final PlenumOutlet outlet;
    final TurningFan[] pushing;
    final double[] pusherPressure;
    final FallingRoot exitRoot = new FallingRoot();
    final FallingRoot plenumRoot = new FallingRoot();
    final FallingRoot pusherRoot = new FallingRoot();
    double basePressure;
    double exitResistance;

    // unknowns, kept as a start
    double exitFlow;
    double plenumFlow;
    final double[] pusherFlow;

    // sums of the tiles at one pair of pressures
    double volume;
    double volumeSlope;
    double gross;
    double shrouded;
    double unshrouded;
    double shroudedByPlenum;
    double crossed;
    double unshroudedByUnderhood;
    double plenumFlowByUnderhood;
    double pushedShrouded;
    double pushedShroudedSlope;

    // results
    final double[] velocity;
    final double[] coreMassFlow;
    final double[] fanFlow;
    final double[] fanPressure;
    final FanState[] fanState;
    final double[] shaftPower;
    double plenumPressure;
    double underhoodPressure;
    double intake;
    double reversed;
    int evaluations;

    TileFlow(Face face) {
        int tiles = face.grid().tiles();
        int fans = face.fans().size();
        linear = new double[tiles];
        square = new double[tiles];
        front = new double[tiles];
        velocity = new double[tiles];
        coreMassFlow = new double[face.cores().size()];
        fanSpeed = new double[fans];
        fanFlow = new double[fans];
        fanPressure = new double[fans];
        shaftPower = new double[fans];
        fanState = new FanState[fans];
        Arrays.fill(fanState, FanState.WINDMILLING);
        List<TurningFan> pulls = new ArrayList<>();
        List<TurningFan> pushes = new ArrayList<>();
        face.fans().forEach(fan -> (fan.pushes() ? pushes : pulls).add(new TurningFan(fan.curve())));
        outlet = new PlenumOutlet(pulls, face.flaps(), face.shroud().gap());
        pushing = pushes.toArray(TurningFan[]::new);
        pusherFlow = new double[pushing.length];
        pusherPressure = new double[pushing.length];
        air(0.0, 293.15, 101325.0, 293.15);
    }

    /**
     * Sets the air outside and behind the cores.
     *
     * @param speed of the air against the face, m/s; below 0 from behind
     * @param ambientTemperature K, above 0
     * @param ambientPressure Pa absolute, above 0: altitude enters here
     * @param behind mean temperature of the air behind the cores, K, above 0
     */
    public void air(double speed, double ambientTemperature, double ambientPressure, double behind) {
        this.speed = within("air speed", speed, -500.0, 500.0, " m/s");
        this.ambient = within("ambient temperature", ambientTemperature, 100.0, 1000.0, " K");
        this.pressure = within("ambient pressure", ambientPressure, 1e3, 1e6, " Pa");
        this.rearTemperature = within("temperature behind the cores", behind, 100.0, 1500.0, " K");
        this.density = Air.density(pressure, ambient);
        this.rearDensity = Air.density(pressure, rearTemperature);
    }

    /** Sets the speed of a fan over that of its curve, 0..10. */
    public void fan(int fan, double speedRatio) {
        fanSpeed[fan] = within("fan speed ratio", speedRatio, 0.0, 10.0, "");
    }

    private static double within(String name, double value, double least, double most, String unit) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    name + " " + value + unit + " must be from " + least + " to " + most + unit);
        }
        return value;
    }

    /** Velocity at a tile's face, m/s, at outside density; below 0 where air comes out of the front. */
    public double velocity(int tile) {
        return velocity[tile];
    }

    /** Mass flow through a core, kg/s. */
    public double coreMassFlow(int core) {
        return coreMassFlow[core];
    }

    /** Between cores and fans, Pa gauge; that of the underhood where no fan pulls. */
    public double plenumPressure() {
        return plenumPressure;
    }

    /** In the bay, Pa gauge. */
    public double underhoodPressure() {
        return underhoodPressure;
    }

    /** Through a fan, m3/s, at the density where it turns. */
    public double fanFlow(int fan) {
        return fanFlow[fan];
    }

    /** Pressure rise of a fan, Pa; below 0 where it resists. */
    public double fanPressure(int fan) {
        return fanPressure[fan];
    }

    public FanState fanState(int fan) {
        return fanState[fan];
    }

    /** W. */
    public double shaftPower(int fan) {
        return shaftPower[fan];
    }

    /** Through the relief flaps, kg/s, 0 or more. */
    public double flapMassFlow() {
        return outlet.open() ? outlet.flapFlow() : 0.0;
    }

    /** Through gaps of the shroud, kg/s, positive from plenum to underhood. */
    public double gapMassFlow() {
        return outlet.open() ? outlet.gapFlow() : 0.0;
    }

    /** Through all tiles, reversed ones counted against the others, kg/s. */
    public double massFlow() {
        return shrouded + unshrouded;
    }

    /** Through tiles outside the shroud, kg/s; all of it where no fan pulls. */
    public double unshroudedMassFlow() {
        return unshrouded;
    }

    /** Out of the exit, kg/s. */
    public double exitMassFlow() {
        return exitFlow;
    }

    /** Into the front, kg/s, 0 or more. */
    public double intakeMassFlow() {
        return intake;
    }

    /** Out of the front through reversed tiles, kg/s, 0 or more. */
    public double reversedMassFlow() {
        return reversed;
    }

    /** What is missing in the balances of plenum and bay, as a share of what flows; rounding when solved. */
    public double imbalance() {
        double passing = intake + reversed;
        double plenum = outlet.open() ? shrouded - outlet.flapFlow() - outlet.gapFlow() : 0.0;
        for (int fan = 0; fan < fanFlow.length - pushing.length; fan++) {
            double mass = rearDensity * outlet.fanFlow(fan);
            plenum -= mass;
            passing += Math.abs(mass);
        }
        return (Math.abs(massFlow() - exitFlow) + Math.abs(plenum)) / Math.max(passing, NO_AIR);
    }

    /** How often the tiles were summed for the last solution. */
    public int evaluations() {
        return evaluations;
    }
}
