package hotday.app.cli;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.finding.Severity;
import hotday.signals.dbc.DbcFile;
import hotday.signals.framelog.BusCount;
import hotday.study.decode.LogSummary;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What is said of a recording of frames, to people and machines alike.
 *
 * @param log what it holds
 * @param files that described it
 * @param bitRate bit/s; NaN when nobody said it
 */
record FrameLogReport(LogSummary log, List<DbcFile> files, double bitRate) {
    /** Percent of the bit rate with as much stuffing as there can be; NaN when it is not known. */
    double mostLoad(BusCount bus) {
        return 100 * log.mostBitsPerSecond(bus) / bitRate;
    }

    /** Percent of the bit rate without any stuffing; NaN when it is not known. */
    double fewestLoad(BusCount bus) {
        return 100 * log.fewestBitsPerSecond(bus) / bitRate;
    }

    boolean hasFaults() {
        return findings().stream().anyMatch(f -> f.severity() == Severity.FAULT);
    }

    /** Of the recording, its descriptions and their meeting. */
    List<Finding> findings() {
        List<Finding> all = new ArrayList<>();
        files.forEach(f -> all.addAll(f.findings()));
        all.addAll(log.findings());
        for (int i = 0; i < log.counts().buses().size(); i++) {
            BusCount bus = log.counts().buses().get(i);
            if (fewestLoad(bus) > 100) {
                all.add(tooLoaded(log.busName(i), fewestLoad(bus)));
            }
        }
        return all;
    }

    private Finding tooLoaded(String bus, double load) {
        return new Finding(
                "load-impossible",
                Severity.FAULT,
                Optional.of(Place.of(log.file())),
                String.format(
                        Locale.ROOT,
                        "bus '%s' would be loaded to %.1f %% of %.0f bit/s, at most 100 %% can be: the bit rate is higher",
                        bus,
                        load,
                        bitRate),
                Map.of("load_percent", load, "bitrate_bit_s", bitRate));
    }
}
