package hotday.study.decode;

import hotday.core.finding.Finding;
import hotday.core.finding.Severity;
import hotday.signals.framelog.BusCount;
import hotday.signals.framelog.LogCounts;
import hotday.signals.sample.SignalStatistics;
import java.util.List;

/**
 * What a recording of frames holds.
 *
 * @param file as it was given
 * @param layout in words
 * @param frames that were read
 * @param brokenLines lines that are no frames
 * @param firstStamp s on the recording's own clock; NaN when it has none
 * @param duration s that the clock went forward; NaN without stamps
 * @param busNames by number; empty when the recording names no bus
 * @param counts by bus and identifier
 * @param signals that were decoded, in the order in which they were met
 * @param findings what a person should know
 */
public record LogSummary(
        String file,
        String layout,
        long frames,
        long brokenLines,
        double firstStamp,
        double duration,
        List<String> busNames,
        LogCounts counts,
        List<SignalStatistics> signals,
        List<Finding> findings) {
    public LogSummary {
        busNames = List.copyOf(busNames);
        signals = List.copyOf(signals);
        findings = List.copyOf(findings);
    }

    /** What a bus is called. */
    public String busName(int bus) {
        return bus < busNames.size() ? busNames.get(bus) : "";
    }

    /** Bits per second with as much stuffing as there can be; NaN without a duration. */
    public double mostBitsPerSecond(BusCount bus) {
        return duration > 0 ? bus.mostBits() / duration : Double.NaN;
    }

    /** Bits per second without any stuffing; NaN without a duration. */
    public double fewestBitsPerSecond(BusCount bus) {
        return duration > 0 ? bus.fewestBits() / duration : Double.NaN;
    }

    /** Whether anything cannot be used as it is. */
    public boolean hasFaults() {
        return findings.stream().anyMatch(f -> f.severity() == Severity.FAULT);
    }
}
