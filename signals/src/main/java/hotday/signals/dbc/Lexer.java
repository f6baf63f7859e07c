package hotday.signals.dbc;

/**
 * Cuts the text of a DBC file into words, quoted texts and marks, one at a time. Every character is looked at a bounded
 * number of times, whatever the text.
 */
final class Lexer {
    /** What the current token is. */
    enum Token {
        WORD,
        TEXT,
        MARK,
        /** A quote that nobody closes. */
        OPEN_TEXT,
        END
    }

    private static final String MARKS = ":;,|@()[]";

    private final String text;
    private Token token = Token.END;
    private int from;
    private int to;
    private int lastEnd;
    private boolean firstOfLine;
    /** A quoted text that begins after the first of these, up to the second, ends at the second. */
    private int knownFrom = -1;

    private int knownClose = -1;

    Lexer(String text) {
        this.text = text;
        restart(0);
    }

    /** Goes on where a line begins. */
    void restart(int lineStart) {
        to = lineStart;
        take(true);
    }

    void next() {
        take(false);
    }

    Token token() {
        return token;
    }

    /** Where the current token begins. */
    int from() {
        return from;
    }

    /** Where the token before the current one ended. */
    int lastEnd() {
        return lastEnd;
    }

    /** Whether only blanks stand before the current token in its line. */
    boolean firstOfLine() {
        return firstOfLine;
    }

    /** Whether only blanks stand behind the current token in its line. */
    boolean aloneInLine() {
        int i = to;
        while (i < text.length() && isBlank(text.charAt(i)) && text.charAt(i) != '\n' && text.charAt(i) != '\r') {
            i++;
        }
        return i >= text.length() || text.charAt(i) == '\n' || text.charAt(i) == '\r';
    }

    boolean is(char mark) {
        return token == Token.MARK && text.charAt(from) == mark;
    }

    /** The current token; a text without its quotes. */
    String value() {
        return token == Token.TEXT ? text.substring(from + 1, to - 1).replace("\\\"", "\"") : text.substring(from, to);
    }

    private void take(boolean lineBegins) {
        lastEnd = to;
        firstOfLine = skipBlanks(lineBegins);
        if (from >= text.length()) {
            token = Token.END;
            to = from;
        } else if (text.charAt(from) == '"') {
            quoted();
        } else if (MARKS.indexOf(text.charAt(from)) >= 0) {
            token = Token.MARK;
            to = from + 1;
        } else {
            word();
        }
    }

    private boolean skipBlanks(boolean lineBegins) {
        boolean fresh = lineBegins;
        int i = to;
        while (i < text.length() && isBlank(text.charAt(i))) {
            fresh |= text.charAt(i) == '\n' || text.charAt(i) == '\r';
            i++;
        }
        from = i;
        return fresh;
    }

    static boolean isBlank(char c) {
        return c <= ' ' || c == '\u00A0';
    }

    private void word() {
        int i = from;
        while (i < text.length() && isWord(text.charAt(i))) {
            i++;
        }
        token = Token.WORD;
        to = i;
    }

    private static boolean isWord(char c) {
        return !isBlank(c) && c != '"' && MARKS.indexOf(c) < 0;
    }

    private void quoted() {
        int begin = from + 1;
        int close = begin > knownFrom && begin <= knownClose ? knownClose : closing(begin);
        boolean closed = close < text.length();
        token = closed ? Token.TEXT : Token.OPEN_TEXT;
        to = closed ? close + 1 : begin;
    }

    private int closing(int begin) {
        int i = begin;
        while (i < text.length() && !(text.charAt(i) == '"' && closes(i, begin))) {
            i++;
        }
        knownFrom = begin;
        knownClose = i;
        return i;
    }

    /** A quote behind a backslash belongs to the text, unless the statement ends right after it. */
    private boolean closes(int i, int begin) {
        return i == begin || text.charAt(i - 1) != '\\' || endsStatement(i + 1);
    }

    private boolean endsStatement(int i) {
        return i < text.length() && text.charAt(i) == ';' && (i + 1 == text.length() || isBlank(text.charAt(i + 1)));
    }
}
