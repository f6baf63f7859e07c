package hotday.physics.component;

/**
 * Copper conductor at 20 degC, by the list its size belongs to. Sizes between those of a list lie straight in the logarithms, beyond them as the nearest.
 *
 * @param area nominal cross-section, m2, above 0
 * @param resistancePerMetre largest one allowed, Ohm/m, above 0
 */
public record Conductor(double area, double resistancePerMetre) {
    /** IEC 60228 class 5 and 6, plain copper: cross-section, mm2. */
    private static final double[] IEC_AREA = {0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120};
    /** Largest resistance at 20 degC, mOhm/m. */
    private static final double[] IEC = {
        39.0, 26.0, 19.5, 13.3, 7.98, 4.95, 3.30, 1.91, 1.21, 0.780, 0.554, 0.386, 0.272, 0.206, 0.161
    };
    /** ISO 6722, road vehicles; mm2. */
    private static final double[] ISO_AREA = {0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50};
    /** mOhm/m at 20 degC; from memory. */
    private static final double[] ISO = {37.1, 24.7, 18.5, 12.7, 7.60, 4.71, 3.14, 1.82, 1.16, 0.743, 0.527, 0.368};

    /** SAE sizes, smallest cable first; 0 is 1/0, -1 is 2/0. */
    private static final int[] SAE = {20, 18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3};
    /** Least circular mils: 10 to 4 from a published table, the others from memory. */
    private static final double[] SAE_MILS = {
        1072, 1537, 2336, 3702, 5833, 9343, 14810, 24538, 37360, 62450, 77790, 98980, 125100, 158600, 205500
    };

    private static final double CIRCULAR_MIL = 0.25 * Math.PI * 25.4e-6 * 25.4e-6; // m2
    private static final double RESISTIVITY = 17.241e-9; // Ohm m, annealed copper at 20 degC (IEC 60028)

    private static final double RATED_INSULATION = 378.15; // K
    private static final double RATED_AIR = 303.15; // K
    /** American wire gauges of the table, thinnest first, and their currents, A. */
    private static final int[] RATED = {14, 12, 10, 8, 6, 4, 2, 0};

    private static final double[] CARRIES = {35, 45, 60, 80, 120, 160, 210, 285};

    public Conductor {
        if (!(area > 0.0 && area < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("cable cross-section " + area + " m2 must be above 0");
        }
        if (!(resistancePerMetre > 0.0 && resistancePerMetre < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("cable resistance " + resistancePerMetre + " Ohm/m must be above 0");
        }
    }

    /** Flexible copper of a cross-section, m2, by IEC 60228. */
    public static Conductor iec(double area) {
        return listed(area, IEC_AREA, IEC);
    }

    /** Cable of road vehicles of a cross-section, m2, by ISO 6722: 4 to 6 % below IEC 60228. */
    public static Conductor iso(double area) {
        return listed(area, ISO_AREA, ISO);
    }

    /** American wire gauge, 20 to 1, 0 for 1/0 down to -3 for 4/0: d = 0.127 mm x 92^((36 - n)/39). */
    public static Conductor awg(int gauge) {
        double diameter = 0.127e-3 * Math.pow(92.0, (36 - gauge) / 39.0);
        return ofCopper(0.25 * Math.PI * diameter * diameter);
    }

    /** SAE gauge of automotive cable, numbered as {@link #awg} but with less copper; of a gauge between, that of the thinner one. */
    public static Conductor sae(int gauge) {
        int i = 0;
        while (i + 1 < SAE.length && SAE[i + 1] >= gauge) {
            i++;
        }
        return ofCopper(SAE_MILS[i] * CIRCULAR_MIL);
    }

    private static Conductor ofCopper(double area) {
        return new Conductor(area, RESISTIVITY / area);
    }

    private static Conductor listed(double area, double[] areas, double[] milliohm) {
        if (!(area > 0.0)) {
            throw new IllegalArgumentException("cable cross-section " + area + " m2 must be above 0");
        }
        return new Conductor(area, 1e-3 * milliohm(1e6 * area, areas, milliohm));
    }

    private static double milliohm(double size, double[] areas, double[] milliohm) {
        int last = areas.length - 1;
        if (size <= areas[0] || size >= areas[last]) {
            int end = size <= areas[0] ? 0 : last;
            return milliohm[end] * areas[end] / size;
        }
        int i = 0;
        while (size > areas[i + 1]) {
            i++;
        }
        double at = Math.log(size / areas[i]) / Math.log(areas[i + 1] / areas[i]);
        return milliohm[i] * Math.pow(milliohm[i + 1] / milliohm[i], at);
    }

    /**
     * Current it carries for ever, A: a published table for single cables with 105 degC insulation outside engine spaces (air of 30 degC), with the copper's
     * rise over the air growing as the square of the current. That gives the table's column for engine spaces (50 degC) within its rounding.
     *
     * @param insulation temperature it stands, K
     * @param air around the cable, K
     * @param bundled loaded cables lying together: 0.8 of it from two on, 0.6 from four on (0.6 to 0.8 published; the steps are common practice)
     */
    public double ampacity(double insulation, double air, int bundled) {
        double together = bundled >= 4 ? 0.6 : bundled >= 2 ? 0.8 : 1.0;
        return together * freeAir() * Math.sqrt(Math.max(0.0, insulation - air) / (RATED_INSULATION - RATED_AIR));
    }

    /** Temperature of the copper, K, at a current, A, by the same relation. */
    public double temperature(double current, double insulation, double air, int bundled) {
        double share = current / ampacity(insulation, air, bundled);
        return air + (insulation - air) * share * share;
    }

    /** A at the table's air and insulation; straight in the logarithms, beyond the table along its last piece. */
    private double freeAir() {
        int i = 0;
        while (i + 2 < RATED.length && area > awg(RATED[i + 1]).area()) {
            i++;
        }
        double low = awg(RATED[i]).area();
        double at = Math.log(area / low) / Math.log(awg(RATED[i + 1]).area() / low);
        return CARRIES[i] * Math.pow(CARRIES[i + 1] / CARRIES[i], at);
    }
}
