package hotday.bench;

import hotday.physics.component.Core;
import hotday.physics.exchanger.AirSide;
import hotday.physics.exchanger.FaceGrid;
import hotday.physics.exchanger.Footprint;
import hotday.physics.exchanger.LiquidMarch;
import hotday.physics.exchanger.Passes;
import hotday.physics.exchanger.RefrigerantMarch;
import hotday.physics.exchanger.RefrigerantStream;
import hotday.physics.exchanger.Stack;
import hotday.physics.exchanger.TileLaw;
import hotday.physics.transfer.Arrangement;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
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
 * Air through four cores on a 12 x 8 face, 240 tiles of cores, conductances from the air's flow included; beside it one of the four
 * marched plainly by the same law, with records of each tile's inlets and outlets and a power of the flow a tile.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@State(Scope.Thread)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class StackPass {
    private static final int COLUMNS = 12;
    private static final int ROWS = 8;
    private static final double AIR_HEAT = 1007.0;

    private final FaceGrid face = FaceGrid.even(ROWS, COLUMNS, 0.4, 0.6);
    private final AirSide side = new AirSide(8000, 3.5, 0.5);
    private final double[] flux = new double[face.tiles()];
    private final double[] logarithms = new double[face.tiles()];
    private final double[] rates = new double[face.tiles()];
    private final double[] air = new double[face.tiles()];
    private final double[] front = new double[face.tiles()];
    private final LiquidMarch gearbox =
            liquid(Passes.crossFlow(new Footprint(face, 5, 7, 0, 3), Passes.Side.RIGHT), 300);
    private final LiquidMarch charge =
            liquid(Passes.crossFlow(new Footprint(face, 4, 7, 0, 11), Passes.Side.LEFT), 900);
    private final LiquidMarch radiator = liquid(Passes.crossFlow(face.whole(), Passes.Side.LEFT), 3800);
    private final RefrigerantStream refrigerant = new RefrigerantStream(11);
    private final RefrigerantMarch condenser = new RefrigerantMarch(
            Passes.multiPass(new Footprint(face, 0, 6, 0, 11), Passes.Side.LEFT, 0.5, 0.3, 0.2), refrigerant);
    private final Stack stack = new Stack(face, List.of(gearbox, condenser, charge, radiator));
    private final Core tile = new Core(19.0, 0.01, 0.5, 40.0, 0.25, 0.0);

    private static LiquidMarch liquid(Passes passes, double inside) {
        LiquidMarch march = new LiquidMarch(passes, TileLaw.TUBE_MIXED);
        passes.spread(inside, march.liquidConductance());
        return march;
    }

    /** A hot idle with uneven air. */
    @Setup
    public void prepare() {
        Arrays.fill(front, 318.15);
        for (int t = 0; t < flux.length; t++) {
            flux[t] = 1.2 + 0.03 * (t % COLUMNS) + 0.15 * (t / COLUMNS);
            rates[t] = AIR_HEAT * flux[t] * face.area(t);
        }
        refrigerant.massFlow = 0.045;
        refrigerant.enthalpy = 450e3;
        refrigerant.saturationTemperature = 337.0;
        refrigerant.liquidEnthalpy = 293e3;
        refrigerant.vapourEnthalpy = 427e3;
        refrigerant.liquidHeat = 1650;
        refrigerant.vapourHeat = 1350;
        refrigerant.liquidConductance = 2500;
        refrigerant.vapourConductance = 2000;
        for (int i = 0; i < refrigerant.twoPhaseConductance.length; i++) {
            refrigerant.twoPhaseConductance[i] = 2500 + 6000 * refrigerant.quality(i);
        }
    }

    /** The product: four cores, conductances included. */
    @Benchmark
    public double fourCores() {
        AirSide.logarithms(flux, logarithms);
        side.fill(gearbox.passes(), logarithms, gearbox.airConductance());
        side.fill(condenser.passes(), logarithms, condenser.airConductance());
        side.fill(charge.passes(), logarithms, charge.airConductance());
        side.fill(radiator.passes(), logarithms, radiator.airConductance());
        gearbox.flow(220, 383.15);
        charge.flow(150, 420);
        radiator.flow(7000, 375);
        stack.pass(rates, front, 345);
        return radiator.heat() + condenser.heat();
    }

    /** The product: the radiator alone. */
    @Benchmark
    public double radiatorAlone() {
        AirSide.logarithms(flux, logarithms);
        side.fill(radiator.passes(), logarithms, radiator.airConductance());
        radiator.flow(7000, 375);
        System.arraycopy(front, 0, air, 0, air.length);
        radiator.march(rates, air);
        return radiator.heat();
    }

    /** The peer: the radiator alone, written plainly. */
    @Benchmark
    public double radiatorWithRecords() {
        double heat = 0;
        for (int row = 0; row < ROWS; row++) {
            Core.Inlet coolant = new Core.Inlet(2.0 / ROWS, 3500.0, 375.0);
            for (int column = 0; column < COLUMNS; column++) {
                int t = face.tile(row, column);
                Core.Inlet through = new Core.Inlet(flux[t] * face.area(t), AIR_HEAT, front[t]);
                Core.Outlet out = tile.outlet(Arrangement.CROSS_MAX_MIXED, through, coolant);
                heat += out.heat();
                coolant = new Core.Inlet(coolant.massFlow(), coolant.specificHeat(), out.coolant());
            }
        }
        return heat;
    }
}
