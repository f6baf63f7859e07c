package hotday.app.cli;

import hotday.core.unit.Quantity;
import hotday.core.unit.UnitException;
import hotday.core.unit.UnitSystem;
import hotday.core.unit.Units;
import hotday.study.design.DutyMap;
import hotday.study.design.Rendering;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** What a controller that a schedule is rendered for has. */
final class ControllerOptions {
    private static final int MOST_POINTS = 32;
    private static final double DUTY_STEP = 0.005;
    private static final double FREQUENCY = 100.0;

    @Option(names = "--points", paramLabel = "N", description = "break points of its tables (default 6)")
    private Optional<Integer> points = Optional.empty();

    @Option(
            names = "--duty",
            paramLabel = "SHARE",
            split = ",",
            description =
                    "duty cycle at the lowest and at full speed, such as '10 %%,90 %%'; else its output is in percent")
    private List<String> duty = List.of();

    @Option(names = "--inverted", description = "with --duty: the line is low when it is active")
    private boolean inverted;

    @Option(
            names = "--relays",
            paramLabel = "SHARE",
            split = ",",
            description =
                    "fan speeds that relays switch, rising, such as '50 %%,100 %%'; the best thresholds are found")
    private List<String> relays = List.of();

    boolean given() {
        return points.isPresent() || !duty.isEmpty() || inverted || !relays.isEmpty();
    }

    Rendering.Controller read(TypedOptions typed, UnitSystem units) {
        int wanted = points.orElse(6);
        if (wanted < 2 || wanted > MOST_POINTS) {
            typed.fault("--points", "out-of-range", wanted + " break points; must be 2 to " + MOST_POINTS);
        }
        if (!duty.isEmpty() && !relays.isEmpty()) {
            typed.fault("--relays", "option-twice", "stands beside --duty; a fan is told its speed one way");
        }
        if (inverted && duty.isEmpty()) {
            typed.fault("--inverted", "option-alone", "needs --duty");
        }
        return Rendering.Controller.of(units, Math.max(2, Math.min(MOST_POINTS, wanted)), duty(typed), speeds(typed));
    }

    private Optional<DutyMap> duty(TypedOptions typed) {
        if (duty.isEmpty()) {
            return Optional.empty();
        }
        List<Double> ends = shares("--duty", duty, typed);
        if (ends.size() != 2 || ends.get(1) <= ends.get(0)) {
            typed.fault("--duty", "value-wrong", "two shares are needed, the lower one first, such as '10 %,90 %'");
            return Optional.empty();
        }
        return Optional.of(new DutyMap(ends.get(0), ends.get(1), inverted, DUTY_STEP, FREQUENCY));
    }

    private Optional<List<Double>> speeds(TypedOptions typed) {
        if (relays.isEmpty()) {
            return Optional.empty();
        }
        List<Double> speeds = shares("--relays", relays, typed);
        boolean rises = !speeds.isEmpty() && speeds.size() <= 3 && speeds.get(0) > 0.0;
        for (int i = 1; i < speeds.size(); i++) {
            rises &= speeds.get(i) > speeds.get(i - 1);
        }
        if (!rises) {
            typed.fault("--relays", "value-wrong", "one to three rising speeds are needed, such as '50 %,100 %'");
            return Optional.empty();
        }
        return Optional.of(speeds);
    }

    private static List<Double> shares(String option, List<String> typedShares, TypedOptions typed) {
        List<Double> all = new ArrayList<>();
        for (String each : typedShares) {
            try {
                double share = Units.parse(Quantity.RATIO, each.strip());
                if (share < 0.0 || share > 1.0) {
                    typed.fault(option, "out-of-range", "'" + each.strip() + "' must be 0 % to 100 %");
                } else {
                    all.add(share);
                }
            } catch (UnitException e) {
                typed.fault(option, "unit-wrong", "'" + each.strip() + "': " + e.getMessage());
            }
        }
        return all;
    }
}
