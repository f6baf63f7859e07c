package hotday.signals.bus;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** No frame of a simulated bus is later than the bound, whatever the offsets and jitters; and the bound is not idle. */
class SimulatedBusTest {
    private static final long MS = 1_000_000;
    private static final long[] PERIODS = {5, 10, 10, 20, 20, 25, 40, 50, 100, 100, 200};
    private static final long[] BIT_TIMES = {2_000, 4_000, 8_000};

    private int frames;
    private int reached;
    private double sum;
    private double closest;

    @Test
    void threeHundredSetsStayWithinTheBound() {
        sets(300, 11);
        assertThat(reached).isPositive();
    }

    @Test
    @Tag("slow")
    void tenThousandSetsStayWithinTheBound() {
        sets(10_000, 12);
        assertThat(reached).isPositive();
    }

    private void sets(int count, long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < count; i++) {
            set(random, i);
        }
        System.out.printf(
                "%d sets, %d frames: seen up to %.4f of the bound, %.3f on average, the bound itself %d times%n",
                count, frames, closest, sum / frames, reached);
    }

    private void set(Random random, int number) {
        long bitTime = BIT_TIMES[random.nextInt(BIT_TIMES.length)];
        List<Traffic> traffic = traffic(random, bitTime);
        Schedule bus = Schedule.of(traffic, bitTime);
        long[] seen =
                new BusSimulation(traffic, random, number % 2 == 0).run(offsets(random, traffic, number), 1000 * MS);
        for (int i = 0; i < traffic.size(); i++) {
            long bound = bus.response(i);
            assertThat(seen[i]).as("set %d, frame %d of %s", number, i, traffic).isLessThanOrEqualTo(bound);
            if (bound != Schedule.UNBOUNDED) {
                count((double) seen[i] / bound);
            }
        }
    }

    private void count(double share) {
        frames++;
        sum += share;
        closest = Math.max(closest, share);
        reached += share == 1 ? 1 : 0;
    }

    private static List<Traffic> traffic(Random random, long bitTime) {
        List<Traffic> traffic = new ArrayList<>();
        int size = 2 + random.nextInt(24);
        for (int i = 0; i < size; i++) {
            long period = PERIODS[random.nextInt(PERIODS.length)] * MS;
            boolean extended = random.nextBoolean();
            int id = extended ? i << 18 | random.nextInt(1 << 18) : i;
            traffic.add(new Traffic(
                    Traffic.priority(id, extended),
                    FrameLength.longest(extended, random.nextInt(9)) * bitTime,
                    period,
                    random.nextInt(3) == 0 ? 0 : random.nextLong(period)));
        }
        return traffic;
    }

    /** Every third set begins as badly as it can for the middle frame: all at once, a lower one just before it. */
    private static long[] offsets(Random random, List<Traffic> traffic, int number) {
        long[] first = new long[traffic.size()];
        long late = traffic.stream().mapToLong(Traffic::jitter).max().orElse(0);
        for (int i = 0; i < first.length; i++) {
            Traffic t = traffic.get(i);
            boolean lower = i > first.length / 2;
            first[i] = number % 3 != 0 ? random.nextLong(t.period()) : late - t.jitter() + (lower ? 0 : 1);
        }
        return first;
    }
}
