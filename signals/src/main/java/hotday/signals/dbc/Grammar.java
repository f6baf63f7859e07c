package hotday.signals.dbc;

import hotday.signals.dbc.Lexer.Token;
import hotday.signals.dbc.Statement.Kind;
import hotday.signals.dbc.Statement.Numeral;
import hotday.signals.dbc.Statement.Target;
import hotday.signals.dbc.Statement.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** The pieces that statements are made of. Whatever does not fit ends in {@link NotUnderstood} at the token where it stands. */
final class Grammar {
    /** First words of statements; one of these at the begin of a line ends the statement before. */
    static final Set<String> KEYWORDS = Set.of(
            "VERSION",
            "NS_",
            "BS_",
            "BU_",
            "VAL_TABLE_",
            "BO_",
            "SG_",
            "BO_TX_BU_",
            "EV_",
            "ENVVAR_DATA_",
            "SGTYPE_",
            "CM_",
            "BA_DEF_",
            "BA_DEF_REL_",
            "BA_DEF_SGTYPE_",
            "BA_DEF_DEF_",
            "BA_DEF_DEF_REL_",
            "BA_",
            "BA_REL_",
            "BA_SGTYPE_",
            "VAL_",
            "CAT_DEF_",
            "CAT_",
            "FILTER",
            "EV_DATA_",
            "SGTYPE_VAL_",
            "SIG_TYPE_REF_",
            "SIG_GROUP_",
            "SIG_VALTYPE_",
            "SIGTYPE_VALTYPE_",
            "SG_MUL_VAL_");

    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(\\d{1,400}\\.?\\d{0,400}|\\.\\d{1,400})([eE][+-]?\\d{1,9})?");
    private static final Pattern WHOLE = Pattern.compile("\\d{1,18}");

    private final Lexer lexer;
    private boolean endMissing;

    Grammar(Lexer lexer) {
        this.lexer = lexer;
    }

    /** The statement at hand is not one that can be used. */
    static final class NotUnderstood extends Exception {
        private static final long serialVersionUID = 1L;

        private final int position;

        NotUnderstood(int position, String message) {
            super(message, null, false, false);
            this.position = position;
        }

        /** Where in the text. */
        int position() {
            return position;
        }
    }

    NotUnderstood wrong(String needed) {
        String found = switch (lexer.token()) {
            case END -> "the file ends";
            case OPEN_TEXT -> "a quote that nobody closes stands there";
            case TEXT -> "a text in quotes stands there";
            case WORD, MARK -> "'" + shortened(lexer.value()) + "' stands there";
        };
        int at = lexer.token() == Token.END ? lexer.lastEnd() : lexer.from();
        return new NotUnderstood(at, needed + " is needed, " + found);
    }

    private static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 40) + "...";
    }

    boolean atKeyword() {
        return lexer.firstOfLine() && lexer.token() == Token.WORD && KEYWORDS.contains(lexer.value());
    }

    private void inside(String needed) throws NotUnderstood {
        if (atKeyword()) {
            throw new NotUnderstood(lexer.lastEnd(), needed + " is needed, the next statement begins");
        }
    }

    boolean skip(char mark) {
        boolean there = lexer.is(mark);
        if (there) {
            lexer.next();
        }
        return there;
    }

    void mark(char mark) throws NotUnderstood {
        inside("'" + mark + "'");
        if (!skip(mark)) {
            throw wrong("'" + mark + "'");
        }
    }

    boolean isWord() {
        return lexer.token() == Token.WORD && !atKeyword();
    }

    String word(String what) throws NotUnderstood {
        inside(what);
        if (lexer.token() != Token.WORD) {
            throw wrong(what);
        }
        String word = lexer.value();
        lexer.next();
        return word;
    }

    /** A text that may have several lines. */
    String text(String what) throws NotUnderstood {
        inside(what);
        if (lexer.token() != Token.TEXT) {
            throw wrong(what + " in quotes");
        }
        String value = lexer.value();
        lexer.next();
        return value;
    }

    /** A text of one line: one that goes on in the next has lost its closing quote. */
    String lineText(String what) throws NotUnderstood {
        int at = lexer.from();
        String value = text(what);
        if (value.indexOf('\n') >= 0 || value.indexOf('\r') >= 0) {
            throw new NotUnderstood(at, what + " in quotes is needed, the quote is not closed in its line");
        }
        return value;
    }

    long whole(String what, long highest) throws NotUnderstood {
        inside(what);
        if (lexer.token() != Token.WORD || !WHOLE.matcher(lexer.value()).matches()) {
            throw wrong(what + ", a whole number,");
        }
        long value = Long.parseLong(lexer.value());
        if (value > highest) {
            throw new NotUnderstood(lexer.from(), what + " " + value + " must be 0 to " + highest);
        }
        lexer.next();
        return value;
    }

    Numeral number(String what) throws NotUnderstood {
        inside(what);
        if (lexer.token() != Token.WORD || !isNumber(lexer.value())) {
            throw wrong(what + ", a number,");
        }
        Numeral number = new Numeral(lexer.value());
        if (!Double.isFinite(number.value())) {
            throw wrong(what + ", a number of a size that computers know,");
        }
        lexer.next();
        return number;
    }

    private static boolean isNumber(String word) {
        return NUMBER.matcher(word).matches();
    }

    boolean isNumber() {
        return lexer.token() == Token.WORD && isNumber(lexer.value());
    }

    boolean isText() {
        return lexer.token() == Token.TEXT;
    }

    /** Words with or without commas between them. */
    List<String> words() {
        List<String> words = new ArrayList<>();
        while (isWord()) {
            words.add(lexer.value());
            lexer.next();
            skip(',');
        }
        return words;
    }

    /** Words up to the end of the line; a comma at its end carries on in the next. */
    List<String> wordsOfLine() {
        List<String> words = new ArrayList<>();
        boolean more = false;
        while (isWord() && (more || !lexer.firstOfLine())) {
            words.add(lexer.value());
            lexer.next();
            more = skip(',');
        }
        return words;
    }

    List<Word> valueWords() throws NotUnderstood {
        List<Word> words = new ArrayList<>();
        while (!lexer.is(';') && !atNext()) {
            Numeral raw = number("a value");
            words.add(new Word(raw, text("its word")));
        }
        return words;
    }

    /** The kind of an object; the network when no kind stands there. */
    Kind kind() {
        if (lexer.token() == Token.WORD) {
            for (Kind kind : Kind.values()) {
                if (kind.keyword().equals(lexer.value())) {
                    lexer.next();
                    return kind;
                }
            }
        }
        return Kind.NETWORK;
    }

    Target target() throws NotUnderstood {
        return switch (kind()) {
            case NETWORK -> Target.NETWORK;
            case NODE -> new Target(Kind.NODE, 0, word("name of a node"));
            case MESSAGE -> new Target(Kind.MESSAGE, id(), "");
            case SIGNAL -> new Target(Kind.SIGNAL, id(), word("name of a signal"));
            case VARIABLE -> new Target(Kind.VARIABLE, 0, word("name of a variable"));
        };
    }

    /** Identifier of a message with the bit of extended ones. */
    long id() throws NotUnderstood {
        return whole("identifier of a message", 0xFFFF_FFFFL);
    }

    /** A semicolon; where the next statement begins, or the file ends, one that is missing is told and not missed. */
    void end() throws NotUnderstood {
        if (atNext()) {
            endMissing = true;
        } else {
            mark(';');
        }
    }

    private boolean atNext() {
        return lexer.token() == Token.END || atKeyword();
    }

    /** Whether a semicolon was missing since this was asked last. */
    boolean tookEndMissing() {
        boolean missing = endMissing;
        endMissing = false;
        return missing;
    }
}
