package hotday.app.cli;

import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.study.predict.Sensitivity;
import hotday.study.predict.WhatIf;
import hotday.study.prove.CeilingEnds;
import hotday.study.prove.CeilingReport;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Ceiling;
import hotday.vehicle.cases.OperatingPoint;
import hotday.vehicle.cases.WarmUp;
import hotday.vehicle.plant.State;
import hotday.vehicle.plant.Unrest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** A prediction in the words of the trade. */
final class PredictText {
    private static final int MOST_ROWS = 15;
    private static final double WORTH_SAYING = 0.05; // K

    private PredictText() {}

    /** What the vehicle does on the day looked at, as its schedule runs it; one line a case. */
    static List<String> day(List<CeilingReport> ceilings, Display show) {
        List<String> out = new ArrayList<>();
        out.add(String.format(
                "At %s outside, fan as the schedule runs it:",
                show.format(Quantity.TEMPERATURE, ceilings.get(0).best().day())));
        for (CeilingReport report : ceilings) {
            Ceiling c = report.best();
            if (c.kase().steady()) {
                out.add(String.format("  %-40s %s", c.kase().title(), day(c, show)));
            }
        }
        return out;
    }

    /** How it gets warm on a cold day; one line a case. */
    static List<String> cold(List<WarmUp> runs, Display show) {
        return runs.stream()
                .map(w -> String.format("  %-12s %-40s %s", verdict(w), w.kase().title(), cold(w, show)))
                .toList();
    }

    private static String verdict(WarmUp w) {
        return switch (w.verdict()) {
            case WARM -> "gets warm";
            case COOLS_OUT -> "COOLS OUT";
            case STAYS_COLD -> "STAYS COLD";
        };
    }

    private static String cold(WarmUp w, Display show) {
        StringBuilder line = new StringBuilder("at ").append(show.format(Quantity.TEMPERATURE, w.ambient()));
        for (WarmUp.Reached r : w.reached()) {
            if (r.time().isPresent()) {
                line.append(String.format(
                        Locale.ROOT,
                        ", %s after %.1f min",
                        show.format(Quantity.TEMPERATURE, r.mark()),
                        r.time().getAsDouble() / 60.0));
            }
        }
        if (w.verdict() == WarmUp.Verdict.COOLS_OUT) {
            line.append(", falls back to ").append(show.format(Quantity.TEMPERATURE, w.coldest()));
        }
        return line.append("; ends with coolant at ")
                .append(show.format(Quantity.TEMPERATURE, w.coolant()))
                .append(", cabin at ")
                .append(show.format(Quantity.TEMPERATURE, w.cabin()))
                .toString();
    }

    private static String day(Ceiling c, Display show) {
        OperatingPoint p = c.scheduled();
        if (!p.settled()) {
            return "settles nowhere: " + reason(p.unrest().get(), show);
        }
        StringBuilder line = new StringBuilder();
        line.append(String.format(Locale.ROOT, "fan %.0f %% (%.0f A), ", 100.0 * p.fan(), p.fanCurrent()))
                .append("coolant ")
                .append(show.format(Quantity.TEMPERATURE, p.coolant()))
                .append(", gearbox ")
                .append(show.format(Quantity.TEMPERATURE, p.gearbox()));
        if (c.kase().airConditioning() && !Double.isNaN(p.headPressure())) {
            line.append(", head ").append(show.format(Quantity.PRESSURE_ABSOLUTE, p.headPressure()));
        }
        line.append(String.format(Locale.ROOT, ", %.1f V", p.supply()));
        if (!Double.isNaN(c.airToBoil())) {
            line.append(", air-to-boil ").append(show.format(Quantity.TEMPERATURE, c.airToBoil()));
        }
        return line.toString();
    }

    private static String reason(Unrest u, Display show) {
        String part = part(u.state());
        return switch (u.reason()) {
            case RUNS_AWAY ->
                part + " passes " + show.format(Quantity.TEMPERATURE, Unrest.HOTTEST) + ", the heat cannot leave";
            case HUNTS -> part + " swings to and fro by " + size(u, show) + " and goes on doing so";
            case NOT_FOUND -> "no rest was found, and " + part + " still moves";
        };
    }

    private static String size(Unrest u, Display show) {
        return "K".equals(u.state().unit())
                ? show.format(Quantity.TEMPERATURE_DIFFERENCE, u.amount())
                : String.format(Locale.ROOT, "%.1f %%", 100.0 * u.amount());
    }

    private static String part(State state) {
        return switch (state) {
            case JACKET, HEATER, WAX, WAX_PLAY, RADIATOR_INLET, RADIATOR_MIDDLE, RADIATOR_OUTLET -> "coolant";
            case METAL -> "engine metal";
            case OIL -> "engine oil";
            case SUMP -> "gearbox fluid";
            case BAY -> "air in the bay";
            case FAN -> "fan";
            case CONDENSING, EVAPORATING -> "refrigerant";
            case CABIN, INTERIOR, CABIN_HUMIDITY -> "cabin";
            case CHARGE_DRAWN -> "battery";
        };
    }

    /** What to do first: the cases that do not hold, by what gives way. */
    static List<String> advice(List<CeilingReport> ceilings, Display show) {
        List<CeilingReport> failing = ceilings.stream()
                .filter(c -> c.best().ambient() < c.designAmbient())
                .sorted(Comparator.comparingDouble(c -> c.best().ambient()))
                .toList();
        if (failing.isEmpty()) {
            return List.of("Every case holds on that day with the values of the sheet.");
        }
        Ceiling worst = failing.get(0).best();
        double missing = worst.day() - worst.ambient();
        List<String> out = new ArrayList<>();
        out.add(String.format(
                "Look first at: %s. %s gives way %s below that day; %s",
                worst.kase().title(),
                capital(worst.binding().title()),
                show.format(Quantity.TEMPERATURE_DIFFERENCE, missing),
                remedy(worst)));
        return out;
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private static String remedy(Ceiling c) {
        boolean still = c.kase().speed() < 3.0;
        return switch (c.binding()) {
            case COOLANT, BOILING ->
                still
                        ? "more fan, better sealing or less heat in front of the radiator."
                        : "more radiator, more air through it (openings, exit, sealing) or a lower gear.";
            case GEARBOX -> "a larger or better placed gearbox cooler, or earlier lock-up.";
            case HEAD_PRESSURE -> "more air over the condenser: fan, shroud, sealing; or a larger condenser.";
            case CABIN_COOLING -> "a larger compressor or evaporator, a higher idle, or less air from outside.";
            case SUPPLY -> "a larger alternator, a higher idle or a fan that needs less.";
            case CHARGE_AIR -> "a larger charge-air cooler, nothing hot in front of it, or less boost.";
        };
    }

    static List<String> whatIf(List<String> texts, List<WhatIf> changes, Display show) {
        List<String> out = new ArrayList<>();
        out.add("With " + String.join(", ", texts) + ":");
        for (WhatIf w : changes) {
            out.add(String.format(
                    "  %-40s %s to %s (%s)",
                    w.kase().title(),
                    CeilingEnds.words(w.before(), show),
                    CeilingEnds.words(w.after(), show),
                    signed(w.change(), show)));
        }
        return out;
    }

    private static String signed(double kelvin, Display show) {
        String text = show.format(Quantity.TEMPERATURE_DIFFERENCE, Math.abs(kelvin));
        return Math.abs(kelvin) < WORTH_SAYING ? "no change" : (kelvin > 0.0 ? "+" : "-") + text;
    }

    static List<String> sensitivity(List<Case> cases, List<Sensitivity.Row> rows, Display show) {
        List<String> out = new ArrayList<>();
        out.add("What a value that is 10 % off (a temperature: 5 K) does to the ceilings, largest first:");
        for (Sensitivity.Row row : rows.stream().limit(MOST_ROWS).toList()) {
            if (row.largest() < WORTH_SAYING) {
                break;
            }
            StringBuilder line = new StringBuilder(String.format(
                    "  %-34s %s%s -> %s:", row.key(), row.value(), row.assumed() ? " (assumed)" : "", row.taken()));
            for (int i = 0; i < cases.size(); i++) {
                if (Math.abs(row.moves().get(i)) >= WORTH_SAYING) {
                    line.append(' ')
                            .append(cases.get(i).id())
                            .append(' ')
                            .append(signed(row.moves().get(i), show));
                }
            }
            out.add(line.toString());
        }
        out.add("Measure or look up the assumed ones at the top first.");
        return out;
    }
}
