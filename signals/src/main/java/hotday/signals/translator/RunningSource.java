package hotday.signals.translator;

import hotday.signals.check.CounterStep;
import hotday.signals.check.RollingCounter;
import hotday.signals.translator.Program.Counter;
import hotday.signals.translator.Program.Guard;
import hotday.signals.translator.Program.Incoming;
import hotday.signals.translator.Translator.Reception;

/** A message listened to: whether a frame of it counts, and who takes values from it. */
final class RunningSource {
    private final Guard guard;
    private final int guardedTo;
    private final Counter counter;
    private final RollingCounter follow;
    private final RunningLine[] lines;
    private final long[] receptions = new long[Reception.values().length];

    RunningSource(Incoming message, RunningLine[] lines) {
        this.guard = message.checksum().orElse(null);
        this.guardedTo = message.checksum().map(Guard::lastByte).orElse(0);
        this.counter = message.counter().orElse(null);
        this.follow = counter == null ? null : new RollingCounter(counter.values() - 1, Integer.MAX_VALUE);
        this.lines = lines;
    }

    Reception receive(byte[] data, int from, int length) {
        long word = Field.word(data, from, length);
        Reception reception = judge(word, data, from, length);
        receptions[reception.ordinal()]++;
        if (reception == Reception.TAKEN) {
            for (RunningLine line : lines) {
                line.receive(word, length);
            }
        }
        return reception;
    }

    /** The checksum first: a frame damaged on its way must not move the counter. */
    private Reception judge(long word, byte[] data, int from, int length) {
        if (guard != null && !isWhole(word, data, from, length)) {
            return Reception.WRONG_CHECKSUM;
        }
        return counter == null || counts(word, length) ? Reception.TAKEN : Reception.WRONG_COUNTER;
    }

    /** A frame that ends before all of it is there is not. */
    private boolean isWhole(long word, byte[] data, int from, int length) {
        return guardedTo < length && guard.field().raw(word) == guard.value(data, from);
    }

    private boolean counts(long word, int length) {
        if (!counter.field().reaches(length)) {
            return false;
        }
        CounterStep step = follow.take(counter.index(counter.field().raw(word)));
        return step == CounterStep.FIRST || step == CounterStep.NEXT || step == CounterStep.SKIPPED;
    }

    long count(Reception reception) {
        return receptions[reception.ordinal()];
    }

    long lost() {
        return follow == null ? 0 : follow.lost();
    }
}
