package hotday.vehicle.controller;

import java.util.Arrays;

/**
 * What a controller read from power-up on and what it answered, tick by tick. Any other schedule can be asked what it would have answered:
 * where that is the same in every tick, the vehicle would have gone through the same to the last digit.
 */
public final class Tape implements Witness {
    private static final int WIDTH = 8;
    private static final int RUNNING = 1;
    private static final int AIR_CONDITIONING = 2;
    private static final int SOURCE = 4; // and above
    private static final int ANSWER = 7;

    private int[] ticks = new int[WIDTH * 1024];
    private int size;

    @Override
    public void tick(Inputs in, Controller answered) {
        if (size == ticks.length) {
            ticks = Arrays.copyOf(ticks, 2 * size);
        }
        ticks[size] = (in.running ? RUNNING : 0)
                + (in.airConditioning ? AIR_CONDITIONING : 0)
                + SOURCE * answered.source().ordinal();
        ticks[size + 1] = in.coolant;
        ticks[size + 2] = in.gearbox;
        ticks[size + 3] = in.headPressure;
        ticks[size + 4] = in.speed;
        ticks[size + 5] = in.battery;
        ticks[size + 6] = in.chargeAir;
        ticks[size + ANSWER] = answered.output();
        size += WIDTH;
    }

    /** Gives back room that is not needed; nothing more is recorded as a rule. */
    public Tape trimmed() {
        ticks = Arrays.copyOf(ticks, size);
        return this;
    }

    /** Whether a schedule would have answered the same from the same source in every tick. */
    public boolean agrees(Schedule schedule) {
        Controller controller = new Controller(schedule);
        Inputs in = new Inputs();
        for (int at = 0; at < size; at += WIDTH) {
            read(at, in);
            if (controller.step(in) != ticks[at + ANSWER] || controller.source().ordinal() != ticks[at] / SOURCE) {
                return false;
            }
        }
        return true;
    }

    /** What a schedule would have answered in the last tick, 0..1. */
    public double answer(Schedule schedule) {
        Controller controller = new Controller(schedule);
        Inputs in = new Inputs();
        for (int at = 0; at < size; at += WIDTH) {
            read(at, in);
            controller.step(in);
        }
        return controller.outputShare();
    }

    private void read(int at, Inputs in) {
        in.set(
                (ticks[at] & RUNNING) != 0,
                ticks[at + 1],
                ticks[at + 2],
                ticks[at + 3],
                (ticks[at] & AIR_CONDITIONING) != 0,
                ticks[at + 4],
                ticks[at + 5],
                ticks[at + 6]);
    }
}
