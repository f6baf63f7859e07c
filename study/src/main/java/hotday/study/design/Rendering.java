package hotday.study.design;

import hotday.core.unit.Quantity;
import hotday.core.unit.Unit;
import hotday.core.unit.UnitSystem;
import hotday.core.unit.Units;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.FanDrive;
import hotday.vehicle.cases.Hardware;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import java.util.function.Supplier;

/**
 * A schedule as a controller wants it, with what it errs by and what that costs.
 *
 * @param coolant, gearbox, chargeAir, head, allowance the curves as tables; empty where the schedule has none
 * @param duty how the fan is told; empty for an output in percent
 * @param relays instead of a duty
 * @param rest least time that the fan rests, s; relays may need less than the schedule has
 * @param headHysteresis of the head-pressure curve, Pa; relays may need more
 * @param relaysHold whether all holds with the relays that a fan at full speed holds, on milder days too
 * @param error by how much the fan may turn slower than the schedule asks, 0..1
 * @param cases with the next three, K: ceilings as designed, at most so much lower, and with what is rendered
 */
public record Rendering(
        Optional<CurveTable> coolant,
        Optional<CurveTable> gearbox,
        Optional<CurveTable> chargeAir,
        Optional<CurveTable> head,
        Optional<CurveTable> allowance,
        Optional<DutyMap> duty,
        Optional<Relays> relays,
        double rest,
        double headHysteresis,
        boolean relaysHold,
        double error,
        List<Case> cases,
        double[] designed,
        double[] bound,
        double[] rendered) {
    /** Share of the work that thresholds of relays take, about. */
    private static final double RELAYS = 0.8;

    /**
     * What a controller has.
     *
     * @param points break points of a table
     * @param temperature axis; @param temperatureStep in its unit
     * @param pressure axis; @param pressureStep in its unit
     * @param speed axis; @param speedStep in its unit
     */
    public record Controller(
            int points,
            Unit temperature,
            double temperatureStep,
            Unit pressure,
            double pressureStep,
            Unit speed,
            double speedStep,
            Optional<DutyMap> duty,
            Optional<List<Double>> relays) {
        /** Axes in the units of a sheet, in steps that are typed easily. */
        public static Controller of(
                UnitSystem units, int points, Optional<DutyMap> duty, Optional<List<Double>> relays) {
            boolean us = units != UnitSystem.METRIC;
            boolean miles = units == UnitSystem.US;
            return new Controller(
                    points,
                    Units.unit(Quantity.TEMPERATURE, us ? "degF" : "degC"),
                    us ? 1.0 : 0.5,
                    Units.unit(Quantity.PRESSURE_ABSOLUTE, us ? "psia" : "kPa abs"),
                    us ? 5.0 : 25.0,
                    Units.unit(Quantity.SPEED, miles ? "mph" : "km/h"),
                    1.0,
                    duty,
                    relays);
        }
    }

    /**
     * Renders the schedule of a vehicle and runs the cases with it.
     *
     * @param plant the vehicle, whatever its schedule
     * @param progress told the share done, 0..1
     */
    public static Rendering of(
            VehicleSpec spec, Plant plant, List<Case> all, Aim aim, Controller has, DoubleConsumer progress) {
        List<Case> cases = all.stream().filter(c -> !c.forCold()).toList();
        FanSchedule s = spec.schedule();
        Optional<CurveTable> coolant = table(
                s.coolantTemperature(), s.coolantDemand(), has.temperature(), has.points(), has.temperatureStep());
        Optional<CurveTable> gearbox = table(
                s.gearboxTemperature(), s.gearboxDemand(), has.temperature(), has.points(), has.temperatureStep());
        Optional<CurveTable> charge = s.chargeAir()
                .flatMap(c ->
                        table(c.temperature(), c.demand(), has.temperature(), has.points(), has.temperatureStep()));
        Optional<CurveTable> head =
                table(s.headPressure(), s.headDemand(), has.pressure(), has.points(), has.pressureStep());
        Optional<CurveTable> allowance =
                table(s.allowanceSpeed(), s.allowance(), has.speed(), has.points(), has.speedStep());
        VehicleSpec other = spec.with(tabled(s, coolant, gearbox, charge, head, allowance));
        Optional<RelaySearch.Found> switched = has.relays()
                .map(speeds -> new RelaySearch(other, plant, all, aim, speeds, share -> progress.accept(RELAYS * share))
                        .best());
        double begin = has.relays().isPresent() ? RELAYS : 0.0;
        progress.accept(begin);
        Optional<Relays> relays = switched.map(RelaySearch.Found::relays);
        Supplier<FanDrive> drive = relays.<Supplier<FanDrive>>map(r -> r::drive)
                .orElseGet(() -> () -> has.duty().<FanDrive>map(d -> d).orElse(FanDrive.DIRECT));
        double error = error(List.of(coolant, gearbox, charge, head), allowance)
                + relays.map(Relays::error)
                        .orElseGet(() -> has.duty().map(DutyMap::error).orElse(0.0));
        double[] designed = ScheduledCeilings.of(spec, plant, cases, Hardware.USUAL);
        progress.accept(begin + (1.0 - begin) / 3);
        double[] bound = ScheduledCeilings.of(spec, plant, cases, Hardware.USUAL.with(() -> slower(error)));
        progress.accept(begin + (1.0 - begin) * 2 / 3);
        VehicleSpec last = other.with(switched.map(RelaySearch.Found::schedule).orElse(other.schedule()));
        double[] rendered = ScheduledCeilings.of(last, plant, cases, Hardware.USUAL.with(drive));
        return new Rendering(
                coolant,
                gearbox,
                charge,
                head,
                allowance,
                has.duty(),
                relays,
                last.schedule().details().switching().leastOff(),
                last.schedule().details().headHysteresis(),
                switched.map(RelaySearch.Found::holds).orElse(true),
                error,
                cases,
                designed,
                bound,
                rendered);
    }

    /** A fan that is as slow as an error may make it; one that is asked for everything gives it. */
    private static FanDrive slower(double error) {
        return output -> output >= 1.0 ? 1.0 : Math.max(0.0, output - error);
    }

    private static Optional<CurveTable> table(List<Double> x, List<Double> demand, Unit unit, int points, double step) {
        return x.size() < 2 ? Optional.empty() : Optional.of(CurveTable.of(x, demand, unit, points, step));
    }

    private static double error(List<Optional<CurveTable>> all, Optional<CurveTable> allowance) {
        double curves = 0.0;
        for (Optional<CurveTable> each : all) {
            curves = Math.max(curves, each.map(CurveTable::error).orElse(0.0));
        }
        return curves + allowance.map(CurveTable::error).orElse(0.0);
    }

    private static FanSchedule tabled(
            FanSchedule s,
            Optional<CurveTable> coolant,
            Optional<CurveTable> gearbox,
            Optional<CurveTable> charge,
            Optional<CurveTable> head,
            Optional<CurveTable> allowance) {
        return new FanSchedule(
                coolant.map(CurveTable::si).orElse(s.coolantTemperature()),
                coolant.map(CurveTable::shares).orElse(s.coolantDemand()),
                s.on(),
                s.off(),
                allowance.map(CurveTable::si).orElse(s.allowanceSpeed()),
                allowance.map(CurveTable::shares).orElse(s.allowance()),
                s.airConditioningDemand(),
                head.map(CurveTable::si).orElse(s.headPressure()),
                head.map(CurveTable::shares).orElse(s.headDemand()),
                gearbox.map(CurveTable::si).orElse(s.gearboxTemperature()),
                gearbox.map(CurveTable::shares).orElse(s.gearboxDemand()),
                s.chargeAir()
                        .map(c -> charge.map(t -> new FanSchedule.ChargeAirCurve(t.si(), t.shares(), c.hysteresis()))
                                .orElse(c)),
                s.details());
    }

    /** K by which the ceiling of a case falls with what is rendered; below 0 where it rises. */
    double lost(int kase) {
        return designed[kase] - rendered[kase];
    }

    /** K by which it may fall: what so slow a fan costs, and what halving leaves. */
    double stated(int kase) {
        return Math.max(0.0, designed[kase] - bound[kase]) + 2 * ScheduledCeilings.CLOSE;
    }

    /** All tables with what stands on their axes. */
    public List<Named> tables() {
        List<Named> all = new ArrayList<>();
        coolant.ifPresent(t -> all.add(new Named("coolant", Quantity.TEMPERATURE, t)));
        gearbox.ifPresent(t -> all.add(new Named("gearbox", Quantity.TEMPERATURE, t)));
        chargeAir.ifPresent(t -> all.add(new Named("charge_air", Quantity.TEMPERATURE, t)));
        head.ifPresent(t -> all.add(new Named("head_pressure", Quantity.PRESSURE_ABSOLUTE, t)));
        allowance.ifPresent(t -> all.add(new Named("allowance", Quantity.SPEED, t)));
        return all;
    }

    /** A table with its name. */
    public record Named(String name, Quantity quantity, CurveTable table) {}
}
