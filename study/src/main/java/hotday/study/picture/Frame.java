package hotday.study.picture;

import hotday.study.picture.Canvas.Anchor;

/** A rectangle on a canvas with axes; knows where a value lies on it. Values and their unit are the caller's. */
final class Frame {
    private static final double SMALL = 7.5;

    private final Canvas canvas;
    private final double left;
    private final double top;
    private final double width;
    private final double height;
    private final double xLow;
    private final double xHigh;
    private final double yLow;
    private final double yHigh;

    Frame(Canvas canvas, double left, double top, double width, double height, double[] xRange, double[] yRange) {
        this.canvas = canvas;
        this.left = left;
        this.top = top;
        this.width = width;
        this.height = height;
        this.xLow = xRange[0];
        this.xHigh = xRange[1];
        this.yLow = yRange[0];
        this.yHigh = yRange[1];
    }

    double x(double value) {
        return left + (value - xLow) / (xHigh - xLow) * width;
    }

    double y(double value) {
        return top + height - (value - yLow) / (yHigh - yLow) * height;
    }

    /** Grid, numbers and frame. */
    void axes(String xTitle, String yTitle) {
        double xStep = Ticks.step(xLow, xHigh, 8);
        for (double t : Ticks.between(xLow, xHigh, 8)) {
            canvas.line(x(t), top, x(t), top + height, Pen.GRID);
            if (!xTitle.isEmpty()) {
                canvas.text(x(t), top + height + 10, Ticks.label(t, xStep), SMALL, Anchor.MIDDLE, Ink.BLACK, false);
            }
        }
        int rows = Math.max(4, (int) (height / 22));
        double yStep = Ticks.step(yLow, yHigh, rows);
        for (double t : Ticks.between(yLow, yHigh, rows)) {
            canvas.line(left, y(t), left + width, y(t), Pen.GRID);
            canvas.text(left - 4, y(t) + 2.6, Ticks.label(t, yStep), SMALL, Anchor.END, Ink.BLACK, false);
        }
        canvas.rectangle(left, top, width, height, Ink.NONE, Pen.FRAME);
        canvas.text(left, top - 4, yTitle, SMALL, Anchor.START, Ink.BLACK, false);
        if (!xTitle.isEmpty()) {
            canvas.text(left + width, top + height + 20, xTitle, SMALL, Anchor.END, Ink.BLACK, false);
        }
    }

    /** A line through values over x, thinned to what a printed point can show; gaps at NaN stay gaps. */
    void series(double[] xs, double[] ys, Pen pen) {
        canvas.clip(left, top, width, height);
        int every = Math.max(1, xs.length / 1200);
        double[] px = new double[xs.length / every + 2];
        double[] py = new double[px.length];
        int n = 0;
        for (int i = 0; i < xs.length; i += every) {
            if (Double.isNaN(ys[i])) {
                canvas.polyline(px, py, n, pen);
                n = 0;
            } else {
                px[n] = x(xs[i]);
                py[n] = y(ys[i]);
                n++;
            }
        }
        canvas.polyline(px, py, n, pen);
        canvas.unclip();
    }

    void band(double[] xs, double[] lows, double[] highs, Ink fill) {
        canvas.clip(left, top, width, height);
        int every = Math.max(1, xs.length / 600);
        int n = (xs.length + every - 1) / every;
        double[] px = new double[n];
        double[] pl = new double[n];
        double[] ph = new double[n];
        for (int i = 0; i < n; i++) {
            px[i] = x(xs[i * every]);
            pl[i] = y(lows[i * every]);
            ph[i] = y(highs[i * every]);
        }
        canvas.area(px, pl, ph, n, fill);
        canvas.unclip();
    }
}
