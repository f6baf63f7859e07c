package hotday.vehicle.plant;

import hotday.physics.component.Blower;
import hotday.physics.component.Cabin;
import hotday.physics.component.Evaporator;
import hotday.physics.cycle.Charge;
import hotday.physics.cycle.Compressor;
import hotday.physics.cycle.CycleLoop;
import hotday.physics.cycle.Expansion;
import hotday.physics.cycle.Orifice;
import hotday.physics.cycle.SaturatedPressure;
import hotday.physics.cycle.ThermostaticValve;
import hotday.physics.exchanger.Decay;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.VehicleSpec.CoreKind;
import hotday.vehicle.spec.VehicleSpec.PlacedCore;
import hotday.vehicle.spec.VehicleSpec.RefrigerantCircuit;
import java.util.Optional;

/**
 * Compressor, condenser, evaporator and cabin. The two sides are saturation temperatures with the heat capacity of metal and
 * refrigerant; what the compressor moves follows from them. Page: docs/physics/plant.md.
 */
final class RefrigerantSide {
    /** Inside of a multi-port condenser per face area, W/(m2 K): condensing, hot vapour, liquid. From memory, by Shah 2009 in 1 mm ports. */
    private static final double CONDENSING = 25e3;

    private static final double VAPOUR = 3.5e3;
    private static final double LIQUID = 5.5e3;
    private static final double SUBCOOLING_SHARE =
            0.12; // of the condenser's face, right charge; common practice, no source
    private static final double ORIFICE_DISCHARGE = 0.4; // against the full pressure difference; from memory
    private static final double ORIFICE_PER_KELVIN = 0.02;
    private static final double BAND = 2.0; // K of evaporating temperature over which a compressor shortens its stroke
    private static final double EQUALISING = 40.0; // W/K between the sides with the compressor at rest; from memory
    private static final double AIR_EXPONENT = 0.6;
    private static final double AIR_HEAT_CAPACITY = 1007.0;
    private static final double AIR_GAS_CONSTANT = 287.055;
    private static final double SUN_ON_INTERIOR = 0.8;
    /** Steps of a blower over its full flow, and the power they take; common practice, no source. */
    private static final double[] STEPS = {0.3, 0.55, 0.78, 1.0};

    private static final double[] POWERS = {0.12, 0.3, 0.58, 1.0};
    private static final double LEAST = 1e-3; // W/K
    private static final double HOTTEST_STAND_IN = 370.0; // K

    private final CycleLoop loop;
    private final SaturatedPressure pressureAt;
    private final RefrigerantCircuit circuit;
    private final Expansion expansion;
    private final Charge charge;
    private final Evaporator evaporator;
    private final Cabin cabin;
    private final int people;
    private final double face;

    private RefrigerantSide(VehicleSpec.AirConditioning spec, double face) {
        this.circuit = spec.circuit();
        Compressor compressor = circuit.variable()
                ? Compressor.variable(circuit.displacement(), circuit.pulleyRatio())
                : Compressor.fixed(circuit.displacement(), circuit.pulleyRatio());
        this.loop = new CycleLoop(circuit.refrigerant(), compressor);
        this.pressureAt = SaturatedPressure.of(loop);
        this.expansion = expansion(circuit);
        this.charge = circuit.charge();
        VehicleSpec.Evaporator coil = spec.evaporator();
        this.evaporator =
                new Evaporator(coil.airConductance(), coil.airFlow(), AIR_EXPONENT, coil.refrigerantConductance());
        this.cabin = cabin(spec.cabin());
        this.people = spec.cabin().people();
        this.face = face;
    }

    /** Empty for a vehicle without air conditioning. */
    static Optional<RefrigerantSide> of(VehicleSpec spec) {
        double face = spec.stack().cores().stream()
                .filter(core -> core.kind() == CoreKind.CONDENSER)
                .map(PlacedCore::place)
                .mapToDouble(place -> place.width() * place.height())
                .sum();
        return spec.airConditioning().map(a -> new RefrigerantSide(a, face));
    }

    private static Expansion expansion(RefrigerantCircuit circuit) {
        return switch (circuit.expansion()) {
            case THERMOSTATIC_VALVE -> new ThermostaticValve(circuit.superheat(), SUBCOOLING_SHARE);
            case ORIFICE ->
                new Orifice(
                        ORIFICE_DISCHARGE * 0.25 * Math.PI * circuit.orificeDiameter() * circuit.orificeDiameter(),
                        ORIFICE_PER_KELVIN);
        };
    }

    private static Cabin cabin(VehicleSpec.Cabin c) {
        double[] flows = STEPS.clone();
        double[] powers = POWERS.clone();
        for (int i = 0; i < flows.length; i++) {
            flows[i] *= c.blowerFlow();
            powers[i] *= c.blowerPower();
        }
        return new Cabin(
                c.volume(),
                c.interiorCapacity(),
                c.interiorConductance(),
                c.shellConductance(),
                c.shellPerSpeed(),
                c.glass(),
                SUN_ON_INTERIOR,
                c.leakage(),
                c.leakagePerSpeed(),
                new Blower(flows, powers));
    }

    /** From the two saturation temperatures to what the compressor moves and takes. */
    void compress(double[] x, double[] u, Work work) {
        double[] w = work.w;
        double evaporating = x[State.EVAPORATING.ordinal()];
        double low = pressureAt.at(evaporating);
        double high = pressureAt.at(x[State.CONDENSING.ordinal()]);
        double speed = speed(u);
        double share = share(evaporating, u);
        loop.compress(low, high, speed, share, expansion.superheat(charge), work.cycle);
        w[Output.HEAD_PRESSURE.ordinal()] = high;
        w[Output.SUCTION_PRESSURE.ordinal()] = low;
        w[Output.DISPLACEMENT.ordinal()] = share;
        w[Output.REFRIGERANT_FLOW.ordinal()] = work.cycle[CycleLoop.MASS_FLOW];
        w[Output.DISCHARGE_TEMPERATURE.ordinal()] = work.cycle[CycleLoop.DISCHARGE_TEMPERATURE];
        w[Output.COMPRESSOR_POWER.ordinal()] = work.cycle[CycleLoop.SHAFT_POWER];
    }

    private double speed(double[] u) {
        return electric() ? circuit.electricSpeed() : loop.compressor().speed(u[Input.ENGINE_SPEED.ordinal()]);
    }

    /** Stroke in use: shortened near the freeze limit; a fixed compressor's clutch cycling counts as its mean when asked so. */
    private double share(double evaporating, double[] u) {
        double engaged = u[Input.COMPRESSOR.ordinal()];
        double wanted = Math.min(1.0, Math.max(0.0, (evaporating - circuit.freezeLimit()) / BAND));
        boolean averaged = u[Input.CYCLING_AVERAGED.ordinal()] > 0.5;
        if (circuit.variable()) {
            return engaged * (averaged ? wanted : loop.compressor().share(wanted));
        }
        return averaged ? engaged * wanted : engaged;
    }

    /** Resistive load of the blower, A/V. */
    double conductance(double[] u) {
        return SupplySide.conductance(blowerPower(u));
    }

    /** Current of the clutch or of an electric compressor, A. */
    double current(double[] u, double[] w) {
        return electric()
                ? SupplySide.current(w[Output.COMPRESSOR_POWER.ordinal()])
                : u[Input.COMPRESSOR.ordinal()] * circuit.clutchCurrent();
    }

    boolean electric() {
        return circuit.electricSpeed() > 0.0;
    }

    private double step(double[] u) {
        return u[Input.BLOWER.ordinal()] * STEPS.length;
    }

    private static double density(double[] u) {
        return u[Input.PRESSURE.ordinal()] / (AIR_GAS_CONSTANT * u[Input.AMBIENT.ordinal()]);
    }

    private double blowerPower(double[] u) {
        return cabin.blower().power(step(u), density(u));
    }

    /** Shaft power taken from the belt, W. */
    double belt(double[] w) {
        return electric() ? 0.0 : w[Output.COMPRESSOR_POWER.ordinal()];
    }

    /** Gives the condenser's heat to the air; W. */
    double condense(int core, FrontAir front, double level, Work work) {
        double side = level * front.airSide(core, work);
        double vapour = alone(side, level * VAPOUR * face, work.coreRate);
        double liquid = alone(side, level * LIQUID * face, work.coreRate);
        double twoPhase = front.conductance(core, level * CONDENSING * face, level, work);
        double air = work.mean;
        double flooded = expansion.liquidShare(charge, work.cycle, liquid, air);
        loop.condense(work.cycle, vapour, twoPhase, liquid, air, flooded);
        double heat = work.cycle[CycleLoop.CONDENSER_HEAT];
        front.give(heat, work);
        work.w[Output.CONDENSER_HEAT.ordinal()] = heat;
        work.w[Output.SUBCOOLING.ordinal()] = work.cycle[CycleLoop.SUBCOOLING];
        return heat;
    }

    /**
     * Conductance of a condenser whose heat is given, and the head pressure that goes with it: what a schedule sees in a recorded run
     * without a pressure sensor. All of the face but the flooded part condenses.
     */
    void standIn(int core, FrontAir front, double heat, double level, Work work) {
        double sum = front.conductance(core, level * CONDENSING * face, level, work);
        double share = (1.0 - SUBCOOLING_SHARE) * Math.max(LEAST, sum);
        double saturation = Math.min(HOTTEST_STAND_IN, work.mean + heat / share);
        work.w[Output.HEAD_PRESSURE.ordinal()] = pressureAt.at(saturation);
    }

    private static double alone(double airSide, double inside, double rate) {
        if (!(airSide > 0.0 && rate > 0.0)) {
            return LEAST;
        }
        return Math.max(LEAST, rate * Decay.gone(airSide * inside / (airSide + inside) / rate));
    }

    /** Coil and cabin; gives the heat the coil takes, W. */
    private double cabinAir(double[] x, double[] u, Work work, double[] dx) {
        double[] in = work.cabinIn;
        double[] out = work.cabin;
        double air = x[State.CABIN.ordinal()];
        double humidity = x[State.CABIN_HUMIDITY.ordinal()];
        double ambient = u[Input.AMBIENT.ordinal()];
        double outside = u[Input.HUMIDITY.ordinal()];
        double pressure = u[Input.PRESSURE.ordinal()];
        double again = u[Input.CABIN_AIR_AGAIN.ordinal()];
        double flow = cabin.blower().flow(step(u), density(u));
        double warmed = blowerPower(u) / Math.max(1e-3, flow * AIR_HEAT_CAPACITY);
        double inlet = Cabin.mixedTemperature(ambient, outside, air, humidity, again) + (flow > 1e-4 ? warmed : 0.0);
        double wet = Cabin.mixedHumidity(outside, humidity, again);
        evaporator.exchange(flow, inlet, wet, pressure, x[State.EVAPORATING.ordinal()], work.coil);
        in[Cabin.AMBIENT] = ambient;
        in[Cabin.AMBIENT_HUMIDITY] = outside;
        in[Cabin.PRESSURE] = pressure;
        in[Cabin.SPEED] = u[Input.SPEED.ordinal()];
        in[Cabin.SUN] = u[Input.SUN.ordinal()];
        in[Cabin.PEOPLE] = people;
        in[Cabin.VENT_FLOW] = flow;
        in[Cabin.VENT_TEMPERATURE] = work.coil[Evaporator.AIR_OUT];
        in[Cabin.VENT_HUMIDITY] = work.coil[Evaporator.HUMIDITY_OUT];
        in[Cabin.HEATER] = work.w[Output.HEATER_HEAT.ordinal()];
        cabin.rates(air, x[State.INTERIOR.ordinal()], humidity, in, out);
        dx[State.CABIN.ordinal()] = out[Cabin.AIR_RATE];
        dx[State.INTERIOR.ordinal()] = out[Cabin.MASS_RATE];
        dx[State.CABIN_HUMIDITY.ordinal()] = out[Cabin.HUMIDITY_RATE];
        work.w[Output.VENT_TEMPERATURE.ordinal()] = work.coil[Evaporator.AIR_OUT];
        work.w[Output.CABIN_GAIN.ordinal()] = out[Cabin.VENT_HEAT]
                + out[Cabin.LEAK_HEAT]
                + out[Cabin.SHELL_HEAT]
                + out[Cabin.SUN_HEAT]
                + out[Cabin.PEOPLE_HEAT]
                + in[Cabin.HEATER];
        work.w[Output.CABIN_STORED.ordinal()] = out[Cabin.STORED];
        return work.coil[Evaporator.HEAT];
    }

    /** Both sides, coil and cabin; after {@link #condense}. */
    void rates(double[] x, double[] u, Work work, double[] dx) {
        double[] w = work.w;
        double[] cycle = work.cycle;
        double condensing = x[State.CONDENSING.ordinal()];
        double evaporating = x[State.EVAPORATING.ordinal()];
        double heat = cabinAir(x, u, work, dx);
        double still = 1.0 - Math.min(1.0, u[Input.COMPRESSOR.ordinal()] * (speed(u) > 0.0 ? 1.0 : 0.0));
        double leak = still * EQUALISING * (condensing - evaporating);
        double intoHigh = cycle[CycleLoop.CONDENSING_SURPLUS] - leak;
        double intoLow = heat + leak - carried(cycle);
        w[Output.EVAPORATOR_HEAT.ordinal()] = heat;
        w[Output.EQUALISING_HEAT.ordinal()] = leak;
        w[Output.HIGH_SIDE_STORED.ordinal()] = intoHigh;
        w[Output.LOW_SIDE_STORED.ordinal()] = intoLow;
        dx[State.CONDENSING.ordinal()] = intoHigh / circuit.highCapacity();
        dx[State.EVAPORATING.ordinal()] = intoLow / circuit.lowCapacity();
    }

    /** The rate at which a stroke that shortens near the freeze limit holds the evaporating temperature, 1/s; 0 where it does not. */
    double fastest(Work work) {
        double stroke = work.w[Output.DISPLACEMENT.ordinal()];
        boolean holds = circuit.variable() && stroke > 0.0 && stroke < 1.0;
        return holds ? carried(work.cycle) / (stroke * BAND * circuit.lowCapacity()) : 0.0;
    }

    /** Heat that the refrigerant carries from the low side to the compressor, W. */
    private static double carried(double[] cycle) {
        return cycle[CycleLoop.MASS_FLOW] * (cycle[CycleLoop.SUCTION_ENTHALPY] - cycle[CycleLoop.LIQUID_ENTHALPY]);
    }
}
