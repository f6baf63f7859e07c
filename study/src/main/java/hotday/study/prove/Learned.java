package hotday.study.prove;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Whether a fit may stand: it must have told something, and the unknowns must not be pushed where no sheet's doubt reaches. */
final class Learned {
    /** Prior standard deviations; genuine fits of open recordings reached 3.4. */
    private static final double BEYOND_DOUBT = 4.5;
    /** Fitted runs that are missed by more are not those of this vehicle, K; genuine ones stayed below 3 K. */
    private static final double MISSED = 6.0;

    /** Share of the sheet's widths from which runs count as having told hardly anything. */
    private static final double HARDLY = 0.95;

    private Learned() {}

    static void refuse(FittedVehicle vehicle, List<RunData> runs) {
        List<String> pushed = pushed(vehicle);
        if (!pushed.isEmpty() || vehicle.trainingRmse() > MISSED) {
            throw new InputException(strange(vehicle, runs, pushed));
        }
        double least = 1.0;
        for (double sd : vehicle.posteriorSd()) {
            least = Math.min(least, sd);
        }
        if (least >= ParameterReport.INFORMED) {
            throw new InputException(nothing(runs, least));
        }
    }

    /** A warning where the intervals of all ceilings together are hardly narrower than the sheet's. */
    static Optional<Finding> notNarrowed(List<CeilingReport> after, List<CeilingReport> before) {
        double with = widths(after);
        double without = widths(before);
        return with < HARDLY * without || without <= 0.0
                ? Optional.empty()
                : Optional.of(Finding.warning(
                                "ceilings-not-narrowed",
                                String.format(
                                        Locale.ROOT,
                                        "the runs told hardly anything about the hot day: the intervals of all ceilings add up"
                                                + " to %.0f K with the runs, to %.0f K from the sheet alone. Read the ceilings as"
                                                + " the sheet's.",
                                        with,
                                        without))
                        .with("intervals_K", with)
                        .with("without_run_K", without));
    }

    private static double widths(List<CeilingReport> ceilings) {
        return ceilings.stream().mapToDouble(c -> c.high() - c.low()).sum();
    }

    private static List<String> pushed(FittedVehicle vehicle) {
        List<String> pushed = new ArrayList<>();
        for (int i = 0; i < vehicle.z().length; i++) {
            double z = vehicle.z()[i];
            if (Math.abs(z) > BEYOND_DOUBT) {
                pushed.add(String.format(
                        Locale.ROOT, "%s %+.1f", vehicle.unknowns().all().get(i).label(), z));
            }
        }
        return pushed;
    }

    private static Finding strange(FittedVehicle vehicle, List<RunData> runs, List<String> pushed) {
        String doubt = pushed.isEmpty()
                ? ""
                : " with unknowns pushed far beyond the sheet's doubt (in its standard deviations: "
                        + String.join(", ", pushed) + ")";
        return Finding.fault(
                        "other-vehicle",
                        Place.of(names(runs)),
                        String.format(
                                Locale.ROOT,
                                "these are not recordings of the sheet's vehicle, or a channel is wrong: the best fit misses"
                                        + " coolant by %.1f K rms (at most %.0f K)%s. Check that sheet and recordings belong"
                                        + " together, and units and lags in the channel map.",
                                vehicle.trainingRmse(),
                                MISSED,
                                doubt))
                .with("evidence", "fit")
                .with("fit_rmse_K", vehicle.trainingRmse());
    }

    private static Finding nothing(List<RunData> runs, double least) {
        double length = runs.stream().mapToDouble(r -> r.size() * r.step()).sum();
        return Finding.fault(
                        "runs-told-nothing",
                        Place.of(names(runs)),
                        String.format(
                                Locale.ROOT,
                                "%.0f min of fitted runs told nothing of their own about any unknown of the vehicle: the best-known one is"
                                        + " still %.0f %% as wide as the sheet left it (at most %.0f %% counts as told)."
                                        + " Record 20 min or more from a cold start, with a climb or fast driving and some"
                                        + " minutes of warm idle. Until then only the sheet's own ceilings stand: hotday"
                                        + " predict.",
                                length / 60.0,
                                100.0 * least,
                                100.0 * ParameterReport.INFORMED))
                .with("length_s", length)
                .with("narrowest", least);
    }

    private static String names(List<RunData> runs) {
        return String.join(", ", runs.stream().map(RunData::name).toList());
    }
}
