package hotday.vehicle.cases;

import hotday.physics.fluid.Air;
import hotday.physics.fluid.Boiling;
import hotday.physics.fluid.MoistAir;
import hotday.vehicle.cases.Case.Conditioning;
import hotday.vehicle.cases.Case.Phase;
import hotday.vehicle.controller.Hold;
import hotday.vehicle.controller.Source;
import hotday.vehicle.controller.Witness;
import hotday.vehicle.plant.Equilibrium;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.Run;
import hotday.vehicle.plant.State;
import hotday.vehicle.plant.Unrest;
import hotday.vehicle.spec.VehicleSpec;
import java.util.Optional;

/**
 * One case tried on one plant at outside temperatures of choice: settled, or run through in time with fan schedule and
 * compressor rules. Keeps the last rest as a start for the next. One a thread; trying allocates nothing.
 */
public final class Trial {
    private static final Limit[] LIMITS = Limit.values();
    /** What could still heat the coolant once the engine stands. */
    private static final State[] HEATING = {
        State.METAL,
        State.JACKET,
        State.OIL,
        State.RADIATOR_INLET,
        State.RADIATOR_MIDDLE,
        State.RADIATOR_OUTLET,
        State.HEATER,
        State.BAY,
        State.SUMP,
        State.CONDENSING
    };
    /** s over which cabin cooling and supply are averaged. */
    private static final double MEAN = 60.0;
    /** s over which charge air is averaged: what the metal of cooler and manifold takes off short pulls; from memory. */
    private static final double CHARGE_MEAN = 20.0;
    /** s that a soaked cabin is given before its cooling counts. */
    private static final double PULL_DOWN = 600.0;
    /** s of settled driving that the controllers have behind them. */
    private static final double LONG_AGO = 60.0;
    /** Ticks of the controllers between two moves of road and vehicle. */
    private static final int TICKS = 4;
    /** A try moves road and vehicle in strides, s; what that changes is told in docs/physics/plant.md. */
    public static final double STRIDE = TICKS * Controls.TICK;
    /** A last phase is over when no judged limit has come noticeably closer for this long, s. */
    private static final double PAST_PEAK = 120.0;
    /** Noticeably: worth so many kelvin of outside temperature. What creeps more slowly has little left to creep. */
    private static final double NOTICED = 0.02;

    private final Case kase;
    private final Run run;
    private final Equilibrium rest;
    private final Equilibrium like;
    private final Optional<Phase> lasting;
    private final Road road;
    private final Controls controls;
    private final double pressure;
    private final double boiling;
    private final boolean charged;
    private final double[] limits = new double[LIMITS.length];
    private final double[] worst = new double[LIMITS.length];
    private final double[] noted = new double[LIMITS.length]; // worst when it last came noticeably closer
    private final boolean[] judged = new boolean[LIMITS.length];
    private Phase steady; // whose road is in the inputs and stays as it is
    private boolean found;
    private double cooling;
    private double supply;
    private double chargeAir;
    private double untilCooled;

    public Trial(VehicleSpec spec, Plant plant, Case kase) {
        this(spec, plant, kase, Hardware.EXACT);
    }

    /** The same with sensors and drives that are not perfect. */
    public Trial(VehicleSpec spec, Plant plant, Case kase, Hardware hardware) {
        this.kase = kase;
        this.run = new Run(plant);
        this.rest = new Equilibrium(run);
        this.like = new Equilibrium(run);
        this.lasting = lasting(kase);
        this.road = new Road(spec);
        this.controls = new Controls(spec, hardware);
        this.pressure = Air.isaPressure(kase.day().altitude().orElse(spec.altitude()));
        this.boiling = Boiling.temperature(
                pressure + spec.coolant().capPressure(), spec.coolant().glycolVolumeShare());
        VehicleSpec.Limits l = spec.limits();
        limits[Limit.COOLANT.ordinal()] = l.coolant();
        limits[Limit.BOILING.ordinal()] = boiling - l.boilMargin();
        limits[Limit.GEARBOX.ordinal()] = l.gearbox();
        limits[Limit.HEAD_PRESSURE.ordinal()] = l.headPressure();
        limits[Limit.CABIN_COOLING.ordinal()] = l.evaporating();
        limits[Limit.SUPPLY.ordinal()] = l.supply();
        charged = l.chargeAir().isPresent();
        limits[Limit.CHARGE_AIR.ordinal()] = l.chargeAir().orElse(Double.POSITIVE_INFINITY);
    }

    /** Boiling point at cap and altitude, K. */
    public double boiling() {
        return boiling;
    }

    /** The value a limit must not pass, in its quantity's SI unit. */
    public double limit(Limit limit) {
        return limits[limit.ordinal()];
    }

    /** The worst value a limit met in the last try. */
    public double worst(Limit limit) {
        return worst[limit.ordinal()];
    }

    /** Whether a limit counts here: judged by the case, and something the vehicle and the case have. */
    public boolean judges(Limit limit) {
        boolean conditioned = run.plant().conditioned() && kase.airConditioning();
        return kase.judges(limit)
                && switch (limit) {
                    case HEAD_PRESSURE, CABIN_COOLING -> conditioned;
                    case CHARGE_AIR -> charged;
                    case COOLANT, BOILING, GEARBOX, SUPPLY -> true;
                };
    }

    /** Headroom of a limit in the last try, SI; below 0 when it gave way or nothing came to rest. */
    public double headroom(Limit limit) {
        double room = limit.headroom(worst(limit), limit(limit));
        return found ? room : Math.min(room, -1.0);
    }

    /** Crank power that the road last asked for over the most the engine has at that speed; above 1 it falls behind. */
    public double load() {
        return road.load();
    }

    /** Whether coolant or head pressure cut the compressor out in the last try in time. */
    boolean cutOut() {
        return controls.cutOut();
    }

    /** Which rule keeps the compressor off at present. */
    public Hold hold() {
        return controls.hold();
    }

    /** Shows somebody every tick of the fan controller from the next beginning on. */
    public void watchedBy(Witness witness) {
        controls.watchedBy(witness);
    }

    /** What decides the fan's demand at present. */
    public Source source() {
        return controls.source();
    }

    /** Why the first phase came to no rest in the last try; empty when it did or does not have to. */
    public Optional<Unrest> unrest() {
        return found ? Optional.empty() : rest.unrest();
    }

    /** The run behind the last try, at its last instant. */
    public Run run() {
        return run;
    }

    /** Settles the first phase with the fan at a fixed speed; the case's limits then hold the settled values. */
    public boolean settle(double ambient, double fan) {
        run.set(Input.FAN_DEMAND, fan);
        run.set(Input.FAN_BY_SCHEDULE, 0.0);
        return settleFirst(ambient);
    }

    /** Settles the first phase with the fan where its schedule wants it. */
    public boolean settleBySchedule(double ambient) {
        run.set(Input.FAN_DEMAND, 0.5);
        run.set(Input.FAN_BY_SCHEDULE, 1.0);
        return settleFirst(ambient);
    }

    private boolean settleFirst(double ambient) {
        stand(kase.first(), ambient);
        found = rest.settle();
        clear();
        startMeans();
        note();
        return found;
    }

    private void stand(Phase phase, double ambient) {
        outside(ambient);
        apply(phase, 0.0);
        boolean conditioned =
                phase.conditioning() != Conditioning.OFF && run.plant().conditioned();
        run.set(Input.CYCLING_AVERAGED, 1.0);
        run.set(Input.COMPRESSOR, conditioned ? 1.0 : 0.0);
    }

    /** Starts the next search for a rest of the first phase from a state that lies close to it. */
    void startFrom(double[] state) {
        rest.startFrom(state);
    }

    /** Copies the rest of the first phase in the last try; false when there was none. */
    public boolean rest(double[] state) {
        rest.last(state);
        return rest.close();
    }

    /** The last phase that could go on for ever: what a moving case is most like, unless it ends on a trace. */
    private static Optional<Phase> lasting(Case kase) {
        if (kase.phases().get(kase.phases().size() - 1).trace().isPresent()) {
            return Optional.empty();
        }
        return kase.phases().stream()
                .filter(p -> p.trace().isEmpty() && p.engine() != Case.Engine.OFF)
                .reduce((before, after) -> after);
    }

    /**
     * Settles the first phase and the last that could go on for ever, and notes the worse of both: headrooms run about parallel to
     * those of the case in time. False when there is no such phase or a rest is hard to find.
     */
    boolean settleLike(double ambient) {
        if (lasting.isEmpty()) {
            return false;
        }
        run.set(Input.FAN_DEMAND, 0.5);
        run.set(Input.FAN_BY_SCHEDULE, 1.0);
        clear();
        found = kase.start() == Case.Start.SOAKED || settleQuickly(rest, kase.first(), ambient);
        if (found && (kase.start() == Case.Start.SOAKED || lasting.get() != kase.first())) {
            found = settleQuickly(like, lasting.get(), ambient);
        }
        return found;
    }

    private boolean settleQuickly(Equilibrium from, Phase phase, double ambient) {
        stand(phase, ambient);
        boolean rests = from.settleQuickly();
        startMeans();
        note();
        return rests;
    }

    /** Tries the case: settled with the fan at full speed, or in time with the fan by its schedule. */
    public boolean at(double ambient) {
        if (kase.steady()) {
            return settle(ambient, 1.0);
        }
        begin(ambient);
        int last = kase.phases().size() - 1;
        for (int i = 0; i <= last; i++) {
            Phase phase = kase.phases().get(i);
            if (!phase.endless()) {
                live(phase, i == last);
            }
        }
        return found;
    }

    /**
     * Brings a case to its beginning, fan by its schedule. Where no rest is found it begins as it is after an hour or more of its first phase,
     * unless that overheats.
     */
    public void begin(double ambient) {
        if (kase.start() == Case.Start.SETTLED) {
            found = settleBySchedule(ambient) || rest.lived();
        } else {
            outside(ambient);
            run.start(run.plant().soaked(ambient), 0.0);
            run.set(State.CABIN_HUMIDITY, run.get(Input.HUMIDITY));
            found = true;
        }
        begun();
    }

    /** Brings a settled case to its beginning from a rest of its first phase with the fan at some speed, {@link #rest}. */
    public void begin(double ambient, double[] rest) {
        run.start(rest, 0.0);
        stand(kase.first(), ambient);
        run.set(Input.FAN_DEMAND, run.get(State.FAN));
        run.set(Input.FAN_BY_SCHEDULE, 0.0);
        run.look();
        found = true;
        begun();
    }

    private void begun() {
        clear();
        startMeans();
        if (kase.start() == Case.Start.SOAKED) {
            cooling = Double.NaN;
            untilCooled = PULL_DOWN;
        }
        run.set(Input.FAN_BY_SCHEDULE, 0.0);
        run.set(Input.CYCLING_AVERAGED, 0.0);
        run.set(Input.FAN_DEMAND, run.get(State.FAN));
        apply(kase.first(), 0.0);
        run.look();
        controls.begin(run, kase.first(), kase.start() == Case.Start.SETTLED ? LONG_AGO : 0.0);
    }

    private void live(Phase phase, boolean last) {
        double elapsed = 0.0;
        double sinceWorst = 0.0;
        run.restart();
        while (elapsed < phase.duration() && !(last && over(phase, sinceWorst))) {
            boolean noticed = stride(phase, elapsed);
            elapsed += STRIDE;
            sinceWorst = noticed ? 0.0 : sinceWorst + STRIDE;
        }
    }

    /** {@link #STRIDE} seconds of a phase; true when a judged limit came noticeably closer. */
    public boolean stride(Phase phase, double elapsed) {
        control(phase, elapsed + 0.5 * STRIDE);
        for (int i = 1; i < TICKS; i++) {
            controls.again(run);
        }
        run.advance(STRIDE);
        followMeans(phase, STRIDE);
        return note();
    }

    private boolean over(Phase phase, double sinceWorst) {
        return phase.trace().isEmpty() && (sinceWorst > PAST_PEAK || (phase.engine() == Case.Engine.OFF && cooled()));
    }

    /**
     * With the engine off and nothing but coolant to judge: no part is hotter than the coolant has been, so it will not be that hot again.
     */
    private boolean cooled() {
        double hottest = worst(Limit.COOLANT);
        for (State state : HEATING) {
            if (run.get(state) > hottest) {
                return false;
            }
        }
        return !judges(Limit.GEARBOX) && !judges(Limit.HEAD_PRESSURE) && !judges(Limit.CABIN_COOLING);
    }

    /** One tenth of a second of a phase: road, controllers, then the vehicle. */
    public void tick(Phase phase, double elapsed) {
        control(phase, elapsed);
        run.advance(Controls.TICK);
    }

    /** Road and controllers alone, for who moves the vehicle otherwise; outputs of the run must be those of its state. */
    public void control(Phase phase, double elapsed) {
        if (phase != steady) {
            apply(phase, elapsed);
            steady = phase.trace().isPresent() ? null : phase;
        }
        controls.tick(run, phase);
    }

    private void startMeans() {
        cooling = run.get(State.EVAPORATING);
        supply = run.get(Output.BUS);
        chargeAir = run.get(Output.CHARGE_TEMPERATURE);
        untilCooled = 0.0;
    }

    /** Cabin cooling, supply and charge air are judged by their means: a clutch that cycles, a fan that starts, a short pull do no harm. */
    private void followMeans(Phase phase, double step) {
        double share = step / MEAN;
        supply += share * (run.get(Output.BUS) - supply);
        chargeAir += step / CHARGE_MEAN * (run.get(Output.CHARGE_TEMPERATURE) - chargeAir);
        if (phase.conditioning() == Conditioning.OFF) {
            cooling = Double.NaN;
            return;
        }
        untilCooled -= step;
        if (untilCooled <= 0.0) {
            double now = run.get(State.EVAPORATING);
            cooling = Double.isNaN(cooling) ? now : cooling + share * (now - cooling);
        }
    }

    private void outside(double ambient) {
        steady = null;
        run.set(Input.AMBIENT, ambient);
        run.set(Input.PRESSURE, pressure);
        run.set(Input.SUN, kase.day().sun());
        run.set(Input.HUMIDITY, humidity(ambient));
        run.set(Input.FUEL_POWER, -1.0);
        run.set(Input.AIR_FLOW, 0.0);
    }

    /** Humidity ratio of the day; hot air holds no more than it would at the wettest that weather gets (dew point 30 degC). */
    private double humidity(double ambient) {
        double wettest = MoistAir.humidityRatio(303.15, 1.0, pressure);
        return Math.min(wettest, MoistAir.humidityRatio(ambient, kase.day().humidity(), pressure));
    }

    private void apply(Phase phase, double elapsed) {
        road.apply(run, phase, elapsed);
        run.set(Input.BLOWER, phase.blower());
        run.set(Input.HEATER, phase.heater());
        run.set(Input.CABIN_AIR_AGAIN, phase.conditioning() == Conditioning.CABIN_AIR ? 1.0 : 0.0);
    }

    private void clear() {
        for (Limit limit : LIMITS) {
            worst[limit.ordinal()] = limit.leastBad();
            noted[limit.ordinal()] = limit.leastBad();
            judged[limit.ordinal()] = judges(limit);
        }
    }

    /** Takes note of new worst values; true when a judged one came noticeably closer to its limit. */
    private boolean note() {
        boolean noticed = note(Limit.COOLANT, run.get(State.JACKET));
        noticed |= note(Limit.BOILING, run.get(State.JACKET));
        noticed |= note(Limit.GEARBOX, run.get(State.SUMP));
        if (run.plant().conditioned()) {
            noticed |= note(Limit.HEAD_PRESSURE, run.get(Output.HEAD_PRESSURE));
        }
        if (run.plant().conditioned() && !Double.isNaN(cooling)) {
            noticed |= note(Limit.CABIN_COOLING, cooling);
        }
        if (run.get(Input.ENGINE_SPEED) > 0.0) {
            noticed |= note(Limit.SUPPLY, supply);
            noticed |= note(Limit.CHARGE_AIR, chargeAir);
        }
        return noticed;
    }

    private boolean note(Limit limit, double value) {
        int i = limit.ordinal();
        if (limit.headroom(value, worst[i]) < 0.0 || worst[i] == limit.leastBad()) {
            worst[i] = value;
        }
        boolean closer = noted[i] == limit.leastBad() || limit.headroom(value, noted[i]) < -NOTICED * limit.perKelvin();
        if (closer) {
            noted[i] = value;
        }
        return closer && judged[i];
    }
}
