package hotday.physics.component;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import hotday.physics.WorkedProblem;
import hotday.physics.fluid.Air;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AirPathTest {
    /** The worked problem is printed with ten digits. */
    private static final double FLOW = 1e-9;

    private static final double PRESSURE = 1e-6;
    private static final double KMH = 1.0 / 3.6;

    private record Stream(WorkedProblem problem, FanCurve fan, double density, double square) {
        static Stream at(double altitude) {
            WorkedProblem p = WorkedProblem.read("air-path-single");
            double density = Air.density(Air.isaPressure(altitude), p.in("T_amb"));
            FanCurve fan = new FanCurve(
                    p.in("a0"), p.in("a1"), p.in("a2"), p.in("k_w"), p.in("b0"), p.in("b1"), p.in("b2"), p.in("rho0"));
            double square =
                    density / p.in("rho0") * p.in("k_core") + AirPath.opening(p.in("K_exit"), density, p.in("A_exit"));
            return new Stream(p, fan, density, square);
        }

        double coefficient() {
            return problem.in("Cp_front") - problem.in("Cp_base");
        }

        double flow(double coefficient, double speed, double ratio) {
            return AirPath.flow(AirPath.ram(coefficient, density, speed), fan, ratio, density, 0, square);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0, 0",
        "0, 0, 0.4",
        "0, 0, 1.0",
        "0, 60, 0",
        "0, 60, 0.4",
        "0, 60, 1.0",
        "0, 110, 0",
        "0, 110, 0.4",
        "0, 110, 1.0",
        "3000, 0, 0",
        "3000, 0, 0.4",
        "3000, 0, 1.0",
        "3000, 60, 0",
        "3000, 60, 0.4",
        "3000, 60, 1.0",
        "3000, 110, 0",
        "3000, 110, 0.4",
        "3000, 110, 1.0"
    })
    void operatingPoints(String altitude, String speed, String ratio) {
        Stream s = Stream.at(Double.parseDouble(altitude));
        String name = "case h=" + altitude + " V=" + speed + " s=" + ratio;
        double turn = Double.parseDouble(ratio);
        double q = s.flow(s.coefficient(), Double.parseDouble(speed) * KMH, turn);
        assertThat(q).isCloseTo(s.problem().out(name, "Q"), within(FLOW));
        assertThat(q * s.density()).isCloseTo(s.problem().out(name, "m_dot"), within(FLOW));
        assertThat(s.fan().pressure(q, turn, s.density())).isCloseTo(s.problem().out(name, "dp_fan"), within(PRESSURE));
        assertThat(s.fan().shaftPower(q, turn, s.density()))
                .isCloseTo(s.problem().out(name, "P_fan"), within(PRESSURE));
        assertThat(s.fan().windmilling(q, turn))
                .isEqualTo(s.problem().output(name).required("state").asString().equals("windmilling"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "60", "110"})
    void withoutFan(String speed) {
        Stream s = Stream.at(0);
        double drive = AirPath.ram(s.coefficient(), s.density(), Double.parseDouble(speed) * KMH);
        assertThat(AirPath.flow(drive, 0, 0, 0, 0, 0, s.square()))
                .isCloseTo(s.problem().output("no fan h=0 V=" + speed).asDouble(), within(FLOW));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.4", "1.0"})
    void criticalFlows(String ratio) {
        Stream s = Stream.at(3000);
        double turn = Double.parseDouble(ratio);
        double zero = s.problem().out("zero pressure (fan becomes a restriction above this) h=3000 s=" + ratio, "Q");
        assertThat(s.fan().freeFlow(turn)).isCloseTo(zero, within(FLOW));
        double limit = s.problem().out("windmill limit h=3000 s=" + ratio, "Q");
        assertThat(s.fan().windmillFlow(turn)).isCloseTo(limit, within(FLOW));
        double speed = s.problem().out("windmill limit h=3000 s=" + ratio, "V");
        assertThat(s.flow(s.coefficient(), speed, turn)).isCloseTo(limit, within(1e-8));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "0.4"})
    void tailWindBlowsBackwards(String ratio) {
        Stream s = Stream.at(0);
        String name = "tail wind 8 m/s, Cp_front-Cp_base=-0.3, h=0, s=" + ratio;
        double turn = Double.parseDouble(ratio);
        double q = s.flow(-0.3, 8, turn);
        assertThat(q).isCloseTo(s.problem().out(name, "Q"), within(FLOW));
        assertThat(s.fan().pressure(q, turn, s.density())).isCloseTo(s.problem().out(name, "dp_fan"), within(PRESSURE));
    }

    /** Whatever is put in, the pressures balance, and the flow is the largest that does so. */
    @Test
    void pressuresBalance() {
        Random random = new Random(4711);
        for (int i = 0; i < 20_000; i++) {
            double drive = 600 * (random.nextDouble() - 0.3);
            double fanSquare = -150 * random.nextDouble() - 1;
            double rising = 400 * (random.nextDouble() - 0.7);
            FanCurve fan = new FanCurve(
                    400 * random.nextDouble(), rising, fanSquare, -fanSquare * random.nextDouble(), 90, 0, 0, 1.2);
            double ratio = random.nextDouble();
            double density = 0.7 + 0.6 * random.nextDouble();
            double linear = 80 * random.nextDouble();
            double square = 300 * random.nextDouble() + 1;
            double q = AirPath.flow(drive, fan, ratio, density, linear, square);
            assertThat(surplus(q, drive, fan, ratio, density, linear, square)).isCloseTo(0, within(1e-9 * (1 + 400)));
            assertThat(surplus(q + 0.01 + 1e-3 * Math.abs(q), drive, fan, ratio, density, linear, square))
                    .isNegative();
            assertThat(surplus(100, drive, fan, ratio, density, linear, square)).isNegative();
        }
    }

    private static double surplus(
            double q, double drive, FanCurve fan, double ratio, double density, double linear, double square) {
        return drive + fan.pressure(q, ratio, density) - linear * q - square * q * Math.abs(q);
    }

    /** With everything at one density and no linear part, the volume flow does not know the altitude. */
    @Test
    void volumeFlowDoesNotKnowTheDensity() {
        FanCurve fan = new FanCurve(320, -50, -100, 60, 90, 180, -30, 1.2);
        double low = AirPath.flow(AirPath.ram(0.7, 1.2, 20), fan, 0.8, 1.2, 0, 200);
        double high = AirPath.flow(AirPath.ram(0.7, 0.6, 20), fan, 0.8, 0.6, 0, 100);
        assertThat(high).isCloseTo(low, within(1e-12));
    }

    @Test
    void neverNotANumber() {
        List<Double> drives = List.of(-1e6, -1.0, -1e-300, -0.0, 0.0, 1e-300, 1.0, 1e6);
        List<Double> parts = List.of(0.0, 1e-300, 1e-9, 1.0, 1e6);
        for (double drive : drives) {
            for (double linear : parts) {
                for (double square : parts) {
                    for (double stall : parts) {
                        for (double fanLinear : List.of(-50.0, 0.0, 50.0)) {
                            assertThat(AirPath.flow(drive, stall, fanLinear, -square, 0, linear, square))
                                    .as("%s %s %s %s %s", drive, linear, square, stall, fanLinear)
                                    .isNotNaN();
                        }
                    }
                }
            }
        }
    }

    @Test
    void stillAirWithoutDraughtStandsStillAndWarmAirRises() {
        FanCurve fan = new FanCurve(320, -50, -100, 60, 90, 180, -30, 1.2);
        assertThat(AirPath.flow(0, fan, 0, 1.1, 10, 200)).isEqualTo(0);
        double draught = AirPath.draught(1.1, 0.5, 310, 350);
        assertThat(draught).isCloseTo(0.6165, withinPercentage(0.1));
        assertThat(AirPath.flow(draught, fan, 0, 1.1, 10, 200)).isPositive();
        assertThat(AirPath.draught(1.1, 0.5, 310, 290)).isNegative();
    }

    @Test
    void refusesAFanThatIsNone() {
        assertThatThrownBy(() -> new FanCurve(-1, 0, -100, 60, 0, 0, 0, 1.2)).hasMessageContaining("-1.0 Pa");
        assertThatThrownBy(() -> new FanCurve(300, 0, 100, 60, 0, 0, 0, 1.2)).hasMessageContaining("100.0");
        assertThatThrownBy(() -> new FanCurve(300, 0, -100, 160, 0, 0, 0, 1.2)).hasMessageContaining("160.0");
        assertThatThrownBy(() -> new FanCurve(300, 0, -100, 60, 0, 0, 0, Double.NaN))
                .hasMessageContaining("NaN");
    }

    /** Affinity laws: 80 % speed takes 51.2 % of the power, half speed an eighth, at the same point of the curve. */
    @Test
    void affinity() {
        FanCurve fan = new FanCurve(320, -50, -100, 60, 300, 180, -30, 1.2);
        double full = fan.shaftPower(1.0, 1.0, 1.2);
        assertThat(fan.shaftPower(0.8, 0.8, 1.2)).isCloseTo(0.512 * full, within(1e-9));
        assertThat(fan.shaftPower(0.5, 0.5, 1.2)).isCloseTo(0.125 * full, within(1e-9));
        assertThat(fan.pressure(0.5, 0.5, 1.2)).isCloseTo(0.25 * fan.pressure(1, 1, 1.2), within(1e-9));
        assertThat(fan.shaftPower(1.0, 1.0, 0.6)).isCloseTo(0.5 * full, within(1e-9));
    }

    @Test
    void allocatesNothing() {
        FanCurve fan = new FanCurve(320, -50, -100, 60, 90, 180, -30, 1.2);
        com.sun.management.ThreadMXBean threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        double sum = manyFlows(fan, 20_000);
        long before = threads.getCurrentThreadAllocatedBytes();
        sum += manyFlows(fan, 100_000);
        long bytes = threads.getCurrentThreadAllocatedBytes() - before;
        assertThat(bytes).as("bytes for 100000 flows, sum %s", sum).isLessThan(10_000);
    }

    private static double manyFlows(FanCurve fan, int count) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            double drive = AirPath.ram(0.7, 1.1, 0.0003 * i) + AirPath.draught(1.1, 0.4, 310, 340);
            double q = AirPath.flow(drive, fan, 0.6, 1.1, 20, 200);
            sum += fan.pressure(q, 0.6, 1.1);
        }
        return sum;
    }
}
