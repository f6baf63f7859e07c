package hotday.study.design;

import hotday.vehicle.cases.Case;
import java.util.Locale;

/**
 * What counts how much in the cost of a schedule, everything in watts of fan power: electrical power of the fan, loudness of a fan at full
 * speed at rest, starts (or whole swings) in an hour, shaft power of the compressor. The figures are our choice.
 */
public enum Aim {
    /** Hear little of it. */
    QUIET(1.0, 300.0, 8.0, 0.0),
    /** Energy first, little noise, few starts. */
    BALANCED(1.0, 60.0, 3.0, 0.0),
    /** Head pressure and compressor power low, at the price of more fan. */
    COLD(1.0, 30.0, 3.0, 0.25);

    /** Road speed at which half of the fan's loudness is covered, m/s; common practice, no source. */
    private static final double ROAD_NOISE = 14.0;

    private final double power;
    private final double loudness;
    private final double switching;
    private final double compressor;

    Aim(double power, double loudness, double switching, double compressor) {
        this.power = power;
        this.loudness = loudness;
        this.switching = switching;
        this.compressor = compressor;
    }

    /** Cost of an hour of it, W of fan power. A fan that swings by less than what hunts does not count as switched. */
    double cost(Passage p) {
        double cycles = p.fanSwing() < Hunting.SWING ? 0.0 : p.cyclesPerHour();
        return cost(p.kase(), p.fanPower(), p.loudness(), p.compressorPower())
                + switching * Math.max(p.startsPerHour(), cycles) * p.fanSwing();
    }

    /** The same at rest. */
    double cost(Case kase, Calm calm) {
        return cost(kase, calm.fanPower(), calm.loudness(), calm.compressorPower());
    }

    private double cost(Case kase, double watts, double loud, double compressorPower) {
        double masked = 1.0 / (1.0 + Math.pow(kase.speed() / ROAD_NOISE, 2));
        return power * watts + loudness * masked * loud + compressor * compressorPower;
    }

    /** As typed. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
