package hotday.study.prove;

/** An actuator that moves the coolant and that a recording may leave out. */
public enum HiddenState {
    FAN("fan", "electric fan"),
    HEATER("heater", "cabin heater"),
    AIR_CONDITIONING("air_conditioning", "air conditioning");

    private final String id;
    private final String title;

    HiddenState(String id, String title) {
        this.id = id;
        this.title = title;
    }

    public String id() {
        return id;
    }

    public String title() {
        return title;
    }
}
