package hotday.physics.component;

import static hotday.physics.component.Cabin.AIR_HELD;
import static hotday.physics.component.Cabin.AIR_RATE;
import static hotday.physics.component.Cabin.HUMIDITY_RATE;
import static hotday.physics.component.Cabin.LEAK_HEAT;
import static hotday.physics.component.Cabin.MASS_RATE;
import static hotday.physics.component.Cabin.PEOPLE_HEAT;
import static hotday.physics.component.Cabin.SHELL_HEAT;
import static hotday.physics.component.Cabin.STORED;
import static hotday.physics.component.Cabin.SUN_HEAT;
import static hotday.physics.component.Cabin.VENT_HEAT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hotday.physics.fluid.MoistAir;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CabinTest {
    private static final double SEA_LEVEL = 101325;
    private static final double ZERO = 273.15;
    private static final double STEP = 0.5; // s, explicit
    private static final Cabin CABIN = Cabin.midSize();

    private final double[] in = new double[Cabin.INPUTS];
    private final double[] out = new double[Cabin.RESULTS];
    private final double[] coil = new double[Evaporator.RESULTS];
    private double air;
    private double mass;
    private double humidity;

    private void outside(double celsius, double relativeHumidity, double sun) {
        in[Cabin.AMBIENT] = celsius + ZERO;
        in[Cabin.AMBIENT_HUMIDITY] = MoistAir.humidityRatio(celsius + ZERO, relativeHumidity, SEA_LEVEL);
        in[Cabin.PRESSURE] = SEA_LEVEL;
        in[Cabin.SUN] = sun;
    }

    private void soaked(double airCelsius, double massCelsius) {
        air = airCelsius + ZERO;
        mass = massCelsius + ZERO;
        humidity = in[Cabin.AMBIENT_HUMIDITY];
    }

    private void run(double seconds) {
        for (double t = 0; t < seconds; t += STEP) {
            step();
        }
    }

    private void step() {
        CABIN.rates(air, mass, humidity, in, out);
        air += STEP * out[AIR_RATE];
        mass += STEP * out[MASS_RATE];
        humidity += STEP * out[HUMIDITY_RATE];
    }

    /** Vent air as a coil leaves it: refrigerant warmer than its floor where the coil would take more than a capacity, W. */
    private void cooled(double seconds, double recirculation, double floor, double capacity) {
        for (double t = 0; t < seconds; t += STEP) {
            double cold = floor + ZERO;
            throughCoil(recirculation, cold);
            for (int i = 0; i < 20 && coil[Evaporator.HEAT] > capacity + 1; i++) {
                cold += (coil[Evaporator.HEAT] - capacity)
                        / Evaporator.midSize().refrigerantConductance();
                throughCoil(recirculation, cold);
            }
            step();
        }
    }

    private void throughCoil(double recirculation, double evaporating) {
        double outside = in[Cabin.AMBIENT];
        double wet = in[Cabin.AMBIENT_HUMIDITY];
        double w = Cabin.mixedHumidity(wet, humidity, recirculation);
        double t = Cabin.mixedTemperature(outside, wet, air, humidity, recirculation);
        double flow = CABIN.blower().flow(4, 1.2);
        t += CABIN.blower().power(4, 1.2) / (flow * MoistAir.specificHeat(w));
        Evaporator.midSize().exchange(flow, t, w, SEA_LEVEL, evaporating, coil);
        in[Cabin.VENT_FLOW] = flow;
        in[Cabin.VENT_TEMPERATURE] = coil[Evaporator.AIR_OUT];
        in[Cabin.VENT_HUMIDITY] = coil[Evaporator.HUMIDITY_OUT];
    }

    /** The rates store exactly the enthalpy that the heat flows bring. */
    @Test
    void energyBalanceInAnyState() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 20_000; i++) {
            outside(random.nextDouble(-20, 50), random.nextDouble(), random.nextDouble(0, 1100));
            soaked(random.nextDouble(-20, 80), random.nextDouble(-20, 90));
            humidity = random.nextDouble(0, 0.04);
            in[Cabin.SPEED] = random.nextDouble(-5, 45);
            in[Cabin.PEOPLE] = random.nextInt(6);
            in[Cabin.VENT_FLOW] = random.nextDouble(0, 0.2);
            in[Cabin.VENT_TEMPERATURE] = random.nextDouble(270, 340);
            in[Cabin.VENT_HUMIDITY] = random.nextDouble(0, 0.03);
            in[Cabin.HEATER] = random.nextDouble(0, 6000);
            CABIN.rates(air, mass, humidity, in, out);
            double flows = out[VENT_HEAT] + out[LEAK_HEAT] + out[SHELL_HEAT] + out[SUN_HEAT] + out[PEOPLE_HEAT];
            double gained =
                    MoistAir.specificHeat(humidity) * out[AIR_RATE] + MoistAir.vapourEnthalpy(air) * out[HUMIDITY_RATE];
            assertThat(out[STORED]).isCloseTo(flows + in[Cabin.HEATER], within(1e-7));
            assertThat(out[AIR_HELD] * gained + CABIN.massCapacity() * out[MASS_RATE])
                    .isCloseTo(out[STORED], within(1e-7));
            double brought = MoistAir.enthalpy(in[Cabin.VENT_TEMPERATURE], in[Cabin.VENT_HUMIDITY]);
            assertThat(out[VENT_HEAT])
                    .isCloseTo(in[Cabin.VENT_FLOW] * (brought - MoistAir.enthalpy(air, humidity)), within(1e-7));
        }
    }

    /**
     * By hand, dry, at rest: sun 1.4 m2 x 850 = 1190 W, two people 140 W, vents 0.1 kg/s at 8 degC, 35 degC outside; shell
     * 50 and leaks 0.004 x 1006 W/K: (1190 + 140 + 54.024 x 35 + 100.6 x 8) / (54.024 + 100.6) = 26.036 degC; mass 0.8 x 1190 / 90 = 10.578 K above.
     */
    @Test
    void steadyStateByHand() {
        outside(35, 0, 850);
        soaked(20, 20);
        in[Cabin.PEOPLE] = 2;
        in[Cabin.VENT_FLOW] = 0.1;
        in[Cabin.VENT_TEMPERATURE] = 8 + ZERO;
        run(20_000);
        // breath makes the air 0.0008 kg/kg wetter, which no longer takes heat along
        assertThat(air - ZERO).isCloseTo(26.036, within(0.01));
        assertThat(mass - air).isCloseTo(10.578, within(0.001));
        assertThat(humidity).isCloseTo(2 * 45 / 2.549e6 / 0.104, within(2e-7));
    }

    /** Parked cars in full sun: some 20 to 25 K above ambient within an hour, two thirds or more of it in half of that; settled 20 to 30 K. McLaren et al., Pediatrics 116, 2005, and others, from memory. */
    @Test
    void parkedInTheSun() {
        outside(35, 0.3, 900);
        soaked(35, 35);
        run(1800);
        double half = air - in[Cabin.AMBIENT];
        run(1800);
        double hour = air - in[Cabin.AMBIENT];
        assertThat(hour).isBetween(20.0, 25.0);
        assertThat(half / hour).isBetween(0.67, 0.9);
        run(7200);
        assertThat(air - in[Cabin.AMBIENT]).isBetween(20.0, 30.0);
    }

    /** From 60 degC at 40 degC outside with 6 kW on recirculation: 24 to 36 degC after ten minutes, 18 to 28 degC after thirty; common practice, no source. */
    @Test
    void pullDown() {
        outside(40, 0.25, 900);
        soaked(60, 65);
        in[Cabin.PEOPLE] = 2;
        in[Cabin.SPEED] = 14;
        cooled(600, 0.9, 2, 6000);
        double early = air - ZERO;
        cooled(1200, 0.9, 2, 6000);
        assertThat(early).as("10 min").isBetween(24.0, 36.0);
        assertThat(air - ZERO).as("30 min").isBetween(18.0, 28.0);
    }

    /**
     * 35 degC, 40 % humidity, 850 W/m2 (US SC03, 40 CFR 86.160, from memory), outside air, full blower, 4 degC evaporating: 4 to 6.5 kW,
     * common practice, no source. The same cabin on recirculation asks for about half and gets colder.
     */
    @Test
    void regulatoryCycle() {
        outside(35, 0.40, 850);
        soaked(35, 35);
        in[Cabin.PEOPLE] = 1;
        in[Cabin.SPEED] = 9.6;
        cooled(1800, 0.0, 4, Double.POSITIVE_INFINITY);
        double fresh = air;
        assertThat(coil[Evaporator.HEAT]).isBetween(4000.0, 6500.0);
        assertThat(fresh - ZERO).isBetween(18.0, 27.0);
        cooled(1800, 0.9, 4, Double.POSITIVE_INFINITY);
        assertThat(coil[Evaporator.HEAT]).isBetween(2500.0, 4000.0);
        assertThat(air).isLessThan(fresh);
    }

    @Test
    void mixingKeepsEnthalpy() {
        double t = Cabin.mixedTemperature(311, 0.018, 296, 0.008, 0.7);
        double w = Cabin.mixedHumidity(0.018, 0.008, 0.7);
        double enthalpy = 0.3 * MoistAir.enthalpy(311, 0.018) + 0.7 * MoistAir.enthalpy(296, 0.008);
        assertThat(MoistAir.enthalpy(t, w)).isCloseTo(enthalpy, within(1e-7));
        assertThat(Cabin.mixedTemperature(311, 0.018, 296, 0.008, 0)).isEqualTo(311);
        assertThat(Cabin.mixedTemperature(311, 0.018, 296, 0.008, 1)).isEqualTo(296);
    }

    @ParameterizedTest
    @CsvSource({"-1, 0", "0, 0", "0.5, 0.0225", "1, 0.045", "1.5, 0.0625", "4, 0.15", "9, 0.15"})
    void blowerStraightBetweenSteps(double step, double flow) {
        assertThat(CABIN.blower().flow(step, 1.2)).isCloseTo(flow, within(1e-15));
        assertThat(CABIN.blower().flow(step, 0.9)).isCloseTo(0.75 * flow, within(1e-15));
    }

    @Test
    void badValuesAreNamed() {
        assertThatThrownBy(() -> new Cabin(0, 1, 1, 1, 1, 1, 1, 1, 1, CABIN.blower()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("volume 0.0 m3");
        assertThatThrownBy(() -> new Cabin(3, 1, 1, 1, 1, 1, 1.1, 1, 1, CABIN.blower()))
                .hasMessageContaining("1.1");
        assertThatThrownBy(() -> new Cabin(3, 1, 1, 1, 1, -1, 1, 1, 1, CABIN.blower()))
                .hasMessageContaining("glazing");
        assertThatThrownBy(() -> new Blower(new double[] {0.1, 0.1}, new double[] {1, 2}))
                .hasMessageContaining("0.1 kg/s");
        assertThatThrownBy(() -> new Blower(new double[] {0.1}, new double[] {1, 2}))
                .hasMessageContaining("1 flows");
    }
}
