package hotday.study.picture;

import hotday.study.picture.Canvas.Anchor;

/**
 * Two curves over one axis. Values in the units that the axis titles carry.
 *
 * @param title above the chart
 * @param x rising
 * @param first, second as many as x, finite
 * @param firstName, secondName in the legend
 * @param xTitle what x is, with its unit
 * @param yTitle what y is, with its unit
 */
public record PairChart(
        String title,
        double[] x,
        double[] first,
        double[] second,
        String firstName,
        String secondName,
        String xTitle,
        String yTitle) {
    private static final Pen FIRST = new Pen(Ink.ORANGE, 1.1, 3);
    private static final Pen SECOND = new Pen(Ink.BLUE, 1.4, 0);

    /** Draws into a rectangle of the canvas. */
    public void draw(Canvas canvas, double left, double top, double width, double height) {
        canvas.text(left, top + 9, title, 9, Anchor.START, Ink.BLACK, true);
        legend(canvas, left + width - 250, top + 9, FIRST, firstName);
        legend(canvas, left + width - 120, top + 9, SECOND, secondName);
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (double[] curve : new double[][] {first, second}) {
            for (double v : curve) {
                lowest = Math.min(lowest, v);
                highest = Math.max(highest, v);
            }
        }
        double margin = 0.03 * (highest - lowest) + 1e-9;
        double[] xs = {x[0], x[x.length - 1]};
        double[] ys = {lowest - margin, highest + margin};
        Frame frame = new Frame(canvas, left + 34, top + 26, width - 40, height - 52, xs, ys);
        frame.axes(xTitle, yTitle);
        frame.series(x, first, FIRST);
        frame.series(x, second, SECOND);
    }

    private static void legend(Canvas canvas, double x, double y, Pen pen, String name) {
        canvas.line(x, y - 3, x + 16, y - 3, pen);
        canvas.text(x + 19, y, name, 7.5, Anchor.START, Ink.BLACK, false);
    }
}
