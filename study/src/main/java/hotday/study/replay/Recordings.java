package hotday.study.replay;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.signals.frame.Frame;
import hotday.signals.frame.FrameSource;
import hotday.signals.framelog.FrameLog;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Recordings read side by side in the order of time, and which network each of their frames is of. */
final class Recordings implements Closeable {
    /** A longer pause is two recordings in one, or a wrong stamp. */
    private static final double LONGEST_PAUSE = 3600; // s

    private static final int UNKNOWN = -1;
    private static final int NOT_ASKED = -2;

    private final List<String> networks;
    private final Map<String, String> typed;
    private final List<One> all = new ArrayList<>();
    private final String[] heard;
    private final Set<String> others = new LinkedHashSet<>();
    private One now;
    private double begin = Double.NaN;
    private double last = Double.NaN;

    /** A log with the frame that comes next from it. */
    private static final class One {
        private final Path path;
        private final FrameSource log;
        private final Frame frame = new Frame();
        private int[] networkOfBus = {};
        private boolean any;

        One(Path path, FrameSource log) {
            this.path = path;
            this.log = log;
        }
    }

    Recordings(ReplayRequest request, List<String> networks) {
        this.networks = networks;
        this.typed = request.networks();
        this.heard = new String[networks.size()];
        Arrays.fill(heard, "");
        try {
            for (Path path : request.logs()) {
                One one = new One(path, FrameLog.open(path, request.options()));
                all.add(one);
                step(one);
            }
        } catch (RuntimeException e) {
            closeAll();
            throw e;
        }
    }

    private void step(One one) {
        do {
            one.any = one.log.next(one.frame);
        } while (one.any && one.frame.kind() != Frame.Kind.DATA);
        if (one.any && Double.isNaN(one.frame.time())) {
            throw InputException.at(
                    Place.of(one.path.toString()),
                    "no-time-stamps",
                    "has frames without a time stamp: nothing says when they came");
        }
    }

    /** Goes to the next data frame; false at the end. */
    boolean next() {
        if (now != null) {
            step(now);
        }
        now = null;
        for (One one : all) {
            if (one.any && (now == null || one.frame.time() < now.frame.time())) {
                now = one;
            }
        }
        if (now == null) {
            return false;
        }
        time();
        return true;
    }

    /** A clock that goes back stands still here; the log tells of it. */
    private void time() {
        double stamp = now.frame.time();
        if (Double.isNaN(begin)) {
            begin = stamp;
            last = stamp;
        }
        if (stamp - last > LONGEST_PAUSE) {
            throw InputException.at(
                    Place.of(now.path.toString()),
                    "pause-too-long",
                    String.format(
                            Locale.ROOT,
                            "nothing was recorded from %.3f s to %.3f s; up to %.0f s are run through, cut the recording there",
                            last,
                            stamp,
                            LONGEST_PAUSE));
        }
        last = Math.max(last, stamp);
    }

    Frame frame() {
        return now.frame;
    }

    /** ns from the first frame, never falling. */
    long nanos() {
        return Math.round((last - begin) * 1e9);
    }

    /** Stamp of the first frame, s. */
    double begin() {
        return begin;
    }

    /** The network of the frame, by its place in the sheet; -1 for none of them. */
    int network() {
        int bus = now.frame.bus();
        if (bus >= now.networkOfBus.length) {
            int before = now.networkOfBus.length;
            now.networkOfBus = Arrays.copyOf(now.networkOfBus, bus + 1);
            Arrays.fill(now.networkOfBus, before, bus + 1, NOT_ASKED);
        }
        if (now.networkOfBus[bus] == NOT_ASKED) {
            List<String> names = now.log.buses();
            now.networkOfBus[bus] = find(now.path.toString(), bus < names.size() ? names.get(bus) : "");
        }
        return now.networkOfBus[bus];
    }

    private int find(String log, String bus) {
        for (int i = 0; i < networks.size(); i++) {
            String where = typed.getOrDefault(networks.get(i), networks.get(i));
            if (where.equals(bus) || where.equals(log) || where.equals(log + ":" + bus)) {
                heard[i] = bus.isEmpty() ? log : bus;
                return i;
            }
        }
        others.add(bus.isEmpty() ? "a bus without a name" : "'" + bus + "'");
        return UNKNOWN;
    }

    /** What the recordings call a network; empty when nothing of it came. */
    String heard(int network) {
        return heard[network];
    }

    /** Refuses recordings of other networks altogether. */
    void requireAny() {
        if (all.stream().allMatch(one -> one.log.frames() == 0)) {
            throw InputException.at(Place.of(all.get(0).path.toString()), "no-frames", "not a single line is a frame");
        }
        if (Arrays.stream(heard).allMatch(String::isEmpty)) {
            throw InputException.at(
                    Place.of(all.get(0).path.toString()),
                    "network-not-recorded",
                    "was recorded on " + String.join(", ", others) + "; nothing says which of the sheet's networks ("
                            + String.join(", ", networks) + ") that is: type --network " + networks.get(0) + "=BUS");
        }
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        all.forEach(one -> findings.addAll(one.log.findings()));
        Place place = Place.of(all.get(0).path.toString());
        if (!others.isEmpty()) {
            findings.add(Finding.note(
                    "bus-not-used",
                    place,
                    "what was recorded on " + String.join(", ", others) + " is of no network of the sheet"));
        }
        for (int i = 0; i < heard.length; i++) {
            if (heard[i].isEmpty()) {
                findings.add(Finding.warning(
                        "network-silent",
                        place,
                        "nothing was recorded of network '" + networks.get(i)
                                + "'; what comes from it counts as missing"));
            }
        }
        return findings;
    }

    private void closeAll() {
        for (One one : all) {
            try {
                one.log.close();
            } catch (IOException e) {
                // it was only read
            }
        }
    }

    @Override
    public void close() {
        closeAll();
    }
}
