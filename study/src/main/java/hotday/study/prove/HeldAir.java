package hotday.study.prove;

import hotday.core.finding.Finding;
import hotday.vehicle.plant.Input;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.hipparchus.random.Well19937c;

/**
 * What the fitted runs showed of air that something now and then holds back in front of the vehicle, and nobody recorded: flaps in the grille, a test bed's blower that
 * does not follow.
 *
 * @param share of the time at {@code leastSpeed} or more during which it was held back, 0..1
 * @param spell mean duration at such speeds, s
 * @param between mean duration of the time at such speeds between spells, s
 * @param leastSpeed below which it hardly ever was, m/s: flaps close at speed to save drag
 */
record HeldAir(double share, double spell, double between, double leastSpeed) {
    /** Held back, share of the equivalent speed: two levels 0.45 apart explain what was seen; see docs/physics/prove.md. */
    static final double SHARE = 0.45;

    private static final double SLOW = 0.15; // quantile of the speeds in spells

    static final HeldAir NEVER = new HeldAir(0.0, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, 0.0);

    boolean seen() {
        return share > 0.0;
    }

    /** Of the runs as the search left them. */
    static HeldAir of(List<RunData> runs) {
        double least = leastSpeed(runs);
        double held = 0.0;
        double open = 0.0;
        int spells = 0;
        int gaps = 0;
        for (RunData run : runs) {
            for (int i = 0; i < run.size(); i++) {
                boolean closed = run.input(i, Input.FRONT_HELD) > 0.0;
                boolean may = run.input(i, Input.SPEED) >= least;
                held += closed && may ? run.step() : 0.0;
                open += !closed && may ? run.step() : 0.0;
            }
            int found = run.frontHeldSpells().size();
            spells += found;
            gaps += found + 1;
        }
        return spells == 0 ? NEVER : new HeldAir(held / (held + open), held / spells, open / gaps, least);
    }

    /** Slower than this air was hardly ever held back, m/s. */
    private static double leastSpeed(List<RunData> runs) {
        double[] speeds = runs.stream()
                .flatMapToDouble(run -> IntStream.range(0, run.size())
                        .filter(i -> run.input(i, Input.FRONT_HELD) > 0.0)
                        .mapToDouble(i -> run.input(i, Input.SPEED)))
                .sorted()
                .toArray();
        return speeds.length == 0 ? 0.0 : Quantile.of(speeds, SLOW);
    }

    /** Whether two searches found the same. */
    static boolean same(List<RunData> some, List<RunData> others) {
        for (int i = 0; i < some.size(); i++) {
            if (!Arrays.equals(some.get(i).inputs(), others.get(i).inputs())) {
                return false;
            }
        }
        return true;
    }

    /** One way it may go in a run nobody has looked at: spells and times between them of random length. */
    RunData in(RunData run, Well19937c random) {
        boolean[] held = new boolean[run.size()];
        boolean now = random.nextDouble() < share;
        for (int i = 0; i < held.length; i++) {
            held[i] = now && run.input(i, Input.SPEED) >= leastSpeed;
            if (random.nextDouble() < run.step() / (now ? spell : between)) {
                now = !now;
            }
        }
        return run.withFrontHeld(held);
    }

    static List<Finding> findings(List<RunData> runs) {
        List<Finding> out = new ArrayList<>();
        for (RunData run : runs) {
            List<double[]> spells = run.frontHeldSpells();
            if (!spells.isEmpty()) {
                out.add(Finding.warning(
                                "front-air-held",
                                "run " + run.name() + ": coolant behaves as if much less air reached the radiator "
                                        + text(spells)
                                        + "; the fit takes it so. Look for flaps in the grille, something in front, or the blower of a test bed.")
                        .with("run", run.name())
                        .with(
                                "spells_s",
                                spells.stream().map(s -> List.of(s[0], s[1])).toList()));
            }
        }
        return out;
    }

    private static String text(List<double[]> spells) {
        List<String> words = new ArrayList<>();
        for (double[] s : spells) {
            words.add(String.format(Locale.ROOT, "from %.0f to %.0f s", s[0], s[1]));
        }
        return String.join(", ", words);
    }
}
