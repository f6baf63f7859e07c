package hotday.signals.framelog;

import hotday.core.finding.Finding;
import hotday.signals.frame.Frame;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A recording read whole, for looking at. */
record ReadFrames(
        List<Frame> frames, List<String> buses, List<Finding> findings, String layout, double first, double duration) {
    static ReadFrames of(Path path, FrameLogOptions options) {
        try (FrameLog log = FrameLog.open(path, options)) {
            List<Frame> frames = new ArrayList<>();
            Frame frame = new Frame();
            while (log.next(frame)) {
                frames.add(frame.copy());
            }
            return new ReadFrames(frames, log.buses(), log.findings(), log.layout(), log.firstTime(), log.duration());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static ReadFrames of(Path folder, String text) {
        return of(folder, text, FrameLogOptions.NONE);
    }

    static ReadFrames of(Path folder, String text, FrameLogOptions options) {
        try {
            Path path = folder.resolve("frames.txt");
            Files.write(path, text.getBytes(StandardCharsets.ISO_8859_1));
            return of(path, options);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** {@code bus id#payload}, with the time in front; for comparing. */
    List<String> lines() {
        return frames.stream().map(ReadFrames::line).toList();
    }

    private static String line(Frame f) {
        StringBuilder text = new StringBuilder(Double.isNaN(f.time()) ? "- " : f.time() + " ");
        text.append(f.bus()).append(' ').append(String.format(f.extended() ? "%08X" : "%03X", f.id()));
        text.append(f.flexible() ? "##" : "#");
        if (f.kind() == Frame.Kind.REMOTE) {
            return text.append('R').append(f.length()).toString();
        }
        for (int i = 0; i < f.length(); i++) {
            text.append(String.format("%02X", f.at(i)));
        }
        return text.append(f.kind() == Frame.Kind.ERROR ? " error" : "").toString();
    }

    List<String> keys() {
        return findings.stream().map(Finding::key).distinct().toList();
    }
}
