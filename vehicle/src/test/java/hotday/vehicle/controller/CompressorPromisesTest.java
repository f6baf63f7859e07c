package hotday.vehicle.controller;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Promises of docs/controller.md that hold for whatever comes in; standard limits, fixed seeds. */
class CompressorPromisesTest extends CompressorBench {
    @Test
    void aStateCanBeTakenOver() {
        Random random = new Random(11);
        CompressorRules first = new CompressorRules(CompressorLimits.standard());
        CompressorRules second = new CompressorRules(CompressorLimits.standard());
        CompressorInputs in = new CompressorInputs();
        for (int i = 0; i < 20_000; i++) {
            draw(random, in);
            if (i % 7 == 0) {
                second.reset();
                second.copyFrom(first);
                expectSame(first, second);
            }
            first.step(in);
            second.step(in);
            expectSame(first, second);
        }
    }

    private static void expectSame(CompressorRules a, CompressorRules b) {
        assertThat(a.hold()).isEqualTo(b.hold());
        assertThat(a.engaged()).isEqualTo(b.engaged());
        assertThat(a.announced()).isEqualTo(b.announced());
        assertThat(a.requested()).isEqualTo(b.requested());
        assertThat(a.sinceSwitch()).isEqualTo(b.sinceSwitch());
    }

    /** Now and then one quantity takes a new value, mostly one that allows the compressor. */
    private void draw(Random random, CompressorInputs in) {
        if (random.nextInt(6) == 0) {
            switch (random.nextInt(9)) {
                case 0 -> request = random.nextInt(10) > 0;
                case 1 -> age = random.nextInt(8) > 0 ? random.nextInt(TIME_OUT) : random.nextInt(30) - 5;
                case 2 -> running = random.nextInt(20) > 0;
                case 3 -> engineSpeed = random.nextInt(6) > 0 ? 600 + random.nextInt(3000) : random.nextInt(600);
                case 4 -> evaporator = random.nextInt(120) - 20;
                case 5 -> head = random.nextInt(6) > 0 ? random.nextInt(2500) : 2900 + random.nextInt(400);
                case 6 -> suction = random.nextInt(6) > 0 ? 200 + random.nextInt(300) : 100 + random.nextInt(130);
                case 7 -> load = 7000 + random.nextInt(3001);
                default -> coolant = random.nextInt(9) > 0 ? 800 + random.nextInt(400) : Inputs.INVALID;
            }
        }
        in.set(request, age, running, engineSpeed, evaporator, head, suction, load, coolant);
    }

    @Test
    void randomInputsKeepEveryPromise() {
        Random random = new Random(7);
        CompressorInputs in = new CompressorInputs();
        int closed = 0;
        int early = 0;
        int time = LEAST_OFF;
        int told = 0;
        boolean before = false;
        for (int i = 0; i < 100_000; i++) {
            draw(random, in);
            boolean now = rules.step(in);
            time++;
            if (now && !before) {
                closed++;
                assertThat(time).isGreaterThanOrEqualTo(LEAST_OFF + (closed > 1 ? LEAD : 0));
                assertThat(told).isGreaterThanOrEqualTo(LEAD);
            }
            if (!now && before && time < LEAST_ON) {
                early++;
                assertThat(strongerStands(time)).isTrue();
            }
            time = now == before ? time : 0;
            told = rules.announced() ? told + 1 : 0;
            expectSafe(now);
            before = now;
        }
        assertThat(closed).isGreaterThan(200);
        assertThat(early).isGreaterThan(50);
    }

    private boolean strongerStands(int time) {
        boolean lost = age < 0 || age >= TIME_OUT || !running;
        return lost || engineSpeed <= 450 || head >= 3100 || (suction <= 170 && time >= BLANKING);
    }

    /** Stronger than "not two ticks above the cut-out": not one. */
    private void expectSafe(boolean now) {
        assertThat(rules.hold() == Hold.NONE).isEqualTo(now);
        assertThat(rules.sinceSwitch()).isBetween(0, CompressorRules.COUNTED);
        assertThat(rules.announced() && !running).isFalse();
        if (now) {
            assertThat(head).isLessThan(3100);
            assertThat(engineSpeed).isGreaterThan(450);
            assertThat(running && age >= 0 && age < TIME_OUT).isTrue();
            assertThat(rules.announced()).isTrue();
        }
    }

    @Test
    void allocatesNothing() {
        var threads = (com.sun.management.ThreadMXBean) java.lang.management.ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().getId();
        CompressorInputs in = new CompressorInputs();
        long before = 0;
        for (int i = 0; i < 200_000; i++) {
            if (i == 100_000) {
                before = threads.getThreadAllocatedBytes(id);
            }
            in.set(true, i % 12, i % 997 > 10, 700, i % 100, 1000 + i % 2500, 300, i % 10_000, 900);
            rules.step(in);
        }
        assertThat(threads.getThreadAllocatedBytes(id) - before).isLessThan(10_000);
    }
}
