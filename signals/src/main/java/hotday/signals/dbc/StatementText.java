package hotday.signals.dbc;

import hotday.signals.dbc.Statement.Numeral;
import hotday.signals.dbc.Statement.Target;
import hotday.signals.dbc.Statement.Word;
import java.util.List;
import java.util.stream.Collectors;

/** A statement as it stands in a file, in the blanks most files use. */
final class StatementText {
    private StatementText() {}

    static String of(List<Statement> statements) {
        StringBuilder out = new StringBuilder();
        Statement before = null;
        for (Statement s : statements) {
            if (before != null && apart(before, s)) {
                out.append('\n');
            }
            out.append(of(s)).append('\n');
            before = s;
        }
        return out.toString();
    }

    /** A blank line before every message and where another kind of statement begins. */
    private static boolean apart(Statement before, Statement s) {
        return s instanceof Statement.MessageHead
                || !(s instanceof Statement.SignalLine) && before.getClass() != s.getClass();
    }

    static String of(Statement s) {
        if (s instanceof Statement.SignalLine signal) {
            return signal(signal);
        }
        if (s instanceof Statement.MessageHead m) {
            return ("BO_ " + m.id() + " " + m.name() + ": " + m.length() + " " + m.sender()).stripTrailing();
        }
        if (s instanceof Statement.Comment c) {
            return "CM_ " + target(c.target()) + quoted(c.text()) + ";";
        }
        if (s instanceof Statement.Words w) {
            return "VAL_ " + bare(w.target()) + " " + words(w.words()) + ";";
        }
        if (s instanceof Statement.WordTable t) {
            return "VAL_TABLE_ " + t.name() + " " + words(t.words()) + ";";
        }
        if (s instanceof Statement.Kept k) {
            return k.text();
        }
        return attributes(s);
    }

    private static String attributes(Statement s) {
        if (s instanceof Statement.AttributeValue a) {
            return "BA_ " + quoted(a.name()) + " " + target(a.target()) + value(a.value(), a.quoted()) + ";";
        }
        if (s instanceof Statement.AttributeDefault d) {
            return "BA_DEF_DEF_ " + quoted(d.name()) + " " + value(d.value(), d.quoted()) + ";";
        }
        if (s instanceof Statement.AttributeDefinition d) {
            return definition(d);
        }
        if (s instanceof Statement.ValueType t) {
            return "SIG_VALTYPE_ " + t.message() + " " + t.signal() + " : " + t.type() + ";";
        }
        if (s instanceof Statement.MultiplexedBy m) {
            return "SG_MUL_VAL_ " + m.message() + " " + m.signal() + " " + m.multiplexor() + " " + ranges(m.values())
                    + ";";
        }
        return lists(s);
    }

    private static String lists(Statement s) {
        if (s instanceof Statement.Version v) {
            return "VERSION " + quoted(v.text());
        }
        if (s instanceof Statement.Symbols n) {
            return "NS_ :" + n.names().stream().map(name -> "\n\t" + name).collect(Collectors.joining());
        }
        if (s instanceof Statement.BitTiming b) {
            return bitTiming(b.numbers());
        }
        if (s instanceof Statement.Nodes n) {
            return ("BU_: " + String.join(" ", n.names())).stripTrailing();
        }
        if (s instanceof Statement.Senders m) {
            return "BO_TX_BU_ " + m.message() + " : " + String.join(",", m.nodes()) + ";";
        }
        if (s instanceof Statement.Group g) {
            return "SIG_GROUP_ " + g.message() + " " + g.name() + " " + g.repetitions() + " : "
                    + String.join(" ", g.signals()) + ";";
        }
        return variable((Statement.Variable) s);
    }

    private static String signal(Statement.SignalLine s) {
        String multiplexing = s.multiplexing().isEmpty() ? "" : s.multiplexing() + " ";
        return (" SG_ " + s.name() + " " + multiplexing + ": " + s.start() + "|" + s.bits() + "@"
                        + (s.bigEndian() ? "0" : "1") + (s.signed() ? "-" : "+")
                        + " (" + s.factor().text() + "," + s.offset().text() + ") ["
                        + s.min().text() + "|" + s.max().text() + "] " + quoted(s.unit()) + " "
                        + String.join(",", s.receivers()))
                .stripTrailing();
    }

    private static String variable(Statement.Variable v) {
        return "EV_ " + v.name() + ": " + v.type() + " [" + v.min().text() + "|"
                + v.max().text() + "] "
                + quoted(v.unit()) + " " + v.initial().text() + " " + v.number().text() + " " + v.access() + " "
                + String.join(",", v.nodes()) + ";";
    }

    private static String definition(Statement.AttributeDefinition d) {
        String kind = d.kind().keyword().isEmpty() ? "" : d.kind().keyword() + " ";
        String range = d.range().stream().map(n -> " " + n.text()).collect(Collectors.joining());
        String words = d.words().stream().map(StatementText::quoted).collect(Collectors.joining(","));
        return "BA_DEF_ " + kind + quoted(d.name()) + " " + d.type() + range + (words.isEmpty() ? "" : " " + words)
                + ";";
    }

    private static String bitTiming(List<Numeral> numbers) {
        String rest = numbers.stream().skip(1).map(Numeral::text).collect(Collectors.joining(","));
        return numbers.isEmpty() ? "BS_:" : "BS_: " + numbers.get(0).text() + (rest.isEmpty() ? "" : " : " + rest);
    }

    private static String target(Target t) {
        String keyword = t.kind().keyword();
        return keyword.isEmpty() ? "" : keyword + " " + bare(t) + " ";
    }

    private static String bare(Target t) {
        return switch (t.kind()) {
            case NETWORK -> "";
            case NODE, VARIABLE -> t.name();
            case MESSAGE -> String.valueOf(t.message());
            case SIGNAL -> t.message() + " " + t.name();
        };
    }

    private static String words(List<Word> words) {
        return words.stream().map(w -> w.raw().text() + " " + quoted(w.text())).collect(Collectors.joining(" "));
    }

    private static String ranges(List<ValueRange> values) {
        return values.stream().map(v -> v.low() + "-" + v.high()).collect(Collectors.joining(", "));
    }

    private static String value(String value, boolean quoted) {
        return quoted ? quoted(value) : value;
    }

    private static String quoted(String text) {
        return '"' + text.replace("\"", "\\\"") + '"';
    }
}
