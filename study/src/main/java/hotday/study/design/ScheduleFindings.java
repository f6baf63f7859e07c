package hotday.study.design;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.study.design.Judge.Demanded;
import hotday.study.design.ScheduleReport.KeyOff;
import hotday.vehicle.cases.Limit;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What is wrong with a schedule: what its numbers alone tell, and what the cases it was run through tell. */
final class ScheduleFindings {
    private static final double CELSIUS = 273.15;
    /** K; a coolant byte counts kelvins. */
    private static final double HOUR = 3600.0;

    private static final double SENSOR_STEP = 1.0;
    /** s from rest to full that no limit should have to wait for; common practice, no source. */
    private static final double SLOW = 60.0;

    private final VehicleSpec spec;
    private final FanSchedule s;
    private final Display display;
    private final double boiling;
    private final Function<String, Place> places;
    private final List<Finding> all = new ArrayList<>();

    /**
     * @param boiling coolant at which it boils less the sheet's margin, K
     * @param places where a key of the schedule stands
     */
    ScheduleFindings(VehicleSpec spec, double boiling, Display display, Function<String, Place> places) {
        this.spec = spec;
        this.s = spec.schedule();
        this.boiling = boiling;
        this.display = display;
        this.places = places;
    }

    /** By its numbers alone. */
    List<Finding> ofNumbers() {
        coolant();
        head();
        gearbox();
        chargeAir();
        switching();
        afterRun();
        return all;
    }

    /** By what it did. */
    List<Finding> ofPassages(List<Demanded> parts, List<Passage> passages) {
        for (Passage p : passages) {
            hunting(p);
            supply(p);
        }
        neverRests(passages);
        List<Finding> told = limits(parts, passages);
        told.addAll(merged());
        return told;
    }

    private void coolant() {
        double opens = spec.thermostat().opens();
        double limit = Math.min(spec.limits().coolant(), boiling);
        double last = s.coolantTemperature().get(s.coolantTemperature().size() - 1);
        double most = s.coolantDemand().get(s.coolantDemand().size() - 1);
        if (s.on() <= opens) {
            fault(
                    "fan-before-thermostat",
                    "on",
                    "the fan starts at " + temperature(s.on()) + ", the thermostat opens at " + temperature(opens)
                            + ": the fan cools a radiator that no coolant flows through; start it above "
                            + temperature(opens + 3));
        } else if (s.off() <= opens) {
            fault(
                    "off-point-not-reached",
                    "off",
                    "the fan stops at " + temperature(s.off()) + ", the thermostat holds the coolant at "
                            + temperature(opens) + " and above: once on, the fan never rests; stop it above "
                            + temperature(opens + 1));
        }
        if (s.on() - s.off() < 2 * SENSOR_STEP) {
            fault(
                    "hysteresis-too-small",
                    "off",
                    String.format(
                            Locale.ROOT,
                            "on and off lie %s apart, the sensor counts in steps of 1 K: the fan chatters; leave 2 K at least",
                            difference(s.on() - s.off())));
        }
        if (most < 1.0) {
            fault(
                    "never-full",
                    "coolant",
                    "the coolant curve ends at " + share(most)
                            + ": a fan that is never asked for all it has cannot hold the hot day");
        } else if (last > limit - SENSOR_STEP) {
            fault(
                    "full-too-late",
                    "coolant",
                    "the coolant curve asks for the whole fan at " + temperature(last) + ", the limit is "
                            + temperature(limit) + ", the sensor counts in steps of 1 K: let it end " + difference(2.0)
                            + " below");
        }
        if (s.details().allowanceEnds() >= limit && s.allowance().stream().anyMatch(a -> a > 0.0)) {
            fault(
                    "allowance-too-hot",
                    "allowance_ends",
                    "the road-speed allowance is taken off up to "
                            + temperature(s.details().allowanceEnds()) + ", the limit is " + temperature(limit)
                            + ": end it below");
        }
    }

    private void head() {
        if (spec.airConditioning().isEmpty()) {
            return;
        }
        double limit = spec.limits().headPressure();
        if (s.headPressure().isEmpty()) {
            if (s.airConditioningDemand() == 0.0) {
                fault(
                        "head-curve-missing",
                        "head_pressure",
                        "nothing asks for the fan when the head pressure rises: at rest the compressor is cut out");
            }
            return;
        }
        int n = s.headPressure().size() - 1;
        double last = s.headPressure().get(n);
        if (last >= limit || s.headDemand().get(n) < 1.0) {
            fault(
                    "head-curve-too-late",
                    "head_pressure",
                    "the head-pressure curve reaches " + share(s.headDemand().get(n)) + " at " + pressure(last)
                            + ", the limit is " + pressure(limit) + ": ask for the whole fan 1 bar below");
        }
        if (s.details().headHysteresis() < 20e3) {
            fault(
                    "hysteresis-too-small",
                    "head_hysteresis",
                    String.format(
                            Locale.ROOT,
                            "head_hysteresis is %.0f kPa: a clutch and a fan move the pressure more than that; 50 kPa at least",
                            s.details().headHysteresis() / 1000));
        }
    }

    private void gearbox() {
        int n = s.gearboxTemperature().size() - 1;
        if (n < 0
                || s.gearboxTemperature().get(n) >= spec.limits().gearbox()
                || s.gearboxDemand().get(n) < 1.0) {
            fault(
                    "gearbox-curve-too-late",
                    "gearbox",
                    "the gearbox curve does not ask for the whole fan below the fluid's limit of "
                            + temperature(spec.limits().gearbox()));
        }
    }

    private void chargeAir() {
        if (spec.limits().chargeAir().isEmpty()) {
            return;
        }
        double limit = spec.limits().chargeAir().getAsDouble();
        if (s.chargeAir().isEmpty()) {
            fault(
                    "charge-air-curve-missing",
                    "charge_air",
                    "nothing asks for the fan when the charge air gets hot, the limit is " + temperature(limit)
                            + ": ask for the whole fan " + difference(2.0) + " below");
            return;
        }
        FanSchedule.ChargeAirCurve curve = s.chargeAir().get();
        int n = curve.temperature().size() - 1;
        if (curve.temperature().get(n) >= limit || curve.demand().get(n) < 1.0) {
            fault(
                    "charge-air-curve-too-late",
                    "charge_air",
                    "the charge-air curve reaches " + share(curve.demand().get(n)) + " at "
                            + temperature(curve.temperature().get(n)) + ", the limit is " + temperature(limit)
                            + ": ask for the whole fan " + difference(2.0) + " below");
        }
        if (curve.hysteresis() < 2 * SENSOR_STEP) {
            fault(
                    "hysteresis-too-small",
                    "charge_air_hysteresis",
                    "charge_air_hysteresis is " + difference(curve.hysteresis())
                            + ", the sensor counts in steps of 1 K: the fan chatters; leave 2 K at least");
        }
    }

    private void switching() {
        FanSchedule.Details d = s.details();
        if (d.switching().on() > Math.max(0.4, s.coolantDemand().get(0) + 0.15)) {
            fault(
                    "start-demand-too-high",
                    "switching.on",
                    "the fan starts at a demand of " + share(d.switching().on())
                            + " only, the coolant curve begins with "
                            + share(s.coolantDemand().get(0)));
        }
        if (d.switching().leastOn() < 2.0) {
            fault(
                    "least-time-too-short",
                    "switching.least_on",
                    "a least time on of " + seconds(d.switching().leastOn())
                            + " lets every ripple start the fan; 5 s at least");
        }
        if (1.0 / d.slew().upAtRest() > SLOW || 1.0 / d.slew().up() > SLOW) {
            fault(
                    "slew-too-slow",
                    "slew",
                    "the fan takes "
                            + seconds(1.0 / Math.min(d.slew().up(), d.slew().upAtRest()))
                            + " from rest to full: coolant is faster after a climb; a minute at most");
        }
    }

    private void afterRun() {
        var a = s.details().afterRun();
        boolean runs = a.longest() > 0.0 && a.demand().stream().anyMatch(x -> x > 0.0);
        if (runs && a.until() <= spec.thermostat().opens()) {
            fault(
                    "after-run-without-end",
                    "after_run.until",
                    "the after-run ends at " + temperature(a.until()) + ", below where the thermostat shuts ("
                            + temperature(spec.thermostat().opens()) + "): it runs its whole time after every drive");
        }
        if (runs && a.battery() < 11.5) {
            fault(
                    "after-run-empties-battery",
                    "after_run.battery",
                    String.format(
                            Locale.ROOT,
                            "the after-run goes on down to %.1f V: below 11.5 V the engine may not start again (common practice, no source)",
                            a.battery()));
        }
    }

    /** What the battery gives after key-off. */
    void ofKeyOff(KeyOff k) {
        if (k.charge() > k.allowed()) {
            fault(
                    "after-run-over-budget",
                    "after_run",
                    String.format(
                            Locale.ROOT,
                            "%s: the fan takes %.2f Ah from the battery in %.0f s, %.2f Ah are allowed (limits.after_run_charge): shorten it or ask for less",
                            k.kase().title(),
                            k.charge() / HOUR,
                            k.seconds(),
                            k.allowed() / HOUR));
        }
        double stop = s.details().afterRun().battery();
        if (k.seconds() > 0.0 && k.voltage() < stop) {
            fault(
                    "after-run-stops-early",
                    "after_run.battery",
                    String.format(
                            Locale.ROOT,
                            "%s: the fan pulls the battery to %.2f V, below the %.2f V that end the after-run: ask for less",
                            k.kase().title(),
                            k.voltage(),
                            stop));
        }
    }

    /** Each limit that gives way and where it can be mended, with the case in which it gives way most. */
    private List<Finding> limits(List<Demanded> parts, List<Passage> passages) {
        List<Finding> told = new ArrayList<>();
        for (Limit limit : Limit.values()) {
            Map<String, List<Passage>> failing = IntStream.range(0, passages.size())
                    .filter(i -> parts.get(i).must().contains(limit)
                            && passages.get(i).headroom().get(limit) < 0.0)
                    .mapToObj(passages::get)
                    .sorted(Comparator.comparingDouble(p -> p.headroom().get(limit)))
                    .collect(Collectors.groupingBy(p -> key(limit, p), LinkedHashMap::new, Collectors.toList()));
            failing.forEach((where, cases) -> told.add(limit(limit, where, cases)));
        }
        return told;
    }

    private Finding limit(Limit limit, String where, List<Passage> worstFirst) {
        Passage worst = worstFirst.get(0);
        return Finding.fault(
                        "limit-not-held",
                        places.apply(where),
                        at(worst) + limit.title() + " gives way by "
                                + value(limit, -worst.headroom().get(limit), display)
                                + ", a fan at full speed holds it"
                                + (worstFirst.size() == 1 ? "" : "; pieces of the day with it: " + worstFirst.size()))
                .with("ambient_degC", worst.ambient() - CELSIUS);
    }

    private static String key(Limit limit, Passage p) {
        return Soak.has(p.kase()) && limit == Limit.BOILING ? "after_run" : key(limit);
    }

    private static String key(Limit limit) {
        return switch (limit) {
            case COOLANT, BOILING -> "coolant";
            case GEARBOX -> "gearbox";
            case HEAD_PRESSURE, CABIN_COOLING -> "head_pressure";
            case SUPPLY -> "floor";
            case CHARGE_AIR -> "charge_air";
        };
    }

    private void hunting(Passage p) {
        if (Hunting.turns(p)) {
            warn(
                    "curves-fight",
                    "head_pressure",
                    p,
                    String.format(
                            Locale.ROOT,
                            "coolant and A/C curve take turns %.0f times an hour and swing the fan by %s",
                            p.turnsPerHour(),
                            share(p.fanSwing())));
        } else if (Hunting.starts(p)) {
            warn(
                    "starts-too-often",
                    "off",
                    p,
                    String.format(
                            Locale.ROOT,
                            "the fan starts %.0f times an hour; coolant swings by %s",
                            p.startsPerHour(),
                            difference(p.amplitude())));
        } else if (Hunting.swings(p)) {
            warn(
                    "hunts",
                    "coolant",
                    p,
                    String.format(
                            Locale.ROOT,
                            "the fan swings by %s every %.0f s; its curve is too steep for its sensor",
                            share(p.fanSwing()),
                            p.period()));
        }
        if (Hunting.clutch(p)) {
            warn(
                    "clutch-cycles-often",
                    "head_pressure",
                    p,
                    String.format(Locale.ROOT, "the compressor comes in %.1f times a minute", p.clutchPerHour() / 60));
        }
    }

    private void supply(Passage p) {
        boolean idle = p.kase().steady() && p.kase().speed() == 0.0;
        if (idle && p.battery() > 0.5 && s.details().floor().demand() > 0.5) {
            warn(
                    "floor-too-high",
                    "floor",
                    p,
                    String.format(
                            Locale.ROOT,
                            "the battery gives %.0f A all the time: the floor asks for more than the alternator has at idle",
                            p.battery()));
        }
    }

    /** On a mild day on the road nothing needs the fan. */
    private void neverRests(List<Passage> passages) {
        passages.stream()
                .filter(p -> p.kase().id().equals("motorway"))
                .min(Comparator.comparingDouble(Passage::ambient))
                .filter(p -> p.fan() > 0.05)
                .ifPresent(p -> warn(
                        "never-rests",
                        "allowance",
                        p,
                        "the fan runs at " + share(p.fan()) + " of its speed where the road cools for nothing"));
    }

    /** One of a kind, the first that came, with the number of cases. */
    private List<Finding> merged() {
        List<Finding> merged = new ArrayList<>();
        for (Finding f : all) {
            boolean there = merged.stream()
                    .anyMatch(m -> m.key().equals(f.key()) && m.place().equals(f.place()));
            if (!there) {
                merged.add(f);
            }
        }
        return merged;
    }

    private void fault(String key, String where, String what) {
        all.add(Finding.fault(key, places.apply(where), what));
    }

    private void warn(String key, String where, Passage p, String what) {
        all.add(Finding.warning(key, places.apply(where), at(p) + what).with("ambient_degC", p.ambient() - CELSIUS));
    }

    private String at(Passage p) {
        return p.kase().title() + " at " + temperature(p.ambient()) + ": ";
    }

    private String temperature(double kelvin) {
        return display.format(Quantity.TEMPERATURE, kelvin);
    }

    private String difference(double kelvin) {
        return display.format(Quantity.TEMPERATURE_DIFFERENCE, kelvin);
    }

    private String pressure(double pascal) {
        return display.format(Quantity.PRESSURE_ABSOLUTE, pascal);
    }

    private static String share(double share) {
        return Math.round(100 * share) + " %";
    }

    private static String seconds(double seconds) {
        return String.format(Locale.ROOT, "%.0f s", seconds);
    }

    /** A room in words. */
    static String value(Limit limit, double room, Display display) {
        return switch (limit) {
            case HEAD_PRESSURE -> String.format(Locale.ROOT, "%.1f bar", room / 1e5);
            case SUPPLY -> display.format(Quantity.VOLTAGE, room);
            case COOLANT, BOILING, GEARBOX, CABIN_COOLING, CHARGE_AIR ->
                display.format(Quantity.TEMPERATURE_DIFFERENCE, room);
        };
    }
}
