package hotday.vehicle.plant;

import hotday.physics.component.Alternator;
import hotday.physics.component.FanDrive;
import hotday.physics.component.Supply;
import hotday.vehicle.spec.VehicleSpec;

/** Alternator, battery, loads and the fan's drive. Page: docs/physics/supply.md. */
final class SupplySide {
    private static final double NOMINAL = 13.5; // V, at which loads are rated

    private final Alternator alternator;
    private final Supply supply;
    private final FanDrive fan;
    private final double baseCurrent;

    SupplySide(VehicleSpec spec) {
        VehicleSpec.Electrical e = spec.electrical();
        alternator = e.alternator();
        supply = e.supply();
        fan = e.drive(spec.fan(), e.fanCableResistance());
        baseCurrent = e.baseCurrent();
    }

    /**
     * Balances the bus at the present fan speed.
     *
     * @param conductance of resistive loads beside the base, A/V
     * @param current of further constant loads, A
     */
    void balance(double[] x, double[] u, Work work, double conductance, double current) {
        double[] w = work.w;
        double capacity = alternator.capacity(
                u[Input.ENGINE_SPEED.ordinal()], x[State.BAY.ordinal()] + VehicleSpec.Electrical.ALTERNATOR_RISE);
        double base = u[Input.ENGINE_SPEED.ordinal()] > 0.0 ? baseCurrent : 0.0;
        supply.solve(capacity, conductance, base + current, fan, x[State.FAN.ordinal()], work.bus);
        w[Output.BUS.ordinal()] = work.bus[Supply.BUS];
        w[Output.ALTERNATOR_CURRENT.ordinal()] = work.bus[Supply.ALTERNATOR_CURRENT];
        w[Output.BATTERY_CURRENT.ordinal()] = work.bus[Supply.BATTERY_CURRENT];
        w[Output.FAN_CURRENT.ordinal()] = work.bus[Supply.FAN_CURRENT];
        w[Output.FAN_POWER.ordinal()] = work.bus[Supply.FAN_POWER];
        w[Output.ALTERNATOR_POWER.ordinal()] =
                alternator.shaftPower(work.bus[Supply.BUS], work.bus[Supply.ALTERNATOR_CURRENT]);
    }

    /** Conductance of a load rated at nominal voltage, A/V. */
    static double conductance(double power) {
        return power / (NOMINAL * NOMINAL);
    }

    /** Current of a load of constant power, A, near nominal voltage. */
    static double current(double power) {
        return power / NOMINAL;
    }

    /** Fan speed that voltage, current limit and derating leave of a wanted one, 0..1. */
    double reachable(double wanted, double[] w) {
        return fan.speedFor(w[Output.BUS.ordinal()], wanted);
    }
}
