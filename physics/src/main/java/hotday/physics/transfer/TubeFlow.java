package hotday.physics.transfer;

/**
 * Liquid in flat tubes: laminar below Re 2300 (fully developed, wall at one temperature: Shah and London 1978),
 * Gnielinski 1976 above 4000, Nu and friction linear in between. Heat transfer does not grow with flow while laminar.
 */
public final class TubeFlow {
    private static final double LAMINAR = 2300.0;
    private static final double TURBULENT = 4000.0;

    private TubeFlow() {}

    /** Darcy friction factor of a smooth tube, Petukhov 1970; 3e3..5e6. */
    public static double petukhov(double re) {
        double root = 0.790 * Math.log(re) - 1.64;
        return 1.0 / (root * root);
    }

    /** Gnielinski; Re 3e3..5e6, Pr 0.5..2000. */
    public static double gnielinski(double re, double pr) {
        double f8 = petukhov(re) / 8.0;
        return f8 * (re - 1000.0) * pr / (1.0 + 12.7 * Math.sqrt(f8) * (Math.pow(pr, 2.0 / 3.0) - 1.0));
    }

    /** Petukhov and Kirillov; Re 1e4..5e6, Pr 0.5..2000. For comparison: 2 to 10 % from Gnielinski. */
    public static double petukhovKirillov(double re, double pr) {
        double f8 = petukhov(re) / 8.0;
        return f8 * re * pr / (1.07 + 12.7 * Math.sqrt(f8) * (Math.pow(pr, 2.0 / 3.0) - 1.0));
    }

    /**
     * Dittus and Boelter, 0.023 Re^0.8 Pr^n; Re above 1e4, Pr 0.7..160. For comparison with books.
     *
     * @param n 0.4 for a fluid being heated, 0.3 for a fluid being cooled (coolant in a radiator)
     */
    public static double dittusBoelter(double re, double pr, double n) {
        return 0.023 * Math.pow(re, 0.8) * Math.pow(pr, n);
    }

    /** Laminar Nusselt number of a rectangular tube, aspect = short over long side, 0..1. */
    public static double laminarNusselt(double aspect) {
        double a = aspect;
        return 7.541
                * (1 - 2.610 * a + 4.970 * a * a - 5.119 * a * a * a + 2.702 * Math.pow(a, 4) - 0.548 * Math.pow(a, 5));
    }

    /** Laminar Darcy friction factor times Re of a rectangular tube. */
    public static double laminarFriction(double aspect) {
        double a = aspect;
        return 96.0
                * (1
                        - 1.3553 * a
                        + 1.9467 * a * a
                        - 1.7012 * a * a * a
                        + 0.9564 * Math.pow(a, 4)
                        - 0.2537 * Math.pow(a, 5));
    }

    /** Nusselt number on hydraulic diameter. */
    public static double nusselt(double re, double pr, double aspect) {
        if (re <= LAMINAR) {
            return laminarNusselt(aspect);
        }
        if (re >= TURBULENT) {
            return gnielinski(re, pr);
        }
        double share = (re - LAMINAR) / (TURBULENT - LAMINAR);
        return (1.0 - share) * laminarNusselt(aspect) + share * gnielinski(TURBULENT, pr);
    }

    /** Darcy friction factor. */
    public static double friction(double re, double aspect) {
        if (re <= LAMINAR) {
            return laminarFriction(aspect) / re;
        }
        if (re >= TURBULENT) {
            return petukhov(re);
        }
        double share = (re - LAMINAR) / (TURBULENT - LAMINAR);
        return (1.0 - share) * laminarFriction(aspect) / LAMINAR + share * petukhov(TURBULENT);
    }
}
