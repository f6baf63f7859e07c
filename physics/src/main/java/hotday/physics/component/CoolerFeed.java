package hotday.physics.component;

/**
 * Fluid on its way from the sump through the coolers: a bypass thermostat feeds a share of the full flow, straight from 0 to 1 between two
 * temperatures; the full flow rises with the pump to where its regulator holds it. 4..10 l/min at speed, 3..5 at idle: common practice, no source.
 * The rest of the fluid goes straight back, so what a cooler takes is its heat at {@link #massFlow}, not a share of the heat at full flow.
 *
 * @param opens sump temperature at which the coolers begin to be fed, K
 * @param full fully fed, K, above {@code opens}
 * @param flow kg/s from {@code flowSpeed} on, 0 or more
 * @param flowSpeed engine speed, rad/s, above 0
 */
public record CoolerFeed(double opens, double full, double flow, double flowSpeed) {
    public CoolerFeed {
        if (!(full > opens && opens > 0.0 && full < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "cooler bypass opens at " + opens + " K and is full at " + full + " K: full must be the higher");
        }
        if (!(flow >= 0.0 && flow < Double.POSITIVE_INFINITY && flowSpeed > 0.0)) {
            throw new IllegalArgumentException(
                    "cooler flow " + flow + " kg/s at " + flowSpeed + " rad/s: flow must be 0 or more, speed above 0");
        }
    }

    /** Share of the flow that goes through the coolers, 0..1. */
    public double share(double sump) {
        return Math.min(1.0, Math.max(0.0, (sump - opens) / (full - opens)));
    }

    /** kg/s through the coolers. */
    public double massFlow(double sump, double engineSpeed) {
        return share(sump) * flow * Math.min(1.0, Math.max(0.0, engineSpeed / flowSpeed));
    }

    /**
     * Temperature of fluid behind a cooler, K, before the next in the row; as it came where nothing flows.
     *
     * @param before K
     * @param heat given off, W
     * @param massFlow kg/s
     * @param specificHeat J/(kg K)
     */
    public static double after(double before, double heat, double massFlow, double specificHeat) {
        double rate = massFlow * specificHeat;
        return rate > 0.0 ? before - heat / rate : before;
    }
}
