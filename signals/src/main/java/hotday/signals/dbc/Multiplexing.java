package hotday.signals.dbc;

import java.util.List;

/**
 * When a signal is in its message.
 *
 * @param multiplexor whether other signals depend on this one
 * @param by name of the signal that this one depends on; empty when it is always there
 * @param values raw values of that signal for which this one is there
 * @param clear false when the file does not say it, or says it in contradiction: such a signal is never taken from a frame
 */
public record Multiplexing(boolean multiplexor, String by, List<ValueRange> values, boolean clear) {
    static final Multiplexing NONE = new Multiplexing(false, "", List.of(), true);
    static final Multiplexing MULTIPLEXOR = new Multiplexing(true, "", List.of(), true);

    public Multiplexing {
        values = List.copyOf(values);
    }

    static Multiplexing unclear(boolean multiplexor) {
        return new Multiplexing(multiplexor, "", List.of(), false);
    }

    /** Whether the signal is in every frame of its message. */
    public boolean always() {
        return clear && by.isEmpty();
    }
}
