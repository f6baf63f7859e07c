package hotday.study.findings;

/** Situations of a run in which a car is looked at. */
enum Window {
    COLD_SOAK("before the engine started", 0.0),
    IDLE_QUIET("at idle, A/C and fan off", 30.0),
    IDLE_FAN("at idle, A/C off, fan told to run slowly", 15.0),
    IDLE_FULL("at idle, A/C off, fan told to run fast", 15.0),
    IDLE_COOLED("at idle with A/C", 60.0),
    IDLE_LOADED("at idle with A/C, fan told to run fast", 30.0),
    ROAD("on the road without A/C", 40.0),
    ROAD_COOLED("on the road with A/C", 60.0),
    CLIMB("under high load", 40.0),
    KEY_OFF("after the engine was switched off", 0.0),
    ALL("in the whole run", 0.0),
    OTHER("", 0.0);

    private final String words;
    private final double settle;

    Window(String words, double settle) {
        this.words = words;
        this.settle = settle;
    }

    String words() {
        return words;
    }

    /** Time in the situation before it counts, s. */
    double settle() {
        return settle;
    }
}
