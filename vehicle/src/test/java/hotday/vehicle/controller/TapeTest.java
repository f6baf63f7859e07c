package hotday.vehicle.controller;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** A tape says of another schedule what a controller with that schedule says. */
class TapeTest {
    private static final int TICKS = 3000;

    private static Schedule random(Random random) {
        Schedule s = Schedule.standard();
        int on = 900 + 10 * random.nextInt(20);
        Schedule.Curve coolant =
                new Schedule.Curve(DemandCurve.of(new int[] {on, 2500}, new int[] {on + 80, 10_000}), on, on - 30);
        int head = 1000 + 100 * random.nextInt(15);
        Schedule.Curve cooling = new Schedule.Curve(
                DemandCurve.of(new int[] {head, 2500}, new int[] {head + 400, 10_000}), head, head - 200);
        return new Schedule(
                coolant,
                s.gearbox(),
                cooling,
                s.chargeAir(),
                s.allowance(),
                s.floor(),
                s.sensor(),
                s.switching(),
                s.slew(),
                s.afterRun());
    }

    /** A wandering car: warm-up, rest, driving, a stop with the engine off. */
    private static void drive(int tick, Random random, int[] now, Inputs in) {
        now[0] += random.nextInt(7) - 3;
        now[1] += random.nextInt(41) - 20;
        now[0] = Math.max(700, Math.min(1150, now[0]));
        now[1] = Math.max(300, Math.min(2600, now[1]));
        in.set(tick % 1200 < 1000, now[0], 850, now[1], tick % 300 < 250, tick % 900, 13_500, -1000);
    }

    private static int[] outputs(Schedule schedule, long seed, Witness witness) {
        Controller controller = new Controller(schedule);
        Inputs in = new Inputs();
        Random random = new Random(seed);
        int[] now = {900, 1300};
        int[] out = new int[2 * TICKS];
        for (int i = 0; i < TICKS; i++) {
            drive(i, random, now, in);
            out[2 * i] = controller.step(in);
            out[2 * i + 1] = controller.source().ordinal();
            witness.tick(in, controller);
        }
        return out;
    }

    @Test
    void agreesExactlyWithWhoeverAnswersAlike() {
        Random random = new Random(20261127);
        int alike = 0;
        for (int trial = 0; trial < 400; trial++) {
            Schedule one = random(random);
            Schedule other = trial % 4 == 0 ? one : random(random);
            Tape tape = new Tape();
            int[] expected = outputs(one, trial, tape);
            int[] there = outputs(other, trial, Witness.NONE);
            boolean same = java.util.Arrays.equals(expected, there);
            assertThat(tape.trimmed().agrees(other)).isEqualTo(same);
            assertThat(tape.answer(other)).isEqualTo(there[2 * TICKS - 2] / 10_000.0);
            alike += same ? 1 : 0;
        }
        assertThat(alike).isBetween(100, 399);
    }
}
