package hotday.app.web;

import hotday.core.unit.Display;
import hotday.study.design.Judging;
import hotday.study.shop.Bench;
import hotday.vehicle.cases.Case;
import hotday.vehicle.sheet.BuildSheet;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;

/** What a fan at full speed keeps in each build, worked out once for a vehicle, and what was judged there lately. Shared between threads. */
final class KeptJudgings {
    private final Map<String, Kept> kept = new ConcurrentHashMap<>();
    private final AtomicInteger vehicles = new AtomicInteger();

    /** @param vehicle another number for every vehicle and its cases; a schedule does not change it */
    record Kept(int vehicle, Judging judging) {}

    /** Takes as long as a judgement where the vehicle is a new one. */
    Kept of(Bench bench, BuildSheet sheet) {
        List<Case> cases = bench.cases();
        return kept.compute(
                bench.id(),
                (id, known) -> known != null && known.judging().isOf(sheet.vehicle(), cases)
                        ? known
                        : new Kept(
                                vehicles.incrementAndGet(),
                                new Judging(sheet.vehicle(), cases, new Display(sheet.units()))));
    }
}
