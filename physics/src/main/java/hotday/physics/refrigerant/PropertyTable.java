package hotday.physics.refrigerant;

import java.util.EnumMap;
import java.util.Map;

/**
 * Temperature, density and entropy of one refrigerant against pressure and enthalpy, for time loops. Grid of
 * pressure octaves and enthalpy with bicubic pieces (values and slopes of the equation of state at the nodes). One analytic surface serves liquid and
 * vapour, because temperature and density stay smooth in (p, h) across the saturation lines and around the critical point: cells that
 * a line crosses are filled with metastable states. Inside the two-phase region {@link SaturationTable} answers.
 *
 * <p>Made at first use from the equation of state in a fraction of a second; {@link #VERSION} changes with grid or form. Error: see {@link
 * TableError}. Outside the range the nearest edge answers: ask {@link #covers} where that matters. Immutable, shared by
 * all threads; a look allocates nothing.
 */
public final class PropertyTable {
    /** Of grid and form. */
    public static final int VERSION = 1;

    /** Places in the arrays filled here: K, kg/m3. */
    public static final int TEMPERATURE = 0;

    public static final int DENSITY = 1;
    /** Slopes: K/Pa, K kg/J, kg/(m3 Pa), kg2/(m3 J). */
    public static final int TEMPERATURE_BY_PRESSURE = 2;

    public static final int TEMPERATURE_BY_ENTHALPY = 3;
    public static final int DENSITY_BY_PRESSURE = 4;
    public static final int DENSITY_BY_ENTHALPY = 5;

    static final byte ONE_PHASE = 0;
    static final byte TWO_PHASE = 1;
    static final byte CROSSED = 2;

    /** Per node and surface: value, slope per column, slope per Pa, slope of both; surfaces: T, p/rho. */
    static final int NODE = 8;

    /** The same of entropy alone. */
    static final int ENTROPY_NODE = 4;

    private static final Map<Refrigerant, PropertyTable> MADE = new EnumMap<>(Refrigerant.class);
    private static final int NEWTON_STEPS = 12;
    private static final double LARGEST_STEP = 30e3; // J/kg
    private static final double SETTLED = 1e-3; // J/kg

    private final Refrigerant refrigerant;
    private final SaturationTable saturation;
    private final TableGrid grid;
    private final double[] nodes;
    private final double[] entropies;
    private final byte[] cells;

    PropertyTable(
            Refrigerant refrigerant,
            SaturationTable saturation,
            TableGrid grid,
            double[] nodes,
            double[] entropies,
            byte[] cells) {
        this.refrigerant = refrigerant;
        this.saturation = saturation;
        this.grid = grid;
        this.nodes = nodes;
        this.entropies = entropies;
        this.cells = cells;
    }

    /** The table of a refrigerant; made when first asked for. */
    public static synchronized PropertyTable of(Refrigerant refrigerant) {
        return MADE.computeIfAbsent(refrigerant, TableMaker::make);
    }

    public Refrigerant refrigerant() {
        return refrigerant;
    }

    public SaturationTable saturation() {
        return saturation;
    }

    /** True inside the grid: 0.33 to 52 bar and the enthalpies between -58 degC liquid and 160 degC vapour. */
    public boolean covers(double pressure, double enthalpy) {
        return grid.covers(pressure, enthalpy);
    }

    /** In one line: size, range and version. */
    public String description() {
        return grid.description(refrigerant.label(), VERSION);
    }

    /**
     * Temperature and density.
     *
     * @param pressure Pa
     * @param enthalpy J/kg
     * @param out at least 2 long: K, kg/m3
     */
    public void look(double pressure, double enthalpy, double[] out) {
        double u = grid.row(pressure);
        double v = grid.column(enthalpy);
        int i = (int) u;
        int j = (int) v;
        byte kind = cells[grid.cell(i, j)];
        if (kind == ONE_PHASE || kind == CROSSED && outside(pressure, enthalpy)) {
            bicubic(grid.node(i, j) * NODE, grid.rowWidth(i), u - i, v - j, out);
            out[DENSITY] = pressure / out[DENSITY];
        } else {
            mixture(pressure, enthalpy, out);
        }
    }

    /** True on the one-phase side of both saturation lines. */
    private boolean outside(double pressure, double enthalpy) {
        double place = saturation.place(pressure);
        double half = saturation.root(pressure) * saturation.at(place, SaturationTable.ENTHALPY + 1);
        return Math.abs(enthalpy - saturation.at(place, SaturationTable.ENTHALPY)) >= half;
    }

    /** With s = sqrt(1 - p/pc): h = A + B s z and v = C + D s z, z from -1 (liquid) to 1 (vapour). */
    private void mixture(double pressure, double enthalpy, double[] out) {
        double place = saturation.place(pressure);
        double z = (enthalpy - saturation.at(place, SaturationTable.ENTHALPY))
                / saturation.at(place, SaturationTable.ENTHALPY + 1);
        out[TEMPERATURE] = saturation.at(place, SaturationTable.STORED_TEMPERATURE);
        out[DENSITY] = 1.0
                / (saturation.at(place, SaturationTable.VOLUME) + z * saturation.at(place, SaturationTable.VOLUME + 1));
    }

    private void bicubic(int at, double width, double x, double y, double[] out) {
        int far = at + grid.columns() * NODE;
        double x2 = x * x;
        double y2 = y * y;
        double xRise = x2 * (3.0 - 2.0 * x);
        double xFirst = width * x * (1.0 - x) * (1.0 - x);
        double xSecond = width * x2 * (x - 1.0);
        double yRise = y2 * (3.0 - 2.0 * y);
        double yFirst = y * (1.0 - y) * (1.0 - y);
        double ySecond = y2 * (y - 1.0);
        for (int k = 0; k < 2; k++) {
            int a = at + 4 * k;
            int b = far + 4 * k;
            double near = along(nodes, a, yRise, yFirst, ySecond);
            double there = along(nodes, b, yRise, yFirst, ySecond);
            double nearSlope = along(nodes, a + 2, yRise, yFirst, ySecond);
            double thereSlope = along(nodes, b + 2, yRise, yFirst, ySecond);
            out[k] = near + (there - near) * xRise + xFirst * nearSlope + xSecond * thereSlope;
        }
    }

    /** Along a row: value and slope per column of two neighbouring nodes. */
    private static double along(double[] nodes, int a, double rise, double first, double second) {
        int b = a + NODE;
        return nodes[a] + (nodes[b] - nodes[a]) * rise + first * nodes[a + 1] + second * nodes[b + 1];
    }

    /**
     * Temperature, density and their slopes at constant enthalpy and at constant pressure. On the saturation lines the slopes
     * jump; there those of the one phase are given.
     *
     * @param pressure Pa
     * @param enthalpy J/kg
     * @param out at least 6 long, places named above
     */
    public void lookWithSlopes(double pressure, double enthalpy, double[] out) {
        double u = grid.row(pressure);
        double v = grid.column(enthalpy);
        int i = (int) u;
        int j = (int) v;
        byte kind = cells[grid.cell(i, j)];
        if (kind == ONE_PHASE || kind == CROSSED && outside(pressure, enthalpy)) {
            oneWithSlopes(pressure, grid.node(i, j) * NODE, grid.rowWidth(i), u - i, v - j, out);
        } else {
            mixtureWithSlopes(pressure, enthalpy, out);
        }
    }

    private void oneWithSlopes(double pressure, int at, double width, double x, double y, double[] out) {
        bicubic(at, width, x, y, out);
        double work = out[DENSITY]; // p / rho
        double density = pressure / work;
        out[DENSITY] = density;
        out[TEMPERATURE_BY_PRESSURE] = slopeByRow(at, width, x, y);
        out[TEMPERATURE_BY_ENTHALPY] = slopeByColumn(at, width, x, y) / grid.columnSize();
        out[DENSITY_BY_PRESSURE] = density / pressure - density / work * slopeByRow(at + 4, width, x, y);
        out[DENSITY_BY_ENTHALPY] = -density / work * slopeByColumn(at + 4, width, x, y) / grid.columnSize();
    }

    private double slopeByRow(int at, double width, double x, double y) {
        int far = at + grid.columns() * NODE;
        double rise = y * y * (3.0 - 2.0 * y);
        double first = y * (1.0 - y) * (1.0 - y);
        double second = y * y * (y - 1.0);
        double near = along(nodes, at, rise, first, second);
        double there = along(nodes, far, rise, first, second);
        return (there - near) * 6.0 * x * (1.0 - x) / width
                + along(nodes, at + 2, rise, first, second) * (1.0 - x) * (1.0 - 3.0 * x)
                + along(nodes, far + 2, rise, first, second) * x * (3.0 * x - 2.0);
    }

    private double slopeByColumn(int at, double width, double x, double y) {
        int far = at + grid.columns() * NODE;
        double rise = 6.0 * y * (1.0 - y);
        double first = (1.0 - y) * (1.0 - 3.0 * y);
        double second = y * (3.0 * y - 2.0);
        double near = along(nodes, at, rise, first, second) - nodes[at];
        double there = along(nodes, far, rise, first, second) - nodes[far];
        double nearTwist = along(nodes, at + 2, rise, first, second) - nodes[at + 2];
        double thereTwist = along(nodes, far + 2, rise, first, second) - nodes[far + 2];
        return near
                + (there - near) * x * x * (3.0 - 2.0 * x)
                + width * x * (1.0 - x) * ((1.0 - x) * nearTwist - x * thereTwist);
    }

    private void mixtureWithSlopes(double pressure, double enthalpy, double[] out) {
        mixture(pressure, enthalpy, out);
        SaturationTable s = saturation;
        double place = s.place(pressure);
        double spread = s.at(place, SaturationTable.ENTHALPY + 1);
        double z = (enthalpy - s.at(place, SaturationTable.ENTHALPY)) / spread;
        double swell = s.at(place, SaturationTable.VOLUME + 1);
        double zByPressure =
                -(s.slopeAt(place, SaturationTable.ENTHALPY) + z * s.slopeAt(place, SaturationTable.ENTHALPY + 1))
                        / spread;
        double volumeByPressure = s.slopeAt(place, SaturationTable.VOLUME)
                + z * s.slopeAt(place, SaturationTable.VOLUME + 1)
                + zByPressure * swell;
        double density = out[DENSITY];
        out[TEMPERATURE_BY_PRESSURE] = s.slopeAt(place, SaturationTable.STORED_TEMPERATURE);
        out[TEMPERATURE_BY_ENTHALPY] = 0.0;
        out[DENSITY_BY_PRESSURE] = -density * density * volumeByPressure;
        out[DENSITY_BY_ENTHALPY] = -density * density * swell / spread;
    }

    /** J/(kg K) at Pa and J/kg. */
    public double entropy(double pressure, double enthalpy) {
        double u = grid.row(pressure);
        double v = grid.column(enthalpy);
        int i = (int) u;
        int j = (int) v;
        byte kind = cells[grid.cell(i, j)];
        if (kind == ONE_PHASE || kind == CROSSED && outside(pressure, enthalpy)) {
            return entropyOf(grid.node(i, j) * ENTROPY_NODE, grid.rowWidth(i), u - i, v - j);
        }
        double place = saturation.place(pressure);
        double z = (enthalpy - saturation.at(place, SaturationTable.ENTHALPY))
                / saturation.at(place, SaturationTable.ENTHALPY + 1);
        return saturation.at(place, SaturationTable.ENTROPY) + z * saturation.at(place, SaturationTable.ENTROPY + 1);
    }

    private double entropyOf(int at, double width, double x, double y) {
        int far = at + grid.columns() * ENTROPY_NODE;
        double rise = y * y * (3.0 - 2.0 * y);
        double first = y * (1.0 - y) * (1.0 - y);
        double second = y * y * (y - 1.0);
        double near = entropyAlong(at, rise, first, second);
        double there = entropyAlong(far, rise, first, second);
        double nearSlope = entropyAlong(at + 2, rise, first, second);
        double thereSlope = entropyAlong(far + 2, rise, first, second);
        return near
                + (there - near) * x * x * (3.0 - 2.0 * x)
                + width * x * (1.0 - x) * ((1.0 - x) * nearSlope - x * thereSlope);
    }

    private double entropyAlong(int a, double rise, double first, double second) {
        int b = a + ENTROPY_NODE;
        return entropies[a]
                + (entropies[b] - entropies[a]) * rise
                + first * entropies[a + 1]
                + second * entropies[b + 1];
    }

    /**
     * Enthalpy after a change of pressure at constant entropy, J/kg.
     *
     * @param pressure after, Pa
     * @param entropy J/(kg K)
     * @param guess J/kg
     */
    public double enthalpyAtEntropy(double pressure, double entropy, double guess, double[] scratch) {
        double h = guess;
        for (int i = 0; i < NEWTON_STEPS; i++) {
            look(pressure, h, scratch);
            double step = scratch[TEMPERATURE] * (entropy - entropy(pressure, h));
            h += step;
            if (Math.abs(step) < 1e-6 * Math.abs(h)) {
                break;
            }
        }
        return h;
    }

    /**
     * Enthalpy of one phase at a temperature, J/kg; a saturated value where the temperature lies on the other side.
     *
     * @param pressure Pa
     * @param temperature K
     * @param vapour which phase below the critical pressure
     */
    public double enthalpy(double pressure, double temperature, boolean vapour, double[] scratch) {
        boolean dense = pressure >= saturation.criticalPressure();
        double edge = vapour ? saturation.vapourEnthalpy(pressure) : saturation.liquidEnthalpy(pressure);
        double h = edge;
        for (int i = 0; i < 4 * NEWTON_STEPS; i++) {
            sheet(pressure, h, scratch);
            double step = (temperature - scratch[TEMPERATURE]) / Math.max(scratch[TEMPERATURE_BY_ENTHALPY], 1e-5);
            step = Math.max(-LARGEST_STEP, Math.min(LARGEST_STEP, step));
            double next = h + step;
            if (!dense) {
                next = vapour ? Math.max(edge, next) : Math.min(edge, next);
            }
            boolean done = Math.abs(next - h) < SETTLED;
            h = next;
            if (done) {
                break;
            }
        }
        return h;
    }

    /** On the surface of one phase, also at its edges. */
    private void sheet(double pressure, double enthalpy, double[] out) {
        double u = grid.row(pressure);
        double v = grid.column(enthalpy);
        int i = (int) u;
        int j = (int) v;
        oneWithSlopes(pressure, grid.node(i, j) * NODE, grid.rowWidth(i), u - i, v - j, out);
    }

    /**
     * A state with all that the table knows: temperature, density, entropy, quality and, in one phase, specific heat; the rest is
     * NaN. Not for time loops.
     *
     * @throws RangeException outside the grid
     */
    public FluidState state(double pressure, double enthalpy) {
        if (!covers(pressure, enthalpy)) {
            throw new RangeException(refrigerant.label() + ": " + pressure + " Pa and " + enthalpy
                    + " J/kg lie outside the table, " + grid.pressureOf(0) + " to " + grid.pressureOf(grid.rows() - 1)
                    + " Pa and " + grid.firstColumn() + " to " + grid.enthalpyOf(grid.columns() - 1) + " J/kg");
        }
        double[] out = new double[6];
        lookWithSlopes(pressure, enthalpy, out);
        double x = quality(pressure, enthalpy);
        boolean mixed = x > 0.0 && x < 1.0;
        return new FluidState(
                out[TEMPERATURE],
                pressure,
                out[DENSITY],
                enthalpy,
                entropy(pressure, enthalpy),
                mixed ? x : Double.NaN,
                mixed ? Region.TWO_PHASE : refrigerant.region(out[TEMPERATURE], pressure, out[DENSITY]),
                mixed ? Double.NaN : 1.0 / out[TEMPERATURE_BY_ENTHALPY],
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Double.NaN);
    }

    /** Below 0 liquid, above 1 vapour; NaN from the critical pressure on. */
    private double quality(double pressure, double enthalpy) {
        if (pressure >= saturation.criticalPressure()) {
            return Double.NaN;
        }
        double liquid = saturation.liquidEnthalpy(pressure);
        return (enthalpy - liquid) / (saturation.vapourEnthalpy(pressure) - liquid);
    }

    /** The same from a temperature, K, in one phase. */
    public FluidState stateAtTemperature(double pressure, double temperature) {
        boolean vapour = pressure >= saturation.criticalPressure()
                ? temperature >= refrigerant.criticalTemperature()
                : temperature >= saturation.temperature(pressure);
        return state(pressure, enthalpy(pressure, temperature, vapour, new double[6]));
    }

    /**
     * In equilibrium, with specific heat, viscosity and conductivity at quality 0 and 1.
     *
     * @param quality 0..1
     * @throws RangeException outside the grid
     */
    public FluidState saturatedState(double pressure, double quality) {
        if (!(pressure >= grid.pressureOf(0) && pressure <= saturation.criticalPressure())) {
            throw new RangeException(refrigerant.label() + ": saturation at " + pressure + " Pa, the table has "
                    + grid.pressureOf(0) + " Pa to the critical " + saturation.criticalPressure() + " Pa");
        }
        double[] s = new double[SaturationTable.COLUMNS];
        saturation.look(pressure, s);
        boolean liquid = quality == 0.0;
        boolean pure = liquid || quality == 1.0;
        int phase = liquid ? 0 : 1;
        return new FluidState(
                s[SaturationTable.TEMPERATURE],
                pressure,
                1.0 / mixed(s, SaturationTable.LIQUID_VOLUME, quality),
                mixed(s, SaturationTable.LIQUID_ENTHALPY, quality),
                mixed(s, SaturationTable.LIQUID_ENTROPY, quality),
                quality,
                Region.TWO_PHASE,
                pure ? s[SaturationTable.LIQUID_HEAT + phase] : Double.NaN,
                Double.NaN,
                Double.NaN,
                pure ? s[SaturationTable.LIQUID_VISCOSITY + phase] : Double.NaN,
                pure ? s[SaturationTable.LIQUID_CONDUCTIVITY + phase] : Double.NaN);
    }

    private static double mixed(double[] s, int liquid, double quality) {
        return (1.0 - quality) * s[liquid] + quality * s[liquid + 1];
    }
}
