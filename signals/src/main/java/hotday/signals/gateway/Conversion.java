package hotday.signals.gateway;

/**
 * A raw value of one signal as a raw value of another: raw * factor + offset in doubles, each operation rounded by
 * itself, then to the nearest whole number, halves away from zero, then cut off at the limits of the target.
 */
record Conversion(double factor, double offset, double low, double high) {
    /** @param link from the source's unit to the target's, whatever is typed on top of it included */
    static Conversion of(Scale source, UnitLink link, Scale target) {
        double factor = source.factor() * link.factor() / target.factor();
        double offset = (link.apply(source.offset()) - target.offset()) / target.factor();
        return new Conversion(factor, offset, target.rawLow(), target.rawHigh());
    }

    /** Whole, and within the limits of the target. */
    double raw(double raw) {
        return Math.max(low, Math.min(high, rounded(raw * factor + offset)));
    }

    /** To the nearest whole number, halves away from zero. */
    static double rounded(double value) {
        double down = Math.floor(Math.abs(value));
        double whole = Math.abs(value) - down >= 0.5 ? down + 1 : down;
        return Math.copySign(whole, value);
    }
}
