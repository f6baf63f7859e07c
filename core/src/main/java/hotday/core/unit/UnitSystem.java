package hotday.core.unit;

/** What somebody wants to read. */
public enum UnitSystem {
    METRIC,
    US,
    /** US gauges in a metric shop: degF and psi, the rest metric. */
    MIXED
}
