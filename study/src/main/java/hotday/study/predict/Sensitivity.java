package hotday.study.predict;

import hotday.core.finding.InputException;
import hotday.core.typed.Overlay;
import hotday.vehicle.cases.AmbientCeiling;
import hotday.vehicle.cases.Case;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.sheet.Assumption;
import hotday.vehicle.sheet.BuildSheet;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How far the ceilings of steady cases move when one value of the sheet is 10 % off: typed values and those that were filled in. A
 * temperature is taken 5 K off, since 10 % of a temperature means nothing. Values that stand in lists are left out.
 */
public final class Sensitivity {
    private static final Pattern VALUE = Pattern.compile("([-+]?[0-9.]+(?:[eE][-+]?[0-9]+)?)\\s*(.*)");
    /** What the builder sets and does not have to know. */
    private static final List<String> NOT_UNCERTAIN =
            List.of("design_day.ambient", "build.", "limits.", "schedule.", "wiring.");

    private static final double SHARE = 0.10;
    private static final double KELVIN = 5.0;
    private static final double FAHRENHEIT = 9.0;

    private Sensitivity() {}

    /**
     * One value and what it moves.
     *
     * @param key of the sheet
     * @param value as it stands
     * @param taken what was tried
     * @param assumed true when the sheet does not say it
     * @param moves of each case's ceiling, K, in the order of the cases
     */
    public record Row(String key, String value, String taken, boolean assumed, List<Double> moves) {
        public Row {
            moves = List.copyOf(moves);
        }

        /** Largest move either way, K. */
        public double largest() {
            return moves.stream().mapToDouble(Math::abs).max().orElse(0.0);
        }
    }

    /**
     * Tries every value, the one that moves most first. Values that the sheet refuses both ways are left out.
     *
     * @param text of the sheet
     * @param progress told the share done, 0..1
     * @param cancelled asked at every ceiling; then {@link CancellationException}
     */
    public static List<Row> of(
            Path build, String text, List<Case> cases, DoubleConsumer progress, BooleanSupplier cancelled) {
        BuildSheet sheet = BuildSheet.of(build, text, Overlay.none());
        double[] before = ceilings(sheet, cases, null, cancelled);
        Map<String, String> values = values(sheet);
        List<Row> rows = new ArrayList<>();
        int done = 0;
        Tried tried = new Tried(build, text, cases, before, cancelled);
        for (Map.Entry<String, String> value : values.entrySet()) {
            boolean assumed = !sheet.typed().containsKey(value.getKey());
            tried.row(value.getKey(), value.getValue(), assumed).ifPresent(rows::add);
            progress.accept((double) ++done / values.size());
        }
        rows.sort(Comparator.comparingDouble(Row::largest).reversed().thenComparing(Row::key));
        return rows;
    }

    private static Map<String, String> values(BuildSheet sheet) {
        Map<String, String> values = new LinkedHashMap<>(sheet.typed());
        for (Assumption a : sheet.assumptions()) {
            values.putIfAbsent(a.key(), a.value());
        }
        values.keySet().removeIf(key -> NOT_UNCERTAIN.stream().anyMatch(key::startsWith));
        values.values().removeIf(text -> !VALUE.matcher(text).matches());
        return values;
    }

    /** What every value is tried on. */
    private record Tried(Path build, String text, List<Case> cases, double[] before, BooleanSupplier cancelled) {
        Optional<Row> row(String key, String value, boolean assumed) {
            for (double sign : new double[] {1.0, -1.0}) {
                String taken = off(value, sign);
                try {
                    BuildSheet other = BuildSheet.of(build, text, Overlay.of("", List.of(key + "=" + taken)));
                    double[] after = ceilings(other, cases, before, cancelled);
                    List<Double> moves = new ArrayList<>();
                    for (int i = 0; i < before.length; i++) {
                        moves.add(after[i] - before[i]);
                    }
                    return Optional.of(new Row(key, value, taken, assumed, moves));
                } catch (InputException e) {
                    continue; // this way off the sheet refuses it; the other way may do
                }
            }
            return Optional.empty();
        }
    }

    /** The same text with its number 10 % or 5 K off; whole numbers stay whole. */
    static String off(String text, double sign) {
        Matcher m = VALUE.matcher(text);
        if (!m.matches()) {
            throw new IllegalArgumentException("'" + text + "' does not begin with a number");
        }
        double number = Double.parseDouble(m.group(1));
        String unit = m.group(2);
        double step = switch (unit) {
            case "degC" -> KELVIN;
            case "degF" -> FAHRENHEIT;
            default -> SHARE * Math.abs(number);
        };
        boolean whole = unit.isEmpty() && m.group(1).matches("[-+]?[0-9]+");
        if (whole) {
            return Long.toString(Math.round(number + sign * Math.max(1.0, step)));
        }
        BigDecimal value = new BigDecimal(number + sign * step, new MathContext(4)).stripTrailingZeros();
        return (value.toPlainString() + " " + unit).trim();
    }

    private static double[] ceilings(BuildSheet sheet, List<Case> cases, double[] guess, BooleanSupplier cancelled) {
        Plant plant = Plant.compile(sheet.vehicle());
        double[] out = new double[cases.size()];
        for (int i = 0; i < out.length; i++) {
            if (cancelled.getAsBoolean()) {
                throw new CancellationException();
            }
            double start = guess == null ? sheet.vehicle().designAmbient() : guess[i];
            out[i] = new AmbientCeiling(sheet.vehicle()).ambient(plant, cases.get(i), 0.0, start);
        }
        return out;
    }
}
