package hotday.study.prove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.signals.channel.Fact;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which actuators count as unknown, and that their branches are all there with weights adding up to one. */
class BranchesTest {
    @TempDir
    private static Path folder;

    private VehicleSpec unknownFan;
    private VehicleSpec ownSchedule;
    private VehicleSpec withoutCooling;

    @BeforeEach
    void sheets() {
        unknownFan = MadeRun.sheet(folder, "oxbow", "control: schedule", "control: unknown");
        ownSchedule = MadeRun.diesel(folder);
        withoutCooling = MadeRun.without(folder, "oxbow", "air_conditioning:", "cabin:", "condenser:");
    }

    private static RunData run(double degC, Fact fan, Fact heater, Fact airConditioning) {
        return MadeRun.run(new double[] {360, 361, 362}, 273.15 + degC, fan, heater, airConditioning);
    }

    @ParameterizedTest
    @CsvSource({
        "  5, UNKNOWN, UNKNOWN, UNKNOWN, 'FAN HEATER'",
        " 16, UNKNOWN, UNKNOWN, UNKNOWN, 'FAN HEATER AIR_CONDITIONING'", // both may be on from 15 to 18 degC
        " 25, UNKNOWN, UNKNOWN, UNKNOWN, 'FAN AIR_CONDITIONING'",
        " 16, OFF,     UNKNOWN, UNKNOWN, 'HEATER AIR_CONDITIONING'",
        " 16, ON,      OFF,     UNKNOWN, AIR_CONDITIONING",
        " 16, UNKNOWN, ON,      OFF,     FAN",
        " 16, OFF,     OFF,     ON,      ''",
    })
    void weatherAndStatedFactsDecideWhatIsUnknown(
            double degC, Fact fan, Fact heater, Fact airConditioning, String expected) {
        List<HiddenState> unknown = Branches.unknown(run(degC, fan, heater, airConditioning), unknownFan, false);
        assertThat(String.join(" ", unknown.stream().map(Enum::name).toList())).isEqualTo(expected);
        List<Branches.Combination> all = Branches.of(run(degC, fan, heater, airConditioning), unknownFan, false);
        assertThat(all).hasSize(1 << unknown.size());
        assertThat(all.stream().mapToDouble(Branches.Combination::weight).sum()).isCloseTo(1.0, within(1e-12));
        Set<Branch> different = new HashSet<>();
        all.forEach(c -> different.add(c.branch()));
        assertThat(different).hasSameSizeAs(all);
        assertThat(all).allSatisfy(c -> assertThat(c.labels().keySet()).containsExactlyInAnyOrderElementsOf(unknown));
    }

    @Test
    void aFanOfTheOwnScheduleOrARecordedFanIsNotUnknown() {
        RunData run = run(25, Fact.UNKNOWN, Fact.OFF, Fact.OFF);
        assertThat(Branches.unknown(run, ownSchedule, false)).isEmpty();
        RunData recorded = MadeRun.run(new double[] {360, 361}, 298.0, Fact.UNKNOWN, Fact.OFF, Fact.OFF, true);
        assertThat(Branches.unknown(recorded, unknownFan, false)).isEmpty();
    }

    @Test
    void aHeaterByHabitIsNotCountedTwice() {
        RunData run = run(5, Fact.OFF, Fact.UNKNOWN, Fact.OFF);
        assertThat(Branches.heaterUnknown(run)).isTrue();
        assertThat(Branches.unknown(run, ownSchedule, false)).containsExactly(HiddenState.HEATER);
        assertThat(Branches.unknown(run, ownSchedule, true)).isEmpty();
        assertThat(Branches.plain(run, true).heater()).isEqualTo(1.0);
        assertThat(Branches.plain(run, false).heater()).isZero();
    }

    @Test
    void aCarWithoutAirConditioningHasNoneToDoubt() {
        RunData run = run(30, Fact.OFF, Fact.OFF, Fact.UNKNOWN);
        assertThat(Branches.unknown(run, ownSchedule, false)).containsExactly(HiddenState.AIR_CONDITIONING);
        assertThat(Branches.unknown(run, withoutCooling, false)).isEmpty();
    }

    @Test
    void whatIsStatedOnIsOnInEveryBranch() {
        List<Branches.Combination> all = Branches.of(run(5, Fact.UNKNOWN, Fact.ON, Fact.ON), unknownFan, false);
        assertThat(all).hasSize(2).allSatisfy(c -> {
            assertThat(c.branch().heater()).isEqualTo(1.0);
            assertThat(c.branch().airConditioning()).isTrue();
        });
    }
}
