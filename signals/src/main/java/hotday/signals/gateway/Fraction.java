package hotday.signals.gateway;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/** A number as one whole number over another, exactly; in lowest terms, the denominator above 0. */
record Fraction(BigInteger numerator, BigInteger denominator) {
    static final Fraction ZERO = new Fraction(BigInteger.ZERO, BigInteger.ONE);

    /** A conversion of units is known to this share of itself: beyond it a double is rounding. */
    private static final BigDecimal KNOWN = new BigDecimal("1e-12");

    private static final int DIGITS = 60;

    Fraction {
        BigInteger common = numerator.gcd(denominator);
        if (denominator.signum() < 0) {
            common = common.negate();
        }
        numerator = numerator.divide(common);
        denominator = denominator.divide(common);
    }

    /** The decimal number that was typed: the shortest one that is this double. */
    static Fraction typed(double value) {
        return exact(new BigDecimal(Double.toString(value)));
    }

    private static Fraction exact(BigDecimal value) {
        BigDecimal whole = value.scale() < 0 ? value.setScale(0) : value;
        return new Fraction(whole.unscaledValue(), BigInteger.TEN.pow(whole.scale()));
    }

    /** The first convergent of its continued fraction that is the number to within 1e-12 of itself: 1.8 is 9/5. */
    static Fraction near(double value) {
        BigDecimal exact = new BigDecimal(value);
        BigDecimal allowed = exact.abs().multiply(KNOWN);
        BigInteger p0 = BigInteger.ONE;
        BigInteger q0 = BigInteger.ZERO;
        BigDecimal rest = exact;
        BigInteger whole = rest.setScale(0, RoundingMode.FLOOR).toBigInteger();
        BigInteger p = whole;
        BigInteger q = BigInteger.ONE;
        while (far(exact, p, q, allowed)) {
            rest = BigDecimal.ONE.divide(rest.subtract(new BigDecimal(whole)), DIGITS, RoundingMode.HALF_EVEN);
            whole = rest.setScale(0, RoundingMode.FLOOR).toBigInteger();
            BigInteger nextP = whole.multiply(p).add(p0);
            BigInteger nextQ = whole.multiply(q).add(q0);
            p0 = p;
            q0 = q;
            p = nextP;
            q = nextQ;
        }
        return new Fraction(p, q);
    }

    private static boolean far(BigDecimal exact, BigInteger p, BigInteger q, BigDecimal allowed) {
        BigDecimal there = new BigDecimal(q);
        return exact.multiply(there).subtract(new BigDecimal(p)).abs().compareTo(allowed.multiply(there)) > 0;
    }

    Fraction times(Fraction other) {
        return new Fraction(numerator.multiply(other.numerator), denominator.multiply(other.denominator));
    }

    Fraction plus(Fraction other) {
        return new Fraction(
                numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
                denominator.multiply(other.denominator));
    }

    Fraction minus(Fraction other) {
        return plus(new Fraction(other.numerator.negate(), other.denominator));
    }

    /** @param other not 0 */
    Fraction over(Fraction other) {
        return times(new Fraction(other.denominator, other.numerator));
    }
}
