package hotday.study.picture;

/** @param width points; @param dash length of dash and gap in points, 0 for a full line */
public record Pen(Ink ink, double width, double dash) {
    public static final Pen NONE = new Pen(Ink.NONE, 0, 0);
    public static final Pen THIN = new Pen(Ink.GREY, 0.5, 0);
    public static final Pen GRID = new Pen(Ink.PALE, 0.5, 0);
    public static final Pen FRAME = new Pen(Ink.BLACK, 0.7, 0);

    boolean visible() {
        return ink.visible() && width > 0;
    }
}
