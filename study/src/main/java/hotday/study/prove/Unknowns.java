package hotday.study.prove;

import hotday.vehicle.plant.Coefficient;
import hotday.vehicle.plant.Plant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * The unknowns of a fit and how a vector of them makes a plant. Widths are the engineer's doubt about a sheet of
 * catalogue dimensions; reasons in docs/physics/prove.md.
 */
final class Unknowns {
    private static final List<Unknown> VEHICLE = List.of(
            Unknown.level("heat_level", "engine heat to coolant", Coefficient.GAS_HEAT_LEVEL, 0.3),
            Unknown.shift("heat_fuel_exponent", "how heat grows with fuel", Coefficient.GAS_HEAT_FUEL_EXPONENT, 0.12),
            Unknown.shift(
                    "heat_speed_exponent",
                    "how heat grows with engine speed",
                    Coefficient.GAS_HEAT_SPEED_EXPONENT,
                    0.2),
            Unknown.level("friction", "friction heat", Coefficient.FRICTION_LEVEL, 0.5),
            Unknown.level("friction_to_oil", "share of friction into oil", Coefficient.FRICTION_TO_OIL, 0.3),
            Unknown.level("metal_capacity", "heat held by engine metal", Coefficient.METAL_CAPACITY, 0.35),
            Unknown.level("coolant_capacity", "heat held by coolant", Coefficient.JACKET_CAPACITY, 0.3),
            Unknown.level("oil_capacity", "heat held by oil", Coefficient.OIL_CAPACITY, 0.6),
            Unknown.level("radiator_capacity", "heat held by the radiator", Coefficient.RADIATOR_CAPACITY, 0.6),
            Unknown.level("metal_coolant", "metal to coolant", Coefficient.METAL_COOLANT_CONDUCTANCE, 0.6),
            Unknown.level("metal_oil", "metal to oil", Coefficient.METAL_OIL_CONDUCTANCE, 0.6),
            Unknown.level("pump_flow", "coolant pump flow", Coefficient.PUMP_FLOW, 0.4),
            Unknown.shift("thermostat_opens", "thermostat opening", Coefficient.THERMOSTAT_OPENS, 3.0),
            Unknown.level("thermostat_range", "thermostat range to full", Coefficient.THERMOSTAT_RANGE, 0.5),
            Unknown.level("wax_lag", "thermostat lag", Coefficient.WAX_LAG, 0.6),
            Unknown.shift("thermostat_inlet", "thermostat feels the return", Coefficient.THERMOSTAT_INLET_SHARE, 0.3),
            Unknown.level("thermostat_leak", "thermostat leak", Coefficient.THERMOSTAT_LEAK, 1.0),
            Unknown.level("radiator_conductance", "radiator conductance", Coefficient.RADIATOR_AIR_CONDUCTANCE, 0.7),
            Unknown.level("ram_air", "ram air", Coefficient.RAM_LEVEL, 0.7),
            Unknown.level("still_air", "air with neither fan nor speed", Coefficient.STILL_AIR_SPEED, 0.7),
            Unknown.level("fan_flow", "fan flow", Coefficient.FAN_LEVEL, 0.15),
            Unknown.level("metal_loss", "loss of metal at rest", Coefficient.METAL_LOSS, 0.7),
            Unknown.level("metal_loss_speed", "loss of metal with speed", Coefficient.METAL_LOSS_PER_SPEED, 0.7),
            Unknown.level("oil_loss", "loss of oil at rest", Coefficient.OIL_LOSS, 0.7),
            Unknown.level("oil_loss_speed", "loss of oil with speed", Coefficient.OIL_LOSS_PER_SPEED, 0.7),
            Unknown.level("heater_conductance", "heater core", Coefficient.HEATER_CONDUCTANCE, 0.6),
            Unknown.level("condenser_heat", "condenser heat", Coefficient.CONDENSER_HEAT, 0.25),
            Unknown.level("gearbox_heat", "gearbox heat", Coefficient.GEARBOX_HEAT_LEVEL, 0.3),
            Unknown.level("condenser_conductance", "condenser conductance", Coefficient.CONDENSER_LEVEL, 0.25),
            Unknown.level("recirculation", "hot air coming back", Coefficient.RECIRCULATION, 0.4),
            Unknown.level("drive_fuel", "fuel for a given road load", Coefficient.DRIVE_FUEL_LEVEL, 0.1));

    /** Radiator temperature at a hot start, share of the way from ambient to coolant. */
    private static final double START_RADIATOR = 0.5;

    private static final double START_RADIATOR_SD = 0.25;
    private static final double START_METAL_SD = 4.0; // K
    /** Of the logarithm: what a sheet's two points leave open about fuel in between. */
    private static final double WORKED_OUT_FUEL_SD = 0.3;

    private final Plant nominal;
    private final List<Unknown> all;
    private final boolean heaterByHabit;
    private final boolean fuelWorkedOut;
    private final BooleanSupplier cancelled;

    Unknowns(Plant nominal, boolean heaterByHabit, boolean fuelWorkedOut) {
        this(nominal, heaterByHabit, fuelWorkedOut, () -> false);
    }

    /**
     * @param heaterByHabit unrecorded heaters follow {@link HeaterHabit}
     * @param fuelWorkedOut the fuel of fit runs follows from load, so its level is one more unknown
     * @param cancelled asked for every plant
     */
    Unknowns(Plant nominal, boolean heaterByHabit, boolean fuelWorkedOut, BooleanSupplier cancelled) {
        this.cancelled = cancelled;
        this.nominal = smooth(nominal);
        this.heaterByHabit = heaterByHabit;
        this.fuelWorkedOut = fuelWorkedOut;
        List<Unknown> list = new ArrayList<>(VEHICLE);
        list.add(Unknown.start("start_radiator", "radiator at a hot start", START_RADIATOR_SD));
        list.add(Unknown.start("start_metal", "metal over coolant at a hot start", START_METAL_SD));
        if (fuelWorkedOut) {
            list.add(new Unknown(
                    "worked_out_fuel", "fuel for load, worked out", Optional.empty(), true, WORKED_OUT_FUEL_SD));
        }
        this.all = List.copyOf(list);
    }

    /**
     * The same plant with the loop of the thermostat replaced by its middle line: a hard loop makes the objective
     * rugged and every interval from its curvature too narrow; the lag of the wax stays and still gives a loop.
     */
    private static Plant smooth(Plant plant) {
        double[] k = plant.coefficients();
        int hysteresis = Coefficient.THERMOSTAT_HYSTERESIS.index();
        k[Coefficient.THERMOSTAT_OPENS.index()] -= 0.5 * k[hysteresis];
        k[hysteresis] = 0.0;
        return plant.with(k);
    }

    /** The loop back around its middle line: a fit does not see it, a wax element has it all the same. */
    static Plant withLoop(Plant smooth, Plant sheet) {
        double[] k = smooth.coefficients();
        int hysteresis = Coefficient.THERMOSTAT_HYSTERESIS.index();
        double loop = sheet.coefficient(Coefficient.THERMOSTAT_HYSTERESIS);
        k[hysteresis] = loop;
        k[Coefficient.THERMOSTAT_OPENS.index()] += 0.5 * loop;
        return smooth.with(k);
    }

    List<Unknown> all() {
        return all;
    }

    int size() {
        return all.size();
    }

    Plant nominal() {
        return nominal;
    }

    /** Everything that takes long goes through here again and again. */
    void endWhenCancelled() {
        if (cancelled.getAsBoolean()) {
            throw new CancellationException();
        }
    }

    /** The plant of a vector; throws {@link CancellationException} when nobody wants it any more. */
    Plant plant(double[] z) {
        endWhenCancelled();
        double[] k = nominal.coefficients();
        for (int i = 0; i < VEHICLE.size(); i++) {
            Unknown unknown = VEHICLE.get(i);
            int slot = unknown.coefficient().orElseThrow().index();
            k[slot] = unknown.apply(k[slot], z[i]);
        }
        int inlet = Coefficient.THERMOSTAT_INLET_SHARE.index();
        k[inlet] = Math.min(1.0, Math.max(0.0, k[inlet]));
        int toOil = Coefficient.FRICTION_TO_OIL.index();
        k[toOil] = Math.min(1.0, k[toOil]);
        return nominal.with(k);
    }

    /** Share of the way from ambient to coolant at which the radiator starts, 0..1. */
    double startRadiator(double[] z) {
        return Math.min(1.0, Math.max(0.0, START_RADIATOR + START_RADIATOR_SD * z[VEHICLE.size()]));
    }

    /** Metal less coolant at a hot start, K. */
    double startMetal(double[] z) {
        return START_METAL_SD * z[VEHICLE.size() + 1];
    }

    boolean fuelWorkedOut() {
        return fuelWorkedOut;
    }

    boolean heaterByHabit() {
        return heaterByHabit;
    }

    /** Multiplier on the part of worked-out fuel that load asks for; the prior's middle where the fit had no such run. */
    double workedOutFuel(double[] z) {
        return fuelWorkedOut ? Math.exp(WORKED_OUT_FUEL_SD * z[VEHICLE.size() + 2]) : 1.0;
    }

    /**
     * The same unknowns with the level of worked-out fuel as it may be in a single run: hills, wind and a filter burning itself
     * clean make every run differ from the level of all, by as much as the sheet leaves open.
     *
     * @param normal standard normal draw
     */
    double[] withFuelOfOneRun(double[] z, double normal) {
        double[] own = z.clone();
        if (fuelWorkedOut) {
            own[VEHICLE.size() + 2] += normal;
        }
        return own;
    }

    /** Value of an unknown in its own unit, for the report; shares and offsets for start states. */
    double value(int index, double z) {
        Unknown unknown = all.get(index);
        return unknown.coefficient()
                .map(c -> unknown.apply(nominal.coefficient(c), z))
                .orElseGet(() -> startValue(index, z));
    }

    private double startValue(int index, double z) {
        if (index == VEHICLE.size()) {
            return START_RADIATOR + START_RADIATOR_SD * z;
        }
        return index == VEHICLE.size() + 1 ? START_METAL_SD * z : Math.exp(WORKED_OUT_FUEL_SD * z);
    }

    String unit(int index) {
        return all.get(index).coefficient().map(Coefficient::unit).orElse(index == VEHICLE.size() + 1 ? "K" : "1");
    }
}
