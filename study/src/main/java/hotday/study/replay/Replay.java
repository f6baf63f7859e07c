package hotday.study.replay;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.signals.expect.Watchman;
import hotday.signals.frame.Frame;
import hotday.signals.frame.SampleSink;
import hotday.signals.frame.SampleState;
import hotday.signals.gateway.SheetProgram;
import hotday.signals.sample.SampleRows;
import hotday.signals.sample.SampleStatistics;
import hotday.signals.sample.SignalStatistics;
import hotday.signals.translator.Program;
import hotday.signals.translator.Translator;
import hotday.signals.translator.Translator.Content;
import hotday.signals.translator.Translator.Reception;
import hotday.study.workspace.AtomicFile;
import java.io.BufferedOutputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Recordings run through a translation sheet. The first look of the gateway is at the first frame; a look sees what came up
 * to its moment, and its frames leave {@code processing} later. The last look is not behind the last frame.
 */
public final class Replay {
    private static final double NANO = 1e9;
    private static final int FRAMES_BETWEEN_WORDS = 10_000;

    private final ReplayRequest request;
    private final Program program;
    private final Translator gateway;
    private final Watchman watchman;
    private final SampleStatistics statistics = new SampleStatistics();
    private final Signals signals;
    private final Optional<CandumpText> text;
    private final Pace pace;
    private final ArrayDeque<Leaving> leaving = new ArrayDeque<>();
    private final String[] busNames;
    private final long[] frames;
    private final long[] passedOver;
    private Recordings recordings;
    private long nextLook;

    /** A frame on its way out. */
    private record Leaving(long time, int network, int id, boolean extended, byte[] data) {}

    private Replay(ReplayRequest request, Program program, Optional<CandumpText> text, Optional<SampleRows> rows) {
        this.request = request;
        this.program = program;
        this.gateway = new Translator(program);
        this.watchman = new Watchman(request.expected());
        this.signals = new Signals(
                request.sheet().signals(),
                rows.<SampleSink>map(r -> new Both(statistics, r)).orElse(statistics));
        this.text = text;
        this.pace = new Pace(request.speed());
        this.busNames = program.networks().stream().map(this::bus).toArray(String[]::new);
        this.frames = new long[program.networks().size()];
        this.passedOver = new long[frames.length];
    }

    /**
     * Runs what is asked for; files are written whole or not at all.
     *
     * @throws InputException when the sheet leaves open what the gateway does, or the recordings cannot be run
     */
    public static ReplayReport of(ReplayRequest request) {
        Program program = SheetProgram.of(request.sheet());
        ReplayReport[] report = new ReplayReport[1];
        written(
                request.to(),
                to -> written(request.decoded(), decoded -> report[0] = run(request, program, to, decoded)));
        return report[0];
    }

    private interface Writing {
        void to(Optional<OutputStream> out);
    }

    private static void written(Optional<Path> target, Writing writing) {
        if (target.isEmpty()) {
            writing.to(Optional.empty());
            return;
        }
        AtomicFile.write(target.get(), out -> {
            OutputStream buffered = new BufferedOutputStream(out, 1 << 16);
            try {
                writing.to(Optional.of(buffered));
            } catch (UncheckedIOException e) {
                throw e.getCause();
            }
            buffered.flush();
        });
    }

    private static ReplayReport run(
            ReplayRequest request, Program program, Optional<OutputStream> to, Optional<OutputStream> decoded) {
        Optional<SampleRows> rows = decoded.map(out -> new SampleRows(out, () -> 0.0));
        ReplayReport report = new Replay(request, program, to.map(CandumpText::new), rows).run();
        rows.ifPresent(SampleRows::finish);
        return report;
    }

    private ReplayReport run() {
        try (Recordings read = new Recordings(request, program.networks())) {
            recordings = read;
            long done = 0;
            long end = 0;
            while (read.next()) {
                end = read.nanos();
                looks(end - 1);
                leave(end);
                pace.waitFor(end);
                take(read.frame(), end);
                if (++done % FRAMES_BETWEEN_WORDS == 0) {
                    request.progress().accept(done + " frames", end);
                }
            }
            read.requireAny();
            looks(end);
            leave(end);
            watchman.end(end);
            return report(end);
        }
    }

    /** Every look up to a moment. */
    private void looks(long until) {
        while (nextLook <= until) {
            leave(nextLook);
            pace.waitFor(nextLook);
            long time = nextLook + program.processing();
            gateway.look((network, id, extended, data, length) ->
                    leaving.add(new Leaving(time, network, id, extended, Arrays.copyOf(data, length))));
            nextLook += program.poll();
        }
    }

    private void leave(long until) {
        while (!leaving.isEmpty() && leaving.peek().time() <= until) {
            Leaving frame = leaving.remove();
            int network = frame.network();
            byte[] data = frame.data();
            watchman.frame(frame.time(), network, frame.id(), frame.extended(), data, 0, data.length);
            signals.frame(frame.time() / NANO, network, frame.id(), frame.extended(), data, 0, data.length);
            text.ifPresent(t -> t.put(
                    recordings.begin() + frame.time() / NANO,
                    busNames[network],
                    frame.id(),
                    frame.extended(),
                    data,
                    data.length));
        }
    }

    /** As typed, else by its own name. */
    private String bus(String name) {
        String typed = request.networks().getOrDefault(name, name);
        boolean isBus = typed.matches("[A-Za-z0-9_-]+");
        return isBus ? typed : name;
    }

    private void take(Frame frame, long time) {
        int network = recordings.network();
        if (network < 0) {
            return;
        }
        frames[network]++;
        watchman.frame(time, network, frame.id(), frame.extended(), frame.data(), frame.offset(), frame.length());
        signals.frame(time / NANO, network, frame.id(), frame.extended(), frame.data(), frame.offset(), frame.length());
        Reception reception =
                gateway.receive(network, frame.id(), frame.extended(), frame.data(), frame.offset(), frame.length());
        if (reception == Reception.UNKNOWN) {
            passedOver[network]++;
        }
    }

    private ReplayReport report(long end) {
        List<ReplayReport.NetworkLine> networks = new ArrayList<>();
        for (int i = 0; i < frames.length; i++) {
            networks.add(new ReplayReport.NetworkLine(
                    program.networks().get(i), recordings.heard(i), frames[i], passedOver[i]));
        }
        List<Finding> findings = recordings.findings();
        return new ReplayReport(
                program.title(), end, networks, listened(), sent(), lines(), watchman.verdicts(), findings);
    }

    private String name(int network, String message) {
        return program.networks().get(network) + "." + message;
    }

    private List<ReplayReport.ListenedLine> listened() {
        List<ReplayReport.ListenedLine> all = new ArrayList<>();
        for (int i = 0; i < program.incoming().size(); i++) {
            Program.Incoming m = program.incoming().get(i);
            all.add(new ReplayReport.ListenedLine(
                    name(m.network(), m.name()),
                    gateway.received(i, Reception.TAKEN),
                    gateway.received(i, Reception.WRONG_CHECKSUM),
                    gateway.received(i, Reception.WRONG_COUNTER),
                    gateway.lost(i)));
        }
        return all;
    }

    private List<ReplayReport.SentLine> sent() {
        List<ReplayReport.SentLine> all = new ArrayList<>();
        for (int i = 0; i < program.outgoing().size(); i++) {
            Program.Outgoing m = program.outgoing().get(i);
            all.add(new ReplayReport.SentLine(name(m.network(), m.name()), gateway.sent(i)));
        }
        return all;
    }

    private List<ReplayReport.SignalLine> lines() {
        List<ReplayReport.SignalLine> all = new ArrayList<>();
        for (int i = 0; i < program.lines().size(); i++) {
            Program.Line line = program.lines().get(i);
            all.add(new ReplayReport.SignalLine(
                    line.from(),
                    statistics(line.from()),
                    line.to(),
                    statistics(line.to()),
                    gateway.sent(i, Content.LIVE),
                    gateway.sent(i, Content.HELD),
                    gateway.sent(i, Content.SAFE)));
        }
        return all;
    }

    private Optional<SignalStatistics> statistics(String name) {
        return statistics.signals().stream().filter(s -> s.name().equals(name)).findFirst();
    }

    /** Both number signals as they come, so that their numbers are the same. */
    private record Both(SampleStatistics sums, SampleRows rows) implements SampleSink {
        @Override
        public int signal(String name, String unit) {
            sums.signal(name, unit);
            return rows.signal(name, unit);
        }

        @Override
        public void sample(double time, int signal, double value, SampleState state) {
            sums.sample(time, signal, value, state);
            rows.sample(time, signal, value, state);
        }

        @Override
        public void text(double time, int signal, String value) {
            sums.text(time, signal, value);
            rows.text(time, signal, value);
        }
    }
}
