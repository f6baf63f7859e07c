package hotday.study.picture;

/**
 * A colour. The named ones stay apart in grey and for the colour-blind (after Okabe and Ito 2008, darkened for paper); every
 * series also differs by dash.
 *
 * @param red, green, blue 0..255
 */
public record Ink(int red, int green, int blue) {
    /** Nothing is drawn. */
    public static final Ink NONE = new Ink(-1, -1, -1);

    public static final Ink BLACK = new Ink(0x1a, 0x1a, 0x1a);
    public static final Ink GREY = new Ink(0x77, 0x77, 0x77);
    public static final Ink PALE = new Ink(0xdd, 0xdd, 0xdd);
    public static final Ink BLUE = new Ink(0x00, 0x5a, 0x9c);
    public static final Ink SKY = new Ink(0xc4, 0xdd, 0xf0);
    public static final Ink ORANGE = new Ink(0xc8, 0x55, 0x00);
    public static final Ink WHITE = new Ink(0xff, 0xff, 0xff);

    boolean visible() {
        return red >= 0;
    }

    String hex() {
        return String.format("#%02x%02x%02x", red, green, blue);
    }

    /** Relative luminance, 0 black to 1 white (WCAG 2.1, from sRGB). */
    double luminance() {
        return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    /** Contrast of two colours, 1 to 21 (WCAG 2.1); small text needs 4.5. */
    double contrast(Ink other) {
        double light = Math.max(luminance(), other.luminance());
        double dark = Math.min(luminance(), other.luminance());
        return (light + 0.05) / (dark + 0.05);
    }
}
