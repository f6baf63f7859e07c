package hotday.study.picture;

import java.util.Locale;

/** Draws into SVG 1.1 text. */
public final class SvgCanvas implements Canvas {
    /** Mean width of a character over its size, for sans-serif faces; from memory. */
    private static final double CHARACTER = 0.55;

    private final StringBuilder out = new StringBuilder();
    private int clips;

    public SvgCanvas(double width, double height, String title) {
        out.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" font-family=\"sans-serif\" role=\"img\">%n<title>%s</title>%n<rect width=\"100%%\" height=\"100%%\" fill=\"#ffffff\"/>%n",
                width,
                height,
                escape(title)));
    }

    /** The finished picture. */
    public String finish() {
        return out.append("</svg>\n").toString();
    }

    /** Text as XML 1.0 may hold it; characters that it may not hold at all become spaces. */
    private static String escape(String text) {
        StringBuilder held = new StringBuilder();
        text.codePoints().forEach(c -> held.appendCodePoint(mayStand(c) ? c : ' '));
        return held.toString()
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    private static boolean mayStand(int c) {
        return c == '\t' || c == '\n' || (c >= 0x20 && c < 0xd800) || (c > 0xdfff && c != 0xfffe && c != 0xffff);
    }

    private static String number(double v) {
        return String.format(Locale.ROOT, "%.2f", v);
    }

    private static String stroke(Pen pen) {
        if (!pen.visible()) {
            return " stroke=\"none\"";
        }
        String dash = pen.dash() > 0 ? " stroke-dasharray=\"" + number(pen.dash()) + "\"" : "";
        return " stroke=\"" + pen.ink().hex() + "\" stroke-width=\"" + number(pen.width()) + "\"" + dash;
    }

    private static String fill(Ink ink) {
        return " fill=\"" + (ink.visible() ? ink.hex() : "none") + "\"";
    }

    @Override
    public void line(double x1, double y1, double x2, double y2, Pen pen) {
        out.append("<line x1=\"" + number(x1) + "\" y1=\"" + number(y1) + "\" x2=\"" + number(x2) + "\" y2=\""
                + number(y2) + "\"" + stroke(pen) + "/>\n");
    }

    @Override
    public void polyline(double[] x, double[] y, int n, Pen pen) {
        out.append("<polyline fill=\"none\" stroke-linejoin=\"round\"")
                .append(stroke(pen))
                .append(" points=\"");
        for (int i = 0; i < n; i++) {
            out.append(number(x[i])).append(',').append(number(y[i])).append(' ');
        }
        out.append("\"/>\n");
    }

    @Override
    public void area(double[] x, double[] low, double[] high, int n, Ink fill) {
        out.append("<polygon").append(fill(fill)).append(" points=\"");
        for (int i = 0; i < n; i++) {
            out.append(number(x[i])).append(',').append(number(low[i])).append(' ');
        }
        for (int i = n - 1; i >= 0; i--) {
            out.append(number(x[i])).append(',').append(number(high[i])).append(' ');
        }
        out.append("\"/>\n");
    }

    @Override
    public void rectangle(double x, double y, double width, double height, Ink fill, Pen outline) {
        out.append("<rect x=\"" + number(x) + "\" y=\"" + number(y) + "\" width=\"" + number(width) + "\" height=\""
                + number(height) + "\"" + fill(fill) + stroke(outline) + "/>\n");
    }

    @Override
    public void circle(double x, double y, double radius, Ink fill, Pen outline) {
        out.append("<circle cx=\"" + number(x) + "\" cy=\"" + number(y) + "\" r=\"" + number(radius) + "\"" + fill(fill)
                + stroke(outline) + "/>\n");
    }

    @Override
    public void text(double x, double y, String text, double size, Anchor anchor, Ink ink, boolean strong) {
        String where = switch (anchor) {
            case START -> "start";
            case MIDDLE -> "middle";
            case END -> "end";
        };
        out.append("<text x=\"" + number(x) + "\" y=\"" + number(y) + "\" font-size=\"" + number(size)
                + "\" text-anchor=\"" + where + "\"" + (strong ? " font-weight=\"bold\"" : "") + fill(ink) + ">"
                + escape(text) + "</text>\n");
    }

    @Override
    public double width(String text, double size) {
        return CHARACTER * size * text.length();
    }

    @Override
    public void clip(double x, double y, double width, double height) {
        clips++;
        out.append("<clipPath id=\"c" + clips + "\"><rect x=\"" + number(x) + "\" y=\"" + number(y) + "\" width=\""
                + number(width) + "\" height=\"" + number(height) + "\"/></clipPath><g clip-path=\"url(#c" + clips
                + ")\">\n");
    }

    @Override
    public void unclip() {
        out.append("</g>\n");
    }
}
