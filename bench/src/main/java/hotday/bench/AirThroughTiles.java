package hotday.bench;

import hotday.physics.component.FanCurve;
import hotday.physics.fluid.Air;
import hotday.vehicle.airpath.Face;
import hotday.vehicle.airpath.Face.Core;
import hotday.vehicle.airpath.Face.Disc;
import hotday.vehicle.airpath.Face.ElectricFan;
import hotday.vehicle.airpath.Face.Exit;
import hotday.vehicle.airpath.Face.Flaps;
import hotday.vehicle.airpath.Face.Inlet;
import hotday.vehicle.airpath.Face.Opening;
import hotday.vehicle.airpath.Face.Shroud;
import hotday.vehicle.airpath.Grid;
import hotday.vehicle.airpath.Rectangle;
import hotday.vehicle.airpath.Sealing;
import hotday.vehicle.airpath.TileFlow;
import hotday.vehicle.airpath.TilePath;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Air through a front of 12 x 8 tiles with four cores, relief flaps and one fan while speed and fan move a little from solution to solution,
 * beside the same two unknowns (plenum flow inside exit flow) solved to the same balance by nested bracketing solvers of a
 * general library (Hipparchus, Brent of order five).
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@State(Scope.Thread)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class AirThroughTiles {
    private static final double PRESSURE = 98e3;
    private static final double AMBIENT = 308.15;
    private static final double REAR = 335.15;
    private static final Exit EXIT = new Exit(0.17, 1.2);
    private static final double BASE = -0.12;
    private static final FanCurve FAN = new FanCurve(320.0, -50.0, -100.0, 60.0, 90.0, 180.0, -30.0, 1.2);
    private static final Flaps FLAPS = new Flaps(0.03, 0.62, 8.0);
    private static final double[] RECOVERY = {0.7, 0.2};
    private static final double[] LOSS = {2.5, 20.0};

    private Face face;
    private TilePath path;
    private TileFlow flow;
    private double[] temperatures;
    private int turn;

    private double[] linear;
    private double[] square;
    private double[] front;
    private boolean[] shrouded;

    /** The front, and the same resistances tile by tile for the peer. */
    @Setup
    public void prepare() {
        Rectangle whole = new Rectangle(0.0, 0.0, 0.72, 0.48);
        Rectangle blanked = new Rectangle(0.0, 0.18, 0.72, 0.12);
        Inlet open = new Inlet(RECOVERY[0], LOSS[0]);
        face = new Face(
                Grid.uniform(12, 8, whole.width(), whole.height()),
                List.of(
                        new Core("gearbox cooler", 0, new Rectangle(0.0, 0.30, 0.24, 0.18), 6.0, 7.0),
                        new Core("charge-air cooler", 1, new Rectangle(0.24, 0.24, 0.48, 0.24), 6.0, 6.0),
                        new Core("condenser", 2, new Rectangle(0.0, 0.0, 0.72, 0.42), 5.0, 4.5),
                        new Core("radiator", 3, whole, 8.0, 6.0)),
                List.of(new Opening(blanked, new Inlet(RECOVERY[1], LOSS[1])), new Opening(whole, open)),
                open,
                new Shroud(new Rectangle(0.0, 0.06, 0.72, 0.42), 0.0),
                List.of(new ElectricFan(FAN, new Disc(0.36, 0.27, 0.4), false)),
                FLAPS,
                EXIT,
                BASE,
                0.0,
                Sealing.GOOD);
        path = TilePath.compile(face);
        flow = path.start();
        temperatures = new double[face.grid().tiles() * face.cores().size()];
        Arrays.fill(temperatures, 325.0);
        layOut(blanked);
        if (Math.abs(tiles() - nestedBrent(speed(), fan())) > 1e-9) {
            throw new IllegalStateException("product and peer disagree");
        }
    }

    private void layOut(Rectangle blanked) {
        Grid grid = face.grid();
        linear = new double[grid.tiles()];
        square = new double[grid.tiles()];
        front = new double[grid.tiles()];
        shrouded = new boolean[grid.tiles()];
        double density = PRESSURE / (287.055 * AMBIENT);
        double viscosity = Air.viscosity(AMBIENT) / Air.viscosity(293.15);
        for (int tile = 0; tile < grid.tiles(); tile++) {
            int closed = blanked.holds(grid.middleX(tile), grid.middleY(tile)) ? 1 : 0;
            front[tile] = RECOVERY[closed];
            square[tile] = 0.5 * density * LOSS[closed];
            shrouded[tile] = face.shroud().place().holds(grid.middleX(tile), grid.middleY(tile));
            for (Core core : face.cores()) {
                if (core.place().holds(grid.middleX(tile), grid.middleY(tile))) {
                    linear[tile] += viscosity * core.linear();
                    square[tile] += density / 1.2 * core.square();
                }
            }
        }
    }

    private double speed() {
        return 12.0 + 0.02 * (turn % 50);
    }

    private double fan() {
        return 0.8 + 0.001 * (turn % 40);
    }

    private void weather() {
        turn++;
        flow.air(speed(), AMBIENT, PRESSURE, REAR);
        flow.fan(0, fan());
    }

    /** The product, warm-started, all cores at outside temperature. */
    @Benchmark
    public double tiles() {
        weather();
        path.solve(flow);
        return flow.massFlow();
    }

    /** The product, warm-started, with each core's own air. */
    @Benchmark
    public double tilesWithLocalAir() {
        weather();
        path.solve(flow, temperatures);
        return flow.massFlow();
    }

    /** The product from zero flow. */
    @Benchmark
    public double tilesFromRest() {
        weather();
        TileFlow fresh = path.start();
        fresh.air(speed(), AMBIENT, PRESSURE, REAR);
        fresh.fan(0, fan());
        path.solve(fresh);
        return fresh.massFlow();
    }

    /** The peer: the same balances by nested bracketing. */
    @Benchmark
    public double nestedBrent() {
        turn++;
        return nestedBrent(speed(), fan());
    }

    private double nestedBrent(double speed, double ratio) {
        double ram = 0.5 * PRESSURE / (287.055 * AMBIENT) * speed * speed;
        BracketingNthOrderBrentSolver solver = new BracketingNthOrderBrentSolver(0.0, 1e-12, 1e-12, 5);
        return solver.solve(100, exit -> surplus(exit, ram, ratio), -10.0, 10.0, AllowedSolution.ANY_SIDE);
    }

    private double surplus(double exit, double ram, double ratio) {
        double rear = PRESSURE / (287.055 * REAR);
        double resistance = 0.5 * EXIT.loss() / (rear * EXIT.area() * EXIT.area());
        double underhood = BASE * ram + resistance * exit * Math.abs(exit);
        BracketingNthOrderBrentSolver solver = new BracketingNthOrderBrentSolver(0.0, 1e-13, 1e-13, 5);
        double fanFlow = solver.solve(
                100, q -> plenumSurplus(q, underhood, ram, ratio, rear), -10.0, 10.0, AllowedSolution.ANY_SIDE);
        double plenum = underhood - FAN.pressure(fanFlow, ratio, rear);
        return mass(true, plenum, ram) + mass(false, underhood, ram) - exit;
    }

    private double plenumSurplus(double q, double underhood, double ram, double ratio, double rear) {
        double rise = FAN.pressure(q, ratio, rear);
        double drop = Math.max(0.0, -rise - FLAPS.cracking());
        double flaps = FLAPS.area() * FLAPS.discharge() * Math.sqrt(2.0 * rear * drop);
        return mass(true, underhood - rise, ram) - rear * q - flaps;
    }

    private double mass(boolean inside, double behind, double ram) {
        double density = PRESSURE / (287.055 * AMBIENT);
        double sum = 0.0;
        for (int tile = 0; tile < front.length; tile++) {
            if (shrouded[tile] == inside) {
                double drop = front[tile] * ram - behind;
                double root = Math.sqrt(linear[tile] * linear[tile] + 4.0 * square[tile] * Math.abs(drop));
                sum += 2.0 * drop / (linear[tile] + root);
            }
        }
        return sum * density * 0.0036;
    }
}
