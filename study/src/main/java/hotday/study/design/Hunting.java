package hotday.study.design;

/** When a fan or a clutch that comes and goes is more than anybody should have to hear; common practice, no source. */
final class Hunting {
    /** Starts of the fan in an hour. */
    static final double STARTS = 20.0;
    /** Cycles in an hour of a fan that swings. */
    static final double CYCLES = 30.0;
    /** Share of full speed by which it swings then. */
    static final double SWING = 0.15;
    /** Turns in an hour between coolant and air conditioning that swing the fan so. */
    static final double TURNS = 20.0;
    /** Engagements of the compressor in an hour: two a minute. */
    static final double CLUTCH = 120.0;

    private Hunting() {}

    static boolean starts(Passage p) {
        return p.kase().steady() && p.startsPerHour() > STARTS;
    }

    static boolean swings(Passage p) {
        return p.kase().steady() && p.cyclesPerHour() > CYCLES && p.fanSwing() > SWING;
    }

    static boolean turns(Passage p) {
        return p.kase().steady() && p.turnsPerHour() > TURNS && p.fanSwing() > SWING;
    }

    static boolean clutch(Passage p) {
        return p.kase().steady() && p.clutchPerHour() > CLUTCH;
    }

    /** How much too much, for a search that is to find its way out: 0 where nothing hunts, about 1 where it is twice what is bearable. */
    static double excess(Passage p) {
        double starts = starts(p) ? p.startsPerHour() / STARTS - 1.0 : 0.0;
        double swings = swings(p) ? p.fanSwing() / SWING - 1.0 : 0.0;
        return starts + swings;
    }
}
