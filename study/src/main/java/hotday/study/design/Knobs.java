package hotday.study.design;

import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What may be turned in a schedule, each between two bounds that follow from the vehicle, as numbers of 0 to 1. Schedules come out in the
 * controller's whole numbers, so that what was judged is what is written.
 */
final class Knobs {
    private static final double CELSIUS = 273.15;
    /** K above where the thermostat opens: below it fan and thermostat work against each other. */
    private static final double ABOVE_THERMOSTAT = 3.0;
    /** K by which the coolant curve is full before its limit: a step of the sensor and what its lag hides. */
    private static final double BEFORE_LIMIT = 2.0;
    /** Pa by which the A/C curve is full before its limit. */
    private static final double BEFORE_HEAD = 100e3;

    /** What a fan gets at least while it runs; a curve begins with it. */
    private static final double LEAST = 0.25;
    /** Pa; a fan that is switched on by head pressure moves it by less. */
    private static final double HEAD_HYSTERESIS = 300e3;
    /** s; whether these are longer or shorter made no difference where nothing hunts. */
    private static final double LEAST_ON = 30.0;

    private static final double LEAST_OFF = 20.0;

    private static final double GEARBOX_FULL = 3.0; // K before its limit
    private static final double GEARBOX_SPAN = 12.0; // K
    /** K before its limit: a step of the sensor and what its lag hides. */
    private static final double CHARGE_FULL = 2.0;
    /** K: charge air follows the pedal within seconds, and by the time it gets so far a fan should have come up to speed. */
    private static final double CHARGE_SPAN = 10.0;

    /** What is turned, in this order. */
    private enum Knob {
        COOLANT_FROM("start of the coolant curve"),
        COOLANT_SPAN("width of the coolant curve"),
        COOLANT_MIDDLE("middle demand of the coolant curve"),
        COOLANT_HYSTERESIS("hysteresis of the coolant curve"),
        HEAD_FROM("start of the head-pressure curve"),
        HEAD_SPAN("width of the head-pressure curve"),
        HEAD_FIRST("first demand of the head-pressure curve"),
        HEAD_MIDDLE("middle demand of the head-pressure curve"),
        ALLOWANCE("road-speed allowance at 80 km/h");

        private final String title;

        Knob(String title) {
            this.title = title;
        }
    }

    /** What a knob turns, in words. */
    static String title(int knob) {
        return Knob.values()[knob].title;
    }

    static final int COUNT = Knob.values().length;

    private final double opens;
    private final double hottest;
    private final double gearbox;
    private final Optional<FanSchedule.ChargeAirCurve> chargeAir;
    private final double head;
    private final boolean cooled;
    private final FanSchedule.AfterRun afterRun;

    /** @param boiling coolant at which it boils less the sheet's margin, K */
    Knobs(VehicleSpec spec, double boiling, FanSchedule.AfterRun afterRun) {
        opens = spec.thermostat().opens();
        hottest = Math.min(spec.limits().coolant(), boiling) - BEFORE_LIMIT;
        gearbox = spec.limits().gearbox() - GEARBOX_FULL;
        chargeAir = chargeAir(spec.limits().chargeAir());
        head = spec.limits().headPressure() - BEFORE_HEAD;
        cooled = spec.airConditioning().isPresent();
        this.afterRun = afterRun;
    }

    private static Optional<FanSchedule.ChargeAirCurve> chargeAir(OptionalDouble limit) {
        return limit.stream()
                .mapToObj(l -> new FanSchedule.ChargeAirCurve(
                        List.of(tenth(l - CHARGE_FULL - CHARGE_SPAN), tenth(l - CHARGE_FULL)),
                        List.of(LEAST, 1.0),
                        FanSchedule.ChargeAirCurve.HYSTERESIS))
                .findFirst();
    }

    /** The schedule of a setting, each of 0..1. */
    FanSchedule schedule(double[] at) {
        double lowest = opens + ABOVE_THERMOSTAT;
        double from = between(at, Knob.COOLANT_FROM, lowest, Math.max(lowest + 1, hottest - 4));
        double full = from + between(at, Knob.COOLANT_SPAN, Math.min(4, hottest - from), hottest - from);
        double on = tenth(from);
        double hysteresis = between(at, Knob.COOLANT_HYSTERESIS, 2.0, 8.0);
        List<Double> coolant = List.of(on, tenth((from + full) / 2), tenth(full));
        List<Double> headAt = new ArrayList<>();
        List<Double> headDemand = new ArrayList<>();
        double headFrom = between(at, Knob.HEAD_FROM, 900e3, Math.max(1000e3, head - 400e3));
        if (cooled) {
            double headFull = headFrom + between(at, Knob.HEAD_SPAN, Math.min(200e3, head - headFrom), head - headFrom);
            headAt.addAll(List.of(kilo(headFrom), kilo((headFrom + headFull) / 2), kilo(headFull)));
            headDemand.addAll(demand(between(at, Knob.HEAD_FIRST, LEAST, 0.5), at, Knob.HEAD_MIDDLE));
        }
        double spared = share(between(at, Knob.ALLOWANCE, 0.0, 0.8));
        return new FanSchedule(
                coolant,
                demand(LEAST, at, Knob.COOLANT_MIDDLE),
                on,
                tenth(Math.max(from - hysteresis, opens + 1.0)),
                List.of(30 / 3.6, 80 / 3.6),
                List.of(0.0, spared),
                0.0,
                headAt,
                headDemand,
                List.of(tenth(gearbox - GEARBOX_SPAN), tenth(gearbox)),
                List.of(LEAST, 1.0),
                chargeAir,
                new FanSchedule.Details(
                        5.0,
                        HEAD_HYSTERESIS,
                        tenth(Math.min(full, hottest)),
                        new FanSchedule.Floor(0.0, tenth(opens + 2.0), 5 / 3.6, 10 / 3.6),
                        new FanSchedule.Switching(3.0, 0.2, 0.15, LEAST, LEAST_ON, LEAST_OFF),
                        new FanSchedule.Slew(0.1, 0.05, 0.05, 0.15),
                        afterRun));
    }

    /** Three demands: the first, one below the straight line to full or on it, full. */
    private static List<Double> demand(double low, double[] at, Knob middle) {
        double half = low + (1.0 - low) * between(at, middle, 0.15, 0.6);
        return List.of(share(low), share(half), 1.0);
    }

    private static double between(double[] at, Knob knob, double low, double high) {
        return low + at[knob.ordinal()] * (high - low);
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
