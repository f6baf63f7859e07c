package hotday.vehicle.cases;

/** What must hold for a case to hold. */
public enum Limit {
    /** Engine-out coolant below the sheet's limit. */
    COOLANT("coolant", "coolant temperature"),
    /** Coolant below boiling at the cap and altitude, by the sheet's margin. */
    BOILING("boiling", "boiling at the cap");

    private final String id;
    private final String title;

    Limit(String id, String title) {
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
