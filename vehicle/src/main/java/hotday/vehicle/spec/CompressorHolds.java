package hotday.vehicle.spec;

import java.util.Optional;

/**
 * What keeps a wanted compressor off beside the pressures and the freeze limit of its circuit.
 *
 * @param startDelay after the engine has started, s
 * @param hotCoolant left out: at the coolant's limit, at 116 degC at most
 * @param leastOn the clutch stays closed at least, s
 * @param leastOff it rests at least, s
 */
public record CompressorHolds(
        double startDelay, Throttle throttle, Optional<HotCoolant> hotCoolant, double leastOn, double leastOff) {

    /**
     * @param wideOpen share of full load that cuts the compressor out, 0..1
     * @param released share below which the next cut may come, 0..1
     * @param longest time of one cut, s; 0: no cut
     */
    public record Throttle(double wideOpen, double released, double longest) {}

    /**
     * @param cutOut coolant temperature that stops the compressor, K
     * @param cutIn at which it may start again, K
     */
    public record HotCoolant(double cutOut, double cutIn) {
        /** K between the two, where only the first is known; common practice, no source. */
        public static final double BAND = 6.0;

        private static final double HOTTEST = 273.15 + 116.0;

        /** Of a vehicle whose coolant may get so hot, K; at 116 degC at most, common practice, no source. */
        public static HotCoolant below(double limit) {
            double out = Math.min(HOTTEST, limit);
            return new HotCoolant(out, out - BAND);
        }
    }

    /** A compressor nobody calibrated; the numbers are explained in docs/controller.md. */
    public static CompressorHolds standard() {
        return new CompressorHolds(7.0, new Throttle(0.9, 0.8, 5.0), Optional.empty(), 3.0, 5.0);
    }
}
