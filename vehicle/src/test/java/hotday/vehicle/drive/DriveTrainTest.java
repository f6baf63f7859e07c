package hotday.vehicle.drive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.sun.management.ThreadMXBean;
import hotday.vehicle.InventedVehicle;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.spec.VehicleSpec;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;

class DriveTrainTest {
    private static final double FORTY_MPH = 40 * 0.44704;
    private static final double AIR = 1.06; // kg/m3
    private static final double WATT = 1e-6;

    private final double[] out = new double[DriveTrain.COUNT];
    private final VehicleSpec spec = InventedVehicle.diesel();
    private final DriveTrain train = new DriveTrain(spec);

    /** Rolling 0.012, drag area 0.45 x 5.5 m2. */
    private static VehicleSpec combination(double mass) {
        double square = 0.5 * 1.2 * 0.45 * 5.5;
        return InventedVehicle.diesel(new VehicleSpec.RoadLoad(mass, 705.0 / 6000 * mass, 0, square, 0.32), 0.88);
    }

    /**
     * Towing-grade practice, three public accounts (SAE J2807): about 3000 ft in 11.4 miles, a
     * steady 5 %, 17.1 min at 40 mph. The feet are rounded to hundreds or worse: 1 % of the grade.
     */
    @Test
    void theLoadedClimbIsThePublishedRoad() {
        double climb = 3000 * 0.3048;
        double length = 11.4 * 1609.344;
        assertThat(StandardCases.steady().get(3).grade()).isCloseTo(climb / length, withinPercentage(1));
        assertThat(StandardCases.steady().get(3).speed()).isCloseTo(FORTY_MPH, withinPercentage(1));
        assertThat(length / FORTY_MPH / 60).isCloseTo(17.1, within(0.05));
    }

    /** From road to crank and back: what a logger would show gives the converter's heat again. */
    @Test
    void aRecordedMomentGivesBackItsSlip() {
        int open = 0;
        int same = 0;
        for (double speed = 2.0; speed < 35.0; speed += 1.5) {
            for (double grade = 0.0; grade < 0.13; grade += 0.02) {
                train.solve(speed, 0, grade, AIR, AIR, 1, out);
                if (out[DriveTrain.LOAD] > 1.0) {
                    continue;
                }
                double read = train.slipHeat(speed, out[DriveTrain.ENGINE_SPEED], out[DriveTrain.CRANK_POWER]);
                open += out[DriveTrain.LOCKED] > 0.0 ? 0 : 1;
                same += Math.abs(read - out[DriveTrain.CONVERTER_HEAT]) < 300.0 + 0.1 * out[DriveTrain.CONVERTER_HEAT]
                        ? 1
                        : 0;
                if (out[DriveTrain.LOCKED] > 0.0) {
                    assertThat(read).isZero();
                    same--;
                }
            }
        }
        assertThat(open).isGreaterThan(40);
        assertThat(same).isGreaterThan((int) (0.9 * open));
    }

    /** The same accounts, recomputed: grade 2938 N, rolling 705 N, air 419 N, 72.65 kW at the wheels, 82.6 kW before a driveline of 0.88. */
    @Test
    void powerOnTheTowingGrade() {
        Drive drive = new Drive(combination(6000));
        double rolling = drive.force(1e-9, 0, 0, AIR);
        double level = drive.force(FORTY_MPH, 0, 0, AIR);
        double climbing = drive.force(FORTY_MPH, 0, 0.05, AIR);
        assertThat(rolling).isCloseTo(705, within(0.5));
        assertThat(level - rolling).isCloseTo(419, within(0.5));
        assertThat(climbing - level).isCloseTo(2938, within(0.5));
        new DriveTrain(combination(6000)).inGear(3, true, FORTY_MPH, climbing, 1, out);
        assertThat(out[DriveTrain.WHEEL_POWER]).isCloseTo(72.65e3, within(10.0));
        assertThat(out[DriveTrain.GEAR_POWER]).isCloseTo(82.6e3, within(60.0));
    }

    @Test
    void aGradeIsDrivenLockedInALowGearAndOpenWhereNoGearPulls() {
        new DriveTrain(combination(4000)).solve(FORTY_MPH, 0, 0.05, AIR, AIR, 1, out);
        assertThat(out[DriveTrain.LOCKED]).isOne();
        assertThat(out[DriveTrain.GEAR]).isEqualTo(3);
        assertThat(out[DriveTrain.LOAD]).isBetween(0.7, 0.85);
        assertThat(out[DriveTrain.CONVERTER_HEAT]).isZero();
        new DriveTrain(combination(6000)).solve(FORTY_MPH, 0, 0.05, AIR, AIR, 1, out);
        assertThat(out[DriveTrain.LOCKED]).isZero();
        assertThat(out[DriveTrain.GEAR]).isEqualTo(3);
        assertThat(out[DriveTrain.CONVERTER_HEAT]).isBetween(3e3, 15e3);
    }

    /** Idle in gear at rest: torque (n / K0)^2, all of it heat. */
    @Test
    void atRestInGearAllIsHeat() {
        train.solve(0, 0, 0.1, AIR, AIR, 1, out);
        double stall = Math.pow(84 / 19.0, 2) * 84;
        assertThat(out[DriveTrain.ENGINE_SPEED]).isEqualTo(84);
        assertThat(out[DriveTrain.CONVERTER_HEAT]).isCloseTo(stall, within(WATT));
        assertThat(out[DriveTrain.GEAR_POWER]).isZero();
        assertThat(out[DriveTrain.LOCKED]).isZero();
        assertThat(out[DriveTrain.GEAR]).isOne();
    }

    @Test
    void crawlingUphillTheConverterIsOpenAndLowRangeCoolsIt() {
        double crawl = 5 / 3.6;
        train.solve(crawl, 0, 0.25, AIR, AIR, 1, out);
        double heat = out[DriveTrain.CONVERTER_HEAT];
        assertThat(out[DriveTrain.LOCKED]).isZero();
        assertThat(out[DriveTrain.ENGINE_SPEED]).isGreaterThan(1.5 * out[DriveTrain.TURBINE_SPEED]);
        train.solve(crawl, 0, 0.25, AIR, AIR, 2.7, out);
        assertThat(out[DriveTrain.CONVERTER_HEAT]).isLessThan(0.7 * heat);
        assertThat(out[DriveTrain.GEAR_POWER]).isCloseTo(out[DriveTrain.WHEEL_POWER] / 0.9, within(1e-4));
    }

    @Test
    void motorwayIsTopGearLocked() {
        train.solve(110 / 3.6, 0, 0, 1.1, 1.1, 1, out);
        assertThat(out[DriveTrain.GEAR]).isEqualTo(6);
        assertThat(out[DriveTrain.LOCKED]).isOne();
        assertThat(out[DriveTrain.ENGINE_SPEED]).isEqualTo(out[DriveTrain.TURBINE_SPEED]);
    }

    @Test
    void tooSteepShowsAsALoadAboveOneWithTheEngineWithinItsTorque() {
        DriveTrain heavy = new DriveTrain(combination(6000));
        heavy.solve(2, 0, 0.6, AIR, AIR, 1, out);
        assertThat(out[DriveTrain.LOAD]).isGreaterThan(1);
        double torque = out[DriveTrain.CRANK_POWER] / out[DriveTrain.ENGINE_SPEED];
        assertThat(torque).isLessThan(1.03 * 110e3 / 420);
        assertThat(out[DriveTrain.GEAR_POWER]).isLessThan(out[DriveTrain.WHEEL_POWER]);
    }

    @Test
    void powerAddsUpInEverySituation() {
        for (double speed = 0; speed < 60; speed += 0.7) {
            for (double grade = -0.3; grade < 0.5; grade += 0.04) {
                for (double range : new double[] {1, 2.5}) {
                    train.solve(speed, 0.3, grade, 1.2, 1.2, range, out);
                    double drag =
                            out[DriveTrain.CRANK_POWER] - out[DriveTrain.CONVERTER_HEAT] - out[DriveTrain.GEAR_POWER];
                    double expected = 700 * Math.pow(out[DriveTrain.ENGINE_SPEED] / 209.4, 1.25);
                    assertThat(drag).isCloseTo(expected, within(1e-6));
                    assertThat(out[DriveTrain.CONVERTER_HEAT]).isNotNegative();
                    assertThat(out[DriveTrain.ENGINE_SPEED]).isGreaterThanOrEqualTo(84.0);
                }
            }
        }
    }

    @Test
    void inOneGearNothingJumps() {
        double[] before = new double[DriveTrain.COUNT];
        for (double speed : new double[] {0, 0.5, 4, 12}) {
            train.inGear(1, false, speed, -3000, 1, before);
            for (double force = -3000; force < 9000; force += 2) {
                train.inGear(1, false, speed, force, 1, out);
                for (int i = 0; i < DriveTrain.COUNT; i++) {
                    assertThat(Math.abs(out[i] - before[i])).isLessThan(0.01 * Math.abs(before[i]) + 150);
                }
                System.arraycopy(out, 0, before, 0, out.length);
            }
        }
    }

    @Test
    void allocatesNothing() {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        run(20_000);
        long before = threads.getCurrentThreadAllocatedBytes();
        run(20_000);
        assertThat(threads.getCurrentThreadAllocatedBytes() - before).isLessThan(1000);
    }

    private void run(int times) {
        for (int i = 0; i < times; i++) {
            train.solve(i % 40, 0, 0.02 * (i % 7), 1.1, 1.1, 1, out);
        }
    }
}
