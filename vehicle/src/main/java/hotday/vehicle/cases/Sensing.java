package hotday.vehicle.cases;

/**
 * What stands between a value and the controllers that read it: a lag of first order, then steps.
 *
 * @param coolantStep steps of coolant, gearbox fluid and charge air temperature, K; 0 for the controllers' own 0.1 K
 * @param coolantLag time constant of those sensors in what moves past them, s
 * @param pressureStep steps of head pressure, Pa; 0 for the controllers' own 1 kPa
 */
public record Sensing(double coolantStep, double coolantLag, double pressureStep) {
    /** Sensors that miss nothing. */
    public static final Sensing EXACT = new Sensing(0.0, 0.0, 0.0);
    /**
     * As in most cars: a byte that counts kelvins (SAE J1979 PID 05), a thermistor in its housing that lags by some seconds and a pressure
     * sensor over ten bits of 35 bar; lag and bits are common practice, no source.
     */
    public static final Sensing USUAL = new Sensing(1.0, 4.0, 35e5 / 1024);

    private static final double ZERO_CELSIUS = 273.15;

    public Sensing {
        if (!(coolantStep >= 0.0) || !(coolantLag >= 0.0) || !(pressureStep >= 0.0)) {
            throw new IllegalArgumentException("steps and lags are not below 0");
        }
    }

    /** What a sensor shows a step later, K. */
    double lagged(double shown, double value, double step) {
        return coolantLag == 0.0 ? value : shown + step / (step + coolantLag) * (value - shown);
    }

    /** A temperature in steps from 0 degC, K. */
    double temperature(double kelvin) {
        return coolantStep == 0.0 ? kelvin : stepped(kelvin - ZERO_CELSIUS, coolantStep) + ZERO_CELSIUS;
    }

    /** A pressure in steps, Pa. */
    double pressure(double pascal) {
        return pressureStep == 0.0 ? pascal : stepped(pascal, pressureStep);
    }

    private static double stepped(double value, double step) {
        return step * Math.floor(value / step + 0.5);
    }
}
