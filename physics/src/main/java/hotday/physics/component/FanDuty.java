package hotday.physics.component;

/**
 * Fan demand on its way over the duty wire: dead band, range, inversion and half-percent steps on the sender's side, what the fan makes of it on
 * the other. Duties are in percent: steps of a half percent are exact in binary, shares would not be, and a duty one rounding error beside a
 * threshold is another command. Every number here is read from the data sheet of the fitted part.
 *
 * @param threshold demand, 0..1, below which the fan is told to stay off; below 1
 * @param offDuty sent for off, %
 * @param lowDuty of the least speed, %
 * @param highDuty of the full speed, %, above {@code lowDuty}
 * @param validFrom least duty the fan takes for a command, %
 * @param validTo highest such duty, %; outside, the fan runs at full speed for safety
 * @param leastRatio speed ratio at {@code lowDuty}, 0..1
 * @param inverted whether the wire carries 100 % less the duty
 */
public record FanDuty(
        double threshold,
        double offDuty,
        double lowDuty,
        double highDuty,
        double validFrom,
        double validTo,
        double leastRatio,
        boolean inverted) {
    public FanDuty {
        if (!(threshold >= 0.0 && threshold < 1.0)) {
            throw new IllegalArgumentException("fan threshold " + threshold + " must be from 0 to below 1");
        }
        if (!(leastRatio >= 0.0 && leastRatio <= 1.0)) {
            throw new IllegalArgumentException("least fan speed ratio " + leastRatio + " must be from 0 to 1");
        }
        boolean rises = 0.0 <= validFrom && validFrom < lowDuty && lowDuty < highDuty && highDuty <= validTo;
        if (!(rises && validTo <= 100.0)) {
            throw new IllegalArgumentException("fan duties must rise from 0 to 100 %: valid from " + validFrom
                    + ", low " + lowDuty + ", high " + highDuty + ", valid to " + validTo);
        }
        if (!(offDuty >= validFrom && offDuty < lowDuty)) {
            throw new IllegalArgumentException("fan duty for off " + offDuty + " % must be from " + validFrom
                    + " % to below " + lowDuty + " %, or the fan takes it for a fault or runs");
        }
    }

    /** What is sent, %, for a demand 0..1 (held outside), in half percents, halves upwards. */
    public double sent(double demand) {
        double wanted = demand < threshold
                ? offDuty
                : lowDuty
                        + (highDuty - lowDuty) * (Math.min(1.0, Math.max(0.0, demand)) - threshold) / (1.0 - threshold);
        return Math.floor(2.0 * inSense(wanted, inverted) + 0.5) / 2.0;
    }

    /** Speed ratio the fan runs at for a duty on the wire, %, when it takes the wire for inverted or not. */
    public double ratio(double received, boolean takenAsInverted) {
        double duty = inSense(received, takenAsInverted);
        if (!(duty >= validFrom && duty <= validTo)) {
            return 1.0;
        }
        if (duty < lowDuty) {
            return 0.0;
        }
        return Math.min(1.0, leastRatio + (1.0 - leastRatio) * (duty - lowDuty) / (highDuty - lowDuty));
    }

    /** Speed ratio for a demand, sender and fan agreeing on the inversion. */
    public double ratio(double demand) {
        return ratio(sent(demand), inverted);
    }

    private static double inSense(double duty, boolean inverted) {
        return inverted ? 100.0 - duty : duty;
    }
}
