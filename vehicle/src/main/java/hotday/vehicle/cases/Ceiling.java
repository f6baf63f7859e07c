package hotday.vehicle.cases;

/**
 * The ambient ceiling of one case.
 *
 * @param kase the case
 * @param ambient highest outside temperature at which every limit holds, K; the end of the searched range when {@code
 *     reach} is not {@link Reach#FOUND}
 * @param reach whether the answer lies in the searched range
 * @param binding the limit that gives way first
 * @param runnerUp the limit that would give way next
 * @param again true when a limit holds again above the ceiling, so that the first crossing is reported
 * @param coolant at the ceiling, K
 * @param boiling temperature at cap and altitude, K
 * @param airToBoil boiling temperature at the cap less coolant plus ambient, at the design ambient, K (difference)
 */
public record Ceiling(
        Case kase,
        double ambient,
        Reach reach,
        Limit binding,
        Limit runnerUp,
        boolean again,
        double coolant,
        double boiling,
        double airToBoil) {

    /** Where the answer lies. */
    public enum Reach {
        FOUND,
        /** Everything still holds at the upper end of the search. */
        ABOVE_RANGE,
        /** Something fails already at the lower end. */
        BELOW_RANGE
    }
}
