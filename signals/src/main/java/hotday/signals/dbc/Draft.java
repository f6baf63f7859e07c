package hotday.signals.dbc;

import hotday.core.finding.Place;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A message while what other statements say of it is gathered. */
final class Draft {
    final Statement.MessageHead head;
    final Place place;
    final List<Line> signals = new ArrayList<>();
    final Map<String, List<Line>> byName = new LinkedHashMap<>();
    final Set<String> senders = new LinkedHashSet<>();
    final Map<String, String> attributes = new LinkedHashMap<>();
    String comment = "";

    Draft(Statement.MessageHead head, Place place) {
        this.head = head;
        this.place = place;
    }

    /** A signal of it. */
    static final class Line {
        final Statement.SignalLine typed;
        final Place place;
        final Map<Long, String> words = new LinkedHashMap<>();
        final Map<String, String> attributes = new LinkedHashMap<>();
        final List<Statement.MultiplexedBy> multiplexedBy = new ArrayList<>();
        int valueType;
        String comment = "";

        Line(Statement.SignalLine typed, Place place) {
            this.typed = typed;
            this.place = place;
        }

        ValueForm form() {
            return switch (valueType) {
                case 1 -> ValueForm.SINGLE;
                case 2 -> ValueForm.DOUBLE;
                default -> typed.signed() ? ValueForm.SIGNED : ValueForm.UNSIGNED;
            };
        }

        Signal signal(Multiplexing multiplexing) {
            return new Signal(
                    typed.name(),
                    typed.start(),
                    typed.bits(),
                    typed.bigEndian(),
                    form(),
                    typed.factor().value(),
                    typed.offset().value(),
                    typed.min().value(),
                    typed.max().value(),
                    typed.unit(),
                    typed.receivers(),
                    multiplexing,
                    Map.copyOf(words),
                    comment,
                    Collections.unmodifiableMap(attributes),
                    place);
        }
    }

    void add(Line line) {
        signals.add(line);
        byName.computeIfAbsent(line.typed.name(), n -> new ArrayList<>(1)).add(line);
    }

    boolean extended() {
        return (head.id() & Message.EXTENDED_BIT) != 0;
    }

    int id() {
        return (int) (head.id() & ~Message.EXTENDED_BIT);
    }

    Message message(List<Multiplexing> multiplexing) {
        List<Signal> all = new ArrayList<>(signals.size());
        for (int i = 0; i < signals.size(); i++) {
            all.add(signals.get(i).signal(multiplexing.get(i)));
        }
        return new Message(
                id(),
                extended(),
                head.name(),
                head.length(),
                head.sender(),
                List.copyOf(senders),
                List.copyOf(all),
                comment,
                Collections.unmodifiableMap(attributes),
                place);
    }
}
