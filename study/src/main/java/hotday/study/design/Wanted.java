package hotday.study.design;

import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Case.Phase;
import hotday.vehicle.cases.Trial;
import hotday.vehicle.controller.Hold;
import java.util.EnumMap;
import java.util.Map;

/**
 * A compressor while somebody wants cool air and the engine runs.
 *
 * @param seconds of that; 0 where it is never wanted
 * @param clutchPerMinute how often it comes in
 * @param held share of the time that each rule kept it off, 0..1; rules that never did are not there
 */
public record Wanted(double seconds, double clutchPerMinute, Map<Hold, Double> held) {
    public Wanted {
        held = Map.copyOf(held);
    }

    /** Counts strides. One a thread. */
    static final class Count {
        private final int[] holds = new int[Hold.values().length];
        private int strides;
        private int engaged;

        /** After a stride: what keeps the compressor off now, and whether it came in. */
        void add(Phase phase, Hold hold, boolean comesIn) {
            if (phase.conditioning() == Case.Conditioning.OFF || phase.engine() == Case.Engine.OFF) {
                return;
            }
            strides++;
            engaged += comesIn ? 1 : 0;
            holds[hold.ordinal()]++;
        }

        Wanted sum() {
            if (strides == 0) {
                return new Wanted(0.0, 0.0, Map.of());
            }
            double seconds = strides * Trial.STRIDE;
            Map<Hold, Double> shares = new EnumMap<>(Hold.class);
            for (Hold hold : Hold.values()) {
                boolean rule = hold != Hold.NONE && hold != Hold.LEAD && hold != Hold.REQUEST;
                if (rule && holds[hold.ordinal()] > 0) {
                    shares.put(hold, holds[hold.ordinal()] / (double) strides);
                }
            }
            return new Wanted(seconds, engaged * 60.0 / seconds, shares);
        }
    }
}
