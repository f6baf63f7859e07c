package hotday.core.finding;

/** How much a finding matters to the person reading it. */
public enum Severity {
    /** Worth knowing; nothing to do. */
    NOTE,
    /** The answer stands but leans on something the reader should look at. */
    WARNING,
    /** The input cannot be used as it is, or a limit does not hold. */
    FAULT
}
