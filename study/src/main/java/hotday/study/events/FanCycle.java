package hotday.study.events;

import java.util.List;

/**
 * One start of the fan with what followed.
 *
 * @param start second of the start
 * @param startCoolant gauge at that moment, K
 * @param peak second of the last highest coolant
 * @param peakCoolant K
 * @param stop second of the stop; -1 when it was not seen
 * @param stopCoolant K; NaN when not seen
 * @param trough where the pull-down ended, K; NaN when not seen
 * @param rate of the first {@link Swing#LEAST} of the fall, K/s
 * @param channels with a step of electrical load at the start
 * @param stopChannels with a step back at the stop
 * @param proof how it was told
 */
record FanCycle(
        int start,
        double startCoolant,
        int peak,
        double peakCoolant,
        int stop,
        double stopCoolant,
        double trough,
        double rate,
        int channels,
        int stopChannels,
        Proof proof) {

    enum Proof {
        /** Standing or creeping: nothing but a fan cools like this. */
        STILL(1.0, "at standstill or creeping"),
        /** Moving slowly, from the temperature at which the fan starts at standstill. */
        LIKE_STILL(0.55, "while moving, from where it starts at standstill"),
        /** On the road, deep, with load and speed as before. */
        ROAD(0.4, "on the road with load and speed as before"),
        /** On the road, deep, from where such a one started. */
        LIKE_ROAD(0.3, "on the road, from where others start");

        final double most;
        final String where;

        Proof(double most, String where) {
            this.most = most;
            this.where = where;
        }
    }

    boolean still() {
        return proof == Proof.STILL;
    }

    /** @param all cycles of the vehicle */
    double confidence(List<FanCycle> all) {
        double fall = Math.min(0.85, 1.0 - Math.exp(-rate / 0.2));
        double doubt = (1.0 - fall) * Math.pow(0.6, channels) * (alike(all) >= 3 ? 0.7 : 1.0);
        return Math.min(0.98, proof.most * (1.0 - doubt));
    }

    private long alike(List<FanCycle> all) {
        return all.stream()
                .filter(c -> Math.abs(c.peakCoolant - peakCoolant) <= 1.5)
                .count();
    }
}
