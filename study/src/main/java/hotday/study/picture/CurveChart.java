package hotday.study.picture;

import hotday.study.picture.Canvas.Anchor;

/**
 * One curve over one axis. Values in the units that the axis titles carry.
 *
 * @param title above the chart
 * @param x rising
 * @param y as many as x, finite
 * @param xTitle what x is, with its unit
 * @param yTitle what y is, with its unit
 */
public record CurveChart(String title, double[] x, double[] y, String xTitle, String yTitle) {
    private static final Pen CURVE = new Pen(Ink.BLUE, 1.4, 0);

    /** Draws into a rectangle of the canvas. */
    public void draw(Canvas canvas, double left, double top, double width, double height) {
        canvas.text(left, top + 9, title, 9, Anchor.START, Ink.BLACK, true);
        double lowest = y[0];
        double highest = y[0];
        for (double v : y) {
            lowest = Math.min(lowest, v);
            highest = Math.max(highest, v);
        }
        double margin = 0.03 * (highest - lowest) + 1e-9;
        double[] xs = {x[0], x[x.length - 1]};
        double[] ys = {lowest - margin, highest + margin};
        Frame frame = new Frame(canvas, left + 34, top + 26, width - 40, height - 52, xs, ys);
        frame.axes(xTitle, yTitle);
        frame.series(x, y, CURVE);
    }
}
