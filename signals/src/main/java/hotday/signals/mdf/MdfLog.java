package hotday.signals.mdf;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.finding.Severity;
import hotday.signals.frame.Frame;
import hotday.signals.frame.FrameSource;
import hotday.signals.frame.SampleSink;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * A recording in ASAM MDF 4 being read: frames of CAN buses and measured values, in the order of their times whatever groups
 * they lie in. Memory does not grow with the recording. A record that is no frame is passed over, counted and told. For one
 * thread.
 */
public final class MdfLog implements FrameSource {
    private static final int MARK = 8;
    private static final int TOLD = 5;

    private final BlockFile file;
    private final FileHead head;
    private final Faults faults;
    private final BusList buses;
    private final List<GroupSource> sources;
    private final PriorityQueue<GroupSource> waiting;
    private final List<Finding> broken = new ArrayList<>();
    private Optional<SampleSink> sink = Optional.empty();
    private GroupSource now;
    private boolean begun;
    private long frames;
    private long samples;
    private long brokenCount;
    private double first = Double.NaN;
    private double last = Double.NaN;

    private MdfLog(BlockFile file, FileHead head, Faults faults, BusList buses, List<GroupSource> sources) {
        this.file = file;
        this.head = head;
        this.faults = faults;
        this.buses = buses;
        this.sources = sources;
        this.waiting = new PriorityQueue<>(Math.max(1, sources.size()), Comparator.comparingDouble(MdfLog::order));
    }

    /** Records without a time come as soon as they are met. */
    private static double order(GroupSource source) {
        return Double.isNaN(source.time()) ? Double.NEGATIVE_INFINITY : source.time();
    }

    /** Told by the first bytes; false for what cannot be read. */
    public static boolean isMdf(Path path) {
        if (!Files.isRegularFile(path)) {
            return false;
        }
        try (InputStream in = Files.newInputStream(path)) {
            return FileHead.begins(in.readNBytes(MARK));
        } catch (IOException none) {
            return false;
        }
    }

    /** Throws {@link hotday.core.finding.InputException} when the file cannot be read or its head is broken. */
    public static MdfLog open(Path path) {
        BlockFile file = BlockFile.open(path);
        try {
            Faults faults = new Faults(path.toString());
            FileHead head = FileHead.read(file);
            if (head.unfinished()) {
                file.takeOpenEnd();
                faults.warning(
                        "recording-not-closed", "the recorder did not close this file: what is whole in it is read");
            }
            Structure structure = new Structure(file, faults);
            List<DataGroup> groups = structure.read();
            faults.note("recording-begun", "MDF " + head.version() + ", begun " + structure.begun());
            BusList buses = new BusList();
            return new MdfLog(file, head, faults, buses, new SourceMaker(file, head, groups, buses, faults).sources());
        } catch (RuntimeException e) {
            closeAfter(file, e);
            throw e;
        }
    }

    private static void closeAfter(BlockFile file, RuntimeException e) {
        try {
            file.close();
        } catch (IOException also) {
            e.addSuppressed(also);
        }
    }

    @Override
    public boolean holdsFrames() {
        return sources.stream()
                .flatMap(s -> s.readings().stream())
                .anyMatch(r -> r.frames().isPresent());
    }

    @Override
    public void samplesTo(SampleSink samplesSink) {
        sink = Optional.of(samplesSink);
        sources.stream()
                .flatMap(s -> s.readings().stream())
                .forEach(r -> r.samples().ifPresent(s -> s.name(samplesSink)));
    }

    @Override
    public boolean next(Frame frame) {
        long before = frames;
        while (step(frame)) {
            if (frames > before) {
                return true;
            }
        }
        return false;
    }

    /** Goes to the next record, whatever it holds; false at the end. */
    boolean step(Frame frame) {
        if (!advance()) {
            return false;
        }
        count(now.time());
        if (sink.isPresent()) {
            samples += now.put(sink.get());
        }
        if (now.isFrame()) {
            if (now.put(frame)) {
                frames++;
            } else {
                addBroken();
            }
        }
        return true;
    }

    /** To the record that comes next in time. */
    private boolean advance() {
        if (!begun) {
            begun = true;
            sources.stream().filter(GroupSource::next).forEach(waiting::add);
            now = waiting.poll();
            return now != null;
        }
        if (now == null || !now.next()) {
            now = waiting.poll();
        } else if (!waiting.isEmpty() && order(waiting.peek()) < order(now)) {
            waiting.add(now);
            now = waiting.poll();
        }
        return now != null;
    }

    private void count(double time) {
        if (!Double.isNaN(time)) {
            first = Double.isNaN(first) ? time : Math.min(first, time);
            last = Double.isNaN(last) ? time : Math.max(last, time);
        }
    }

    private void addBroken() {
        brokenCount++;
        if (broken.size() < TOLD) {
            broken.add(Finding.warning(
                    "record-broken",
                    Place.of(file.path().toString()),
                    String.format(
                            Locale.ROOT,
                            "%s, at %.6f s: is no frame (identifier, bus, length or payload cannot be)",
                            now.shown(),
                            now.time())));
        }
    }

    @Override
    public String layout() {
        return "MDF " + head.version();
    }

    @Override
    public List<String> buses() {
        return buses.all();
    }

    @Override
    public long frames() {
        return frames;
    }

    @Override
    public long samples() {
        return samples;
    }

    @Override
    public long broken() {
        return brokenCount;
    }

    @Override
    public double firstTime() {
        return first;
    }

    /** Times are those of the recording, which count from its beginning. */
    @Override
    public double zero() {
        return 0;
    }

    @Override
    public double duration() {
        return last - first;
    }

    @Override
    public List<Finding> findings() {
        List<Finding> all = new ArrayList<>(faults.findings());
        all.addAll(broken);
        if (brokenCount > 0) {
            all.add(new Finding(
                    "records-broken-frames",
                    brokenCount > frames ? Severity.FAULT : Severity.WARNING,
                    Optional.of(Place.of(file.path().toString())),
                    brokenCount + (brokenCount == 1 ? " record is" : " records are") + " no frame and left out, beside "
                            + frames + " frames",
                    Map.of("records", brokenCount, "frames", frames)));
        }
        return all;
    }

    @Override
    public void close() throws IOException {
        sources.forEach(GroupSource::close);
        file.close();
    }
}
