package hotday.study.design;

import hotday.core.finding.Place;
import hotday.core.unit.Display;
import hotday.study.design.Judge.Demanded;
import hotday.study.design.ScheduleReport.Line;
import hotday.vehicle.cases.Case;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * Judges one schedule of a vehicle after the other while somebody turns it: what comes of each case is told as soon as it is there, the design
 * day first. What was judged lately is remembered. Shared between threads.
 */
public final class Judging {
    private static final int REMEMBERED = 64;

    private final VehicleSpec spec;
    private final List<Case> cases;
    private final ScheduleDesign design;
    private final List<Integer> order;
    private final Map<FanSchedule, List<Passage>> known = Collections.synchronizedMap(new LinkedHashMap<>() {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<FanSchedule, List<Passage>> eldest) {
            return size() > REMEMBERED;
        }
    });

    /** Whoever waits for a judgement; called from several threads. */
    public interface Listener {
        /** Whether anybody still waits. */
        boolean waits();

        /**
         * One case is there.
         *
         * @param index its place in the report
         */
        void told(int index, Line line);
    }

    /** Works out first what a fan at full speed keeps, which takes as long as a judgement. */
    public Judging(VehicleSpec spec, List<Case> cases, Display display) {
        this.spec = spec;
        this.cases = List.copyOf(cases);
        this.design = new ScheduleDesign(spec, cases, Aim.BALANCED, display);
        this.order = IntStream.range(0, parts().size())
                .boxed()
                .sorted(Comparator.comparing((Integer i) -> !first(i))
                        .thenComparing(i -> !parts().get(i).part().kase().steady()))
                .toList();
    }

    /** Whether it is of this vehicle, whatever its schedule, and these cases. */
    public boolean isOf(VehicleSpec vehicle, List<Case> judged) {
        return spec.equals(vehicle.with(spec.schedule())) && cases.equals(judged);
    }

    /** Cases there are. */
    public int size() {
        return order.size();
    }

    /** Cases that are told first: those on the design day that settle. */
    public int first() {
        return (int) order.stream().filter(this::first).count();
    }

    private boolean first(int i) {
        return parts().get(i).part().ambient() == spec.designAmbient()
                && parts().get(i).part().kase().steady();
    }

    private List<Demanded> parts() {
        return design.judge().parts();
    }

    /**
     * What a schedule does; throws {@link CancellationException} once nobody waits any more.
     *
     * @param places where a key of the schedule stands
     */
    public ScheduleReport judged(
            FanSchedule schedule, Aim aim, Display display, Function<String, Place> places, Listener listener) {
        List<Passage> passages = known.get(schedule);
        if (passages == null) {
            passages = passages(schedule, listener);
            known.put(schedule, passages);
        } else {
            for (int i : order) {
                tell(i, passages.get(i), listener);
            }
        }
        return design.with(aim, display).judged(schedule, passages, places);
    }

    /**
     * What the compressor's rules do with a schedule that was judged here; nothing for a vehicle without air conditioning.
     *
     * @param places where a key of the build sheet stands
     */
    public Optional<CompressorReport> compressor(
            ScheduleReport report, Display display, Function<String, Optional<Place>> places) {
        return design.with(Aim.BALANCED, display).compressor(report, places);
    }

    private List<Passage> passages(FanSchedule schedule, Listener listener) {
        Passage[] all = new Passage[order.size()];
        SideBySide.map(order, i -> {
            if (!listener.waits()) {
                throw new CancellationException();
            }
            all[i] = design.judge().passage(schedule, parts().get(i));
            tell(i, all[i], listener);
            return i;
        });
        return List.of(all);
    }

    private void tell(int i, Passage passage, Listener listener) {
        listener.told(i, ScheduleDesign.line(passage, parts().get(i)));
    }
}
