package hotday.vehicle.front;

import hotday.core.table.Curve;
import hotday.physics.exchanger.AirSide;
import hotday.physics.exchanger.FaceGrid;
import hotday.physics.exchanger.Footprint;
import hotday.physics.exchanger.LiquidMarch;
import hotday.physics.exchanger.Passes;
import hotday.physics.exchanger.Stack;
import hotday.physics.exchanger.TileLaw;
import hotday.physics.exchanger.TiledCore;
import hotday.physics.fluid.Air;
import hotday.physics.fluid.Coolant;
import hotday.physics.refrigerant.Refrigerant;
import hotday.vehicle.airpath.Face;
import hotday.vehicle.airpath.Grid;
import hotday.vehicle.airpath.Rectangle;
import hotday.vehicle.airpath.Sealing;
import hotday.vehicle.airpath.TileFlow;
import hotday.vehicle.airpath.TilePath;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.VehicleSpec.CoreKind;
import hotday.vehicle.spec.VehicleSpec.PlacedCore;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Air and cores of one vehicle's front. The radiator is given its coolant; the other cores are given their heat, and their
 * fluid becomes as hot as the air demands. Air path, cores, recirculation and densities follow one another until nothing
 * moves (a fixed point, damped). For pictures and checks at one operating point; not for time loops.
 */
public final class Front {
    static final double REFERENCE_FLUX = 3.0 * 1.2; // kg/(s m2): 3 m/s at 1.2 kg/m3
    static final double SPECIFIC_HEAT = 1007.0; // J/(kg K) of air, 20..60 degC
    private static final double[] CONDENSER_PASSES = {0.5, 0.3, 0.2};
    /** Inside of gearbox and charge-air coolers, as conductive as their air side at 3 m/s; from memory. */
    private static final double INSIDE_SHARE = 1.0;
    /** What cools in them drops by about this much on its way, K; common practice, no source. */
    private static final double FLUID_DROP = 40.0;

    private static final double HOTTEST = 700.0; // K, of a fluid that cannot give its heat away
    private static final int SWEEPS = 300;
    private static final double DAMPING = 0.6;
    private static final double SETTLED = 1e-6; // K

    private final VehicleSpec spec;
    private final TilePath path;
    private final Grid grid;
    private final int tiles;
    private final List<PlacedCore> cores;
    private final AirSide[] airSides;
    private final Passes[] passes;
    private final TiledCore[] marches;
    private final Condenser[] condensers;
    private final Stack stack;
    private final Curve coolantSide;

    private Front(VehicleSpec spec) {
        this.spec = spec;
        Face face = FaceOf.face(spec);
        this.path = TilePath.compile(face);
        this.grid = face.grid();
        this.tiles = grid.tiles();
        this.cores = spec.stack().cores();
        FaceGrid marched = marched(grid);
        int n = cores.size();
        this.airSides = new AirSide[n];
        this.passes = new Passes[n];
        this.marches = new TiledCore[n];
        this.condensers = new Condenser[n];
        for (int i = 0; i < n; i++) {
            PlacedCore core = cores.get(i);
            airSides[i] = new AirSide(core.airConductance() / core.place().area(), REFERENCE_FLUX, core.airExponent());
            Footprint footprint = footprint(marched, grid, core.place());
            if (core.kind() == CoreKind.CONDENSER) {
                passes[i] = footprint.rows() >= CONDENSER_PASSES.length
                        ? Passes.multiPass(footprint, Passes.Side.LEFT, CONDENSER_PASSES)
                        : Passes.crossFlow(footprint, Passes.Side.LEFT);
                condensers[i] =
                        new Condenser(Refrigerant.R134A, passes[i], core.place().height(), core.depth());
                marches[i] = condensers[i].march();
            } else {
                passes[i] = Passes.crossFlow(footprint, Passes.Side.LEFT);
                marches[i] = new LiquidMarch(passes[i], TileLaw.TUBE_MIXED);
            }
        }
        this.stack = new Stack(marched, Arrays.asList(marches));
        this.coolantSide = Curve.of(spec.radiator().flowShare(), spec.radiator().conductanceShare());
    }

    /** Places everything on tiles. */
    public static Front compile(VehicleSpec spec) {
        return new Front(spec);
    }

    private static FaceGrid marched(Grid grid) {
        double[] heights = new double[grid.rows()];
        double[] widths = new double[grid.columns()];
        for (int r = 0; r < heights.length; r++) {
            heights[r] = grid.y().get(r + 1) - grid.y().get(r);
        }
        for (int c = 0; c < widths.length; c++) {
            widths[c] = grid.x().get(c + 1) - grid.x().get(c);
        }
        return new FaceGrid(heights, widths);
    }

    private static Footprint footprint(FaceGrid marched, Grid grid, Rectangle place) {
        int[] covered = grid.inside(place);
        int first = covered[0];
        int last = covered[covered.length - 1];
        int columns = grid.columns();
        return new Footprint(marched, first / columns, last / columns, first % columns, last % columns);
    }

    /** Everything that changes while settling. */
    private final class Pass {
        final FrontInputs in;
        final TileFlow flow = path.start();
        final double[] fluid = new double[cores.size()]; // temperature of what enters each core, K
        final double[] coreTemperature = new double[tiles * cores.size()];
        final double[] rate = new double[tiles];
        final double[] flux = new double[tiles];
        final double[] logarithms = new double[tiles];
        final double[] front = new double[tiles];
        double face;
        double rear;
        double underhood;
        double moved;
        boolean given = true;

        Pass(FrontInputs in) {
            this.in = in;
            Arrays.fill(coreTemperature, in.ambient());
            face = in.ambient();
            rear = in.ambient() + 20.0;
            underhood = rear;
            for (int i = 0; i < fluid.length; i++) {
                fluid[i] = cores.get(i).kind() == CoreKind.RADIATOR ? in.coolant() : in.ambient() + 30.0;
            }
        }

        void sweep() {
            moved = 0.0;
            given = true;
            air();
            cores();
            stack.pass(rate, front, underhood);
            fluids();
            temperatures();
        }

        private void air() {
            flow.air(in.speed(), in.ambient(), in.pressure(), rear);
            for (int fan = 0; fan < spec.stack().fans(); fan++) {
                flow.fan(fan, in.fanSpeed());
            }
            path.solve(flow, coreTemperature);
            double density = Air.density(in.pressure(), in.ambient());
            for (int t = 0; t < tiles; t++) {
                flux[t] = density * flow.velocity(t);
                rate[t] = flux[t] * grid.area(t) * SPECIFIC_HEAT;
            }
            AirSide.logarithms(flux, logarithms);
            Arrays.fill(front, face);
        }

        private void cores() {
            for (int i = 0; i < marches.length; i++) {
                if (condensers[i] != null) {
                    airSides[i].fill(
                            passes[i], logarithms, condensers[i].march().airConductance());
                    given &= condensers[i].set(fluid[i], in.condenserHeat()) || in.condenserHeat() <= 0.0;
                } else {
                    liquid(i, (LiquidMarch) marches[i]);
                }
            }
        }

        private void liquid(int i, LiquidMarch march) {
            airSides[i].fill(passes[i], logarithms, march.airConductance());
            if (cores.get(i).kind() == CoreKind.RADIATOR) {
                VehicleSpec.Radiator radiator = spec.radiator();
                double share = coolantSide.value(in.coolantFlow() / radiator.coolantFlow());
                double heat = Coolant.specificHeat(in.coolant(), spec.coolant().glycolVolumeShare());
                passes[i].spread(radiator.coolantConductance() * share, march.liquidConductance());
                march.flow(in.coolantFlow() * heat, in.coolant());
            } else {
                passes[i].spread(INSIDE_SHARE * cores.get(i).airConductance(), march.liquidConductance());
                march.flow(wanted(i) / FLUID_DROP, fluid[i]);
            }
        }

        private double wanted(int i) {
            return switch (cores.get(i).kind()) {
                case GEARBOX_COOLER -> in.gearboxHeat();
                case CONDENSER -> in.condenserHeat();
                case CHARGE_AIR_COOLER -> in.chargeHeat();
                case RADIATOR -> marches[i].heat();
            };
        }

        /** Moves every fluid but the coolant to where it would give the heat it is asked for. */
        private void fluids() {
            for (int i = 0; i < marches.length; i++) {
                if (cores.get(i).kind() == CoreKind.RADIATOR || wanted(i) <= 0.0) {
                    continue;
                }
                double drive = Math.max(1.0, fluid[i] - face);
                double perKelvin = marches[i].heat() / drive;
                double step = perKelvin > 0.0 ? (wanted(i) - marches[i].heat()) / perKelvin : 50.0;
                double next = Math.min(HOTTEST, fluid[i] + DAMPING * Math.max(-50.0, Math.min(50.0, step)));
                moved = Math.max(moved, Math.abs(next - fluid[i]));
                given &= next < HOTTEST;
                fluid[i] = next;
            }
        }

        private void temperatures() {
            int n = cores.size();
            double mass = 0.0;
            double carried = 0.0;
            for (int t = 0; t < tiles; t++) {
                if (rate[t] > 0.0) {
                    mass += rate[t];
                    carried += rate[t] * stack.air(n, t);
                }
                for (int i = 0; i < n; i++) {
                    coreTemperature[t * n + i] = 0.5 * (stack.air(i, t) + stack.air(i + 1, t));
                }
            }
            double behind = mass > 0.0 ? carried / mass : in.ambient();
            double bay = behind + (mass > 0.0 ? in.surfaceHeat() / mass : 0.0);
            double share = face().sealing().share(in.speed(), flow);
            double mixed = Sealing.faceTemperature(in.ambient(), bay, share);
            rear = towards(rear, behind);
            underhood = towards(underhood, bay);
            face = towards(face, mixed);
        }

        private double towards(double from, double to) {
            moved = Math.max(moved, Math.abs(to - from));
            return Math.min(HOTTEST, from + DAMPING * (to - from));
        }
    }

    private Face face() {
        return path.face();
    }

    /** Settles an operating point. */
    public FrontView settle(FrontInputs in) {
        Pass pass = new Pass(in);
        int sweeps = 0;
        do {
            pass.sweep();
            sweeps++;
        } while (pass.moved > SETTLED && sweeps < SWEEPS);
        return view(pass);
    }

    private FrontView view(Pass pass) {
        List<FrontView.CoreView> views = new ArrayList<>();
        OptionalDouble condensing = OptionalDouble.empty();
        OptionalDouble pressure = OptionalDouble.empty();
        for (int i = 0; i < cores.size(); i++) {
            views.add(view(pass, i));
            if (condensers[i] != null && pass.in.condenserHeat() > 0.0) {
                condensing = OptionalDouble.of(condensers[i].condensing());
                pressure = OptionalDouble.of(condensers[i].pressure());
            }
        }
        List<Double> speed = new ArrayList<>();
        for (int t = 0; t < tiles; t++) {
            speed.add(pass.flow.velocity(t));
        }
        List<TileFlow.FanState> fans = new ArrayList<>();
        for (int fan = 0; fan < spec.stack().fans(); fan++) {
            fans.add(pass.flow.fanState(fan));
        }
        return new FrontView(
                face(),
                speed,
                views,
                pass.front[0],
                pass.rear,
                pass.underhood,
                pass.flow.massFlow(),
                pass.flow.reversedMassFlow(),
                pass.flow.flapMassFlow(),
                fans,
                condensing,
                pressure,
                pass.moved <= SETTLED && pass.given);
    }

    private FrontView.CoreView view(Pass pass, int core) {
        List<Double> in = new ArrayList<>();
        List<Double> out = new ArrayList<>();
        Rectangle place = cores.get(core).place();
        for (int t = 0; t < tiles; t++) {
            boolean covered = place.holds(grid.middleX(t), grid.middleY(t));
            int entry = pass.rate[t] >= 0.0 ? core : core + 1;
            int leaving = pass.rate[t] >= 0.0 ? core + 1 : core;
            in.add(covered ? stack.air(entry, t) : Double.NaN);
            out.add(covered ? stack.air(leaving, t) : Double.NaN);
        }
        return new FrontView.CoreView(cores.get(core), in, out, marches[core].heat(), pass.flow.coreMassFlow(core));
    }
}
