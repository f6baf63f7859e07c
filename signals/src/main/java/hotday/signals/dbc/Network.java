package hotday.signals.dbc;

import hotday.core.finding.Place;
import hotday.signals.dbc.Statement.Kind;
import hotday.signals.dbc.Statement.Target;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** What the statements of a file mean together. */
final class Network {
    private final FindingList findings;
    private final Attributes attributes = new Attributes();
    private final List<Draft> drafts = new ArrayList<>();
    private final Map<Long, Draft> byId = new HashMap<>();
    private final List<Message> messages = new ArrayList<>();

    private Network(FindingList findings) {
        this.findings = findings;
    }

    static Network of(List<DbcReader.Placed> statements, FindingList findings) {
        Network network = new Network(findings);
        network.gather(statements);
        statements.forEach(network::define);
        statements.forEach(network::apply);
        network.finish();
        return network;
    }

    List<Message> messages() {
        return List.copyOf(messages);
    }

    Attributes attributes() {
        return attributes;
    }

    /** Messages with the signals behind them; behind a head that was not understood, signals belong to nobody. */
    private void gather(List<DbcReader.Placed> statements) {
        Draft current = null;
        for (DbcReader.Placed p : statements) {
            if (p.statement() instanceof Statement.MessageHead head) {
                current = new Draft(head, p.place());
                add(current);
            } else if (p.statement() instanceof Statement.SignalLine line) {
                add(current, new Draft.Line(line, p.place()));
            } else if (p.statement() instanceof Statement.Kept kept && mayBeMessage(kept.keyword())) {
                current = null;
            }
        }
    }

    /** A head that was not understood, or a first word that nobody knows, a misspelt one perhaps. */
    private static boolean mayBeMessage(String keyword) {
        return keyword.equals("BO_") || !keyword.startsWith("//") && !Grammar.KEYWORDS.contains(keyword);
    }

    private void add(Draft draft) {
        drafts.add(draft);
        if (byId.putIfAbsent(draft.head.id(), draft) != null) {
            findings.warning(
                    "message-twice",
                    draft.place,
                    "message " + draft.head.id() + " is described twice; comments, words and the like go to the first");
        }
    }

    private void add(Draft draft, Draft.Line line) {
        if (draft == null) {
            findings.fault(
                    "signal-without-message",
                    line.place,
                    "signal '" + line.typed.name() + "' stands behind no message that was understood; kept, not used");
            return;
        }
        draft.add(line);
        if (draft.byName.get(line.typed.name()).size() == 2) {
            findings.warning(
                    "signal-twice",
                    line.place,
                    "signal '" + line.typed.name() + "' stands twice in message '" + draft.head.name() + "'");
        }
    }

    private void define(DbcReader.Placed p) {
        if (p.statement() instanceof Statement.AttributeDefinition d) {
            attributes.define(d);
        } else if (p.statement() instanceof Statement.AttributeDefault d) {
            attributes.common(d);
        }
    }

    private void apply(DbcReader.Placed p) {
        Statement s = p.statement();
        if (s instanceof Statement.Comment c) {
            comment(c, p.place());
        } else if (s instanceof Statement.Words w) {
            words(w, p.place());
        } else if (s instanceof Statement.AttributeValue a) {
            attribute(a, p.place());
        } else if (s instanceof Statement.Senders m) {
            message(m.message(), p.place(), d -> d.senders.addAll(m.nodes()));
        } else if (s instanceof Statement.ValueType t) {
            signal(t.message(), t.signal(), p.place(), line -> line.valueType = t.type());
        } else if (s instanceof Statement.MultiplexedBy m) {
            signal(m.message(), m.signal(), p.place(), line -> line.multiplexedBy.add(m));
        }
    }

    private void comment(Statement.Comment c, Place place) {
        switch (c.target().kind()) {
            case MESSAGE -> message(c.target().message(), place, d -> d.comment = c.text());
            case SIGNAL -> signal(c.target(), place, line -> line.comment = c.text());
            default -> {}
        }
    }

    private void words(Statement.Words w, Place place) {
        if (w.target().kind() == Kind.SIGNAL) {
            signal(w.target(), place, line -> w.words().forEach(word -> word(line, word, place)));
        }
    }

    private void word(Draft.Line line, Statement.Word word, Place place) {
        double raw = word.raw().value();
        if (raw != Math.rint(raw) || Math.abs(raw) >= 0x1p63) {
            findings.warning(
                    "word-of-no-raw-value", place, "the word of " + word.raw().text() + " belongs to no raw value");
        } else if (line.words.putIfAbsent((long) raw, word.text()) != null) {
            findings.warning(
                    "word-twice",
                    place,
                    "value " + word.raw().text() + " of '" + line.typed.name() + "' has two words; the first is taken");
        }
    }

    private void attribute(Statement.AttributeValue a, Place place) {
        String value = attributes.value(a, place, findings);
        switch (a.target().kind()) {
            case NETWORK -> attributes.ofNetwork().put(a.name(), value);
            case MESSAGE -> message(a.target().message(), place, d -> d.attributes.put(a.name(), value));
            case SIGNAL -> signal(a.target(), place, line -> line.attributes.put(a.name(), value));
            default -> {}
        }
    }

    private void message(long id, Place place, Consumer<Draft> then) {
        Draft draft = byId.get(id);
        if (draft == null) {
            findings.warning("no-such-message", place, "there is no message " + id);
        } else {
            then.accept(draft);
        }
    }

    private void signal(Target target, Place place, Consumer<Draft.Line> then) {
        signal(target.message(), target.name(), place, then);
    }

    private void signal(long id, String name, Place place, Consumer<Draft.Line> then) {
        message(id, place, draft -> {
            List<Draft.Line> lines = draft.byName.getOrDefault(name, List.of());
            if (lines.isEmpty()) {
                findings.warning(
                        "no-such-signal", place, "message '" + draft.head.name() + "' has no signal '" + name + "'");
            }
            lines.forEach(then);
        });
    }

    private void finish() {
        for (Draft draft : drafts) {
            if (MessageChecks.identifier(draft, findings)) {
                Message message = draft.message(MultiplexingRule.of(draft, findings));
                MessageChecks.signals(message, findings);
                messages.add(message);
            }
        }
    }
}
