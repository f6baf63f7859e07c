package hotday.vehicle.controller;

/** Why the compressor is not engaged; the order is that of docs/controller.md and the first that stands is named. */
public enum Hold {
    /** No request message for too long. */
    TIME_OUT("timeout", true),
    /** The message says no. */
    REQUEST("request", false),
    /** Engine not running. */
    ENGINE("engine", true),
    /** Engine just started. */
    START_DELAY("start", true),
    /** Engine cranking or about to stall. */
    SPEED("speed", true),
    /** Evaporator about to freeze. */
    FREEZE("freeze", false),
    /** Head pressure too high. */
    HIGH_PRESSURE("high", true),
    /** Suction pressure too low. */
    LOW_PRESSURE("low", true),
    /** All power to the wheels for a moment. */
    THROTTLE("throttle", false),
    /** Coolant too hot. */
    COOLANT("coolant", false),
    /** The least time off still runs. */
    LEAST_OFF("leastoff", false),
    /** Announced, engages shortly. */
    LEAD("lead", false),
    /** Nothing: engaged. */
    NONE("none", false);

    private final String label;
    private final boolean stronger;

    Hold(String label, boolean stronger) {
        this.label = label;
        this.stronger = stronger;
    }

    /** Short word for tables and logs. */
    public String label() {
        return label;
    }

    /** Ends the least time on. */
    public boolean stronger() {
        return stronger;
    }
}
