package hotday.vehicle.plant;

/**
 * Why a vehicle was not seen to come to rest.
 *
 * @param state the part that shows it most
 * @param amount by reason: its temperature, K; its swing, K or share; its rate, K or share per second
 */
public record Unrest(Reason reason, State state, double amount) {
    /** No rest hotter than this is searched, K. */
    public static final double HOTTEST = 900.0;

    /** What was seen. */
    public enum Reason {
        /** Something passes the hottest that is searched and goes on heating: the heat cannot leave. */
        RUNS_AWAY("runs-away"),
        /** Something swings to and fro for as long as was watched. */
        HUNTS("hunts"),
        /** Neither: still on its way when the search ended. */
        NOT_FOUND("not-found");

        private final String id;

        Reason(String id) {
            this.id = id;
        }

        public String id() {
            return id;
        }
    }
}
