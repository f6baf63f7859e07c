package hotday.vehicle.airpath;

/**
 * A rectangle on the face, seen from the front.
 *
 * @param left edge, m from the left edge of the face
 * @param top edge, m from the top edge of the face
 * @param width m, above 0
 * @param height m, above 0
 */
public record Rectangle(double left, double top, double width, double height) {

    public Rectangle {
        if (!Double.isFinite(left) || !Double.isFinite(top)) {
            throw new IllegalArgumentException("rectangle at " + left + ", " + top + " m must lie at a finite place");
        }
        if (!(width > 0 && height > 0 && width < 1e3 && height < 1e3)) {
            throw new IllegalArgumentException(
                    "rectangle of " + width + " x " + height + " m must have sides above 0 and below 1000 m");
        }
    }

    /** Right edge, m. */
    public double right() {
        return left + width;
    }

    /** Bottom edge, m. */
    public double bottom() {
        return top + height;
    }

    /** m2. */
    public double area() {
        return width * height;
    }

    /** True inside; the left and top edges belong to it, the others do not. */
    public boolean holds(double x, double y) {
        return x >= left && x < right() && y >= top && y < bottom();
    }
}
