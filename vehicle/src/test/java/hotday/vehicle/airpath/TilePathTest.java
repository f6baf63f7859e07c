package hotday.vehicle.airpath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import hotday.physics.component.AirPath;
import hotday.physics.fluid.Air;
import hotday.vehicle.airpath.Face.Flaps;
import hotday.vehicle.airpath.Face.Inlet;
import hotday.vehicle.airpath.Face.Opening;
import hotday.vehicle.airpath.TileFlow.FanState;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class TilePathTest {
    private static final double BALANCE = 1e-9; // relative, mass
    private static final double PRESSURE = 1e-6; // Pa
    private static final double STILL = 1e-6; // kg/s, taken as no air at all
    private static final int FACES = 500;

    /** Every balance and every element's own law, from a cold and from a wrong start, in every kind of face and weather. */
    @Test
    void massIsKeptInEveryFace() {
        SplittableRandom random = new SplittableRandom(20260315);
        RandomFace draw = new RandomFace(random);
        Set<FanState> seen = EnumSet.noneOf(FanState.class);
        int reversed = 0;
        int flaps = 0;
        int worst = 0;
        for (int i = 0; i < FACES; i++) {
            Face face = draw.face();
            TilePath path = TilePath.compile(face);
            TileFlow flow = path.start();
            for (int weather = 0; weather < 6; weather++) {
                draw.weather(flow, face);
                if (weather % 2 == 0) {
                    path.solve(flow);
                } else {
                    path.solve(flow, draw.temperatures(face));
                }
                checkBalances(face, flow, "face " + i + " weather " + weather);
                checkFans(face, flow, "face " + i + " weather " + weather, seen);
                reversed += flow.reversedMassFlow() > 0.0 ? 1 : 0;
                flaps += flow.flapMassFlow() > 0.0 ? 1 : 0;
                worst = Math.max(worst, flow.evaluations());
            }
        }
        assertThat(seen).isEqualTo(EnumSet.allOf(FanState.class));
        assertThat(reversed).isGreaterThan(FACES);
        assertThat(flaps).isGreaterThan(FACES / 5);
        assertThat(worst).as("sums over the tiles").isLessThan(1000);
    }

    /** Cores on exact edges: how finely the face is cut does not matter. */
    @Test
    void finerTilesGiveTheSameFlow() {
        for (double kmh : new double[] {0.0, 40.0, 110.0}) {
            TileFlow coarse = PlainFront.usual().tiles(12, 8).flow(kmh, 1.0);
            for (int finer = 2; finer <= 4; finer *= 2) {
                TileFlow fine = PlainFront.usual().tiles(12 * finer, 8 * finer).flow(kmh, 1.0);
                assertThat(fine.massFlow()).isCloseTo(coarse.massFlow(), within(BALANCE));
                for (int core = 0; core < 4; core++) {
                    assertThat(fine.coreMassFlow(core)).isCloseTo(coarse.coreMassFlow(core), within(BALANCE));
                }
            }
        }
    }

    /** The start is a start: a solution does not depend on what was solved before. */
    @Test
    void startDoesNotMatter() {
        SplittableRandom random = new SplittableRandom(77);
        RandomFace draw = new RandomFace(random);
        for (int i = 0; i < 100; i++) {
            Face face = draw.face();
            TilePath path = TilePath.compile(face);
            TileFlow warm = path.start();
            draw.weather(warm, face);
            path.solve(warm);
            draw.weather(warm, face);
            path.solve(warm);
            TileFlow cold = path.start();
            cold.air(warm.speed, warm.ambient, warm.pressure, warm.rearTemperature);
            for (int fan = 0; fan < face.fans().size(); fan++) {
                cold.fan(fan, warm.fanSpeed[fan]);
            }
            path.solve(cold);
            assertThat(cold.underhoodPressure()).isCloseTo(warm.underhoodPressure(), within(PRESSURE));
            assertThat(cold.plenumPressure()).isCloseTo(warm.plenumPressure(), within(PRESSURE));
        }
    }

    /** One stream without tiles has a closed form (hotday.physics.component.AirPath): one tile must give the same. */
    @Test
    void oneTileIsTheSingleStream() {
        PlainFront one = PlainFront.usual().with(List.of(PlainFront.RADIATOR));
        Face whole = one.face();
        Face face = new Face(
                Grid.uniform(1, 1, 0.72, 0.48),
                whole.cores(),
                List.of(new Opening(PlainFront.WHOLE, new Inlet(0.7, 2.5))),
                whole.blanked(),
                whole.shroud(),
                whole.fans(),
                whole.flaps(),
                whole.exit(),
                -0.12,
                0.0,
                Sealing.GOOD);
        TilePath path = TilePath.compile(face);
        TileFlow flow = path.start();
        for (int i = 0; i < 50; i++) {
            double speed = -10.0 + i;
            double ratio = 0.02 * i;
            flow.air(speed, 293.15, 101325.0, 293.15);
            flow.fan(0, ratio);
            path.solve(flow);
            double density = Air.density(101325.0, 293.15);
            double area = 0.72 * 0.48;
            double square =
                    (density / 1.2 * 6.0 + 1.25 * density) / (area * area) + AirPath.opening(1.2, density, 0.17);
            double drive = AirPath.ram(0.82, density, speed);
            double expected = AirPath.flow(drive, PlainFront.CURVE, ratio, density, 8.0 / area, square);
            assertThat(flow.fanFlow(0)).as("speed %s", speed).isCloseTo(expected, within(BALANCE));
        }
    }

    @Test
    void aSolutionAllocatesNothing() {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        TilePath path = TilePath.compile(PlainFront.usual().face());
        TileFlow flow = path.start();
        double[] temperatures = new double[path.face().grid().tiles() * 4];
        Arrays.fill(temperatures, 330.0);
        double sum = many(path, flow, temperatures, 5_000);
        long before = threads.getCurrentThreadAllocatedBytes();
        sum += many(path, flow, temperatures, 20_000);
        long bytes = threads.getCurrentThreadAllocatedBytes() - before;
        assertThat(bytes).as("bytes for 20000 solutions, sum %s", sum).isLessThan(20_000 / 10);
    }

    private static double many(TilePath path, TileFlow flow, double[] temperatures, int count) {
        double sum = 0.0;
        for (int i = 0; i < count; i++) {
            flow.air(30.0 * (i % 100) / 100.0, 300.0, 1e5, 330.0);
            flow.fan(0, (i % 7) / 7.0);
            if (i % 2 == 0) {
                path.solve(flow);
            } else {
                path.solve(flow, temperatures);
            }
            sum += flow.massFlow();
        }
        return sum;
    }

    private static void checkBalances(Face face, TileFlow flow, String name) {
        double density = flow.density;
        double shrouded = 0.0;
        double all = 0.0;
        double gross = STILL;
        boolean pulled = face.fans().stream().anyMatch(fan -> !fan.pushes());
        for (int tile = 0; tile < face.grid().tiles(); tile++) {
            double mass = density * face.grid().area(tile) * flow.velocity(tile);
            assertThat(mass).as(name).isFinite();
            boolean inside = face.shroud()
                    .place()
                    .holds(face.grid().middleX(tile), face.grid().middleY(tile));
            shrouded += pulled && inside ? mass : 0.0;
            all += mass;
            gross += Math.abs(mass);
        }
        double out = flow.flapMassFlow() + flow.gapMassFlow();
        for (int fan = 0; fan < face.fans().size(); fan++) {
            double through = face.fans().get(fan).pushes() ? 0.0 : flow.rearDensity * flow.fanFlow(fan);
            out += through;
            gross += Math.abs(through);
        }
        assertThat(shrouded).as(name + " plenum").isCloseTo(out, within(BALANCE * gross));
        assertThat(all).as(name + " bay").isCloseTo(flow.exitMassFlow(), within(BALANCE * gross));
        assertThat(flow.imbalance()).as(name).isLessThan(BALANCE);
        assertThat(flow.intakeMassFlow() - flow.reversedMassFlow())
                .as(name)
                .isCloseTo(flow.massFlow(), within(BALANCE * gross));
    }

    private static void checkFans(Face face, TileFlow flow, String name, Set<FanState> seen) {
        double rise = flow.underhoodPressure() - flow.plenumPressure();
        for (int fan = 0; fan < face.fans().size(); fan++) {
            boolean pushes = face.fans().get(fan).pushes();
            double density = pushes ? flow.density : flow.rearDensity;
            double own = face.fans().get(fan).curve().pressure(flow.fanFlow(fan), flow.fanSpeed[fan], density);
            seen.add(flow.fanState(fan));
            if (!pushes) {
                assertThat(flow.fanPressure(fan)).as(name).isCloseTo(rise, within(PRESSURE));
            }
            if (flow.fanState(fan) == FanState.STALLED) {
                assertThat(own).as(name + " stalled").isLessThanOrEqualTo(flow.fanPressure(fan) + PRESSURE);
            } else {
                assertThat(flow.fanPressure(fan)).as(name).isCloseTo(own, within(PRESSURE * (1.0 + Math.abs(own))));
            }
        }
        if (flow.flapMassFlow() > 0.0) {
            Flaps doors = face.flaps();
            double drop = Math.max(0.0, -rise - doors.cracking());
            double expected = doors.area() * doors.discharge() * Math.sqrt(2.0 * flow.rearDensity * drop);
            assertThat(flow.flapMassFlow()).as(name).isCloseTo(expected, within(1e-6));
        }
    }
}
