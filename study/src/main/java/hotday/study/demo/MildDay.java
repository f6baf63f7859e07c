package hotday.study.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A commissioning drive on a mild day: warm-up at idle, stop-and-go, A/C on and off at rest, steady speeds, a climb and
 * idling after it. The stop-and-go part is drawn from the seed.
 */
final class MildDay {
    private static final double KMH = 1.0 / 3.6;

    private MildDay() {}

    static List<Leg> legs(long seed, boolean withClimb) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Leg> legs = new ArrayList<>();
        legs.add(new Leg("warm-up at idle", 180, 0, 0, false));
        city(legs, random, 600);
        legs.add(new Leg("80 km/h", 300, 80 * KMH, 0, false));
        legs.add(new Leg("idle, A/C off", 180, 0, 0, false));
        legs.add(new Leg("idle, A/C on", 360, 0, 0, true));
        legs.add(new Leg("110 km/h, A/C on", 300, 110 * KMH, 0, true));
        if (withClimb) {
            legs.add(new Leg("6 % climb at 70 km/h", 420, 70 * KMH, 0.06, true));
            legs.add(new Leg("idle after the climb", 240, 0, 0, true));
        } else {
            city(legs, random, 420);
        }
        legs.add(new Leg("idle, A/C off", 120, 0, 0, false));
        return legs;
    }

    private static void city(List<Leg> legs, SplittableRandom random, double seconds) {
        double left = seconds;
        while (left > 0) {
            double drive = random.nextDouble(20, 60);
            double stop = random.nextDouble(5, 30);
            legs.add(new Leg("city", drive, random.nextDouble(25, 60) * KMH, random.nextDouble(-0.01, 0.02), false));
            legs.add(new Leg("stop", stop, 0, 0, false));
            left -= drive + stop;
        }
    }
}
