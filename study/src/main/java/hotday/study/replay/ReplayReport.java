package hotday.study.replay;

import hotday.core.finding.Finding;
import hotday.signals.expect.Verdict;
import hotday.signals.sample.SignalStatistics;
import java.util.List;
import java.util.Optional;

/**
 * What happened. Times in ns.
 *
 * @param title of the sheet
 * @param duration from the first frame to the last
 * @param networks in the order of the sheet
 * @param lines in the order of the sheet
 * @param findings what a person should know about the recordings
 */
public record ReplayReport(
        String title,
        long duration,
        List<NetworkLine> networks,
        List<ListenedLine> listened,
        List<SentLine> sent,
        List<SignalLine> lines,
        List<Verdict> verdicts,
        List<Finding> findings) {
    public ReplayReport {
        networks = List.copyOf(networks);
        listened = List.copyOf(listened);
        sent = List.copyOf(sent);
        lines = List.copyOf(lines);
        verdicts = List.copyOf(verdicts);
        findings = List.copyOf(findings);
    }

    /** Whether every expectation held. */
    public boolean holds() {
        return verdicts.stream().allMatch(Verdict::holds);
    }

    /**
     * @param bus as it is called in the recordings; empty when nothing of it was recorded
     * @param frames recorded
     * @param passedOver frames among them that nobody listens to
     */
    public record NetworkLine(String name, String bus, long frames, long passedOver) {}

    /** A message listened to: {@code network.message}, and what became of its frames. */
    public record ListenedLine(String message, long taken, long wrongChecksum, long wrongCounter, long lost) {}

    /** A message of the gateway: {@code network.message}. */
    public record SentLine(String message, long frames) {}

    /**
     * Both sides of a line.
     *
     * @param source values recorded; empty when there was none
     * @param target values sent
     * @param live frames that carried a value in time
     * @param held frames that carried the last one
     * @param safe frames that carried the safe value because nothing came
     */
    public record SignalLine(
            String from,
            Optional<SignalStatistics> source,
            String to,
            Optional<SignalStatistics> target,
            long live,
            long held,
            long safe) {}
}
