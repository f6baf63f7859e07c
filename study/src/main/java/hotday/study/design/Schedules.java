package hotday.study.design;

import hotday.vehicle.spec.FanSchedule;
import java.util.List;

/** Schedules that others are held against. */
final class Schedules {
    private static final double CELSIUS = 273.15;
    private static final double FAHRENHEIT = 5.0 / 9.0;
    /** As fast as the controller can, 1/s. */
    private static final double AT_ONCE = 10.0;

    private Schedules() {}

    /** Full speed whenever the engine runs, and the strongest after-run. */
    static FanSchedule full() {
        return AfterRunDesign.with(relay(CELSIUS - 50, CELSIUS - 60), AfterRunDesign.strongest());
    }

    /** A plain thermostatic switch: on at 205 degF, off at 195 degF, nothing else. */
    static FanSchedule plain() {
        return relay(CELSIUS + (205 - 32) * FAHRENHEIT, CELSIUS + (195 - 32) * FAHRENHEIT);
    }

    private static FanSchedule relay(double on, double off) {
        return new FanSchedule(
                List.of(on),
                List.of(1.0),
                on,
                off,
                List.of(),
                List.of(),
                0.0,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                new FanSchedule.Details(
                        3.0,
                        25e3,
                        CELSIUS + 50,
                        new FanSchedule.Floor(0.0, CELSIUS + 90, 0.0, 0.0),
                        new FanSchedule.Switching(0.0, 0.2, 0.15, 1.0, 0.0, 0.0),
                        new FanSchedule.Slew(AT_ONCE, AT_ONCE, AT_ONCE, 1.0),
                        FanSchedule.Details.standard(on).afterRun()));
    }
}
