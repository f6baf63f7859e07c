package hotday.study.wiring;

import hotday.physics.component.FanDrive;
import hotday.physics.component.Supply;
import hotday.vehicle.controller.Schedule;
import hotday.vehicle.spec.VehicleSpec;

/**
 * The fan after key-off, at the largest demand of the after-run's curve.
 *
 * @param time longest, s
 * @param current A, of the battery alone
 * @param voltage of the battery meanwhile, V
 * @param stop voltage that ends it, V
 * @param capacity of the battery, A s
 */
public record AfterRun(double time, double current, double voltage, double stop, double capacity) {
    private static final double PER_TICK = 0.1; // s
    private static final double MILLI = 1e-3;

    static AfterRun of(VehicleSpec spec, FanLoop loop) {
        Schedule.AfterRun rule = Schedule.of(spec.schedule()).afterRun();
        double demand = rule.demand().demand(rule.demand().x(rule.demand().size() - 1)) / 1e4;
        VehicleSpec.Electrical e = spec.electrical();
        FanDrive fan = e.drive(spec.fan(), loop.drop() / loop.current());
        double[] out = new double[Supply.SIZE];
        e.supply().solve(0.0, 0.0, 0.0, fan, demand, out);
        return new AfterRun(
                PER_TICK * rule.longest(),
                out[Supply.FAN_CURRENT],
                out[Supply.BUS],
                MILLI * rule.battery(),
                e.batteryCapacity());
    }

    /** A s. */
    public double charge() {
        return time * current;
    }

    /** Charge over the capacity. */
    public double share() {
        return charge() / capacity;
    }
}
