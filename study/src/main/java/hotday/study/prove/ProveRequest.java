package hotday.study.prove;

import hotday.signals.channel.Recording;
import hotday.vehicle.cases.Case;
import hotday.vehicle.spec.VehicleSpec;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * Everything a proof needs.
 *
 * @param spec the build
 * @param cases whose ceilings are asked, none for the cold
 * @param fit recordings the fit may see, at least one
 * @param predict recordings predicted from inputs and first readings only
 * @param observeOil fit the oil channel too
 * @param seed of prior draws and sample paths
 * @param threads used; the answer does not depend on it
 * @param progress told how far the work is
 * @param cancelled asked now and then; then {@link java.util.concurrent.CancellationException}
 */
public record ProveRequest(
        VehicleSpec spec,
        List<Case> cases,
        List<Recording> fit,
        List<Recording> predict,
        boolean observeOil,
        long seed,
        int threads,
        ProveProgress progress,
        BooleanSupplier cancelled) {

    public ProveRequest {
        cases = List.copyOf(cases);
        fit = List.copyOf(fit);
        predict = List.copyOf(predict);
    }

    /** Listens to the work. */
    @FunctionalInterface
    public interface ProveProgress {
        /** @param stage what is being done; @param share of the whole, 0..1 */
        void at(String stage, double share);
    }
}
