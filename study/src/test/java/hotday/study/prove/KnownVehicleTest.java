package hotday.study.prove;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.signals.channel.ChannelMap;
import hotday.study.demo.DemoShop;
import hotday.study.demo.VirtualCar;
import hotday.vehicle.cases.AmbientCeiling;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.plant.Coefficient;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a recorded run tells about a car whose truth is known. */
class KnownVehicleTest {
    private static final int DRAWS = 40;

    @TempDir
    private Path folder;

    @Test
    void aSheetAloneIsTheVehicleOfTheSheet() {
        VehicleSpec spec = MadeRun.diesel(folder);
        KnownVehicle known = KnownVehicle.ofSheet(spec);
        assertThat(known.runs()).isZero();
        assertThat(known.likeliest().coefficients())
                .containsExactly(Plant.compile(spec).coefficients());
        assertThat(known.possible(3, 7).get(2).coefficients())
                .containsExactly(known.possible(3, 7).get(2).coefficients())
                .isNotEqualTo(known.possible(3, 8).get(2).coefficients());
    }

    @Test
    @Tag("slow")
    void aRunNarrowsIt() {
        DemoShop shop = DemoShop.create(folder.resolve("shop"));
        VirtualCar car = shop.drive("heron", 3);
        VehicleSpec spec = BuildSheet.read(shop.build("heron")).vehicle();
        KnownVehicle known = KnownVehicle.ofRuns(new ProveRequest(
                spec,
                List.of(),
                List.of(ChannelMap.read(shop.channels()).recording(car.commissioning())),
                List.of(),
                false,
                1,
                2,
                (stage, share) -> {},
                () -> false));
        assertThat(known.runs()).isEqualTo(1);
        Plant sheet = Plant.compile(spec);
        assertThat(known.likeliest().coefficient(Coefficient.THERMOSTAT_HYSTERESIS))
                .isEqualTo(sheet.coefficient(Coefficient.THERMOSTAT_HYSTERESIS));
        Case climb = StandardCases.steady().stream()
                .filter(c -> "loaded-climb".equals(c.id()))
                .findFirst()
                .orElseThrow();
        DoubleSummaryStatistics before = ceilings(spec, KnownVehicle.ofSheet(spec), climb);
        DoubleSummaryStatistics after = ceilings(spec, known, climb);
        double truth = car.truth(List.of(climb)).get(0).ambient();
        assertThat(after.getMax() - after.getMin()).isLessThan(0.5 * (before.getMax() - before.getMin()));
        assertThat(truth).isBetween(after.getMin(), after.getMax());
        double fitted =
                new AmbientCeiling(spec).find(known.likeliest(), climb, 0.0).ambient();
        double guessed = new AmbientCeiling(spec).find(sheet, climb, 0.0).ambient();
        assertThat(Math.abs(fitted - truth)).isLessThan(Math.abs(guessed - truth));
    }

    private static DoubleSummaryStatistics ceilings(VehicleSpec spec, KnownVehicle known, Case kase) {
        AmbientCeiling ceiling = new AmbientCeiling(spec);
        return known.possible(DRAWS, 1).stream()
                .mapToDouble(plant -> ceiling.find(plant, kase, 0.0).ambient())
                .summaryStatistics();
    }
}
