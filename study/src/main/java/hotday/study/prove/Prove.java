package hotday.study.prove;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.solve.FitOptions;
import hotday.signals.channel.Recording;
import hotday.study.events.Event;
import hotday.study.events.Events;
import hotday.study.events.Inferred;
import hotday.study.events.Kind;
import hotday.study.events.Trace;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** From recordings to a proof: prepare, fit, predict, carry to the hot day. The entry of this package. */
public final class Prove {
    private static final int PRIOR_DRAWS = 200;
    private static final int ITERATIONS = 40;
    private static final int HELD_AIR_ROUNDS = 3;
    /** Relative change of the cost below which the descent ends. */
    private static final double TOLERANCE = 1e-4;

    private static final List<String> CEILINGS_NEED =
            List.of("fan_flow", "radiator_conductance", "condenser_heat", "recirculation", "heat_level", "drive_fuel");

    private final ProveRequest request;

    private Prove(ProveRequest request) {
        this.request = request;
    }

    /** Does the whole; throws {@link InputException} when the recordings cannot carry it. */
    public static Proof prove(ProveRequest request) {
        Prove prove = new Prove(request);
        return prove.report(prove.fit());
    }

    /** The fit alone; throws {@link InputException} when the recordings cannot carry it. */
    static FittedVehicle fitted(ProveRequest request) {
        return new Prove(request).fit().vehicle();
    }

    /**
     * @param fitRuns as they were understood in the end
     * @param predictRuns that nothing was fitted to
     */
    private record Fitted(FittedVehicle vehicle, List<RunData> fitRuns, List<RunData> predictRuns) {}

    /** A recording as the fit sees it; throws {@link InputException} when it cannot carry one. */
    public static RunData prepared(Recording recording, VehicleSpec spec) {
        return Preparation.of(recording, spec);
    }

    private Fitted fit() {
        List<Event> told =
                Events.of(request.fit().stream().map(Trace::of).toList()).events();
        List<RunData> fitRuns = prepare(request.fit(), told);
        List<RunData> predictRuns = prepare(request.predict(), List.of());
        refuseEmpty(fitRuns);
        if (request.observeOil() && fitRuns.stream().noneMatch(RunData::hasOil)) {
            throw InputException.at(
                    Place.of("--observe"),
                    "no-oil-to-observe",
                    "no fitted run has an oil temperature: map a column to oil_temperature, or leave '--observe oil' out");
        }
        refuseOtherVehicles(fitRuns, predictRuns);
        new Warmth(request.spec()).refuse(fitRuns);
        request.progress().at("fitting", 0.05);
        Unknowns unknowns = new Unknowns(
                Plant.compile(request.spec()),
                HeaterHabit.shownBy(fitRuns),
                fitRuns.stream().anyMatch(RunData::fuelWorkedOut),
                request.cancelled());
        FitOptions options = FitOptions.standard()
                .withDifference(FitOptions.Difference.FORWARD)
                .withThreads(request.threads())
                .withMaxIterations(ITERATIONS)
                .withTolerance(TOLERANCE)
                .withCancelled(request.cancelled())
                .withProgress((i, cost, n) -> request.progress().at("fitting", Math.min(0.6, 0.1 + 0.02 * i)));
        FittedVehicle vehicle =
                FittedVehicle.fit(unknowns, fitRuns, request.observeOil(), PRIOR_DRAWS, request.seed(), options);
        Learned.refuse(vehicle, fitRuns);
        return withHeldAir(vehicle, fitRuns, predictRuns, options);
    }

    /** Looks for air that something held back during the fit runs, and fits on with it, till both agree. */
    private Fitted withHeldAir(
            FittedVehicle first, List<RunData> fitRuns, List<RunData> predictRuns, FitOptions options) {
        FittedVehicle vehicle = first;
        List<RunData> runs = fitRuns;
        for (int i = 0; i < HELD_AIR_ROUNDS; i++) {
            List<RunData> found = HeldAirSearch.in(vehicle, runs);
            if (HeldAir.same(found, runs)) {
                break;
            }
            runs = found;
            vehicle = FittedVehicle.fitOn(vehicle, runs, request.observeOil(), options);
        }
        return new Fitted(vehicle, runs, predictRuns);
    }

    private void refuseOtherVehicles(List<RunData> fitRuns, List<RunData> predictRuns) {
        OtherVehicle sheet = new OtherVehicle(request.spec());
        List<Finding> faults = Stream.concat(fitRuns.stream(), predictRuns.stream())
                .flatMap(run -> sheet.evidence(run).stream())
                .toList();
        if (!faults.isEmpty()) {
            throw new InputException(faults);
        }
    }

    private List<RunData> prepare(List<Recording> recordings, List<Event> told) {
        return InputException.each(
                recordings,
                recording -> Preparation.of(
                        recording,
                        request.spec(),
                        told.stream()
                                .filter(e -> e.run().equals(recording.name()))
                                .toList()));
    }

    private static void refuseEmpty(List<RunData> fitRuns) {
        if (fitRuns.isEmpty()) {
            throw InputException.at(Place.of("--fit"), "no-fit-run", "at least one run to fit is needed");
        }
        for (RunData run : fitRuns) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (double t : run.coolant()) {
                low = Double.isNaN(t) ? low : Math.min(low, t);
                high = Double.isNaN(t) ? high : Math.max(high, t);
            }
            if (!(high > low)) {
                throw InputException.at(
                        Place.of(run.name()),
                        "coolant-constant",
                        "coolant_temperature never changes (" + (low - 273.15)
                                + " degC throughout): nothing can be fitted to it. Check the column and the sensor.");
            }
        }
    }

    private Proof report(Fitted fitted) {
        FittedVehicle vehicle = fitted.vehicle();
        List<RunData> fitRuns = fitted.fitRuns();
        List<RunData> predictRuns = fitted.predictRuns();
        NullModel warm = NullModel.of(fitRuns);
        List<RunReport> runs = new ArrayList<>();
        int total = fitRuns.size() + predictRuns.size();
        for (RunData run : fitRuns) {
            request.progress().at("run " + run.name(), 0.6 + 0.3 * runs.size() / total);
            runs.add(
                    Prediction.report(vehicle, request.spec(), run, RunReport.Role.FIT, warm, fitRuns, request.seed()));
        }
        List<Finding> findings = new ArrayList<>();
        for (RunData run : predictRuns) {
            request.progress().at("run " + run.name(), 0.6 + 0.3 * runs.size() / total);
            runs.add(Prediction.report(
                    vehicle, request.spec(), run, RunReport.Role.PREDICT, warm, fitRuns, request.seed()));
            findings.addAll(FittedRange.beyond(run, fitRuns));
        }
        OtherVehicle sheet = new OtherVehicle(request.spec());
        Stream.concat(fitRuns.stream(), predictRuns.stream())
                .forEach(run -> sheet.doubt(run).ifPresent(findings::add));
        request.progress().at("hot day", 0.9);
        List<ParameterReport> parameters = parameters(vehicle);
        findings.addAll(farFromSheet(parameters));
        findings.addAll(HeldAir.findings(fitRuns));
        List<CeilingReport> ceilings = new HotDay(vehicle, request.spec(), request.seed()).ceilings(request.cases());
        List<CeilingReport> before = HotDay.ofSheet(
                request.spec(),
                request.cases(),
                request.spec().designAmbient(),
                request.seed(),
                share -> {},
                request.cancelled());
        findings.addAll(unseen(parameters));
        Learned.notNarrowed(ceilings, before).ifPresent(findings::add);
        List<RunReport> scored = runs.stream()
                .filter(r -> r.role() == RunReport.Role.PREDICT && r.single())
                .toList();
        double nullSquares = 0.0;
        double inside = 0.0;
        int samples = 0;
        for (RunReport r : scored) {
            nullSquares += r.nullRmse() * r.nullRmse() * r.score().samples();
            inside += r.coverage() * r.score().samples();
            samples += r.score().samples();
        }
        request.progress().at("next test", 0.97);
        List<NextTest> next = NextTests.worst(ceilings)
                .map(w -> new NextTests(vehicle, request.spec(), fitRuns.get(0)).of(w))
                .orElse(List.of());
        return new Proof(
                request.spec().name(),
                runs,
                Score.pooled(runs.stream()
                        .filter(r -> r.role() == RunReport.Role.FIT)
                        .map(RunReport::score)
                        .toList()),
                Score.pooled(scored.stream().map(RunReport::score).toList()),
                Score.pooled(scored.stream().map(RunReport::warm).toList()),
                Score.pooled(scored.stream().map(RunReport::warmNull).toList()),
                Math.sqrt(nullSquares / samples),
                inside / samples,
                warm.level(),
                vehicle.correlationTime(),
                vehicle.discrepancy(),
                parameters,
                ceilings,
                before,
                inferred(),
                next,
                findings,
                request.seed(),
                vehicle.converged());
    }

    private Inferred inferred() {
        List<Trace> traces = new ArrayList<>();
        request.fit().forEach(r -> traces.add(Trace.of(r)));
        request.predict().forEach(r -> traces.add(Trace.of(r)));
        Inferred all = Events.of(traces);
        return new Inferred(
                all.events().stream().filter(e -> !idleThermostat(e)).toList(), all.summary());
    }

    /** A thermostat that is held open does nothing, whatever the coolant looks like. */
    private boolean idleThermostat(Event event) {
        boolean thermostat = event.kind() == Kind.THERMOSTAT_OPEN || event.kind() == Kind.THERMOSTAT_CLOSED;
        return thermostat
                && Stream.concat(request.fit().stream(), request.predict().stream())
                        .filter(r -> r.name().equals(event.run()))
                        .anyMatch(RunData::thermostatHeldOpen);
    }

    private static List<ParameterReport> parameters(FittedVehicle vehicle) {
        List<ParameterReport> all = new ArrayList<>();
        Unknowns unknowns = vehicle.unknowns();
        for (int i = 0; i < unknowns.size(); i++) {
            Unknown u = unknowns.all().get(i);
            double z = vehicle.z()[i];
            double sd = vehicle.posteriorSd()[i];
            all.add(new ParameterReport(
                    u.id(),
                    u.label(),
                    unknowns.unit(i),
                    unknowns.value(i, 0.0),
                    unknowns.value(i, -1.645),
                    unknowns.value(i, 1.645),
                    unknowns.value(i, z),
                    unknowns.value(i, z - 1.645 * sd),
                    unknowns.value(i, z + 1.645 * sd),
                    z,
                    sd));
        }
        return all;
    }

    private static List<Finding> farFromSheet(List<ParameterReport> parameters) {
        return parameters.stream()
                .filter(p -> Math.abs(p.shift()) > 2.5)
                .map(p -> Finding.warning(
                                "far-from-sheet",
                                p.label() + " came out at " + number(p.fitted()) + " " + p.unit()
                                        + ", the sheet stood for " + number(p.sheet())
                                        + ": check the sheet, or the runs show something the model lacks.")
                        .with("parameter", p.id())
                        .with("shift_sd", p.shift()))
                .toList();
    }

    private static String number(double value) {
        return String.format(java.util.Locale.ROOT, "%.3g", value);
    }

    /** What the ceilings need and the runs did not show. */
    private static List<Finding> unseen(List<ParameterReport> parameters) {
        return parameters.stream()
                .filter(p -> !p.informed() && CEILINGS_NEED.contains(p.id()))
                .map(p -> Finding.note(
                                "ceiling-leans-on-sheet",
                                "the runs did not show the " + p.label()
                                        + "; the ceilings take it from the sheet with its doubt.")
                        .with("parameter", p.id()))
                .toList();
    }
}
