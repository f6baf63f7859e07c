package hotday.vehicle.airpath;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Lines that cut the face into tiles. Tile index = row x columns + column; row 0 is the top one, column 0 the left one seen
 * from the front.
 *
 * @param x lines from left to right, m, rising from 0 to the width
 * @param y lines from top to bottom, m, rising from 0 to the height
 */
public record Grid(List<Double> x, List<Double> y) {
    /** Lines closer than this are one, m: less than any core is placed by. */
    private static final double MERGED = 3e-3;

    public Grid {
        x = lines("x", x);
        y = lines("y", y);
    }

    private static List<Double> lines(String name, List<Double> lines) {
        if (lines.size() < 2 || lines.get(0) != 0.0) {
            throw new IllegalArgumentException(name + " lines " + lines + " m must be two or more from 0");
        }
        for (int i = 1; i < lines.size(); i++) {
            if (!(lines.get(i) > lines.get(i - 1))) {
                throw new IllegalArgumentException(name + " line " + lines.get(i)
                        + " m must lie beyond the one before, " + lines.get(i - 1) + " m");
            }
        }
        return List.copyOf(lines);
    }

    /** Tiles of one size over width x height, m. */
    public static Grid uniform(int columns, int rows, double width, double height) {
        return through(width, height, columns, rows, List.of());
    }

    /**
     * About columns x rows tiles over width x height, m, with lines exactly through the edges of all rectangles: what lies
     * between two such lines is divided into the whole number of parts nearest to the usual tile size, one at least. Of lines
     * closer than 3 mm the first counts, and the edges of the face before all.
     */
    public static Grid through(double width, double height, int columns, int rows, List<Rectangle> edges) {
        if (columns < 1 || rows < 1) {
            throw new IllegalArgumentException("grid of " + columns + " x " + rows + " tiles must have 1 or more");
        }
        List<Double> x = needed(width, edges, Rectangle::left, Rectangle::right);
        List<Double> y = needed(height, edges, Rectangle::top, Rectangle::bottom);
        return new Grid(divided(x, width / columns), divided(y, height / rows));
    }

    private static List<Double> needed(
            double length,
            List<Rectangle> edges,
            ToDoubleFunction<Rectangle> first,
            ToDoubleFunction<Rectangle> second) {
        double[] sorted = edges.stream()
                .flatMapToDouble(r -> DoubleStream.of(first.applyAsDouble(r), second.applyAsDouble(r)))
                .filter(at -> at > MERGED && at < length - MERGED)
                .sorted()
                .toArray();
        List<Double> lines = new ArrayList<>(List.of(0.0));
        for (double at : sorted) {
            if (at - lines.get(lines.size() - 1) >= MERGED) {
                lines.add(at);
            }
        }
        lines.add(length);
        return lines;
    }

    private static List<Double> divided(List<Double> needed, double target) {
        List<Double> lines = new ArrayList<>();
        for (int i = 1; i < needed.size(); i++) {
            double from = needed.get(i - 1);
            double gap = needed.get(i) - from;
            long parts = Math.max(1, Math.round(gap / target));
            for (int part = 0; part < parts; part++) {
                lines.add(from + gap * part / parts);
            }
        }
        lines.add(needed.get(needed.size() - 1));
        return lines;
    }

    public int columns() {
        return x.size() - 1;
    }

    public int rows() {
        return y.size() - 1;
    }

    public int tiles() {
        return columns() * rows();
    }

    /** m. */
    public double width() {
        return x.get(columns());
    }

    /** m. */
    public double height() {
        return y.get(rows());
    }

    /** Area of a tile, m2. */
    public double area(int tile) {
        int column = tile % columns();
        int row = tile / columns();
        return (x.get(column + 1) - x.get(column)) * (y.get(row + 1) - y.get(row));
    }

    /** Middle of a tile from the left, m. */
    public double middleX(int tile) {
        int column = tile % columns();
        return 0.5 * (x.get(column) + x.get(column + 1));
    }

    /** Middle of a tile from the top, m. */
    public double middleY(int tile) {
        int row = tile / columns();
        return 0.5 * (y.get(row) + y.get(row + 1));
    }

    /** The tiles whose middle lies in a rectangle, rising. */
    public int[] inside(Rectangle rectangle) {
        return IntStream.range(0, tiles())
                .filter(tile -> rectangle.holds(middleX(tile), middleY(tile)))
                .toArray();
    }

    /** The tile a point lies in; a point beyond the face belongs to the nearest one. */
    int at(double left, double top) {
        return cell(y, top) * columns() + cell(x, left);
    }

    private static int cell(List<Double> lines, double at) {
        int cell = 0;
        while (cell < lines.size() - 2 && at >= lines.get(cell + 1)) {
            cell++;
        }
        return cell;
    }
}
