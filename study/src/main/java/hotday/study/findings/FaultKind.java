package hotday.study.findings;

import hotday.core.finding.Severity;
import hotday.physics.cycle.Charge;
import hotday.vehicle.plant.Coefficient;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * What may be wrong with a car, and what it does to the model of a sound one. Sizes run from 0, as small as is worth finding, to 1; what they
 * mean is common practice, no source.
 */
public enum FaultKind {
    NONE(Severity.NOTE, "nothing wrong", "", ""),
    COOLANT_SENSOR_HIGH(
            Severity.WARNING,
            "coolant sensor reads too high",
            "compare sensor, connector and wiring with a second thermometer; the fan starts too early meanwhile",
            "key on after a night's rest: coolant, oil, intake and outside air must agree within 2 K") {
        @Override
        void plant(double[] k, double size) {
            k[Coefficient.COOLANT_SENSOR_OFFSET.index()] += 5.0 + 7.0 * size;
        }
    },
    COOLANT_SENSOR_LOW(
            Severity.FAULT,
            "coolant sensor reads too low",
            "compare sensor, connector and wiring with a second thermometer; the engine is hotter than the gauge says",
            "key on after a night's rest: coolant, oil, intake and outside air must agree within 2 K") {
        @Override
        void plant(double[] k, double size) {
            k[Coefficient.COOLANT_SENSOR_OFFSET.index()] -= 5.0 + 7.0 * size;
        }
    },
    THERMOSTAT_STUCK_OPEN(
            Severity.WARNING,
            "thermostat stuck open",
            "replace the thermostat; look for a seat held open by dirt or a missing seal",
            "feel the lower radiator hose from a cold start: it must stay cold until the coolant is near the thermostat's opening") {
        @Override
        void plant(double[] k, double size) {
            k[Coefficient.THERMOSTAT_LEAK.index()] = 0.4 + 0.6 * size;
        }
    },
    THERMOSTAT_STUCK_CLOSED(
            Severity.FAULT,
            "thermostat stuck closed",
            "do not drive on; replace the thermostat",
            "upper against lower radiator hose with the engine hot: the lower one stays cold") {
        @Override
        void plant(double[] k, double size) {
            k[Coefficient.THERMOSTAT_OPENS.index()] += 60.0;
            k[Coefficient.THERMOSTAT_LEAK.index()] *= 1.0 - size;
        }
    },
    THERMOSTAT_EARLY(
            Severity.WARNING,
            "thermostat opens too early",
            "check the number on the thermostat against the sheet; replace a weak one",
            "warm up at a steady 60 km/h with the fan off and read where coolant settles, or try the thermostat in a pan of water") {
        @Override
        void plant(double[] k, double size) {
            k[Coefficient.THERMOSTAT_OPENS.index()] -= 12.0 + 10.0 * size;
        }
    },
    AIR_POCKET(
            Severity.FAULT,
            "air pocket in the coolant",
            "bleed the system at its highest points, heater open and nose up, and fill up",
            "coolant at 2500 rpm in park with the heater full on: the reading must be calm and the heater hot") {
        @Override
        void plant(double[] k, double size) {
            k[Coefficient.PUMP_FLOW.index()] *= 0.4 - 0.2 * size;
            k[Coefficient.JACKET_CAPACITY.index()] *= 0.85 - 0.25 * size;
            k[Coefficient.METAL_COOLANT_CONDUCTANCE.index()] *= 0.5 - 0.2 * size;
        }

        @Override
        void parts(Parts parts, double size) {
            parts.slug = 4.0 + 8.0 * size;
        }
    },
    FAN_BACKWARDS(
            Severity.FAULT,
            "fan turns backwards",
            "swap the two motor leads; a sheet of paper must be drawn to the grille, not blown away",
            "idle with the fan held at full speed: the direction of the air at the grille") {
        @Override
        void plant(double[] k, double size) {
            k[Coefficient.FAN_LEVEL.index()] *= 0.5 - 0.25 * size;
            k[Coefficient.RECIRCULATION.index()] = 0.6;
        }

        @Override
        void parts(Parts parts, double size) {
            parts.currentLevel *= 1.1 + 0.2 * size;
        }
    },
    FAN_DEAD(
            Severity.FAULT,
            "fan does not run when told to",
            "check fuse, relay, plug and ground of the fan, then its command wire",
            "command the fan to full speed from the scan tool at rest and read its current") {
        @Override
        void parts(Parts parts, double size) {
            parts.fan = Parts.FanHabit.DEAD;
        }
    },
    FAN_ONE_SPEED(
            Severity.WARNING,
            "fan knows one speed only",
            "check the command wire and its frequency; a controller that has lost its command runs at its emergency speed",
            "command 30, 60 and 100 % at rest and read the current at each") {
        @Override
        void parts(Parts parts, double size) {
            parts.fan = Parts.FanHabit.ONE_SPEED;
            parts.oneSpeed = size < 0.5 ? 0.45 + 0.2 * size : 0.8 + 0.2 * size;
        }
    },
    FLAPS_CLOSED(
            Severity.FAULT,
            "radiator flaps stuck closed",
            "look whether the flaps (or a cover left in place) open; free them or their motor",
            "100 km/h for ten minutes, then the same with the flaps tied open") {
        @Override
        void plant(double[] k, double size) {
            k[Coefficient.RAM_LEVEL.index()] *= 0.08 - 0.06 * size;
            k[Coefficient.STILL_AIR_SPEED.index()] *= 0.3;
            k[Coefficient.FAN_LEVEL.index()] *= 0.65 - 0.2 * size;
        }
    },
    RECIRCULATION(
            Severity.WARNING,
            "hot air comes back to the front of the radiator",
            "close the gaps between core, body and bonnet; look for a missing lower panel",
            "idle with A/C on, thermometer at the grille and another two metres away: they must agree within 5 K") {
        @Override
        void plant(double[] k, double size) {
            k[Coefficient.RECIRCULATION.index()] = 0.5 + 0.1 * size;
        }
    },
    CHARGE_LOW(
            Severity.WARNING,
            "too little refrigerant",
            "search for the leak, recover, evacuate and charge by weight",
            "weigh what comes out; high and low side at 1500 rpm with the doors open, beside the vent temperature") {
        @Override
        Set<Signal> shownBy() {
            return EnumSet.of(Signal.HEAD, Signal.SUBCOOLING, Signal.VENT);
        }

        @Override
        VehicleSpec sheet(VehicleSpec s, double size) {
            return Sheets.circuit(s, Charge.LOW, 10.0 * size, 0.0, 0.6 - 0.3 * size);
        }
    },
    CHARGE_HIGH(
            Severity.WARNING,
            "too much refrigerant",
            "recover, evacuate and charge by weight",
            "weigh what comes out; high side at idle with the fan at full speed") {
        @Override
        Set<Signal> shownBy() {
            return EnumSet.of(Signal.HEAD, Signal.SUBCOOLING);
        }

        @Override
        VehicleSpec sheet(VehicleSpec s, double size) {
            return Sheets.circuit(s, Charge.HIGH, 0.0, 0.0, 1.0);
        }

        @Override
        void plant(double[] k, double size) {
            k[Coefficient.CONDENSER_LEVEL.index()] *= 0.65 - 0.3 * size;
        }
    },
    GEARBOX_BYPASS(
            Severity.FAULT,
            "gearbox cooler gets no fluid",
            "check the bypass thermostat of the gearbox cooler and its lines; they must get warm with the gearbox",
            "the loaded climb with thermometers on both cooler lines") {
        @Override
        Set<Signal> shownBy() {
            return EnumSet.of(Signal.GEARBOX);
        }

        @Override
        VehicleSpec sheet(VehicleSpec s, double size) {
            return Sheets.gearbox(s, 0.08 * (1.0 - size), 0.0, 1.0, 1.0, 1.0);
        }
    },
    FAN_HUNTS(
            Severity.WARNING,
            "fan command hunts",
            "widen the distance between on and off and flatten the demand curve in the controller",
            "idle for ten minutes and count the fan's starts") {
        @Override
        Set<Signal> shownBy() {
            return EnumSet.of(Signal.COMMAND);
        }

        @Override
        VehicleSpec sheet(VehicleSpec s, double size) {
            return Sheets.schedule(s, hunting(s.schedule(), size));
        }
    },
    SUPPLY_SAGS(
            Severity.WARNING,
            "supply voltage sags",
            "check belt, alternator and charging cable; measure the drop from alternator to battery",
            "idle with A/C, blower and fan at full: voltage at the battery and at the alternator") {
        @Override
        Set<Signal> shownBy() {
            return EnumSet.of(Signal.VOLTAGE);
        }

        @Override
        VehicleSpec sheet(VehicleSpec s, double size) {
            return Sheets.electrical(s, 0.55 - 0.2 * size, 0.0, 1.0, 1.5);
        }
    },
    IDLE_SAGS(
            Severity.WARNING,
            "idle sags when the compressor engages",
            "announce the compressor to the engine controller early enough (idle feed-forward), or raise the idle with A/C",
            "engage the compressor ten times at idle and read the lowest engine speed of each") {
        @Override
        Set<Signal> shownBy() {
            return EnumSet.of(Signal.ENGINE_SPEED);
        }

        @Override
        void parts(Parts parts, double size) {
            parts.announced = 0.1 * (1.0 - size);
            parts.lead = 0.0;
            parts.reserve *= 0.5 - 0.4 * size;
        }
    };

    private static final double HUNTS_FROM = 1080e3; // Pa
    private static final double HUNTS_OVER = 120e3; // Pa

    private final Severity severity;
    private final String title;
    private final String advice;
    private final String next;

    FaultKind(Severity severity, String title, String advice, String next) {
        this.severity = severity;
        this.title = title;
        this.advice = advice;
        this.next = next;
    }

    /** Everything that can be wrong. */
    public static List<FaultKind> faults() {
        return List.of(values()).subList(1, values().length);
    }

    /** The one of that key. */
    public static FaultKind of(String key) {
        return Arrays.stream(values())
                .filter(k -> k.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    /** For programs: lower case, hyphens. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public Severity severity() {
        return severity;
    }

    /** For people. */
    public String title() {
        return title;
    }

    /** What to do about it. */
    public String advice() {
        return advice;
    }

    /** What to measure to be sure. */
    public String next() {
        return next;
    }

    /** What the fault changes in the sheet of the car, before it is compiled. */
    VehicleSpec sheet(VehicleSpec s, double size) {
        return s;
    }

    /** What it changes in the coefficients of the compiled car. */
    void plant(double[] k, double size) {}

    /** Signals of which one at least must be recorded to tell it. */
    Set<Signal> shownBy() {
        return EnumSet.of(Signal.COOLANT);
    }

    /** What it changes in sensors, actuators and governor. */
    void parts(Parts parts, double size) {}

    /** All or nothing against head pressure, at a pressure that the fan itself moves across. */
    private static FanSchedule hunting(FanSchedule s, double size) {
        double at = HUNTS_FROM + size * HUNTS_OVER;
        return new FanSchedule(
                s.coolantTemperature(),
                s.coolantDemand(),
                s.on(),
                s.off(),
                s.allowanceSpeed(),
                s.allowance(),
                0.0,
                List.of(at, at + 10e3),
                List.of(1.0, 1.0),
                s.gearboxTemperature(),
                s.gearboxDemand(),
                s.details());
    }
}
