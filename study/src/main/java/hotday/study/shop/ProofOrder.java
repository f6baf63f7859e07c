package hotday.study.shop;

import java.util.List;

/**
 * A proof somebody asks for.
 *
 * @param build its id
 * @param fit names of the recordings the fit may see
 * @param predict of those predicted from their inputs only
 * @param observeOil fit oil too
 * @param seed of everything random
 */
public record ProofOrder(String build, List<String> fit, List<String> predict, boolean observeOil, long seed) {
    public ProofOrder {
        fit = List.copyOf(fit);
        predict = List.copyOf(predict);
    }
}
