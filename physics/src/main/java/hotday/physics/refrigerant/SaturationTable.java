package hotday.physics.refrigerant;

/**
 * Saturation of one refrigerant for time loops. With s = sqrt(1 - p/pc) a property of liquid is A - B s and that of vapour
 * A + B s, where A and B are smooth in pressure up to the critical point (analytic equation of state); both are kept as cubic pieces on
 * a {@link PressureScale}. What grows without bound at the critical point (specific heat, conductivity) is kept as its
 * inverse. Beyond its range the nearest end answers. Immutable, shared by all threads; a look allocates nothing.
 */
public final class SaturationTable {
    /** Places in the array that {@link #look} fills: K, N/m, then liquid and vapour: J/kg, m3/kg, J/(kg K). */
    public static final int TEMPERATURE = 0;

    public static final int SURFACE_TENSION = 1;
    public static final int LIQUID_ENTHALPY = 2;
    public static final int VAPOUR_ENTHALPY = 3;
    public static final int LIQUID_VOLUME = 4;
    public static final int VAPOUR_VOLUME = 5;
    public static final int LIQUID_ENTROPY = 6;
    public static final int VAPOUR_ENTROPY = 7;
    /** Specific heats, J/(kg K), dynamic viscosities, Pa s, conductivities, W/(m K). */
    public static final int LIQUID_HEAT = 8;

    public static final int VAPOUR_HEAT = 9;
    public static final int LIQUID_VISCOSITY = 10;
    public static final int VAPOUR_VISCOSITY = 11;
    public static final int LIQUID_CONDUCTIVITY = 12;
    public static final int VAPOUR_CONDUCTIVITY = 13;
    /** Length of the array for {@link #look}. */
    public static final int COLUMNS = 14;

    // stored per node: value and slope (per Pa) of T, sigma, then A and B of each pair
    static final int STORED_TEMPERATURE = 0;
    static final int ENTHALPY = 2;
    static final int VOLUME = 4;
    static final int ENTROPY = 6;
    private static final int HEAT = 8;
    private static final int CONDUCTIVITY = 12;
    private static final int STRIDE = 2 * COLUMNS;

    private static final double LOW = 0x1p15; // Pa
    private static final int PIECES = 80;
    /** Nearer to the critical pressure (relative) than this the two phases are extrapolated, not solved. */
    private static final double INDISTINCT = 1e-5;

    private final double criticalPressure;
    private final PressureScale scale;
    private final double[] nodes;

    private SaturationTable(double criticalPressure, PressureScale scale, double[] nodes) {
        this.criticalPressure = criticalPressure;
        this.scale = scale;
        this.nodes = nodes;
    }

    static SaturationTable of(Refrigerant r) {
        double critical = r.saturation().criticalPressure();
        int beyond = (int) Math.ceil(new PressureScale(LOW, PIECES, 1).place(critical)) + 1;
        PressureScale scale = new PressureScale(LOW, PIECES, beyond);
        double[][] values = new double[COLUMNS][beyond + 1];
        double nearest = critical * (1.0 - INDISTINCT);
        double[][] last = new double[COLUMNS][1];
        Saturated s = new Saturated();
        r.saturation().atPressure(nearest, s);
        solved(r, s, Math.sqrt(1.0 - nearest / critical), last, 0);
        for (int i = 0; i <= beyond; i++) {
            double p = scale.node(i);
            if (p < nearest) {
                r.saturation().atPressure(p, s);
                solved(r, s, Math.sqrt(1.0 - p / critical), values, i);
            } else {
                onwards(scale, values, i, nearest, last);
            }
        }
        return new SaturationTable(critical, scale, nodes(scale, values));
    }

    /** Past the critical point: a cubic through the last state solved and the three nodes before. */
    private static void onwards(PressureScale scale, double[][] values, int i, double nearest, double[][] last) {
        int end = (int) scale.place(nearest);
        double[] x = {scale.node(end - 2), scale.node(end - 1), scale.node(end), nearest};
        for (int k = 0; k < COLUMNS; k++) {
            double[] f = {values[k][end - 2], values[k][end - 1], values[k][end], last[k][0]};
            double sum = 0.0;
            for (int a = 0; a < 4; a++) {
                double term = f[a];
                for (int b = 0; b < 4; b++) {
                    term *= a == b ? 1.0 : (scale.node(i) - x[b]) / (x[a] - x[b]);
                }
                sum += term;
            }
            values[k][i] = sum;
        }
    }

    private static void solved(Refrigerant r, Saturated s, double root, double[][] values, int i) {
        double liquidViscosity = r.transport().viscosity(s.liquid);
        double vapourViscosity = r.transport().viscosity(s.vapour);
        values[STORED_TEMPERATURE][i] = s.temperature;
        values[SURFACE_TENSION][i] = r.surfaceTension(s.temperature);
        pair(values, ENTHALPY, i, s.liquid.enthalpy, s.vapour.enthalpy, root);
        pair(values, VOLUME, i, 1.0 / s.liquid.density, 1.0 / s.vapour.density, root);
        pair(values, ENTROPY, i, s.liquid.entropy, s.vapour.entropy, root);
        pair(values, HEAT, i, 1.0 / s.liquid.cp(), 1.0 / s.vapour.cp(), root);
        pair(values, LIQUID_VISCOSITY, i, liquidViscosity, vapourViscosity, root);
        pair(
                values,
                CONDUCTIVITY,
                i,
                1.0 / r.transport().conductivity(s.liquid, liquidViscosity),
                1.0 / r.transport().conductivity(s.vapour, vapourViscosity),
                root);
    }

    private static void pair(double[][] values, int k, int i, double liquid, double vapour, double root) {
        values[k][i] = 0.5 * (liquid + vapour);
        values[k + 1][i] = 0.5 * (vapour - liquid) / root;
    }

    private static double[] nodes(PressureScale scale, double[][] values) {
        double[] nodes = new double[scale.size() * STRIDE];
        for (int k = 0; k < COLUMNS; k++) {
            for (int i = 0; i < scale.size(); i++) {
                nodes[i * STRIDE + 2 * k] = values[k][i];
                nodes[i * STRIDE + 2 * k + 1] = slope(scale, values[k], i);
            }
        }
        return nodes;
    }

    /** Per Pa: of the polynomial through the five nodes around. */
    private static double slope(PressureScale scale, double[] f, int i) {
        int first = Math.max(0, Math.min(f.length - 5, i - 2));
        double x = scale.node(i);
        double sum = 0.0;
        for (int a = first; a < first + 5; a++) {
            sum += f[a] * slopeWeight(scale, first, a, x);
        }
        return sum;
    }

    /** Slope at x of the Lagrange polynomial that is 1 at node a. */
    private static double slopeWeight(PressureScale scale, int first, int a, double x) {
        double sum = 0.0;
        for (int m = first; m < first + 5; m++) {
            if (m != a) {
                double product = 1.0 / (scale.node(a) - scale.node(m));
                for (int b = first; b < first + 5; b++) {
                    if (b != a && b != m) {
                        product *= (x - scale.node(b)) / (scale.node(a) - scale.node(b));
                    }
                }
                sum += product;
            }
        }
        return sum;
    }

    /** Pa. */
    double criticalPressure() {
        return criticalPressure;
    }

    /**
     * All columns at a pressure.
     *
     * @param pressure Pa
     * @param out at least {@link #COLUMNS} long
     */
    public void look(double pressure, double[] out) {
        look(pressure, COLUMNS, out);
    }

    /**
     * The first columns at a pressure.
     *
     * @param pressure Pa
     * @param columns how many, even, 2..{@link #COLUMNS}
     * @param out at least {@code columns} long
     */
    public void look(double pressure, int columns, double[] out) {
        double place = place(pressure);
        double root = root(pressure);
        out[TEMPERATURE] = at(place, STORED_TEMPERATURE);
        out[SURFACE_TENSION] = at(place, SURFACE_TENSION);
        for (int k = ENTHALPY; k < columns; k += 2) {
            double middle = at(place, k);
            double half = root * at(place, k + 1);
            boolean inverse = k == HEAT || k == CONDUCTIVITY;
            out[k] = inverse ? 1.0 / (middle - half) : middle - half;
            out[k + 1] = inverse ? 1.0 / (middle + half) : middle + half;
        }
    }

    /** Saturation temperature, K, at Pa. */
    public double temperature(double pressure) {
        return at(place(pressure), STORED_TEMPERATURE);
    }

    /** Slope of the saturation temperature, K/Pa, at Pa. */
    public double temperatureSlope(double pressure) {
        return slopeAt(place(pressure), STORED_TEMPERATURE);
    }

    /** J/kg at Pa. */
    public double liquidEnthalpy(double pressure) {
        double place = place(pressure);
        return at(place, ENTHALPY) - root(pressure) * at(place, ENTHALPY + 1);
    }

    /** J/kg at Pa. */
    public double vapourEnthalpy(double pressure) {
        double place = place(pressure);
        return at(place, ENTHALPY) + root(pressure) * at(place, ENTHALPY + 1);
    }

    /** sqrt(1 - p/pc); 0 above the critical pressure. */
    double root(double pressure) {
        return Math.sqrt(Math.max(0.0, 1.0 - pressure / criticalPressure));
    }

    /** Place among the nodes, cut to the range. */
    double place(double pressure) {
        return scale.inside(pressure);
    }

    /** A stored column at a {@link #place}. */
    double at(double place, int k) {
        int i = (int) place;
        double x = place - i;
        int at = i * STRIDE + 2 * k;
        int next = at + STRIDE;
        double a = nodes[at];
        double rest = 1.0 - x;
        return a
                + (nodes[next] - a) * (x * x * (3.0 - 2.0 * x))
                + scale.width(i) * x * rest * (rest * nodes[at + 1] - x * nodes[next + 1]);
    }

    /** Slope per Pa of a stored column at a {@link #place}. */
    double slopeAt(double place, int k) {
        int i = (int) place;
        double x = place - i;
        int at = i * STRIDE + 2 * k;
        int next = at + STRIDE;
        return (nodes[next] - nodes[at]) * 6.0 * x * (1.0 - x) / scale.width(i)
                + nodes[at + 1] * (1.0 - x) * (1.0 - 3.0 * x)
                + nodes[next + 1] * x * (3.0 * x - 2.0);
    }
}
