package hotday.physics.cycle;

import hotday.core.solve.Bracket;
import java.util.function.DoubleUnaryOperator;

/** Both pressures of a loop at rest between a condenser in air and an evaporator that takes heat in proportion to a temperature difference. */
final class SteadyLoop {
    private static final double RELATIVE = 1e-13;

    private final CycleLoop loop;
    private final double speed;
    private final double share;
    final double[] out = new double[CycleLoop.LENGTH];

    // condenser and evaporator, to be set
    double vapourConductance = 330.0;
    double twoPhaseConductance = 450.0;
    double liquidConductance = 380.0;
    double air = 308.15;
    double superheat = 6.0;
    double liquidShare = 0.1;
    double evaporatorConductance = 200.0;
    double evaporatorAir = 303.15;

    // found
    double low;
    double high;

    SteadyLoop(CycleLoop loop, double speed, double share) {
        this.loop = loop;
        this.speed = speed;
        this.share = share;
    }

    SteadyLoop solve() {
        low = root(this::missing, 0.5e5, 8e5);
        high = high(low);
        at(low, high);
        return this;
    }

    /** The high pressure at which the condenser gives away what comes in, Pa. */
    double high(double lowPressure) {
        return root(p -> -at(lowPressure, p), lowPressure, loop.highestPressure());
    }

    double cooling() {
        return out[CycleLoop.MASS_FLOW] * (out[CycleLoop.SUCTION_ENTHALPY] - out[CycleLoop.LIQUID_ENTHALPY]);
    }

    private double missing(double pressure) {
        at(pressure, high(pressure));
        return cooling() - evaporatorConductance * (evaporatorAir - out[CycleLoop.LOW_SATURATION]);
    }

    private double at(double lowPressure, double highPressure) {
        loop.compress(lowPressure, highPressure, speed, share, superheat, out);
        loop.condense(out, vapourConductance, twoPhaseConductance, liquidConductance, air, liquidShare);
        return out[CycleLoop.CONDENSING_SURPLUS];
    }

    private static double root(DoubleUnaryOperator f, double low, double high) {
        Bracket.Root root = Bracket.root(f, low, high, RELATIVE * low, 200);
        if (!root.found()) {
            throw new AssertionError(root + " between " + low + " and " + high);
        }
        return root.value();
    }
}
