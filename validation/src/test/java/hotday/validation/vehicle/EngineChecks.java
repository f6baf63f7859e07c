package hotday.validation.vehicle;

import hotday.validation.Check;
import hotday.validation.CommandLineRun;
import hotday.validation.Topic;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Case.Conditioning;
import hotday.vehicle.cases.Case.Engine;
import hotday.vehicle.cases.Case.Phase;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.cases.Trial;
import hotday.vehicle.plant.Equilibrium;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Output;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.plant.Run;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.VehicleSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Full load, idle and boiling of the demo builds, settled as whole vehicles. What misses its range is in docs/physics/engine-heat.md. */
public final class EngineChecks implements Topic {
    private static final double FOOT = 0.3048;
    private static final double CELSIUS = 273.15;
    private static final double WORKSHOP = 21.0 + CELSIUS;
    private static final String FUEL = "US DOE Fact of the Week 861 (2015), no accessories";
    private static final String BALANCE = "Heywood 1988, table 12.1, full load; from memory";
    private static final String SHARE = "hot idle; from memory";
    private static final String IN_GEAR =
            "in gear with A/C and a high electric load (fan full on), design day; from memory";
    private static final String BOILING = "ideal mixture, recomputed; meets service anchors at 0 and 15 psi";

    @Override
    public String title() {
        return "Demo builds as whole vehicles: full load, idle, boiling";
    }

    @Override
    public List<Check> checks() {
        List<Check> out = new ArrayList<>();
        VehicleSpec petrol = sheet("heron");
        VehicleSpec diesel = sheet("oxbow");
        Run full = fullLoad(diesel);
        out.add(Check.inside("diesel 3.0 l, full load: brake, of fuel", brake(full), 34, 38, "%", BALANCE));
        out.add(Check.inside("diesel 3.0 l, full load: coolant heat of fuel", share(full), 16, 35, "%", BALANCE));
        Run petrolFull = fullLoad(petrol);
        out.add(Check.inside("petrol 4.8 l, full load: brake, of fuel", brake(petrolFull), 25, 28, "%", BALANCE));
        out.add(Check.inside("petrol 4.8 l, full load: coolant heat of fuel", share(petrolFull), 17, 26, "%", BALANCE));
        Run petrolIdle = parked(petrol, WORKSHOP);
        Run dieselIdle = parked(diesel, WORKSHOP);
        out.add(Check.inside("petrol 4.8 l, park: fuel", fuel(petrol, petrolIdle), 0.30, 0.32, "l/h per l", FUEL));
        out.add(Check.inside("diesel 3.0 l, park: fuel", fuel(diesel, dieselIdle), 0.17, 0.32, "l/h per l", FUEL));
        out.add(Check.inside("petrol 4.8 l, park: coolant heat of fuel", share(petrolIdle), 35, 50, "%", SHARE));
        out.add(Check.inside("diesel 3.0 l, park: coolant heat of fuel", share(dieselIdle), 35, 50, "%", SHARE));
        out.add(Check.inside("petrol 4.8 l, hot idle over park: coolant heat", inGear(petrol), 1.5, 2.2, "-", IN_GEAR));
        out.add(Check.inside("diesel 3.0 l, hot idle over park: coolant heat", inGear(diesel), 1.5, 2.2, "-", IN_GEAR));
        boiling(out, petrol);
        return out;
    }

    private static void boiling(List<Check> out, VehicleSpec spec) {
        double[][] rows = {{0, 130.8}, {5000, 128.1}, {10000, 125.5}};
        for (double[] row : rows) {
            double ours = inPark(spec, row[0] * FOOT).boiling() - CELSIUS;
            out.add(Check.near(
                    "16 psi cap at " + (int) row[0] + " ft: coolant boils", ours, row[1], 1.0, "degC", BOILING));
        }
    }

    /** Rated speed and brake power at 40 m/s and 0 degC, fan full on, so that coolant stays where a test bed holds it. */
    private static Run fullLoad(VehicleSpec spec) {
        Trial trial = inPark(spec, 0.0);
        trial.settle(CELSIUS, 1.0);
        Run run = trial.run();
        run.set(Input.SPEED, 40.0);
        run.set(Input.ENGINE_SPEED, spec.engine().ratedSpeed());
        run.set(Input.GEARBOX_SPEED, spec.engine().ratedSpeed());
        run.set(Input.CONVERTER_HEAT, 0.0);
        Equilibrium rest = new Equilibrium(run);
        double crank = spec.engine().ratedPower();
        for (int i = 0; i < 3; i++) {
            run.set(Input.CRANK_POWER, crank);
            run.set(Input.GEAR_POWER, crank);
            if (!rest.settle()) {
                throw new IllegalStateException("full load does not settle");
            }
            crank += spec.engine().ratedPower() - run.get(Output.BRAKE_POWER);
        }
        return run;
    }

    /** Coolant heat of the shipped hot idle with the fan full on over that in park without accessories, both on the design day. */
    private static double inGear(VehicleSpec spec) {
        Case hotIdle = StandardCases.steady().get(0);
        Trial loaded = new Trial(spec, Plant.compile(spec), hotIdle);
        if (!loaded.settle(spec.designAmbient(), 1.0)) {
            throw new IllegalStateException("the hot idle does not settle");
        }
        return coolantHeat(loaded.run()) / coolantHeat(parked(spec, spec.designAmbient()));
    }

    private static Run parked(VehicleSpec spec, double ambient) {
        Trial trial = inPark(spec, 0.0);
        if (!trial.settleBySchedule(ambient)) {
            throw new IllegalStateException("the idle does not settle");
        }
        return trial.run();
    }

    private static Trial inPark(VehicleSpec spec, double altitude) {
        Phase phase = new Phase(
                Double.POSITIVE_INFINITY, 0.0, 0.0, Engine.PARK, false, Conditioning.OFF, 0.0, 0.0, Optional.empty());
        Case.Day day = new Case.Day(0.0, 0.4, OptionalDouble.of(altitude));
        Case kase = new Case("standing", "standing", Case.Start.SOAKED, day, List.of(phase), List.of());
        return new Trial(spec, Plant.compile(spec), kase);
    }

    /** l/h per litre of displacement. */
    private static double fuel(VehicleSpec spec, Run run) {
        VehicleSpec.Engine e = spec.engine();
        return 3600.0 * run.get(Output.FUEL_POWER) / (e.heatingValue() * e.fuelDensity()) / e.displacement();
    }

    /** %. */
    private static double brake(Run run) {
        return 100.0 * run.get(Output.BRAKE_POWER) / run.get(Output.FUEL_POWER);
    }

    /** %. */
    private static double share(Run run) {
        return 100.0 * coolantHeat(run) / run.get(Output.FUEL_POWER);
    }

    /** What the engine gives to its coolant, W. */
    private static double coolantHeat(Run run) {
        return run.get(Output.RADIATOR_HEAT) + run.get(Output.HEATER_HEAT) - run.get(Output.GEARBOX_TANK_HEAT);
    }

    private static VehicleSpec sheet(String build) {
        String builds = "study/src/main/resources/hotday/study/demo/builds/";
        return BuildSheet.read(CommandLineRun.repository(builds + build + "/build.yaml"))
                .vehicle();
    }
}
