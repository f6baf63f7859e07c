package hotday.physics.refrigerant;

/**
 * From two known properties to the state. Phase first, from the saturation at the given pressure or temperature; then
 * Newton steps in temperature and density, and where these leave the branch a bracketed search along the isobar. Mutable,
 * of one thread; the answer lies in {@link #point} (one phase) or {@link #saturated} with {@link #quality} (two).
 */
final class Flash {
    private static final int NEWTON_STEPS = 25;
    private static final int BRACKET_STEPS = 200;
    private static final double CONVERGED = 1e-12;
    private static final double DENSEST = 4.2; // of the critical density; beyond the equations' pressure limits
    private static final double THINNEST = 1e-9;
    /** This near to a saturation line (share of the latent part) the exact line decides. */
    private static final double DOUBT = 1e-3;
    /** How far from the curves' saturation lines a branch is accepted, relative. */
    private static final double SLACK = 1e-5;
    /** Nodes from the critical point where liquid starts to serve as a first guess. */
    private static final double LIQUID_PLACE = 20.0;

    /** Enthalpy or entropy: what is known beside the pressure. */
    enum Known {
        ENTHALPY(false) {
            @Override
            double of(Point p) {
                return p.enthalpy;
            }

            @Override
            double byTemperature(Point p) {
                return p.enthalpyByTemperature();
            }

            @Override
            double byDensity(Point p) {
                return p.enthalpyByDensity();
            }

            @Override
            double temperatureFrom(double start, double gap, double cp) {
                return start + gap / cp;
            }
        },
        ENTROPY(true) {
            @Override
            double of(Point p) {
                return p.entropy;
            }

            @Override
            double byTemperature(Point p) {
                return p.entropyByTemperature();
            }

            @Override
            double byDensity(Point p) {
                return p.entropyByDensity();
            }

            @Override
            double temperatureFrom(double start, double gap, double cp) {
                return start * Math.exp(gap / cp);
            }
        };

        final boolean entropy;

        Known(boolean entropy) {
            this.entropy = entropy;
        }

        abstract double of(Point p);

        abstract double byTemperature(Point p);

        abstract double byDensity(Point p);

        /** First guess from a point where the property is less by {@code gap}. */
        abstract double temperatureFrom(double start, double gap, double cp);
    }

    final Point point = new Point();
    final Saturated saturated = new Saturated();
    /** 0..1; NaN for one phase. */
    double quality;

    private final Helmholtz equation;
    private final Saturation saturation;
    private final double lowest;
    private final double highest;
    private double thin;
    private double dense;
    /** Answers must be stable states between {@link #thin} and {@link #dense}. */
    private boolean onBranch = true;

    Flash(Helmholtz equation, Saturation saturation, double lowestTemperature, double highestTemperature) {
        this.equation = equation;
        this.saturation = saturation;
        this.lowest = lowestTemperature;
        this.highest = highestTemperature;
    }

    /** At saturation pressure to rounding, the liquid. */
    void pressureTemperature(double pressure, double temperature) {
        quality = Double.NaN;
        branch(pressure, temperature);
        double guess = pressure / (equation.gasConstant * temperature);
        density(pressure, temperature, guess < dense ? guess : dense);
    }

    /** Sets the range of densities that belongs to the stable branch. */
    private void branch(double pressure, double temperature) {
        thin = THINNEST * saturation.criticalDensity();
        dense = DENSEST * saturation.criticalDensity();
        if (temperature >= saturation.criticalTemperature()) {
            return;
        }
        saturation.atTemperature(temperature, saturated);
        if (pressure >= saturated.pressure) {
            thin = saturated.liquid.density;
        } else {
            dense = saturated.vapour.density;
        }
    }

    /** Density at K and Pa between {@link #thin} and {@link #dense}, where pressure rises with density. */
    private void density(double pressure, double temperature, double start) {
        double low = thin * (1.0 - 1e-9);
        double high = dense * (1.0 + 1e-9);
        double rho = Math.max(low, Math.min(high, start));
        for (int i = 0; i < BRACKET_STEPS; i++) {
            equation.evaluate(temperature, rho, point);
            double gap = point.pressure - pressure;
            if (gap > 0.0) {
                high = rho;
            } else {
                low = rho;
            }
            double next = rho - gap / point.pressureByDensity;
            if (!(next > low && next < high) || !(point.pressureByDensity > 0.0)) {
                next = Math.sqrt(low * high);
            }
            boolean done = Math.abs(next - rho) <= CONVERGED * rho;
            if (done) {
                equation.evaluate(temperature, next, point);
                return;
            }
            rho = next;
        }
    }

    /** With enthalpy (J/kg) or entropy (J/(kg K)) at Pa. */
    void pressureAnd(Known known, double pressure, double value) {
        quality = Double.NaN;
        if (pressure >= saturation.criticalPressure()) {
            dense(known, pressure, value);
        } else if (pressure <= saturation.lowestPressure()) {
            range(THINNEST * saturation.criticalDensity(), saturation.criticalDensity());
            bracket(known, pressure, value, lowest, highest);
        } else {
            subcritical(known, pressure, value);
        }
    }

    /**
     * At Pa and J/kg on the sheet of states that {@link #point} lies on, metastable ones included; starts from that point. False
     * where Newton steps do not settle.
     */
    boolean continued(double pressure, double enthalpy) {
        quality = Double.NaN;
        range(0.0, Double.POSITIVE_INFINITY);
        onBranch = false;
        boolean found = newton(Known.ENTHALPY, pressure, enthalpy, point.temperature, point.density);
        onBranch = true;
        return found;
    }

    /** Back to a point. */
    void move(double temperature, double density) {
        equation.evaluate(temperature, density, point);
    }

    private void subcritical(Known known, double pressure, double value) {
        double place = saturation.place(pressure);
        double liquid = saturation.liquidAt(known.entropy, place);
        double vapour = saturation.vapourAt(known.entropy, place);
        double doubt = DOUBT * (vapour - liquid) + 1e-6 * Math.abs(vapour);
        if (value > liquid - doubt && value < vapour + doubt) {
            saturation.atPressure(pressure, saturated);
            liquid = known.of(saturated.liquid);
            vapour = known.of(saturated.vapour);
            if (value >= liquid && value <= vapour) {
                quality = Math.min(1.0, (value - liquid) / (vapour - liquid));
                return;
            }
        }
        double boiling = saturation.temperatureAt(place);
        if (value <= 0.5 * (liquid + vapour)) {
            liquid(known, pressure, value, saturation.liquidDensityAt(place), boiling);
        } else {
            vapour(known, pressure, value, vapour, saturation.vapourDensityAt(place), boiling);
        }
    }

    private void liquid(Known known, double pressure, double value, double edge, double boiling) {
        range(edge * (1.0 - SLACK), DENSEST * saturation.criticalDensity());
        double place = saturation.placeOfLiquid(known.entropy, value);
        if (!newton(known, pressure, value, saturation.temperatureAt(place), saturation.liquidDensityAt(place))) {
            bracket(
                    known,
                    pressure,
                    value,
                    lowest,
                    Math.min(saturation.criticalTemperature(), boiling * (1.0 + SLACK)));
        }
    }

    private void vapour(Known known, double pressure, double value, double edgeValue, double edge, double boiling) {
        range(THINNEST * saturation.criticalDensity(), edge * (1.0 + SLACK));
        equation.evaluate(boiling, edge, point);
        double cp = Math.min(point.cp(), 2.0 * point.cv);
        double start = Math.min(1.1 * highest, known.temperatureFrom(boiling, value - edgeValue, cp));
        if (!newton(known, pressure, value, start, edge * boiling / start)) {
            bracket(known, pressure, value, boiling * (1.0 - SLACK), highest);
        }
    }

    /** Above the critical pressure: one branch from liquid to gas. */
    private void dense(Known known, double pressure, double value) {
        range(THINNEST * saturation.criticalDensity(), DENSEST * saturation.criticalDensity());
        double place = saturation.placeOfLiquid(known.entropy, value);
        if (place > LIQUID_PLACE) {
            double rho = saturation.liquidDensityAt(place);
            if (newton(known, pressure, value, saturation.temperatureAt(place), rho) && stable()) {
                return;
            }
        }
        double start = saturation.criticalTemperature();
        density(pressure, start, saturation.criticalDensity());
        double guess = known.temperatureFrom(start, value - known.of(point), 2.0 * point.cv);
        double temperature = Math.max(start, Math.min(1.3 * start, guess));
        double rho = point.density * start / temperature;
        if (!newton(known, pressure, value, temperature, rho) || !stable()) {
            bracket(known, pressure, value, lowest, highest);
        }
    }

    /** Below the critical temperature only the dense branch counts at high pressure. */
    private boolean stable() {
        if (point.temperature >= saturation.criticalTemperature()) {
            return true;
        }
        double place = saturation.placeOfTemperature(Math.max(lowest, point.temperature));
        return point.density > saturation.liquidDensityAt(place) * (1.0 - SLACK);
    }

    private void range(double from, double to) {
        thin = from;
        dense = to;
    }

    /** False where it does not settle on the branch. */
    private boolean newton(Known known, double pressure, double value, double temperature, double rho) {
        double t = temperature;
        double r = rho;
        for (int i = 0; i < NEWTON_STEPS; i++) {
            equation.evaluate(t, r, point);
            double a = point.pressureByTemperature;
            double b = point.pressureByDensity;
            double c = known.byTemperature(point);
            double d = known.byDensity(point);
            double determinant = a * d - b * c;
            double f = pressure - point.pressure;
            double g = value - known.of(point);
            double stepT = (f * d - b * g) / determinant;
            double stepR = (a * g - f * c) / determinant;
            double size = Math.max(Math.abs(stepT) / t, Math.abs(stepR) / r);
            if (!(size < 1e6)) {
                return false;
            }
            double damping = Math.min(1.0, Math.min(0.15 * t / Math.abs(stepT), 0.4 * r / Math.abs(stepR)));
            t += damping * stepT;
            r += damping * stepR;
            if (size < 1e-7) { // quadratic: the next step would be below rounding
                equation.evaluate(t, r, point);
                return !onBranch || r >= thin && r <= dense && point.pressureByDensity > 0.0;
            }
        }
        return false;
    }

    /** Along the isobar enthalpy and entropy rise with temperature. Ends at the bound where the value lies beyond. */
    private void bracket(Known known, double pressure, double value, double from, double to) {
        double low = from;
        double high = to;
        double t = 0.5 * (low + high);
        for (int i = 0; i < BRACKET_STEPS; i++) {
            branchAt(pressure, t);
            density(pressure, t, point.density);
            double gap = value - known.of(point);
            if (gap > 0.0) {
                low = t;
            } else {
                high = t;
            }
            double next = known.temperatureFrom(t, gap, point.cp());
            if (!(next > low && next < high)) {
                next = 0.5 * (low + high);
            }
            if (Math.abs(next - t) <= CONVERGED * t) {
                return;
            }
            t = next;
        }
    }

    private void branchAt(double pressure, double temperature) {
        if (pressure > saturation.lowestPressure() && temperature < saturation.criticalTemperature()) {
            double first = thin;
            double last = dense;
            branch(pressure, temperature);
            if (thin < first && dense > last) {
                range(first, last);
            }
        }
    }

    /** In equilibrium at K with a share of vapour. */
    void temperatureQuality(double temperature, double share) {
        saturation.atTemperature(temperature, saturated);
        saturated.temperature = temperature;
        quality = share;
    }

    /** In equilibrium at Pa with a share of vapour. */
    void pressureQuality(double pressure, double share) {
        saturation.atPressure(pressure, saturated);
        quality = share;
    }

    /**
     * At K with enthalpy, J/kg: two phases where they can be, else vapour, else liquid. False where nothing between vacuum
     * and the densest liquid has it.
     */
    boolean temperatureEnthalpy(double temperature, double enthalpy) {
        quality = Double.NaN;
        double densest = DENSEST * saturation.criticalDensity();
        double thinnest = THINNEST * saturation.criticalDensity();
        if (temperature >= saturation.criticalTemperature()) {
            return scan(temperature, enthalpy, thinnest, densest);
        }
        saturation.atTemperature(temperature, saturated);
        double liquid = saturated.liquid.enthalpy;
        double vapour = saturated.vapour.enthalpy;
        if (enthalpy >= liquid && enthalpy <= vapour) {
            quality = (enthalpy - liquid) / (vapour - liquid);
            return true;
        }
        if (enthalpy > vapour) {
            return scan(temperature, enthalpy, thinnest, saturated.vapour.density);
        }
        double least = leastEnthalpy(temperature, saturated.liquid.density, densest);
        return scan(temperature, enthalpy, saturated.liquid.density, least)
                || scan(temperature, enthalpy, least, densest);
    }

    /** Density where the enthalpy of liquid, falling with pressure when warm, starts to rise; {@code from} where it rises at once. */
    private double leastEnthalpy(double temperature, double from, double to) {
        equation.evaluate(temperature, from, point);
        if (point.enthalpyByDensity() >= 0.0) {
            return from;
        }
        double low = from;
        double high = to;
        for (int i = 0; i < 50; i++) {
            double middle = 0.5 * (low + high);
            equation.evaluate(temperature, middle, point);
            if (point.enthalpyByDensity() < 0.0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** The thinnest density in a range with an enthalpy at K. */
    private boolean scan(double temperature, double enthalpy, double from, double to) {
        if (!(to > from)) {
            return false;
        }
        int pieces = 200;
        double ratio = Math.pow(to / from, 1.0 / pieces);
        double low = from;
        double gapLow = enthalpyGap(temperature, low, enthalpy);
        for (int i = 0; i < pieces; i++) {
            double high = low * ratio;
            double gapHigh = enthalpyGap(temperature, high, enthalpy);
            if (gapLow == 0.0 || gapLow * gapHigh < 0.0) {
                bisect(temperature, enthalpy, low, high, gapLow);
                return true;
            }
            low = high;
            gapLow = gapHigh;
        }
        return false;
    }

    private double enthalpyGap(double temperature, double density, double enthalpy) {
        equation.evaluate(temperature, density, point);
        return point.enthalpy - enthalpy;
    }

    private void bisect(double temperature, double enthalpy, double from, double to, double gapFrom) {
        double low = from;
        double high = to;
        for (int i = 0; i < BRACKET_STEPS && high - low > 1e-15 * high; i++) {
            double middle = point.density - (point.enthalpy - enthalpy) / point.enthalpyByDensity();
            if (!(middle > low && middle < high) || i % 4 == 3) {
                middle = 0.5 * (low + high);
            }
            double gap = enthalpyGap(temperature, middle, enthalpy);
            if (gap == 0.0) {
                return;
            }
            if (gap * gapFrom > 0.0) {
                low = middle;
            } else {
                high = middle;
            }
        }
    }

    /**
     * In equilibrium with an enthalpy and a share of vapour; where two temperatures have both (the enthalpy of vapour peaks), the
     * lower one. False where none has.
     */
    boolean enthalpyQuality(double enthalpy, double share) {
        int pieces = 400;
        double low = lowest;
        double gapLow = mixtureGap(low, enthalpy, share);
        for (int i = 1; i <= pieces; i++) {
            double high = lowest + (saturation.criticalTemperature() - lowest) * i / pieces;
            double gapHigh = mixtureGap(high, enthalpy, share);
            if (gapLow * gapHigh <= 0.0) {
                halve(low, high, gapLow, enthalpy, share);
                quality = share;
                return true;
            }
            low = high;
            gapLow = gapHigh;
        }
        return false;
    }

    private void halve(double from, double to, double gapFrom, double enthalpy, double share) {
        double low = from;
        double high = to;
        while (high - low > 4.0 * Math.ulp(high)) {
            double middle = 0.5 * (low + high);
            if (mixtureGap(middle, enthalpy, share) * gapFrom > 0.0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        mixtureGap(high, enthalpy, share);
        saturated.temperature = high;
    }

    private double mixtureGap(double temperature, double enthalpy, double share) {
        saturation.atTemperature(temperature, saturated);
        saturated.temperature = temperature;
        return (1.0 - share) * saturated.liquid.enthalpy + share * saturated.vapour.enthalpy - enthalpy;
    }
}
