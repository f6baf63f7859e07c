package hotday.study.design;

import hotday.core.finding.Finding;
import hotday.core.finding.Severity;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Limit;
import hotday.vehicle.spec.FanSchedule;
import java.util.List;
import java.util.Optional;

/**
 * A schedule and what it does.
 *
 * @param aim what it was judged by
 * @param holds whether it holds all that a fan at full speed holds
 * @param cost mean of the day, W of fan power
 * @param energy of the fan, mean of the day, Wh in an hour
 * @param starts of the fan, mean of the day, in an hour
 * @param plain the same two of a switch that is on at 205 degF and off at 195 degF
 * @param runs recorded runs that the vehicle was fitted to; 0: it is that of the sheet
 * @param lines case by case, those of the day first
 * @param reasons what fixed what, of a designed schedule
 * @param doubt over vehicles that this one may turn out to be; empty when none were asked
 * @param keyOff what happens after key-off; empty where no case switches the engine off
 */
public record ScheduleReport(
        FanSchedule schedule,
        Aim aim,
        boolean holds,
        double cost,
        double energy,
        double starts,
        Plain plain,
        int runs,
        List<Line> lines,
        List<Reason> reasons,
        Optional<Doubt> doubt,
        Optional<KeyOff> keyOff,
        List<Finding> findings) {
    public ScheduleReport {
        lines = List.copyOf(lines);
        reasons = List.copyOf(reasons);
        findings = List.copyOf(findings);
    }

    /** Whether a finding is a fault. */
    public boolean hasFaults() {
        return findings.stream().anyMatch(f -> f.severity() == Severity.FAULT);
    }

    /**
     * After key-off.
     *
     * @param kase with the least room
     * @param limit with that room
     * @param room to it, SI; below 0 it gives way
     * @param without the same with no after-run
     * @param charge most that the battery gives, A s
     * @param allowed what it may give, A s
     * @param seconds of after-run, the longest
     * @param voltage lowest of the battery, V
     */
    public record KeyOff(
            Case kase,
            Limit limit,
            double room,
            double without,
            double charge,
            double allowed,
            double seconds,
            double voltage) {}

    /** Energy, Wh in an hour, and starts in an hour of a plain switch. */
    public record Plain(double energy, double starts) {}

    /**
     * @param share of the day, 0..1; 0 for a case that only must hold
     * @param must limits that a fan at full speed keeps
     */
    public record Line(Passage passage, double share, List<Limit> must) {
        /** Whether nothing gives way here that a fan at full speed holds. */
        public boolean holds() {
            return must.stream().allMatch(limit -> passage.headroom().get(limit) >= 0.0);
        }
    }

    /**
     * @param what a part of the schedule
     * @param why what keeps it where it is
     */
    public record Reason(String what, String why) {}

    /**
     * @param draws vehicles looked at
     * @param held share of those, times cases, that hold with the schedule among those that hold with a fan at full speed, 0..1
     * @param worst title of the case that failed most often; empty when none did
     */
    public record Doubt(int draws, double held, String worst) {}
}
