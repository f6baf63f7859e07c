package hotday.signals.framelog;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Whether numbers are hexadecimal or decimal, told by all of them together: letters and {@code 0x} are hexadecimal; where
 * there is neither, a number that would be too large as a hexadecimal one is decimal, and numbers filled up with zeros to
 * the digits of their bits are hexadecimal.
 */
final class BaseRule {
    static final int HIGHEST_STANDARD = 0x7FF;
    static final int HIGHEST_EXTENDED = 0x1FFF_FFFF;
    static final int HIGHEST_GROUP = 0x3_FFFF;
    static final int HIGHEST_BYTE = 0xFF;

    private static final Pattern LETTERED = Pattern.compile("0[xX][0-9a-fA-F]+|[0-9a-fA-F]*[a-fA-F][0-9a-fA-F]*");
    private static final Pattern PLAIN = Pattern.compile("[0-9]{1,10}");

    private BaseRule() {}

    /**
     * Identifiers, groups, addresses.
     *
     * @param limit the largest that any of them can be
     */
    static Optional<NumberBase> ofNumbers(List<String> cells, long limit) {
        if (cells.stream().anyMatch(c -> LETTERED.matcher(c).matches())) {
            return Optional.of(NumberBase.HEX);
        }
        List<String> plain =
                cells.stream().filter(c -> PLAIN.matcher(c).matches()).toList();
        if (plain.stream().anyMatch(c -> Long.parseLong(c, 16) > limit)) {
            return Optional.of(NumberBase.DECIMAL);
        }
        return filledUp(plain) ? Optional.of(NumberBase.HEX) : Optional.empty();
    }

    /** All of 3 or 8 digits (those of 11 and 29 bits), some with a zero in front. */
    private static boolean filledUp(List<String> cells) {
        boolean wide =
                cells.stream().allMatch(c -> c.length() == 3) || cells.stream().allMatch(c -> c.length() == 8);
        return wide && cells.stream().anyMatch(c -> c.startsWith("0"));
    }

    /** Whether every number is a single decimal digit. */
    static boolean sameInBoth(List<String> cells) {
        return cells.stream().allMatch(c -> c.length() == 1);
    }

    /** Bytes of payload: several in a token of many digits, or one in a token. */
    static Optional<NumberBase> ofBytes(List<String> tokens) {
        List<String> filled = tokens.stream().filter(t -> !t.isEmpty()).toList();
        if (filled.stream()
                .anyMatch(t -> LETTERED.matcher(t.toLowerCase(Locale.ROOT)).matches() || t.length() > 3)) {
            return Optional.of(NumberBase.HEX);
        }
        if (filled.stream().anyMatch(t -> t.length() == 3)) {
            return Optional.of(NumberBase.DECIMAL);
        }
        boolean pairs = !filled.isEmpty() && filled.stream().allMatch(t -> t.length() == 2);
        return pairs ? Optional.of(NumberBase.HEX) : Optional.empty();
    }
}
