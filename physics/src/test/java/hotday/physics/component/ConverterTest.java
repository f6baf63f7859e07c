package hotday.physics.component;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import hotday.physics.WorkedProblem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

class ConverterTest {
    private static final double RPM = Math.PI / 30.0;
    private static final double POUND_FOOT = 1.3558179483314004;
    /** Percent: ten printed digits. */
    private static final double WORKED = 1e-6;

    /** First rows of a public simulation data set, seen; the last row of that set breaks the second law. */
    private static final double[] S = {0.0, 0.1, 0.2, 0.3, 0.85};

    private static final double[] K = {137.46, 137.06, 135.86, 135.66, 175.0};
    private static final double[] R = {2.23, 2.07, 1.97, 1.84, 1.0};

    private static double[] numbers(JsonNode node) {
        double[] out = new double[node.size()];
        for (int i = 0; i < out.length; i++) {
            out[i] = node.get(i).asDouble();
        }
        return out;
    }

    private static Converter worked() {
        WorkedProblem p = WorkedProblem.read("converter-and-sump");
        return Converter.ofRpmNewtonMetre(numbers(p.input("SR")), numbers(p.input("K")), numbers(p.input("TR")));
    }

    /** An invented one, for the tests of shape. */
    private static Converter plain() {
        return Converter.ofRpmNewtonMetre(
                new double[] {0, 0.2, 0.4, 0.6, 0.7, 0.8, 0.86, 0.9, 0.95},
                new double[] {118, 117, 118.5, 124, 130, 141, 152, 172, 230},
                new double[] {2.05, 1.78, 1.53, 1.29, 1.18, 1.08, 1.0, 0.99, 0.985});
    }

    @ParameterizedTest
    @CsvSource({"0.0, 1500", "0.0, 2200", "0.35, 2000", "0.75, 2400", "0.9, 1800"})
    void workedHeat(String ratio, double rpm) {
        WorkedProblem p = WorkedProblem.read("converter-and-sump");
        String row = "SR=" + ratio + " n_e=" + (int) rpm;
        double s = Double.parseDouble(ratio);
        double torque = worked().inputTorque(rpm * RPM, s);
        assertThat(torque).isCloseTo(p.out(row, "T_i"), withinPercentage(WORKED));
        assertThat(torque * rpm * RPM).isCloseTo(p.out(row, "P_in"), withinPercentage(WORKED));
        assertThat(worked().heat(rpm * RPM, s * rpm * RPM)).isCloseTo(p.out(row, "heat"), withinPercentage(WORKED));
    }

    @ParameterizedTest
    @CsvSource({"1500, 220", "600, 180", "0, 60", "700, 35"})
    void workedEngineSpeed(int turbine, int torque) {
        WorkedProblem p = WorkedProblem.read("converter-and-sump");
        String row = "n_t=" + turbine + " T=" + torque;
        Converter c = worked();
        double engine = c.engineSpeed(turbine * RPM, torque);
        assertThat(engine / RPM).isCloseTo(p.out(row, "n_e"), withinPercentage(WORKED));
        assertThat(turbine * RPM / engine).isCloseTo(p.out(row, "SR"), within(1e-8));
        assertThat(c.heat(engine, turbine * RPM)).isCloseTo(p.out(row, "heat"), withinPercentage(WORKED));
    }

    @Test
    void workedSlip() {
        double heat = WorkedProblem.read("converter-and-sump")
                .output("locked, slip 40 rpm, 250 N m")
                .asDouble();
        assertThat(Converter.lockedHeat(250.0, 40.0 * RPM)).isCloseTo(heat, withinPercentage(WORKED));
        assertThat(Converter.lockedHeat(-250.0, 40.0 * RPM)).isPositive();
    }

    /** Recomputed from the definitions with that public data set: 216.71 lb ft, 61.54 kW in, 24.25 out, 37.29 heat. */
    @Test
    void tableOfAPublicDataSet() {
        Converter c = Converter.ofRpmPoundFoot(S, K, R);
        double torque = c.inputTorque(2000 * RPM, 0.2);
        assertThat(torque / POUND_FOOT).isCloseTo(216.71, within(0.01));
        assertThat(torque * 2000 * RPM).isCloseTo(61.54e3, within(5.0));
        assertThat(c.turbineTorque(2000 * RPM, 400 * RPM) * 400 * RPM).isCloseTo(24.25e3, within(5.0));
        assertThat(c.heat(2000 * RPM, 400 * RPM)).isCloseTo(37.29e3, within(5.0));
    }

    /** Stall, recomputed from the definitions: 1500 rpm 119.08 lb ft 25.36 kW; 2400 rpm 304.84 lb ft 103.88 kW. */
    @ParameterizedTest
    @CsvSource({"1500, 119.08, 25.36", "2400, 304.84, 103.88"})
    void stall(double rpm, double poundFoot, double kilowatt) {
        Converter c = Converter.ofRpmPoundFoot(S, K, R);
        assertThat(c.inputTorque(rpm * RPM, 0.0) / POUND_FOOT).isCloseTo(poundFoot, within(0.01));
        assertThat(c.heat(rpm * RPM, 0.0)).isCloseTo(1e3 * kilowatt, within(5.0));
        assertThat(c.engineSpeed(0.0, poundFoot * POUND_FOOT) / RPM).isCloseTo(rpm, within(0.1));
    }

    @Test
    void unitsOfTheCapacityFactorAgree() {
        Converter feet = Converter.ofRpmPoundFoot(S, K, R);
        double[] si = new double[K.length];
        for (int i = 0; i < si.length; i++) {
            si[i] = K[i] * RPM / Math.sqrt(POUND_FOOT);
        }
        assertThat(Converter.of(S, si, R).heat(200, 90)).isCloseTo(feet.heat(200, 90), withinPercentage(1e-9));
    }

    @Test
    void speedsSolvedForGiveTheirTorqueBack() {
        Converter c = plain();
        for (double turbine : new double[] {0, 1e-6, 3, 40, 90, 200, 500}) {
            for (double torque : new double[] {1e-9, 0.01, 5, 40, 300, 900}) {
                double forPump = c.engineSpeed(turbine, torque);
                double forRoad = c.engineSpeedForOutput(turbine, torque);
                assertThat(forPump).isGreaterThanOrEqualTo(turbine);
                double rounding = 1e-8 * torque + 1e-12 * turbine * turbine;
                assertThat(c.pumpTorque(forPump, turbine)).isCloseTo(torque, within(rounding));
                assertThat(c.turbineTorque(forRoad, turbine)).isCloseTo(torque, within(rounding));
            }
        }
    }

    @Test
    void speedGrowsWithoutJumpsFromCoastToPull() {
        Converter c = plain();
        for (double turbine : new double[] {20, 90, 300}) {
            double before = c.engineSpeedForOutput(turbine, -50);
            double pumpBefore = c.engineSpeed(turbine, -50);
            for (double torque = -49.9; torque < 400; torque += 0.1) {
                double now = c.engineSpeedForOutput(turbine, torque);
                double pump = c.engineSpeed(turbine, torque);
                assertThat(now - before).isBetween(0.0, 2.0);
                assertThat(pump - pumpBefore).isBetween(0.0, 2.0);
                before = now;
                pumpBefore = pump;
            }
        }
    }

    @Test
    void heatIsContinuousAndNeverNegative() {
        Converter c = plain();
        for (double engine : new double[] {0, 1, 80, 300}) {
            double before = c.heat(engine, -20);
            for (double turbine = -20; turbine < 400; turbine += 0.1) {
                double now = c.heat(engine, turbine);
                assertThat(now).isNotNegative().isCloseTo(before, within(100.0 + 0.02 * before));
                before = now;
            }
        }
        assertThat(c.heat(80, 80)).isZero();
        assertThat(c.turbineTorque(80, 90)).isNegative();
        assertThat(c.capacity(0.0)).isCloseTo(118 * RPM, within(1e-12));
        assertThat(c.capacity(1.0)).isInfinite();
        assertThat(c.torqueRatio(-1.0)).isEqualTo(2.05);
        assertThat(c.torqueRatio(1.2)).isEqualTo(1.0);
    }

    @Test
    void lossyLastRowsStillJoin() {
        for (double end : new double[] {0.9, 0.95, 0.97, 1.05}) {
            Converter c = Converter.of(new double[] {0, 0.95}, new double[] {12, 24}, new double[] {2.0, end});
            for (double torque : new double[] {0.1, 1, 5}) {
                double engine = c.engineSpeedForOutput(100, torque);
                assertThat(c.turbineTorque(engine, 100)).isCloseTo(torque, withinPercentage(1e-7));
            }
        }
    }

    @Test
    void aTableToSpeedRatioOneIsTaken() {
        Converter c = Converter.of(new double[] {0, 0.8, 1}, new double[] {12, 14, 25}, new double[] {2, 1.1, 1});
        assertThat(c.pumpTorque(100, 99.999)).isBetween(0.0, 0.1);
        assertThat(c.capacity(0.99)).isCloseTo(14 + 0.95 * 11, within(1e-9));
    }

    @Test
    void refusesWhatCannotBe() {
        double[] s = {0, 0.1, 0.2, 0.3, 1.0};
        double[] k = {137.46, 137.06, 135.86, 135.66, 254.51};
        assertRefused("row 5: speed ratio 1.0 times torque ratio 1.004 is an efficiency of 1.004", s, k, new double[] {
            2.23, 2.07, 1.97, 1.84, 1.004
        });
        assertRefused(
                "row 3: speed ratio 0.4", new double[] {0, 0.5, 0.4}, new double[] {9, 9, 9}, new double[] {2, 1.5, 1});
        assertRefused("row 1: speed ratio 0.1", new double[] {0.1, 0.9}, new double[] {9, 9}, new double[] {2, 1});
        assertRefused("row 2: capacity factor -9.0", new double[] {0, 0.9}, new double[] {9, -9}, new double[] {2, 1});
        assertRefused(
                "row 2: capacity factor NaN", new double[] {0, 0.9}, new double[] {9, Double.NaN}, new double[] {2, 1});
        assertRefused("row 2: between", new double[] {0, 1.0}, new double[] {9, 20}, new double[] {5, 1});
        assertRefused("row 2: capacity factor falls", new double[] {0, 0.9}, new double[] {20, 5}, new double[] {2, 1});
        assertRefused("row 3: torque ratio rises", new double[] {0, 0.5, 0.6}, new double[] {9, 9, 9.1}, new double[] {
            0.3, 0.3, 1
        });
        assertRefused("row 2: the table ends", new double[] {0, 0.4}, new double[] {9, 9}, new double[] {2, 1.5});
        assertRefused("at least two rows", new double[] {0}, new double[] {9}, new double[] {2});
        assertRefused("only one row", new double[] {0, 0.99, 1}, new double[] {9, 20, 21}, new double[] {2, 1, 1});
    }

    private static void assertRefused(String words, double[] s, double[] k, double[] r) {
        assertThatThrownBy(() -> Converter.of(s, k, r))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(words);
    }
}
