package hotday.signals.frame;

/**
 * Takes samples of signals, whoever decoded them. A signal gets a number once, when it is met first, and is called by it
 * from then on, so that a sample allocates nothing.
 *
 * <pre>{@code
 * if (speed < 0) {
 *     speed = samples.signal("EEC1.EngineSpeed@00", "rpm");
 * }
 * samples.sample(frame.time(), speed, 650.0, SampleState.VALID);
 * }</pre>
 */
public interface SampleSink {
    /**
     * The number of a signal; the same for the same name.
     *
     * @param name what people read, one for everything on a bus that must be kept apart (message, sender)
     * @param unit as the source spells it; empty when it has none
     */
    int signal(String name, String unit);

    /**
     * One value.
     *
     * @param time s, of the recording's own clock; NaN when it has none
     * @param signal from {@link #signal}
     * @param value in the unit of the signal; NaN unless the state is {@link SampleState#VALID}
     * @param state what the sender said about it
     */
    void sample(double time, int signal, double value, SampleState state);

    /** A value that is no number: an identification, a word. */
    void text(double time, int signal, String value);
}
