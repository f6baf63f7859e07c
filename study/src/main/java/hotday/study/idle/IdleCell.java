package hotday.study.idle;

import hotday.vehicle.idle.FeedForward;
import hotday.vehicle.idle.IdleRun;
import hotday.vehicle.idle.IdleSettings;

/**
 * One cell of the table and what it does.
 *
 * @param head pressure when the clutch closes, Pa absolute
 * @param suction pressure assumed there, Pa absolute
 * @param settings of the idle control at this engine speed
 * @param load of the compressor at the crank, N m
 * @param forward as the table holds it
 * @param share of the idling engine's air, of its fuel for a diesel, that the torque stands for; 0..
 * @param unannounced, announced the run without and with the table
 * @param tooShort, tooLong the run with a lead 0.1 s shorter and longer
 */
public record IdleCell(
        double head,
        double suction,
        IdleSettings settings,
        double load,
        FeedForward forward,
        double share,
        IdleRun unannounced,
        IdleRun announced,
        IdleRun tooShort,
        IdleRun tooLong) {
    private static final double RPM = Math.PI / 30.0;

    /** Largest sag that passes, rad/s; the task of the table. */
    public static final double MOST_SAG = 50.0 * RPM;

    /** Longest settling that passes, s; the task of the table. */
    public static final double LONGEST_SETTLING = 1.5;

    /** Largest flare that passes, rad/s; common practice, no source. */
    public static final double MOST_FLARE = 150.0 * RPM;

    /** rad/s. */
    public double speed() {
        return settings.speed();
    }

    /** Whether the table keeps the speed. */
    public boolean holds() {
        return announced.sag() <= MOST_SAG
                && announced.flare() <= MOST_FLARE
                && announced.settling() <= LONGEST_SETTLING;
    }

    /** Whether the ignition has nothing left to give at some instant of the announced run; never where it gives nothing at all. */
    public boolean reserveUsedUp() {
        double gain = settings.spark();
        return gain > 0.0
                && (gain * announced.sag() >= settings.reserveUp()
                        || gain * announced.flare() >= settings.reserveDown());
    }
}
