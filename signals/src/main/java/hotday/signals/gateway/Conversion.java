package hotday.signals.gateway;

import hotday.signals.translator.Scaling;
import java.math.BigInteger;
import java.util.Optional;

/**
 * Makes the whole-number scaling of a line out of the scales of its two signals, the conversion of their units and the
 * factor typed on top. Scales are the decimal numbers of the DBC file exactly, conversions of units fractions.
 */
final class Conversion {
    private static final BigInteger LARGEST = BigInteger.valueOf(Long.MAX_VALUE);
    /** Raw values that a long holds. */
    private static final double LONG = 0x1p63;

    private Conversion() {}

    /**
     * The scaling; empty where a product would not fit 64 bits.
     *
     * @param link from the source's unit to the target's
     * @param factor applied behind it
     */
    static Optional<Scaling> of(Scale source, UnitLink link, double factor, Scale target) {
        if (!fits(source) || !fits(target)) {
            return Optional.empty();
        }
        Fraction on = Fraction.near(link.factor()).times(Fraction.typed(factor));
        Fraction shift = Fraction.near(link.offset()).times(Fraction.typed(factor));
        Fraction step = Fraction.typed(target.factor());
        Fraction slope = Fraction.typed(source.factor()).times(on).over(step);
        Fraction offset = Fraction.typed(source.offset())
                .times(on)
                .plus(shift)
                .minus(Fraction.typed(target.offset()))
                .over(step);
        return scaling(slope, offset, source, target);
    }

    private static boolean fits(Scale scale) {
        return scale.rawLow() >= -LONG && scale.rawHigh() < LONG && scale.rawLow() <= scale.rawHigh();
    }

    private static Optional<Scaling> scaling(Fraction slope, Fraction offset, Scale source, Scale target) {
        BigInteger common = slope.denominator()
                .multiply(offset.denominator())
                .divide(slope.denominator().gcd(offset.denominator()));
        BigInteger n = slope.numerator().multiply(common.divide(slope.denominator()));
        BigInteger o = offset.numerator().multiply(common.divide(offset.denominator()));
        BigInteger widest = BigInteger.valueOf((long) source.rawLow())
                .abs()
                .max(BigInteger.valueOf((long) source.rawHigh()).abs())
                .multiply(n.abs())
                .add(o.abs());
        return widest.max(common).compareTo(LARGEST) > 0
                ? Optional.empty()
                : Optional.of(new Scaling(
                        n.longValueExact(), o.longValueExact(), common.longValueExact(), (long) target.rawLow(), (long)
                                target.rawHigh()));
    }
}
