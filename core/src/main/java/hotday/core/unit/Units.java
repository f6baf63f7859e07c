package hotday.core.unit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what people type and refuses what could mean two things. */
public final class Units {
    private static final Pattern TYPED =
            Pattern.compile("\\s*([+-]?[0-9][0-9.,]*(?:[eE][+-]?[0-9]+)?|[+-]?\\.[0-9]+)\\s*(.*?)\\s*");

    /** -459.67 degF is absolute zero, though its digits in binary are not, K. */
    private static final double ROUNDING = 1e-9;

    /** What a gauge shows and a tyre shop says: no word on what it counts from. */
    private static final Set<String> AMBIGUOUS = Set.of("psi", "bar");

    /** Stands before a symbol that was brought to small letters; nobody can type it. */
    private static final String ANY_CASE = "\n";

    private static final Map<Quantity, Map<String, Unit>> KNOWN = known();

    private Units() {}

    /** The unit of that symbol; spelling with or without blanks, case counts only where two units differ by it. */
    public static Optional<Unit> find(Quantity quantity, String symbol) {
        String wanted = squeeze(symbol);
        Map<String, Unit> known = KNOWN.get(quantity);
        Unit exact = known.get(wanted);
        return Optional.ofNullable(exact != null ? exact : known.get(ANY_CASE + wanted.toLowerCase(Locale.ROOT)));
    }

    private static Map<Quantity, Map<String, Unit>> known() {
        Map<Quantity, Map<String, Unit>> all = new EnumMap<>(Quantity.class);
        for (Quantity quantity : Quantity.values()) {
            Map<String, Unit> symbols = new HashMap<>();
            for (int i = 0; i < quantity.units().size(); i++) {
                Unit unit = quantity.units().get(i);
                for (String alias : quantity.aliases().get(i)) {
                    symbols.put(squeeze(alias), unit);
                    symbols.putIfAbsent(ANY_CASE + squeeze(alias).toLowerCase(Locale.ROOT), unit);
                }
            }
            all.put(quantity, symbols);
        }
        return all;
    }

    private static String squeeze(String symbol) {
        return symbol.replace(" ", "")
                .replace("\u00C2", "")
                .replace("º", "°")
                .replace("·", "")
                .replace("²", "2")
                .replace("³", "3");
    }

    /** The unit of that symbol, or an explanation of what would do. */
    public static Unit unit(Quantity quantity, String symbol) {
        return find(quantity, symbol).orElseThrow(() -> wrong(quantity, symbol, symbol));
    }

    /** A typed value such as {@code 205 degF} in SI. */
    public static double parse(Quantity quantity, String typed) {
        return amount(quantity, typed).si();
    }

    /** A typed value together with the unit it was typed in. */
    public static Amount amount(Quantity quantity, String typed) {
        if (typed.isBlank()) {
            throw new UnitException(
                    "number-wrong",
                    "nothing is typed; " + article(quantity) + " is typed like '" + quantity.example() + "'");
        }
        Matcher m = TYPED.matcher(typed.replace('\u2212', '-'));
        if (!m.matches()) {
            throw new UnitException(
                    "number-wrong",
                    "'" + typed + "' is not a number with a unit; " + article(quantity) + " is typed like '"
                            + quantity.example() + "'");
        }
        double value = number(m.group(1), typed);
        String symbol = m.group(2);
        if (symbol.isEmpty() && quantity != Quantity.RATIO && quantity != Quantity.NUMBER) {
            throw new UnitException(
                    "unit-missing",
                    "'" + typed + "' has no unit; " + article(quantity) + " needs one of " + list(quantity)
                            + ", for example '" + quantity.example() + "'");
        }
        Unit unit = find(quantity, symbol).orElseThrow(() -> wrong(quantity, symbol, typed));
        Amount amount = new Amount(value, unit);
        if (quantity == Quantity.TEMPERATURE && amount.si() < -ROUNDING) {
            throw new UnitException("number-wrong", "'" + typed + "' lies below absolute zero");
        }
        return amount;
    }

    /** "a speed", "an angle". */
    private static String article(Quantity quantity) {
        String title = quantity.title();
        return ("aeiou".indexOf(title.charAt(0)) >= 0 ? "an " : "a ") + title;
    }

    private static double number(String text, String typed) {
        if (text.indexOf(',') >= 0) {
            throw new UnitException(
                    "number-wrong",
                    "'" + typed + "' has a comma; write decimals with a point and thousands without a mark");
        }
        try {
            double value = Double.parseDouble(text);
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
                && AMBIGUOUS.contains(squeeze(symbol).toLowerCase(Locale.ROOT))) {
            return new UnitException(
                    "pressure-ambiguous",
                    "'" + typed + "' could be gauge or absolute; an absolute pressure is needed: write '" + symbol
                            + " abs' if the value counts from vacuum, else add the air pressure first");
        }
        if (quantity == Quantity.PRESSURE_ABSOLUTE
                && find(Quantity.PRESSURE_GAUGE, symbol).isPresent()) {
            return new UnitException(
                    "unit-wrong",
                    "'" + typed + "' is a gauge pressure; an absolute pressure is needed, in " + list(quantity));
        }
        for (Quantity other : Quantity.values()) {
            Optional<Unit> unit = find(other, symbol);
            if (unit.isPresent() && !symbol.isEmpty()) {
                return new UnitException(
                        "unit-wrong",
                        "'" + typed + "': " + symbol + " is a unit of " + other.title() + "; " + article(quantity)
                                + " is needed" + in(quantity));
            }
        }
        return new UnitException(
                "unit-wrong",
                "'" + typed + "': '" + symbol + "' is not a known unit" + nearest(quantity, symbol) + "; a "
                        + quantity.title() + " is typed" + in(quantity));
    }

    private static String nearest(Quantity quantity, String symbol) {
        List<String> known = new ArrayList<>();
        quantity.aliases().forEach(known::addAll);
        known.remove("");
        return Nearest.to(symbol, known)
                .map(n -> " (did you mean '" + n + "'?)")
                .orElse("");
    }

    private static String in(Quantity quantity) {
        return quantity == Quantity.NUMBER ? "" : " in " + list(quantity);
    }

    private static String list(Quantity quantity) {
        return String.join(
                ", ",
                quantity.units().stream()
                        .map(u -> u.symbol().isEmpty() ? "nothing (a plain number)" : u.symbol())
                        .toList());
    }
}
