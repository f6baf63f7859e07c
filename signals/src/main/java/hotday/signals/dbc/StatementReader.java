package hotday.signals.dbc;

import hotday.signals.dbc.Grammar.NotUnderstood;
import hotday.signals.dbc.Lexer.Token;
import hotday.signals.dbc.Statement.Kind;
import hotday.signals.dbc.Statement.Numeral;
import hotday.signals.dbc.Statement.Target;
import java.util.ArrayList;
import java.util.List;

/** One method a statement: what stands behind its keyword. */
final class StatementReader {
    private static final int MOST_BYTES = 1 << 20;
    private static final int HIGHEST_BIT = 1 << 24;

    private final Lexer lexer;
    private final Grammar grammar;

    StatementReader(Lexer lexer) {
        this.lexer = lexer;
        this.grammar = new Grammar(lexer);
    }

    Grammar grammar() {
        return grammar;
    }

    /** What stands behind a keyword, which has been read; null when this program has no use for it. */
    Statement read(String keyword) throws NotUnderstood {
        return switch (keyword) {
            case "VERSION" -> new Statement.Version(grammar.lineText("version"));
            case "NS_" -> symbols();
            case "BS_" -> bitTiming();
            case "BU_" -> nodes();
            case "VAL_TABLE_" -> wordTable();
            case "BO_" -> message();
            case "SG_" -> signal();
            case "BO_TX_BU_" -> senders();
            case "EV_" -> variable();
            case "CM_" -> comment();
            case "BA_DEF_" -> definition();
            case "BA_DEF_DEF_" -> attributeDefault();
            case "BA_" -> attribute();
            case "VAL_" -> words();
            case "SIG_GROUP_" -> group();
            case "SIG_VALTYPE_" -> valueType();
            case "SG_MUL_VAL_" -> multiplexedBy();
            default -> null;
        };
    }

    /** Lines of a single word each, which may be keywords. */
    private Statement symbols() throws NotUnderstood {
        grammar.mark(':');
        List<String> names = new ArrayList<>();
        while (lexer.token() == Token.WORD && lexer.firstOfLine() && lexer.aloneInLine()) {
            names.add(lexer.value());
            lexer.next();
        }
        return new Statement.Symbols(names);
    }

    private Statement nodes() throws NotUnderstood {
        grammar.mark(':');
        return new Statement.Nodes(grammar.wordsOfLine());
    }

    private Statement bitTiming() throws NotUnderstood {
        grammar.mark(':');
        List<Numeral> numbers = new ArrayList<>();
        if (grammar.isNumber() && !lexer.firstOfLine()) {
            numbers.add(grammar.number("bit rate"));
            grammar.mark(':');
            numbers.add(grammar.number("first register"));
            grammar.mark(',');
            numbers.add(grammar.number("second register"));
        }
        return new Statement.BitTiming(numbers);
    }

    private Statement wordTable() throws NotUnderstood {
        Statement table = new Statement.WordTable(grammar.word("name of a table"), grammar.valueWords());
        grammar.end();
        return table;
    }

    private Statement message() throws NotUnderstood {
        long id = grammar.id();
        String name = grammar.word("name of a message");
        grammar.mark(':');
        int length = (int) grammar.whole("number of bytes", MOST_BYTES);
        String sender = grammar.isWord() && !lexer.firstOfLine() ? grammar.word("sender") : "";
        return new Statement.MessageHead(id, name, length, sender);
    }

    private Statement signal() throws NotUnderstood {
        String name = grammar.word("name of a signal");
        String multiplexing = lexer.is(':') ? "" : grammar.word("':' or how it is multiplexed");
        grammar.mark(':');
        int start = (int) grammar.whole("first bit", HIGHEST_BIT);
        grammar.mark('|');
        int bits = (int) grammar.whole("number of bits", HIGHEST_BIT);
        grammar.mark('@');
        boolean[] form = form();
        grammar.mark('(');
        Numeral factor = grammar.number("factor");
        grammar.mark(',');
        Numeral offset = grammar.number("offset");
        grammar.mark(')');
        grammar.mark('[');
        Numeral min = grammar.number("lowest value");
        grammar.mark('|');
        Numeral max = grammar.number("highest value");
        grammar.mark(']');
        String unit = grammar.lineText("unit");
        return new Statement.SignalLine(
                name,
                multiplexing,
                start,
                bits,
                form[0],
                form[1],
                factor,
                offset,
                min,
                max,
                unit,
                grammar.wordsOfLine());
    }

    /** Byte order and sign, {@code 1+} or {@code 1 +}: whether the most significant byte comes first, whether signed. */
    private boolean[] form() throws NotUnderstood {
        int at = lexer.from();
        String form = grammar.word("byte order and sign");
        if (form.length() == 1) {
            form += grammar.word("sign");
        }
        if (form.length() != 2 || "01".indexOf(form.charAt(0)) < 0 || "+-".indexOf(form.charAt(1)) < 0) {
            throw new NotUnderstood(
                    at, "byte order (0 or 1) and sign (+ or -) are needed, '" + form + "' stands there");
        }
        return new boolean[] {form.charAt(0) == '0', form.charAt(1) == '-'};
    }

    private Statement senders() throws NotUnderstood {
        long id = grammar.id();
        grammar.mark(':');
        Statement senders = new Statement.Senders(id, grammar.words());
        grammar.end();
        return senders;
    }

    private Statement variable() throws NotUnderstood {
        String name = grammar.word("name of a variable");
        grammar.mark(':');
        int type = (int) grammar.whole("type", 2);
        grammar.mark('[');
        Numeral min = grammar.number("lowest value");
        grammar.mark('|');
        Numeral max = grammar.number("highest value");
        grammar.mark(']');
        String unit = grammar.lineText("unit");
        Numeral initial = grammar.number("first value");
        Numeral number = grammar.number("number of the variable");
        String access = grammar.word("access");
        List<String> nodes = grammar.words();
        grammar.end();
        return new Statement.Variable(name, type, min, max, unit, initial, number, access, nodes);
    }

    private Statement comment() throws NotUnderstood {
        Target target = grammar.target();
        String text = grammar.text("comment");
        grammar.end();
        return new Statement.Comment(target, text);
    }

    private Statement definition() throws NotUnderstood {
        Kind kind = grammar.kind();
        String name = grammar.lineText("name of an attribute");
        int at = lexer.from();
        String type = grammar.word("type of the attribute");
        List<Numeral> range = new ArrayList<>();
        List<String> words = new ArrayList<>();
        switch (type) {
            case "INT", "HEX", "FLOAT" -> range(range);
            case "ENUM" -> enumWords(words);
            case "STRING" -> {}
            default ->
                throw new NotUnderstood(at, "INT, HEX, FLOAT, STRING or ENUM is needed, '" + type + "' stands there");
        }
        grammar.end();
        return new Statement.AttributeDefinition(kind, name, type, range, words);
    }

    private void range(List<Numeral> range) throws NotUnderstood {
        if (grammar.isNumber()) {
            range.add(grammar.number("lowest value"));
            range.add(grammar.number("highest value"));
        }
    }

    private void enumWords(List<String> words) throws NotUnderstood {
        while (grammar.isText()) {
            words.add(grammar.lineText("word"));
            grammar.skip(',');
        }
    }

    private Statement attributeDefault() throws NotUnderstood {
        String name = grammar.lineText("name of an attribute");
        boolean quoted = grammar.isText();
        Statement value = new Statement.AttributeDefault(name, attributeValue(), quoted);
        grammar.end();
        return value;
    }

    private Statement attribute() throws NotUnderstood {
        String name = grammar.lineText("name of an attribute");
        Target target = grammar.target();
        boolean quoted = grammar.isText();
        Statement value = new Statement.AttributeValue(name, target, attributeValue(), quoted);
        grammar.end();
        return value;
    }

    private String attributeValue() throws NotUnderstood {
        return grammar.isText()
                ? grammar.text("value")
                : grammar.number("value").text();
    }

    private Statement words() throws NotUnderstood {
        Target target = grammar.isNumber()
                ? new Target(Kind.SIGNAL, grammar.id(), grammar.word("name of a signal"))
                : new Target(Kind.VARIABLE, 0, grammar.word("identifier of a message or name of a variable"));
        Statement words = new Statement.Words(target, grammar.valueWords());
        grammar.end();
        return words;
    }

    private Statement group() throws NotUnderstood {
        long id = grammar.id();
        String name = grammar.word("name of a group");
        long repetitions = grammar.whole("repetitions", Integer.MAX_VALUE);
        grammar.mark(':');
        Statement group = new Statement.Group(id, name, repetitions, grammar.words());
        grammar.end();
        return group;
    }

    private Statement valueType() throws NotUnderstood {
        long id = grammar.id();
        String signal = grammar.word("name of a signal");
        grammar.skip(':');
        Statement type = new Statement.ValueType(id, signal, (int) grammar.whole("type (0, 1 or 2)", 2));
        grammar.end();
        return type;
    }

    private Statement multiplexedBy() throws NotUnderstood {
        long id = grammar.id();
        String signal = grammar.word("name of a signal");
        String multiplexor = grammar.word("name of its multiplexor");
        List<ValueRange> ranges = new ArrayList<>();
        do {
            ranges.add(range());
        } while (grammar.skip(','));
        grammar.end();
        return new Statement.MultiplexedBy(id, signal, multiplexor, ranges);
    }

    private ValueRange range() throws NotUnderstood {
        int at = lexer.from();
        String range = grammar.word("values such as 3-5");
        if (!range.matches("\\d{1,18}-\\d{1,18}")) {
            throw new NotUnderstood(at, "values such as 3-5 are needed, '" + range + "' stands there");
        }
        int dash = range.indexOf('-');
        ValueRange values =
                new ValueRange(Long.parseLong(range.substring(0, dash)), Long.parseLong(range.substring(dash + 1)));
        if (values.low() > values.high()) {
            throw new NotUnderstood(at, "the values " + range + " run backwards");
        }
        return values;
    }
}
