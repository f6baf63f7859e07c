package hotday.core.solve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;

/**
 * Looks for good starts of a fit: draws from the priors, keeps the best. The first draw is always the start written in
 * the parameters, so the answer is never worse than that. Parameters without a prior keep their start. Draw {@code i}
 * depends on the seed and on {@code i} alone: same seed, same starts, whatever the number of threads.
 */
public final class PriorSearch {
    private PriorSearch() {}

    /**
     * A set of start values.
     *
     * @param cost data and priors together, finite
     * @param draw 0 is the start written in the parameters
     */
    @SuppressWarnings("ArrayRecordComponent") // handed over, not kept: equality is not asked for
    public record Start(double[] parameters, double cost, int draw) {
        List<Parameter> apply(List<Parameter> to) {
            List<Parameter> out = new ArrayList<>();
            for (int i = 0; i < to.size(); i++) {
                out.add(to.get(i).withStart(parameters[i]));
            }
            return out;
        }
    }

    /**
     * Draws, evaluates and sorts.
     *
     * @param draws to evaluate, at least 1; 100 to 300 are usual
     * @param keep at most this many starts
     * @param threads 1..256, each with a {@link Residuals} of its own
     * @param cancelled asked before every draw; the draws finished until then count
     * @return best first, fewer than {@code keep} (even none) when the model cannot be evaluated at the draws
     */
    public static List<Start> best(
            Supplier<? extends Residuals> factory,
            List<Parameter> parameters,
            int draws,
            int keep,
            long seed,
            int threads,
            BooleanSupplier cancelled) {
        Start[] found = new Start[draws];
        AtomicInteger next = new AtomicInteger();
        Runnable work = () -> {
            Residuals model = factory.get();
            double[] out = new double[model.size()];
            for (int i = next.getAndIncrement(); i < draws && !cancelled.getAsBoolean(); i = next.getAndIncrement()) {
                found[i] = evaluate(model, parameters, draw(parameters, seed, i), out, i);
            }
        };
        int count = Math.max(1, Math.min(threads, draws));
        try (Workers workers = new Workers(count)) {
            workers.all(Collections.nCopies(count, work));
        }
        List<Start> finite = new ArrayList<>();
        for (Start s : found) {
            if (s != null && Double.isFinite(s.cost())) {
                finite.add(s);
            }
        }
        finite.sort(Comparator.comparingDouble(Start::cost).thenComparingInt(Start::draw));
        return List.copyOf(finite.subList(0, Math.min(keep, finite.size())));
    }

    /** Draw {@code index} of this seed; draw 0 is the start. */
    static double[] draw(List<Parameter> parameters, long seed, int index) {
        RandomGenerator random = new Well19937c(new int[] {(int) (seed >>> 32), (int) seed, index});
        double[] out = new double[parameters.size()];
        for (int j = 0; j < out.length; j++) {
            Parameter p = parameters.get(j);
            boolean drawn = index > 0 && p.hasPrior();
            out[j] = drawn ? p.priorMean() + p.priorSd() * random.nextGaussian() : p.start();
        }
        return out;
    }

    private static Start evaluate(Residuals model, List<Parameter> parameters, double[] at, double[] out, int draw) {
        model.residuals(at.clone(), out);
        double cost = ScaledModel.squares(out, out.length);
        for (int j = 0; j < at.length; j++) {
            Parameter p = parameters.get(j);
            if (p.hasPrior()) {
                double off = (at[j] - p.priorMean()) / p.priorSd();
                cost += off * off;
            }
        }
        return new Start(at, cost, draw);
    }
}
