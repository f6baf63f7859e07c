package hotday.vehicle.airpath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import hotday.physics.component.FanCurve;
import hotday.physics.fluid.Air;
import hotday.vehicle.airpath.Face.Core;
import hotday.vehicle.airpath.Face.Disc;
import hotday.vehicle.airpath.Face.ElectricFan;
import hotday.vehicle.airpath.Face.Flaps;
import hotday.vehicle.airpath.Face.Shroud;
import hotday.vehicle.airpath.Face.ViscousClutch;
import hotday.vehicle.airpath.TileFlow.FanState;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a technician expects of a front; common practice, no source, where none stands beside it. */
class TechnicianFactsTest {
    private static final int CONDENSER = 1;
    private static final int STRIP = 2;
    private static final int RADIATOR = 3;

    private static List<Core> blockedStrip() {
        List<Core> cores = PlainFront.usual().cores();
        return List.of(
                cores.get(0),
                cores.get(CONDENSER),
                new Core("oil strip", 1, PlainFront.OIL_STRIP.place(), 500.0, 900.0),
                cores.get(RADIATOR));
    }

    /** The strip itself and what stands behind it lose air; the rest gets a little of it, not all. */
    @Test
    void blockedOilStripLosesAirThere() {
        TileFlow clean = PlainFront.usual().flow(0.0, 1.0);
        TileFlow blocked = PlainFront.usual().with(blockedStrip()).flow(0.0, 1.0);
        assertThat(blocked.coreMassFlow(STRIP)).isLessThan(0.3 * clean.coreMassFlow(STRIP));
        assertThat(blocked.coreMassFlow(CONDENSER)).isGreaterThan(clean.coreMassFlow(CONDENSER));
        assertThat(blocked.coreMassFlow(RADIATOR)).isLessThan(clean.coreMassFlow(RADIATOR));
    }

    /** Flaps in the shroud unload the ram pressure at speed and do nothing at rest (check value 2.7, public, anecdotal). */
    @Test
    void flapsOpenAtSpeedAndStayShutAtIdle() {
        PlainFront shut = PlainFront.usual();
        PlainFront flaps = shut.with(new Flaps(0.03, 0.62, 8.0));
        assertThat(flaps.flow(110.0, 0.0).flapMassFlow()).isPositive();
        assertThat(flaps.flow(110.0, 0.0).massFlow())
                .isGreaterThan(1.02 * shut.flow(110.0, 0.0).massFlow());
        assertThat(flaps.flow(0.0, 1.0).flapMassFlow()).isZero();
        assertThat(flaps.flow(0.0, 1.0).massFlow())
                .isCloseTo(shut.flow(0.0, 1.0).massFlow(), within(1e-12));
    }

    /** Beyond its free flow the running fan fights the wind (check value FAN-3). */
    @Test
    void fanLeftRunningBeyondItsFreeFlowCostsFlow() {
        FanCurve small = new FanCurve(200.0, -50.0, -150.0, 120.0, 90.0, 180.0, -30.0, 1.2);
        TileFlow running =
                PlainFront.usual().with(PlainFront.puller(small, 0.36)).flow(110.0, 1.0);
        TileFlow none = PlainFront.usual().with().flow(110.0, 1.0);
        assertThat(running.fanFlow(0)).isGreaterThan(small.freeFlow(1.0));
        assertThat(running.fanPressure(0)).isNegative();
        assertThat(running.fanState(0)).isEqualTo(FanState.POWERED);
        assertThat(running.massFlow()).isLessThan(none.massFlow());
        TileFlow slow = PlainFront.usual().with(PlainFront.puller(small, 0.36)).flow(110.0, 0.3);
        assertThat(slow.fanState(0)).isEqualTo(FanState.WINDMILLING);
        assertThat(slow.shaftPower(0)).isZero();
    }

    /** FAN-2: at 3000 m and 38 degC mass flow and shaft power are 0.692 of sea level at 38 degC; viscosity keeps it from being exact. */
    @Test
    void altitudeCostsThirtyPercentOfTheMass() {
        double high = Air.isaPressure(3000.0);
        for (double kmh : new double[] {0.0, 40.0, 110.0}) {
            TileFlow low = quadratic().flow(kmh, 1.0);
            TileFlow up = quadratic().flow(kmh, 1.0, high, 311.15);
            assertThat(up.massFlow() / low.massFlow()).isCloseTo(0.692, within(5e-4));
            assertThat(up.shaftPower(0) / low.shaftPower(0)).isCloseTo(0.692, within(5e-4));
            assertThat(up.fanFlow(0)).isCloseTo(low.fanFlow(0), withinPercentage(1e-3));
        }
        double real = PlainFront.usual().flow(0.0, 1.0, high, 311.15).massFlow()
                / PlainFront.usual().flow(0.0, 1.0).massFlow();
        assertThat(real).isBetween(0.65, 0.70);
    }

    private static PlainFront quadratic() {
        return PlainFront.usual()
                .with(List.of(
                        new Core("condenser", 1, PlainFront.CONDENSER.place(), 0.0, 9.0),
                        new Core("radiator", 2, PlainFront.WHOLE, 0.0, 14.0)));
    }

    /** A missing strip of the shroud: underhood air goes round the core into the fan (check value 2.7, public, anecdotal). */
    @Test
    void missingShroudStripCutsIdleFlowThroughTheRest() {
        PlainFront whole = PlainFront.usual();
        Rectangle rest = new Rectangle(0.0, 0.06, 0.72, 0.42);
        PlainFront strip = whole.with(new Shroud(rest, 0.62 * rest.width() * rest.top()));
        assertThat(strip.flow(0.0, 1.0).gapMassFlow()).isNegative();
        assertThat(through(strip, rest)).isLessThan(0.95 * through(whole, rest));
        assertThat(strip.flow(0.0, 1.0).massFlow())
                .isLessThan(0.8 * whole.flow(0.0, 1.0).massFlow());
        assertThat(strip.flow(0.0, 1.0).reversedMassFlow()).isPositive();
    }

    private static double through(PlainFront front, Rectangle place) {
        Grid grid = front.face().grid();
        TileFlow flow = front.flow(0.0, 1.0);
        double sum = 0.0;
        for (int tile : grid.inside(place)) {
            sum += grid.area(tile) * flow.velocity(tile);
        }
        return sum;
    }

    /** Affinity laws (check value 2.1, FAN-1): half the speed is half the flow, a quarter of the pressure, an eighth of the power. */
    @Test
    void twiceTheFanSpeedIsTwiceTheFlowForEightTimesThePower() {
        TileFlow half = quadratic().flow(0.0, 0.5);
        TileFlow full = quadratic().flow(0.0, 1.0);
        assertThat(full.massFlow()).isCloseTo(2.0 * half.massFlow(), withinPercentage(0.01));
        assertThat(full.fanPressure(0)).isCloseTo(4.0 * half.fanPressure(0), withinPercentage(0.01));
        assertThat(full.shaftPower(0)).isCloseTo(8.0 * half.shaftPower(0), withinPercentage(0.01));
        TileFlow slow = quadratic().flow(0.0, 0.8);
        assertThat(slow.shaftPower(0)).isCloseTo(0.512 * full.shaftPower(0), withinPercentage(0.01)); // 307.2 of 600 W
    }

    @Test
    void poorSealingRaisesTheInletAtIdleAndHardlyAtSpeed() {
        TileFlow idle = PlainFront.usual().flow(0.0, 1.0, 101325.0, 350.0);
        double good = Sealing.faceTemperature(311.15, 350.0, Sealing.GOOD.share(0.0, idle));
        double poor = Sealing.faceTemperature(311.15, 350.0, Sealing.POOR.share(0.0, idle));
        assertThat(good).isCloseTo(311.15 + 0.10 * 38.85, within(1e-9));
        assertThat(poor - good).isCloseTo(0.30 * 38.85, within(1e-9));
        assertThat(Sealing.POOR.share(110.0 / 3.6)).isLessThan(0.01);
    }

    @Test
    void whatBlowsBackIsDrawnInAgain() {
        PlainFront open = PlainFront.usual().with(new Shroud(new Rectangle(0.0, 0.06, 0.72, 0.42), 0.0));
        TileFlow idle = open.flow(0.0, 1.0);
        double back = idle.reversedMassFlow() / idle.intakeMassFlow();
        assertThat(back).isPositive();
        assertThat(Sealing.GOOD.share(0.0, idle)).isCloseTo(0.10 + 0.90 * back, within(1e-12));
    }

    /** A fan that stands beside one that runs is a hole in the shroud. */
    @Test
    void standingTwinLetsAirBack() {
        PlainFront twins = PlainFront.usual()
                .with(PlainFront.puller(PlainFront.CURVE, 0.18), PlainFront.puller(PlainFront.CURVE, 0.54));
        TilePath path = TilePath.compile(twins.face());
        TileFlow flow = path.start();
        flow.air(0.0, 311.15, 101325.0, 311.15);
        flow.fan(0, 1.0);
        path.solve(flow);
        assertThat(flow.fanFlow(0)).isPositive();
        assertThat(flow.fanFlow(1)).isNegative();
        assertThat(flow.massFlow())
                .isLessThan(0.8 * PlainFront.usual().flow(0.0, 1.0).massFlow());
        assertThat(twins.flow(0.0, 1.0).fanFlow(0))
                .isCloseTo(twins.flow(0.0, 1.0).fanFlow(1), within(1e-12));
        assertThat(twins.flow(0.0, 1.0).massFlow())
                .isGreaterThan(PlainFront.usual().flow(0.0, 1.0).massFlow());
    }

    /** Without a shroud a fan moves air through its swept disc only (check value 2.7, common practice). */
    @Test
    void pusherServesTheTilesBehindItsDisc() {
        ElectricFan pusher = new ElectricFan(PlainFront.CURVE, new Disc(0.36, 0.24, 0.3), true);
        TileFlow flow = PlainFront.usual().with(pusher).flow(0.0, 1.0);
        Grid grid = PlainFront.usual().face().grid();
        assertThat(flow.velocity(grid.at(0.36, 0.24))).isPositive();
        assertThat(flow.velocity(grid.at(0.01, 0.01))).isNegative();
        assertThat(flow.fanFlow(0)).isCloseTo(flow.intakeMassFlow() / Air.density(101325.0, 311.15), within(1e-9));
        assertThat(flow.massFlow()).isLessThan(PlainFront.usual().flow(0.0, 1.0).massFlow());
    }

    @Test
    void hotCoresBreatheByThemselvesWithTheFanOff() {
        assertThat(PlainFront.usual().draught(0.4).flow(0.0, 0.0).massFlow()).isCloseTo(0.0, within(1e-9));
        double hot =
                PlainFront.usual().draught(0.4).flow(0.0, 0.0, 101325.0, 360.0).massFlow();
        assertThat(hot).isBetween(0.005, 0.1);
    }

    @Test
    void viscousClutchFollowsTheAirBehindTheRadiator() {
        ViscousClutch clutch = new ViscousClutch(1.1, 300.0, 338.15, 353.15, 0.7, 0.1);
        assertThat(clutch.speedRatio(300.0, 320.0)).isCloseTo(0.33, within(1e-12));
        assertThat(clutch.speedRatio(300.0, 345.65)).isCloseTo(0.66, within(1e-12));
        assertThat(clutch.speedRatio(300.0, 400.0)).isCloseTo(0.99, within(1e-12));
        assertThat(clutch.speedRatio(0.0, 400.0)).isZero();
    }

    /** Hot air in a core takes more room: the core resists more and less mass passes. */
    @Test
    void hotCoreLetsLessAirThrough() {
        TilePath path = TilePath.compile(PlainFront.usual().face());
        TileFlow flow = path.start();
        flow.air(0.0, 311.15, 101325.0, 311.15);
        flow.fan(0, 1.0);
        path.solve(flow);
        double cold = flow.massFlow();
        double[] temperatures = new double[path.face().grid().tiles() * 4];
        Arrays.fill(temperatures, 311.15);
        path.solve(flow, temperatures);
        assertThat(flow.massFlow()).isCloseTo(cold, within(1e-9));
        for (int tile = 0; tile < path.face().grid().tiles(); tile++) {
            temperatures[4 * tile + RADIATOR] = 360.0;
        }
        path.solve(flow, temperatures);
        assertThat(flow.massFlow()).isBetween(0.85 * cold, 0.99 * cold);
    }
}
