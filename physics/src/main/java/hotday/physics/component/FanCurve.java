package hotday.physics.component;

/**
 * Axial fan: pressure rise and shaft power against volume flow and speed.
 *
 * <pre>
 *   Pa                    powered:    density ratio x (a0 s^2 + a1 s Q + a2 Q|Q|)
 *   |\__                  free rotor: density ratio x (-kw Q|Q|)
 *   |   \__
 *   +------\--------- Q   what acts is the larger of the two: a stream that would need more
 *           \__  ---__    resistance than a freely turning rotor has spins the rotor faster
 * </pre>
 *
 * Affinity: flow in proportion to speed, pressure to speed^2 and density, power to speed^3 and density. The free rotor as the upper bound of
 * the resistance is a choice of this model. Where {@code linear} is above zero the curve rises at small flow (stall) and may meet a system more than
 * once: see the branch rule in {@link AirPath}.
 *
 * @param stall a0, pressure at no flow and full speed, Pa, 0 or more
 * @param linear a1, Pa/(m3/s)
 * @param square a2, Pa/(m3/s)^2, below 0
 * @param windmill kw of the free rotor, Pa/(m3/s)^2, 0..-a2
 * @param power b0 s^3 of the shaft power, W
 * @param powerLinear b1 s^2 Q, W/(m3/s)
 * @param powerSquare b2 s Q^2, W/(m3/s)^2
 * @param referenceDensity of the test, kg/m3
 */
public record FanCurve(
        double stall,
        double linear,
        double square,
        double windmill,
        double power,
        double powerLinear,
        double powerSquare,
        double referenceDensity) {

    public FanCurve {
        if (!(stall >= 0)) {
            throw new IllegalArgumentException("fan stall pressure " + stall + " Pa must be 0 or more");
        }
        if (!(square < 0)) {
            throw new IllegalArgumentException("fan square term " + square + " Pa/(m3/s)^2 must be below 0");
        }
        if (!(windmill >= 0 && windmill <= -square)) {
            throw new IllegalArgumentException("free rotor resistance " + windmill
                    + " Pa/(m3/s)^2 must be from 0 to that of the driven fan, " + -square);
        }
        if (!(referenceDensity > 0)) {
            throw new IllegalArgumentException("fan test density " + referenceDensity + " kg/m3 must be above 0");
        }
    }

    /** Pressure rise, Pa, below zero where the fan resists. Speed ratio 0..1 of full speed; flow of either sign, m3/s. */
    public double pressure(double flow, double speedRatio, double density) {
        double square2 = flow * Math.abs(flow);
        double driven = stall * speedRatio * speedRatio + linear * speedRatio * flow + square * square2;
        return density / referenceDensity * Math.max(driven, -windmill * square2);
    }

    /** True where the stream drives the rotor, or the fan is off. */
    public boolean windmilling(double flow, double speedRatio) {
        return speedRatio <= 0.0 || flow > windmillFlow(speedRatio);
    }

    /** Shaft power, W; zero while windmilling; with the flow backwards, that of no flow. */
    public double shaftPower(double flow, double speedRatio, double density) {
        if (windmilling(flow, speedRatio)) {
            return 0.0;
        }
        double s = speedRatio;
        double q = Math.max(0.0, flow);
        return density / referenceDensity * s * (power * s * s + powerLinear * s * q + powerSquare * q * q);
    }

    /** Flow of no pressure rise, m3/s: beyond it the running fan is a restriction. */
    public double freeFlow(double speedRatio) {
        return speedRatio * AirPath.root(stall, -linear, -square);
    }

    /** Flow beyond which the rotor runs free, m3/s; where both curves never meet, infinite. */
    public double windmillFlow(double speedRatio) {
        return speedRatio * AirPath.root(stall, -linear, -square - windmill);
    }
}
