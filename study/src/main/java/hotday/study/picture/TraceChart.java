package hotday.study.picture;

import hotday.study.picture.Canvas.Anchor;
import java.util.List;

/**
 * Measured against predicted over time with the 90 % band, what switched in thin lanes, and what is left over below, on one axis of time. Values
 * in the unit of the labels.
 *
 * @param title above the chart
 * @param time s
 * @param measured NaN where not measured
 * @param predicted NaN throughout when no single number stands
 * @param low, high band
 * @param quantity what the values are
 * @param agreement beside the head of the residual
 * @param lanes what switched
 * @param unit of the values
 * @param differenceUnit of the residual
 * @param differenceFactor residual units in one unit of the values
 */
public record TraceChart(
        String title,
        double[] time,
        double[] measured,
        double[] predicted,
        double[] low,
        double[] high,
        String quantity,
        String agreement,
        List<Lane> lanes,
        String unit,
        String differenceUnit,
        double differenceFactor) {
    private static final Pen MEASURED = new Pen(Ink.BLACK, 0.9, 0);
    private static final Pen PREDICTED = new Pen(Ink.BLUE, 1.1, 3);
    private static final Pen RESIDUAL = new Pen(Ink.ORANGE, 0.8, 0);
    private static final double RESIDUAL_SHARE = 0.25;
    private static final double LEGEND = 190;
    private static final double TITLE = 9;
    private static final double NAMES = 52;
    private static final double LANE = 9;
    private static final Pen ON = new Pen(Ink.GREY, 3.0, 0);
    private static final Pen MOMENT = new Pen(Ink.GREY, 1.0, 0);

    /** Draws into a rectangle of the canvas. */
    public void draw(Canvas canvas, double left, double top, double width, double height) {
        double x = left + NAMES;
        double w = width - NAMES - 6;
        double room = height - 66 - LANE * lanes.size();
        double upper = room * (1 - RESIDUAL_SHARE);
        double lower = room * RESIDUAL_SHARE;
        canvas.text(left, top + 9, cut(canvas, width - LEGEND - 10), TITLE, Anchor.START, Ink.BLACK, true);
        legend(canvas, left + width, top + 9);
        double[] times = {time[0], time[time.length - 1]};
        Frame main = new Frame(canvas, x, top + 26, w, upper, times, range());
        main.band(time, low, high, Ink.SKY);
        main.axes("", quantity + ", " + unit);
        main.series(time, measured, MEASURED);
        main.series(time, predicted, PREDICTED);
        double y = top + 29 + upper;
        for (Lane lane : lanes) {
            lane(canvas, main, lane, x, y, w);
            y += LANE;
        }
        residual(canvas, x, y + 14, w, lower, times);
    }

    private void residual(Canvas canvas, double x, double y, double w, double h, double[] times) {
        double[] left = residual();
        double most = Ticks.upTo(Math.max(2.0, largest(left)));
        Frame rest = new Frame(canvas, x, y, w, h, times, new double[] {-most, most});
        rest.axes("time, s", "model less measured, " + differenceUnit);
        canvas.text(x + w, y - 4, agreement, 7.5, Anchor.END, Ink.BLACK, false);
        canvas.line(rest.x(times[0]), rest.y(0), rest.x(times[1]), rest.y(0), Pen.THIN);
        rest.series(time, left, RESIDUAL);
    }

    /** A hair line across, a grey bar while it is on, a short stroke for a moment. */
    private static void lane(Canvas canvas, Frame frame, Lane lane, double x, double y, double w) {
        double middle = y + 0.5 * LANE;
        canvas.text(x - 4, middle + 2.4, lane.name(), 6.5, Anchor.END, Ink.GREY, false);
        canvas.line(x, middle, x + w, middle, Pen.GRID);
        for (Lane.Span s : lane.spans()) {
            canvas.line(frame.x(s.from()), middle, frame.x(s.to()), middle, ON);
        }
        for (double t : lane.marks()) {
            canvas.line(frame.x(t), middle - 3, frame.x(t), middle + 3, MOMENT);
        }
    }

    /** The title, its middle left out where it would run into the legend: both ends of a run's name tell it apart. */
    private String cut(Canvas canvas, double room) {
        String shown = title;
        for (int keep = title.length() - 2; keep > 1 && canvas.width(shown, TITLE) > room; keep--) {
            int front = keep / 2;
            shown = title.substring(0, front) + "..." + title.substring(title.length() - (keep - front));
        }
        return shown;
    }

    private static void legend(Canvas canvas, double right, double y) {
        double x = right - LEGEND;
        canvas.line(x, y - 3, x + 16, y - 3, MEASURED);
        canvas.text(x + 19, y, "measured", 7.5, Anchor.START, Ink.BLACK, false);
        canvas.line(x + 62, y - 3, x + 78, y - 3, PREDICTED);
        canvas.text(x + 81, y, "model", 7.5, Anchor.START, Ink.BLACK, false);
        canvas.rectangle(x + 112, y - 7, 16, 8, Ink.SKY, Pen.NONE);
        canvas.text(x + 131, y, "90 % band", 7.5, Anchor.START, Ink.BLACK, false);
    }

    private double[] residual() {
        double[] out = new double[time.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = differenceFactor * (predicted[i] - measured[i]);
        }
        return out;
    }

    private static double largest(double[] values) {
        double largest = 0;
        for (double v : values) {
            largest = Double.isNaN(v) ? largest : Math.max(largest, Math.abs(v));
        }
        return largest;
    }

    private double[] range() {
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (double[] series : new double[][] {measured, predicted, low, high}) {
            for (double v : series) {
                if (!Double.isNaN(v)) {
                    lowest = Math.min(lowest, v);
                    highest = Math.max(highest, v);
                }
            }
        }
        double margin = Math.max(1.0, 0.04 * (highest - lowest));
        return new double[] {lowest - margin, highest + margin};
    }
}
