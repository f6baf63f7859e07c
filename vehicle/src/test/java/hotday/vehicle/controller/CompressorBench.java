package hotday.vehicle.controller;

import static org.assertj.core.api.Assertions.assertThat;

/** Rules with the standard limits and inputs under which they engage; a test turns one knob. */
abstract class CompressorBench {
    static final int START_DELAY = 70;
    static final int LEAD = 5;
    static final int LEAST_ON = 30;
    static final int LEAST_OFF = 50;
    static final int BLANKING = 50;
    static final int TIME_OUT = 10;
    static final int THROTTLE_CUT = 50;

    CompressorRules rules = new CompressorRules(CompressorLimits.standard());
    boolean request = true;
    int age;
    boolean running = true;
    int engineSpeed = 750;
    int evaporator = 60;
    int head = 1400;
    int suction = 300;
    int load = 1000;
    int coolant = 950;

    final void ticks(int count) {
        CompressorInputs in = new CompressorInputs();
        for (int i = 0; i < count; i++) {
            in.set(request, age, running, engineSpeed, evaporator, head, suction, load, coolant);
            rules.step(in);
        }
    }

    final void expect(Hold hold) {
        assertThat(rules.hold()).isEqualTo(hold);
        assertThat(rules.engaged()).isEqualTo(hold == Hold.NONE);
    }

    final void engaged() {
        ticks(START_DELAY + LEAD + 1);
        expect(Hold.NONE);
    }

    /** Engaged for longer than the least time on and the blanking. */
    final void settled() {
        engaged();
        ticks(100);
        expect(Hold.NONE);
    }

    /** Open long enough for the least time off, and nothing but the lead between it and the clutch. */
    final void comesBackAfterTheLead() {
        ticks(LEAD);
        expect(Hold.LEAD);
        ticks(1);
        expect(Hold.NONE);
    }
}
