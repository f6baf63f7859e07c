package hotday.physics.refrigerant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** There and back again over the whole range of the equations, with seeded random states. */
class FlashTest {
    private static final int STATES = 20_000;
    private static final double AGREEMENT = 1e-9;

    @ParameterizedTest
    @EnumSource
    void wholeRange(Refrigerant r) {
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < STATES; i++) {
            double p = 1e4 * Math.exp(random.nextDouble() * Math.log(r.highestPressure() * 0.5 / 1e4));
            double t = 185.0 + random.nextDouble() * (r.highestTemperature() - 186.0);
            thereAndBack(r, p, t);
        }
    }

    @ParameterizedTest
    @EnumSource
    void aroundTheCriticalPoint(Refrigerant r) {
        SplittableRandom random = new SplittableRandom(6);
        for (int i = 0; i < STATES; i++) {
            double width = Math.pow(10.0, -5.0 + 4.0 * random.nextDouble());
            double p = r.criticalPressure() * (1.0 + width * (2.0 * random.nextDouble() - 1.0));
            double t = r.criticalTemperature() * (1.0 + 0.3 * width * (2.0 * random.nextDouble() - 1.0));
            FluidState s = r.atPressureTemperature(p, t);
            String at = r + " p " + p + " T " + t;
            assertThat(r.atPressureEnthalpy(p, s.enthalpy()).temperature())
                    .as(at)
                    .isCloseTo(t, within(1e-7));
            assertThat(r.atPressureEntropy(p, s.entropy()).temperature()).as(at).isCloseTo(t, within(1e-7));
        }
    }

    private static void thereAndBack(Refrigerant r, double p, double t) {
        FluidState s = r.atPressureTemperature(p, t);
        String at = r + " p " + p + " T " + t;
        FluidState byEnthalpy = r.atPressureEnthalpy(p, s.enthalpy());
        FluidState byEntropy = r.atPressureEntropy(p, s.entropy());
        assertThat(byEnthalpy.temperature()).as(at).isCloseTo(t, within(AGREEMENT * t));
        assertThat(byEnthalpy.density()).as(at).isCloseTo(s.density(), within(AGREEMENT * s.density()));
        assertThat(byEntropy.temperature()).as(at).isCloseTo(t, within(AGREEMENT * t));
        assertThat(byEntropy.density()).as(at).isCloseTo(s.density(), within(AGREEMENT * s.density()));
        assertThat(s.viscosity()).as(at).isPositive();
        assertThat(s.conductivity()).as(at).isPositive();
    }

    @ParameterizedTest
    @EnumSource
    void bothPhases(Refrigerant r) {
        SplittableRandom random = new SplittableRandom(7);
        double critical = r.criticalTemperature();
        for (int i = 0; i < STATES; i++) {
            double t = i % 2 == 0
                    ? 180.0 + random.nextDouble() * (critical - 180.0) * 0.999
                    : critical * (1.0 - Math.pow(10.0, -1.5 - 3.0 * random.nextDouble()));
            double x = random.nextDouble();
            FluidState s = r.atTemperatureQuality(t, x);
            String at = r + " T " + t + " x " + x;
            for (FluidState back : new FluidState[] {
                r.atPressureEnthalpy(s.pressure(), s.enthalpy()),
                r.atPressureEntropy(s.pressure(), s.entropy()),
                r.atPressureQuality(s.pressure(), x),
                r.atTemperatureEnthalpy(t, s.enthalpy())
            }) {
                assertThat(back.temperature()).as(at).isCloseTo(t, within(AGREEMENT * t));
                assertThat(back.quality()).as(at).isCloseTo(x, within(1e-5));
                assertThat(back.density()).as(at).isCloseTo(s.density(), within(1e-6 * s.density()));
                assertThat(back.region()).isEqualTo(Region.TWO_PHASE);
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void enthalpyAndQuality(Refrigerant r) {
        SplittableRandom random = new SplittableRandom(8);
        for (int i = 0; i < 500; i++) {
            double x = random.nextDouble();
            FluidState s = r.atTemperatureQuality(230.0 + 100.0 * random.nextDouble(), x);
            FluidState back = r.atEnthalpyQuality(s.enthalpy(), x);
            assertThat(back.enthalpy()).isCloseTo(s.enthalpy(), within(1e-9 * s.enthalpy()));
            assertThat(back.temperature()).as("the lower of two").isLessThanOrEqualTo(s.temperature() * (1 + 1e-9));
        }
    }

    /** An equation of state holds together: dh = T ds + dp / rho along any small step in one phase. */
    @ParameterizedTest
    @EnumSource
    void gibbsRelation(Refrigerant r) {
        for (double[] at : new double[][] {{3e5, 320.0}, {15e5, 300.0}, {45e5, 390.0}, {8e5, 250.0}}) {
            double p = at[0];
            FluidState a = r.atPressureTemperature(p * (1 - 1e-5), at[1] - 1e-3);
            FluidState b = r.atPressureTemperature(p * (1 + 1e-5), at[1] + 1e-3);
            double work = (b.pressure() - a.pressure()) * 0.5 * (1 / a.density() + 1 / b.density());
            double heat = (b.entropy() - a.entropy()) * 0.5 * (a.temperature() + b.temperature());
            assertThat(b.enthalpy() - a.enthalpy())
                    .isCloseTo(heat + work, within(1e-6 * (Math.abs(heat) + Math.abs(work))));
        }
    }

    @ParameterizedTest
    @EnumSource
    void refusesWhatLiesOutside(Refrigerant r) {
        assertThatThrownBy(() -> r.atPressureTemperature(1e5, 150.0))
                .isInstanceOf(RangeException.class)
                .hasMessageContaining("temperature 150.0 K, must be 180.0 to");
        assertThatThrownBy(() -> r.atPressureTemperature(-1.0, 300.0)).hasMessageContaining("pressure -1.0 Pa");
        assertThatThrownBy(() -> r.atPressureEnthalpy(1e6, 9e5)).hasMessageContaining("enthalpy 900000.0 J/kg");
        assertThatThrownBy(() -> r.atPressureEnthalpy(1e6, -9e5)).hasMessageContaining("enthalpy -900000.0 J/kg");
        assertThatThrownBy(() -> r.atPressureEnthalpy(1e6, Double.NaN)).isInstanceOf(RangeException.class);
        assertThatThrownBy(() -> r.atTemperatureQuality(380.0, 0.5)).hasMessageContaining("critical");
        assertThatThrownBy(() -> r.atTemperatureQuality(300.0, 1.2)).hasMessageContaining("quality 1.2");
        assertThatThrownBy(() -> r.saturationTemperature(50e5)).hasMessageContaining("critical");
    }
}
