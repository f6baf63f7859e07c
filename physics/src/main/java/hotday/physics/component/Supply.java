package hotday.physics.component;

/**
 * Voltage of the vehicle's supply with alternator, battery, resistive loads, loads of constant current and one {@link FanDrive}.
 *
 * <pre>
 *   regulated    the alternator carries all at V_reg
 *   sagging      it does not, but would at the battery's V_oc: the voltage between at which it just does
 *   discharging  V = V_oc - R_b I_b, I_b = loads(V) - capacity
 * </pre>
 *
 * The charging current is ignored. A fan of constant power can draw more the lower the voltage, so that from {@code V_reg} straight to
 * discharging the voltage would jump. Over the first {@value #SURFACE_CHARGE} A of missing capacity it is therefore held up to a line from
 * {@code V_reg} to {@code V_oc}, as a battery just taken off the charger does for a while; the currents still balance. Where the loads sag by
 * more than that on their own, the line is never reached.
 *
 * @param regulatedVoltage V_reg, V, above the battery's voltage at rest
 */
public record Supply(double regulatedVoltage, Battery battery) {
    /** Slots of the result: bus voltage, V. */
    public static final int BUS = 0;

    /** A. */
    public static final int ALTERNATOR_CURRENT = 1;

    /** A, drawn from the battery, 0 or more. */
    public static final int BATTERY_CURRENT = 2;

    /** A. */
    public static final int FAN_CURRENT = 3;

    /** V at the fan. */
    public static final int FAN_VOLTAGE = 4;

    /** W at the fan's terminals. */
    public static final int FAN_POWER = 5;

    /** Length of the result. */
    public static final int SIZE = 6;

    private static final double SURFACE_CHARGE = 2.0; // A
    private static final double CLOSE = 1e-9; // V; what is left after a Newton step of this size is far below
    private static final int MOST_STEPS = 60;

    /** Which way the loads are carried. */
    public enum State {
        REGULATED,
        SAGGING,
        DISCHARGING
    }

    public Supply {
        if (!(regulatedVoltage > battery.openCircuit())) {
            throw new IllegalArgumentException("regulated voltage " + regulatedVoltage
                    + " V must be above that of the battery at rest, " + battery.openCircuit() + " V");
        }
    }

    /**
     * Finds the voltage of the bus. Allocates nothing.
     *
     * @param capacity of the alternator, A, 0 or more
     * @param conductance of the resistive loads, A/V, 0 or more
     * @param constantCurrent of the other loads, A, 0 or more
     * @param ratio commanded speed of the fan, 0..1
     * @param out {@link #SIZE} numbers
     */
    public State solve(
            double capacity, double conductance, double constantCurrent, FanDrive fan, double ratio, double[] out) {
        double power = fan.commandedPower(ratio);
        double spare = capacity - constantCurrent;
        double missing = missing(regulatedVoltage, spare, conductance, fan, power, out);
        if (missing <= 0.0) {
            return write(regulatedVoltage, State.REGULATED, capacity, conductance, constantCurrent, out);
        }
        double rest = battery.openCircuit();
        double missingAtRest = missing(rest, spare, conductance, fan, power, out);
        boolean sagging = missingAtRest <= 0.0;
        double bus = sagging
                ? sagging(missing, missingAtRest, spare, conductance, fan, power, out)
                : discharging(missingAtRest, spare, conductance, fan, power, out);
        double held = regulatedVoltage - (regulatedVoltage - rest) * missing / SURFACE_CHARGE;
        State state = sagging && bus >= held ? State.SAGGING : State.DISCHARGING;
        bus = Math.max(bus, held);
        missing(bus, spare, conductance, fan, power, out);
        return write(bus, state, capacity, conductance, constantCurrent, out);
    }

    /** A that the alternator cannot give at a voltage; leaves voltage and current of the fan in out. */
    private static double missing(
            double bus, double spare, double conductance, FanDrive fan, double power, double[] out) {
        out[FAN_VOLTAGE] = fan.terminalVoltage(bus, power);
        out[FAN_CURRENT] = fan.current(out[FAN_VOLTAGE], power);
        return conductance * bus - spare + out[FAN_CURRENT];
    }

    /** Starts on the chord between the two known ends. */
    private double sagging(
            double missing,
            double missingAtRest,
            double spare,
            double conductance,
            FanDrive fan,
            double power,
            double[] out) {
        double low = battery.openCircuit();
        double start = low + (regulatedVoltage - low) * -missingAtRest / (missing - missingAtRest);
        return root(low, regulatedVoltage, start, 0.0, spare, conductance, fan, power, out);
    }

    /** Starts with the step from the voltage at rest, the last place looked at. */
    private double discharging(
            double missingAtRest, double spare, double conductance, FanDrive fan, double power, double[] out) {
        double high = battery.openCircuit();
        double source = 1.0 / battery.resistance();
        double slope = conductance + source + fan.slope(out[FAN_VOLTAGE], out[FAN_CURRENT], power);
        double start = Math.min(high, Math.max(0.0, high - missingAtRest / slope));
        return root(0.0, high, start, source, spare, conductance, fan, power, out);
    }

    /** Where loads - spare + source (V - V_oc) is zero, between low (below zero there) and high: Newton, held inside by halving. */
    private double root(
            double from,
            double to,
            double start,
            double source,
            double spare,
            double conductance,
            FanDrive fan,
            double power,
            double[] out) {
        double low = from;
        double high = to;
        double bus = start;
        for (int step = 0; step < MOST_STEPS; step++) {
            double value = missing(bus, spare, conductance, fan, power, out) + source * (bus - battery.openCircuit());
            if (value > 0.0) {
                high = bus;
            } else {
                low = bus;
            }
            double slope = conductance + source + fan.slope(out[FAN_VOLTAGE], out[FAN_CURRENT], power);
            double next = bus - value / slope;
            if (!(next >= low && next <= high)) {
                next = 0.5 * (low + high);
            }
            if (Math.abs(next - bus) <= CLOSE) {
                return next;
            }
            bus = next;
        }
        return bus;
    }

    private static State write(
            double bus, State state, double capacity, double conductance, double constantCurrent, double[] out) {
        double loads = conductance * bus + constantCurrent + out[FAN_CURRENT];
        double fromAlternator = state == State.SAGGING ? capacity : Math.min(capacity, loads);
        out[BUS] = bus;
        out[ALTERNATOR_CURRENT] = fromAlternator;
        out[BATTERY_CURRENT] = state == State.DISCHARGING ? loads - fromAlternator : 0.0;
        out[FAN_POWER] = out[FAN_VOLTAGE] * out[FAN_CURRENT];
        return state;
    }
}
