package hotday.study.shop;

import hotday.study.findings.Commissioning;
import hotday.study.prove.Proof;
import hotday.study.prove.Prove;
import hotday.study.prove.ProveRequest;

/** The whole of a proof, as command line and page ask for it: fit, prediction, hot day, and what is wrong with the car. */
public final class ProofWork {
    private static final double FITTED = 0.98; // of the whole

    private ProofWork() {}

    /**
     * Does it; throws {@link hotday.core.finding.InputException} when the recordings cannot carry it and {@link
     * java.util.concurrent.CancellationException} when it is cancelled.
     */
    public static Proof of(ProveRequest request) {
        Proof fitted = Prove.prove(request);
        request.progress().at("what is wrong with it", FITTED);
        return fitted.with(Commissioning.findings(
                request.spec(), request.fit(), request.seed(), request.threads(), request.cancelled()));
    }
}
