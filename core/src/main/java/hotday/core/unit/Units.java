package hotday.core.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what people type and refuses what could mean two things. */
public final class Units {
    private static final Pattern TYPED =
            Pattern.compile("\\s*([+-]?[0-9][0-9.,_]*(?:[eE][+-]?[0-9]+)?|[+-]?\\.[0-9]+)\\s*(.*?)\\s*");

    private Units() {}

    /** The unit of that symbol; spelling with or without blanks, case counts only where two units differ by it. */
    public static Optional<Unit> find(Quantity quantity, String symbol) {
        String wanted = squeeze(symbol);
        Optional<Unit> exact = search(quantity, wanted, false);
        return exact.isPresent() ? exact : search(quantity, wanted, true);
    }

    private static Optional<Unit> search(Quantity quantity, String wanted, boolean anyCase) {
        List<Unit> units = quantity.units();
        for (int i = 0; i < units.size(); i++) {
            for (String alias : quantity.aliases().get(i)) {
                String known = squeeze(alias);
                if (anyCase ? known.equalsIgnoreCase(wanted) : known.equals(wanted)) {
                    return Optional.of(units.get(i));
                }
            }
        }
        return Optional.empty();
    }

    private static String squeeze(String symbol) {
        return symbol.replace(" ", "")
                .replace("\u00C2", "")
                .replace("º", "°")
                .replace("²", "2")
                .replace("³", "3");
    }

    /** The unit of that symbol, or an explanation of what would do. */
    public static Unit unit(Quantity quantity, String symbol) {
        return find(quantity, symbol).orElseThrow(() -> wrong(quantity, symbol, symbol));
    }

    /** A typed value such as {@code 205 degF} in SI. */
    public static double parse(Quantity quantity, String typed) {
        Matcher m = TYPED.matcher(typed);
        if (!m.matches()) {
            throw new UnitException(
                    "number-wrong",
                    "'" + typed + "' is not a number with a unit; a " + quantity.title() + " is typed like '"
                            + quantity.example() + "'");
        }
        double value = number(m.group(1), typed);
        String symbol = m.group(2);
        if (symbol.isEmpty() && quantity != Quantity.RATIO && quantity != Quantity.NUMBER) {
            throw new UnitException(
                    "unit-missing",
                    "'" + typed + "' has no unit; a " + quantity.title() + " needs one of " + list(quantity)
                            + ", for example '" + quantity.example() + "'");
        }
        double si = find(quantity, symbol)
                .orElseThrow(() -> wrong(quantity, symbol, typed))
                .toSi(value);
        if (quantity == Quantity.TEMPERATURE && si < 0) {
            throw new UnitException("number-wrong", "'" + typed + "' lies below absolute zero");
        }
        return si;
    }

    private static double number(String text, String typed) {
        if (text.indexOf(',') >= 0) {
            throw new UnitException(
                    "number-wrong",
                    "'" + typed + "' has a comma; write decimals with a point and thousands without a mark");
        }
        try {
            double value = Double.parseDouble(text.replace("_", ""));
            if (!Double.isInfinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            throw new UnitException("number-wrong", "'" + typed + "' does not begin with a number");
        }
        throw new UnitException("number-wrong", "'" + typed + "' is larger than any number that makes sense here");
    }

    private static UnitException wrong(Quantity quantity, String symbol, String typed) {
        if (quantity == Quantity.PRESSURE_ABSOLUTE
                && find(Quantity.PRESSURE_GAUGE, symbol).isPresent()) {
            return new UnitException(
                    "pressure-ambiguous",
                    "'" + typed + "' could be gauge or absolute; an absolute pressure is needed, say '"
                            + symbol.replace("g", "") + " abs' (or psia)");
        }
        for (Quantity other : Quantity.values()) {
            Optional<Unit> unit = find(other, symbol);
            if (unit.isPresent() && !symbol.isEmpty()) {
                return new UnitException(
                        "unit-wrong",
                        "'" + typed + "': " + symbol + " is a unit of " + other.title() + "; a " + quantity.title()
                                + " is needed, in " + list(quantity));
            }
        }
        return new UnitException(
                "unit-wrong",
                "'" + typed + "': '" + symbol + "' is not a known unit" + nearest(quantity, symbol) + "; a "
                        + quantity.title() + " is typed in " + list(quantity));
    }

    private static String nearest(Quantity quantity, String symbol) {
        List<String> known = new ArrayList<>();
        quantity.aliases().forEach(known::addAll);
        return Nearest.to(symbol, known)
                .map(n -> " (did you mean '" + n + "'?)")
                .orElse("");
    }

    private static String list(Quantity quantity) {
        return String.join(
                ", ",
                quantity.units().stream()
                        .map(Unit::symbol)
                        .filter(s -> !s.isEmpty())
                        .toList());
    }
}
