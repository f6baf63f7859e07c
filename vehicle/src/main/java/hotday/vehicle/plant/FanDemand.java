package hotday.vehicle.plant;

import hotday.vehicle.spec.FanSchedule;
import java.util.List;

/**
 * What the schedule asks of the fan at rest: the largest of its curves less the road-speed allowance, without hysteresis,
 * least times and slew. A curve starts over a span below its first point instead of at it, so that a steady state is found.
 */
final class FanDemand {
    private static final double SPAN = 1.0; // K below the first point of a temperature curve
    private static final double SPAN_PRESSURE = 50e3; // Pa below the first point of the head curve

    private static final double[] NONE = {};

    private final double[] coolant;
    private final double[] coolantDemand;
    private final double[] head;
    private final double[] headDemand;
    private final double[] gearbox;
    private final double[] gearboxDemand;
    private final double[] charge;
    private final double[] chargeDemand;
    private final double[] speed;
    private final double[] allowance;
    private final double conditioning;
    private final double noAllowance; // K, coolant from which nothing is spared

    FanDemand(FanSchedule s) {
        coolant = lead(s.coolantTemperature(), SPAN);
        coolantDemand = demand(s.coolantDemand());
        head = lead(s.headPressure(), SPAN_PRESSURE);
        headDemand = demand(s.headDemand());
        gearbox = lead(s.gearboxTemperature(), SPAN);
        gearboxDemand = demand(s.gearboxDemand());
        charge = s.chargeAir().map(c -> lead(c.temperature(), SPAN)).orElse(NONE);
        chargeDemand = s.chargeAir().map(c -> demand(c.demand())).orElse(NONE);
        speed = array(s.allowanceSpeed());
        allowance = array(s.allowance());
        noAllowance = s.details().allowanceEnds();
        conditioning = s.headPressure().isEmpty() ? s.airConditioningDemand() : 0.0;
    }

    private static double[] array(List<Double> list) {
        return list.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static double[] lead(List<Double> x, double span) {
        double[] out = new double[x.isEmpty() ? 0 : x.size() + 1];
        for (int i = 1; i < out.length; i++) {
            out[i] = x.get(i - 1);
        }
        if (out.length > 0) {
            out[0] = out[1] - span;
        }
        return out;
    }

    private static double[] demand(List<Double> y) {
        double[] out = new double[y.isEmpty() ? 0 : y.size() + 1];
        for (int i = 1; i < out.length; i++) {
            out[i] = y.get(i - 1);
        }
        return out;
    }

    /** Straight between points, held beyond the last; nothing without a curve. */
    private static double at(double[] x, double[] y, double value) {
        int n = x.length;
        if (n == 0 || value <= x[0]) {
            return n == 0 ? 0.0 : y[0];
        }
        int i = 1;
        while (i < n && value >= x[i]) {
            i++;
        }
        return i == n ? y[n - 1] : y[i - 1] + (y[i] - y[i - 1]) * (value - x[i - 1]) / (x[i] - x[i - 1]);
    }

    /** Wanted fan speed, 0..1; head pressure and charge air must stand in the outputs. */
    double of(double[] k, double[] x, double[] u, double[] w) {
        double temperature = x[State.JACKET.ordinal()] + k[Coefficient.COOLANT_SENSOR_OFFSET.ordinal()];
        double engaged = u[Input.COMPRESSOR.ordinal()];
        double wanted = at(coolant, coolantDemand, temperature);
        double pressure = Math.max(conditioning, at(head, headDemand, w[Output.HEAD_PRESSURE.ordinal()]));
        wanted = Math.max(wanted, engaged * pressure);
        wanted = Math.max(wanted, at(gearbox, gearboxDemand, x[State.SUMP.ordinal()]));
        wanted = Math.max(wanted, at(charge, chargeDemand, w[Output.CHARGE_TEMPERATURE.ordinal()]));
        double spared = at(speed, allowance, u[Input.SPEED.ordinal()]);
        double cold = Math.min(1.0, Math.max(0.0, noAllowance - temperature));
        return Math.max(0.0, wanted - spared * cold);
    }
}
