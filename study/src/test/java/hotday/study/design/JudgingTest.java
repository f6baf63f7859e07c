package hotday.study.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hotday.core.finding.Place;
import hotday.core.unit.Display;
import hotday.core.unit.UnitSystem;
import hotday.study.demo.DemoShop;
import hotday.study.design.ScheduleReport.Line;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A schedule judged piece by piece is the same as one that is judged at once. */
class JudgingTest {
    private static final Display METRIC = new Display(UnitSystem.METRIC);

    @TempDir
    private static Path folder;

    private static VehicleSpec spec;
    private static List<Case> cases;
    private static Judging judging;

    @BeforeAll
    static void heron() {
        DemoShop.create(folder);
        spec = BuildSheet.read(folder.resolve("builds/heron/build.yaml")).vehicle();
        cases = StandardCases.all();
        judging = new Judging(spec, cases, METRIC);
    }

    /** Gives up after so many pieces. */
    private static final class Ear implements Judging.Listener {
        private final List<Integer> order = Collections.synchronizedList(new ArrayList<>());
        private final List<Line> lines = Collections.synchronizedList(new ArrayList<>());
        private final int most;

        private Ear(int most) {
            this.most = most;
        }

        @Override
        public boolean waits() {
            return order.size() < most;
        }

        @Override
        public synchronized void told(int index, Line line) {
            order.add(index);
            lines.add(line);
        }
    }

    private static ScheduleReport judged(Aim aim, Judging.Listener listener) {
        return judging.judged(spec.schedule(), aim, METRIC, Place::of, listener);
    }

    @Test
    void piecesAreTheWholeTheFirstOnesFirstAndAgainWhenAskedAgain() {
        Ear ear = new Ear(Integer.MAX_VALUE);
        ScheduleReport report = judged(Aim.QUIET, ear);
        ScheduleReport meant = new ScheduleDesign(spec, cases, Aim.QUIET, METRIC).judged(spec.schedule(), Place::of);
        assertThat(report).isEqualTo(meant);
        assertThat(ear.order)
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.range(0, judging.size()).boxed().toList());
        for (int i = 0; i < judging.size(); i++) {
            assertThat(ear.lines.get(i)).isEqualTo(meant.lines().get(ear.order.get(i)));
        }
        // Side by side one may come a place later than it was begun, on a machine of so many cores.
        int late = Runtime.getRuntime().availableProcessors();
        assertThat(ear.lines.subList(0, Math.max(0, judging.first() - late)))
                .allMatch(line -> line.passage().ambient() == spec.designAmbient()
                        && line.passage().kase().steady());
        Ear again = new Ear(Integer.MAX_VALUE);
        assertThat(judged(Aim.COLD, again).energy()).isEqualTo(meant.energy());
        assertThat(again.lines).containsExactlyInAnyOrderElementsOf(meant.lines());
    }

    @Test
    void nothingGoesOnForNobody() {
        Ear deaf = new Ear(3);
        assertThatThrownBy(() ->
                        new Judging(spec, cases, METRIC).judged(spec.schedule(), Aim.BALANCED, METRIC, Place::of, deaf))
                .isInstanceOf(CancellationException.class);
        assertThat(deaf.order).hasSizeBetween(3, 3 + Runtime.getRuntime().availableProcessors());
    }

    @Test
    void anotherScheduleIsNoOtherVehicle() {
        assertThat(judging.isOf(spec.with(Schedules.plain()), cases)).isTrue();
        assertThat(judging.isOf(spec, cases.subList(1, cases.size()))).isFalse();
        VehicleSpec other =
                BuildSheet.read(folder.resolve("builds/oxbow/build.yaml")).vehicle();
        assertThat(judging.isOf(other, cases)).isFalse();
    }
}
