package hotday.vehicle.controller;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hotday.vehicle.spec.FanSchedule;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** One test a rule of docs/controller.md, with the standard schedule; expected numbers by hand from its curves. */
class ControllerTest {
    private final Controller controller = new Controller(Schedule.standard());
    private boolean running = true;
    private int coolant = 850;
    private int gearbox = 500;
    private int headPressure = 600;
    private boolean airConditioning;
    private int speed = 200;
    private int battery = 13_900;

    private int ticks(int count) {
        Inputs in = new Inputs();
        for (int i = 0; i < count; i++) {
            in.set(running, coolant, gearbox, headPressure, airConditioning, speed, battery);
            controller.step(in);
        }
        return controller.output();
    }

    /** Warm, past the start delay, fan off; 20 km/h: no floor, no allowance, full slew. */
    private void started() {
        ticks(31);
        assertThat(controller.on()).isFalse();
    }

    @Test
    void coolantLatchHasHysteresis() {
        started();
        coolant = 959;
        ticks(1);
        assertThat(controller.want()).isZero();
        coolant = 960;
        ticks(1);
        assertThat(controller.want()).isEqualTo(3000);
        assertThat(controller.source()).isEqualTo(Source.COOLANT);
        coolant = 931;
        ticks(1);
        assertThat(controller.want()).isEqualTo(2500 + 500 / 30); // div truncates
        coolant = 930;
        ticks(1);
        assertThat(controller.want()).isZero();
        assertThat(controller.source()).isEqualTo(Source.NONE);
        coolant = 950;
        ticks(1);
        assertThat(controller.want()).isZero();
    }

    @Test
    void theLargestCurveDecidesAndTheEarlierOfEquals() {
        started();
        coolant = 1000; // 6000
        gearbox = 1000; // 3000 + 5000*50/150
        ticks(1);
        assertThat(controller.source()).isEqualTo(Source.COOLANT);
        gearbox = 1100; // 8000
        ticks(1);
        assertThat(controller.source()).isEqualTo(Source.GEARBOX);
        assertThat(controller.want()).isEqualTo(8000);
        coolant = 1030; // 8000 too
        ticks(1);
        assertThat(controller.source()).isEqualTo(Source.COOLANT);
        airConditioning = true;
        headPressure = 2000; // 10000
        ticks(1);
        assertThat(controller.source()).isEqualTo(Source.AIR_CONDITIONING);
        assertThat(controller.want()).isEqualTo(10_000);
        airConditioning = false;
        ticks(1);
        assertThat(controller.airConditioningLatched()).isFalse();
        airConditioning = true;
        headPressure = 1299; // below on: stays off although above off
        ticks(1);
        assertThat(controller.airConditioningLatched()).isFalse();
    }

    @Test
    void theAllowanceIsTakenOffTheLargestAndEndsWhenHot() {
        started();
        coolant = 1000;
        speed = 550; // 2000
        ticks(1);
        assertThat(controller.want()).isEqualTo(4000);
        speed = 1100; // 8000, more than asked for
        ticks(1);
        assertThat(controller.want()).isZero();
        assertThat(controller.source()).isEqualTo(Source.NONE);
        coolant = 1079; // 10000 asked
        ticks(1);
        assertThat(controller.want()).isEqualTo(2000);
        coolant = 1080;
        ticks(1);
        assertThat(controller.want()).isEqualTo(10_000);
    }

    @Test
    void theFloorHoldsAtRestWhenWarm() {
        started();
        speed = 50;
        coolant = 900;
        ticks(1);
        assertThat(controller.slow()).isFalse();
        speed = 49;
        ticks(1);
        assertThat(controller.want()).isEqualTo(2000);
        assertThat(controller.source()).isEqualTo(Source.FLOOR);
        speed = 100; // moving only above
        ticks(1);
        assertThat(controller.source()).isEqualTo(Source.FLOOR);
        coolant = 899;
        ticks(1);
        assertThat(controller.want()).isZero();
        coolant = 900;
        speed = 101;
        ticks(1);
        assertThat(controller.source()).isEqualTo(Source.NONE);
    }

    @Test
    void leastTimeOnHoldsTwentyFivePercent() {
        started();
        coolant = 1000;
        ticks(1);
        assertThat(controller.on()).isTrue();
        coolant = 850;
        ticks(199);
        assertThat(controller.on()).isTrue();
        assertThat(controller.want()).isZero();
        assertThat(controller.output()).isEqualTo(2500);
        ticks(1);
        assertThat(controller.on()).isFalse();
    }

    @Test
    void leastTimeOffDelaysTheNextStart() {
        leastTimeOnHoldsTwentyFivePercent();
        coolant = 1000;
        ticks(49);
        assertThat(controller.want()).isEqualTo(6000);
        assertThat(controller.on()).isFalse();
        ticks(1);
        assertThat(controller.on()).isTrue();
    }

    @Test
    void betweenOffAndOnTheFanStaysAsItIs() {
        started();
        coolant = 960; // 3000
        speed = 500; // less 1600 = 1400, below on
        ticks(100);
        assertThat(controller.want()).isEqualTo(1400);
        assertThat(controller.on()).isFalse();
        speed = 300;
        ticks(300);
        speed = 480; // less 1440 = 1560, above off
        ticks(300);
        assertThat(controller.want()).isEqualTo(1560);
        assertThat(controller.on()).isTrue();
        assertThat(controller.output()).isEqualTo(2500);
    }

    @Test
    void slewIsGentlerAtRestAndDown() {
        started();
        coolant = 1060;
        assertThat(ticks(1)).isEqualTo(100);
        assertThat(ticks(9)).isEqualTo(1000);
        speed = 49;
        assertThat(ticks(10)).isEqualTo(1500);
        ticks(200);
        assertThat(controller.output()).isEqualTo(10_000);
        coolant = 960;
        assertThat(ticks(10)).isEqualTo(9500);
    }

    @Test
    void aFanSwitchedOffDropsOutBelowFifteenPercent() {
        leastTimeOnHoldsTwentyFivePercent(); // the tick that switched off already went down
        assertThat(controller.output()).isEqualTo(2450);
        assertThat(ticks(19)).isEqualTo(1500);
        assertThat(ticks(1)).isZero();
    }

    @Test
    void noFanDuringTheStartDelay() {
        coolant = 1060;
        ticks(30);
        assertThat(controller.want()).isZero();
        assertThat(controller.source()).isEqualTo(Source.COOLANT);
        assertThat(controller.output()).isZero();
        ticks(1);
        assertThat(controller.want()).isEqualTo(10_000);
        assertThat(controller.on()).isTrue();
    }

    @Test
    void aLostSensorIsHeldThenReplaced() {
        started();
        coolant = 960;
        ticks(1);
        coolant = Inputs.INVALID;
        ticks(19);
        assertThat(controller.want()).isEqualTo(3000);
        speed = 1100; // no allowance in a fault
        ticks(1);
        assertThat(controller.fault()).isTrue();
        assertThat(controller.want()).isEqualTo(8000);
        assertThat(controller.source()).isEqualTo(Source.COOLANT);
        coolant = 900;
        ticks(49);
        assertThat(controller.fault()).isTrue();
        coolant = Inputs.INVALID; // one bad tick starts the count again
        ticks(1);
        coolant = 900;
        ticks(49);
        assertThat(controller.fault()).isTrue();
        ticks(1);
        assertThat(controller.fault()).isFalse();
        assertThat(controller.want()).isZero();
    }

    @Test
    void afterRunBeginsHotAndEndsCool() {
        started();
        coolant = 999;
        ticks(1);
        running = false;
        ticks(1);
        assertThat(controller.afterRun()).isFalse();
        running = true;
        coolant = 1010;
        ticks(60);
        running = false;
        ticks(1);
        assertThat(controller.afterRun()).isTrue();
        assertThat(controller.want()).isEqualTo(3000 + 4000 * 40 / 80);
        assertThat(controller.source()).isEqualTo(Source.AFTER_RUN);
        coolant = 971;
        ticks(1);
        assertThat(controller.want()).isEqualTo(3050);
        coolant = 970;
        ticks(1);
        assertThat(controller.afterRun()).isFalse();
        assertThat(controller.on()).isFalse(); // key off: least time on does not count
        coolant = 1010;
        ticks(50);
        assertThat(controller.afterRun()).isFalse();
    }

    private void hotKeyOff() {
        coolant = 1050;
        ticks(60);
        running = false;
        ticks(1);
        assertThat(controller.afterRun()).isTrue();
    }

    @Test
    void afterRunEndsByTime() {
        hotKeyOff();
        ticks(1798);
        assertThat(controller.afterRun()).isTrue();
        ticks(1);
        assertThat(controller.afterRun()).isFalse();
    }

    @Test
    void afterRunEndsByBatteryThirtyTicksInARow() {
        hotKeyOff();
        battery = 11_799;
        ticks(29);
        battery = 11_800;
        ticks(1);
        battery = 11_799;
        ticks(29);
        assertThat(controller.afterRun()).isTrue();
        ticks(1);
        assertThat(controller.afterRun()).isFalse();
    }

    @Test
    void aNewStartEndsTheAfterRunAndDelaysTheFan() {
        hotKeyOff();
        ticks(100);
        assertThat(controller.on()).isTrue();
        running = true;
        ticks(1);
        assertThat(controller.afterRun()).isFalse();
        assertThat(controller.on()).isFalse();
        ticks(49);
        assertThat(controller.on()).isFalse(); // least time off
        ticks(1);
        assertThat(controller.on()).isTrue();
    }

    @Test
    void randomInputsKeepTheOutputInBoundsAndTheSlew() {
        Random random = new Random(5);
        Inputs in = new Inputs();
        int before = 0;
        for (int i = 0; i < 200_000; i++) {
            if (random.nextInt(20) == 0) {
                running = random.nextInt(8) > 0;
                coolant = random.nextInt(12) == 0 ? Inputs.INVALID : random.nextInt(2400) - 400;
                gearbox = random.nextInt(2000) - 400;
                headPressure = random.nextInt(3500);
                airConditioning = random.nextBoolean();
                speed = random.nextInt(2500);
                battery = random.nextInt(20_000);
            }
            in.set(running, coolant, gearbox, headPressure, airConditioning, speed, battery);
            int out = controller.step(in);
            assertThat(out).isBetween(0, 10_000);
            assertThat(out - before).isBetween(out == 0 ? -1549 : -50, 100);
            if (!running && !controller.afterRun()) {
                assertThat(controller.on()).isFalse();
            }
            before = out;
        }
    }

    @Test
    void allocatesNothing() {
        var threads = (com.sun.management.ThreadMXBean) java.lang.management.ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().getId();
        Inputs in = new Inputs();
        long before = 0;
        for (int i = 0; i < 200_000; i++) {
            if (i == 100_000) {
                before = threads.getThreadAllocatedBytes(id);
            }
            in.set(i % 997 > 10, 900 + i % 200, 900 + i % 150, i % 2500, i % 3 == 0, i % 1200, 12_000);
            controller.step(in);
        }
        assertThat(threads.getThreadAllocatedBytes(id) - before).isLessThan(10_000);
    }

    @Test
    void inputsRoundSi() {
        Inputs in = new Inputs();
        in.coolantTemperature(273.15 + 96.04);
        in.gearboxTemperature(273.15 - 0.04);
        in.headPressure(1_299_600);
        in.roadSpeed(-10);
        in.batteryVoltage(13.8496);
        assertThat(in.coolant).isEqualTo(960);
        assertThat(in.gearbox).isZero();
        assertThat(in.headPressure).isEqualTo(1300);
        assertThat(in.speed).isEqualTo(360);
        assertThat(in.battery).isEqualTo(13_850);
        in.coolantTemperature(Double.NaN);
        assertThat(in.coolant).isEqualTo(Inputs.INVALID);
        in.coolantTemperature(-1000); // a nonsense number is not the code of an invalid sensor
        assertThat(in.coolant).isEqualTo(-1000);
    }

    @Test
    void aScheduleFromTheBuildSheet() {
        FanSchedule sheet = new FanSchedule(
                List.of(273.15 + 90, 273.15 + 105),
                List.of(0.3, 1.0),
                273.15 + 92,
                273.15 + 88,
                List.of(10.0, 30.0),
                List.of(0.0, 0.5),
                0.4,
                List.of(),
                List.of(),
                List.of(),
                List.of());
        Schedule s = Schedule.of(sheet);
        assertThat(s.coolant())
                .isEqualTo(
                        new Schedule.Curve(DemandCurve.of(new int[] {900, 3000}, new int[] {1050, 10_000}), 920, 880));
        assertThat(s.allowance().demand()).isEqualTo(DemandCurve.of(new int[] {360, 0}, new int[] {1080, 5000}));
        assertThat(s.switching()).isEqualTo(Schedule.standard().switching());
        assertThat(s.slew()).isEqualTo(Schedule.standard().slew());
        assertThat(s.afterRun()).isEqualTo(Schedule.standard().afterRun());
        assertThat(s.floor()).isEqualTo(new Schedule.Floor(2000, 920, 50, 100));
        Controller made = new Controller(s);
        Inputs in = new Inputs();
        in.set(true, 850, 1900, 0, true, 200, 13_900);
        for (int i = 0; i < 40; i++) {
            made.step(in);
        }
        assertThat(made.want()).isEqualTo(4000);
        assertThat(made.source()).isEqualTo(Source.AIR_CONDITIONING);
        in.airConditioning(false);
        made.step(in);
        assertThat(made.want()).isZero();
    }

    /** Curves count from their first point until 25 kPa or 3 K below it; a curve replaces the constant demand. */
    @Test
    void headPressureAndGearboxCurvesOfTheBuildSheet() {
        Controller made = new Controller(Schedule.of(new FanSchedule(
                List.of(373.15),
                List.of(1.0),
                373.15,
                370.15,
                List.of(),
                List.of(),
                0.9,
                List.of(1000e3, 2000e3),
                List.of(0.25, 1.0),
                List.of(377.15, 392.15),
                List.of(0.3, 0.9))));
        assertThat(want(made, 200, 999)).isZero();
        assertThat(want(made, 200, 1000)).isEqualTo(2500);
        assertThat(want(made, 200, 1600)).isEqualTo(7000);
        assertThat(made.source()).isEqualTo(Source.AIR_CONDITIONING);
        assertThat(want(made, 200, 976)).isEqualTo(2500);
        assertThat(want(made, 200, 975)).isZero();
        assertThat(want(made, 1039, 0)).isZero();
        assertThat(want(made, 1115, 0)).isEqualTo(6000);
        assertThat(made.source()).isEqualTo(Source.GEARBOX);
        assertThat(want(made, 1011, 0)).isEqualTo(3000);
        assertThat(want(made, 1010, 0)).isZero();
    }

    /** The curve after A/C: the earlier of equals wins, the allowance is taken off, key-off takes the latch away. */
    @Test
    void chargeAirCurveOfTheBuildSheet() {
        FanSchedule sheet = new FanSchedule(
                List.of(373.15),
                List.of(1.0),
                373.15,
                370.15,
                List.of(50 / 3.6, 100 / 3.6),
                List.of(0.0, 0.2),
                0.6,
                List.of(),
                List.of(),
                List.of(),
                List.of());
        FanSchedule.ChargeAirCurve curve =
                new FanSchedule.ChargeAirCurve(List.of(273.15 + 50, 273.15 + 60), List.of(0.3, 0.9), 4.0);
        assertThat(Schedule.of(sheet).hasChargeAir()).isFalse();
        Controller made = new Controller(Schedule.of(sheet.with(Optional.of(curve))));
        assertThat(made.schedule().chargeAir())
                .isEqualTo(new Schedule.Curve(DemandCurve.of(new int[] {500, 3000}, new int[] {600, 9000}), 500, 460));
        Inputs in = new Inputs();
        in.set(true, 850, 200, 0, false, 200, 13_900, 499);
        for (int i = 0; i < 31; i++) {
            made.step(in);
        }
        assertThat(made.want()).isZero();
        in.chargeAirTemperature(273.15 + 55);
        made.step(in);
        assertThat(made.want()).isEqualTo(6000);
        assertThat(made.source()).isEqualTo(Source.CHARGE_AIR);
        in.airConditioning(true); // 6000 too
        made.step(in);
        assertThat(made.source()).isEqualTo(Source.AIR_CONDITIONING);
        in.airConditioning(false);
        in.roadSpeed(100 / 3.6);
        made.step(in);
        assertThat(made.want()).isEqualTo(4000);
        in.roadSpeed(0.0);
        in.chargeAirTemperature(273.15 + 46.1);
        made.step(in);
        assertThat(made.want()).isEqualTo(3000);
        assertThat(made.chargeAirLatched()).isTrue();
        in.chargeAirTemperature(273.15 + 46);
        made.step(in);
        assertThat(made.want()).isZero();
        in.chargeAirTemperature(273.15 + 70);
        made.step(in);
        in.running(false);
        made.step(in);
        assertThat(made.chargeAirLatched()).isFalse();
        assertThat(made.source()).isEqualTo(Source.NONE);
        in.chargeAirTemperature(Double.NaN);
        assertThat(in.chargeAir).isEqualTo(-1000);
    }

    private static int want(Controller made, int gearbox, int headPressure) {
        Inputs in = new Inputs();
        in.set(true, 850, gearbox, headPressure, true, 200, 13_900);
        for (int i = 0; i < 40; i++) {
            made.step(in);
        }
        return made.want();
    }

    @Test
    void aSheetWithoutAllowanceTakesNothingOff() {
        Schedule s = Schedule.of(new FanSchedule(
                List.of(370.15),
                List.of(0.5),
                370.15,
                365.15,
                List.of(),
                List.of(),
                0,
                List.of(),
                List.of(),
                List.of(),
                List.of()));
        assertThat(s.allowance().demand().demand(2000)).isZero();
        assertThat(s.coolant().demand().demand(0)).isEqualTo(5000);
    }

    @Test
    void wrongCalibrationsAreRefusedWithNameAndLimits() {
        assertThatThrownBy(() -> DemandCurve.of(new int[] {0, 10_001})).hasMessageContaining("10001, must be 0..10000");
        assertThatThrownBy(() -> DemandCurve.of(new int[] {5, 1}, new int[] {5, 2}))
                .hasMessageContaining("x must rise");
        assertThatThrownBy(() -> new Schedule.Curve(DemandCurve.constant(0), 900, 900))
                .hasMessageContaining("off at 900 must lie below on at 900");
        assertThatThrownBy(() -> new Schedule.Switching(0, 1000, 1001, 0, 0, 0))
                .hasMessageContaining("demand that stops the fan is 1001, must be 0..1000");
        assertThatThrownBy(() -> new Schedule.AfterRun(DemandCurve.constant(0), 900, 900, 1, 1, 1))
                .hasMessageContaining("after-run end is 900");
    }

    @Test
    void aCurveTruncatesTowardZero() {
        DemandCurve falling = DemandCurve.of(new int[] {0, 100}, new int[] {3, 99}, new int[] {1000, 0});
        assertThat(falling.demand(1)).isEqualTo(100);
        assertThat(falling.demand(2)).isEqualTo(100);
        assertThat(falling.demand(3)).isEqualTo(99);
        assertThat(falling.demand(-5)).isEqualTo(100);
        assertThat(falling.demand(5000)).isZero();
        DemandCurve wide = DemandCurve.of(new int[] {-50_000, 0}, new int[] {50_000, 10_000});
        assertThat(wide.demand(49_999)).isEqualTo(9999);
    }
}
