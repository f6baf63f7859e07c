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

    /** K and Pa that the knee of a curve lies from both of its ends at least. */
    private static final double LEAST_KNEE = 1.0;

    private static final double LEAST_HEAD_KNEE = 40e3;
    /** Demand at a knee, at most. */
    private static final double MOST_MIDDLE = 0.7;
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
        COOLANT_KNEE("knee of the coolant curve"),
        COOLANT_MIDDLE("demand at the knee of the coolant curve"),
        COOLANT_HYSTERESIS("hysteresis of the coolant curve"),
        HEAD_FROM("start of the head-pressure curve"),
        HEAD_FULL("end of the head-pressure curve"),
        HEAD_KNEE("knee of the head-pressure curve"),
        HEAD_FIRST("first demand of the head-pressure curve"),
        HEAD_MIDDLE("demand at the knee of the head-pressure curve"),
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
     * @param usual setting that a search begins with
     */
    private record Scale(double low, double step, int settings, int coarse, int usual) {
        /** @param usual 0..1 of the way from low to high */
        static Scale of(double low, double high, double step, int coarse, double usual) {
            int settings = 1 + (int) Math.floor(Math.max(0.0, high - low) / step + 1e-6);
            return new Scale(low, step, settings, coarse, (int) Math.round(usual * (settings - 1)));
        }

        double value(int setting) {
            return low + setting * step;
        }
    }

    static final int COUNT = Knob.values().length;
    /** What is turned together: a curve is shifted by both of its ends. */
    static final int[][] SHIFTS = {
        ordinals(Knob.COOLANT_FROM, Knob.COOLANT_KNEE, Knob.COOLANT_FULL),
        ordinals(Knob.HEAD_FROM, Knob.HEAD_KNEE, Knob.HEAD_FULL)
    };

    /**
     * Settings of some knobs that belong together, from all of which a search may go on.
     *
     * @param knobs which
     * @param places of each in its range, 0..1, all with all
     */
    record Shapes(int[] knobs, double[][] places) {}

    /** The head-pressure curve from straight to a step, wherever it begins. */
    static final Shapes HEAD =
            new Shapes(ordinals(Knob.HEAD_FROM, Knob.HEAD_FULL, Knob.HEAD_KNEE, Knob.HEAD_MIDDLE), new double[][] {
                {0.04, 0.12, 0.21, 0.29, 0.37, 0.46, 0.54, 0.62, 0.71, 0.79, 0.87, 0.96},
                {0.0, 0.4, 1.0},
                {0.0, 1.0},
                {0.0, 0.3, 0.75}
            });
    /** The coolant curve with what the road takes off it. */
    static final Shapes COOLANT = new Shapes(
            ordinals(Knob.ALLOWANCE, Knob.COOLANT_KNEE, Knob.COOLANT_MIDDLE, Knob.COOLANT_FROM), new double[][] {
                {0.0, 0.06, 0.12, 0.18, 0.24, 0.31, 0.5, 0.75},
                {0.35, 0.6, 0.85},
                {0.0, 0.3, 0.75},
                {0.25, 0.5}
            });

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
            Scale.of(lowest, hottest - LEAST_SPAN, 0.5, 2, 0.4),
            Scale.of(lowest + LEAST_SPAN, hottest, 0.5, 2, 1.0),
            Scale.of(lowest + LEAST_KNEE, hottest - LEAST_KNEE, 0.5, 2, 0.6),
            Scale.of(LEAST, MOST_MIDDLE, 0.01, 5, 0.2),
            Scale.of(2.0, 10.0, 0.5, 2, 0.6),
            Scale.of(headLowest, head - LEAST_HEAD_SPAN, 5e3, 5, 0.7),
            Scale.of(headLowest + LEAST_HEAD_SPAN, head, 5e3, 5, 0.7),
            Scale.of(headLowest + LEAST_HEAD_KNEE, head - LEAST_HEAD_KNEE, 5e3, 5, 0.5),
            Scale.of(LEAST, 0.5, 0.01, 5, 0.0),
            Scale.of(LEAST, MOST_MIDDLE, 0.01, 5, 0.2),
            Scale.of(100e3, 400e3, 25e3, 2, 0.7),
            Scale.of(0.0, 0.3, 0.01, 2, 0.0),
            Scale.of(0.0, 0.8, 0.01, 5, 0.15),
            Scale.of(10.0, 60.0, 5.0, 2, 0.4),
            Scale.of(5.0, 60.0, 5.0, 2, 0.3)
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

    /** Where a search begins: curves that neither wait for the last nor hurry, least times of some twenty seconds. */
    int[] usual() {
        return Arrays.stream(scales).mapToInt(Scale::usual).toArray();
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
        double knee = between(from, value(at, Knob.COOLANT_KNEE) + CELSIUS, full, LEAST_KNEE);
        List<Double> headAt = new ArrayList<>();
        List<Double> headDemand = new ArrayList<>();
        if (cooled) {
            double headFrom = value(at, Knob.HEAD_FROM);
            double headFull = Math.max(headFrom + LEAST_HEAD_SPAN, value(at, Knob.HEAD_FULL));
            double headKnee = between(headFrom, value(at, Knob.HEAD_KNEE), headFull, LEAST_HEAD_KNEE);
            headAt.addAll(List.of(kilo(headFrom), kilo(headKnee), kilo(headFull)));
            headDemand.addAll(demand(value(at, Knob.HEAD_FIRST), value(at, Knob.HEAD_MIDDLE)));
        }
        double slow = share(value(at, Knob.ALLOWANCE_SLOW));
        return new FanSchedule(
                List.of(tenth(from), tenth(knee), tenth(full)),
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

    /** Three demands: the first, that of the knee, which is no lower, full. */
    private static List<Double> demand(double low, double middle) {
        return List.of(share(low), share(Math.max(low, middle)), 1.0);
    }

    private static double between(double low, double value, double high, double gap) {
        return Math.max(low + gap, Math.min(high - gap, value));
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
