package hotday.study.prove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.physics.fluid.Air;
import hotday.signals.channel.Recording;
import hotday.study.events.Event;
import hotday.study.events.Kind;
import hotday.study.prove.MadeRun.Column;
import hotday.vehicle.plant.Input;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a recording to the inputs of the plant: where fuel, fan and air come from, and what is refused. */
class PreparationTest {
    private static final int LONG_ENOUGH = 90; // s
    private static final Column AMBIENT = Column.of("ambient_temperature", "degC", 21.0);
    private static final Column COOLANT = new Column("coolant_temperature", "degC", t -> 60.0 + 0.2 * t);
    private static final Column SPEED = Column.of("vehicle_speed", "km/h", 90.0);
    private static final Column ENGINE = Column.of("engine_speed", "rpm", 2000.0);
    private static final Column AIR = Column.of("air_flow", "g/s", 29.0);

    @TempDir
    private Path folder;

    private VehicleSpec petrol;
    private VehicleSpec diesel;

    @BeforeEach
    void sheets() {
        petrol = MadeRun.petrol(folder);
        diesel = MadeRun.diesel(folder);
    }

    private RunData prepared(VehicleSpec spec, Column... more) {
        return prepared(spec, LONG_ENOUGH, more);
    }

    private RunData prepared(VehicleSpec spec, int seconds, Column... more) {
        List<Column> columns = new ArrayList<>(List.of(AMBIENT, COOLANT));
        columns.addAll(List.of(more));
        return Preparation.of(MadeRun.recording(folder, seconds, columns), spec);
    }

    private static double fuelPower(RunData run) {
        return run.input(run.size() / 2, Input.FUEL_POWER);
    }

    private static List<String> keys(RunData run) {
        return run.findings().stream().map(Finding::key).toList();
    }

    @Test
    void aFuelFlowIsTakenAsItIs() {
        RunData run = prepared(petrol, SPEED, ENGINE, AIR, Column.of("fuel_flow", "g/s", 1.5));
        assertThat(fuelPower(run)).isCloseTo(1.5e-3 * petrol.engine().heatingValue(), within(1.0));
        assertThat(run.sources().get("fuel_flow")).contains("g/s");
        assertThat(keys(run)).doesNotContain("fuel-worked-out");
    }

    @Test
    void airFlowGivesTheFuelOfAPetrolEngine() {
        RunData run = prepared(petrol, SPEED, ENGINE, AIR);
        double fuel = 29e-3 / petrol.engine().stoichiometricRatio();
        assertThat(fuelPower(run)).isCloseTo(fuel * petrol.engine().heatingValue(), within(1.0));
        assertThat(run.sources().get("fuel_flow")).contains("stoichiometric");
        assertThat(keys(run)).doesNotContain("fuel-worked-out");
    }

    @Test
    void airFlowNeverGivesTheFuelOfADiesel() {
        RunData with = prepared(diesel, SPEED, ENGINE, AIR);
        RunData without = prepared(diesel, SPEED, ENGINE);
        assertThat(fuelPower(with)).isPositive().isEqualTo(fuelPower(without));
        assertThat(with.sources().get("fuel_flow")).startsWith("road load");
        assertThat(keys(with)).contains("fuel-worked-out");
    }

    private static Column manifold(double idle, double driving) {
        return new Column("manifold_pressure", "kPa abs", t -> t < 40 ? idle : driving);
    }

    private static final Column STARTS = new Column("vehicle_speed", "km/h", t -> t < 40 ? 0.0 : 90.0);
    private static final Column REVS = new Column("engine_speed", "rpm", t -> t < 40 ? 800.0 : 2000.0);

    @Test
    void boostGivesTheFuelOfATurboDiesel() {
        RunData run = prepared(diesel, STARTS, REVS, AIR, manifold(100.0, 160.0));
        RunData harder = prepared(diesel, STARTS, REVS, AIR, manifold(100.0, 200.0));
        assertThat(run.sources().get("fuel_flow")).startsWith("manifold pressure");
        assertThat(keys(run)).contains("fuel-worked-out");
        assertThat(run.fuelWorkedOut()).isTrue();
        int last = run.size() - 1;
        assertThat(harder.input(last, Input.FUEL_POWER)).isGreaterThan(1.2 * run.input(last, Input.FUEL_POWER));
        // an idling diesel burns some tenth of a gram a second and litre; common practice, no source
        double idle = run.input(20, Input.FUEL_POWER) / diesel.engine().displacement() * 1e-3;
        assertThat(idle).isBetween(2e3, 8e3);
    }

    @Test
    void aDieselThatIsThrottledAtIdleIsNoneAndItsBoostSaysNothing() {
        RunData run = prepared(diesel, STARTS, REVS, manifold(35.0, 160.0));
        assertThat(run.sources().get("fuel_flow")).startsWith("road load");
    }

    @Test
    void aThrottledDieselBurnsItsFilterAndMoreFuelThanItsBoostSays() {
        Column open = new Column("manifold_pressure", "kPa abs", t -> 100.0);
        Column shut = new Column("manifold_pressure", "kPa abs", t -> t < 40 ? 100.0 : 70.0);
        RunData usual = prepared(diesel, STARTS, REVS, open);
        RunData burning = prepared(diesel, STARTS, REVS, shut);
        int last = burning.size() - 1;
        assertThat(keys(usual)).doesNotContain("filter-burning");
        assertThat(keys(burning)).contains("filter-burning");
        assertThat(burning.input(last, Input.FUEL_POWER)).isGreaterThan(1.2 * usual.input(last, Input.FUEL_POWER));
        assertThat(burning.ownFuel()[last]).isEqualTo(burning.input(last, Input.FUEL_POWER));
    }

    @Test
    void airFlowIsRefusedWhereTheIdlingEngineIsNotThrottled() {
        RunData run = prepared(petrol, STARTS, REVS, AIR, manifold(98.0, 160.0));
        assertThat(keys(run)).contains("air-flow-is-no-fuel", "fuel-worked-out");
        assertThat(run.sources().get("fuel_flow")).startsWith("road load");
        RunData throttled = prepared(petrol, STARTS, REVS, AIR, manifold(35.0, 160.0));
        assertThat(throttled.sources().get("fuel_flow")).contains("stoichiometric");
    }

    @Test
    void aSoakedOutsideSensorIsReadAsWhatItFallsTo() {
        List<Column> columns = List.of(
                new Column("ambient_temperature", "degC", t -> 10.0 + 8.0 * Math.exp(-t / 120.0)),
                COOLANT,
                SPEED,
                ENGINE);
        RunData run = Preparation.of(MadeRun.recording(folder, 1200, columns), diesel);
        assertThat(keys(run)).contains("ambient-heat-soaked");
        assertThat(run.input(0, Input.AMBIENT)).isCloseTo(283.15, within(0.1));
    }

    @Test
    void intakeAirStandsForTheOutsideAtAColdStart() {
        Column intake = Column.of("intake_temperature", "degC", 8.0);
        List<Column> cold =
                List.of(new Column("coolant_temperature", "degC", t -> 9.0 + 0.5 * t), SPEED, ENGINE, intake);
        RunData run = Preparation.of(MadeRun.recording(folder, LONG_ENOUGH, cold), diesel);
        assertThat(keys(run)).contains("ambient-from-intake");
        assertThat(run.meanAmbient()).isCloseTo(281.15, within(0.01));
        List<Column> hot = List.of(COOLANT, SPEED, ENGINE, intake);
        Recording warm = MadeRun.recording(folder, LONG_ENOUGH, hot);
        assertThatThrownBy(() -> Preparation.of(warm, diesel))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("ambient_temperature");
    }

    @Test
    void aFuelFlowThatReadsNothingButZeroIsNoFuelFlow() {
        RunData run = prepared(petrol, SPEED, ENGINE, AIR, Column.of("fuel_flow", "g/s", 0.0));
        assertThat(run.sources().get("fuel_flow")).contains("stoichiometric");
        assertThat(fuelPower(run)).isPositive();
    }

    @Test
    void forceAtTheWheelsComesBeforeRoadLoad() {
        RunData light = prepared(diesel, SPEED, ENGINE, Column.of("tractive_force", "N", 500.0));
        RunData heavy = prepared(diesel, SPEED, ENGINE, Column.of("tractive_force", "N", 3000.0));
        assertThat(heavy.sources().get("fuel_flow")).contains("force at the wheels");
        assertThat(keys(heavy)).contains("fuel-worked-out");
        // 2500 N more at 25 m/s is 62.5 kW more at the wheels; an engine turns less than half of its fuel into that
        assertThat(fuelPower(heavy) - fuelPower(light)).isBetween(62.5e3 / 0.5, 62.5e3 / 0.25);
    }

    @Test
    void roadLoadIsTheLastResortAndSaysSo() {
        RunData run = prepared(petrol, SPEED);
        Finding finding = run.findings().stream()
                .filter(f -> f.key().equals("fuel-worked-out"))
                .findFirst()
                .orElseThrow();
        assertThat(finding.message()).contains("grades and load are not seen");
        assertThat(run.sources()).containsEntry("engine_speed", "gears of the sheet");
        // a big estate with a caravan at a steady 90 km/h: 10 to 18 l/100 km are 80 to 145 kW of fuel; common practice,
        // no source
        assertThat(fuelPower(run)).isBetween(80e3, 145e3);
        assertThat(run.input(10, Input.ENGINE_SPEED)).isBetween(100.0, 300.0);
    }

    @Test
    void anEngineThatStandsBurnsNothing() {
        RunData run = prepared(
                petrol,
                Column.of("vehicle_speed", "km/h", 0.0),
                new Column("engine_speed", "rpm", t -> t < 30 ? 0.0 : 700.0),
                Column.of("fuel_flow", "g/s", 0.4));
        for (int i = 0; i < run.size(); i++) {
            double expected =
                    run.time()[i] < 29.9 ? 0.0 : 0.4e-3 * petrol.engine().heatingValue();
            if (Math.abs(run.time()[i] - 30.0) > 1.1) {
                assertThat(run.input(i, Input.FUEL_POWER))
                        .as("at " + run.time()[i])
                        .isCloseTo(expected, within(1.0));
            }
        }
    }

    @Test
    void pressureComesFromBarometerThenAltitudeThenTheSheet() {
        RunData sea = prepared(petrol, SPEED);
        RunData high = prepared(petrol, SPEED, Column.of("altitude", "m", 1500.0));
        RunData read =
                prepared(petrol, SPEED, Column.of("altitude", "m", 1500.0), Column.of("barometer", "kPa abs", 90.0));
        assertThat(sea.input(5, Input.PRESSURE)).isCloseTo(101325.0, within(1.0));
        assertThat(sea.sources().get("barometer")).contains("the sheet's altitude");
        // 84.56 kPa: ISO 2533 standard atmosphere at 1500 m
        assertThat(high.input(5, Input.PRESSURE)).isCloseTo(84_556.0, within(60.0));
        assertThat(high.input(5, Input.PRESSURE)).isEqualTo(Air.isaPressure(1500.0));
        assertThat(read.input(5, Input.PRESSURE)).isCloseTo(90e3, within(0.5));
    }

    @Test
    void aRecordedFanIsTakenAndDrivesNoSchedule() {
        RunData recorded = prepared(diesel, SPEED, Column.of("fan_demand", "%", 45.0));
        assertThat(recorded.fanRecorded()).isTrue();
        assertThat(recorded.schedule()).isEmpty();
        assertThat(recorded.input(5, Input.FAN_DEMAND)).isCloseTo(0.45, within(1e-9));
        RunData own = prepared(diesel, SPEED);
        assertThat(own.fanRecorded()).isFalse();
        assertThat(own.schedule()).isPresent();
    }

    @Test
    void gridAndStartFollowTheRecording() {
        RunData run = prepared(diesel, SPEED);
        assertThat(run.time()).isSorted();
        assertThat(run.time()[run.size() - 1]).isLessThanOrEqualTo(LONG_ENOUGH + 1e-9);
        assertThat(run.size()).isEqualTo((int) (LONG_ENOUGH / run.step()));
        assertThat(run.startCoolant()).isCloseTo(273.15 + 60.0, within(0.3));
        assertThat(run.hasOil()).isFalse();
        assertThat(run.hotStart()).isTrue();
    }

    @Test
    void withoutOutsideTemperatureOrCoolantARunIsRefused() {
        assertThatThrownBy(
                        () -> Preparation.of(MadeRun.recording(folder, LONG_ENOUGH, List.of(COOLANT, SPEED)), petrol))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("ambient_temperature")
                .hasMessageContaining("constant");
        assertThatThrownBy(
                        () -> Preparation.of(MadeRun.recording(folder, LONG_ENOUGH, List.of(AMBIENT, SPEED)), petrol))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("coolant_temperature");
    }

    @Test
    void oneChannelAloneIsRefusedWithAllThatIsMissing() {
        InputException coolant = catchThrowableOfType(
                InputException.class,
                () -> Preparation.of(MadeRun.recording(folder, LONG_ENOUGH, List.of(COOLANT)), petrol));
        assertThat(coolant.findings())
                .allMatch(f -> f.key().equals("channel-missing"))
                .extracting(f -> f.values().get("channel"))
                .containsExactly("ambient_temperature", "vehicle_speed", "fuel_flow");
        InputException speed = catchThrowableOfType(
                InputException.class,
                () -> Preparation.of(MadeRun.recording(folder, LONG_ENOUGH, List.of(SPEED)), petrol));
        assertThat(speed.findings())
                .extracting(f -> f.values().get("channel"))
                .containsExactly("coolant_temperature", "ambient_temperature");
    }

    @Test
    void aRunOfLessThanAMinuteIsRefusedWithItsLength() {
        assertThatThrownBy(() -> prepared(petrol, 45, SPEED))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("45 s")
                .hasMessageContaining("60 s");
        assertThat(prepared(petrol, 60, SPEED).size()).isEqualTo(120);
    }

    /** Switching that is likely enough stands in for what nobody recorded; what is recorded, or hardly told, is left alone. */
    @Test
    void whatSwitchedIsUsedWhereNobodyRecordedIt() {
        VehicleSpec unknown =
                MadeRun.sheet(folder.resolve("unknown"), "heron", "control: schedule", "control: unknown");
        List<Column> columns = List.of(
                new Column("coolant_temperature", "degC", t -> 90.0 + 0.01 * (t % 100)),
                Column.of("vehicle_speed", "km/h", 0.0),
                Column.of("engine_speed", "rpm", 700.0),
                Column.of("fuel_flow", "g/s", 0.3),
                Column.of("ambient_temperature", "degC", 21.0));
        Recording recording = MadeRun.recording(folder.resolve("told"), 600, columns);
        List<Event> events = List.of(
                event(100.0, Kind.FAN_ON, 0.8),
                event(160.0, Kind.FAN_OFF, 0.7),
                event(300.0, Kind.FAN_ON, 0.4),
                event(360.0, Kind.FAN_OFF, 0.4),
                event(400.0, Kind.COMPRESSOR_ON, 0.9),
                event(450.0, Kind.COMPRESSOR_OFF, 0.9));
        RunData run = Preparation.of(recording, unknown, events);
        for (int i = 0; i < run.size(); i++) {
            double t = run.time()[i];
            assertThat(run.input(i, Input.FAN_DEMAND)).isEqualTo(t > 100.0 && t <= 160.0 ? 1.0 : 0.0);
            assertThat(run.input(i, Input.COMPRESSOR)).isEqualTo(t > 400.0 && t <= 450.0 ? 1.0 : 0.0);
        }
        assertThat(run.fanRecorded()).isTrue();
        assertThat(run.findings())
                .filteredOn(f -> f.key().equals("switching-told"))
                .hasSize(2);
        RunData without = Preparation.of(recording, unknown);
        assertThat(without.fanRecorded()).isFalse();
        RunData scheduled = Preparation.of(recording, MadeRun.petrol(folder.resolve("scheduled")), events);
        assertThat(scheduled.schedule()).isPresent();
    }

    private static Event event(double time, Kind kind, double confidence) {
        return new Event("made", time, kind, 370.0, "K", confidence, "told");
    }
}
