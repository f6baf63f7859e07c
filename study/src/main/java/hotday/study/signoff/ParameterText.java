package hotday.study.signoff;

import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.study.prove.ParameterReport;
import java.util.Locale;

/** Values of an unknown in the units somebody chose. */
public final class ParameterText {
    /** Temperatures of hundreds of kelvin are readings, small ones differences. */
    private static final double A_READING = 200.0; // K

    private ParameterText() {}

    /** A value with its unit. */
    public static String of(Display show, ParameterReport p, double value) {
        return switch (p.unit()) {
            case "K" ->
                p.sheet() > A_READING
                        ? show.format(Quantity.TEMPERATURE, value)
                        : show.format(Quantity.TEMPERATURE_DIFFERENCE, value);
            case "J/K" -> String.format(Locale.ROOT, "%.3g kJ/K", 1e-3 * value);
            case "1" -> three(value);
            default -> three(value) + " " + p.unit();
        };
    }

    /** Three digits that mean something, without powers of ten where people read none. */
    private static String three(double value) {
        double size = Math.abs(value);
        return size >= 100.0 && size < 1e5
                ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, size < 0.01 && size > 0.0 ? "%.2g" : "%.3g", value);
    }
}
