package hotday.signals.channel;

/** What is known about an actuator over a whole run, from outside the recording. */
public enum Fact {
    ON,
    OFF,
    UNKNOWN
}
