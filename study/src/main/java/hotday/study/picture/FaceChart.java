package hotday.study.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A front drawn to scale: one panel of coloured tiles with their numbers for each quantity, all in one scale of colours a
 * kind, and a side view with the depth order.
 *
 * @param title of the whole
 * @param notes lines under the title
 * @param x, y lines of the tiles from the left and from the top, any one unit of length
 * @param speeds the panel of air speeds
 * @param temperatures panels of temperatures, in depth order
 * @param outlines what is drawn over the tiles of every panel
 * @param side what stands behind one another, from the front
 */
public record FaceChart(
        String title,
        List<String> notes,
        List<Double> x,
        List<Double> y,
        Panel speeds,
        List<Panel> temperatures,
        List<Outline> outlines,
        List<Layer> side) {
    private static final double WIDTH = 860;
    private static final double MARGIN = 24;
    private static final double GAP = 36;
    private static final double PANEL = (WIDTH - 2 * MARGIN - GAP) / 2;
    private static final double LINE = 13;
    private static final double HEAD = 22;
    private static final Pen TILE = new Pen(Ink.WHITE, 0.4, 0);
    private static final Pen OUTLINE = new Pen(Ink.BLACK, 1.6, 0);
    private static final Pen DASHED = new Pen(Ink.BLACK, 0.8, 5);

    public FaceChart {
        notes = List.copyOf(notes);
        x = List.copyOf(x);
        y = List.copyOf(y);
        temperatures = List.copyOf(temperatures);
        outlines = List.copyOf(outlines);
        side = List.copyOf(side);
    }

    /**
     * @param title with the unit
     * @param values per tile, row by row from the top; NaN where there is nothing
     * @param digits behind the point
     * @param framed rectangles drawn strongly over this panel
     */
    public record Panel(String title, List<Double> values, int digits, List<Box> framed) {
        public Panel {
            values = List.copyOf(values);
            framed = List.copyOf(framed);
        }
    }

    /** From the left and the top, in the unit of the tile lines. */
    public record Box(double left, double top, double width, double height) {}

    /** @param round a circle inside the box instead of the box */
    public record Outline(String name, Box box, boolean round) {}

    /**
     * One thing in the side view.
     *
     * @param depth in the unit of the tile lines
     * @param parts what is seen of it from the side: top and height of each
     */
    public record Layer(String name, double depth, List<Box> parts, boolean solid) {
        public Layer {
            parts = List.copyOf(parts);
        }
    }

    private double scale() {
        return PANEL / x.get(x.size() - 1);
    }

    private double panelHeight() {
        return y.get(y.size() - 1) * scale();
    }

    private List<Panel> panels() {
        List<Panel> all = new ArrayList<>();
        all.add(speeds);
        all.addAll(temperatures);
        return all;
    }

    private double top() {
        return MARGIN + HEAD + notes.size() * LINE + 44;
    }

    public double width() {
        return WIDTH;
    }

    /** Points. */
    public double height() {
        int rows = (panels().size() + 2) / 2;
        return top() + rows * (panelHeight() + HEAD + 18) + 16;
    }

    /** Draws all of it. */
    public void draw(Canvas canvas) {
        canvas.text(MARGIN, MARGIN + 8, title, 15, Canvas.Anchor.START, Ink.BLACK, true);
        for (int i = 0; i < notes.size(); i++) {
            canvas.text(MARGIN, MARGIN + HEAD + 4 + i * LINE, notes.get(i), 10, Canvas.Anchor.START, Ink.BLACK, false);
        }
        Shade fast = shade(List.of(speeds));
        Shade hot = shade(temperatures);
        double legend = top() - 34;
        legend(canvas, fast, speeds, MARGIN, legend);
        legend(canvas, hot, temperatures.get(0), MARGIN + PANEL + GAP, legend);
        List<Panel> panels = panels();
        for (int i = 0; i < panels.size(); i++) {
            panel(canvas, panels.get(i), i == 0 ? fast : hot, left(i), topOf(i));
        }
        side(canvas, left(panels.size()), topOf(panels.size()));
    }

    private static double left(int place) {
        return MARGIN + place % 2 * (PANEL + GAP);
    }

    private double topOf(int place) {
        return top() + place / 2 * (panelHeight() + HEAD + 18);
    }

    private static Shade shade(List<Panel> panels) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Panel panel : panels) {
            for (double value : panel.values()) {
                if (!Double.isNaN(value)) {
                    least = Math.min(least, value);
                    most = Math.max(most, value);
                }
            }
        }
        return least <= most ? new Shade(least, most) : new Shade(0, 1);
    }

    private void legend(Canvas canvas, Shade shade, Panel panel, double left, double top) {
        int pieces = 48;
        double bar = PANEL - 130;
        for (int i = 0; i < pieces; i++) {
            double value = shade.least() + (shade.most() - shade.least()) * (i + 0.5) / pieces;
            canvas.rectangle(left + bar * i / pieces, top, bar / pieces + 0.4, 9, shade.of(value), Pen.NONE);
        }
        String unit =
                panel.title().substring(panel.title().lastIndexOf(',') + 1).trim();
        canvas.text(left, top + 19, number(shade.least(), panel.digits()), 9, Canvas.Anchor.START, Ink.BLACK, false);
        String most = number(shade.most(), panel.digits()) + " " + unit;
        canvas.text(left + bar, top + 19, most, 9, Canvas.Anchor.END, Ink.BLACK, false);
    }

    private void panel(Canvas canvas, Panel panel, Shade shade, double left, double top) {
        canvas.text(left, top + 12, panel.title(), 11, Canvas.Anchor.START, Ink.BLACK, true);
        double from = top + HEAD - 2;
        int columns = x.size() - 1;
        for (int t = 0; t < panel.values().size(); t++) {
            tile(canvas, panel, shade, t % columns, t / columns, left, from);
        }
        canvas.rectangle(left, from, PANEL, panelHeight(), Ink.NONE, Pen.FRAME);
        outlines.forEach(outline -> outline(canvas, outline, left, from));
        panel.framed().forEach(framed -> box(canvas, framed, left, from, OUTLINE));
    }

    private void tile(Canvas canvas, Panel panel, Shade shade, int column, int row, double left, double from) {
        double value = panel.values().get(row * (x.size() - 1) + column);
        double x0 = left + x.get(column) * scale();
        double y0 = from + y.get(row) * scale();
        double wide = (x.get(column + 1) - x.get(column)) * scale();
        double high = (y.get(row + 1) - y.get(row)) * scale();
        if (Double.isNaN(value)) {
            canvas.rectangle(x0, y0, wide, high, Ink.WHITE, Pen.GRID);
            return;
        }
        Ink ground = shade.of(value);
        canvas.rectangle(x0, y0, wide, high, ground, TILE);
        String text = number(value, panel.digits());
        double size = Math.min(10.0, Math.min(0.8 * high, wide / (0.58 * Math.max(3, text.length()))));
        if (size >= 4.5) {
            canvas.text(
                    x0 + 0.5 * wide,
                    y0 + 0.5 * high + 0.36 * size,
                    text,
                    size,
                    Canvas.Anchor.MIDDLE,
                    Shade.textOn(ground),
                    false);
        }
    }

    private static String number(double value, int digits) {
        return String.format(Locale.ROOT, "%." + digits + "f", value + 0.0);
    }

    private void outline(Canvas canvas, Outline outline, double left, double from) {
        Box box = outline.box();
        if (outline.round()) {
            double radius = 0.5 * Math.min(box.width(), box.height()) * scale();
            double cx = left + (box.left() + 0.5 * box.width()) * scale();
            double cy = from + (box.top() + 0.5 * box.height()) * scale();
            canvas.circle(cx, cy, radius, Ink.NONE, DASHED);
        } else {
            box(canvas, box, left, from, DASHED);
        }
    }

    private void box(Canvas canvas, Box box, double left, double from, Pen pen) {
        canvas.rectangle(
                left + box.left() * scale(),
                from + box.top() * scale(),
                box.width() * scale(),
                box.height() * scale(),
                Ink.NONE,
                pen);
    }

    private void side(Canvas canvas, double left, double top) {
        canvas.text(left, top + 12, "Side view, air from the left", 11, Canvas.Anchor.START, Ink.BLACK, true);
        double from = top + HEAD - 2;
        double gap = Math.min(30.0, (PANEL - 150.0 - depths()) / Math.max(1, side.size()));
        double at = left + 8;
        double names = left + PANEL - 140;
        for (int i = 0; i < side.size(); i++) {
            Layer layer = side.get(i);
            double wide = Math.max(2.0, layer.depth() * scale());
            for (Box part : layer.parts()) {
                Ink fill = layer.solid() ? Ink.SKY : Ink.NONE;
                canvas.rectangle(at, from + part.top() * scale(), wide, part.height() * scale(), fill, Pen.FRAME);
            }
            String number = Integer.toString(i + 1);
            double below = from + panelHeight() + 11;
            canvas.text(at + 0.5 * wide, below, number, 9, Canvas.Anchor.MIDDLE, Ink.BLACK, true);
            canvas.text(names, from + 12 + 15 * i, number, 9, Canvas.Anchor.START, Ink.BLACK, true);
            canvas.text(names + 14, from + 12 + 15 * i, layer.name(), 9, Canvas.Anchor.START, Ink.BLACK, false);
            at += wide + gap;
        }
    }

    private double depths() {
        return side.stream()
                .mapToDouble(layer -> Math.max(2.0, layer.depth() * scale()))
                .sum();
    }
}
