package hotday.study.design;

import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Limit;
import java.util.Map;

/**
 * What a schedule made of one case on one day. Rates are means over whole cycles where there are cycles.
 *
 * @param ambient K
 * @param headroom how far each judged limit is from giving way at its worst, SI; below 0 it gave way
 * @param seconds looked at
 * @param fanPower mean electrical power of the fan, W
 * @param compressorPower mean shaft power, W
 * @param loudness mean of (fan speed / full speed)^1.5, 0..1: sound power grows with 50 lg of the speed (fan law, AMCA 301 from memory) and
 *     a difference of 10 dB is heard as twice as loud (ISO 532, from memory)
 * @param startsPerHour how often the fan starts
 * @param clutchPerHour how often the compressor comes in
 * @param coolant mean, K
 * @param amplitude from lowest to highest coolant over the last cycles, K; 0 where nothing cycles
 * @param period of a cycle, s; NaN where nothing cycles
 * @param fan mean speed over full speed
 * @param fanSwing from slowest to fastest fan over the last cycles, over full speed
 * @param battery mean current out of the battery, A; below 0 it charges
 * @param turnsPerHour how often coolant and air conditioning take turns in deciding the fan
 * @param compressor all the time it was run through
 */
public record Passage(
        Case kase,
        double ambient,
        Map<Limit, Double> headroom,
        double seconds,
        double fanPower,
        double compressorPower,
        double loudness,
        double startsPerHour,
        double clutchPerHour,
        double coolant,
        double amplitude,
        double period,
        double fan,
        double fanSwing,
        double battery,
        double turnsPerHour,
        Wanted compressor) {
    public Passage {
        headroom = Map.copyOf(headroom);
    }

    /** Whether no judged limit gave way. */
    public boolean holds() {
        return headroom.values().stream().allMatch(room -> room >= 0.0);
    }

    /** Cycles in an hour; 0 where nothing cycles. */
    public double cyclesPerHour() {
        return Double.isNaN(period) ? 0.0 : 3600.0 / period;
    }

    /** Energy the fan takes in an hour of it, Wh. */
    public double energy() {
        return fanPower;
    }

    /** The same with the means of a rest. */
    Passage with(Calm calm) {
        return new Passage(
                kase,
                ambient,
                headroom,
                seconds,
                calm.fanPower(),
                calm.compressorPower(),
                calm.loudness(),
                startsPerHour,
                clutchPerHour,
                calm.coolant(),
                amplitude,
                period,
                calm.fan(),
                fanSwing,
                calm.battery(),
                turnsPerHour,
                compressor);
    }
}
