package hotday.vehicle.controller;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The corners of the rules of docs/controller.md, with the standard schedule; {@link ControllerTest} has the rules. */
class ControllerCornersTest {
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

    private void expect(int want, Source source) {
        assertThat(controller.want()).isEqualTo(want);
        assertThat(controller.source()).isEqualTo(source);
    }

    /** Warm, past the start delay, fan off; 20 km/h: no floor, no allowance. */
    private void started() {
        ticks(31);
        expect(0, Source.NONE);
    }

    @Test
    void gearboxLatchHasHysteresis() {
        started();
        gearbox = 949;
        ticks(1);
        expect(0, Source.NONE);
        gearbox = 950;
        ticks(1);
        expect(3000, Source.GEARBOX);
        gearbox = 901;
        ticks(1);
        expect(2510, Source.GEARBOX);
        gearbox = 900;
        ticks(1);
        expect(0, Source.NONE);
        gearbox = 949;
        ticks(1);
        expect(0, Source.NONE);
    }

    @Test
    void headPressureLatchHasHysteresis() {
        started();
        airConditioning = true;
        headPressure = 1299;
        ticks(1);
        expect(0, Source.NONE);
        headPressure = 1300;
        ticks(1);
        expect(3500, Source.AIR_CONDITIONING);
        headPressure = 1051;
        ticks(1);
        expect(2504, Source.AIR_CONDITIONING);
        headPressure = 1050;
        ticks(1);
        expect(0, Source.NONE);
        headPressure = 1299;
        ticks(1);
        expect(0, Source.NONE);
    }

    @Test
    void theGearboxComesBeforeAnEqualHeadPressure() {
        started();
        gearbox = 1150;
        headPressure = 2000;
        airConditioning = true;
        ticks(1);
        expect(10_000, Source.GEARBOX);
    }

    @Test
    void theAllowanceIsTakenOffEveryCurveAlike() {
        started();
        speed = 800; // 4000
        gearbox = 1100; // 8000
        ticks(1);
        expect(4000, Source.GEARBOX);
        headPressure = 2000; // 10000
        airConditioning = true;
        ticks(1);
        expect(6000, Source.AIR_CONDITIONING);
        speed = 300; // nothing yet
        ticks(1);
        expect(10_000, Source.AIR_CONDITIONING);
    }

    @Test
    void theFloorDoesNotTakeTheSourceOfALargerDemand() {
        started();
        speed = 0;
        coolant = 960;
        ticks(1);
        expect(3000, Source.COOLANT);
    }

    @Test
    void keyOffClearsLatchesAndRest() {
        started();
        speed = 49;
        coolant = 960;
        gearbox = 950;
        headPressure = 1300;
        airConditioning = true;
        ticks(1);
        assertThat(controller.slow()).isTrue();
        running = false;
        ticks(1);
        running = true;
        speed = 80; // each of them inside its hysteresis
        coolant = 940;
        gearbox = 940;
        headPressure = 1200;
        ticks(40);
        assertThat(controller.slow()).isFalse();
        expect(0, Source.NONE);
    }

    @Test
    void theFanStartsFromTwentyPercentNotBelow() {
        started();
        coolant = 960;
        speed = 430; // 3000 less 1040
        ticks(1);
        coolant = 959;
        speed = 423; // 2983 less 984
        ticks(10);
        expect(1999, Source.COOLANT);
        assertThat(controller.on()).isFalse();
        coolant = 960;
        speed = 425; // 3000 less 1000
        ticks(1);
        expect(2000, Source.COOLANT);
        assertThat(controller.on()).isTrue();
    }

    @Test
    void theFanStopsBelowFifteenPercent() {
        started();
        coolant = 964;
        ticks(300);
        speed = 525; // 3300 less 1800
        ticks(100);
        expect(1500, Source.COOLANT);
        assertThat(controller.on()).isTrue();
        coolant = 961;
        speed = 497; // 3075 less 1576
        ticks(1);
        expect(1499, Source.COOLANT);
        assertThat(controller.on()).isFalse();
    }

    @Test
    void aGoodReadingStartsTheCountOfBadOnesAgain() {
        started();
        for (int i = 0; i < 5; i++) {
            coolant = Inputs.INVALID;
            ticks(19);
            coolant = 850;
            ticks(1);
        }
        assertThat(controller.fault()).isFalse();
    }

    @Test
    void aSensorDeadAtPowerUpEndsInEightyPercentFromColdAndUnlatched() {
        coolant = Inputs.INVALID;
        ticks(19);
        expect(0, Source.NONE);
        ticks(12);
        assertThat(controller.coolantLatched()).isFalse();
        expect(8000, Source.COOLANT);
    }

    @Test
    void aFaultRunsOnOnlyFromAHotHeldValue() {
        coolant = 1000;
        ticks(40);
        coolant = Inputs.INVALID;
        ticks(30);
        running = false;
        ticks(1);
        expect(4500, Source.AFTER_RUN); // 3000 + 4000 * 30 / 80
        controller.reset();
        running = true;
        coolant = 999;
        ticks(40);
        coolant = Inputs.INVALID;
        ticks(30);
        running = false;
        ticks(1);
        assertThat(controller.fault()).isTrue();
        assertThat(controller.afterRun()).isFalse();
        expect(0, Source.NONE);
    }

    @Test
    void anAfterRunBeginsFromExactlyItsTemperatureAndTakesTheFullSlewAtRest() {
        coolant = 1000;
        speed = 0;
        ticks(20); // still in the start delay: the fan rests
        running = false;
        assertThat(ticks(1)).isEqualTo(100);
        expect(4500, Source.AFTER_RUN);
        assertThat(ticks(9)).isEqualTo(1000);
    }

    @Test
    void everyAfterRunCountsFromZero() {
        coolant = 1050;
        ticks(60);
        for (int i = 0; i < 3; i++) {
            running = false;
            battery = 11_799;
            ticks(29);
            battery = 13_900;
            ticks(971);
            battery = 11_799;
            ticks(29);
            assertThat(controller.afterRun()).isTrue();
            running = true;
            ticks(1);
        }
    }
}
