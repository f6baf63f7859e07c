package hotday.physics.transfer;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Air side of a louvered-fin, flat-tube core. Heat: Chang and Wang 1997, Int. J. Heat Mass Transfer 40:533-544, scatter
 * about 15 %. Friction: Chang, Hsu, Lin and Wang 2000, IJHMT 43:2237-2243, with the amendment of 2006, scatter 15 to 20
 * %; its two branches do not meet at Re 150 (6 % apart). Treat as a first estimate; test points are better.
 */
public final class LouveredFin {
    /** Fin thickness over pitch from which f has a value, just above its pole at 0.01. */
    private static final double THINNEST = 0.0101;

    private static final double CLOSEST = 1.05;

    private LouveredFin() {}

    /**
     * All lengths in one unit (the relations use ratios only), angle in degrees.
     *
     * @param louverPitch Lp
     * @param finPitch Fp
     * @param finLength Fl, fin height between tubes
     * @param louverLength Ll
     * @param tubeDepth Td
     * @param tubePitch Tp
     * @param finThickness df
     * @param tubeSize Dm, tube outside size along the tube pitch
     * @param finDepth Fd
     * @param angle theta, louver angle, degrees
     */
    public record Geometry(
            double louverPitch,
            double finPitch,
            double finLength,
            double louverLength,
            double tubeDepth,
            double tubePitch,
            double finThickness,
            double tubeSize,
            double finDepth,
            double angle) {

        /** Hydraulic diameter of a fin passage. */
        public double hydraulicDiameter() {
            double a = finPitch - finThickness;
            double b = finLength - finThickness;
            return 2.0 * a * b / (a + b);
        }
    }

    /** Colburn factor at a Reynolds number on louver pitch; a plain power law, continued outside the published range. */
    public static double j(Geometry g, double re) {
        double lp = g.louverPitch();
        return Math.pow(re, -0.49)
                * Math.pow(g.angle() / 90.0, 0.27)
                * Math.pow(g.finPitch() / lp, -0.14)
                * Math.pow(g.finLength() / lp, -0.29)
                * Math.pow(g.tubeDepth() / lp, -0.23)
                * Math.pow(g.louverLength() / lp, 0.68)
                * Math.pow(g.tubePitch() / lp, -0.28)
                * Math.pow(g.finThickness() / lp, -0.05);
    }

    /**
     * Fanning friction factor at a Reynolds number on louver pitch. Computed as written outside the published range too, except
     * that Re at or below 2 and fins thinner than a hundredth of their pitch have no value (infinite or NaN): ask {@link #outside} first.
     */
    public static double f(Geometry g, double re) {
        return re < 150.0 ? slow(g, re) : fast(g, re);
    }

    private static double slow(Geometry g, double re) {
        double lp = g.louverPitch();
        double f1 = 14.39
                * Math.pow(re, -0.805 * g.finPitch() / g.finLength())
                * Math.pow(Math.log(1.0 + g.finPitch() / lp), 3.04);
        double f2 = Math.pow(Math.log(Math.pow(g.finThickness() / g.finPitch(), 0.48) + 0.9), -1.435)
                * Math.pow(g.hydraulicDiameter() / lp, -3.01)
                * Math.pow(Math.log(0.5 * re), -3.01);
        double f3 = Math.pow(g.finPitch() / g.louverLength(), -0.308)
                * Math.pow(g.finDepth() / g.louverLength(), -0.308)
                * Math.exp(-0.1167 * g.tubePitch() / g.tubeSize())
                * Math.pow(g.angle(), 0.35);
        return f1 * f2 * f3;
    }

    private static double fast(Geometry g, double re) {
        double lp = g.louverPitch();
        double th = g.tubePitch() - g.tubeSize();
        double f1 = 4.97
                * Math.pow(re, 0.6049 - 1.064 / Math.pow(g.angle(), 0.2))
                * Math.pow(Math.log(Math.pow(g.finThickness() / g.finPitch(), 0.5) + 0.9), -0.527);
        double f2 = Math.pow(g.hydraulicDiameter() / lp * Math.log(0.3 * re), -2.966)
                * Math.pow(g.finPitch() / g.louverLength(), -0.7931 * g.tubePitch() / th);
        double f3 = Math.pow(g.tubePitch() / g.tubeSize(), -0.0446)
                * Math.pow(Math.log(1.2 + Math.pow(lp / g.finPitch(), 1.4)), -3.553)
                * Math.pow(g.angle(), -0.477);
        return f1 * f2 * f3;
    }

    /**
     * A quantity that lies outside the published data.
     *
     * @param name of the quantity
     * @param unit of value and limits; {@code -} for none
     * @param low, high limits; infinite where there is none
     */
    public record Excess(String name, double value, String unit, double low, double high) {
        private boolean outside() {
            return !(value >= low && value <= high);
        }

        /** In words, with value, unit and limits. */
        public String text() {
            String of = unit.equals("-") ? "" : " " + unit;
            String limits = Double.isInfinite(high) ? "at least " + low : low + " to " + high;
            return String.format(Locale.ROOT, "%s %.4g%s, published data %s%s", name, value, of, limits, of);
        }
    }

    /**
     * What lies outside the data behind both relations; empty when all is inside. Ranges of the 91 samples of Chang and Wang 1997 (from
     * memory): Re 100..3000, Lp 0.5..3 mm, Fp 0.51..3.33 mm, Fl 2.84..20 mm, Ll 2.13..18.5 mm, Td 15.6..57.4 mm, Tp 7.51..25 mm, thickness
     * 0.0254..0.16 mm, angle 8.43..35 degrees, Dh 0.82..5.02 mm. Besides, f needs a fin thicker than a hundredth of its pitch and
     * tubes that leave room for fins.
     *
     * @param unit of the lengths, m: 1 or 1e-3
     * @param re on louver pitch
     */
    public static List<Excess> outside(Geometry g, double unit, double re) {
        double mm = 1e3 * unit;
        return Stream.of(
                        new Excess("Reynolds number on louver pitch", re, "-", 100, 3000),
                        new Excess("louver pitch", mm * g.louverPitch(), "mm", 0.5, 3.0),
                        new Excess("fin pitch", mm * g.finPitch(), "mm", 0.51, 3.33),
                        new Excess("fin length", mm * g.finLength(), "mm", 2.84, 20.0),
                        new Excess("louver length", mm * g.louverLength(), "mm", 2.13, 18.5),
                        new Excess("tube depth", mm * g.tubeDepth(), "mm", 15.6, 57.4),
                        new Excess("tube pitch", mm * g.tubePitch(), "mm", 7.51, 25.0),
                        new Excess("fin thickness", mm * g.finThickness(), "mm", 0.0254, 0.16),
                        new Excess("louver angle", g.angle(), "degrees", 8.43, 35.0),
                        new Excess("hydraulic diameter", mm * g.hydraulicDiameter(), "mm", 0.82, 5.02),
                        new Excess(
                                "fin thickness over fin pitch",
                                g.finThickness() / g.finPitch(),
                                "-",
                                THINNEST,
                                Double.POSITIVE_INFINITY),
                        new Excess(
                                "tube pitch over tube size",
                                g.tubePitch() / g.tubeSize(),
                                "-",
                                CLOSEST,
                                Double.POSITIVE_INFINITY))
                .filter(Excess::outside)
                .toList();
    }
}
