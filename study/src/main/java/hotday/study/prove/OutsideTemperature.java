package hotday.study.prove;

import java.util.Arrays;

/** What a vehicle's own temperature sensors say of the air outside, once the heat of the standing vehicle is taken out. */
final class OutsideTemperature {
    /** A sensor in the front of a warm vehicle is blown cold within this time, s; open road recordings. */
    private static final double SOAK = 900.0;
    /** A fall by less is weather and resolution, K. */
    private static final double NOTICED = 1.8;
    /** Intake air stands for the outside while both it and the coolant say that nothing is warm, K. */
    private static final double COLD_START = 6.0;

    private static final double STEADY = 4.0; // K
    private static final double FIRST_MINUTE = 60.0; // s

    private OutsideTemperature() {}

    /**
     * Replaces the first quarter of an hour by the lowest of the following quarter of an hour when the sensor falls there below its
     * first minute: a soaked sensor only ever reads high, and most so at the start.
     *
     * @param ambient K, changed
     * @return largest correction, K; 0 when nothing was done
     */
    static double unsoak(double[] ambient, double step) {
        int width = Math.min(ambient.length, (int) Math.round(SOAK / step));
        double[] lowest = new double[width];
        double largest = 0.0;
        double lowestOfAll = Double.POSITIVE_INFINITY;
        for (int i = 0; i < width; i++) {
            lowest[i] = ambient[i];
            for (int j = i; j < Math.min(ambient.length, i + width); j++) {
                lowest[i] = Math.min(lowest[i], ambient[j]);
            }
            largest = Math.max(largest, ambient[i] - lowest[i]);
            lowestOfAll = Math.min(lowestOfAll, ambient[i]);
        }
        double start = Quantile.of(firstMinute(ambient, step), 0.5);
        if (!(start - lowestOfAll >= NOTICED)) {
            return 0.0;
        }
        System.arraycopy(lowest, 0, ambient, 0, width);
        return largest;
    }

    /**
     * Outside temperature of a cold start from intake air, K; NaN when the start is not cold or the sensor wanders.
     *
     * @param intake K
     * @param coolant K
     */
    static double fromIntake(double[] intake, double[] coolant, double step) {
        double[] first = firstMinute(intake, step);
        double middle = Quantile.of(first, 0.5);
        boolean steady = Quantile.of(first, 0.9) - Quantile.of(first, 0.1) <= STEADY;
        return steady && Math.abs(coolant[0] - middle) <= COLD_START ? middle : Double.NaN;
    }

    /** Sorted. */
    private static double[] firstMinute(double[] values, double step) {
        double[] first = Arrays.copyOf(values, Math.min(values.length, (int) Math.round(FIRST_MINUTE / step)));
        Arrays.sort(first);
        return first;
    }
}
