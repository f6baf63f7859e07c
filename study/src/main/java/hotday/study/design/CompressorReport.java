package hotday.study.design;

import hotday.core.finding.Finding;
import hotday.core.finding.Severity;
import hotday.vehicle.cases.Case;
import hotday.vehicle.controller.Hold;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What the compressor's rules do in the cases at the design ambient, with a fan schedule and with a fan at full speed.
 *
 * @param lines case by case, those with air conditioning
 * @param cooling of a soaked cabin with the schedule
 * @param fullFan the same with a fan at full speed
 */
public record CompressorReport(List<Line> lines, CoolingDown cooling, CoolingDown fullFan, List<Finding> findings) {
    public CompressorReport {
        lines = List.copyOf(lines);
        findings = List.copyOf(findings);
    }

    /** Whether a finding is a fault. */
    public boolean hasFaults() {
        return findings.stream().anyMatch(f -> f.severity() == Severity.FAULT);
    }

    /**
     * @param clutchPerMinute how often the compressor comes in
     * @param held share of the time that each rule kept a wanted compressor off, 0..1; rules that never did are not there
     * @param fullFan the same with a fan at full speed
     */
    public record Line(Case kase, double clutchPerMinute, Map<Hold, Double> held, Map<Hold, Double> fullFan) {
        public Line {
            held = Map.copyOf(held);
            fullFan = Map.copyOf(fullFan);
        }
    }

    /**
     * A cabin that stood in the heat, then is driven.
     *
     * @param target cabin air at which nobody complains of the heat any more, K: {@value #COOLER} K below the outside
     * @param seconds until the cabin air is down to it; empty where it does not get there
     * @param vent air out of the evaporator after ten minutes, K
     * @param cabin air at the end, K
     */
    public record CoolingDown(double target, OptionalDouble seconds, double vent, double cabin) {
        /** K; common practice, no source. */
        public static final double COOLER = 10.0;
    }
}
