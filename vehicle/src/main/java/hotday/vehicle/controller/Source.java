package hotday.vehicle.controller;

/** Which rule decides the demand at present. */
public enum Source {
    NONE("none"),
    COOLANT("coolant"),
    GEARBOX("gearbox"),
    AIR_CONDITIONING("ac"),
    FLOOR("floor"),
    AFTER_RUN("afterrun"),
    CHARGE_AIR("charge");

    private final String label;

    Source(String label) {
        this.label = label;
    }

    /** Short word for tables and logs. */
    public String label() {
        return label;
    }
}
