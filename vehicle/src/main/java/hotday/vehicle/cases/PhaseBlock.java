package hotday.vehicle.cases;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.typed.Faults;
import hotday.core.typed.TypedMap;
import hotday.core.unit.Quantity;
import hotday.vehicle.cases.Case.Conditioning;
import hotday.vehicle.cases.Case.Engine;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** One phase of a case as typed. */
final class PhaseBlock {
    /** m/s; beyond what any road vehicle does, so that a wrong unit is seen. */
    static final double FASTEST = 120.0;
    /** Rise over run; steeper than tyres hold. */
    static final double STEEPEST = 0.7;

    private static final double SHORTEST = 1.0; // s
    private static final double LONGEST = 86_400.0; // s
    private static final List<String> TRACED = List.of("speed", "grade", "duration");

    private final TypedMap block;
    private final Faults faults;
    private final Function<String, Trace> traces;

    PhaseBlock(TypedMap block, Faults faults, Function<String, Trace> traces) {
        this.block = block;
        this.faults = faults;
        this.traces = traces;
    }

    Case.Phase phase(boolean first, Case.Start start) {
        block.refuseUnknown(
                "speed", "grade", "duration", "trace", "engine", "low_range", "air_conditioning", "blower", "heater");
        Optional<Trace> trace = trace(first, start);
        double speed = block.has("trace") ? 0.0 : block.requiredQuantity("speed", Quantity.SPEED, 0.0, FASTEST);
        double grade = block.quantity("grade", Quantity.RATIO, -STEEPEST, STEEPEST, 0.0);
        double duration = block.has("trace") ? trace.map(Trace::duration).orElse(Double.NaN) : duration(first, start);
        Engine engine = engine(first, start, speed > 0.0 || block.has("trace"));
        Conditioning conditioning = conditioning(engine);
        double heater = block.quantity("heater", Quantity.RATIO, 0.0, 1.0, 0.0);
        double blowing = conditioning != Conditioning.OFF || heater > 0.0 ? 1.0 : 0.0;
        double blower = block.quantity("blower", Quantity.RATIO, 0.0, 1.0, blowing);
        boolean lowRange = "yes".equals(block.text("low_range", "yes", "no").orElse("no"));
        return new Case.Phase(duration, speed, grade, engine, lowRange, conditioning, blower, heater, trace);
    }

    private Optional<Trace> trace(boolean first, Case.Start start) {
        Optional<String> name = block.has("trace") ? block.requiredText("trace") : Optional.empty();
        if (name.isEmpty() || name.get().isBlank()) {
            return Optional.empty();
        }
        TRACED.stream()
                .filter(block::has)
                .forEach(key -> block.fault(
                        key, "'phases." + key + "' stands beside 'trace', which says it already; take one out"));
        if (first && start == Case.Start.SETTLED) {
            block.fault(
                    "trace",
                    "nothing settles on a trace; put a phase with a speed before it, or write 'start: soaked'");
        }
        return read(name.get());
    }

    private Optional<Trace> read(String name) {
        try {
            return Optional.of(traces.apply(name));
        } catch (InputException e) {
            Finding fault = e.findings().get(0);
            if (fault.place().map(Place::line).orElse(0) > 0) {
                faults.include(e);
            } else {
                block.fault("trace", "'phases.trace': " + fault);
            }
            return Optional.empty();
        }
    }

    private double duration(boolean first, Case.Start start) {
        boolean endless = first && start == Case.Start.SETTLED;
        return endless
                ? block.quantity("duration", Quantity.TIME, SHORTEST, LONGEST, Double.POSITIVE_INFINITY)
                : block.requiredQuantity("duration", Quantity.TIME, SHORTEST, LONGEST);
    }

    private Engine engine(boolean first, Case.Start start, boolean moving) {
        Engine engine = oneOf("engine", Engine.DRIVE);
        if (engine != Engine.DRIVE && moving) {
            block.fault(
                    "engine",
                    "'phases.engine' is " + CaseFile.word(engine)
                            + " while the vehicle moves; that is for a phase with 'speed: 0 km/h'");
        }
        if (engine == Engine.OFF && first && start == Case.Start.SETTLED) {
            block.fault(
                    "engine",
                    "nothing settles with the engine off but at the outside temperature; write 'start: soaked'");
        }
        return engine;
    }

    private Conditioning conditioning(Engine engine) {
        Conditioning conditioning = oneOf("air_conditioning", Conditioning.OFF);
        if (conditioning != Conditioning.OFF && engine == Engine.OFF) {
            block.fault("air_conditioning", "'phases.air_conditioning' must be off where the engine is off");
        }
        return conditioning;
    }

    private <E extends Enum<E>> E oneOf(String key, E otherwise) {
        E[] all = otherwise.getDeclaringClass().getEnumConstants();
        String[] words = Arrays.stream(all).map(CaseFile::word).toArray(String[]::new);
        Optional<String> typed = block.text(key, words);
        return typed.map(word -> all[Arrays.asList(words).indexOf(word)]).orElse(otherwise);
    }
}
