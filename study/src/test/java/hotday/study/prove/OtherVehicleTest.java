package hotday.study.prove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.core.finding.Finding;
import hotday.study.prove.MadeRun.Column;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Gears, revs and fuel of made-up drives against the sheet of the demo's pick-up. */
class OtherVehicleTest {
    private static final DoubleUnaryOperator FASTER = t -> 50.0 + 0.2 * t; // km/h
    private static final double MILD_LOAD = 2.0; // g/s

    @TempDir
    private Path folder;

    private VehicleSpec spec;

    @BeforeEach
    void sheet() {
        spec = MadeRun.diesel(folder);
    }

    private List<Finding> evidence(DoubleUnaryOperator speed, DoubleUnaryOperator rpm, double fuel) {
        return new OtherVehicle(spec)
                .evidence(Preparation.of(
                        MadeRun.recording(
                                folder,
                                300,
                                List.of(
                                        Column.of("ambient_temperature", "degC", 21.0),
                                        new Column("coolant_temperature", "degC", t -> 70.0 + 0.05 * t),
                                        new Column("vehicle_speed", "km/h", speed),
                                        new Column("engine_speed", "rpm", rpm),
                                        Column.of("fuel_flow", "g/s", fuel))),
                        spec));
    }

    private static List<Object> kinds(List<Finding> evidence) {
        return evidence.stream().map(f -> f.values().get("evidence")).toList();
    }

    /** rpm per km/h of a gear, 1 is the lowest. */
    private double gear(int number) {
        return GearLines.of(spec)[number - 1] / (Math.PI / 30.0) / 3.6;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.96, 1.0, 1.04}) // a worn tyre, a speedometer that reads high
    void theVehiclesOwnGearsAreKnownAgain(double tyre) {
        assertThat(evidence(FASTER, t -> tyre * gear(t < 150 ? 7 : 8) * FASTER.applyAsDouble(t), MILD_LOAD))
                .isEmpty();
    }

    @Test
    void aGearTheSheetHasNotGotIsAnotherVehicle() {
        double between = Math.sqrt(gear(7) * gear(8));
        List<Finding> evidence = evidence(FASTER, t -> between * FASTER.applyAsDouble(t), MILD_LOAD);
        assertThat(kinds(evidence)).containsExactly("gears");
        assertThat(evidence.get(0).key()).isEqualTo("other-vehicle");
        assertThat((double) evidence.get(0).values().get("rpm_per_km_h")).isCloseTo(between, within(0.1));
    }

    /** A slipping converter at one speed: no gear is seen there. */
    @Test
    void oneSpeedAloneIsNoGear() {
        assertThat(evidence(t -> 60.0, t -> 1800.0, MILD_LOAD)).isEmpty();
    }

    @Test
    void anEngineThatTurnsFasterThanTheSheetsIsAnotherVehicle() {
        double rpm = 1.45 * spec.engine().ratedSpeed() / (Math.PI / 30.0);
        assertThat(kinds(evidence(t -> 0.0, t -> rpm, MILD_LOAD))).containsExactly("engine-speed");
        assertThat(evidence(t -> 0.0, t -> rpm / 1.2, MILD_LOAD)).isEmpty();
    }

    @Test
    void moreFuelThanRatedPowerAsksForIsAnotherVehicle() {
        double rated = spec.engine()
                        .fuelLine()
                        .fuelPower(spec.engine().ratedPower(), spec.engine().ratedSpeed())
                / spec.engine().heatingValue()
                * 1e3;
        assertThat(kinds(evidence(t -> 60.0, t -> 1800.0, 1.4 * rated))).containsExactly("fuel");
        assertThat(evidence(t -> 60.0, t -> 1800.0, 1.2 * rated)).isEmpty();
    }
}
