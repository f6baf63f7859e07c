package hotday.study.prove;

/**
 * What the runs said about one unknown.
 *
 * @param id for programs
 * @param label for people
 * @param unit SI unit of the three values
 * @param sheet what the sheet stood for
 * @param priorLow, priorHigh 90 % of the prior
 * @param fitted best value
 * @param low, high 90 % of the posterior
 * @param shift fitted less sheet in prior standard deviations
 * @param narrowed posterior over prior standard deviation: near 1 when the runs said nothing
 */
public record ParameterReport(
        String id,
        String label,
        String unit,
        double sheet,
        double priorLow,
        double priorHigh,
        double fitted,
        double low,
        double high,
        double shift,
        double narrowed) {

    /** Narrower than this counts as told by the runs. */
    static final double INFORMED = 0.7;

    /** Whether the runs told something of their own about it. */
    public boolean informed() {
        return narrowed < INFORMED;
    }
}
