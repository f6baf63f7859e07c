package hotday.physics.component;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import hotday.physics.WorkedProblem;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FanDriveTest {
    private static final Map<String, FanDrive.Limit> LIMITS =
            Map.of("no", FanDrive.Limit.NONE, "current", FanDrive.Limit.CURRENT, "derated", FanDrive.Limit.LOW_VOLTAGE);

    private static FanDrive fan(double electronics, double limit, double resistance) {
        return new FanDrive(600 - electronics, electronics, limit, 9.0, 10.5, resistance);
    }

    @Test
    void workedFan() {
        WorkedProblem p = WorkedProblem.read("electrical");
        FanDrive fan = ElectricalParts.fan(p);
        assertThat(fan.cableResistance()).isCloseTo(p.output("R_c").asDouble(), withinPercentage(1e-7));
        for (String volts : new String[] {"14.2", "13.5", "12.5", "11.5", "11.0", "10.5", "10.0", "9.5"}) {
            for (String ratio : new String[] {"0.4", "0.8", "1.0"}) {
                String name = "fan V_bus=" + volts + " s=" + ratio;
                double bus = Double.parseDouble(volts);
                double command = fan.commandedPower(Double.parseDouble(ratio));
                double terminal = fan.terminalVoltage(bus, command);
                double current = fan.current(terminal, command);
                assertThat(terminal).as(name).isCloseTo(p.out(name, "V_f"), withinPercentage(1e-7));
                assertThat(current).as(name).isCloseTo(p.out(name, "I_f"), withinPercentage(1e-7));
                assertThat(terminal * current).isCloseTo(p.out(name, "P_at_fan"), withinPercentage(1e-7));
                assertThat(fan.limit(bus, Double.parseDouble(ratio)))
                        .as(name)
                        .isEqualTo(LIMITS.get(p.output(name).required("limited").asString()));
            }
        }
    }

    /** Constant 600 W (recomputed): 50.0 A at 12.0 V, 44.4 A at 13.5 V, 42.3 A at 14.2 V. */
    @Test
    void sixHundredWatts() {
        double[][] rows = {{12.0, 50.0}, {13.5, 44.4}, {14.2, 42.3}};
        for (double[] row : rows) {
            FanDrive fan = fan(0, 80, 0);
            double terminal = fan.terminalVoltage(row[0], fan.commandedPower(1));
            assertThat(terminal).isEqualTo(row[0]);
            assertThat(fan.current(terminal, 600)).isCloseTo(row[1], within(0.051));
        }
    }

    /** 0.9 m3/s against 200 Pa is 180 W of air: 30 % of 600 W of electricity (recomputed). */
    @Test
    void overallEfficiency() {
        FanDrive fan = fan(12, 80, 0);
        double terminal = fan.terminalVoltage(13.5, fan.commandedPower(1));
        assertThat(0.9 * 200 / (terminal * fan.current(terminal, fan.commandedPower(1))))
                .isCloseTo(0.30, within(1e-12));
    }

    @Test
    void kirchhoffHolds() {
        FanDrive fan = fan(12, 58, 0.014);
        for (double bus = 0; bus < 17; bus += 0.01) {
            for (double ratio = 0; ratio <= 1; ratio += 0.05) {
                double command = fan.commandedPower(ratio);
                double terminal = fan.terminalVoltage(bus, command);
                assertThat(bus - 0.014 * fan.current(terminal, command)).isCloseTo(terminal, within(1e-12));
            }
        }
    }

    @Test
    void slopeIsThatOfTheCurrent() {
        FanDrive fan = fan(12, 58, 0.014);
        for (double bus = 8.0; bus < 15; bus += 0.0371) {
            for (double ratio : new double[] {0.0, 0.3, 0.8, 1.0}) {
                double command = fan.commandedPower(ratio);
                double terminal = fan.terminalVoltage(bus, command);
                double slope = fan.slope(terminal, fan.current(terminal, command), command);
                double measured = (at(fan, bus + 1e-6, command) - at(fan, bus - 1e-6, command)) / 2e-6;
                assertThat(slope).as("%s V, %s", bus, ratio).isCloseTo(measured, within(1e-5));
            }
        }
    }

    private static double at(FanDrive fan, double bus, double command) {
        return fan.current(fan.terminalVoltage(bus, command), command);
    }

    @Test
    void currentNeverJumps() {
        FanDrive fan = fan(12, 52, 0.014);
        double before = 0;
        for (double bus = 0; bus < 20; bus += 1e-4) {
            double current = at(fan, bus, fan.commandedPower(1));
            assertThat(Math.abs(current - before)).isLessThan(0.01);
            before = current;
        }
        assertThat(at(fan, 13, fan.commandedPower(1e-9))).isLessThan(1e-6);
        assertThat(at(fan, 13, fan.commandedPower(-0.2))).isZero();
    }

    @Test
    void speedThatIsLeft() {
        FanDrive fan = fan(12, 40, 0.014);
        assertThat(fan.speedFor(14.2, 0.7)).isEqualTo(0.7);
        assertThat(fan.speedFor(14.2, 0.0)).isZero();
        assertThat(fan.speedFor(8.9, 1.0)).isZero();
        double terminal = 12.0 - 40 * 0.014;
        assertThat(fan.speedFor(12.0, 1.0)).isCloseTo(Math.cbrt(terminal * 40 / 600), within(1e-12));
        assertThat(fan.speedForPower(75, 1.0)).isCloseTo(0.5, within(1e-12));
        double before = fan.speedFor(16, 1);
        for (double bus = 16; bus > 7; bus -= 1e-3) {
            double speed = fan.speedFor(bus, 1);
            assertThat(speed).isBetween(before - 0.1, before);
            before = speed;
        }
    }

    @Test
    void badValues() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new FanDrive(0, 0, 50, 9, 10, 0))
                .withMessageContaining("fan full power 0.0 W");
        assertThatIllegalArgumentException().isThrownBy(() -> new FanDrive(600, -1, 50, 9, 10, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new FanDrive(600, 0, 50, 10, 10, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new FanDrive(600, 0, 50, 9, 10, -0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> new FanDrive(600, 0, Double.NaN, 9, 10, 0));
    }
}
