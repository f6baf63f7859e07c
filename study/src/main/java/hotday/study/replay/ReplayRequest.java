package hotday.study.replay;

import hotday.signals.expect.Expected;
import hotday.signals.framelog.FrameLogOptions;
import hotday.signals.gateway.TranslationSheet;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ObjLongConsumer;

/**
 * What to run.
 *
 * @param logs recordings of one network or several, on one clock
 * @param options what is said about all of them
 * @param networks where a network was recorded: name of a bus, of a log, or {@code log:bus}; one that is not named is the
 *     bus of its own name
 * @param expected what must hold
 * @param to where the gateway's frames are written
 * @param decoded where the signals of both sides are written
 * @param speed times the recorded speed; 0 for as fast as it goes
 * @param progress told in words now and then, with the ns of the recording that are done
 */
public record ReplayRequest(
        TranslationSheet sheet,
        List<Path> logs,
        FrameLogOptions options,
        Map<String, String> networks,
        List<Expected> expected,
        Optional<Path> to,
        Optional<Path> decoded,
        double speed,
        ObjLongConsumer<String> progress) {
    public ReplayRequest {
        logs = List.copyOf(logs);
        networks = Map.copyOf(networks);
        expected = List.copyOf(expected);
    }
}
