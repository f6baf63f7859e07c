package hotday.study.design;

import hotday.vehicle.cases.Limit;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Limits that a fan at full speed keeps somewhere, and a schedule must. Found out when first asked, which takes a run: where nothing gives way, nobody
 * asks. Any number of threads.
 */
final class Kept {
    private final Supplier<Passage> full;
    private final double spare;
    private List<Limit> limits;

    /**
     * @param full what a fan at full speed does
     * @param spare K of outside temperature about that it must have left
     */
    Kept(Supplier<Passage> full, double spare) {
        this.full = full;
        this.spare = spare;
    }

    synchronized List<Limit> limits() {
        if (limits == null) {
            limits = full.get().headroom().entrySet().stream()
                    .filter(e -> e.getValue() >= spare * e.getKey().perKelvin())
                    .map(Map.Entry::getKey)
                    .sorted()
                    .toList();
        }
        return limits;
    }

    /** How far limits give way that need not, K of outside temperature about; 0 when all is well. */
    double violation(Map<Limit, Double> headroom) {
        boolean holds = headroom.values().stream().allMatch(room -> room >= 0.0);
        return holds
                ? 0.0
                : limits().stream()
                        .mapToDouble(limit -> Math.max(0.0, -headroom.get(limit) / limit.perKelvin()))
                        .sum();
    }
}
