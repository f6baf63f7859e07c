package hotday.vehicle.idle;

/**
 * Announcement of a load to the air path.
 *
 * @param torque added to what the governor asks of the air, N m
 * @param lead before the load comes on, s, -1 to 1; below 0 it comes late
 */
public record FeedForward(double torque, double lead) {
    /** The load comes unannounced. */
    public static final FeedForward NONE = new FeedForward(0.0, 0.0);

    public FeedForward {
        if (!Double.isFinite(torque)) {
            throw new IllegalArgumentException("feed-forward " + torque + " N m must be finite");
        }
        if (!(lead >= -IdleStudy.ENGAGED && lead <= IdleStudy.ENGAGED)) {
            throw new IllegalArgumentException("feed-forward lead " + lead + " s must be from -1 to 1");
        }
    }
}
