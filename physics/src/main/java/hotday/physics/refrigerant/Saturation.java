package hotday.physics.refrigerant;

/**
 * Liquid and vapour in equilibrium. Start values come from a curve through exactly solved nodes, even in u = sqrt(1 - T/Tc):
 * an analytic equation of state is smooth in u up to its critical point, so that the nodes serve there too. Newton steps end at equal
 * pressure and equal Gibbs energy.
 */
final class Saturation {
    private static final int NODES = 256;
    private static final int STEPS = 40;
    private static final double CONVERGED = 1e-13;
    private static final double LARGEST_CHANGE = 0.2;
    /** So near below the critical temperature (relative) rounding hides the difference of the phases: the curve stands. */
    private static final double INDISTINCT = 1e-8;
    /** Above this share of the critical temperature densities hang more steeply on temperature than rounding allows. */
    private static final double STEEP = 0.999;

    private final Helmholtz equation;
    private final double criticalTemperature;
    private final double criticalPressure;
    private final double criticalDensity;
    private final double spacing;
    private final double[] logPressure = new double[NODES];
    private final double[] liquidDensity = new double[NODES];
    private final double[] logVapourDensity = new double[NODES];
    /** sqrt(ln(pc / p)): almost straight in u. */
    private final double[] pressureRoot = new double[NODES];

    private final double[] liquidEnthalpy = new double[NODES];
    private final double[] vapourEnthalpy = new double[NODES];
    private final double[] liquidEntropy = new double[NODES];
    private final double[] vapourEntropy = new double[NODES];

    Saturation(Facts facts, Helmholtz equation, double lowestTemperature) {
        this.equation = equation;
        criticalTemperature = facts.limits().vanishingTemperature();
        criticalDensity = facts.limits().vanishingMolarDensity() * facts.molarMass();
        Point critical = new Point();
        equation.evaluate(criticalTemperature, criticalDensity, critical);
        criticalPressure = critical.pressure;
        spacing = Math.sqrt(1.0 - lowestTemperature / criticalTemperature) / (NODES - 1);
        solveNodes(facts);
    }

    /** Critical temperature of this equation (not as rounded in print), K. */
    double criticalTemperature() {
        return criticalTemperature;
    }

    double criticalPressure() {
        return criticalPressure;
    }

    double criticalDensity() {
        return criticalDensity;
    }

    double lowestPressure() {
        return Math.exp(logPressure[NODES - 1]);
    }

    double lowestTemperature() {
        return nodeTemperature(NODES - 1);
    }

    private double nodeTemperature(int node) {
        double u = node * spacing;
        return criticalTemperature * (1.0 - u * u);
    }

    private void solveNodes(Facts facts) {
        Saturated s = new Saturated();
        evaluate(s, criticalTemperature, criticalDensity, criticalDensity);
        s.pressure = criticalPressure;
        store(0, s);
        int first = NODES / 2;
        for (int i = first; i < NODES; i++) {
            solveNode(i, i < first + 3 ? 0 : -1, facts, s);
        }
        for (int i = first - 1; i > 0; i--) {
            solveNode(i, 1, facts, s);
        }
    }

    /** @param side 0: starts from the published start values; -1, 1: from the three neighbours on that side */
    private void solveNode(int i, int side, Facts facts, Saturated s) {
        double t = nodeTemperature(i);
        double liquid;
        double vapour;
        if (side == 0) {
            liquid = facts.saturation().liquid().at(t) * facts.molarMass();
            vapour = facts.saturation().vapour().at(t) * facts.molarMass();
        } else {
            liquid = onwards(liquidDensity, i, side);
            vapour = Math.exp(onwards(logVapourDensity, i, side));
        }
        solve(t, liquid, vapour, s);
        store(i, s);
    }

    private static double onwards(double[] values, int i, int side) {
        return 3.0 * values[i + side] - 3.0 * values[i + 2 * side] + values[i + 3 * side];
    }

    private void store(int i, Saturated s) {
        logPressure[i] = Math.log(s.pressure);
        liquidDensity[i] = s.liquid.density;
        logVapourDensity[i] = Math.log(s.vapour.density);
        pressureRoot[i] = Math.sqrt(Math.max(0.0, logPressure[0] - logPressure[i]));
        liquidEnthalpy[i] = s.liquid.enthalpy;
        vapourEnthalpy[i] = s.vapour.enthalpy;
        liquidEntropy[i] = s.liquid.entropy;
        vapourEntropy[i] = s.vapour.entropy;
    }

    /** In equilibrium at K, from the lowest to the critical temperature. */
    void atTemperature(double temperature, Saturated out) {
        double u = placeOfTemperature(temperature);
        int i = firstOfFour(u);
        double liquid = between(liquidDensity, i, u - i);
        double vapour = Math.exp(between(logVapourDensity, i, u - i));
        if (1.0 - temperature / criticalTemperature < INDISTINCT) {
            evaluate(out, temperature, liquid, vapour);
            out.pressure = Math.exp(between(logPressure, i, u - i));
            return;
        }
        solve(temperature, liquid, vapour, out);
    }

    /** In equilibrium at Pa. */
    void atPressure(double pressure, Saturated out) {
        estimate(pressure, out);
        double last = Double.POSITIVE_INFINITY;
        for (int k = 0; k < STEPS; k++) {
            double step = refine(pressure, out);
            if (step < CONVERGED || step >= last && step < 1e-9 || !(step < LARGEST_CHANGE)) {
                break;
            }
            last = step;
            evaluate(out, out.temperature, out.liquid.density, out.vapour.density);
        }
        if (out.temperature > STEEP * criticalTemperature) {
            atTemperature(out.temperature, out);
        }
        out.pressure = pressure;
    }

    /** Node place of a pressure, Pa, for the curves below. */
    double place(double pressure) {
        return nodeOf(Math.sqrt(Math.max(0.0, logPressure[0] - Math.log(pressure))));
    }

    /** K; like all curves good to about 1e-6. */
    double temperatureAt(double place) {
        double u = place * spacing;
        return criticalTemperature * (1.0 - u * u);
    }

    /** kg/m3. */
    double liquidDensityAt(double place) {
        int i = firstOfFour(place);
        return between(liquidDensity, i, place - i);
    }

    /** kg/m3. */
    double vapourDensityAt(double place) {
        int i = firstOfFour(place);
        return Math.exp(between(logVapourDensity, i, place - i));
    }

    /** Saturated liquid, J/kg or J/(kg K). */
    double liquidAt(boolean entropy, double place) {
        int i = firstOfFour(place);
        return between(entropy ? liquidEntropy : liquidEnthalpy, i, place - i);
    }

    /** Saturated vapour, J/kg or J/(kg K). */
    double vapourAt(boolean entropy, double place) {
        int i = firstOfFour(place);
        return between(entropy ? vapourEntropy : vapourEnthalpy, i, place - i);
    }

    /** Place where saturated liquid has an enthalpy or entropy; linear between nodes. */
    double placeOfLiquid(boolean entropy, double value) {
        double[] values = entropy ? liquidEntropy : liquidEnthalpy;
        int low = 0;
        int high = NODES - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (values[middle] >= value) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double share = (value - values[low]) / (values[high] - values[low]);
        return low + Math.max(0.0, Math.min(1.0, share));
    }

    /** Place of a temperature, K. */
    double placeOfTemperature(double temperature) {
        return Math.sqrt(Math.max(0.0, 1.0 - temperature / criticalTemperature)) / spacing;
    }

    /** Start values at Pa, good to about 1e-6, and everything of the two points there. */
    void estimate(double pressure, Saturated out) {
        double place = place(pressure);
        out.pressure = pressure;
        evaluate(out, temperatureAt(place), liquidDensityAt(place), vapourDensityAt(place));
    }

    /**
     * One Newton step in temperature and both densities for equal Gibbs energy at a pressure; the points move along their
     * tangents. Size of the step, relative.
     */
    double refine(double pressure, Saturated s) {
        Point liquid = s.liquid;
        Point vapour = s.vapour;
        double excessLiquid = liquid.pressure - pressure;
        double excessVapour = vapour.pressure - pressure;
        double gap = liquid.gibbs - vapour.gibbs - excessLiquid / liquid.density + excessVapour / vapour.density;
        double temperatureStep = gap / (liquid.entropy - vapour.entropy);
        double liquidStep = -(excessLiquid + liquid.pressureByTemperature * temperatureStep) / liquid.pressureByDensity;
        double vapourStep = -(excessVapour + vapour.pressureByTemperature * temperatureStep) / vapour.pressureByDensity;
        double size = Math.max(
                Math.abs(temperatureStep) / s.temperature,
                Math.max(Math.abs(liquidStep) / liquid.density, Math.abs(vapourStep) / vapour.density));
        if (!(size < LARGEST_CHANGE) || s.temperature + temperatureStep > criticalTemperature) {
            return size; // so near the critical point that nothing is gained: the start values stand
        }
        s.temperature += temperatureStep;
        liquid.shift(temperatureStep, liquidStep);
        vapour.shift(temperatureStep, vapourStep);
        return size;
    }

    private void evaluate(Saturated s, double temperature, double liquid, double vapour) {
        s.temperature = temperature;
        equation.evaluate(temperature, liquid, s.liquid);
        equation.evaluate(temperature, vapour, s.vapour);
    }

    /** Maxwell's construction at K from start densities, kg/m3. */
    private void solve(double temperature, double liquidStart, double vapourStart, Saturated s) {
        evaluate(s, temperature, liquidStart, vapourStart);
        double last = Double.POSITIVE_INFINITY;
        for (int k = 0; k < STEPS; k++) {
            Point liquid = s.liquid;
            Point vapour = s.vapour;
            double specific = 1.0 / liquid.density - 1.0 / vapour.density;
            s.pressure = (liquid.pressure / liquid.density
                            - vapour.pressure / vapour.density
                            - (liquid.gibbs - vapour.gibbs))
                    / specific;
            double liquidStep = outwards(liquid, s.pressure, 1.0);
            double vapourStep = outwards(vapour, s.pressure, -1.0);
            double size = Math.max(Math.abs(liquidStep) / liquid.density, Math.abs(vapourStep) / vapour.density);
            if (!(size > 0.0) || size >= last && size < 1e-8) {
                break;
            }
            last = size;
            evaluate(s, temperature, liquid.density + liquidStep, vapour.density + vapourStep);
            if (size < CONVERGED) {
                break;
            }
        }
    }

    /** Density step towards a pressure; from between the spinodals outwards. */
    private static double outwards(Point point, double pressure, double side) {
        if (!(point.pressureByDensity > 0.0)) {
            return side * 0.01 * point.density;
        }
        double step = (pressure - point.pressure) / point.pressureByDensity;
        double limit = LARGEST_CHANGE * point.density;
        return Math.max(-limit, Math.min(limit, step));
    }

    /** Place among the nodes (a fraction) of sqrt(ln(pc/p)). */
    private double nodeOf(double root) {
        int low = 0;
        int high = NODES - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (pressureRoot[middle] <= root) {
                low = middle;
            } else {
                high = middle;
            }
        }
        int i = Math.max(0, Math.min(NODES - 4, low - 1));
        double sum = 0.0;
        for (int a = i; a < i + 4; a++) {
            double weight = a;
            for (int b = i; b < i + 4; b++) {
                if (b != a) {
                    weight *= (root - pressureRoot[b]) / (pressureRoot[a] - pressureRoot[b]);
                }
            }
            sum += weight;
        }
        return sum;
    }

    private static int firstOfFour(double u) {
        return Math.max(0, Math.min(NODES - 4, (int) u - 1));
    }

    /** Cubic through four nodes, x from the first of them. */
    private static double between(double[] values, int i, double x) {
        double a = x - 1.0;
        double b = x - 2.0;
        double c = x - 3.0;
        return -values[i] * a * b * c / 6.0
                + values[i + 1] * x * b * c / 2.0
                - values[i + 2] * x * a * c / 2.0
                + values[i + 3] * x * a * b / 6.0;
    }
}
