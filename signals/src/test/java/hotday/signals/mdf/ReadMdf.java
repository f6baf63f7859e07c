package hotday.signals.mdf;

import hotday.core.finding.Finding;
import hotday.signals.frame.Frame;
import hotday.signals.frame.SampleSink;
import hotday.signals.frame.SampleState;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** What a file holds, sample by sample in words. */
record ReadMdf(List<String> samples, List<Frame> frames, List<Finding> findings, double duration) {
    static ReadMdf of(Path folder, byte[] bytes) {
        try {
            return of(Files.write(folder.resolve("x.mf4"), bytes));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static ReadMdf of(Path path) throws IOException {
        Said said = new Said(new ArrayList<>(), new ArrayList<>());
        List<Frame> frames = new ArrayList<>();
        try (MdfLog log = MdfLog.open(path)) {
            log.samplesTo(said);
            Frame frame = new Frame();
            while (log.next(frame)) {
                frames.add(frame.copy());
            }
            return new ReadMdf(said.samples(), frames, log.findings(), log.duration());
        }
    }

    List<String> keys() {
        return findings.stream()
                .map(Finding::key)
                .filter(k -> !k.equals("recording-begun"))
                .toList();
    }

    private record Said(List<String> names, List<String> samples) implements SampleSink {
        @Override
        public int signal(String name, String unit) {
            names.add(name + (unit.isEmpty() ? "" : " [" + unit + "]"));
            return names.size() - 1;
        }

        @Override
        public void sample(double time, int signal, double value, SampleState state) {
            String what = state == SampleState.VALID ? String.valueOf(value) : state.word();
            samples.add(time + " " + names.get(signal) + " " + what);
        }

        @Override
        public void text(double time, int signal, String value) {
            samples.add(time + " " + names.get(signal) + " '" + value + "'");
        }
    }
}
