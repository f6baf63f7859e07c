package hotday.study.events;

/** How fast coolant goes over a stretch of a run, and with how much heat. */
final class Slope {
    private Slope() {}

    /** True when coolant is missing or the engine stands somewhere. */
    static boolean gaps(Seconds run, int from, int to) {
        for (int i = from; i < to; i++) {
            if (Double.isNaN(run.coolant[i]) || !run.runs(i)) {
                return true;
            }
        }
        return false;
    }

    /** Least squares over a stretch without gaps, K/s. */
    static double of(Seconds run, int from, int to) {
        double middle = 0.5 * (from + to - 1);
        double product = 0.0;
        double square = 0.0;
        for (int i = from; i < to; i++) {
            product += (i - middle) * run.coolant[i];
            square += (i - middle) * (i - middle);
        }
        return product / square;
    }

    /** In proportion to the fuel burnt, as far as the channels tell; NaN when they do not. */
    static double heat(Seconds run, int from, int to) {
        double n = Middle.mean(run.engineSpeed, from, to);
        double load = Middle.mean(run.load, from, to);
        double filling = Double.isNaN(load) ? Middle.mean(run.manifold, from, to) : load;
        return Double.isNaN(filling) ? n : n * filling;
    }
}
