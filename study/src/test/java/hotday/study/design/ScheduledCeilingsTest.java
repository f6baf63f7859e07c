package hotday.study.design;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.study.demo.DemoShop;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.Hardware;
import hotday.vehicle.cases.Limit;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.cases.Trial;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.sheet.ScheduleFile;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScheduledCeilingsTest {
    /** Steep where the head pressure of a mild day lies: on some days its idle comes to no rest that could be found. */
    private static final String STEEP = """
            schedule:
              coolant: [[92.5 degC, 25 %], [104.5 degC, 39 %], [107 degC, 100 %]]
              on: 92.5 degC
              off: 87 degC
              gearbox: [[106 degC, 25 %], [118 degC, 100 %]]
              gearbox_hysteresis: 5 K
              head_pressure: [[23.15 bar abs, 28 %], [23.55 bar abs, 45 %], [25.15 bar abs, 100 %]]
              head_hysteresis: 100 kPa
              allowance: [[30 km/h, 0 %], [80 km/h, 41 %]]
              allowance_ends: 107 degC
            """;

    @TempDir
    private Path folder;

    /** A case that moves needs no rest to begin from; that none is found is no limit that gives way. */
    @Test
    void aDayOnWhichNoRestIsFoundToBeginFromIsNoGap() throws IOException {
        DemoShop.create(folder.resolve("shop"));
        VehicleSpec sheet =
                BuildSheet.read(folder.resolve("shop/builds/oxbow/build.yaml")).vehicle();
        FanSchedule steep = ScheduleFile.read(Files.writeString(folder.resolve("steep.yaml"), STEEP), sheet)
                .schedule();
        VehicleSpec spec = sheet.with(steep);
        Plant plant = Plant.compile(spec);
        Case traffic = StandardCases.all().stream()
                .filter(c -> c.id().equals("city-trace"))
                .findFirst()
                .orElseThrow();
        double[] restless = IntStream.rangeClosed(90, 110)
                .mapToDouble(tenths -> 273.15 + tenths / 10.0)
                .filter(day -> !new Trial(spec, plant, traffic, Hardware.USUAL).settleBySchedule(day))
                .toArray();
        assertThat(restless).as("days without a rest; none is left to test").isNotEmpty();
        for (double day : restless) {
            Passage passage = new Rehearsal(spec, plant, traffic, day, Hardware.USUAL).passage();
            Passage next = new Rehearsal(spec, plant, traffic, day + 0.05, Hardware.USUAL).passage();
            assertThat(passage.holds()).as("%.1f degC", day - 273.15).isTrue();
            double room = passage.headroom().get(Limit.SUPPLY);
            assertThat(room - next.headroom().get(Limit.SUPPLY)).isBetween(-0.05, 0.05);
        }
    }
}
