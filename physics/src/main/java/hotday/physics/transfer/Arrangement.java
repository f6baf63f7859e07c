package hotday.physics.transfer;

import hotday.core.solve.Bracket;
import java.util.OptionalDouble;

/**
 * How the two streams of an exchanger run; gives access to {@link Effectiveness} by name and back from an effectiveness to
 * the number of transfer units. The way back is for design and test points, not for time loops (it allocates).
 */
public enum Arrangement {
    COUNTER_FLOW {
        @Override
        public double effectiveness(double ntu, double cr) {
            return Effectiveness.counterFlow(ntu, cr);
        }
    },
    PARALLEL_FLOW {
        @Override
        public double effectiveness(double ntu, double cr) {
            return Effectiveness.parallelFlow(ntu, cr);
        }
    },
    CROSS_BOTH_UNMIXED {
        @Override
        public double effectiveness(double ntu, double cr) {
            return Effectiveness.crossBothUnmixed(ntu, cr);
        }
    },
    CROSS_BOTH_UNMIXED_APPROXIMATE {
        @Override
        public double effectiveness(double ntu, double cr) {
            return Effectiveness.crossBothUnmixedApproximate(ntu, cr);
        }
    },
    CROSS_MAX_MIXED {
        @Override
        public double effectiveness(double ntu, double cr) {
            return Effectiveness.crossMaxMixed(ntu, cr);
        }
    },
    CROSS_MIN_MIXED {
        @Override
        public double effectiveness(double ntu, double cr) {
            return Effectiveness.crossMinMixed(ntu, cr);
        }
    },
    CROSS_BOTH_MIXED {
        @Override
        public double effectiveness(double ntu, double cr) {
            return Effectiveness.crossBothMixed(ntu, cr);
        }
    },
    SHELL_TUBES {
        @Override
        public double effectiveness(double ntu, double cr) {
            return Effectiveness.shellTubes(ntu, cr);
        }
    };

    private static final double LARGEST_NTU = 100.0;
    private static final double FIRST_NTU = 1e-3;
    private static final double STRIDE = 1.1;
    private static final double TOLERANCE = 1e-12;

    /**
     * Effectiveness, 0..1.
     *
     * @param ntu 0..100
     * @param cr smaller over larger capacity rate, 0..1
     */
    public abstract double effectiveness(double ntu, double cr);

    /**
     * The smallest number of transfer units that gives an effectiveness; empty where none up to 100 does.
     *
     * @param effectiveness 0..1
     * @param cr smaller over larger capacity rate, 0..1
     */
    public OptionalDouble ntu(double effectiveness, double cr) {
        if (!(effectiveness >= 0.0 && effectiveness < 1.0 && cr >= 0.0 && cr <= 1.0)) {
            return OptionalDouble.empty();
        }
        double low = 0.0;
        double high = FIRST_NTU;
        while (effectiveness(high, cr) < effectiveness) {
            if (high >= LARGEST_NTU) {
                return OptionalDouble.empty();
            }
            low = high;
            high *= STRIDE;
        }
        Bracket.Root root = Bracket.root(n -> effectiveness(n, cr) - effectiveness, low, high, TOLERANCE, 100);
        return root.found() ? OptionalDouble.of(root.value()) : OptionalDouble.empty();
    }
}
