package hotday.study.picture;

import hotday.study.picture.Canvas.Anchor;
import java.util.List;
import java.util.Locale;

/**
 * A table of values as coloured squares, each with its number and a short word; columns to the right, rows upwards. A square
 * without a value stays white.
 *
 * @param title one line
 * @param notes lines below
 * @param across what the columns are, with unit; @param columns their labels
 * @param up what the rows are, with unit; @param rows their labels, lowest first
 * @param values by row, then column; NaN for none
 * @param words below the numbers, same order
 * @param least, most values that get the darkest and the lightest colour
 */
public record GridChart(
        String title,
        List<String> notes,
        String across,
        List<String> columns,
        String up,
        List<String> rows,
        List<Double> values,
        List<String> words,
        double least,
        double most) {
    private static final double CELL_WIDTH = 62.0;
    private static final double CELL_HEIGHT = 40.0;
    private static final double LEFT = 62.0;
    private static final double TOP = 40.0;
    private static final double BELOW = 44.0;
    private static final double LINE = 14.0;
    private static final double RIGHT = 16.0;

    public GridChart {
        notes = List.copyOf(notes);
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        values = List.copyOf(values);
        words = List.copyOf(words);
    }

    double width() {
        return LEFT + columns.size() * CELL_WIDTH + RIGHT;
    }

    double height() {
        return TOP + rows.size() * CELL_HEIGHT + BELOW + LINE * notes.size();
    }

    /** The whole picture as SVG text. */
    public String svg() {
        SvgCanvas canvas = new SvgCanvas(width(), height(), title);
        draw(canvas);
        return canvas.finish();
    }

    void draw(Canvas canvas) {
        canvas.text(LEFT, 20.0, title, 13.0, Anchor.START, Ink.BLACK, true);
        Shade shade = new Shade(least, most);
        for (int r = 0; r < rows.size(); r++) {
            double y = TOP + (rows.size() - 1 - r) * CELL_HEIGHT;
            canvas.text(LEFT - 6.0, y + 0.5 * CELL_HEIGHT + 4.0, rows.get(r), 10.0, Anchor.END, Ink.BLACK, false);
            for (int c = 0; c < columns.size(); c++) {
                cell(canvas, shade, LEFT + c * CELL_WIDTH, y, r * columns.size() + c);
            }
        }
        double foot = TOP + rows.size() * CELL_HEIGHT;
        for (int c = 0; c < columns.size(); c++) {
            double x = LEFT + (c + 0.5) * CELL_WIDTH;
            canvas.text(x, foot + 14.0, columns.get(c), 10.0, Anchor.MIDDLE, Ink.BLACK, false);
        }
        double middle = LEFT + 0.5 * columns.size() * CELL_WIDTH;
        canvas.text(middle, foot + 30.0, across, 10.0, Anchor.MIDDLE, Ink.BLACK, false);
        canvas.text(6.0, TOP - 6.0, up, 10.0, Anchor.START, Ink.BLACK, false);
        for (int i = 0; i < notes.size(); i++) {
            canvas.text(LEFT, foot + BELOW + LINE * i, notes.get(i), 9.5, Anchor.START, Ink.BLACK, false);
        }
    }

    private void cell(Canvas canvas, Shade shade, double x, double y, int i) {
        double value = values.get(i);
        boolean there = !Double.isNaN(value);
        Ink ground = there ? shade.of(value) : Ink.WHITE;
        Ink ink = there ? Shade.textOn(ground) : Ink.BLACK;
        canvas.rectangle(x, y, CELL_WIDTH - 2.0, CELL_HEIGHT - 2.0, ground, Pen.THIN);
        double middle = x + 0.5 * (CELL_WIDTH - 2.0);
        String number = there ? String.format(Locale.ROOT, "%.0f", value) : "-";
        canvas.text(middle, y + 17.0, number, 12.0, Anchor.MIDDLE, ink, true);
        canvas.text(middle, y + 30.0, words.get(i), 8.0, Anchor.MIDDLE, ink, false);
    }
}
