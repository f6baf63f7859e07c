package hotday.physics.component;

import static hotday.physics.component.Evaporator.AIR_OUT;
import static hotday.physics.component.Evaporator.CONDENSATE;
import static hotday.physics.component.Evaporator.HEAT;
import static hotday.physics.component.Evaporator.HUMIDITY_OUT;
import static hotday.physics.component.Evaporator.LATENT;
import static hotday.physics.component.Evaporator.SENSIBLE;
import static hotday.physics.component.Evaporator.SURFACE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import hotday.physics.fluid.MoistAir;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EvaporatorTest {
    private static final double SEA_LEVEL = 101325;
    private static final Evaporator COIL = Evaporator.midSize();

    private static double[] out(Evaporator coil, double flow, double air, double humidity, double evaporating) {
        double[] out = new double[Evaporator.RESULTS];
        coil.exchange(flow, air, humidity, SEA_LEVEL, evaporating, out);
        return out;
    }

    /** Any plausible state: both sides of the surface agree, and what leaves the air is heat and water, to 1e-9. */
    @Test
    void heatAndWaterAreExactEverywhere() {
        SplittableRandom random = new SplittableRandom(7);
        double[] out = new double[Evaporator.RESULTS];
        for (int i = 0; i < 300_000; i++) {
            Evaporator coil = new Evaporator(
                    random.nextDouble(20, 900),
                    random.nextDouble(0.03, 0.3),
                    random.nextDouble(),
                    random.nextDouble(20, 3000));
            double air = random.nextDouble(233, 363);
            double pressure = random.nextDouble(60e3, 105e3);
            double humidity = MoistAir.humidityRatio(Math.min(air, 330), random.nextDouble(0, 1.05), pressure);
            double evaporating = random.nextDouble(230, 350);
            double flow = random.nextDouble(1e-6, 0.3);
            coil.exchange(flow, air, humidity, pressure, evaporating, out);
            String at = coil + " " + flow + " kg/s " + air + " K " + humidity + " at " + evaporating + " K";
            double scale = 1e-9 * (1 + Math.abs(out[SENSIBLE]) + out[LATENT]);
            double drop = MoistAir.enthalpy(air, humidity) - MoistAir.enthalpy(out[AIR_OUT], out[HUMIDITY_OUT]);
            double water = out[CONDENSATE] * MoistAir.waterEnthalpy(out[SURFACE]);
            assertThat(flow * drop - water).as(at).isCloseTo(out[HEAT], within(scale));
            assertThat(coil.refrigerantConductance() * (out[SURFACE] - evaporating))
                    .as(at)
                    .isCloseTo(out[HEAT], within(scale));
            assertThat(flow * (humidity - out[HUMIDITY_OUT])).isCloseTo(out[CONDENSATE], within(1e-15));
            assertThat(out[HUMIDITY_OUT]).as(at).isBetween(0.0, humidity);
            assertThat(out[SENSIBLE] + out[LATENT]).isEqualTo(out[HEAT]);
        }
    }

    /** ASHRAE: an apparatus without bypass delivers air saturated at its surface; humidity there from the reference table of saturated air. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 5, 10, 15, 20})
    void longCoilGivesAirSaturatedAtItsSurface(double celsius) {
        double surface = celsius + 273.15;
        Evaporator ideal = new Evaporator(1e5, 0.1, 0.5, 1e9);
        double[] out = out(ideal, 0.1, 313.15, 0.0250, surface);
        assertThat(out[SURFACE]).isCloseTo(surface, within(1e-4));
        assertThat(out[AIR_OUT]).isCloseTo(surface, within(1e-4));
        assertThat(out[HUMIDITY_OUT]).isCloseTo(MoistAir.humidityRatio(surface, 1, SEA_LEVEL), withinPercentage(0.001));
    }

    @Test
    void dryCoilIsAnOrdinaryExchanger() {
        double[] out = out(COIL, 0.13, 308.15, 0.004, 280.15);
        double capacity = 0.13 * MoistAir.specificHeat(0.004);
        double share = capacity * (1 - Math.exp(-COIL.airConductance() / capacity));
        double expected = 28.0 / (1 / share + 1 / COIL.refrigerantConductance());
        assertThat(out[HEAT]).isCloseTo(expected, withinPercentage(1e-10));
        assertThat(out[LATENT]).isZero();
        assertThat(out[HUMIDITY_OUT]).isEqualTo(0.004);
    }

    /** Humidity, refrigerant, flow and air temperature are each moved in small steps across dew point, frost, standstill and reversal. */
    @ParameterizedTest
    @CsvSource({"0, 0.00001, 2500", "1, 0.01, 6000", "2, 0.0001, 2500", "3, 0.01, 6000"})
    void nothingJumpsAndHeatRuns(int moved, double step, int count) {
        double[] state = {0.010, 278.15, 0.12, 303.15};
        state[moved] = new double[] {0.0, 258.15, 0.0, 258.15}[moved];
        double before = heat(state);
        double largest = 0;
        for (int i = 0; i < count; i++) {
            state[moved] += step;
            double now = heat(state);
            double direction = moved == 1 ? -1 : 1;
            assertThat(direction * (now - before)).as("step %d", i).isGreaterThanOrEqualTo(-1e-9);
            largest = Math.max(largest, Math.abs(now - before));
            before = now;
        }
        assertThat(largest).isLessThan(16);
    }

    private static double heat(double[] state) {
        return out(COIL, state[2], state[3], state[0], state[1])[HEAT];
    }

    @Test
    void standingAirPassesNothingAndTakesTheSurface() {
        for (double flow : new double[] {0.0, -0.1, 1e-300}) {
            double[] out = out(COIL, flow, 313.15, 0.02, 275.15);
            assertThat(out[HEAT]).isCloseTo(0, within(1e-290));
            assertThat(out[SURFACE]).isCloseTo(275.15, within(1e-9));
            assertThat(out).doesNotContain(Double.NaN);
        }
    }

    @Test
    void warmRefrigerantHeatsTheAir() {
        double[] out = out(COIL, 0.1, 293.15, 0.008, 323.15);
        assertThat(out[HEAT]).isNegative();
        assertThat(out[CONDENSATE]).isZero();
        assertThat(out[AIR_OUT]).isBetween(293.15, 323.15);
    }

    /** Air that arrives with fog in it, over its whole range of temperature. */
    @Test
    void foggyAirStaysFinite() {
        for (double air = 213.15; air < 373; air += 1) {
            double[] out = out(COIL, 0.1, air, 0.03, 263.15);
            for (double value : out) {
                assertThat(value).as("%s K", air).isFinite();
            }
        }
    }

    /** The regulatory air-conditioning cycle, 35 degC, 40 % humidity, outside air, full blower: 4 to 6.5 kW, common practice, no source. */
    @Test
    void loadOfTheRegulatoryCycle() {
        double w = MoistAir.humidityRatio(308.15, 0.40, SEA_LEVEL);
        assertThat(w * 7000).as("grains per pound").isCloseTo(100, within(2.0));
        assertThat(out(COIL, 0.13, 308.15, w, 277.15)[HEAT]).isBetween(4000.0, 6500.0);
    }

    /**
     * Linear load law of the invented vehicle of the reference data at 38 degC (its humidity is not given): 6450 W at 2 degC evaporating,
     * 5261.5 W at 8.63 degC. Same size and same fall, no more: the law holds no humidity.
     */
    @Test
    void nearTheLoadLawOfTheInventedVehicle() {
        double w = MoistAir.humidityRatio(311.15, 0.38, SEA_LEVEL);
        double cold = out(COIL, 0.13, 311.15, w, 275.15)[HEAT];
        double warm = out(COIL, 0.13, 311.15, w, 281.784)[HEAT];
        assertThat(cold).isCloseTo(6450, withinPercentage(15));
        assertThat((cold - warm) / 6.634).isCloseTo(179, withinPercentage(35));
    }

    @ParameterizedTest
    @CsvSource({"0, 0.1, 0.5, 900", "300, 0, 0.5, 900", "300, 0.1, 1, 900", "300, 0.1, -0.1, 900", "300, 0.1, 0.5, NaN"
    })
    void badValuesAreNamed(double air, double flow, double exponent, double refrigerant) {
        assertThatThrownBy(() -> new Evaporator(air, flow, exponent, refrigerant))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("evaporator");
    }
}
