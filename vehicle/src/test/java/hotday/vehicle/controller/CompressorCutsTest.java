package hotday.vehicle.controller;

import org.junit.jupiter.api.Test;

/** The cuts of docs/controller.md, each with its hysteresis; expected ticks by hand. */
class CompressorCutsTest extends CompressorBench {
    @Test
    void freezeHasHysteresisAndWaitsForTheLeastTimeOn() {
        engaged();
        evaporator = 11;
        ticks(LEAST_ON - 2);
        evaporator = 10;
        ticks(1);
        expect(Hold.NONE);
        ticks(1);
        expect(Hold.FREEZE);
        evaporator = 39;
        ticks(LEAST_OFF);
        expect(Hold.FREEZE);
        evaporator = 40;
        comesBackAfterTheLead();
    }

    @Test
    void aLostEvaporatorReadingCountsAsFrozen() {
        settled();
        evaporator = Inputs.INVALID;
        ticks(1);
        expect(Hold.FREEZE);
    }

    @Test
    void aVariableDisplacementKeepsItselfFromFreezing() {
        rules = new CompressorRules(CompressorLimits.of(3100e3, 2000e3, 170e3, 274.15, true));
        evaporator = Inputs.INVALID;
        settled();
    }

    @Test
    void highPressureReleasesInsideTheLeastTimeOnAndComesBackLower() {
        engaged();
        head = 3099;
        ticks(1);
        expect(Hold.NONE);
        head = 3100;
        ticks(1);
        expect(Hold.HIGH_PRESSURE);
        head = 2001;
        ticks(LEAST_OFF);
        expect(Hold.HIGH_PRESSURE);
        head = 2000;
        comesBackAfterTheLead();
    }

    @Test
    void highPressureIsWatchedWhileSomethingElseHolds() {
        running = false;
        head = 3100;
        ticks(1);
        head = 2500;
        running = true;
        ticks(START_DELAY + 1);
        expect(Hold.HIGH_PRESSURE);
    }

    @Test
    void lostChargeNeverEngages() {
        suction = 170;
        ticks(START_DELAY + 1);
        expect(Hold.LOW_PRESSURE);
        suction = 209;
        ticks(1);
        expect(Hold.LOW_PRESSURE);
        suction = 210;
        comesBackAfterTheLead();
    }

    @Test
    void theLowSideMayDropForFiveSecondsAfterEngagement() {
        engaged();
        suction = 50;
        ticks(BLANKING - 1);
        expect(Hold.NONE);
        ticks(1);
        expect(Hold.LOW_PRESSURE);
        suction = 209;
        ticks(LEAST_OFF);
        expect(Hold.LOW_PRESSURE);
        suction = 210;
        comesBackAfterTheLead();
        suction = 171;
        ticks(BLANKING + 1);
        expect(Hold.NONE);
        suction = 170;
        ticks(1);
        expect(Hold.LOW_PRESSURE);
    }

    @Test
    void lowPressureIsStrongerThanTheLeastTimeOnWhenNotBlanked() {
        CompressorLimits s = CompressorLimits.standard();
        rules = new CompressorRules(new CompressorLimits(
                s.timeOut(),
                s.engine(),
                s.freeze(),
                s.headPressure(),
                new CompressorLimits.Suction(s.suction().pressure(), 0),
                s.throttle(),
                s.coolant(),
                s.clutch()));
        engaged();
        suction = 170;
        ticks(1);
        expect(Hold.LOW_PRESSURE);
    }

    @Test
    void wideOpenThrottleCutsForFiveSecondsOnce() {
        settled();
        load = 8999;
        ticks(1);
        expect(Hold.NONE);
        load = 9000;
        ticks(1);
        expect(Hold.THROTTLE);
        ticks(THROTTLE_CUT - 1);
        expect(Hold.THROTTLE);
        comesBackAfterTheLead(); // pedal still down
        load = 8001;
        ticks(100);
        load = 10_000; // not released in between
        ticks(100);
        expect(Hold.NONE);
        load = 8000;
        ticks(1);
        load = 9000;
        ticks(1);
        expect(Hold.THROTTLE);
    }

    @Test
    void releasingThePedalEndsTheCut() {
        settled();
        load = 9500;
        ticks(20);
        load = 8001;
        ticks(1);
        expect(Hold.THROTTLE);
        load = 8000;
        ticks(1);
        expect(Hold.LEAST_OFF);
    }

    @Test
    void theLeastTimeOnShortensAThrottleCut() {
        engaged();
        load = 9000;
        ticks(LEAST_ON - 1);
        expect(Hold.NONE);
        ticks(1);
        expect(Hold.THROTTLE);
        ticks(THROTTLE_CUT - LEAST_ON);
        expect(Hold.THROTTLE);
        ticks(1);
        expect(Hold.LEAST_OFF);
    }

    @Test
    void hotCoolantHasHysteresisAndALostReadingChangesNothing() {
        settled();
        coolant = 1159;
        ticks(1);
        coolant = Inputs.INVALID;
        ticks(100);
        expect(Hold.NONE);
        coolant = 1160;
        ticks(1);
        expect(Hold.COOLANT);
        coolant = Inputs.INVALID;
        ticks(100);
        expect(Hold.COOLANT);
        coolant = 1101;
        ticks(1);
        expect(Hold.COOLANT);
        coolant = 1100;
        comesBackAfterTheLead();
    }

    @Test
    void hotCoolantWaitsForTheLeastTimeOn() {
        engaged();
        coolant = 1200;
        ticks(LEAST_ON - 1);
        expect(Hold.NONE);
        ticks(1);
        expect(Hold.COOLANT);
    }
}
