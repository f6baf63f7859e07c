package hotday.study.findings;

import hotday.vehicle.plant.Input;
import java.util.Arrays;

/** How a signal in a situation becomes one number. NaN where there is too little of it. */
enum Stat {
    MEAN {
        @Override
        double of(double[] x, Windows w, Window window, double at) {
            double sum = 0.0;
            int n = 0;
            for (int i = 0; i < x.length; i++) {
                if (w.in(window, i)) {
                    sum += x[i];
                    n++;
                }
            }
            return n * w.run().step() < LEAST && window != Window.COLD_SOAK ? Double.NaN : sum / n;
        }
    },
    HIGHEST {
        @Override
        double of(double[] x, Windows w, Window window, double at) {
            double most = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < x.length; i++) {
                most = w.in(window, i) ? Math.max(most, x[i]) : most;
            }
            return Double.isInfinite(most) ? Double.NaN : most;
        }
    },
    /** Change per minute inside the stretches. */
    SLOPE {
        @Override
        double of(double[] x, Windows w, Window window, double at) {
            double change = 0.0;
            double time = 0.0;
            for (int i = 1; i < x.length; i++) {
                if (w.in(window, i) && w.in(window, i - 1)) {
                    change += x[i] - x[i - 1];
                    time += w.run().step();
                }
            }
            return time < LEAST ? Double.NaN : 60.0 * change / time;
        }
    },
    /** So many seconds after a cold start. */
    AFTER_START {
        @Override
        double of(double[] x, Windows w, Window window, double at) {
            int row = w.start() + (int) Math.round(at / w.run().step());
            return w.cold() && row <= Math.min(w.stop(), x.length - 1) ? x[row] : Double.NaN;
        }
    },
    /** Change from the last moment of the running engine to so many seconds later. */
    AFTER_STOP {
        @Override
        double of(double[] x, Windows w, Window window, double at) {
            int row = w.stop() + (int) Math.round(at / w.run().step());
            return w.stop() > 0 && row < x.length ? x[row] - x[w.stop()] : Double.NaN;
        }
    },
    /** Root mean square of what is faster than half a minute. */
    ROUGHNESS {
        @Override
        double of(double[] x, Windows w, Window window, double at) {
            int half = (int) Math.round(HALF_WINDOW / w.run().step());
            double sum = 0.0;
            int n = 0;
            for (int i = w.start() + half; i + half <= w.stop(); i += 2) {
                double straight = 0.5 * (x[i - half] + x[i + half]);
                sum += (x[i] - straight) * (x[i] - straight);
                n++;
            }
            return n * w.run().step() < LEAST ? Double.NaN : Math.sqrt(sum / n);
        }
    },
    /** Most turns of direction in four minutes in which nobody switched or drove off, of swings of 35 % and more. */
    TURNS {
        @Override
        double of(double[] x, Windows w, Window window, double at) {
            int width = (int) Math.round(FOUR_MINUTES / w.run().step());
            int most = 0;
            int from = 0;
            for (int i = 1; i < x.length; i++) {
                if (w.switched(i)) {
                    from = i + (int) Math.round(SETTLED / w.run().step());
                }
                if (i == x.length - 1 || w.switched(i + 1) || i - from >= width) {
                    most = Math.max(most, turns(x, from, i));
                    from = i - from >= width ? from + width / 2 : from;
                }
            }
            return most;
        }
    },
    /** Mean fall behind the moments in which the compressor comes in at rest. */
    DIP {
        @Override
        double of(double[] x, Windows w, Window window, double at) {
            double sum = 0.0;
            int n = 0;
            int back = (int) Math.round(5.0 / w.run().step());
            int ahead = (int) Math.round(3.0 / w.run().step());
            for (int i = back + 1; i + ahead < x.length; i++) {
                boolean engaged = w.run().input(i, Input.COMPRESSOR) > 0.5
                        && w.run().input(i - 1, Input.COMPRESSOR) <= 0.5
                        && w.run().input(i, Input.SPEED) < 0.1
                        && w.run().input(i, Input.ENGINE_SPEED) > 0.0
                        && w.run().input(i - back, Input.SPEED) < 0.1;
                if (engaged) {
                    double[] before = Arrays.copyOfRange(x, i - back, i - 1);
                    Arrays.sort(before);
                    double lowest = Double.POSITIVE_INFINITY;
                    for (int j = i - 1; j <= i + ahead; j++) {
                        lowest = Math.min(lowest, x[j]);
                    }
                    sum += before[before.length / 2] - lowest;
                    n++;
                }
            }
            return n == 0 ? Double.NaN : sum / n;
        }
    };

    private static final double LEAST = 15.0; // s
    private static final double HALF_WINDOW = 8.0; // s
    private static final double SWING = 0.35;
    private static final double FOUR_MINUTES = 240.0;
    private static final double SETTLED = 20.0; // s

    private static int turns(double[] x, int from, int to) {
        int n = 0;
        boolean rising = true;
        double extreme = from < x.length ? x[from] : 0.0;
        for (int i = from; i <= to; i++) {
            if (rising ? x[i] >= extreme : x[i] <= extreme) {
                extreme = x[i];
            } else if (Math.abs(x[i] - extreme) > SWING) {
                n++;
                rising = !rising;
                extreme = x[i];
            }
        }
        return n;
    }

    /** @param at s, where the number belongs to one moment */
    abstract double of(double[] x, Windows w, Window window, double at);
}
