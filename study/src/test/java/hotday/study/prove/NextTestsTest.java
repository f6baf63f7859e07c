package hotday.study.prove;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.core.finding.Wording;
import hotday.signals.channel.Fact;
import hotday.vehicle.cases.AmbientCeiling;
import hotday.vehicle.cases.Ceiling;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NextTestsTest {
    @TempDir
    private Path folder;

    private List<NextTest> tests(VehicleSpec spec, int kase) {
        FittedVehicle sheet = FittedVehicle.ofSheet(new Unknowns(Plant.compile(spec), false, false));
        double[] coolant = new double[100];
        Arrays.fill(coolant, 363.0);
        RunData mild = MadeRun.run(coolant, MadeRun.MILD, Fact.OFF, Fact.OFF, Fact.OFF);
        for (int i = 0; i < mild.size(); i++) {
            mild.inputs()[i * Input.COUNT + Input.PRESSURE.index()] = 101325.0;
        }
        Ceiling ceiling = new AmbientCeiling(spec)
                .find(sheet.unknowns().plant(sheet.z()), StandardCases.steady().get(kase), 0.0);
        return new NextTests(sheet, spec, mild).of(new CeilingReport(ceiling, 0.0, 0.0, 0.0, 0.0));
    }

    /** A climb is told most by a climb whose coolant no thermostat holds, least by an idle whose fan blows everything away. */
    @Test
    void aClimbIsAskedForWhereTheClimbIsInDoubt() {
        List<NextTest> all = tests(MadeRun.petrol(folder), 3);
        assertThat(all.get(0).id()).isEqualTo("open-climb");
        assertThat(all.get(all.size() - 1).id()).isEqualTo("idle-cooled-fan-full");
        assertThat(all).allSatisfy(t -> {
            assertThat(t.narrowing()).isBetween(0.0, 1.0);
            assertThat(t.caution().said(Wording.FILE)).isNotBlank();
            assertThat(t.kase()).isEqualTo("loaded-climb");
        });
        assertThat(all.get(0).narrowing()).isGreaterThan(3.0 * last(all));
    }

    /** Of the ceilings that leave open whether the design day is held the widest; without one, the lowest. */
    @Test
    void theOpenQuestionIsAskedFirst() {
        CeilingReport low = report(290.0, 300.0);
        CeilingReport open = report(305.0, 325.0);
        CeilingReport narrow = report(314.0, 320.0);
        CeilingReport high = report(330.0, 350.0);
        assertThat(NextTests.worst(List.of(low, narrow, open, high))).containsSame(open);
        assertThat(NextTests.worst(List.of(high, low))).containsSame(low);
    }

    private CeilingReport report(double from, double to) {
        VehicleSpec spec = MadeRun.petrol(folder);
        Ceiling any = new AmbientCeiling(spec)
                .find(Plant.compile(spec), StandardCases.steady().get(0), 0.0);
        return new CeilingReport(any, from, to, 0.5, 316.0);
    }

    private static double last(List<NextTest> all) {
        return all.get(all.size() - 1).narrowing();
    }

    @Test
    void aVehicleWithoutAirConditioningIsNotToldToSwitchItOn() {
        VehicleSpec spec = MadeRun.without(folder, "heron", "air_conditioning:", "cabin:", "head_pressure:");
        assertThat(tests(spec, 3)).noneMatch(t -> t.id().contains("cooled"));
    }
}
