package hotday.physics.component;

import java.util.List;

/**
 * Torque converter: pump torque T = (n / K)^2 with the capacity factor K and the torque ratio R = T turbine / T pump, both straight
 * lines in the speed ratio s = turbine over pump speed. Heat = pump power less turbine power = T n (1 - s R). The usual definitions (SAE J643,
 * from memory).
 *
 * <pre>
 *  s      0 ........ last row ........ 1 ........
 *  T/n^2  1/K^2      straight line to 0 | coast: the same viscous coupling backwards, R = 1
 *  R      table      straight line to 1 |
 * </pre>
 *
 * Past the last row (at most {@value #LAST}) torque fades to zero where both sides turn alike: no table says how, common practice, no source.
 * Above 1 the wheels drag the engine along: T = -c n_t (n_t - n), joining without a corner. A turbine turning backwards has the
 * values of a standing one. Immutable, allocates nothing; speeds rad/s, torques N m.
 */
public final class Converter {
    private static final double RADIANS_PER_RPM = Math.PI / 30.0;
    private static final double NEWTON_METRES = 1.3558179483314004; // per lb ft
    /** Largest speed ratio the table is believed to; at 1 nothing can be carried. */
    private static final double LAST = 0.99;

    private static final int STEPS = 12;

    private final double[] ratio;
    private final double[] capacity;
    private final double[] torqueRatio;
    /** K s and K s / sqrt(R) at the rows: turbine speed over the square root of pump and of turbine torque. Both rise. */
    private final double[] perPumpTorque;

    private final double[] perTurbineTorque;
    private final int last;
    /** c of T = c n (n - n_t) past the last row, N m / (rad/s)^2. */
    private final double coupling;

    private Converter(double[] ratio, double[] capacity, double[] torqueRatio) {
        this.ratio = ratio;
        this.capacity = capacity;
        this.torqueRatio = torqueRatio;
        this.last = ratio.length - 1;
        this.coupling = 1.0 / (capacity[last] * capacity[last] * (1.0 - ratio[last]));
        this.perPumpTorque = new double[ratio.length];
        this.perTurbineTorque = new double[ratio.length];
        for (int i = 0; i <= last; i++) {
            perPumpTorque[i] = capacity[i] * ratio[i];
            perTurbineTorque[i] = perPumpTorque[i] / Math.sqrt(torqueRatio[i]);
        }
    }

    /**
     * A converter from its rows.
     *
     * @param speedRatio from 0 rising to at most 1
     * @param capacity rad/s per sqrt(N m), above 0; K s must rise with s
     * @param torqueRatio above 0; with s never more than all power
     */
    public static Converter of(double[] speedRatio, double[] capacity, double[] torqueRatio) {
        ConverterRows.check(speedRatio, capacity, torqueRatio);
        int n = speedRatio.length;
        double[] s = speedRatio.clone();
        double[] k = capacity.clone();
        double[] r = torqueRatio.clone();
        if (s[n - 1] > LAST) {
            double part = (LAST - s[n - 2]) / (s[n - 1] - s[n - 2]);
            if (part <= 0.0) {
                throw new IllegalArgumentException("converter: only one row may have a speed ratio of " + LAST
                        + " or more, rows " + (n - 1) + " and " + n + " have");
            }
            k[n - 1] = k[n - 2] + part * (k[n - 1] - k[n - 2]);
            r[n - 1] = r[n - 2] + part * (r[n - 1] - r[n - 2]);
            s[n - 1] = LAST;
        }
        return new Converter(s, k, r);
    }

    /** The same from lists. */
    public static Converter of(List<Double> speedRatio, List<Double> capacity, List<Double> torqueRatio) {
        return of(plain(speedRatio), plain(capacity), plain(torqueRatio));
    }

    private static double[] plain(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** The same with capacity factors in rpm per sqrt(N m). */
    public static Converter ofRpmNewtonMetre(double[] speedRatio, double[] capacity, double[] torqueRatio) {
        return of(speedRatio, scaled(capacity, RADIANS_PER_RPM), torqueRatio);
    }

    /** The same with capacity factors in rpm per sqrt(lb ft). */
    public static Converter ofRpmPoundFoot(double[] speedRatio, double[] capacity, double[] torqueRatio) {
        return of(speedRatio, scaled(capacity, RADIANS_PER_RPM / Math.sqrt(NEWTON_METRES)), torqueRatio);
    }

    private static double[] scaled(double[] values, double factor) {
        double[] out = new double[values.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = factor * values[i];
        }
        return out;
    }

    /** K, rad/s per sqrt(N m), at a speed ratio; infinite from 1 on. */
    public double capacity(double speedRatio) {
        return speedRatio <= ratio[last]
                ? line(capacity, speedRatio)
                : 1.0 / Math.sqrt(Math.max(0.0, coupling * (1.0 - speedRatio)));
    }

    /** Turbine over pump torque at a speed ratio; 1 from 1 on. */
    public double torqueRatio(double speedRatio) {
        if (speedRatio <= ratio[last]) {
            return line(torqueRatio, speedRatio);
        }
        double left = Math.max(0.0, (1.0 - speedRatio) / (1.0 - ratio[last]));
        return 1.0 + left * (torqueRatio[last] - 1.0);
    }

    /**
     * Torque the pump takes from the engine, N m; negative when the turbine drags it along.
     *
     * @param engineSpeed rad/s, 0 or more
     * @param speedRatio turbine over pump speed
     */
    public double inputTorque(double engineSpeed, double speedRatio) {
        return pumpTorque(engineSpeed, speedRatio * engineSpeed);
    }

    /** The same from both speeds; valid for an engine at rest. */
    public double pumpTorque(double engineSpeed, double turbineSpeed) {
        if (turbineSpeed >= engineSpeed) {
            return -coupling * turbineSpeed * (turbineSpeed - engineSpeed);
        }
        double speedRatio = turbineSpeed / engineSpeed;
        if (speedRatio > ratio[last]) {
            return coupling * engineSpeed * (engineSpeed - turbineSpeed);
        }
        double root = engineSpeed / line(capacity, speedRatio);
        return root * root;
    }

    /** Torque of the turbine, N m; negative when it drags the engine along. */
    public double turbineTorque(double engineSpeed, double turbineSpeed) {
        double pump = pumpTorque(engineSpeed, turbineSpeed);
        return pump > 0.0 ? torqueRatio(turbineSpeed / engineSpeed) * pump : pump;
    }

    /** Heat to the fluid, W, never negative; at stall everything the engine gives. */
    public double heat(double engineSpeed, double turbineSpeed) {
        return Math.max(
                0.0,
                pumpTorque(engineSpeed, turbineSpeed) * engineSpeed
                        - turbineTorque(engineSpeed, turbineSpeed) * turbineSpeed);
    }

    /**
     * Engine speed at which the pump takes a torque, rad/s: the root of (n / K(n_t / n))^2 = T.
     *
     * @param turbineSpeed rad/s; below 0 counts as 0
     * @param inputTorque N m; negative when the turbine drags the engine along
     */
    public double engineSpeed(double turbineSpeed, double inputTorque) {
        double turbine = Math.max(0.0, turbineSpeed);
        if (inputTorque <= 0.0) {
            return dragged(turbine, inputTorque);
        }
        double root = Math.sqrt(inputTorque);
        double wanted = turbine / root;
        if (wanted >= perPumpTorque[last]) {
            // c n (n - n_t) = T
            return 0.5 * (turbine + Math.sqrt(turbine * turbine + 4.0 * inputTorque / coupling));
        }
        int i = row(perPumpTorque, wanted);
        double slope = slope(capacity, i);
        double level = capacity[i] - slope * ratio[i];
        // (level + slope s) s = wanted, then n = K(s) sqrt(T)
        double s = 2.0 * wanted / (level + Math.sqrt(level * level + 4.0 * slope * wanted));
        return root * (level + slope * s);
    }

    /**
     * Engine speed at which the turbine gives a torque, rad/s: what the road asks.
     *
     * @param turbineSpeed rad/s; below 0 counts as 0
     * @param turbineTorque N m; negative when the wheels drag the engine along
     */
    public double engineSpeedForOutput(double turbineSpeed, double turbineTorque) {
        double turbine = Math.max(0.0, turbineSpeed);
        if (turbineTorque <= 0.0) {
            return dragged(turbine, turbineTorque);
        }
        double wanted = turbine / Math.sqrt(turbineTorque);
        if (wanted >= perTurbineTorque[last]) {
            return turbine / fadingRatio(turbineTorque / (turbine * turbine));
        }
        int i = row(perTurbineTorque, wanted);
        double s = ratioInRow(i, wanted);
        return line(capacity, s) * Math.sqrt(turbineTorque / line(torqueRatio, s));
    }

    /** From T = -c n_t (n_t - n). */
    private double dragged(double turbine, double torque) {
        return turbine > 0.0 ? Math.max(0.0, turbine + torque / (coupling * turbine)) : 0.0;
    }

    /** Past the last row: c (1 - s) R(s) = t s^2 with R a line, t turbine torque over turbine speed squared. */
    private double fadingRatio(double torquePerSquare) {
        double slope = (1.0 - torqueRatio[last]) / (1.0 - ratio[last]);
        double level = 1.0 - slope;
        double q = torquePerSquare / coupling + slope;
        double b = level - slope;
        double root = Math.sqrt(b * b + 4.0 * q * level);
        return b > 0.0 ? 2.0 * level / (b + root) : (root - b) / (2.0 * q);
    }

    /** K(s) s = wanted sqrt(R(s)) within a row, by Newton's method from the chord. */
    private double ratioInRow(int i, double wanted) {
        double slopeK = slope(capacity, i);
        double slopeR = slope(torqueRatio, i);
        double low = ratio[i];
        double high = ratio[i + 1];
        double rise = perTurbineTorque[i + 1] - perTurbineTorque[i];
        double s = low + (high - low) * (wanted - perTurbineTorque[i]) / rise;
        for (int step = 0; step < STEPS; step++) {
            double k = capacity[i] + slopeK * (s - low);
            double root = Math.sqrt(torqueRatio[i] + slopeR * (s - low));
            double move = (k * s - wanted * root) / (k + slopeK * s - 0.5 * wanted * slopeR / root);
            double next = Math.min(high, Math.max(low, s - move));
            if (Math.abs(next - s) <= 1e-15) {
                return next;
            }
            s = next;
        }
        return s;
    }

    /** Heat of a slipping lock-up clutch, W. */
    public static double lockedHeat(double torque, double slip) {
        return Math.abs(torque * slip);
    }

    private double line(double[] values, double speedRatio) {
        if (speedRatio <= 0.0) {
            return values[0];
        }
        int i = row(ratio, speedRatio);
        return values[i] + slope(values, i) * (speedRatio - ratio[i]);
    }

    private double slope(double[] values, int i) {
        return (values[i + 1] - values[i]) / (ratio[i + 1] - ratio[i]);
    }

    /** Row at or below a value, at most the last but one. */
    private int row(double[] rising, double value) {
        int i = 0;
        while (i < last - 1 && rising[i + 1] <= value) {
            i++;
        }
        return i;
    }
}
