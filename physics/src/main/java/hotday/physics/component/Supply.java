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
 * @param regulatedVoltage V_reg, V, above the full battery's voltage at rest
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
    private static final double CLOSE = 1e-13; // of the regulated voltage
    private static final int MOST_STEPS = 60;

    /** Which way the loads are carried. */
    public enum State {
        REGULATED,
        SAGGING,
        DISCHARGING
    }

    public Supply {
        if (!(regulatedVoltage > battery.fullVoltage())) {
            throw new IllegalArgumentException("regulated voltage " + regulatedVoltage
                    + " V must be above that of the full battery at rest, " + battery.fullVoltage() + " V");
        }
    }

    /**
     * Finds the voltage of the bus. Allocates nothing.
     *
     * @param capacity of the alternator, A, 0 or more
     * @param charge of the battery, share 0..1
     * @param conductance of the resistive loads, A/V, 0 or more
     * @param constantCurrent of the other loads, A, 0 or more
     * @param ratio commanded speed of the fan, 0..1
     * @param out {@link #SIZE} numbers
     */
    public State solve(
            double capacity,
            double charge,
            double conductance,
            double constantCurrent,
            FanDrive fan,
            double ratio,
            double[] out) {
        double power = fan.commandedPower(ratio);
        double spare = capacity - constantCurrent;
        double missing = missing(regulatedVoltage, spare, conductance, fan, power);
        if (missing <= 0.0) {
            return write(regulatedVoltage, State.REGULATED, capacity, conductance, constantCurrent, fan, power, out);
        }
        double rest = battery.openCircuit(charge);
        double missingAtRest = missing(rest, spare, conductance, fan, power);
        boolean sagging = missingAtRest <= 0.0;
        double bus = sagging
                ? sagging(rest, missingAtRest, missing, spare, conductance, fan, power)
                : discharging(rest, spare, conductance, fan, power);
        double held = regulatedVoltage - (regulatedVoltage - rest) * missing / SURFACE_CHARGE;
        State state = sagging && bus >= held ? State.SAGGING : State.DISCHARGING;
        return write(Math.max(bus, held), state, capacity, conductance, constantCurrent, fan, power, out);
    }

    private static double missing(double bus, double spare, double conductance, FanDrive fan, double power) {
        return conductance * bus - spare + fan.current(fan.terminalVoltage(bus, power), power);
    }

    private double sagging(
            double rest,
            double missingAtRest,
            double missing,
            double spare,
            double conductance,
            FanDrive fan,
            double power) {
        double start = rest + (regulatedVoltage - rest) * -missingAtRest / (missing - missingAtRest);
        return root(rest, regulatedVoltage, start, rest, 0.0, spare, conductance, fan, power);
    }

    private double discharging(double rest, double spare, double conductance, FanDrive fan, double power) {
        return root(0.0, rest, rest, rest, 1.0 / battery.resistance(), spare, conductance, fan, power);
    }

    /** Where loads - spare + sourceSlope (V - rest) is zero, between low (below zero there) and high: Newton, held inside by halving. */
    private double root(
            double from,
            double to,
            double start,
            double rest,
            double sourceSlope,
            double spare,
            double conductance,
            FanDrive fan,
            double power) {
        double low = from;
        double high = to;
        double bus = start;
        for (int step = 0; step < MOST_STEPS; step++) {
            double terminal = fan.terminalVoltage(bus, power);
            double current = fan.current(terminal, power);
            double value = conductance * bus - spare + current + sourceSlope * (bus - rest);
            if (value > 0.0) {
                high = bus;
            } else {
                low = bus;
            }
            double slope = conductance + sourceSlope + fan.slope(terminal, current, power);
            double next = bus - value / slope;
            if (!(next >= low && next <= high)) {
                next = 0.5 * (low + high);
            }
            if (Math.abs(next - bus) <= CLOSE * regulatedVoltage) {
                return next;
            }
            bus = next;
        }
        return bus;
    }

    private static State write(
            double bus,
            State state,
            double capacity,
            double conductance,
            double constantCurrent,
            FanDrive fan,
            double power,
            double[] out) {
        double terminal = fan.terminalVoltage(bus, power);
        double current = fan.current(terminal, power);
        double loads = conductance * bus + constantCurrent + current;
        double fromAlternator = state == State.SAGGING ? capacity : Math.min(capacity, loads);
        out[BUS] = bus;
        out[ALTERNATOR_CURRENT] = fromAlternator;
        out[BATTERY_CURRENT] = state == State.DISCHARGING ? loads - fromAlternator : 0.0;
        out[FAN_CURRENT] = current;
        out[FAN_VOLTAGE] = terminal;
        out[FAN_POWER] = terminal * current;
        return state;
    }
}
