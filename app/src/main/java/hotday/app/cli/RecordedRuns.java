package hotday.app.cli;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.signals.channel.ChannelMap;
import hotday.signals.channel.Recording;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Recordings that are named on a command line. */
final class RecordedRuns {
    private RecordedRuns() {}

    /** All of them, or every fault of all of them. */
    static List<Recording> read(ChannelMap channels, List<Path> paths) {
        List<Recording> all = new ArrayList<>();
        List<Finding> faults = new ArrayList<>();
        for (Path path : paths) {
            try {
                all.add(channels.recording(path));
            } catch (InputException e) {
                faults.addAll(e.findings());
            }
        }
        if (!faults.isEmpty()) {
            throw new InputException(faults);
        }
        return all;
    }
}
