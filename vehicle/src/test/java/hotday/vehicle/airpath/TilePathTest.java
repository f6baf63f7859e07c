package hotday.vehicle.airpath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.vehicle.airpath.Face.Flaps;
import hotday.vehicle.airpath.TileFlow.FanState;
import java.util.EnumSet;
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
