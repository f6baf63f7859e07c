package hotday.study.findings;

import hotday.core.finding.Finding;
import hotday.core.finding.Severity;
import hotday.signals.channel.Recording;
import hotday.study.prove.Prove;
import hotday.study.prove.RunData;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ForkJoinPool;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

/** Names what is wrong with a car from the recording of its commissioning run. The entry of this package. */
public final class Commissioning {
    /** Key of the finding that a run could show few faults only. */
    public static final String TOO_SHORT = "log-too-short";
    /** Key of the finding that nothing known explains the run. */
    public static final String UNLIKE = "run-unlike-sheet";

    /** A fault is named when its odds against nothing being wrong are e to this. */
    private static final double NAMED = 1.5;
    /** And when it is at least this likely among all faults. */
    private static final double LIKELY = 0.03;
    /** A fault that moves a car by less than so many standard deviations of sound cars cannot be told. */
    private static final double TOLD = 2.5;
    /** Squared distance from the nearest cloud, per feature, beyond which nothing known explains a run. */
    private static final double UNLIKE_FROM = 3.0;

    private static final int EVIDENCE = 3;
    private static final int EXAMINED = 2;
    private static final Set<Signal> BENCH = EnumSet.of(
            Signal.GEARBOX,
            Signal.HEAD,
            Signal.SUCTION,
            Signal.SUBCOOLING,
            Signal.VENT,
            Signal.VOLTAGE,
            Signal.CURRENT);
    private static final int BENCH_LEAST = 3;

    private final VehicleSpec spec;
    private final Recording recording;
    private final BooleanSupplier cancelled;
    private final List<Finding> findings = new ArrayList<>();

    private Commissioning(VehicleSpec spec, Recording recording, BooleanSupplier cancelled) {
        this.spec = spec;
        this.recording = recording;
        this.cancelled = cancelled;
    }

    /**
     * Examines a run; throws {@link hotday.core.finding.InputException} when it cannot be prepared.
     *
     * @param seed of the drawn cars
     * @param threads used; the answer does not depend on it
     */
    public static Examination of(VehicleSpec spec, Recording recording, long seed, int threads) {
        return of(spec, recording, seed, threads, () -> false);
    }

    private static Examination of(
            VehicleSpec spec, Recording recording, long seed, int threads, BooleanSupplier cancelled) {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() -> new Commissioning(spec, recording, cancelled).examine(seed))
                    .join();
        } finally {
            pool.shutdown();
        }
    }

    /**
     * What the two runs with the most channels, then the longest, say.
     *
     * @param cancelled asked for every drawn car; then {@link java.util.concurrent.CancellationException}
     */
    public static List<Finding> findings(
            VehicleSpec spec, List<Recording> runs, long seed, int threads, BooleanSupplier cancelled) {
        return runs.stream()
                .filter(run -> !RunData.thermostatHeldOpen(run))
                .sorted(Comparator.comparingInt(Commissioning::channels)
                        .thenComparingDouble(Commissioning::length)
                        .reversed())
                .limit(EXAMINED)
                .flatMap(run -> of(spec, run, seed, threads, cancelled).findings().stream())
                .toList();
    }

    private static int channels(Recording run) {
        return (int)
                Arrays.stream(Signal.values()).filter(s -> run.has(s.channel())).count();
    }

    private static double length(Recording run) {
        double[] time = run.time();
        return time.length == 0 ? 0.0 : time[time.length - 1] - time[0];
    }

    /** Whether somebody meant it as one: more than an ordinary logger catches. */
    private static boolean commissioning(Recording run) {
        return BENCH.stream().filter(s -> run.has(s.channel())).count() >= BENCH_LEAST;
    }

    /** The same on the pool of the caller. */
    static Examination of(VehicleSpec spec, Recording recording, long seed) {
        return new Commissioning(spec, recording, () -> false).examine(seed);
    }

    private Examination examine(long seed) {
        Log log = Log.measured(Prove.prepared(recording, spec), recording, spec);
        Windows windows = new Windows(log, spec);
        Ensemble ensemble = new Ensemble(log, windows, spec, seed, cancelled);
        double[] measured = ensemble.measured();
        double[][] sound = ensemble.sound();
        Diagnosis diagnosis = new Diagnosis(ensemble.features(), measured, sound, ensemble.faulty(sound));
        List<Suspect> suspects = diagnosis.verdicts().stream()
                .map(v -> new Suspect(
                        v.kind(),
                        v.logOdds(),
                        v.share(),
                        evidence(diagnosis, v.kind(), ensemble.features(), measured, windows)))
                .toList();
        List<FaultKind> untold = FaultKind.faults().stream()
                .filter(k -> diagnosis.distance(k) < TOLD)
                .toList();
        boolean unlike = diagnosis.nearest() > UNLIKE_FROM;
        boolean meant = commissioning(recording);
        suspects.stream()
                .filter(s -> s.logOdds() > NAMED && s.share() > LIKELY)
                .forEach(s -> findings.add(finding(s, unlike)));
        if (unlike) {
            findings.add(0, unlike(diagnosis.nearest(), meant));
        }
        untold(untold, meant).ifPresent(findings::add);
        return new Examination(recording.name(), suspects, untold, unlike, findings);
    }

    private static List<Evidence> evidence(
            Diagnosis diagnosis, FaultKind kind, List<Feature> features, double[] measured, Windows windows) {
        return diagnosis.evidence(kind, EVIDENCE).stream()
                .map(i -> {
                    Feature f = features.get(diagnosis.feature(i));
                    double[] span = f.span(windows);
                    return new Evidence(
                            f.words(),
                            span.length == 0 ? Double.NaN : span[0],
                            span.length == 0 ? Double.NaN : span[1],
                            f.shown(measured[diagnosis.feature(i)]),
                            f.shown(diagnosis.expected(i)),
                            f.shownSpread(diagnosis.spread(i)),
                            f.unit());
                })
                .toList();
    }

    private Finding finding(Suspect s, boolean unlike) {
        Evidence first = s.evidence().get(0);
        String unit = first.unit().replace('/', '_');
        String message = String.format(
                Locale.ROOT,
                "run %s: %s (%.0f %% of what could explain the run): %s. %s. To be sure: %s.",
                recording.name(),
                s.kind().title(),
                100.0 * s.share(),
                s.evidence().stream().map(Commissioning::words).collect(Collectors.joining("; ")),
                capital(s.kind().advice()),
                s.kind().next());
        return new Finding(
                        s.kind().key(),
                        unlike ? Severity.NOTE : s.kind().severity(),
                        Optional.empty(),
                        message,
                        Map.of())
                .with("run", recording.name())
                .with("odds", Math.exp(Math.min(30.0, s.logOdds())))
                .with("confidence", s.share())
                .with("evidence", first.what())
                .with("from_s", first.from())
                .with("to_s", first.to())
                .with("measured_" + unit, first.measured())
                .with("expected_" + unit, first.expected())
                .with("expected_spread_" + (unit.equals("degC") ? "K" : unit), first.spread())
                .with("next", s.kind().next());
    }

    private static String words(Evidence e) {
        return String.format(
                Locale.ROOT,
                "%s %s where a sound car shows %s +- %s %s (%.0f to %.0f s)",
                e.what(),
                number(e.measured()),
                number(e.expected()),
                number(e.spread()),
                e.unit(),
                e.from(),
                e.to());
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, Math.abs(value) < 20.0 ? "%.1f" : "%.0f", value);
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private Finding unlike(double nearest, boolean meant) {
        return new Finding(
                        UNLIKE,
                        meant ? Severity.WARNING : Severity.NOTE,
                        Optional.empty(),
                        "run " + recording.name()
                                + ": neither a sound car of this sheet nor one with a single known fault looks like this run;"
                                + " what is named besides is a guess. Check sheet and channel map first.",
                        Map.of())
                .with("run", recording.name())
                .with("squared_distance_per_feature", nearest);
    }

    private Optional<Finding> untold(List<FaultKind> untold, boolean meant) {
        if (untold.isEmpty()) {
            return Optional.empty();
        }
        String kinds = untold.stream().map(FaultKind::title).collect(Collectors.joining(", "));
        boolean most = meant && 2 * untold.size() > FaultKind.faults().size();
        Finding finding = most
                ? Finding.warning(
                        TOO_SHORT,
                        "run " + recording.name()
                                + " is too short, too cool or lacks the channels to tell these faults: " + kinds
                                + ". Drive the whole commissioning run of docs/physics/findings.md.")
                : Finding.note(
                        "not-told",
                        "run " + recording.name()
                                + " could not have shown these faults, which says nothing about them: " + kinds + ".");
        return Optional.of(finding.with("run", recording.name())
                .with("kinds", untold.stream().map(FaultKind::key).collect(Collectors.joining(", ")))
                .with("next", untold.get(0).next()));
    }
}
