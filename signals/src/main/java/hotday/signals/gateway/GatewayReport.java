package hotday.signals.gateway;

import hotday.core.finding.Finding;
import hotday.core.finding.Severity;
import java.util.List;
import java.util.OptionalLong;

/**
 * What a check found. Times in ns; empty where there is no bound, or no period to work it out from.
 *
 * @param title of the sheet
 * @param findings in the order of the sheet
 */
public record GatewayReport(
        String title, List<BusLine> buses, List<SignalLine> signals, List<PathLine> paths, List<Finding> findings) {
    public GatewayReport {
        buses = List.copyOf(buses);
        signals = List.copyOf(signals);
        paths = List.copyOf(paths);
        findings = List.copyOf(findings);
    }

    /** Whether nothing is wrong. */
    public boolean holds() {
        return findings.stream().noneMatch(f -> f.severity() == Severity.FAULT);
    }

    /**
     * @param bitRate bit/s
     * @param load share with the longest frames
     * @param bareLoad share without any stuff bit
     * @param messages most urgent first
     */
    public record BusLine(String name, double bitRate, double load, double bareLoad, List<MessageLine> messages) {
        public BusLine {
            messages = List.copyOf(messages);
        }
    }

    /** @param period shortest time between two frames */
    public record MessageLine(
            String name,
            int id,
            boolean extended,
            int bytes,
            String sender,
            OptionalLong period,
            long jitter,
            OptionalLong response,
            OptionalLong deadline) {}

    /**
     * What a signal becomes.
     *
     * @param from empty for a fixed value
     * @param how "x 1.8 + 32", "by table", "fixed"
     * @param oldest age of the oldest value of the source that is still sent
     * @param safe what is sent when the source is missing, as typed
     */
    public record SignalLine(String from, String to, String how, OptionalLong oldest, String safe) {}

    public record PathLine(String name, long limit, OptionalLong worst, List<Part> parts) {
        public PathLine {
            parts = List.copyOf(parts);
        }
    }

    /** A part of a path. */
    public record Part(String what, OptionalLong time) {}
}
