package hotday.core.typed;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.parser.Parser;

/** The composer descends by calling itself: what would exhaust it is refused on the way to it, event by event. */
final class ShallowParser implements Parser {
    private static final int DEEPEST = 50;

    private final String file;
    private final Parser parser;
    private int depth;

    ShallowParser(String file, Parser parser) {
        this.file = file;
        this.parser = parser;
    }

    @Override
    public boolean checkEvent(Event.ID choice) {
        return parser.checkEvent(choice);
    }

    @Override
    public Event peekEvent() {
        return parser.peekEvent();
    }

    @Override
    public boolean hasNext() {
        return parser.hasNext();
    }

    @Override
    public Event next() {
        Event event = parser.next();
        if (event instanceof CollectionStartEvent) {
            depth++;
        } else if (event instanceof CollectionEndEvent) {
            depth--;
        }
        if (depth > DEEPEST) {
            throw InputException.at(
                    event.getStartMark().map(TypedFile::place).orElse(Place.of(file)),
                    "nested-too-deep",
                    "is nested more than " + DEEPEST + " levels deep");
        }
        return event;
    }
}
