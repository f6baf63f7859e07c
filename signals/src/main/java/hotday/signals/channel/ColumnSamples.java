package hotday.signals.channel;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.finding.Sentence;
import hotday.core.finding.Setting;
import hotday.signals.log.Row;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Collects one column as numbers in the unit of the file, with the reason where a cell gives none. */
final class ColumnSamples {
    private static final Set<String> NO_VALUE =
            Set.of("-", "--", "---", "nan", "null", "none", "n/a", "na", "#n/a", "no data", "nodata", "?");
    private static final Set<String> ON = Set.of("on", "true", "yes");
    private static final Set<String> OFF = Set.of("off", "false", "no");
    private static final Pattern COMMA_NUMBER = Pattern.compile("[+-]?\\d+,\\d+");
    private static final int PLACES_SHOWN = 5;
    private static final int LONGEST_SHOWN = 30;

    private final ChannelRule rule;
    private final String column;
    private final int index;
    /** What stands for "on" in the unit of the file. */
    private final double full;

    private final double[] missing;
    private double[] values = new double[4096];
    private byte[] flags = new byte[4096];
    private int size;
    /** Why the cell looked at last gave no value. */
    private byte reason = Channel.BLANK;

    private int blanks;
    private int texts;
    private String firstText = "";
    private final List<Place> places = new ArrayList<>();

    /** @param full number of the file's unit that means on, for a switch */
    ColumnSamples(ChannelRule rule, String column, int index, double full) {
        this.rule = rule;
        this.column = column;
        this.index = index;
        this.full = full;
        this.missing = numbers(rule.missing());
    }

    private static double[] numbers(Set<String> words) {
        return words.stream()
                .mapToDouble(ColumnSamples::number)
                .filter(v -> !Double.isNaN(v))
                .toArray();
    }

    private static double number(String word) {
        try {
            return Double.parseDouble(word);
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    String column() {
        return column;
    }

    int index() {
        return index;
    }

    /** @param cells of the row that can be trusted */
    void add(String file, Row row, int cells) {
        if (size == values.length) {
            values = Arrays.copyOf(values, 2 * size);
            flags = Arrays.copyOf(flags, 2 * size);
        }
        reason = Channel.BLANK;
        double value = index < cells ? value(file, row) : Double.NaN;
        byte flag = Double.isNaN(value) ? reason : Channel.OK;
        blanks += flag == Channel.BLANK ? 1 : 0;
        values[size] = value;
        flags[size] = flag;
        size++;
    }

    private double value(String file, Row row) {
        double value = row.number(index);
        if (Double.isNaN(value)) {
            return row.blank(index) ? Double.NaN : word(file, row);
        }
        return saysMissing(value) ? Double.NaN : value;
    }

    private boolean saysMissing(double value) {
        for (double m : missing) {
            if (value == m) {
                return true;
            }
        }
        return false;
    }

    /** True for words that stand for no value in any recording. */
    static boolean saysNothing(String word) {
        return NO_VALUE.contains(word.toLowerCase(Locale.ROOT));
    }

    private double word(String file, Row row) {
        String text = row.text(index);
        String word = text.toLowerCase(Locale.ROOT);
        if (rule.missing().contains(word) || saysNothing(word)) {
            return Double.NaN;
        }
        if (rule.kind().isSwitch() && (ON.contains(word) || OFF.contains(word))) {
            return ON.contains(word) ? full : 0.0;
        }
        reason = Channel.NOT_A_NUMBER;
        firstText = texts == 0 ? text : firstText;
        if (texts < PLACES_SHOWN) {
            places.add(new Place(file, row.line(), index + 1));
        }
        texts++;
        return Double.NaN;
    }

    double[] values() {
        return Arrays.copyOf(values, size);
    }

    byte[] flags() {
        return Arrays.copyOf(flags, size);
    }

    /**
     * Text in a column of numbers is a fault; where the map says so a warning while it is the exception.
     *
     * @param skip true when the map says that text is to be left out
     */
    void judge(boolean skip, List<Finding> faults, List<Finding> findings) {
        if (texts == 0) {
            return;
        }
        boolean mostly = 2 * texts > size - blanks;
        boolean refused = mostly || !skip;
        String shown = firstText.length() > LONGEST_SHOWN ? firstText.substring(0, LONGEST_SHOWN) + "..." : firstText;
        String lines = String.join(
                ", ", places.stream().map(p -> String.valueOf(p.line())).toList());
        Sentence message = Sentence.of(
                "column '" + column + "' for ",
                Named.channel(rule.kind()),
                " should hold numbers; " + texts + " of " + size + " cells hold text, the first is '" + shown,
                "' (lines " + lines + (texts > PLACES_SHOWN ? ", ..." : "") + "). ",
                advice(mostly, skip));
        Finding finding = refused
                ? Finding.fault("text-in-number-column", places.get(0), message)
                : Finding.warning("text-in-number-column", places.get(0), message);
        (refused ? faults : findings)
                .add(finding.with("channel", rule.kind().key())
                        .with("samples", texts)
                        .with("lines", places.stream().map(Place::line).toList()));
    }

    private Sentence advice(boolean mostly, boolean skip) {
        if (COMMA_NUMBER.matcher(firstText).matches()) {
            return Sentence.of(
                    "If that is a decimal comma, say so with ",
                    new Setting("reader.decimal", "comma", "'reader: {decimal: comma}' in the channel map"),
                    "; if it marks thousands, write the numbers without it.");
        }
        if (mostly) {
            return Sentence.of("Map another column, or correct the file.");
        }
        if (skip) {
            return Sentence.of("These samples are left out.");
        }
        return Sentence.of(
                "Correct the file, or say in ",
                Named.MAP,
                " what to think of it: a word that stands for no value goes under ",
                Named.key(rule.kind(), "missing", "'missing'"),
                "; ",
                new Setting("reader.text", "skip", "'reader: {text: skip}'"),
                " leaves all such samples out.");
    }
}
