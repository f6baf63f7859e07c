package hotday.study.design;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.study.design.CompressorReport.CoolingDown;
import hotday.study.design.CompressorReport.Line;
import hotday.vehicle.controller.CompressorLimits;
import hotday.vehicle.controller.Controller;
import hotday.vehicle.controller.Hold;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** What is wrong with the compressor's rules, or with a fan schedule because of them. Numbers: docs/schedule.md. */
final class CompressorFindings {
    private static final double CELSIUS = 273.15;
    private static final int RELIEF = 3300; // kPa, highest cut-out below relief valves; common practice, no source
    private static final int BAND = 300; // kPa between high cut-out and cut-in; common practice, no source
    private static final int AIR = 110; // kPa, below it a leak draws air in
    private static final int SENSOR = 50; // kPa that a pressure must lie below one that lets the compressor in again
    private static final int ICE = -10; // 0.1 degC, water on the fins freezes through
    private static final int ICED_ENOUGH =
            50; // 0.1 degC, nobody has to protect an evaporator from ice above; common practice, no source
    private static final double IDLE_SETTLES = 5.0; // s after a start; common practice, no source
    private static final double LONGEST_CUT = 10.0; // s of wide-open throttle; common practice 3 to 6, no source
    private static final double LEAST_OFF = 3.0; // s; common practice, no source
    private static final double SHARE = 0.01; // of the time that a rule may hold the compressor off unnoticed
    private static final double SLOWER = 60.0; // s
    private static final double WARMER = 2.0; // K
    private static final String HOT_COOLANT = "air_conditioning.hot_coolant.cut_out";
    private static final List<Hold> PROTECTING =
            List.of(Hold.FREEZE, Hold.HIGH_PRESSURE, Hold.LOW_PRESSURE, Hold.COOLANT);

    private final VehicleSpec spec;
    private final Display display;
    private final Function<String, Optional<Place>> places;
    private final List<Finding> all = new ArrayList<>();

    CompressorFindings(VehicleSpec spec, Display display, Function<String, Optional<Place>> places) {
        this.spec = spec;
        this.display = display;
        this.places = places;
    }

    /** @param atRest head pressure that a stopped compressor leaves at hot idle on the design day, Pa */
    List<Finding> ofRules(CompressorLimits rules, double atRest) {
        all.clear();
        highSide(rules, atRest);
        lowSide(rules);
        freeze(rules);
        coolant(rules);
        times(rules);
        return List.copyOf(all);
    }

    private void highSide(CompressorLimits rules, double atRest) {
        int out = rules.headPressure().from();
        int in = rules.headPressure().until();
        if (out > RELIEF) {
            fault(
                    "ac-cut-out-too-high",
                    "air_conditioning.cut_out",
                    "the compressor is cut out at " + kilo(out)
                            + ", relief valves may open from about 35 bar: cut out at " + kilo(RELIEF) + " or below");
        }
        if (1e3 * (in - SENSOR) < atRest) {
            fault(
                    "ac-cut-in-not-reached",
                    "air_conditioning.cut_in",
                    "once cut out, the compressor comes in again at " + kilo(in)
                            + "; at hot idle on the design day the head pressure stays at " + pressure(atRest)
                            + ": it does not come back");
        } else if (out - in < BAND) {
            fault(
                    "ac-cut-band-narrow",
                    "air_conditioning.cut_in",
                    "between cut-out at " + kilo(out) + " and cut-in at " + kilo(in)
                            + " lie less than 3 bar: the compressor comes and goes within seconds");
        }
    }

    private void lowSide(CompressorLimits rules) {
        int low = rules.suction().pressure().from();
        VehicleSpec.RefrigerantCircuit circuit =
                spec.airConditioning().orElseThrow().circuit();
        double freezing = circuit.refrigerant().saturationPressure(circuit.freezeLimit());
        if (1e3 * low >= freezing) {
            fault(
                    "ac-low-cut-out-too-high",
                    "air_conditioning.low_cut_out",
                    "the low side cuts out at " + kilo(low) + ", but an evaporator at its freeze limit of "
                            + temperature(circuit.freezeLimit()) + " stands at " + pressure(freezing)
                            + ": it takes good cooling for lost charge");
        } else if (low < AIR) {
            fault(
                    "ac-low-cut-out-too-low",
                    "air_conditioning.low_cut_out",
                    "the low side cuts out at " + kilo(low)
                            + " only: a leaking circuit draws air and moisture in before; cut out at 120 kPa abs or above");
        }
    }

    private void freeze(CompressorLimits rules) {
        int limit = rules.freeze().temperature().from();
        if (limit < ICE) {
            fault(
                    "ac-freeze-limit-too-cold",
                    "air_conditioning.freeze_limit",
                    "the evaporator may get down to " + temperature(CELSIUS + limit / 10.0)
                            + ": water on its fins freezes and shuts the air off; 0 to 4 degC are usual");
        } else if (limit > ICED_ENOUGH) {
            fault(
                    "ac-freeze-limit-too-warm",
                    "air_conditioning.freeze_limit",
                    "cooling is given up at an evaporator of " + temperature(CELSIUS + limit / 10.0)
                            + ", where nothing can freeze; 0 to 4 degC are usual");
        }
    }

    private void coolant(CompressorLimits rules) {
        double hot = CELSIUS + rules.coolant().from() / 10.0;
        double full = spec.schedule().coolantTemperature().stream()
                .mapToDouble(t -> t)
                .max()
                .orElse(0.0);
        if (hot <= full) {
            fault(
                    "ac-hot-coolant-too-early",
                    HOT_COOLANT,
                    "hot coolant cuts the compressor out at " + temperature(hot) + ", before the fan is at full speed ("
                            + temperature(full) + ")");
        } else if (hot > spec.limits().coolant()) {
            all.add(Finding.warning(
                    "ac-hot-coolant-too-late",
                    place(HOT_COOLANT),
                    "hot coolant cuts the compressor out at " + temperature(hot) + ", the limit is "
                            + temperature(spec.limits().coolant())
                            + ": it helps too late; cut out at the limit or a little below"));
        }
    }

    private void times(CompressorLimits rules) {
        double delay = seconds(rules.engine().startDelay());
        if (delay < IDLE_SETTLES) {
            fault(
                    "ac-start-delay-short",
                    "air_conditioning.start_delay",
                    String.format(
                            Locale.ROOT,
                            "the compressor may come in %.1f s after the engine starts, an idle takes 5 s to settle: 5 to 10 s are usual",
                            delay));
        }
        double cut = seconds(rules.throttle().longest());
        if (cut > LONGEST_CUT) {
            fault(
                    "ac-throttle-cut-long",
                    "air_conditioning.throttle.longest",
                    String.format(
                            Locale.ROOT,
                            "wide-open throttle keeps the compressor off for up to %.0f s: the cabin gets warm and damp; 3 to 6 s are usual",
                            cut));
        }
        double off = seconds(rules.clutch().leastOff());
        if (off < LEAST_OFF) {
            fault(
                    "ac-least-off-short",
                    "air_conditioning.least_off",
                    String.format(
                            Locale.ROOT,
                            "the clutch may close %.1f s after it opened, against a high side still under pressure: 3 to 10 s are usual",
                            off));
        }
    }

    /** Rules that come in at the design ambient only because the fan is not at full speed; each with the case it holds longest in. */
    List<Finding> ofCases(List<Line> lines) {
        all.clear();
        for (Hold hold : PROTECTING) {
            List<Line> told = lines.stream()
                    .filter(l -> l.held().getOrDefault(hold, 0.0) > SHARE
                            && l.fullFan().getOrDefault(hold, 0.0) <= SHARE)
                    .sorted(Comparator.comparingDouble((Line l) -> l.held().get(hold))
                            .reversed())
                    .toList();
            if (!told.isEmpty()) {
                Line worst = told.get(0);
                fault(
                        "ac-held-off",
                        hold == Hold.COOLANT ? "schedule.coolant" : "schedule.head_pressure",
                        String.format(
                                Locale.ROOT,
                                "%s at %s: %s keeps the compressor off %.0f %% of the time, not so with a fan at full speed%s",
                                worst.kase().title(),
                                temperature(spec.designAmbient()),
                                words(hold),
                                100 * worst.held().get(hold),
                                told.size() == 1 ? "" : "; cases with it: " + told.size()));
            }
        }
        return List.copyOf(all);
    }

    private static String words(Hold hold) {
        return switch (hold) {
            case FREEZE -> "the freeze limit";
            case HIGH_PRESSURE -> "head pressure";
            case LOW_PRESSURE -> "suction pressure";
            case COOLANT -> "hot coolant";
            default -> hold.label();
        };
    }

    /** Slower by a minute, or air out of the vents warmer by 2 K after ten minutes, than with a fan at full speed. */
    List<Finding> ofCooling(CoolingDown own, CoolingDown full) {
        all.clear();
        double later =
                own.seconds().orElse(Double.POSITIVE_INFINITY) - full.seconds().orElse(Double.POSITIVE_INFINITY);
        if (later > SLOWER || own.vent() > full.vent() + WARMER) {
            all.add(Finding.warning(
                    "ac-cools-down-slowly",
                    place("schedule.head_pressure"),
                    "a cabin that stood in the heat: " + words(own) + "; with a fan at full speed " + words(full)));
        }
        return List.copyOf(all);
    }

    private String words(CoolingDown cooling) {
        String target = temperature(cooling.target());
        String when = cooling.seconds().isPresent()
                ? String.format(
                        Locale.ROOT,
                        "%s after %.0f s",
                        target,
                        cooling.seconds().getAsDouble())
                : target + " not within 20 min";
        return when + ", out of the vents " + temperature(cooling.vent()) + " after ten minutes";
    }

    private void fault(String key, String where, String what) {
        all.add(Finding.fault(key, place(where), what));
    }

    private Place place(String key) {
        return places.apply(key).orElse(Place.of("compressor rules"));
    }

    private static double seconds(int ticks) {
        return ticks / (double) Controller.RATE;
    }

    private String kilo(int kilopascal) {
        return pressure(1e3 * kilopascal);
    }

    private String pressure(double pascal) {
        return display.format(Quantity.PRESSURE_ABSOLUTE, pascal);
    }

    private String temperature(double kelvin) {
        return display.format(Quantity.TEMPERATURE, kelvin);
    }
}
