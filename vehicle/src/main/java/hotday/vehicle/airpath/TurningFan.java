package hotday.vehicle.airpath;

import hotday.physics.component.AirPath;
import hotday.physics.component.FanCurve;

/**
 * A fan curve at the speed and density at hand, with its inverse. Left of a peak the pressure of the peak is kept (stall),
 * so pressure never rises with flow and every pressure belongs to one flow, the largest.
 */
final class TurningFan {
    /** Least resistance of a free rotor against that of the driven one: keeps the inverse finite. */
    private static final double LEAST_WINDMILL = 1e-12;

    private static final double FLAT = -1e-12; // Pa/(m3/s)

    private final FanCurve curve;
    private double ratio;
    private double density;
    private double stall;
    private double linear;
    private double square;
    private double windmill;
    private double peakFlow;
    private double peak;

    TurningFan(FanCurve curve) {
        this.curve = curve;
    }

    void turn(double speedRatio, double airDensity) {
        ratio = speedRatio;
        density = airDensity;
        double relative = airDensity / curve.referenceDensity();
        stall = relative * curve.stall() * speedRatio * speedRatio;
        linear = relative * curve.linear() * speedRatio;
        square = -relative * curve.square();
        windmill = relative * Math.max(curve.windmill(), -LEAST_WINDMILL * curve.square());
        peakFlow = linear > 0.0 ? 0.5 * linear / square : Double.NEGATIVE_INFINITY;
        peak = linear > 0.0 ? stall + 0.25 * linear * linear / square : Double.NEGATIVE_INFINITY;
    }

    /** Pa. */
    double pressure(double flow) {
        return Math.max(driven(flow), -windmill * flow * Math.abs(flow));
    }

    private double driven(double flow) {
        double pressure = stall + linear * flow - square * flow * Math.abs(flow);
        return flow < peakFlow ? Math.max(peak, pressure) : pressure;
    }

    /** Change of pressure with flow, Pa/(m3/s), below 0; a flat place counts as all but flat, so that it has an inverse. */
    double slope(double flow) {
        double driven = driven(flow);
        if (driven < -windmill * flow * Math.abs(flow)) {
            return Math.min(FLAT, -2.0 * windmill * Math.abs(flow));
        }
        boolean stalled = flow < peakFlow && driven <= peak;
        return stalled ? FLAT : Math.min(FLAT, linear - 2.0 * square * Math.abs(flow));
    }

    /** The largest flow at which the fan still gives a pressure rise, m3/s. */
    double flow(double rise) {
        return AirPath.flow(-rise, stall, linear, -square, windmill, 0.0, 0.0);
    }

    TileFlow.FanState state(double flow) {
        if (curve.windmilling(flow, ratio)) {
            return TileFlow.FanState.WINDMILLING;
        }
        return flow < Math.max(0.0, peakFlow) ? TileFlow.FanState.STALLED : TileFlow.FanState.POWERED;
    }

    double shaftPower(double flow) {
        return curve.shaftPower(flow, ratio, density);
    }
}
