package hotday.physics.transfer;

/**
 * Effectiveness of heat exchangers against the number of transfer units.
 *
 * <p>effectiveness = Q / (Cmin (T hot in - T cold in)), 0..1; NTU = UA / Cmin; cr = Cmin / Cmax, 0..1, with C = mass
 * flow x specific heat. Source where no other is named: Incropera and DeWitt, Fundamentals of Heat and Mass Transfer,
 * ch. 11, after Kays and London, Compact Heat Exchangers.
 *
 * <p>Below zero NTU counts as zero; cr below {@value #NEARLY_ISOTHERMAL} as zero (one side at one temperature, as while
 * condensing). A NaN comes back as NaN, every loop ends. All grow with NTU, except {@link #crossBothMixed}.
 */
public final class Effectiveness {
    private static final double NEARLY_ISOTHERMAL = 1e-12;
    private static final double NEARLY_BALANCED = 1e-12;
    /** Above it exp(-NTU) leaves the range of a double; the effectiveness is then within 0.026 of its limit. */
    private static final double LARGEST_NTU = 500.0;

    private static final double SERIES_END = 1e-17;

    private Effectiveness() {}

    /** One side at one temperature (condensing, evaporating): 1 - exp(-NTU). */
    public static double isothermal(double ntu) {
        return -Math.expm1(-Math.max(0.0, ntu));
    }

    /** (1 - e) / (1 - cr e), e = exp(-NTU (1 - cr)); NTU / (1 + NTU) at cr = 1. The best that can be built. */
    public static double counterFlow(double ntu, double cr) {
        double n = Math.max(0.0, ntu);
        double d = 1.0 - cr;
        if (Math.abs(d) < NEARLY_BALANCED) {
            return n / (1.0 + n);
        }
        double gone = -Math.expm1(-n * d);
        return gone / (gone + d * (1.0 - gone));
    }

    /** (1 - exp(-NTU (1 + cr))) / (1 + cr). */
    public static double parallelFlow(double ntu, double cr) {
        return -Math.expm1(-Math.max(0.0, ntu) * (1.0 + cr)) / (1.0 + cr);
    }

    /**
     * Cross-flow, both fluids unmixed, exact: 1 / (cr NTU) x sum over n = 0, 1, .. of P(n, NTU) P(n, cr NTU) with P(n, y) =
     * 1 - exp(-y) (1 + y + y^2/2! + .. + y^n/n!). Mason 1955, Heat transfer in crossflow, Proc. 2nd US National Congress
     * of Applied Mechanics 801-803 (from memory); equal to the Bessel-function form of Baclic 1978 to rounding (tested),
     * but all terms are positive and fall away, so nothing cancels. NTU above 500 counts as 500.
     */
    public static double crossBothUnmixed(double ntu, double cr) {
        double n = Math.min(Math.max(0.0, ntu), LARGEST_NTU);
        double y = cr * n;
        if (cr < NEARLY_ISOTHERMAL || y <= 0.0) {
            return isothermal(n);
        }
        double termOne = Math.exp(-n);
        double termTwo = Math.exp(-y);
        double tailOne = -Math.expm1(-n);
        double tailTwo = -Math.expm1(-y);
        double sum = 0.0;
        for (int k = 1; k <= y || termTwo > SERIES_END * y; k++) {
            double step = tailOne * tailTwo;
            sum += step;
            termOne *= n / k;
            termTwo *= y / k;
            tailOne = Math.max(0.0, tailOne - termOne);
            tailTwo = Math.max(0.0, tailTwo - termTwo);
        }
        return Double.isNaN(y) ? Double.NaN : Math.min(1.0, sum / y);
    }

    /**
     * The usual approximation of {@link #crossBothUnmixed}: 1 - exp(NTU^0.22 / cr (exp(-cr NTU^0.78) - 1)). Up to 0.011 away
     * below NTU 5 (worst near cr = 1, NTU = 0.55), 0.033 by NTU 20. For comparison with books that use it.
     */
    public static double crossBothUnmixedApproximate(double ntu, double cr) {
        double n = Math.max(0.0, ntu);
        if (cr < NEARLY_ISOTHERMAL) {
            return isothermal(n);
        }
        return -Math.expm1(Math.pow(n, 0.22) / cr * Math.expm1(-cr * Math.pow(n, 0.78)));
    }

    /** Cross-flow, the larger capacity rate mixed, the smaller unmixed. */
    public static double crossMaxMixed(double ntu, double cr) {
        double alone = isothermal(ntu);
        return cr < NEARLY_ISOTHERMAL ? alone : -Math.expm1(-cr * alone) / cr;
    }

    /** Cross-flow, the smaller capacity rate mixed, the larger unmixed. */
    public static double crossMinMixed(double ntu, double cr) {
        return cr < NEARLY_ISOTHERMAL ? isothermal(ntu) : -Math.expm1(-isothermal(cr * ntu) / cr);
    }

    /** Cross-flow, both mixed. Peaks and falls again: at cr = 1 from 0.5645 near NTU 3 towards 0.5. */
    public static double crossBothMixed(double ntu, double cr) {
        double n = Math.max(0.0, ntu);
        double y = cr * n;
        if (cr < NEARLY_ISOTHERMAL || y < Double.MIN_NORMAL) {
            return isothermal(n);
        }
        return 1.0 / (1.0 / isothermal(n) + cr / isothermal(y) - 1.0 / n);
    }

    /** One shell pass, two or four or any even number of tube passes. */
    public static double shellTubes(double ntu, double cr) {
        double s = Math.sqrt(1.0 + cr * cr);
        double gone = isothermal(ntu * s);
        return 2.0 / (1.0 + cr + s * (2.0 - gone) / gone);
    }
}
