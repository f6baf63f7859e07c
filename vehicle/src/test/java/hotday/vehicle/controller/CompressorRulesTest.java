package hotday.vehicle.controller;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Request, engine, times, announcement and order of docs/controller.md; expected ticks by hand. */
class CompressorRulesTest extends CompressorBench {
    @Test
    void startDelayThenLeadThenClutch() {
        ticks(START_DELAY);
        expect(Hold.START_DELAY);
        assertThat(rules.announced()).isFalse();
        for (int i = 0; i < LEAD; i++) {
            ticks(1);
            expect(Hold.LEAD);
            assertThat(rules.announced()).isTrue();
        }
        ticks(1);
        expect(Hold.NONE);
        assertThat(rules.announced()).isTrue();
        assertThat(rules.sinceSwitch()).isZero();
    }

    @Test
    void aRuleDuringTheLeadTakesTheAnnouncementBackAndTheNextLeadIsWhole() {
        ticks(START_DELAY + LEAD);
        expect(Hold.LEAD);
        coolant = 1160;
        ticks(1);
        expect(Hold.COOLANT);
        assertThat(rules.announced()).isFalse();
        coolant = 1100;
        comesBackAfterTheLead();
    }

    @Test
    void theAnnouncementTrailsTheClutchByHalfASecond() {
        settled();
        request = false;
        ticks(LEAD);
        expect(Hold.REQUEST);
        assertThat(rules.announced()).isTrue();
        ticks(1);
        assertThat(rules.announced()).isFalse();
    }

    @Test
    void aStoppedEngineHearsNothing() {
        settled();
        running = false;
        ticks(1);
        expect(Hold.ENGINE);
        assertThat(rules.announced()).isFalse();
    }

    @Test
    void anOldMessageReleasesAtOnceAndANewOneAsksAgain() {
        engaged();
        age = TIME_OUT - 1;
        ticks(1);
        expect(Hold.NONE);
        age = TIME_OUT;
        ticks(1); // inside the least time on
        expect(Hold.TIME_OUT);
        assertThat(rules.requested()).isFalse();
        age = CompressorInputs.NEVER;
        ticks(LEAST_OFF);
        expect(Hold.TIME_OUT);
        age = 0;
        comesBackAfterTheLead();
        assertThat(rules.requested()).isTrue();
        age = -1; // nonsense is no message
        ticks(1);
        expect(Hold.TIME_OUT);
    }

    @Test
    void aRequestTakenBackWaitsForTheLeastTimeOn() {
        engaged();
        request = false;
        ticks(LEAST_ON - 1);
        expect(Hold.NONE);
        assertThat(rules.requested()).isFalse();
        ticks(1);
        expect(Hold.REQUEST);
    }

    @Test
    void theLeastTimeOffIsWaitedForThenTheLead() {
        settled();
        request = false;
        ticks(1);
        request = true;
        ticks(LEAST_OFF - 1);
        expect(Hold.LEAST_OFF);
        assertThat(rules.sinceSwitch()).isEqualTo(LEAST_OFF - 1);
        comesBackAfterTheLead();
    }

    @Test
    void everyStartIsDelayed() {
        settled();
        running = false;
        engineSpeed = 0;
        ticks(200);
        expect(Hold.ENGINE);
        running = true;
        ticks(1);
        expect(Hold.START_DELAY); // the first of two
        engineSpeed = 750;
        ticks(START_DELAY - 1);
        expect(Hold.START_DELAY);
        comesBackAfterTheLead();
    }

    @Test
    void aStopDuringTheDelayLoadsItAgain() {
        ticks(START_DELAY - 1);
        running = false;
        ticks(1);
        running = true;
        ticks(START_DELAY);
        expect(Hold.START_DELAY);
        ticks(1);
        expect(Hold.LEAD);
    }

    @Test
    void theLeastTimeOffHoldsAlsoAfterARestart() {
        rules = new CompressorRules(with(new CompressorLimits.Engine(0, new CompressorLimits.Below(450, 550))));
        ticks(LEAD + 1);
        expect(Hold.NONE);
        running = false;
        ticks(1);
        running = true;
        ticks(LEAST_OFF - 1);
        expect(Hold.LEAST_OFF);
        comesBackAfterTheLead();
    }

    private static CompressorLimits with(CompressorLimits.Engine engine) {
        CompressorLimits s = CompressorLimits.standard();
        return new CompressorLimits(
                s.timeOut(), engine, s.freeze(), s.headPressure(), s.suction(), s.throttle(), s.coolant(), s.clutch());
    }

    @Test
    void crankingAndStallingReleaseAtOnce() {
        engineSpeed = 549; // at power-up not yet turning by itself
        ticks(START_DELAY + 1);
        expect(Hold.SPEED);
        engineSpeed = 550;
        comesBackAfterTheLead();
        engineSpeed = 451;
        ticks(1);
        expect(Hold.NONE);
        engineSpeed = 450;
        ticks(1);
        expect(Hold.SPEED);
        engineSpeed = 549;
        ticks(LEAST_OFF);
        expect(Hold.SPEED);
        engineSpeed = 550;
        comesBackAfterTheLead();
    }

    /** A weaker rule first in the order does not hide a stronger one behind it. */
    @Test
    void aStrongerRuleBehindAWeakerOneStillEndsTheLeastTimeOn() {
        engaged();
        request = false;
        ticks(1);
        expect(Hold.NONE);
        head = 3100;
        ticks(1);
        expect(Hold.REQUEST);
    }

    @Test
    void theFirstOfTheOrderIsNamed() {
        settled();
        everythingHolds();
        ticks(2);
        expect(Hold.TIME_OUT);
        age = 0;
        ticks(1);
        expect(Hold.REQUEST);
        request = true;
        ticks(1);
        expect(Hold.ENGINE);
        running = true;
        ticks(START_DELAY);
        expect(Hold.START_DELAY);
        load = 0;
        ticks(1);
        expect(Hold.SPEED);
        engineSpeed = 750;
        ticks(1);
        expect(Hold.FREEZE);
        evaporator = 40;
        load = 10_000;
        ticks(1);
        expect(Hold.HIGH_PRESSURE);
        head = 2000;
        ticks(1);
        expect(Hold.LOW_PRESSURE);
        suction = 210;
        ticks(1);
        expect(Hold.THROTTLE);
        load = 0;
        ticks(1);
        expect(Hold.COOLANT);
        coolant = 1100;
        comesBackAfterTheLead();
    }

    private void everythingHolds() {
        age = TIME_OUT;
        request = false;
        running = false;
        engineSpeed = 0;
        evaporator = 0;
        head = 3500;
        suction = 100;
        load = 10_000;
        coolant = 1200;
    }

    @Test
    void theStrongerRules() {
        assertThat(List.of(Hold.values()).stream().filter(Hold::stronger))
                .containsExactly(
                        Hold.TIME_OUT,
                        Hold.ENGINE,
                        Hold.START_DELAY,
                        Hold.SPEED,
                        Hold.HIGH_PRESSURE,
                        Hold.LOW_PRESSURE);
    }

    @Test
    void withoutLeadTheClutchClosesInTheFirstFreeTick() {
        CompressorLimits s = CompressorLimits.standard();
        rules = new CompressorRules(new CompressorLimits(
                s.timeOut(),
                new CompressorLimits.Engine(0, s.engine().speed()),
                s.freeze(),
                s.headPressure(),
                s.suction(),
                s.throttle(),
                s.coolant(),
                new CompressorLimits.Clutch(0, 0, 0, 0)));
        ticks(1);
        expect(Hold.NONE);
        request = false;
        ticks(1);
        expect(Hold.REQUEST);
        assertThat(rules.announced()).isFalse();
        request = true;
        ticks(1);
        expect(Hold.NONE);
    }

    @Test
    void countersStop() {
        settled();
        load = 10_000;
        ticks(CompressorRules.COUNTED + 100);
        expect(Hold.NONE); // the cut is long over
        assertThat(rules.sinceSwitch()).isEqualTo(CompressorRules.COUNTED);
        running = false;
        ticks(CompressorRules.COUNTED + 100);
        assertThat(rules.sinceSwitch()).isEqualTo(CompressorRules.COUNTED);
        running = true;
        ticks(START_DELAY);
        comesBackAfterTheLead();
    }

    @Test
    void resetIsPowerUp() {
        settled();
        rules.reset();
        expect(Hold.TIME_OUT);
        assertThat(rules.announced() || rules.requested()).isFalse();
        startDelayThenLeadThenClutch();
    }
}
