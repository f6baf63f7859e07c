package hotday.physics.refrigerant;

import java.util.Locale;
import java.util.Optional;

/**
 * The refrigerants of vehicle air conditioning, by their published Helmholtz equations of state. Answers to rounding for
 * any two known properties. Immutable, shared by all threads; a constant loads in a
 * few milliseconds at first use.
 *
 * <p>Range: from the lowest temperature listed to the highest of the equation, up to its highest pressure. Beyond it a
 * {@link RangeException} says which value is out. R-1234yf is answered up to 440 K although its authors stop at 410 K
 * ({@link #publishedTemperatureLimit()}): extrapolated there.
 */
public enum Refrigerant {
    R134A(R134aFacts.facts(), 455.0),
    R1234YF(R1234yfFacts.facts(), 440.0);

    private static final double COLDEST = 180.0;

    private final Facts facts;
    private final Helmholtz equation;
    private final Saturation saturation;
    private final Transport transport;
    private final double hottest;

    Refrigerant(Facts facts, double hottest) {
        this.facts = facts;
        this.hottest = hottest;
        this.equation = new Helmholtz(facts);
        this.saturation = new Saturation(facts, equation, COLDEST);
        this.transport = new Transport(facts, equation);
    }

    /** As people write it: {@code R-134a}. */
    public String label() {
        return facts.label();
    }

    /** By its label; hyphen, blanks and case do not matter. */
    public static Optional<Refrigerant> named(String text) {
        String wanted = plain(text);
        for (Refrigerant r : values()) {
            if (plain(r.label()).equals(wanted)) {
                return Optional.of(r);
            }
        }
        return Optional.empty();
    }

    private static String plain(String text) {
        return text.replaceAll("[\\s-]", "").toLowerCase(Locale.ROOT);
    }

    /** K, as published. */
    public double criticalTemperature() {
        return facts.limits().criticalTemperature();
    }

    /** Pa, as published. */
    public double criticalPressure() {
        return facts.limits().criticalPressure();
    }

    /** K; the authors' range ends here. */
    public double publishedTemperatureLimit() {
        return facts.limits().highestTemperature();
    }

    /** K; nothing is answered below. */
    public double lowestTemperature() {
        return COLDEST;
    }

    /** K; nothing is answered above. */
    public double highestTemperature() {
        return hottest;
    }

    /** Pa; nothing is answered above. */
    public double highestPressure() {
        return facts.limits().highestPressure();
    }

    /** Pa at K. */
    public double saturationPressure(double temperature) {
        requireSaturation(temperature);
        Saturated s = new Saturated();
        saturation.atTemperature(temperature, s);
        return s.pressure;
    }

    /** K at Pa. */
    public double saturationTemperature(double pressure) {
        requireSaturationPressure(pressure);
        Saturated s = new Saturated();
        saturation.atPressure(pressure, s);
        return s.temperature;
    }

    /** N/m at K; 0 from the critical temperature on. */
    public double surfaceTension(double temperature) {
        Facts.Series series = facts.surfaceTension();
        return series.at(Math.max(0.0, 1.0 - temperature / series.temperature()));
    }

    /** At Pa and K; on the saturation line to rounding, the liquid. */
    public FluidState atPressureTemperature(double pressure, double temperature) {
        requirePressure(pressure);
        requireTemperature(temperature);
        Flash flash = flash();
        flash.pressureTemperature(pressure, temperature);
        return state(flash, pressure);
    }

    /** At Pa and J/kg. */
    public FluidState atPressureEnthalpy(double pressure, double enthalpy) {
        return atPressure(Flash.Known.ENTHALPY, pressure, enthalpy, "enthalpy", "J/kg");
    }

    /** At Pa and J/(kg K). */
    public FluidState atPressureEntropy(double pressure, double entropy) {
        return atPressure(Flash.Known.ENTROPY, pressure, entropy, "entropy", "J/(kg K)");
    }

    private FluidState atPressure(Flash.Known known, double pressure, double value, String name, String unit) {
        requirePressure(pressure);
        requireFinite(name, value, unit);
        Flash flash = flash();
        flash.pressureAnd(known, pressure, value);
        if (Double.isNaN(flash.quality)) {
            double found = known.of(flash.point);
            double temperature = flash.point.temperature;
            if (temperature > hottest
                    || temperature < COLDEST
                    || Math.abs(found - value) > 1e-9 * Math.abs(value) + 1e-7) {
                throw new RangeException(label() + ": " + name + " " + value + " " + unit + " at " + pressure
                        + " Pa lies outside " + COLDEST + " to " + hottest + " K");
            }
        }
        return state(flash, pressure);
    }

    /** In equilibrium at K; quality 0..1. */
    public FluidState atTemperatureQuality(double temperature, double quality) {
        requireSaturation(temperature);
        requireQuality(quality);
        Flash flash = flash();
        flash.temperatureQuality(temperature, quality);
        return state(flash, flash.saturated.pressure);
    }

    /** In equilibrium at Pa; quality 0..1. */
    public FluidState atPressureQuality(double pressure, double quality) {
        requireSaturationPressure(pressure);
        requireQuality(quality);
        Flash flash = flash();
        flash.pressureQuality(pressure, quality);
        return state(flash, pressure);
    }

    /** At K and J/kg: two phases where they can be, else vapour, else the liquid of the lower pressure. */
    public FluidState atTemperatureEnthalpy(double temperature, double enthalpy) {
        requireTemperature(temperature);
        requireFinite("enthalpy", enthalpy, "J/kg");
        Flash flash = flash();
        boolean found = flash.temperatureEnthalpy(temperature, enthalpy);
        boolean mixed = !Double.isNaN(flash.quality);
        double pressure = mixed ? flash.saturated.pressure : flash.point.pressure;
        if (!found || pressure > highestPressure()) {
            throw new RangeException(label() + ": no state at " + temperature + " K has the enthalpy " + enthalpy
                    + " J/kg, from vacuum to " + highestPressure() + " Pa");
        }
        return state(flash, pressure);
    }

    /** In equilibrium with J/kg and a quality 0..1; where two temperatures have both, the lower one. */
    public FluidState atEnthalpyQuality(double enthalpy, double quality) {
        requireFinite("enthalpy", enthalpy, "J/kg");
        requireQuality(quality);
        Flash flash = flash();
        if (!flash.enthalpyQuality(enthalpy, quality)) {
            throw new RangeException(label() + ": no equilibrium from " + COLDEST
                    + " K to the critical point has the enthalpy " + enthalpy + " J/kg at quality " + quality);
        }
        return state(flash, flash.saturated.pressure);
    }

    /** For solvers that keep their own points. */
    Flash flash() {
        return new Flash(equation, saturation, COLDEST, hottest);
    }

    Helmholtz equation() {
        return equation;
    }

    Saturation saturation() {
        return saturation;
    }

    Transport transport() {
        return transport;
    }

    private FluidState state(Flash flash, double pressure) {
        if (Double.isNaN(flash.quality)) {
            return single(
                    flash.point, pressure, Double.NaN, region(flash.point.temperature, pressure, flash.point.density));
        }
        Saturated s = flash.saturated;
        double x = flash.quality;
        if (x == 0.0 || x == 1.0) {
            return single(x == 0.0 ? s.liquid : s.vapour, pressure, x, Region.TWO_PHASE);
        }
        double volume = (1.0 - x) / s.liquid.density + x / s.vapour.density;
        return new FluidState(
                s.temperature,
                pressure,
                1.0 / volume,
                (1.0 - x) * s.liquid.enthalpy + x * s.vapour.enthalpy,
                (1.0 - x) * s.liquid.entropy + x * s.vapour.entropy,
                x,
                Region.TWO_PHASE,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Double.NaN);
    }

    private FluidState single(Point p, double pressure, double quality, Region region) {
        double viscosity = transport.viscosity(p);
        return new FluidState(
                p.temperature,
                pressure,
                p.density,
                p.enthalpy,
                p.entropy,
                quality,
                region,
                p.cp(),
                p.cv,
                p.speedOfSound(),
                viscosity,
                transport.conductivity(p, viscosity));
    }

    Region region(double temperature, double pressure, double density) {
        if (pressure > criticalPressure()) {
            return temperature < criticalTemperature() ? Region.COMPRESSED_LIQUID : Region.SUPERCRITICAL;
        }
        boolean liquid = temperature < criticalTemperature() && density > saturation.criticalDensity();
        return liquid ? Region.SUBCOOLED : Region.SUPERHEATED;
    }

    private void requireTemperature(double temperature) {
        if (!(temperature >= COLDEST && temperature <= hottest)) {
            throw new RangeException(
                    label() + ": temperature " + temperature + " K, must be " + COLDEST + " to " + hottest + " K");
        }
    }

    private void requirePressure(double pressure) {
        if (!(pressure > 0.0 && pressure <= highestPressure())) {
            throw new RangeException(
                    label() + ": pressure " + pressure + " Pa, must be above 0 and up to " + highestPressure() + " Pa");
        }
    }

    private void requireSaturation(double temperature) {
        if (!(temperature >= COLDEST && temperature <= saturation.criticalTemperature())) {
            throw new RangeException(label() + ": saturation at " + temperature + " K, must be " + COLDEST
                    + " K to the critical " + criticalTemperature() + " K");
        }
    }

    private void requireSaturationPressure(double pressure) {
        if (!(pressure >= saturation.lowestPressure() && pressure <= saturation.criticalPressure())) {
            throw new RangeException(label() + ": saturation at " + pressure + " Pa, must be "
                    + saturation.lowestPressure() + " Pa to the critical " + criticalPressure() + " Pa");
        }
    }

    private void requireQuality(double quality) {
        if (!(quality >= 0.0 && quality <= 1.0)) {
            throw new RangeException(label() + ": quality " + quality + ", must be 0 to 1");
        }
    }

    private void requireFinite(String name, double value, String unit) {
        if (!Double.isFinite(value)) {
            throw new RangeException(label() + ": " + name + " " + value + " " + unit + ", must be a number");
        }
    }
}
