package hotday.physics.refrigerant;

/**
 * Makes a {@link PropertyTable}: solves the equation of state at every node that a one-phase look needs, row by row from the liquid and
 * from the vapour end, each node starting from its neighbour. Past a saturation line it goes on through metastable states
 * as far as cells reach that the line crosses.
 */
final class TableMaker {
    private static final double LOWEST_PRESSURE = 0x1p15; // Pa
    private static final int PIECES = 12;
    private static final int ROWS = 7 * PIECES + PIECES / 4 + 1; // to 1.25 2^22 Pa
    private static final double COLDEST_LIQUID = 215.15;
    private static final double HOTTEST_VAPOUR = 433.15;
    private static final int COLUMNS = 145;
    private static final double TWIST_STEP = 1e-5;

    private final Refrigerant refrigerant;
    private final SaturationTable saturation;
    private final TableGrid grid;
    private final double[] nodes;
    private final double[] entropies;
    private final boolean[] solved;
    private final Flash flash;

    private TableMaker(Refrigerant refrigerant) {
        this.refrigerant = refrigerant;
        this.saturation = SaturationTable.of(refrigerant);
        double cold = refrigerant.atTemperatureQuality(COLDEST_LIQUID, 0).enthalpy();
        double hot = refrigerant
                .atPressureTemperature(LOWEST_PRESSURE, HOTTEST_VAPOUR)
                .enthalpy();
        this.grid = new TableGrid(new PressureScale(LOWEST_PRESSURE, PIECES, ROWS - 1), cold, hot, COLUMNS);
        this.nodes = new double[ROWS * COLUMNS * PropertyTable.NODE];
        this.entropies = new double[ROWS * COLUMNS * PropertyTable.ENTROPY_NODE];
        this.solved = new boolean[ROWS * COLUMNS];
        this.flash = refrigerant.flash();
    }

    static PropertyTable make(Refrigerant refrigerant) {
        TableMaker maker = new TableMaker(refrigerant);
        for (int i = 0; i < ROWS; i++) {
            maker.row(i);
        }
        byte[] cells = maker.cells();
        return new PropertyTable(refrigerant, maker.saturation, maker.grid, maker.nodes, maker.entropies, cells);
    }

    private double liquidLine(int row) {
        return saturation.liquidEnthalpy(grid.pressureOf(Math.max(0, Math.min(ROWS - 1, row))));
    }

    private double vapourLine(int row) {
        return saturation.vapourEnthalpy(grid.pressureOf(Math.max(0, Math.min(ROWS - 1, row))));
    }

    private void row(int i) {
        double p = grid.pressureOf(i);
        int lastLiquid = lastLiquid(i);
        double start = grid.enthalpyOf(0);
        flash.pressureAnd(Flash.Known.ENTHALPY, p, start);
        for (int j = 0; j <= lastLiquid; j++) {
            solve(i, j, p);
        }
        flash.pressureAnd(Flash.Known.ENTHALPY, p, grid.enthalpyOf(COLUMNS - 1));
        for (int j = COLUMNS - 1; j >= Math.max(lastLiquid + 1, firstVapour(i)); j--) {
            solve(i, j, p);
        }
    }

    /** One column past the liquid lines of this row and its neighbours. */
    private int lastLiquid(int i) {
        double reach = Math.max(liquidLine(i + 1), liquidLine(i - 1));
        return Math.min(COLUMNS - 1, (int) Math.ceil((reach - grid.firstColumn()) / grid.columnSize()) + 1);
    }

    private int firstVapour(int i) {
        double reach = Math.min(vapourLine(i), Math.min(vapourLine(i + 1), vapourLine(i - 1)));
        return Math.max(0, (int) Math.floor((reach - grid.firstColumn()) / grid.columnSize()) - 1);
    }

    /** Solves a node from the point the flash holds, and stores it. */
    private void solve(int i, int j, double p) {
        double h = grid.enthalpyOf(j);
        if (!flash.continued(p, h)) {
            return;
        }
        Point point = flash.point;
        double t = point.temperature;
        double rho = point.density;
        double[] here = slopes(point);
        double twistT = 0.0;
        double twistWork = 0.0;
        for (int side = -1; side <= 1; side += 2) {
            flash.continued(p * Math.exp(side * TWIST_STEP), h);
            double[] there = slopes(flash.point);
            twistT += side * there[1] / (2.0 * TWIST_STEP);
            twistWork += side * there[3] / (2.0 * TWIST_STEP);
        }
        flash.move(t, rho);
        int node = grid.node(i, j);
        double dy = grid.columnSize();
        int at = node * PropertyTable.NODE;
        put(nodes, at, t, here[1] * dy, here[0] / p, twistT * dy / p);
        put(nodes, at + 4, p / rho, here[3] * dy, here[2] / p, twistWork * dy / p);
        double entropy = flash.point.entropy;
        double entropyByColumn = dy / t;
        double entropyByRow = -1.0 / (rho * t);
        double entropyTwist = -here[0] / (t * t * p) * dy;
        put(entropies, node * PropertyTable.ENTROPY_NODE, entropy, entropyByColumn, entropyByRow, entropyTwist);
        solved[node] = true;
    }

    private static void put(double[] array, int at, double value, double byColumn, double byRow, double twist) {
        array[at] = value;
        array[at + 1] = byColumn;
        array[at + 2] = byRow;
        array[at + 3] = twist;
    }

    /** dT/dln p, dT/dh, d(p/rho)/dln p, d(p/rho)/dh, from the inverse of d(p, h)/d(T, rho). */
    private static double[] slopes(Point q) {
        double a = q.pressureByTemperature;
        double b = q.pressureByDensity;
        double c = q.enthalpyByTemperature();
        double d = q.enthalpyByDensity();
        double determinant = a * d - b * c;
        double p = q.pressure;
        double temperatureByPressure = d / determinant;
        double temperatureByEnthalpy = -b / determinant;
        double densityByPressure = -c / determinant;
        double densityByEnthalpy = a / determinant;
        double work = p / q.density;
        return new double[] {
            p * temperatureByPressure,
            temperatureByEnthalpy,
            work - work / q.density * p * densityByPressure,
            -work / q.density * densityByEnthalpy
        };
    }

    private byte[] cells() {
        byte[] cells = new byte[(ROWS - 1) * (COLUMNS - 1)];
        for (int i = 0; i < ROWS - 1; i++) {
            for (int j = 0; j < COLUMNS - 1; j++) {
                cells[grid.cell(i, j)] = kind(i, j);
            }
        }
        return cells;
    }

    private byte kind(int i, int j) {
        double low = grid.enthalpyOf(j);
        double high = grid.enthalpyOf(j + 1);
        boolean subcritical = grid.pressureOf(i) < saturation.criticalPressure();
        double liquidLow = liquidLine(i);
        double liquidHigh = liquidLine(i + 1);
        double vapourLow = Math.min(vapourLine(i), vapourLine(i + 1));
        double vapourHigh = highestVapour(i);
        if (!subcritical || high <= liquidLow || low >= vapourHigh) {
            return required(i, j, PropertyTable.ONE_PHASE);
        }
        if (low >= liquidHigh && high <= vapourLow) {
            return PropertyTable.TWO_PHASE;
        }
        return required(i, j, PropertyTable.CROSSED);
    }

    /** The vapour line peaks: its highest point between two rows. */
    private double highestVapour(int i) {
        double most = Math.max(vapourLine(i), vapourLine(i + 1));
        for (int k = 1; k < 8; k++) {
            most = Math.max(most, saturation.vapourEnthalpy(grid.pressureOf(i) + k / 8.0 * grid.rowWidth(i)));
        }
        return most + 1.0;
    }

    private byte required(int i, int j, byte kind) {
        if (!(solved[grid.node(i, j)]
                && solved[grid.node(i + 1, j)]
                && solved[grid.node(i, j + 1)]
                && solved[grid.node(i + 1, j + 1)])) {
            throw new IllegalStateException(refrigerant.label() + " table: a node at " + grid.pressureOf(i) + " Pa, "
                    + grid.enthalpyOf(j) + " J/kg was not solved");
        }
        return kind;
    }
}
