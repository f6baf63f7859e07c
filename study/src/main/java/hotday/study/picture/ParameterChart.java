package hotday.study.picture;

import hotday.study.picture.Canvas.Anchor;
import java.util.List;

/**
 * What runs told about the unknowns of a build: one row each, in prior standard deviations from the sheet's value. The prior's 90 % is
 * the pale strip down the chart, the posterior's a bar with its best value; what the runs did not inform stands below a line, grey.
 *
 * @param title above the chart
 * @param rows in the order to be shown
 */
public record ParameterChart(String title, List<Row> rows) {
    private static final double ROW = 17;
    private static final double GAP = 22;
    private static final double HEAD = 32;
    private static final double FOOT = 36;
    private static final double NAMES = 168;
    private static final double VALUES = 196;
    private static final double PRIOR = 1.645;
    private static final double SMALL = 7.5;

    /**
     * @param name of the unknown
     * @param shift best value less the sheet's, prior standard deviations
     * @param width posterior over prior standard deviation
     * @param value best value and interval with unit
     * @param sheet the sheet's value with unit
     * @param told whether the runs informed it
     */
    public record Row(String name, double shift, double width, String value, String sheet, boolean told) {
        private double low() {
            return shift - PRIOR * width;
        }

        private double high() {
            return shift + PRIOR * width;
        }
    }

    /** Height that the rows need, points. */
    public double height() {
        return HEAD + rows.size() * ROW + (parted() ? GAP : 0) + FOOT;
    }

    private boolean parted() {
        return rows.stream().anyMatch(r -> !r.told());
    }

    /** Draws into a strip of the canvas. */
    public void draw(Canvas canvas, double left, double top, double width) {
        canvas.text(left, top + 9, title, 9, Anchor.START, Ink.BLACK, true);
        double x = left + NAMES;
        double w = width - NAMES - VALUES;
        double h = height() - HEAD - FOOT;
        double y = top + HEAD;
        double most = 2.5;
        for (Row r : rows) {
            most = Math.max(most, 1.05 * Math.max(-r.low(), r.high()));
        }
        Frame frame = new Frame(canvas, x, y, w, h, new double[] {-most, most}, new double[] {0, 1});
        canvas.rectangle(frame.x(-PRIOR), y, frame.x(PRIOR) - frame.x(-PRIOR), h, Ink.SKY, Pen.NONE);
        double step = Ticks.step(-most, most, 8);
        for (double t : Ticks.between(-most, most, 8)) {
            canvas.line(frame.x(t), y, frame.x(t), y + h, Pen.GRID);
            canvas.text(frame.x(t), y + h + 10, Ticks.label(t, step), SMALL, Anchor.MIDDLE, Ink.BLACK, false);
        }
        canvas.line(frame.x(0), y, frame.x(0), y + h, Pen.THIN);
        heads(canvas, left, y - 5, width, frame);
        boolean told = true;
        for (Row r : rows) {
            if (told && !r.told()) {
                told = false;
                part(canvas, left, y, width);
                y += GAP;
            }
            row(canvas, frame, r, left, y, x + w);
            y += ROW;
        }
        canvas.rectangle(x, top + HEAD, w, h, Ink.NONE, Pen.FRAME);
        canvas.text(
                x + w,
                top + HEAD + h + 22,
                "prior standard deviations from the sheet's value",
                SMALL,
                Anchor.END,
                Ink.BLACK,
                false);
    }

    private static void heads(Canvas canvas, double left, double y, double width, Frame frame) {
        canvas.text(frame.x(0), y, "90 % of the sheet's doubt", SMALL, Anchor.MIDDLE, Ink.BLUE, false);
        canvas.text(left + width - VALUES + 8, y, "with the runs (90 %)", SMALL, Anchor.START, Ink.BLACK, false);
        canvas.text(left + width, y, "sheet", SMALL, Anchor.END, Ink.GREY, false);
    }

    private static void part(Canvas canvas, double left, double y, double width) {
        canvas.line(left, y + 4, left + width, y + 4, Pen.THIN);
        canvas.text(left, y + 15, "not informed by the runs", SMALL, Anchor.START, Ink.GREY, true);
    }

    private static void row(Canvas canvas, Frame frame, Row r, double left, double y, double right) {
        double middle = y + 0.5 * ROW;
        Ink ink = r.told() ? Ink.BLUE : Ink.GREY;
        canvas.text(left, middle + 3, r.name(), 8, Anchor.START, r.told() ? Ink.BLACK : Ink.GREY, false);
        canvas.line(frame.x(r.low()), middle, frame.x(r.high()), middle, new Pen(ink, r.told() ? 4.0 : 1.5, 0));
        canvas.circle(frame.x(r.shift()), middle, r.told() ? 3.5 : 2.5, Ink.WHITE, new Pen(ink, 1.3, 0));
        canvas.text(right + 8, middle + 3, r.value(), SMALL, Anchor.START, r.told() ? Ink.BLACK : Ink.GREY, false);
        canvas.text(right + VALUES, middle + 3, r.sheet(), SMALL, Anchor.END, Ink.GREY, false);
    }
}
