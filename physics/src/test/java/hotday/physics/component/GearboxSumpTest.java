package hotday.physics.component;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import hotday.core.solve.Bracket;
import hotday.physics.WorkedProblem;
import hotday.physics.exchanger.LiquidCooler;
import hotday.physics.fluid.Oil;
import hotday.physics.fluid.ViscosityFactor;
import hotday.physics.transfer.Arrangement;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** Losses, bypass and cooler against a worked sump transient, calculated independently; shape of each. */
class GearboxSumpTest {
    /** K: printed digits. */
    private static final double PRINTED = 1e-6;

    /** s: the printed 1e-6 K at the slowest crossing, 0.05 K/s. */
    private static final double CROSSING = PRINTED / 0.05;

    private static final double STEP = 0.2; // s
    private static final ViscosityFactor THINNING =
            new ViscosityFactor(Oil.GEARBOX, GearboxLosses.STATED_AT, GearboxLosses.VISCOSITY_POWER);

    /** The sump of the problem; its drag does not know speed, so it stands at the reference. */
    private static final class Sump {
        private final WorkedProblem p = WorkedProblem.read("converter-and-sump");
        private final CoolerFeed feed = new CoolerFeed(p.in("T1"), p.in("T2"), p.in("m_o"), 1.0);
        private final Core cooler = new Core(p.in("G_a"), p.in("m_a"), 0.0, p.in("G_o"), p.in("m_o"), 0.3);
        private final GearboxLosses losses = new GearboxLosses(0.0, p.in("P_spin"), 1.0, THINNING);
        private final List<double[]> crossings = new ArrayList<>();
        private double time;
        private double temperature = p.in("T(0)");

        double rate(double t, double converter) {
            double heat = cooler.heatPerKelvin(
                            Arrangement.CROSS_BOTH_UNMIXED_APPROXIMATE,
                            p.in("m_a"),
                            p.in("cp_a"),
                            feed.massFlow(t, 1.0),
                            p.in("cp_o"))
                    * (t - p.in("T_air"));
            return (converter + p.in("P_mesh") + losses.spin(1.0, t) - heat) / p.in("C");
        }

        double after(double dt, double converter) {
            double a = rate(temperature, converter);
            double b = rate(temperature + 0.5 * dt * a, converter);
            double c = rate(temperature + 0.5 * dt * b, converter);
            double d = rate(temperature + dt * c, converter);
            return temperature + dt / 6.0 * (a + 2.0 * b + 2.0 * c + d);
        }

        /** Runge-Kutta steps that end on every kink of the bypass. */
        void runTo(double end, double converter) {
            while (time < end - 1e-9) {
                double dt = Math.min(STEP, end - time);
                double next = after(dt, converter);
                for (double kink : new double[] {feed.opens(), feed.full()}) {
                    if ((temperature - kink) * (next - kink) < 0.0 && Math.abs(temperature - kink) > 1e-7) {
                        dt = Bracket.root(h -> after(h, converter) - kink, 0.0, dt, 1e-12, 100)
                                .value();
                        next = after(dt, converter);
                        crossings.add(new double[] {time + dt, kink});
                    }
                }
                time += dt;
                temperature = next;
            }
        }
    }

    @Test
    void workedTransient() {
        Sump sump = new Sump();
        JsonNode phases = sump.p.input("P_conv phases [until t, W]");
        int phase = 0;
        for (JsonNode row : sump.p.output("[t, T_sump]")) {
            double end = row.get(0).asDouble();
            sump.runTo(end, phases.get(phase).get(1).asDouble());
            assertThat(sump.temperature).as("at %s s", end).isCloseTo(row.get(1).asDouble(), within(PRINTED));
            phase += end == phases.get(phase).get(0).asDouble() ? 1 : 0;
        }
        JsonNode kinks = sump.p.output("kink crossings [t, T]");
        assertThat(sump.crossings).hasSize(kinks.size());
        for (int i = 0; i < kinks.size(); i++) {
            assertThat(sump.crossings.get(i)[0]).isCloseTo(kinks.get(i).get(0).asDouble(), within(CROSSING));
            assertThat(sump.crossings.get(i)[1]).isEqualTo(kinks.get(i).get(1).asDouble());
        }
    }

    @Test
    void workedSteadyStates() {
        Sump sump = new Sump();
        for (double converter : new double[] {9000, 1200, 5200}) {
            double t = Bracket.root(x -> sump.rate(x, converter), 320, 500, 1e-12, 200)
                    .value();
            assertThat(t)
                    .isCloseTo(
                            sump.p
                                    .output("steady T at P_conv=" + (int) converter)
                                    .asDouble(),
                            within(PRINTED));
        }
    }

    @Test
    void workedViscosity() {
        JsonNode expected = WorkedProblem.read("converter-and-sump").output("nu at 273.15, 353.15, 393.15 K");
        double[] temperatures = {273.15, 353.15, 393.15};
        for (int i = 0; i < 3; i++) {
            double nu = 1e6 * Oil.GEARBOX.kinematicViscosity(temperatures[i]);
            assertThat(nu).isCloseTo(expected.get(i).asDouble(), withinPercentage(1e-6));
        }
    }

    /** 8 kW from 0.12 kg/s at 2150 J/(kg K): 31.0 K, recomputed. */
    @Test
    void dropThroughACooler() {
        assertThat(400.0 - CoolerFeed.after(400.0, 8000.0, 0.12, 2150.0)).isCloseTo(31.0, within(0.01));
        assertThat(CoolerFeed.after(400.0, 0.0, 0.0, 2150.0)).isEqualTo(400.0);
    }

    @Test
    void quickCoolerIsNearTheExactOneAndDiesAwayWithItsFlow() {
        Core cooler = new Core(330, 0.3, 0.0, 340, 0.11, 0.3);
        double exact = cooler.heatPerKelvin(Arrangement.CROSS_BOTH_UNMIXED, 0.3, 1007, 0.11, 2150);
        assertThat(cooler.tubeHeatPerKelvin(0.3, 1007, 0.11, 2150)).isCloseTo(exact, withinPercentage(2.0));
        double before = 0.0;
        for (double flow = 0.0; flow < 0.2; flow += 1e-4) {
            double now = cooler.tubeHeatPerKelvin(0.3, 1007, flow, 2150);
            assertThat(now - before).isBetween(0.0, 0.22);
            before = now;
        }
        assertThat(cooler.tubeHeatPerKelvin(0.0, 1007, 0.1, 2150)).isZero();
        assertThat(cooler.tubeHeatPerKelvin(1e-12, 1007, 0.1, 2150)).isBetween(0.0, 1e-8);
    }

    @Test
    void tankCoolerDiesAwayWithEitherFlow() {
        LiquidCooler tank = new LiquidCooler(Arrangement.COUNTER_FLOW, 250, 0.11, 1.2, 0.8, 0.3, 0.6);
        for (double flow : new double[] {0, 1e-300, 1e-12, 1e-6}) {
            assertThat(tank.heatPerKelvin(flow, 2150, 1.2, 3700)).isBetween(0.0, 2150.001 * flow);
            assertThat(tank.heatPerKelvin(0.11, 2150, flow, 3700)).isBetween(0.0, 3700.001 * flow);
        }
    }

    @Test
    void bypassAndPump() {
        CoolerFeed feed = new CoolerFeed(348.15, 358.15, 0.11, 200);
        assertThat(feed.massFlow(340, 300)).isZero();
        assertThat(feed.massFlow(353.15, 300)).isCloseTo(0.055, within(1e-12));
        assertThat(feed.massFlow(380, 100)).isCloseTo(0.055, within(1e-12));
        assertThat(feed.massFlow(380, -5)).isZero();
    }

    @Test
    void lossesGrowWithSpeedAndColdAndNeverGoBelowZero() {
        GearboxLosses losses = new GearboxLosses(0.02, 700, 200, THINNING);
        assertThat(losses.spin(200, GearboxLosses.STATED_AT)).isCloseTo(700, withinPercentage(1e-5));
        assertThat(losses.spin(400, GearboxLosses.STATED_AT))
                .isCloseTo(700 * Math.pow(2, 1.25), withinPercentage(1e-5));
        assertThat(losses.spin(200, 263.15)).isGreaterThan(losses.spin(200, 293.15));
        assertThat(losses.spin(-3, 300)).isZero();
        assertThat(losses.mesh(-50e3)).isEqualTo(1000);
        assertThat(THINNING.at(Double.NaN)).isFinite();
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> new CoolerFeed(358, 348, 0.1, 200)).hasMessageContaining("full must be the higher");
        assertThatThrownBy(() -> new CoolerFeed(348, 358, -0.1, 200)).hasMessageContaining("-0.1 kg/s");
        assertThatThrownBy(() -> new GearboxLosses(0.3, 700, 200, THINNING)).hasMessageContaining("0.3");
        assertThatThrownBy(() -> new GearboxLosses(0.02, 700, 0, THINNING)).hasMessageContaining("700.0 W at 0.0");
    }
}
