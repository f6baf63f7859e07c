package hotday.physics.refrigerant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The tables against the equation of state they are made from. */
class PropertyTableTest {
    /** What a time loop may be wrong by: far below any sensor, and what the docs promise. */
    private static final double TEMPERATURE = 0.05;

    private static final double DENSITY = 5e-4;
    private static final double ENTHALPY = 50.0;

    private static double[] random(Refrigerant r, SplittableRandom random) {
        double p = 1e5 + 34e5 * random.nextDouble();
        FluidState s = r.atPressureTemperature(p, 243.15 + 180.0 * random.nextDouble());
        return new double[] {p, s.enthalpy()};
    }

    @ParameterizedTest
    @EnumSource
    void errorOverTheWorkingRange(Refrigerant r) {
        TableError error = TableError.of(PropertyTable.of(r), 60_000, 17);
        assertThat(error.temperature()).isLessThan(TEMPERATURE);
        assertThat(error.density()).isLessThan(DENSITY);
        assertThat(error.enthalpy()).isLessThan(ENTHALPY);
        assertThat(error.entropy()).isLessThan(0.1);
    }

    @ParameterizedTest
    @EnumSource
    void slopesOfOnePhase(Refrigerant r) {
        PropertyTable table = PropertyTable.of(r);
        SplittableRandom random = new SplittableRandom(3);
        double[] out = new double[6];
        for (int i = 0; i < 2000; i++) {
            double[] at = random(r, random);
            double p = at[0];
            double h = at[1];
            if (Math.abs(p / r.criticalPressure() - 1.0) < 0.1) {
                continue; // slopes change within a difference there
            }
            FluidState low = r.atPressureEnthalpy(p * (1 - 1e-5), h);
            FluidState high = r.atPressureEnthalpy(p * (1 + 1e-5), h);
            FluidState cold = r.atPressureEnthalpy(p, h - 5.0);
            FluidState warm = r.atPressureEnthalpy(p, h + 5.0);
            if (low.saturated() || high.saturated() || cold.saturated() || warm.saturated()) {
                continue;
            }
            table.lookWithSlopes(p, h, out);
            String what = r + " p " + p + " h " + h;
            slope(what, out[2], (high.temperature() - low.temperature()) / (2e-5 * p), 30.0 / p);
            slope(what, out[3], (warm.temperature() - cold.temperature()) / 10.0, 1e-3);
            slope(what, out[4], (high.density() - low.density()) / (2e-5 * p), low.density() / p);
            slope(what, out[5], (warm.density() - cold.density()) / 10.0, low.density() * 1e-5);
        }
    }

    private static void slope(String what, double ours, double difference, double scale) {
        assertThat(ours).as(what).isCloseTo(difference, within(5e-3 * Math.abs(difference) + 1e-3 * scale));
    }

    @ParameterizedTest
    @EnumSource
    void slopesOfBothPhases(Refrigerant r) {
        PropertyTable table = PropertyTable.of(r);
        SplittableRandom random = new SplittableRandom(4);
        double[] out = new double[6];
        for (int i = 0; i < 500; i++) {
            double p = 1e5 + 28e5 * random.nextDouble();
            double x = 0.02 + 0.96 * random.nextDouble();
            double h = r.atPressureQuality(p, x).enthalpy();
            FluidState low = r.atPressureEnthalpy(p * (1 - 1e-5), h);
            FluidState high = r.atPressureEnthalpy(p * (1 + 1e-5), h);
            FluidState wet = r.atPressureEnthalpy(p, h - 5.0);
            FluidState dry = r.atPressureEnthalpy(p, h + 5.0);
            table.lookWithSlopes(p, h, out);
            String what = r + " p " + p + " x " + x;
            slope(what, out[2], (high.temperature() - low.temperature()) / (2e-5 * p), 30.0 / p);
            assertThat(out[3]).isZero();
            slope(what, out[4], (high.density() - low.density()) / (2e-5 * p), low.density() / p);
            slope(what, out[5], (dry.density() - wet.density()) / 10.0, low.density() * 1e-5);
        }
    }

    @ParameterizedTest
    @EnumSource
    void saturation(Refrigerant r) {
        SaturationTable table = PropertyTable.of(r).saturation();
        double[] out = new double[SaturationTable.COLUMNS];
        for (double share = 0.03; share < 0.97; share += 0.0137) {
            double p = share * r.criticalPressure();
            FluidState liquid = r.atPressureQuality(p, 0);
            FluidState vapour = r.atPressureQuality(p, 1);
            table.look(p, out);
            assertThat(table.temperature(p)).isCloseTo(liquid.temperature(), within(1e-3));
            near(out[SaturationTable.LIQUID_ENTHALPY], liquid.enthalpy(), 1e-5);
            near(out[SaturationTable.VAPOUR_ENTHALPY], vapour.enthalpy(), 1e-5);
            near(out[SaturationTable.LIQUID_VOLUME], 1.0 / liquid.density(), 1e-4);
            near(out[SaturationTable.VAPOUR_VOLUME], 1.0 / vapour.density(), 1e-4);
            near(out[SaturationTable.LIQUID_ENTROPY], liquid.entropy(), 1e-5);
            near(out[SaturationTable.VAPOUR_ENTROPY], vapour.entropy(), 1e-5);
            near(out[SaturationTable.LIQUID_HEAT], liquid.cp(), 2e-3);
            near(out[SaturationTable.VAPOUR_HEAT], vapour.cp(), 2e-3);
            near(out[SaturationTable.LIQUID_VISCOSITY], liquid.viscosity(), 2e-3);
            near(out[SaturationTable.VAPOUR_VISCOSITY], vapour.viscosity(), 2e-3);
            near(out[SaturationTable.LIQUID_CONDUCTIVITY], liquid.conductivity(), 2e-3);
            near(out[SaturationTable.VAPOUR_CONDUCTIVITY], vapour.conductivity(), 2e-3);
            near(out[SaturationTable.SURFACE_TENSION], r.surfaceTension(liquid.temperature()), 2e-3);
        }
    }

    private static void near(double ours, double exact, double relative) {
        assertThat(ours).isCloseTo(exact, within(relative * Math.abs(exact)));
    }

    /** A compression at constant entropy, as a compressor model asks for it. */
    @ParameterizedTest
    @EnumSource
    void compression(Refrigerant r) {
        PropertyTable table = PropertyTable.of(r);
        double[] scratch = new double[6];
        for (double low = 1.5e5; low < 5e5; low += 0.5e5) {
            FluidState suction = r.atPressureTemperature(low, r.saturationTemperature(low) + 8.0);
            double high = 5.0 * low;
            double exact = r.atPressureEntropy(high, suction.entropy()).enthalpy();
            double ours = table.enthalpyAtEntropy(high, suction.entropy(), suction.enthalpy() + 30e3, scratch);
            assertThat(ours).isCloseTo(exact, within(ENTHALPY));
        }
    }

    @ParameterizedTest
    @EnumSource
    void outsideTheRangeTheEdgeAnswers(Refrigerant r) {
        PropertyTable table = PropertyTable.of(r);
        double[] out = new double[6];
        for (double p : new double[] {1.0, 1e4, 3e5, 6e6, 1e9}) {
            for (double h : new double[] {-1e6, 1e5, 3e5, 6e5, 1e7}) {
                table.lookWithSlopes(p, h, out);
                for (double value : out) {
                    assertThat(value).isFinite();
                }
            }
        }
        assertThat(table.covers(10e5, 3e5)).isTrue();
        assertThat(table.covers(1e4, 3e5)).isFalse();
        assertThat(table.covers(10e5, 9e5)).isFalse();
    }

    @ParameterizedTest
    @EnumSource
    void allocatesNothing(Refrigerant r) {
        PropertyTable table = PropertyTable.of(r);
        double[] out = new double[SaturationTable.COLUMNS];
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        looks(table, out, 20_000);
        long before = threads.getCurrentThreadAllocatedBytes();
        looks(table, out, 100_000);
        assertThat(threads.getCurrentThreadAllocatedBytes() - before).isLessThan(100_000);
    }

    private static void looks(PropertyTable table, double[] out, int count) {
        for (int i = 0; i < count; i++) {
            double p = 1e5 + 30.0 * i;
            table.look(p, 180e3 + i, out);
            table.lookWithSlopes(p, 400e3 - i, out);
            table.saturation().look(p, out);
        }
    }
}
