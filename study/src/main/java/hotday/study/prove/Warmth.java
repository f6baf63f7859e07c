package hotday.study.prove;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.vehicle.plant.Input;
import hotday.vehicle.spec.VehicleSpec;
import java.util.List;
import java.util.Locale;

/**
 * Whether fitted runs get warm enough to say anything about a hot day: while the thermostat is shut neither radiator nor fan nor
 * the air through the front takes part, and every ceiling would be the sheet's.
 */
final class Warmth {
    /** Least time at the thermostat, s; what shorter runs tell, see docs/physics/prove.md. */
    private static final double LEAST = 120.0;
    /** Time at the thermostat that a run should have, s; common practice, no source. */
    private static final double ADVISED = 600.0;
    /** Twice the doubt about the opening, K: it may well open so far below the sheet. */
    private static final double BELOW_OPENING = 6.0;
    /** A level held this long within this band is regulated, whatever the sheet says of the thermostat. */
    private static final double LEVEL_TIME = 300.0; // s

    private static final double LEVEL_BAND = 3.0; // K
    private static final double LEVEL_FROM = 273.15 + 60.0; // K
    private static final double RATE_TIME = 60.0; // s

    private final VehicleSpec spec;

    Warmth(VehicleSpec spec) {
        this.spec = spec;
    }

    /** Refuses runs that together are too short at the thermostat. */
    void refuse(List<RunData> runs) {
        double warm = runs.stream().mapToDouble(this::atThermostat).sum();
        if (warm >= LEAST) {
            return;
        }
        throw new InputException(runs.stream().map(this::never).toList());
    }

    /** Time of the turning engine at the thermostat, s. */
    double atThermostat(RunData run) {
        double from = spec.thermostat().opens() - BELOW_OPENING;
        int n = 0;
        for (int i = 0; i < run.size(); i++) {
            boolean turns = run.input(i, Input.ENGINE_SPEED) >= Preparation.ENGINE_STANDS;
            n += turns && (run.coolant()[i] >= from || held(run, i)) ? 1 : 0;
        }
        return n * run.step();
    }

    /** Whether coolant stood at one level for the last minutes. */
    private static boolean held(RunData run, int row) {
        int first = row - (int) Math.round(LEVEL_TIME / run.step());
        if (first < 0 || !(run.coolant()[row] >= LEVEL_FROM)) {
            return false;
        }
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = first; i <= row; i++) {
            double t = run.coolant()[i];
            low = Double.isNaN(t) ? low : Math.min(low, t);
            high = Double.isNaN(t) ? high : Math.max(high, t);
        }
        return high - low <= LEVEL_BAND;
    }

    private Finding never(RunData run) {
        double last = last(run, run.size() - 1);
        double length = run.size() * run.step();
        double opens = spec.thermostat().opens();
        return Finding.fault(
                        "run-never-warm",
                        Place.of(run.name()),
                        String.format(
                                Locale.ROOT,
                                "the run lasts %.1f min and ends with coolant at %.0f degC; %.0f s of it were at the"
                                        + " thermostat (opens at %.0f degC by the sheet), at least %.0f s are needed in all"
                                        + " fitted runs. Radiator, fan and the air through the front had no part yet, so"
                                        + " nothing was learned about a hot day. %s Until then only the sheet's own"
                                        + " ceilings stand: hotday predict.",
                                length / 60.0,
                                last - 273.15,
                                atThermostat(run),
                                opens - 273.15,
                                LEAST,
                                advice(run, last, length)))
                .with("run", run.name())
                .with("length_s", length)
                .with("last_coolant_degC", last - 273.15)
                .with("at_thermostat_s", atThermostat(run))
                .with("needed_s", LEAST)
                .with("opens_degC", opens - 273.15);
    }

    private String advice(RunData run, double last, double length) {
        int back = run.size() - 1 - (int) Math.round(RATE_TIME / run.step());
        double rate = back < 0 ? 0.0 : (last - last(run, back)) / RATE_TIME;
        double missing = spec.thermostat().opens() - last;
        if (missing <= 0.0) {
            return String.format(Locale.ROOT, "Record %.0f min more, warm and loaded.", ADVISED / 60.0);
        }
        double more = missing / rate;
        return rate > 0.005
                ? String.format(
                        Locale.ROOT,
                        "At the rate of its last minute the thermostat opens in %.0f min; record %.0f min beyond that, some"
                                + " %.0f min in all.",
                        Math.ceil(more / 60.0),
                        ADVISED / 60.0,
                        Math.ceil((length + more + ADVISED) / 60.0))
                : String.format(
                        Locale.ROOT,
                        "Coolant no longer rises: drive under load until it is regulated, and record %.0f min beyond that.",
                        ADVISED / 60.0);
    }

    /** Latest reading up to a row, K. */
    private static double last(RunData run, int row) {
        for (int i = row; i >= 0; i--) {
            if (!Double.isNaN(run.coolant()[i])) {
                return run.coolant()[i];
            }
        }
        return run.startCoolant();
    }
}
