package hotday.study.prove;

import java.util.List;

/**
 * A step a technician could drive or hold next, with a warm engine.
 *
 * @param id for programs
 * @param title for people
 * @param duration s
 * @param speed m/s
 * @param grade rise over run
 * @param engineSpeed rad/s in park; 0: as the road has it
 * @param fan share held; below 0: as the schedule runs it
 * @param airConditioning on
 * @param caution what to heed
 */
public record TestStep(
        String id,
        String title,
        double duration,
        double speed,
        double grade,
        double engineSpeed,
        double fan,
        boolean airConditioning,
        String caution) {
    private static final double KMH = 1.0 / 3.6;
    private static final double RPM = Math.PI / 30.0;
    private static final double BY_SCHEDULE = -1.0;

    private static final String AT_REST =
            "chock the wheels, park brake on, lead the exhaust out; hands, hair and clothes away from fan and belts: both start by themselves";
    private static final String ON_THE_ROAD =
            "a second person reads the logger; stop when coolant nears the limit; the rules of the road come first";

    /** The one of that id. */
    public static TestStep of(String id) {
        return all().stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
    }

    /** What is proposed; durations are those of common practice, no source. */
    public static List<TestStep> all() {
        return List.of(
                rest("hold-fan-40", "hold 2500 rpm in park, fan fixed at 40 %", 2500.0, 0.4, false),
                rest("hold-fan-full", "hold 2500 rpm in park, fan fixed at 100 %", 2500.0, 1.0, false),
                rest("idle-cooled", "idle, A/C on, fan by its schedule", 0.0, BY_SCHEDULE, true),
                rest("idle-cooled-fan-full", "idle, A/C on, fan fixed at 100 %", 0.0, 1.0, true),
                road("crawl-cooled", "15 km/h, A/C on", 600.0, 15.0, 0.0, true),
                road("steady-100", "100 km/h, A/C off", 600.0, 100.0, 0.0, false),
                road("steady-100-cooled", "100 km/h, A/C on", 600.0, 100.0, 0.0, true),
                road("climb", "6 % climb at 70 km/h, A/C off", 480.0, 70.0, 0.06, false),
                road("climb-cooled", "6 % climb at 70 km/h, A/C on", 480.0, 70.0, 0.06, true));
    }

    private static TestStep rest(String id, String title, double rpm, double fan, boolean cooled) {
        return new TestStep(id, title, 600.0, 0.0, 0.0, rpm * RPM, fan, cooled, AT_REST);
    }

    private static TestStep road(String id, String title, double seconds, double kmh, double grade, boolean cooled) {
        return new TestStep(id, title, seconds, kmh * KMH, grade, 0.0, BY_SCHEDULE, cooled, ON_THE_ROAD);
    }
}
