package hotday.signals.translator;

import hotday.signals.translator.Program.Line;
import hotday.signals.translator.Program.Rest;
import hotday.signals.translator.Program.Row;
import hotday.signals.translator.Program.Source;
import hotday.signals.translator.Translator.Content;
import java.util.Arrays;

/** A line: the last value that came, how old it is, and what its target carries. */
final class RunningLine {
    /** Before the first value. */
    private static final int NEVER = -1;

    private final Source source;
    private final long[] rowFrom;
    private final long[] rowTo;
    private final Rest rest;
    private final long otherwise;
    private final long low;
    private final long high;
    private final Scaling scaling;
    private final Field target;
    private final int timeOut;
    private final int hold;
    private final long safe;

    private boolean came;
    private long next;
    private long value;
    private int age = NEVER;
    private int held;
    private final long[] sent = new long[Content.values().length];

    RunningLine(Line line) {
        this.source = line.source();
        this.rowFrom = line.values().rows().stream().mapToLong(Row::from).toArray();
        this.rowTo = line.values().rows().stream()
                .mapToLong(r -> r.safe() ? line.safe() : r.to())
                .toArray();
        this.rest = line.values().rest();
        this.otherwise = line.values().otherwise();
        this.low = line.values().low();
        this.high = line.values().high();
        this.scaling = line.values().scaling();
        this.target = line.target();
        this.timeOut = line.timeOut();
        this.hold = line.hold();
        this.safe = line.safe();
    }

    /** Takes the value from a frame that counts, where it is there. */
    void receive(long word, int length) {
        if (source.isThere(word, length)) {
            translate(source.field().raw(word));
        }
    }

    private void translate(long raw) {
        int row = Arrays.binarySearch(rowFrom, raw);
        if (row >= 0) {
            take(rowTo[row]);
            return;
        }
        switch (rest) {
            case SCALED -> {
                if (raw >= low && raw <= high) {
                    take(scaling.apply(raw));
                }
            }
            case VALUE -> take(otherwise);
            case SAFE -> take(safe);
            case NOTHING -> {}
        }
    }

    private void take(long translated) {
        came = true;
        next = translated;
    }

    void look() {
        if (came) {
            came = false;
            value = next;
            age = 0;
            held = hold;
        } else if (age != NEVER) {
            age = Translator.counted(age);
        }
    }

    Content content() {
        if (age == NEVER || age >= timeOut && held == 0) {
            return Content.SAFE;
        }
        return age < timeOut ? Content.LIVE : Content.HELD;
    }

    long put(long word) {
        return target.put(word, content() == Content.SAFE ? safe : value);
    }

    /** A frame with {@link #put} left. */
    void sent() {
        Content content = content();
        sent[content.ordinal()]++;
        if (content == Content.HELD) {
            held--;
        }
    }

    long count(Content content) {
        return sent[content.ordinal()];
    }
}
