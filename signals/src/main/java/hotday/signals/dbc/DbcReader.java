package hotday.signals.dbc;

import hotday.core.finding.Place;
import hotday.core.finding.Severity;
import hotday.signals.dbc.Grammar.NotUnderstood;
import hotday.signals.dbc.Lexer.Token;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** From text to statements. A statement that is not understood is kept to the letter, and reading goes on behind it. */
final class DbcReader {
    /** Statements without a semicolon: nothing may follow in their line. */
    private static final Set<String> OF_A_LINE = Set.of("VERSION", "NS_", "BS_", "BU_", "BO_", "SG_");

    private final String text;
    private final Lines lines;
    private final Lexer lexer;
    private final StatementReader reader;
    private final FindingList findings;
    private final List<Placed> statements = new ArrayList<>();
    private final Map<String, Unused> unused = new LinkedHashMap<>();

    /** A statement and where it begins. */
    record Placed(Statement statement, Place place) {}

    private record Unused(Place first, int count) {}

    private DbcReader(String text, FindingList findings) {
        this.text = text;
        this.lines = new Lines(text);
        this.lexer = new Lexer(text);
        this.reader = new StatementReader(lexer);
        this.findings = findings;
    }

    static List<Placed> read(String text, FindingList findings) {
        DbcReader reader = new DbcReader(text, findings);
        while (reader.lexer.token() != Token.END) {
            reader.statement();
        }
        reader.tellUnused();
        return reader.statements;
    }

    private Place place(int position) {
        return findings.place(lines.line(position), lines.column(position));
    }

    private void statement() {
        int start = lexer.from();
        String keyword = lexer.token() == Token.WORD ? lexer.value() : "";
        try {
            if (!Grammar.KEYWORDS.contains(keyword)) {
                throw reader.grammar().wrong("first word of a statement");
            }
            lexer.next();
            Statement read = reader.read(keyword);
            statements.add(new Placed(read == null ? unused(keyword, start) : ended(keyword, read), place(start)));
        } catch (NotUnderstood e) {
            keep(keyword, start, e);
        }
    }

    private Statement ended(String keyword, Statement read) throws NotUnderstood {
        if (OF_A_LINE.contains(keyword) && lexer.token() != Token.END && !lexer.firstOfLine()) {
            throw reader.grammar().wrong("end of the line");
        }
        if (reader.grammar().tookEndMissing()) {
            findings.warning(
                    "semicolon-missing", place(lexer.lastEnd()), keyword + ": the semicolon at its end is missing");
        }
        return read;
    }

    private Statement unused(String keyword, int start) {
        unused.merge(keyword, new Unused(place(start), 1), (old, one) -> new Unused(old.first(), old.count() + 1));
        while (lexer.token() != Token.END && !lexer.is(';') && !reader.grammar().atKeyword()) {
            lexer.next();
        }
        reader.grammar().skip(';');
        return new Statement.Kept(keyword, text.substring(start, lexer.lastEnd()));
    }

    /** Keeps the lines up to the next one that begins with a keyword. */
    private void keep(String keyword, int start, NotUnderstood why) {
        findings.fault(
                "statement-not-understood",
                place(why.position()),
                (Grammar.KEYWORDS.contains(keyword) ? keyword + ": " : "") + why.getMessage() + "; kept, not used");
        int end = start;
        do {
            end = lines.next(end, text.length());
            lexer.restart(end);
        } while (lexer.token() != Token.END
                && !(reader.grammar().atKeyword() && lines.line(lexer.from()) == lines.line(end)));
        statements.add(new Placed(
                new Statement.Kept(keyword, text.substring(start, end).strip()), place(start)));
    }

    private void tellUnused() {
        unused.forEach((keyword, of) -> findings.add(
                Severity.NOTE,
                "statement-not-used",
                of.first(),
                keyword + ": " + of.count() + (of.count() == 1 ? " statement" : " statements")
                        + " kept, this program has no use for " + (of.count() == 1 ? "it" : "them")));
    }
}
