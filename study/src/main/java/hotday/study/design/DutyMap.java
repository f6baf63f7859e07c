package hotday.study.design;

import hotday.vehicle.cases.FanDrive;

/**
 * A fan that is told its speed by the duty cycle of a line. Below and above the band it rests, or does whatever its maker has it do when the
 * line is lost.
 *
 * @param least duty at the lowest speed, 0..1, below {@code most}
 * @param most duty at full speed, 0..1
 * @param inverted the line is low when it is active: what is sent is 1 less the duty
 * @param step of the duty, 0..1
 * @param frequency Hz
 */
public record DutyMap(double least, double most, boolean inverted, double step, double frequency) implements FanDrive {
    public DutyMap {
        if (!(least >= 0.0 && most > least && most <= 1.0 && step > 0.0 && step <= 0.1)) {
            throw new IllegalArgumentException("duty from " + least + " to " + most + " in steps of " + step
                    + ": must rise within 0..1, steps up to 0.1");
        }
    }

    /** What is sent for an output, 0..1: half of the dead band below the least for an output of 0. */
    public double sent(double output) {
        double duty = output <= 0.0 ? least / 2 : least + output * (most - least);
        double stepped = step * Math.round(duty / step);
        return inverted ? 1.0 - stepped : stepped;
    }

    /** Speed that a fan makes of what was sent, 0..1. */
    public double heard(double sent) {
        double duty = inverted ? 1.0 - sent : sent;
        return duty < least - step / 2 ? 0.0 : Math.min(1.0, Math.max(0.0, (duty - least) / (most - least)));
    }

    @Override
    public double of(double output) {
        return heard(sent(output));
    }

    /** Largest error of the output, 0..1. */
    public double error() {
        return step / 2 / (most - least);
    }
}
