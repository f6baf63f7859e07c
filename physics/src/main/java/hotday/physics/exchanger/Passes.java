package hotday.physics.exchanger;

import java.util.Arrays;

/**
 * Where liquid or refrigerant runs in a core: passes in series, mixed in the tank between them; each pass a set of lanes in parallel with
 * a share of the flow; each lane a sequence of tiles. Every tile of the footprint is met once. A lane's share goes with its
 * height (along rows) or width (along columns), as tubes stand side by side at one pitch. Immutable, shared.
 *
 * <p>Flat inside: tiles in order of flow, the first tile of each lane, the first lane of each pass.
 */
public final class Passes {
    private final Footprint footprint;
    private final int[] tiles;
    private final double[] areas;
    private final int[] laneStarts;
    private final int[] passStarts;
    private final double[] shares;
    private final double area;

    private Passes(Footprint footprint, int[] tiles, int[] laneStarts, int[] passStarts, double[] sizes) {
        this.footprint = footprint;
        this.tiles = tiles;
        this.laneStarts = laneStarts;
        this.passStarts = passStarts;
        this.shares = shares(passStarts, sizes);
        this.areas = Arrays.stream(tiles).mapToDouble(footprint.face()::area).toArray();
        this.area = Arrays.stream(areas).sum();
    }

    private static double[] shares(int[] passStarts, double[] sizes) {
        double[] shares = new double[sizes.length];
        for (int p = 0; p + 1 < passStarts.length; p++) {
            double all = Arrays.stream(sizes, passStarts[p], passStarts[p + 1]).sum();
            for (int lane = passStarts[p]; lane < passStarts[p + 1]; lane++) {
                shares[lane] = sizes[lane] / all;
            }
        }
        return shares;
    }

    /** The end at which the first pass enters. */
    public enum Side {
        LEFT,
        RIGHT;

        private boolean other(int pass) {
            return (this == RIGHT) ^ (pass % 2 == 1);
        }
    }

    /** One pass, all rows side by side, from one side to the other. */
    public static Passes crossFlow(Footprint footprint, Side from) {
        return rows(footprint, from, new int[] {0, footprint.rows()});
    }

    /** One pass, all columns side by side, from top to bottom. */
    public static Passes downFlow(Footprint f) {
        int[] tiles = new int[f.tiles()];
        int[] laneStarts = new int[f.columns() + 1];
        double[] sizes = new double[f.columns()];
        for (int c = 0; c < f.columns(); c++) {
            sizes[c] = f.face().width(f.firstColumn() + c);
            laneStarts[c + 1] = laneStarts[c] + f.rows();
            for (int r = 0; r < f.rows(); r++) {
                tiles[laneStarts[c] + r] = f.face().tile(f.firstRow() + r, f.firstColumn() + c);
            }
        }
        return new Passes(f, tiles, laneStarts, new int[] {0, f.columns()}, sizes);
    }

    /** Row after row from the top, to and fro. */
    public static Passes serpentine(Footprint footprint, Side from) {
        int[] ends = new int[footprint.rows() + 1];
        Arrays.setAll(ends, row -> row);
        return rows(footprint, from, ends);
    }

    /**
     * Groups of rows from the top, to and fro; a condenser has for instance 0.5, 0.3, 0.2 of its height in three passes. Ends of passes
     * are moved to the nearest edge of a row; each pass keeps at least one.
     *
     * @param heightShares of the passes, each above 0, sum 1; not more passes than rows
     */
    public static Passes multiPass(Footprint footprint, Side from, double... heightShares) {
        int passes = heightShares.length;
        double sum = Arrays.stream(heightShares).sum();
        if (passes == 0 || passes > footprint.rows() || !(Math.abs(sum - 1.0) < 1e-6) || !allPositive(heightShares)) {
            throw new IllegalArgumentException("shares of the passes " + Arrays.toString(heightShares)
                    + " must be above 0, sum up to 1 and be at most " + footprint.rows() + ", one a row");
        }
        int[] ends = new int[passes + 1];
        double share = 0;
        for (int p = 1; p <= passes; p++) {
            share += heightShares[p - 1];
            int nearest = nearestEdge(footprint, share);
            ends[p] = Math.min(Math.max(nearest, ends[p - 1] + 1), footprint.rows() - (passes - p));
        }
        return rows(footprint, from, ends);
    }

    private static boolean allPositive(double[] values) {
        return Arrays.stream(values).allMatch(v -> v > 0);
    }

    private static int nearestEdge(Footprint f, double share) {
        double all = 0;
        for (int r = f.firstRow(); r <= f.lastRow(); r++) {
            all += f.face().height(r);
        }
        double wanted = share * all;
        double above = 0;
        for (int r = 0; r < f.rows(); r++) {
            double height = f.face().height(f.firstRow() + r);
            if (wanted < above + 0.5 * height) {
                return r;
            }
            above += height;
        }
        return f.rows();
    }

    /** @param ends rows at which a pass begins, counted in the footprint; last: the number of rows */
    private static Passes rows(Footprint f, Side from, int[] ends) {
        int[] tiles = new int[f.tiles()];
        int[] laneStarts = new int[f.rows() + 1];
        double[] sizes = new double[f.rows()];
        for (int p = 0; p + 1 < ends.length; p++) {
            boolean leftwards = from.other(p);
            for (int r = ends[p]; r < ends[p + 1]; r++) {
                sizes[r] = f.face().height(f.firstRow() + r);
                laneStarts[r + 1] = laneStarts[r] + f.columns();
                for (int c = 0; c < f.columns(); c++) {
                    int column = leftwards ? f.lastColumn() - c : f.firstColumn() + c;
                    tiles[laneStarts[r] + c] = f.face().tile(f.firstRow() + r, column);
                }
            }
        }
        return new Passes(f, tiles, laneStarts, ends.clone(), sizes);
    }

    public Footprint footprint() {
        return footprint;
    }

    /** Number of tiles of the core. */
    public int size() {
        return tiles.length;
    }

    /** Tile of the face at a place in the order of flow, 0..{@link #size()} - 1. */
    public int tile(int place) {
        return tiles[place];
    }

    /** Area of that tile, m2. */
    double area(int place) {
        return areas[place];
    }

    /** Face area of the core, m2. */
    public double area() {
        return area;
    }

    public int passes() {
        return passStarts.length - 1;
    }

    /** First lane of a pass; of the pass after the last one: the number of lanes. */
    public int firstLane(int pass) {
        return passStarts[pass];
    }

    /** Place of a lane's first tile; of the lane after the last one: the number of tiles. */
    public int firstPlace(int lane) {
        return laneStarts[lane];
    }

    /** Share of the flow in a lane; sums up to 1 over a pass. */
    public double share(int lane) {
        return shares[lane];
    }

    /** Spreads what belongs to the whole core (a conductance, W/K) over its tiles by area, into an array over the face. */
    public void spread(double whole, double[] perTile) {
        for (int i = 0; i < tiles.length; i++) {
            perTile[tiles[i]] = whole * areas[i] / area;
        }
    }
}
