package hotday.study.prove;

/** Quantiles of a sorted sample, linear between order statistics (type 7 of Hyndman and Fan 1996). */
final class Quantile {
    private Quantile() {}

    static double of(double[] sorted, double share) {
        double at = share * (sorted.length - 1);
        int below = (int) Math.floor(at);
        int above = Math.min(sorted.length - 1, below + 1);
        if (at == below || sorted[below] == sorted[above]) {
            return sorted[below];
        }
        return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
    }
}
