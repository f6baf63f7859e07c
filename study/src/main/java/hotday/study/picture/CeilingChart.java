package hotday.study.picture;

import hotday.study.picture.Canvas.Anchor;
import java.util.List;

/**
 * One row a case: the outside temperature the build must stand as a line down the chart, the ceiling as a dot on its 90 %
 * interval, beneath it the same from the sheet alone, pale. Further right is better.
 *
 * @param rows one a case
 * @param design what the build must stand, in {@code unit}
 * @param unit of all temperatures
 */
public record CeilingChart(List<Row> rows, double design, String unit) {
    private static final double ROW = 30;
    private static final Ink PALE = new Ink(0xb4, 0xb4, 0xb4);
    private static final double NAMES = 210;
    private static final double VALUES = 100;
    private static final Pen BEFORE = new Pen(PALE, 3.0, 0);
    private static final Pen AFTER = new Pen(Ink.BLUE, 4.0, 0);
    private static final Pen DESIGN = new Pen(Ink.ORANGE, 1.4, 4);

    /**
     * @param title of the case
     * @param ceiling best; @param low, high 90 % interval; @param before, beforeLow, beforeHigh the same from the sheet alone, NaN
     *     for none
     * @param value ceiling and interval in figures
     * @param note what gives way first
     */
    public record Row(
            String title,
            double ceiling,
            double low,
            double high,
            double before,
            double beforeLow,
            double beforeHigh,
            String value,
            String note) {}

    /** Height that the rows need, points. */
    public double height() {
        return rows.size() * ROW + 44;
    }

    /** Draws into a strip of the canvas. */
    public void draw(Canvas canvas, double left, double top, double width) {
        double lowest = design;
        double highest = design;
        for (Row r : rows) {
            lowest = Math.min(lowest, Double.isNaN(r.beforeLow()) ? r.low() : Math.min(r.low(), r.beforeLow()));
            highest = Math.max(highest, Double.isNaN(r.beforeHigh()) ? r.high() : Math.max(r.high(), r.beforeHigh()));
        }
        double margin = 0.05 * (highest - lowest) + 1;
        double x = left + NAMES;
        double w = width - NAMES - VALUES;
        double h = rows.size() * ROW;
        Frame frame =
                new Frame(canvas, x, top + 14, w, h, new double[] {lowest - margin, highest + margin}, new double[] {
                    0, rows.size()
                });
        double step = Ticks.step(lowest - margin, highest + margin, 8);
        for (double t : Ticks.between(lowest - margin, highest + margin, 8)) {
            canvas.line(frame.x(t), top + 14, frame.x(t), top + 14 + h, Pen.GRID);
            canvas.text(frame.x(t), top + 24 + h, Ticks.label(t, step), 7.5, Anchor.MIDDLE, Ink.BLACK, false);
        }
        canvas.rectangle(x, top + 14, w, h, Ink.NONE, Pen.FRAME);
        for (int i = 0; i < rows.size(); i++) {
            row(canvas, frame, rows.get(i), left, top + 14 + i * ROW);
            canvas.text(
                    x + w + 6, top + 17 + (i + 0.5) * ROW, rows.get(i).value(), 7.5, Anchor.START, Ink.BLACK, false);
        }
        canvas.line(frame.x(design), top + 8, frame.x(design), top + 14 + h, DESIGN);
        canvas.text(
                frame.x(design),
                top + 5,
                "must stand " + Ticks.label(design, 1) + " " + unit,
                7.5,
                Anchor.MIDDLE,
                Ink.ORANGE,
                true);
        canvas.text(x + w, top + 36 + h, "outside temperature, " + unit, 7.5, Anchor.END, Ink.BLACK, false);
        canvas.line(left, top + 33 + h, left + 16, top + 33 + h, AFTER);
        canvas.text(left + 20, top + 36 + h, "90 % with the runs", 7.5, Anchor.START, Ink.BLACK, false);
        canvas.line(left + 100, top + 33 + h, left + 116, top + 33 + h, BEFORE);
        canvas.text(left + 120, top + 36 + h, "90 % from the sheet alone", 7.5, Anchor.START, Ink.BLACK, false);
    }

    private static void row(Canvas canvas, Frame frame, Row r, double left, double top) {
        double middle = top + 0.5 * ROW;
        canvas.text(left, middle - 1, r.title(), 8.5, Anchor.START, Ink.BLACK, true);
        canvas.text(left, middle + 9, r.note(), 7, Anchor.START, Ink.GREY, false);
        if (!Double.isNaN(r.beforeLow())) {
            canvas.line(frame.x(r.beforeLow()), middle + 8, frame.x(r.beforeHigh()), middle + 8, BEFORE);
            canvas.circle(frame.x(r.before()), middle + 8, 2.5, Ink.WHITE, new Pen(PALE, 1.2, 0));
        }
        canvas.line(frame.x(r.low()), middle, frame.x(r.high()), middle, AFTER);
        canvas.circle(frame.x(r.ceiling()), middle, 4, Ink.WHITE, new Pen(Ink.BLUE, 1.5, 0));
    }
}
