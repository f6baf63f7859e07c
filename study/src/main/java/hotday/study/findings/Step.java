package hotday.study.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * One step of a commissioning run as a technician drives it.
 *
 * @param seconds long
 * @param engine running
 * @param speed to hold, m/s
 * @param grade rise over run
 * @param airConditioning asked for
 * @param fan command held from the scan tool, 0..1; below 0: by its schedule
 */
record Step(double seconds, boolean engine, double speed, double grade, boolean airConditioning, double fan) {
    private static final double KMH = 1.0 / 3.6;
    private static final double BY_SCHEDULE = -1.0;

    /**
     * Key on with everything cold, warm-up at idle, town, country road, idle with the fan by its schedule and at three commands, A/C at idle switched a few
     * times, main road and a climb with A/C, idle after it, key-off soak: 41 minutes.
     */
    static List<Step> commissioning(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Step> steps = new ArrayList<>();
        steps.add(new Step(20, false, 0, 0, false, BY_SCHEDULE));
        steps.add(idle(240, false, BY_SCHEDULE));
        for (int i = 0; i < 6; i++) {
            double grade = random.nextDouble(-0.01, 0.02);
            steps.add(new Step(
                    random.nextDouble(25, 55), true, random.nextDouble(25, 60) * KMH, grade, false, BY_SCHEDULE));
            steps.add(idle(random.nextDouble(5, 20), false, BY_SCHEDULE));
        }
        steps.add(road(270, 80, 0.0, false));
        steps.add(idle(240, false, BY_SCHEDULE));
        steps.add(idle(75, false, 0.0));
        steps.add(idle(75, false, 0.4));
        steps.add(idle(75, false, 1.0));
        steps.add(idle(180, true, BY_SCHEDULE));
        steps.add(idle(90, true, 1.0));
        for (int i = 0; i < 3; i++) {
            steps.add(idle(20, false, BY_SCHEDULE));
            steps.add(idle(25, true, BY_SCHEDULE));
        }
        steps.add(road(210, 110, 0.0, true));
        steps.add(road(240, 70, 0.06, true));
        steps.add(idle(120, true, BY_SCHEDULE));
        steps.add(new Step(150, false, 0, 0, false, BY_SCHEDULE));
        return steps;
    }

    /** The same given up after so many seconds. */
    static List<Step> first(List<Step> steps, double seconds) {
        List<Step> kept = new ArrayList<>();
        double left = seconds;
        for (Step s : steps) {
            if (left > 0.0) {
                kept.add(new Step(
                        Math.min(left, s.seconds()), s.engine(), s.speed(), s.grade(), s.airConditioning(), s.fan()));
            }
            left -= s.seconds();
        }
        return kept;
    }

    private static Step idle(double seconds, boolean cooled, double fan) {
        return new Step(seconds, true, 0.0, 0.0, cooled, fan);
    }

    private static Step road(double seconds, double kmh, double grade, boolean cooled) {
        return new Step(seconds, true, kmh * KMH, grade, cooled, BY_SCHEDULE);
    }
}
