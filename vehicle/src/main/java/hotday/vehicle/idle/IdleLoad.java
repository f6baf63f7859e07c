package hotday.vehicle.idle;

/**
 * A load that comes on at {@link IdleStudy#ENGAGED}: torque (1 - exp(-t / lag)).
 *
 * @param torque at the crankshaft, N m; below 0 when the load is dropped
 * @param lag s, at least {@link IdleStudy#STEP}; a clutch takes about 0.04 s (common practice, no source), a fan as long as it is ramped
 */
public record IdleLoad(double torque, double lag) {
    public IdleLoad {
        if (!Double.isFinite(torque)) {
            throw new IllegalArgumentException("idle load " + torque + " N m must be finite");
        }
        if (!(lag >= IdleStudy.STEP)) {
            throw new IllegalArgumentException("idle load lag " + lag + " s must be " + IdleStudy.STEP + " s or more");
        }
    }
}
