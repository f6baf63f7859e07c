package hotday.study.picture;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;

/** Draws onto a page of a PDF document. */
public final class PdfCanvas implements Canvas {
    /** Distance of the control points that make four curves a circle. */
    private static final double KAPPA = 0.5522847498;

    private final PDPageContentStream out;
    private final PDFont font;
    private final double height;

    public PdfCanvas(PDPageContentStream out, PDFont font, double pageHeight) {
        this.out = out;
        this.font = font;
        this.height = pageHeight;
    }

    /** A drawing step that may meet a failing stream. */
    private interface Step {
        void run() throws IOException;
    }

    private static void draw(Step step) {
        try {
            step.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private float y(double y) {
        return (float) (height - y);
    }

    private void pen(Pen pen) throws IOException {
        Ink ink = pen.ink();
        out.setStrokingColor(ink.red() / 255f, ink.green() / 255f, ink.blue() / 255f);
        out.setLineWidth((float) pen.width());
        out.setLineDashPattern(pen.dash() > 0 ? new float[] {(float) pen.dash()} : new float[0], 0);
        out.setLineJoinStyle(1);
    }

    private void ink(Ink ink) throws IOException {
        out.setNonStrokingColor(ink.red() / 255f, ink.green() / 255f, ink.blue() / 255f);
    }

    @Override
    public void line(double x1, double y1, double x2, double y2, Pen pen) {
        draw(() -> {
            pen(pen);
            out.moveTo((float) x1, y(y1));
            out.lineTo((float) x2, y(y2));
            out.stroke();
        });
    }

    @Override
    public void polyline(double[] x, double[] ys, int n, Pen pen) {
        if (n < 2) {
            return;
        }
        draw(() -> {
            pen(pen);
            out.moveTo((float) x[0], y(ys[0]));
            for (int i = 1; i < n; i++) {
                out.lineTo((float) x[i], y(ys[i]));
            }
            out.stroke();
        });
    }

    @Override
    public void area(double[] x, double[] low, double[] high, int n, Ink fill) {
        if (n < 2) {
            return;
        }
        draw(() -> {
            ink(fill);
            out.moveTo((float) x[0], y(low[0]));
            for (int i = 1; i < n; i++) {
                out.lineTo((float) x[i], y(low[i]));
            }
            for (int i = n - 1; i >= 0; i--) {
                out.lineTo((float) x[i], y(high[i]));
            }
            out.closePath();
            out.fill();
        });
    }

    @Override
    public void rectangle(double x, double top, double width, double high, Ink fill, Pen outline) {
        draw(() -> {
            if (fill.visible()) {
                ink(fill);
                out.addRect((float) x, y(top + high), (float) width, (float) high);
                out.fill();
            }
            if (outline.visible()) {
                pen(outline);
                out.addRect((float) x, y(top + high), (float) width, (float) high);
                out.stroke();
            }
        });
    }

    @Override
    public void circle(double x, double centre, double radius, Ink fill, Pen outline) {
        draw(() -> {
            if (fill.visible()) {
                ink(fill);
                round(x, centre, radius);
                out.fill();
            }
            if (outline.visible()) {
                pen(outline);
                round(x, centre, radius);
                out.stroke();
            }
        });
    }

    private void round(double cx, double cy, double r) throws IOException {
        float x = (float) cx;
        float y = y(cy);
        float k = (float) (KAPPA * r);
        float f = (float) r;
        out.moveTo(x + f, y);
        out.curveTo(x + f, y + k, x + k, y + f, x, y + f);
        out.curveTo(x - k, y + f, x - f, y + k, x - f, y);
        out.curveTo(x - f, y - k, x - k, y - f, x, y - f);
        out.curveTo(x + k, y - f, x + f, y - k, x + f, y);
        out.closePath();
    }

    @Override
    public void text(double x, double base, String text, double size, Anchor anchor, Ink ink, boolean strong) {
        double shift = switch (anchor) {
            case START -> 0;
            case MIDDLE -> 0.5 * width(text, size);
            case END -> width(text, size);
        };
        draw(() -> {
            out.beginText();
            out.setFont(font, (float) size);
            ink(ink);
            out.setStrokingColor(ink.red() / 255f, ink.green() / 255f, ink.blue() / 255f);
            out.setLineWidth((float) (0.03 * size));
            out.setLineDashPattern(new float[0], 0);
            out.setRenderingMode(strong ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
            out.newLineAtOffset((float) (x - shift), y(base));
            out.showText(shown(text));
            out.endText();
        });
    }

    /** Text with what the font lacks replaced, so that an odd name cannot break a document. */
    private String shown(String text) {
        StringBuilder known = new StringBuilder();
        text.codePoints().forEach(c -> {
            String one = c < 32 ? " " : Character.toString(c);
            try {
                font.encode(one);
                known.append(one);
            } catch (IOException | IllegalArgumentException e) {
                known.append('?');
            }
        });
        return known.toString();
    }

    @Override
    public double width(String text, double size) {
        try {
            return font.getStringWidth(shown(text)) / 1000.0 * size;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void clip(double x, double top, double width, double high) {
        draw(() -> {
            out.saveGraphicsState();
            out.addRect((float) x, y(top + high), (float) width, (float) high);
            out.clip();
        });
    }

    @Override
    public void unclip() {
        draw(out::restoreGraphicsState);
    }
}
