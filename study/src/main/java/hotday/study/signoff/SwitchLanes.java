package hotday.study.signoff;

import hotday.study.events.Event;
import hotday.study.events.Inferred;
import hotday.study.events.Kind;
import hotday.study.picture.Lane;
import hotday.study.prove.RunReport;
import java.util.ArrayList;
import java.util.List;

/** What switched in a run, paired to spans: from an on to the next off, else a moment. */
final class SwitchLanes {
    private SwitchLanes() {}

    /** Only lanes in which something switched. */
    static List<Lane> of(Inferred inferred, RunReport run) {
        List<Lane> lanes = new ArrayList<>();
        add(lanes, "fan on", inferred, run, Kind.FAN_ON, Kind.FAN_OFF);
        add(lanes, "A/C on", inferred, run, Kind.COMPRESSOR_ON, Kind.COMPRESSOR_OFF);
        add(lanes, "thermostat", inferred, run, Kind.THERMOSTAT_OPEN, Kind.THERMOSTAT_CLOSED);
        add(lanes, "heater on", inferred, run, Kind.HEATER_ON, Kind.HEATER_OFF);
        return lanes;
    }

    private static void add(List<Lane> lanes, String name, Inferred inferred, RunReport run, Kind on, Kind off) {
        List<Lane.Span> spans = new ArrayList<>();
        List<Double> marks = new ArrayList<>();
        double since = Double.NaN;
        for (Event e : inferred.events()) {
            if (!e.run().equals(run.name()) || (e.kind() != on && e.kind() != off)) {
                continue;
            }
            if (e.kind() == off && !Double.isNaN(since)) {
                spans.add(new Lane.Span(since, e.time()));
                since = Double.NaN;
                continue;
            }
            if (!Double.isNaN(since)) {
                marks.add(since);
            }
            since = e.kind() == on ? e.time() : Double.NaN;
            if (e.kind() == off) {
                marks.add(e.time());
            }
        }
        if (!Double.isNaN(since)) {
            marks.add(since);
        }
        if (!spans.isEmpty() || !marks.isEmpty()) {
            lanes.add(new Lane(name, spans, marks));
        }
    }
}
