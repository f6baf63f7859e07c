package hotday.signals.mdf;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** From what stands in the record to what it means. Without state. */
interface Conversion {
    /** The raw value is the value. */
    Conversion NONE = (raw, to) -> to.number(raw);

    void number(double raw, Physical to);

    /** Of a text; unchanged but for conversions made for texts. */
    default void text(String raw, Physical to) {
        to.text(Optional.of(raw));
    }

    /** value = offset + factor x raw. */
    record Linear(double offset, double factor) implements Conversion {
        @Override
        public void number(double raw, Physical to) {
            to.number(offset + factor * raw);
        }
    }

    /** value = (p1 x^2 + p2 x + p3) / (p4 x^2 + p5 x + p6); nothing where the divisor is zero. */
    record Rational(double[] p) implements Conversion {
        @Override
        public void number(double x, Physical to) {
            to.number((p[0] * x * x + p[1] * x + p[2]) / (p[3] * x * x + p[4] * x + p[5]));
        }
    }

    /** A formula with the raw value in it. */
    record Algebraic(Formula formula) implements Conversion {
        @Override
        public void number(double raw, Physical to) {
            to.number(formula.of(raw));
        }
    }

    /**
     * A table of rising keys; the first and last value hold beyond its ends.
     *
     * @param between on a straight line between keys, else the value of the nearest key, of the lower one at half way
     */
    record Table(double[] keys, double[] values, boolean between) implements Conversion {
        @Override
        public void number(double raw, Physical to) {
            to.number(at(raw));
        }

        private double at(double raw) {
            if (Double.isNaN(raw)) {
                return raw;
            }
            int found = Arrays.binarySearch(keys, raw == 0 ? 0.0 : raw);
            if (found >= 0) {
                return values[found];
            }
            int above = -found - 1;
            if (above == 0 || above == keys.length) {
                return values[above == 0 ? 0 : above - 1];
            }
            double up = raw - keys[above - 1];
            double width = keys[above] - keys[above - 1];
            if (between) {
                return values[above - 1] + (values[above] - values[above - 1]) * (up / width);
            }
            return values[up > width - up ? above : above - 1];
        }
    }

    /** What a table says for one of its entries: a number, a text, or another conversion of the raw value. */
    sealed interface Entry {
        void put(double raw, Physical to);

        /** No entry is linked: the raw value has no meaning. */
        record Empty() implements Entry {
            @Override
            public void put(double raw, Physical to) {
                to.nothing();
            }
        }

        record Number(double value) implements Entry {
            @Override
            public void put(double raw, Physical to) {
                to.number(value);
            }
        }

        record Word(Optional<String> text) implements Entry {
            @Override
            public void put(double raw, Physical to) {
                to.text(text);
            }
        }

        record Nested(Conversion conversion) implements Entry {
            @Override
            public void put(double raw, Physical to) {
                conversion.number(raw, to);
            }
        }
    }

    /**
     * Entries for ranges, the first that holds the value counts.
     *
     * @param closed whether the upper end belongs to a range, as it does for whole numbers
     */
    record Ranges(double[] from, double[] to, Entry[] entries, Entry otherwise, boolean closed) implements Conversion {
        @Override
        public void number(double raw, Physical out) {
            for (int i = 0; i < entries.length; i++) {
                if (raw >= from[i] && (raw < to[i] || raw == to[i] && (closed || from[i] == to[i]))) {
                    entries[i].put(raw, out);
                    return;
                }
            }
            otherwise.put(raw, out);
        }
    }

    /** Entries for single values, keys rising. */
    record Words(double[] keys, Entry[] entries, Entry otherwise) implements Conversion {
        /** @param keys in any order; of equal ones the first counts */
        static Words of(double[] keys, Entry[] entries, Entry otherwise) {
            Map<Double, Entry> first = new HashMap<>();
            for (int i = 0; i < keys.length; i++) {
                first.putIfAbsent(keys[i] + 0.0, entries[i]);
            }
            double[] sorted = first.keySet().stream()
                    .mapToDouble(Double::doubleValue)
                    .sorted()
                    .toArray();
            Entry[] inOrder = Arrays.stream(sorted).mapToObj(first::get).toArray(Entry[]::new);
            return new Words(sorted, inOrder, otherwise);
        }

        @Override
        public void number(double raw, Physical to) {
            int found = Arrays.binarySearch(keys, raw + 0.0);
            (found >= 0 ? entries[found] : otherwise).put(raw, to);
        }
    }

    /** Numbers, or other texts, for texts. */
    record OfTexts(Map<String, Entry> entries, Optional<Entry> otherwise) implements Conversion {
        @Override
        public void number(double raw, Physical to) {
            to.number(raw);
        }

        @Override
        public void text(String raw, Physical to) {
            Entry entry = entries.get(raw);
            if (entry == null && otherwise.isEmpty()) {
                to.text(Optional.of(raw));
            } else {
                (entry == null ? otherwise.orElseThrow() : entry).put(Double.NaN, to);
            }
        }
    }
}
