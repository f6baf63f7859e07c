package hotday.signals.gateway;

import hotday.signals.dbc.Signal;
import hotday.signals.dbc.ValueForm;

/**
 * What numbers a signal has room for.
 *
 * @param factor physical value per raw value
 * @param offset physical value of raw 0
 * @param rawLow lowest raw value inside the limits of its file and the room of its bits; a double holds it to 53 bits
 * @param rawHigh highest
 * @param whole false for floating-point numbers, whose steps are as good as none
 */
record Scale(double factor, double offset, double rawLow, double rawHigh, boolean whole) {
    /** A limit of a file is a raw value within this share of a step, so that 0.1 * 3 is 0.3. */
    private static final double ROUNDING = 1e-6;

    static Scale of(Signal s) {
        boolean whole = !s.form().isFloat();
        double low = lowest(s);
        double high = highest(s);
        boolean limited = s.factor() != 0 && s.min() < s.max(); // 0 and 0: nobody knew
        if (limited) {
            double a = (s.min() - s.offset()) / s.factor();
            double b = (s.max() - s.offset()) / s.factor();
            double from = Math.min(a, b);
            double to = Math.max(a, b);
            low = Math.max(low, whole ? Math.ceil(from - ROUNDING) : from);
            high = Math.min(high, whole ? Math.floor(to + ROUNDING) : to);
        }
        return new Scale(s.factor(), s.offset(), low, high, whole);
    }

    static double lowest(Signal s) {
        return switch (s.form()) {
            case UNSIGNED -> 0;
            case SIGNED -> -Math.scalb(1.0, s.bits() - 1);
            case SINGLE -> -Float.MAX_VALUE;
            case DOUBLE -> -Double.MAX_VALUE;
        };
    }

    static double highest(Signal s) {
        return switch (s.form()) {
            case UNSIGNED -> Math.scalb(1.0, s.bits()) - 1;
            case SIGNED -> Math.scalb(1.0, s.bits() - 1) - 1;
            case SINGLE -> Float.MAX_VALUE;
            case DOUBLE -> Double.MAX_VALUE;
        };
    }

    static boolean inBits(Signal s, long raw) {
        return s.form() == ValueForm.UNSIGNED || s.form() == ValueForm.SIGNED
                ? raw >= lowest(s) && raw <= highest(s)
                : true;
    }

    double physical(double raw) {
        return raw * factor + offset;
    }

    double raw(double physical) {
        return (physical - offset) / factor;
    }

    double low() {
        return Math.min(physical(rawLow), physical(rawHigh));
    }

    double high() {
        return Math.max(physical(rawLow), physical(rawHigh));
    }

    /** Physical value from one raw value to the next; 0 for floating-point numbers. */
    double step() {
        return whole ? Math.abs(factor) : 0;
    }

    boolean within(double raw) {
        return raw >= rawLow && raw <= rawHigh;
    }
}
