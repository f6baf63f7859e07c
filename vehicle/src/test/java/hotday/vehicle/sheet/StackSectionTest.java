package hotday.vehicle.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import hotday.core.finding.InputException;
import hotday.vehicle.airpath.Rectangle;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.VehicleSpec.CoreKind;
import hotday.vehicle.spec.VehicleSpec.PlacedCore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StackSectionTest {
    private static final String SHEET = String.join(
            "\n",
            "build: {name: Plover}",
            "design_day: {ambient: 43 degC}",
            "vehicle: {mass: 1600 kg}",
            "engine: {fuel: diesel, displacement: 2.5 l, rated_power: 120 kW, charging: turbo}",
            "gearbox: {cooler: front}",
            "air_conditioning: {}",
            "radiator: {width: 600 mm, height: 450 mm}",
            "fan: {free_flow: 2500 m3/h, stall_pressure: 250 Pa, diameter: 400 mm}",
            "");

    @TempDir
    private Path folder;

    private VehicleSpec.Stack read(String stack) throws IOException {
        Path file = folder.resolve("build.yaml");
        Files.writeString(file, SHEET + stack);
        return BuildSheet.read(file).vehicle().stack();
    }

    @Test
    void leftOutAUsualStackIsAssumed() throws IOException {
        VehicleSpec.Stack stack = read("");
        assertThat(stack.cores())
                .extracting(PlacedCore::kind)
                .containsExactly(
                        CoreKind.GEARBOX_COOLER, CoreKind.CONDENSER, CoreKind.CHARGE_AIR_COOLER, CoreKind.RADIATOR);
        assertThat(stack.width()).isEqualTo(0.6);
        assertThat(stack.shroud()).isEqualTo(new Rectangle(0, 0, 0.6, 0.45));
        assertThat(stack.fanDiameter()).isEqualTo(0.4);
    }

    /** Typed from the lower left corner, kept from the upper left one. */
    @Test
    void placesCountFromTheLowerLeftCorner() throws IOException {
        VehicleSpec.Stack stack =
                read("stack: {condenser: {left: 20 mm, bottom: 30 mm, width: 500 mm, height: 300 mm}}\n");
        Rectangle place = stack.cores().get(1).place();
        assertThat(place.left()).isCloseTo(0.02, within(1e-9));
        assertThat(place.top()).isCloseTo(0.45 - 0.03 - 0.3, within(1e-9));
        assertThat(place.right()).isCloseTo(0.52, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "condenser: {width: 700 mm} | the condenser ends 700 mm right of the left edge, but the face is 600 mm wide",
                "condenser: {height: 300 mm, bottom: 200 mm} | the condenser ends 500 mm above the lower edge, but the face is 450 mm high",
                "gearbox_cooler: {layer: 2} | the gearbox cooler both stand in layer 2 and overlap by 270 mm x 158 mm",
                "shroud: {width: 350 mm} | a fan of 400 mm, but the shroud is 350 mm x 450 mm: 350 mm is the most",
                "fans: 2 | two fans of 400 mm, but the shroud is 600 mm x 450 mm: 300 mm is the most",
                "width: 500 mm | the radiator ends 600 mm right of the left edge, but the face is 500 mm wide",
                "condenser: {depht: 20 mm} | (did you mean 'depth'?)",
                "flap_area: 3 | unit"
            })
    void whatDoesNotFitIsNamedWithBothNumbers(String typed, String said) throws IOException {
        InputException refused = catchThrowableOfType(InputException.class, () -> read("stack: {" + typed + "}\n"));
        assertThat(refused).as(typed).isNotNull();
        assertThat(refused.getMessage())
                .contains(said.replace("the gearbox cooler both", "both"))
                .contains("build.yaml:");
    }

    @Test
    void aCoreThatTheCarDoesNotHaveIsRefused() throws IOException {
        Path file = folder.resolve("build.yaml");
        Files.writeString(file, SHEET.replace("air_conditioning: {}\n", "") + "stack: {condenser: {layer: 1}}\n");
        InputException refused = catchThrowableOfType(InputException.class, () -> BuildSheet.read(file));
        assertThat(refused.getMessage()).contains("'stack.condenser'").contains("no 'air_conditioning'");
    }

    /** The default cores lie inside the published data; a deep core is used, and said to be a guess. */
    @Test
    void finsOutsideThePublishedDataAreFlaggedWithTheRange() throws IOException {
        Path file = folder.resolve("build.yaml");
        Files.writeString(file, SHEET);
        assertThat(BuildSheet.read(file).remarks()).isEmpty();
        Files.writeString(file, SHEET + "stack: {charge_air_cooler: {depth: 100 mm}}\n");
        assertThat(BuildSheet.read(file).remarks()).anySatisfy(remark -> {
            assertThat(remark.key()).isEqualTo("outside-published-data");
            assertThat(remark.message()).contains("100").contains("57.4").contains("mm");
            assertThat(remark.place().orElseThrow().line()).isEqualTo(9);
        });
    }

    /** Two measured points of one core: the better factor lies between those of each, and each heat is nearly met. */
    @Test
    void severalTestPointsGiveOneFactor() throws IOException {
        String one = "{heat: 40 kW, air_speed: 4 m/s, coolant_flow: 90 l/min, inlet_difference: 60 K}";
        String two = "{heat: 27 kW, air_speed: 2 m/s, coolant_flow: 60 l/min, inlet_difference: 60 K}";
        double first = conductance(one);
        double second = conductance(two);
        double both = conductance("[" + one + ", " + two + "]");
        assertThat(both).isBetween(Math.min(first, second), Math.max(first, second));
    }

    private double conductance(String test) throws IOException {
        Path file = folder.resolve("build.yaml");
        Files.writeString(file, SHEET.replace("height: 450 mm}", "height: 450 mm, test: " + test + "}"));
        return BuildSheet.read(file).vehicle().radiator().airConductance();
    }
}
