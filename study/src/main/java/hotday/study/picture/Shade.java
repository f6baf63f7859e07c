package hotday.study.picture;

/**
 * Colours for values between a least and a most: dark blue, grey, light yellow. Lightness only rises, so that the order
 * survives a grey printer, and the hues are the two that the common kinds of colour blindness keep apart.
 */
final class Shade {
    private static final int[][] STOPS = {
        {16, 34, 82}, {45, 72, 118}, {92, 106, 124}, {138, 139, 121}, {190, 178, 104}, {253, 236, 128}
    };

    private static final Ink FULL_BLACK = new Ink(0, 0, 0);

    private final double least;
    private final double most;

    Shade(double least, double most) {
        this.least = least;
        this.most = most > least ? most : least + 1.0;
    }

    double least() {
        return least;
    }

    double most() {
        return most;
    }

    Ink of(double value) {
        double place = Math.max(0.0, Math.min(1.0, (value - least) / (most - least))) * (STOPS.length - 1);
        int i = Math.min((int) place, STOPS.length - 2);
        double share = place - i;
        return new Ink(mixed(i, 0, share), mixed(i, 1, share), mixed(i, 2, share));
    }

    private static int mixed(int i, int channel, double share) {
        return (int) Math.round(STOPS[i][channel] + share * (STOPS[i + 1][channel] - STOPS[i][channel]));
    }

    /** Of full black and white the one that reads better on a colour; one of them always reaches 4.5 to 1. */
    static Ink textOn(Ink ground) {
        return ground.contrast(Ink.WHITE) >= ground.contrast(FULL_BLACK) ? Ink.WHITE : FULL_BLACK;
    }
}
