package hotday.physics.component;

/**
 * Centrifugal coolant pump in a fixed turbulent circuit: flow in proportion to speed (affinity laws), never backwards.
 *
 * <p>Where the circuit is laminar it drops below proportion, by up to some 10 % at idle (from memory). Idle flow is usually 15 to 25
 * % of rated flow (from memory).
 *
 * @param ratedFlow m3/s
 * @param ratedSpeed rad/s of the shaft the speed refers to (engine, or the pump's own motor)
 */
public record Pump(double ratedFlow, double ratedSpeed) {
    public Pump {
        if (!(ratedFlow >= 0 && ratedFlow < Double.POSITIVE_INFINITY && ratedSpeed > 0)) {
            throw new IllegalArgumentException("pump flow " + ratedFlow + " m3/s at " + ratedSpeed
                    + " rad/s: flow must be 0 or more, speed above 0");
        }
    }

    /** m3/s at rad/s. */
    public double flow(double speed) {
        return ratedFlow * Math.max(0.0, speed) / ratedSpeed;
    }
}
