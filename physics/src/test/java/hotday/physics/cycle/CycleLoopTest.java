package hotday.physics.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.physics.refrigerant.FluidState;
import hotday.physics.refrigerant.Refrigerant;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CycleLoopTest {
    /** Speed of the examples: 1200 rpm. */
    private static final double SPEED = 1200.0 / 60.0 * 2.0 * Math.PI;

    /** K; the table ends at 433 K, discharge gas is switched off far below. */
    private static final double HOTTEST = 425.0;

    private static final Compressor PISTON = Compressor.fixed(150e-6, 1.0);

    /** Against the equation of state over the working range; table error is some 0.1 J/kg, 38 J/kg near the critical point. */
    @ParameterizedTest
    @EnumSource
    void compressionFollowsTheEquationOfState(Refrigerant r) {
        CycleLoop loop = new CycleLoop(r, PISTON);
        double[] out = new double[CycleLoop.LENGTH];
        for (double low = 1e5; low < 7e5; low += 0.7e5) {
            for (double ratio = 1.02; ratio * low < loop.highestPressure(); ratio *= 1.25) {
                for (double superheat : new double[] {0.5, 8.0, 40.0}) {
                    loop.compress(low, ratio * low, SPEED, 1.0, superheat, out);
                    compare(r, low, ratio * low, superheat, out);
                }
            }
        }
    }

    private static void compare(Refrigerant r, double low, double high, double superheat, double[] out) {
        FluidState suction = r.atPressureTemperature(low, r.saturationTemperature(low) + superheat);
        double rise = r.atPressureEntropy(high, suction.entropy()).enthalpy() - suction.enthalpy();
        double h2 = suction.enthalpy() + rise / PISTON.isentropic().at(high / low, SPEED);
        if (h2 > r.atPressureTemperature(high, HOTTEST).enthalpy()) {
            return;
        }
        double allowed = high > 0.9 * r.criticalPressure() ? 40.0 : 1.0;
        assertThat(out[CycleLoop.SUCTION_ENTHALPY]).isCloseTo(suction.enthalpy(), within(0.5));
        assertThat(out[CycleLoop.SUCTION_DENSITY]).isCloseTo(suction.density(), within(1e-5 * suction.density()));
        assertThat(out[CycleLoop.DISCHARGE_ENTHALPY])
                .as("%s %s %s", low, high, superheat)
                .isCloseTo(h2, within(allowed));
        assertThat(out[CycleLoop.DISCHARGE_TEMPERATURE])
                .isCloseTo(r.atPressureEnthalpy(high, h2).temperature(), within(0.05));
        double flow = suction.density() * 150e-6 * 20.0 * PISTON.volumetric().at(high / low, SPEED);
        assertThat(out[CycleLoop.MASS_FLOW]).isCloseTo(flow, within(1e-5 * flow));
        assertThat(out[CycleLoop.SHAFT_POWER])
                .isCloseTo(flow * (out[CycleLoop.DISCHARGE_ENTHALPY] - out[CycleLoop.SUCTION_ENTHALPY]), within(0.01));
    }

    @ParameterizedTest
    @EnumSource
    void allocatesNothing(Refrigerant r) {
        CycleLoop loop = new CycleLoop(r, PISTON);
        double[] out = new double[CycleLoop.LENGTH];
        double sum = run(loop, out, 300_000);
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getThreadAllocatedBytes(Thread.currentThread().getId());
        sum += run(loop, out, 300_000);
        long bytes = threads.getThreadAllocatedBytes(Thread.currentThread().getId()) - before;
        assertThat(sum).isFinite();
        assertThat(bytes).isLessThan(10_000);
    }

    private static double run(CycleLoop loop, double[] out, int times) {
        double sum = 0.0;
        for (int i = 0; i < times; i++) {
            loop.compress(3e5 + i % 1000 * 10.0, 15e5 + i % 777 * 500.0, SPEED, 1.0, 8.0, out);
            loop.condense(out, 400.0, 800.0, 300.0, 308.0, 0.1);
            sum += out[CycleLoop.CONDENSING_SURPLUS];
        }
        return sum;
    }
}
