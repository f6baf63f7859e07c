package hotday.study.prove;

import hotday.core.finding.Sentence;
import hotday.core.finding.Setting;
import hotday.vehicle.spec.VehicleSpec;
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
 * @param heldBack the fan stays off until coolant is {@link #hot}, and is held then
 * @param thermostatBlocked held open by a spacer, as field tests of cooling systems have it: coolant then settles where heat and air put it
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
        boolean heldBack,
        boolean thermostatBlocked,
        boolean airConditioning,
        Sentence caution) {
    private static final double KMH = 1.0 / 3.6;
    private static final double RPM = Math.PI / 30.0;
    private static final double BY_SCHEDULE = -1.0;

    /** K past full opening of the thermostat: all coolant then goes through the radiator. */
    private static final double PAST_OPENING = 6.0;

    private static final double BELOW_LIMIT = 3.0; // K

    private static final Sentence AT_REST = Sentence.of(
            "chock the wheels, park brake on, lead the exhaust out; hands, hair and clothes away from fan and belts: both start by themselves");
    private static final Sentence HELD_OPEN = Sentence.of(
            "an hour's work more to fit a spacer under the thermostat and to take it out again, both with a cold engine: hot coolant scalds; ",
            new Setting(
                    "facts.thermostat_blocked_open",
                    "on",
                    "say 'thermostat_blocked_open: on' for the run in the channel map"),
            "; ");
    private static final Sentence ON_THE_ROAD = Sentence.of(
            "a second person reads the logger; stop when coolant nears the limit; the rules of the road come first");

    /** Where a fan that was held back comes on, K: thermostat full open, and well below what the coolant may be. */
    public static double hot(VehicleSpec spec) {
        return Math.min(spec.limits().coolant() - BELOW_LIMIT, spec.thermostat().full() + PAST_OPENING);
    }

    /** The one of that id. */
    public static TestStep of(String id) {
        return all().stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
    }

    /** What is proposed; durations are those of common practice, no source. */
    public static List<TestStep> all() {
        return List.of(
                rest("hold-fan-40", "hold 2500 rpm in park, fan fixed at 40 %", 2500.0, 0.4, false),
                rest("hold-fan-full", "hold 2500 rpm in park, fan fixed at 100 %", 2500.0, 1.0, false),
                late("hold-fan-late", "hold 2500 rpm in park, fan off until coolant is hot, then 100 %", 2500.0),
                late("idle-fan-late", "idle, fan off until coolant is hot, then 100 %", 0.0),
                rest("idle-cooled", "idle, A/C on, fan by its schedule", 0.0, BY_SCHEDULE, true),
                rest("idle-cooled-fan-full", "idle, A/C on, fan fixed at 100 %", 0.0, 1.0, true),
                road("crawl-cooled", "15 km/h, A/C on", 600.0, 15.0, 0.0, true),
                road("steady-100", "100 km/h, A/C off", 600.0, 100.0, 0.0, false),
                road("steady-100-cooled", "100 km/h, A/C on", 600.0, 100.0, 0.0, true),
                road("climb", "6 % climb at 70 km/h, A/C off", 480.0, 70.0, 0.06, false),
                road("climb-cooled", "6 % climb at 70 km/h, A/C on", 480.0, 70.0, 0.06, true),
                road("fast-climb", "5 % climb at 90 km/h, A/C off", 480.0, 90.0, 0.05, false),
                lateClimb("climb-fan-late", "6 % climb at 70 km/h, fan off until coolant is hot, then 100 %"),
                open(
                        "open-idle-cooled",
                        "thermostat held open: idle, A/C on, fan fixed at 40 %",
                        900.0,
                        0.0,
                        0.0,
                        0.4,
                        true),
                open("open-100", "thermostat held open: 100 km/h, A/C off, fan off", 600.0, 100.0, 0.0, 0.0, false),
                open(
                        "open-climb",
                        "thermostat held open: 6 % climb at 70 km/h, A/C off, fan 100 %",
                        480.0,
                        70.0,
                        0.06,
                        1.0,
                        false));
    }

    private static TestStep rest(String id, String title, double rpm, double fan, boolean cooled) {
        return new TestStep(id, title, 600.0, 0.0, 0.0, rpm * RPM, fan, false, false, cooled, AT_REST);
    }

    private static TestStep road(String id, String title, double seconds, double kmh, double grade, boolean cooled) {
        return new TestStep(id, title, seconds, kmh * KMH, grade, 0.0, BY_SCHEDULE, false, false, cooled, ON_THE_ROAD);
    }

    private static TestStep late(String id, String title, double rpm) {
        return new TestStep(id, title, 900.0, 0.0, 0.0, rpm * RPM, 1.0, true, false, false, AT_REST);
    }

    private static TestStep open(
            String id, String title, double seconds, double kmh, double grade, double fan, boolean cooled) {
        Sentence caution = Sentence.of(HELD_OPEN, kmh > 0.0 ? ON_THE_ROAD : AT_REST);
        return new TestStep(id, title, seconds, kmh * KMH, grade, 0.0, fan, false, true, cooled, caution);
    }

    private static TestStep lateClimb(String id, String title) {
        return new TestStep(id, title, 480.0, 70.0 * KMH, 0.06, 0.0, 1.0, true, false, false, ON_THE_ROAD);
    }
}
