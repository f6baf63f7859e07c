package hotday.study.picture;

/**
 * Colours that stay apart in grey and for the colour-blind (after Okabe and Ito 2008, darkened for paper); every series
 * also differs by dash.
 */
public enum Ink {
    NONE(0, 0, 0),
    BLACK(0x1a, 0x1a, 0x1a),
    GREY(0x77, 0x77, 0x77),
    PALE(0xdd, 0xdd, 0xdd),
    BLUE(0x00, 0x5a, 0x9c),
    SKY(0xc4, 0xdd, 0xf0),
    ORANGE(0xc8, 0x55, 0x00),
    WHITE(0xff, 0xff, 0xff);

    private final int red;
    private final int green;
    private final int blue;

    Ink(int red, int green, int blue) {
        this.red = red;
        this.green = green;
        this.blue = blue;
    }

    int red() {
        return red;
    }

    int green() {
        return green;
    }

    int blue() {
        return blue;
    }

    String hex() {
        return String.format("#%02x%02x%02x", red, green, blue);
    }
}
