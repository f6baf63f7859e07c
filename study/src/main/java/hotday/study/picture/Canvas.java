package hotday.study.picture;

/**
 * Something to draw on. Points (1/72 in), origin top left, x to the right, y downwards. One drawing, two back ends: SVG
 * and PDF.
 */
public interface Canvas {
    /** Where text is held. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }

    void line(double x1, double y1, double x2, double y2, Pen pen);

    /** A line through the first {@code n} points. */
    void polyline(double[] x, double[] y, int n, Pen pen);

    /** The filled area between two lines over the same x. */
    void area(double[] x, double[] low, double[] high, int n, Ink fill);

    void rectangle(double x, double y, double width, double height, Ink fill, Pen outline);

    void circle(double x, double y, double radius, Ink fill, Pen outline);

    /** Text with its base line at y. */
    void text(double x, double y, String text, double size, Anchor anchor, Ink ink, boolean strong);

    /** Width of a text, points. */
    double width(String text, double size);

    /** Drawing is kept inside this rectangle until {@link #unclip()}. */
    void clip(double x, double y, double width, double height);

    void unclip();
}
