package hotday.signals.translator;

import hotday.signals.translator.Program.Counter;
import hotday.signals.translator.Program.Guard;
import hotday.signals.translator.Program.Outgoing;

/** A message sent: when its next frame leaves and what is in it. */
final class RunningTarget {
    private final Outgoing message;
    private final Counter counter;
    private final Guard guard;
    private final RunningLine[] lines;
    private final byte[] data = new byte[Field.MOST_BYTES];
    private int since;
    private int count;
    private long last;
    private long frames;

    RunningTarget(Outgoing message, RunningLine[] lines) {
        this.message = message;
        this.counter = message.counter().orElse(null);
        this.guard = message.checksum().orElse(null);
        this.lines = lines;
        this.since = message.every(); // due at the first look
        this.count = counter == null ? 0 : counter.first();
    }

    void look(Translator.Outlet outlet) {
        since = Translator.counted(since);
        long word = message.fixed();
        for (RunningLine line : lines) {
            word = line.put(word);
        }
        boolean changed = message.onChange() > 0 && since >= message.onChange() && word != last;
        if (since >= message.every() || changed) {
            send(word, outlet);
        }
    }

    private void send(long content, Translator.Outlet outlet) {
        since = 0;
        last = content;
        frames++;
        for (RunningLine line : lines) {
            line.sent();
        }
        long word = content;
        if (counter != null) {
            word = counter.field().put(word, count);
            count = count + counter.step() > counter.last() ? counter.first() : count + counter.step();
        }
        Field.bytes(word, data, message.length());
        if (guard != null) {
            Field.bytes(guard.field().put(word, guard.value(data, 0)), data, message.length());
        }
        outlet.send(message.network(), message.id(), message.extended(), data, message.length());
    }

    long frames() {
        return frames;
    }
}
