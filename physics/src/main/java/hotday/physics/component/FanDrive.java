package hotday.physics.component;

/**
 * Electric fan with its own electronics: takes constant power, hence more current as the voltage falls, until its current limit or its
 * low-voltage derating acts.
 *
 * <pre>
 *   command   P   = full s^3 + electronics
 *   terminal  V_f = bus - R I,  the higher of the two voltages at which this holds
 *   current   I   = min(P d / V_f, limit),  d = clip((V_f - zero) / (full - zero), 0, 1)
 * </pre>
 *
 * All closed form. Each of the three ways to draw current alone gives one voltage, and since the smallest current acts, the highest voltage holds.
 * Current and voltage follow the bus without a jump while it is below twice {@code fullVoltage}; above, a cable that eats half the voltage could
 * make it collapse.
 *
 * @param fullPower of the motor at speed ratio 1, W, above 0
 * @param electronicsPower W, 0 or more; none at rest, complete from 2 % speed on
 * @param currentLimit A, above 0
 * @param zeroVoltage at and below which nothing is drawn, V, above 0
 * @param fullVoltage from which on the derating ends, V, above {@code zeroVoltage}
 * @param cableResistance from the bus to the fan and back, Ohm, 0 or more, see {@link Cable}
 */
public record FanDrive(
        double fullPower,
        double electronicsPower,
        double currentLimit,
        double zeroVoltage,
        double fullVoltage,
        double cableResistance) {
    private static final double AWAKE = 0.02;

    /** What keeps the fan from the power it was told to take. */
    public enum Limit {
        NONE,
        CURRENT,
        LOW_VOLTAGE
    }

    public FanDrive {
        positive("full power", fullPower, "W");
        positive("current limit", currentLimit, "A");
        positive("voltage without power", zeroVoltage, "V");
        if (!(electronicsPower >= 0.0)) {
            throw new IllegalArgumentException("fan electronics " + electronicsPower + " W must be 0 or more");
        }
        if (!(fullVoltage > zeroVoltage)) {
            throw new IllegalArgumentException(
                    "fan voltage of full power " + fullVoltage + " V must be above " + zeroVoltage + " V");
        }
        if (!(cableResistance >= 0.0)) {
            throw new IllegalArgumentException("fan cable " + cableResistance + " Ohm must be 0 or more");
        }
    }

    private static void positive(String what, double value, String unit) {
        if (!(value > 0.0)) {
            throw new IllegalArgumentException("fan " + what + " " + value + " " + unit + " must be above 0");
        }
    }

    /** Power the command asks for at the terminals, W. Speed ratio 0 or more; below that as 0. */
    public double commandedPower(double ratio) {
        double s = Math.max(0.0, ratio);
        return fullPower * s * s * s + electronicsPower * Math.min(1.0, s / AWAKE);
    }

    /** Voltage at the fan, V. */
    public double terminalVoltage(double busVoltage, double commandedPower) {
        double atLimit = busVoltage - cableResistance * currentLimit;
        double lost = cableResistance * commandedPower;
        double square = busVoltage * busVoltage - 4.0 * lost;
        double whole = square >= 0.0 ? 0.5 * (busVoltage + Math.sqrt(square)) : 0.0;
        double highest = whole >= fullVoltage ? whole : Math.max(whole, derated(busVoltage, lost));
        return Math.min(busVoltage, Math.max(atLimit, highest));
    }

    private double derated(double busVoltage, double lost) {
        double part = lost / (fullVoltage - zeroVoltage);
        double rest = busVoltage - part;
        return 0.5 * (rest + Math.sqrt(rest * rest + 4.0 * part * zeroVoltage));
    }

    /** Current, A, at a voltage at the fan, V. */
    public double current(double terminalVoltage, double commandedPower) {
        if (terminalVoltage <= zeroVoltage) {
            return 0.0;
        }
        return Math.min(commandedPower * share(terminalVoltage) / terminalVoltage, currentLimit);
    }

    private double share(double terminalVoltage) {
        return Math.min(1.0, Math.max(0.0, (terminalVoltage - zeroVoltage) / (fullVoltage - zeroVoltage)));
    }

    /** Change of {@link #current} per volt of the bus, A/V; at a kink, of one side. */
    double slope(double terminalVoltage, double current, double commandedPower) {
        if (terminalVoltage <= zeroVoltage || current >= currentLimit) {
            return 0.0;
        }
        double atFan = terminalVoltage < fullVoltage
                ? commandedPower * zeroVoltage / ((fullVoltage - zeroVoltage) * terminalVoltage * terminalVoltage)
                : -current / terminalVoltage;
        return atFan / (1.0 + cableResistance * atFan);
    }

    public Limit limit(double busVoltage, double ratio) {
        double command = commandedPower(ratio);
        double terminal = terminalVoltage(busVoltage, command);
        if (current(terminal, command) >= currentLimit) {
            return Limit.CURRENT;
        }
        return command > 0.0 && terminal < fullVoltage ? Limit.LOW_VOLTAGE : Limit.NONE;
    }

    /**
     * Speed ratio really reached: {@code wantedRatio} while the whole power is there, less by the cube root of the share that a limit leaves.
     */
    public double speedFor(double busVoltage, double wantedRatio) {
        double command = commandedPower(wantedRatio);
        double terminal = terminalVoltage(busVoltage, command);
        return reached(wantedRatio, command, terminal * current(terminal, command));
    }

    /** As {@link #speedFor} with the power at the terminals already known, W. */
    public double speedForPower(double terminalPower, double wantedRatio) {
        return reached(wantedRatio, commandedPower(wantedRatio), terminalPower);
    }

    private static double reached(double wanted, double command, double terminalPower) {
        double left = terminalPower / command;
        return left < 1.0 ? wanted * Math.cbrt(Math.max(0.0, left)) : Math.max(0.0, wanted);
    }
}
