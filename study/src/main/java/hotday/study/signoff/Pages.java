package hotday.study.signoff;

import hotday.study.picture.Canvas;
import hotday.study.picture.Canvas.Anchor;
import hotday.study.picture.Ink;
import hotday.study.picture.PdfCanvas;
import hotday.study.picture.Pen;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.List;
import java.util.TimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** A4 pages that fill from the top: headings, paragraphs, tables over pages, drawings; head and foot on every page. */
final class Pages implements AutoCloseable {
    static final double LEFT = 48;
    static final double WIDTH = PDRectangle.A4.getWidth() - 2 * LEFT;
    private static final double TOP = 60;
    private static final double BOTTOM = PDRectangle.A4.getHeight() - 52;
    private static final double BODY = 9;
    private static final double LINE = 12.5;

    private final PDDocument document = new PDDocument();
    private final PDFont font;
    private final String head;
    private final List<PDPageContentStream> streams = new ArrayList<>();
    private Canvas canvas;
    private double y;

    Pages(String head, Calendar made) throws IOException {
        this.head = head;
        this.font = PDType0Font.load(
                document,
                PDDocument.class.getResourceAsStream("/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf"),
                true);
        document.getDocumentInformation().setTitle(head);
        document.getDocumentInformation().setCreator("hotday");
        made.setTimeZone(TimeZone.getTimeZone("UTC"));
        document.getDocumentInformation().setCreationDate(made);
        turn();
    }

    private void turn() throws IOException {
        PDPage page = new PDPage(PDRectangle.A4);
        document.addPage(page);
        PDPageContentStream stream = new PDPageContentStream(document, page, AppendMode.OVERWRITE, true, true);
        streams.add(stream);
        canvas = new PdfCanvas(stream, font, PDRectangle.A4.getHeight());
        y = TOP;
    }

    /** Makes sure that so many points are left on the page. */
    void room(double points) throws IOException {
        if (y + points > BOTTOM) {
            turn();
        }
    }

    void space(double points) {
        y += points;
    }

    /** Draws something of a known height at the current place. */
    void drawing(double height, java.util.function.BiConsumer<Canvas, Double> what) throws IOException {
        room(height);
        what.accept(canvas, y);
        y += height;
    }

    void title(String text) throws IOException {
        for (String line : wrap(text, WIDTH, 18)) {
            room(40);
            canvas.text(LEFT, y + 16, line, 18, Anchor.START, Ink.BLACK, true);
            y += 22;
        }
        y += 6;
    }

    void heading(String text) throws IOException {
        room(60);
        y += 10;
        canvas.text(LEFT, y + 10, text, 11.5, Anchor.START, Ink.BLUE, true);
        canvas.line(LEFT, y + 14, LEFT + WIDTH, y + 14, Pen.THIN);
        y += 22;
    }

    void paragraph(String text) throws IOException {
        for (String line : wrap(text, WIDTH, BODY)) {
            room(LINE);
            canvas.text(LEFT, y + BODY, line, BODY, Anchor.START, Ink.BLACK, false);
            y += LINE;
        }
        y += 3;
    }

    void bullet(String text) throws IOException {
        boolean first = true;
        for (String line : wrap(text, WIDTH - 12, BODY)) {
            room(LINE);
            if (first) {
                canvas.text(LEFT + 2, y + BODY, "\u2013", BODY, Anchor.START, Ink.BLACK, false);
            }
            canvas.text(LEFT + 12, y + BODY, line, BODY, Anchor.START, Ink.BLACK, false);
            y += LINE;
            first = false;
        }
        y += 1.5;
    }

    /**
     * A table; long cells wrap, heads repeat on the next page.
     *
     * @param shares of the width, adding up to 1
     */
    void table(double[] shares, List<String> heads, List<List<String>> rows) throws IOException {
        headRow(shares, heads);
        for (List<String> row : rows) {
            List<List<String>> cells = new ArrayList<>();
            int lines = 1;
            for (int i = 0; i < shares.length; i++) {
                List<String> wrapped = wrap(row.get(i), shares[i] * WIDTH - 6, 8.5);
                cells.add(wrapped);
                lines = Math.max(lines, wrapped.size());
            }
            if (y + lines * 11 + 4 > BOTTOM) {
                turn();
                headRow(shares, heads);
            }
            double x = LEFT;
            for (int i = 0; i < shares.length; i++) {
                for (int k = 0; k < cells.get(i).size(); k++) {
                    canvas.text(x, y + 9 + 11 * k, cells.get(i).get(k), 8.5, Anchor.START, Ink.BLACK, false);
                }
                x += shares[i] * WIDTH;
            }
            y += lines * 11 + 3;
            canvas.line(LEFT, y, LEFT + WIDTH, y, Pen.GRID);
            y += 1;
        }
        y += 6;
    }

    private void headRow(double[] shares, List<String> heads) throws IOException {
        room(40);
        double x = LEFT;
        for (int i = 0; i < shares.length; i++) {
            canvas.text(x, y + 9, heads.get(i), 8, Anchor.START, Ink.GREY, true);
            x += shares[i] * WIDTH;
        }
        y += 12;
        canvas.line(LEFT, y, LEFT + WIDTH, y, Pen.THIN);
        y += 2;
    }

    /** Lines of a text that fit a width; a word too long is cut, if it can be behind a full stop or underscore. */
    private List<String> wrap(String text, double width, double size) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            String rest = word;
            while (canvas.width(rest, size) > width && rest.length() > 1) {
                int fit = fitting(rest, width, size);
                if (line.length() > 0) {
                    lines.add(line.toString());
                    line.setLength(0);
                }
                lines.add(rest.substring(0, fit));
                rest = rest.substring(fit);
            }
            String longer = line.length() == 0 ? rest : line + " " + rest;
            if (canvas.width(longer, size) > width) {
                lines.add(line.toString());
                line = new StringBuilder(rest);
            } else {
                line = new StringBuilder(longer);
            }
        }
        if (line.length() > 0 || lines.isEmpty()) {
            lines.add(line.toString());
        }
        return lines;
    }

    private int fitting(String word, double width, double size) {
        int fit = word.length() - 1;
        while (fit > 1 && canvas.width(word.substring(0, fit), size) > width) {
            fit--;
        }
        int seam = Math.max(word.lastIndexOf('.', fit - 1), word.lastIndexOf('_', fit - 1));
        return seam > 0 ? seam + 1 : fit;
    }

    /** Adds head and foot to every page and writes the document. */
    void write(OutputStream out) throws IOException {
        for (int i = 0; i < streams.size(); i++) {
            Canvas page = new PdfCanvas(streams.get(i), font, PDRectangle.A4.getHeight());
            page.text(LEFT, 36, wrap(head, 0.7 * WIDTH, 8).get(0), 8, Anchor.START, Ink.GREY, false);
            page.text(LEFT + WIDTH, 36, "advice with an interval, not a warranty", 8, Anchor.END, Ink.GREY, false);
            page.line(LEFT, 41, LEFT + WIDTH, 41, Pen.GRID);
            double foot = PDRectangle.A4.getHeight() - 30;
            page.text(LEFT + WIDTH, foot, "page " + (i + 1) + " of " + streams.size(), 8, Anchor.END, Ink.GREY, false);
            streams.get(i).close();
        }
        document.save(out);
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
