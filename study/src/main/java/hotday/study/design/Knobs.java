package hotday.study.design;

import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What may be turned in a schedule, each in steps between two bounds that follow from the vehicle: coarse steps of what tells most, whole degrees Celsius
 * as sensors have them, for a first search, fine ones of everything then. Schedules come out in the controller's whole numbers, so that what was judged is
 * what is written.
 */
final class Knobs {
    private static final double CELSIUS = 273.15;
    /** K above where the thermostat opens: below it fan and thermostat work against each other. */
    private static final double ABOVE_THERMOSTAT = 3.0;
    /** K by which the coolant curve is full before its limit: a step of the sensor and what its lag hides. */
    private static final double BEFORE_LIMIT = 2.0;
    /** K that the coolant curve is wide at least. */
    private static final double LEAST_SPAN = 4.0;
    /** Pa by which the A/C curve is full before its limit. */
    private static final double BEFORE_HEAD = 100e3;
    /** Pa that the A/C curve is wide at least. */
    private static final double LEAST_HEAD_SPAN = 200e3;

    /** What a fan gets at least while it runs; the coolant curve begins with it. */
    private static final double LEAST = 0.25;

    private static final double GEARBOX_FULL = 3.0; // K before its limit
    private static final double GEARBOX_SPAN = 12.0; // K

    /** K before its limit: a step of the sensor and what its lag hides. */
    private static final double CHARGE_FULL = 2.0;
    /** K: charge air follows the pedal within seconds, and by the time it gets so far a fan should have come up to speed. */
    private static final double CHARGE_SPAN = 10.0;

    /** What is turned, in this order. */
    private enum Knob {
        COOLANT_FROM("start of the coolant curve"),
        COOLANT_FULL("end of the coolant curve"),
        COOLANT_PLACE("place of the middle of the coolant curve"),
        COOLANT_MIDDLE("middle demand of the coolant curve"),
        COOLANT_HYSTERESIS("hysteresis of the coolant curve"),
        HEAD_FROM("start of the head-pressure curve"),
        HEAD_FULL("end of the head-pressure curve"),
        HEAD_PLACE("place of the middle of the head-pressure curve"),
        HEAD_FIRST("first demand of the head-pressure curve"),
        HEAD_MIDDLE("middle demand of the head-pressure curve"),
        HEAD_HYSTERESIS("hysteresis of the head-pressure curve"),
        ALLOWANCE_SLOW("road-speed allowance at 30 km/h"),
        ALLOWANCE("road-speed allowance at 80 km/h"),
        LEAST_ON("least time on"),
        LEAST_OFF("least time off");

        private final String title;

        Knob(String title) {
            this.title = title;
        }
    }

    /**
     * Settings of a knob.
     *
     * @param low value of setting 0; degC, K, Pa, s, share
     * @param step from one setting to the next
     * @param settings how many there are
     * @param coarse settings that a first search goes at once
     * @param usual setting that a first search leaves a knob at; negative where it turns it
     */
    private record Scale(double low, double step, int settings, int coarse, int usual) {
        static Scale turned(double low, double high, double step, int coarse) {
            return new Scale(low, step, count(low, high, step), coarse, -1);
        }

        static Scale left(double usual, double low, double high, double step) {
            return new Scale(low, step, count(low, high, step), 2, (int) Math.round((usual - low) / step));
        }

        private static int count(double low, double high, double step) {
            return 1 + (int) Math.floor(Math.max(0.0, high - low) / step + 1e-6);
        }

        double value(int setting) {
            return low + setting * step;
        }
    }

    static final int COUNT = Knob.values().length;
    /** What is turned together: a curve is shifted by both of its ends. */
    static final int[][] PAIRS = {
        ordinals(Knob.COOLANT_FROM, Knob.COOLANT_FULL), ordinals(Knob.HEAD_FROM, Knob.HEAD_FULL)
    };

    private static int[] ordinals(Knob... knobs) {
        return Arrays.stream(knobs).mapToInt(Knob::ordinal).toArray();
    }

    private final double opens;
    private final double gearbox;
    private final Optional<FanSchedule.ChargeAirCurve> chargeAir;
    private final boolean cooled;
    private final FanSchedule.AfterRun afterRun;
    private final Scale[] scales;

    /** @param boiling coolant at which it boils less the sheet's margin, K */
    Knobs(VehicleSpec spec, double boiling, FanSchedule.AfterRun afterRun) {
        opens = spec.thermostat().opens();
        gearbox = spec.limits().gearbox() - GEARBOX_FULL;
        chargeAir = chargeAir(spec.limits().chargeAir());
        cooled = spec.airConditioning().isPresent();
        this.afterRun = afterRun;
        double lowest = Math.ceil(opens + ABOVE_THERMOSTAT - CELSIUS - 1e-6);
        double hottest = Math.max(
                lowest + LEAST_SPAN, Math.floor(Math.min(spec.limits().coolant(), boiling) - BEFORE_LIMIT - CELSIUS));
        double head = spec.limits().headPressure() - BEFORE_HEAD;
        double headLowest = Math.min(900e3, head - 500e3);
        scales = new Scale[] {
            Scale.turned(lowest, hottest - LEAST_SPAN, 0.5, 2),
            Scale.turned(lowest + LEAST_SPAN, hottest, 0.5, 2),
            Scale.left(0.5, 0.3, 0.7, 0.05),
            Scale.turned(0.05, 0.60, 0.01, 5),
            Scale.turned(2.0, 10.0, 0.5, 2),
            Scale.turned(headLowest, head - LEAST_HEAD_SPAN, 5e3, 5),
            Scale.turned(headLowest + LEAST_HEAD_SPAN, head, 5e3, 5),
            Scale.left(0.5, 0.3, 0.7, 0.05),
            Scale.turned(LEAST, 0.5, 0.01, 5),
            Scale.turned(0.05, 0.60, 0.01, 5),
            Scale.left(300e3, 100e3, 400e3, 25e3),
            Scale.left(0.0, 0.0, 0.3, 0.01),
            Scale.turned(0.0, 0.8, 0.01, 5),
            Scale.left(30.0, 10.0, 60.0, 5.0),
            Scale.left(20.0, 5.0, 60.0, 5.0)
        };
    }

    private static Optional<FanSchedule.ChargeAirCurve> chargeAir(OptionalDouble limit) {
        return limit.stream()
                .mapToObj(l -> new FanSchedule.ChargeAirCurve(
                        List.of(tenth(l - CHARGE_FULL - CHARGE_SPAN), tenth(l - CHARGE_FULL)),
                        List.of(LEAST, 1.0),
                        FanSchedule.ChargeAirCurve.HYSTERESIS))
                .findFirst();
    }

    /** What a knob turns, in words. */
    static String title(int knob) {
        return Knob.values()[knob].title;
    }

    int settings(int knob) {
        return scales[knob].settings();
    }

    /** Settings that are noticed: what a first search goes at once. */
    int coarse(int knob) {
        return scales[knob].coarse();
    }

    /** Whether a first search turns it. */
    boolean first(int knob) {
        return scales[knob].usual() < 0;
    }

    /** Where a first search leaves what it does not turn. */
    int usual(int knob) {
        return scales[knob].usual();
    }

    /** A setting moved back between the bounds. */
    int bounded(int knob, int setting) {
        return Math.max(0, Math.min(settings(knob) - 1, setting));
    }

    /** The schedule of a setting of every knob, each 0 up to {@link #settings}. */
    FanSchedule schedule(int[] at) {
        double from = value(at, Knob.COOLANT_FROM) + CELSIUS;
        double full = Math.max(from + LEAST_SPAN, value(at, Knob.COOLANT_FULL) + CELSIUS);
        double off = Math.max(from - value(at, Knob.COOLANT_HYSTERESIS), opens + 1.0);
        double middle = from + (full - from) * value(at, Knob.COOLANT_PLACE);
        List<Double> headAt = new ArrayList<>();
        List<Double> headDemand = new ArrayList<>();
        if (cooled) {
            double headFrom = value(at, Knob.HEAD_FROM);
            double headFull = Math.max(headFrom + LEAST_HEAD_SPAN, value(at, Knob.HEAD_FULL));
            double headMiddle = headFrom + (headFull - headFrom) * value(at, Knob.HEAD_PLACE);
            headAt.addAll(List.of(kilo(headFrom), kilo(headMiddle), kilo(headFull)));
            headDemand.addAll(demand(value(at, Knob.HEAD_FIRST), value(at, Knob.HEAD_MIDDLE)));
        }
        double slow = share(value(at, Knob.ALLOWANCE_SLOW));
        return new FanSchedule(
                List.of(tenth(from), tenth(middle), tenth(full)),
                demand(LEAST, value(at, Knob.COOLANT_MIDDLE)),
                tenth(from),
                tenth(off),
                List.of(30 / 3.6, 80 / 3.6),
                List.of(slow, Math.max(slow, share(value(at, Knob.ALLOWANCE)))),
                0.0,
                headAt,
                headDemand,
                List.of(tenth(gearbox - GEARBOX_SPAN), tenth(gearbox)),
                List.of(LEAST, 1.0),
                chargeAir,
                new FanSchedule.Details(
                        5.0,
                        kilo(value(at, Knob.HEAD_HYSTERESIS)),
                        tenth(full),
                        new FanSchedule.Floor(0.0, tenth(opens + 2.0), 5 / 3.6, 10 / 3.6),
                        new FanSchedule.Switching(
                                3.0, 0.2, 0.15, LEAST, value(at, Knob.LEAST_ON), value(at, Knob.LEAST_OFF)),
                        new FanSchedule.Slew(0.1, 0.05, 0.05, 0.15),
                        afterRun));
    }

    /** Three demands: the first, one below the straight line to full or near it, full. */
    private static List<Double> demand(double low, double middle) {
        return List.of(share(low), share(low + (1.0 - low) * middle), 1.0);
    }

    private double value(int[] at, Knob knob) {
        return scales[knob.ordinal()].value(at[knob.ordinal()]);
    }

    private static double tenth(double kelvin) {
        return Math.round(10 * (kelvin - CELSIUS)) / 10.0 + CELSIUS;
    }

    private static double kilo(double pascal) {
        return 1000.0 * Math.round(pascal / 1000);
    }

    private static double share(double share) {
        return Math.round(100 * share) / 100.0;
    }
}
