package hotday.study.design;

import hotday.vehicle.cases.FanDrive;
import java.util.List;

/**
 * Relays that switch a fan to one of a few speeds as the output of the controller passes thresholds.
 *
 * @param speeds of the stages, rising, 0..1
 * @param up output from which each stage comes in, rising
 * @param down output below which it goes out, below its {@code up}
 */
public record Relays(List<Double> speeds, List<Double> up, List<Double> down) {
    public Relays {
        speeds = List.copyOf(speeds);
        up = List.copyOf(up);
        down = List.copyOf(down);
        if (speeds.isEmpty() || speeds.size() != up.size() || up.size() != down.size()) {
            throw new IllegalArgumentException(
                    speeds.size() + " speeds, " + up.size() + " and " + down.size() + " thresholds");
        }
        for (int i = 0; i < up.size(); i++) {
            if (down.get(i) >= up.get(i) || (i > 0 && up.get(i) <= up.get(i - 1))) {
                throw new IllegalArgumentException(
                        "stage " + (i + 1) + " comes in at " + up.get(i) + " and goes out at " + down.get(i));
            }
        }
    }

    /** A box of relays at rest. */
    public FanDrive drive() {
        return new FanDrive() {
            private int stage;

            @Override
            public double of(double output) {
                while (stage < up.size() && output >= up.get(stage)) {
                    stage++;
                }
                while (stage > 0 && output < down.get(stage - 1)) {
                    stage--;
                }
                return stage == 0 ? 0.0 : speeds.get(stage - 1);
            }
        };
    }

    /** By how much the fan may turn slower than it is asked to, 0..1: just below a threshold, or where the last stage is not full speed. */
    public double error() {
        double worst = 1.0 - speeds.get(speeds.size() - 1);
        for (int i = 0; i < up.size(); i++) {
            worst = Math.max(worst, up.get(i) - (i == 0 ? 0.0 : speeds.get(i - 1)));
        }
        return worst;
    }
}
