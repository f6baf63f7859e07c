package hotday.vehicle.idle;

/**
 * What a load did to the idle speed. Speeds in rad/s, times in s from the start of the run.
 *
 * @param set speed wanted
 * @param lowest speed; below some 300 rpm (from memory) the engine would have stalled, which the run does not know
 * @param lowestTime when
 * @param highest speed
 * @param highestTime when
 * @param settling from the load to the last instant more than 25 rpm off, s; 0 if never
 * @param trace speed every {@link IdleStudy#STEP} from 0 on
 */
public record IdleRun(
        double set,
        double lowest,
        double lowestTime,
        double highest,
        double highestTime,
        double settling,
        Trace trace) {
    private static final double RPM = Math.PI / 30.0;
    private static final double MOST_SAG = 100.0 * RPM;
    private static final double MOST_SAG_SHARE = 0.12;
    private static final double MOST_FLARE = 150.0 * RPM;
    private static final double LONGEST_SETTLING = 2.5;

    /** Speeds at even steps of time; immutable. */
    public static final class Trace {
        private final double[] speed;

        Trace(double[] speed) {
            this.speed = speed;
        }

        public int size() {
            return speed.length;
        }

        /** rad/s at {@code index} steps. */
        public double speed(int index) {
            return speed[index];
        }
    }

    /** rad/s below the set speed, 0 or more. */
    public double sag() {
        return set - lowest;
    }

    /** rad/s above the set speed, 0 or more. */
    public double flare() {
        return highest - set;
    }

    /**
     * Whether a driver would not complain (common practice, no source): sag at most 100 rpm and 12 % of the set speed, flare at most 150 rpm, within
     * 25 rpm after 2.5 s.
     */
    public boolean acceptable() {
        return sag() <= Math.min(MOST_SAG, MOST_SAG_SHARE * set)
                && flare() <= MOST_FLARE
                && settling <= LONGEST_SETTLING;
    }
}
