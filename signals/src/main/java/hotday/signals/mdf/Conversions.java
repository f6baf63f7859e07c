package hotday.signals.mdf;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads conversions from their blocks, each once. */
final class Conversions {
    private static final int DEEPEST = 8;
    private static final int FIRST_VALUE = 24;
    private static final int REFERENCES = 4;

    private final BlockFile file;
    private final Faults faults;
    private final Set<Long> reading = new HashSet<>();
    private final Map<Long, Conversion> whole = new HashMap<>();
    private final Map<Long, Conversion> real = new HashMap<>();

    Conversions(BlockFile file, Faults faults) {
        this.file = file;
        this.faults = faults;
    }

    /**
     * Throws {@link BrokenBlock} where the block is none that is understood.
     *
     * @param ofWhole whether raw values are whole numbers: ranges hold their upper end then
     */
    Conversion at(long link, boolean ofWhole, String from) {
        return at(link, ofWhole, from, 0);
    }

    private Conversion at(long link, boolean ofWhole, String from, int depth) {
        if (link == 0) {
            return Conversion.NONE;
        }
        Map<Long, Conversion> known = ofWhole ? whole : real;
        Conversion met = known.get(link);
        if (met == null) {
            met = read(file.block(link, from, "##CC").need(REFERENCES, FIRST_VALUE), ofWhole, depth);
            known.put(link, met);
        }
        return met;
    }

    private Conversion read(Block cc, boolean ofWhole, int depth) {
        if (depth > DEEPEST || !reading.add(cc.position())) {
            throw new BrokenBlock(
                    "link-loop",
                    cc.position(),
                    "block ##CC is a conversion inside itself, or inside more than " + DEEPEST + " others");
        }
        try {
            return of(cc, new One(cc, ofWhole, depth));
        } finally {
            reading.remove(cc.position());
        }
    }

    private static Conversion of(Block cc, One one) {
        return switch (cc.u8(0)) {
            case 0 -> Conversion.NONE;
            case 1 -> one.linear();
            case 2 -> one.rational();
            case 3 -> one.algebraic();
            case 4 -> one.table(true);
            case 5 -> one.table(false);
            case 6 -> one.rangesToValues();
            case 7 -> one.words();
            case 8 -> one.rangesToText();
            case 9 -> one.textToValue();
            case 10 -> one.textToText();
            case 11 ->
                throw new BrokenBlock(
                        "conversion-not-read", cc.position(), "block ##CC is a table of bit fields, which is not read");
            default -> throw cc.broken("is a conversion of the unknown kind " + cc.u8(0));
        };
    }

    private final class One {
        private final Block cc;
        private final boolean ofWhole;
        private final int depth;
        private final int references;
        private final double[] values;

        One(Block cc, boolean ofWhole, int depth) {
            this.cc = cc;
            this.ofWhole = ofWhole;
            this.depth = depth;
            this.references = cc.u16(4);
            int count = cc.u16(6);
            cc.need(REFERENCES + references, FIRST_VALUE + Double.BYTES * count);
            this.values = new double[count];
            for (int i = 0; i < count; i++) {
                values[i] = cc.real(FIRST_VALUE + Double.BYTES * i);
            }
        }

        private void need(boolean holds) {
            if (!holds) {
                throw cc.broken("is a conversion of kind " + cc.u8(0) + " with " + values.length + " numbers and "
                        + references + " references, which does not go together");
            }
        }

        Conversion linear() {
            need(values.length >= 2);
            return new Conversion.Linear(values[0], values[1]);
        }

        Conversion rational() {
            need(values.length >= 6);
            return new Conversion.Rational(values);
        }

        Conversion algebraic() {
            need(references >= 1);
            String formula = Texts.at(file, cc.link(REFERENCES), "the formula of block ##CC at byte " + cc.position());
            try {
                return new Conversion.Algebraic(Formula.of(formula));
            } catch (IllegalArgumentException unclear) {
                throw new BrokenBlock(
                        "conversion-not-read",
                        cc.position(),
                        "block ##CC has the formula '" + formula + "', which is not read: " + unclear.getMessage());
            }
        }

        Conversion table(boolean between) {
            need(values.length >= 2 && values.length % 2 == 0);
            double[] keys = every(2, 0, values.length / 2);
            for (int i = 1; i < keys.length; i++) {
                if (!(keys[i] > keys[i - 1])) {
                    throw cc.broken("is a table whose keys do not rise: " + keys[i] + " after " + keys[i - 1]);
                }
            }
            return new Conversion.Table(keys, every(2, 1, keys.length), between);
        }

        private double[] every(int step, int from, int count) {
            double[] some = new double[count];
            for (int i = 0; i < count; i++) {
                some[i] = values[step * i + from];
            }
            return some;
        }

        Conversion rangesToValues() {
            need(values.length % 3 == 1);
            int n = values.length / 3;
            Conversion.Entry[] entries = new Conversion.Entry[n];
            for (int i = 0; i < n; i++) {
                entries[i] = new Conversion.Entry.Number(values[3 * i + 2]);
            }
            Conversion.Entry otherwise = new Conversion.Entry.Number(values[3 * n]);
            return new Conversion.Ranges(every(3, 0, n), every(3, 1, n), entries, otherwise, ofWhole);
        }

        Conversion words() {
            need(references >= values.length);
            return Conversion.Words.of(values, entries(values.length), otherwise(values.length));
        }

        Conversion rangesToText() {
            need(values.length % 2 == 0 && references >= values.length / 2);
            int n = values.length / 2;
            return new Conversion.Ranges(every(2, 0, n), every(2, 1, n), entries(n), otherwise(n), ofWhole);
        }

        private Conversion.Entry[] entries(int count) {
            Conversion.Entry[] entries = new Conversion.Entry[count];
            for (int i = 0; i < count; i++) {
                entries[i] = entry(i);
            }
            return entries;
        }

        private Conversion.Entry otherwise(int reference) {
            return reference < references ? entry(reference) : new Conversion.Entry.Empty();
        }

        private Conversion.Entry entry(int reference) {
            long link = cc.link(REFERENCES + reference);
            String from = "reference " + reference + " of block ##CC at byte " + cc.position();
            try {
                if (link == 0) {
                    return new Conversion.Entry.Empty();
                }
                return file.head(link, from).id().equals("##CC")
                        ? new Conversion.Entry.Nested(at(link, ofWhole, from, depth + 1))
                        : new Conversion.Entry.Word(Optional.of(Texts.at(file, link, from)));
            } catch (BrokenBlock broken) {
                faults.add(broken, "; raw values that it is for have no value");
                return new Conversion.Entry.Empty();
            }
        }

        Conversion textToValue() {
            need(values.length == references + 1);
            Map<String, Conversion.Entry> entries = new HashMap<>();
            for (int i = 0; i < references; i++) {
                entries.putIfAbsent(key(i), new Conversion.Entry.Number(values[i]));
            }
            return new Conversion.OfTexts(entries, Optional.of(new Conversion.Entry.Number(values[references])));
        }

        Conversion textToText() {
            need(references % 2 == 1);
            Map<String, Conversion.Entry> entries = new HashMap<>();
            for (int i = 0; i + 1 < references; i += 2) {
                entries.putIfAbsent(key(i), entry(i + 1));
            }
            boolean hasDefault = cc.link(REFERENCES + references - 1) != 0;
            return new Conversion.OfTexts(entries, hasDefault ? Optional.of(entry(references - 1)) : Optional.empty());
        }

        private String key(int reference) {
            return Texts.at(
                    file,
                    cc.link(REFERENCES + reference),
                    "reference " + reference + " of block ##CC at byte " + cc.position());
        }
    }
}
