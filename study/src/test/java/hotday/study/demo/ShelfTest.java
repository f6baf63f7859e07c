package hotday.study.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hotday.core.finding.InputException;
import hotday.core.typed.TypedFile;
import hotday.core.typed.TypedMap;
import hotday.vehicle.sheet.Assumption;
import hotday.vehicle.sheet.BuildSheet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shelf of the demo shop, and what a sheet takes from it. */
class ShelfTest {
    @TempDir
    private Path folder;

    private DemoShop shop;

    @BeforeEach
    void create() {
        shop = DemoShop.create(folder);
    }

    /** A car of a size that every part fits into. */
    private static Map<String, String> roomy() {
        Map<String, String> blocks = new LinkedHashMap<>();
        blocks.put("build", "{name: Roomy}");
        blocks.put("design_day", "{ambient: 43 degC}");
        blocks.put("vehicle", "{mass: 2000 kg}");
        blocks.put("engine", "{fuel: diesel, displacement: 3 l, rated_power: 170 kW, charging: turbo}");
        blocks.put("gearbox", "{cooler: [tank, front]}");
        blocks.put("radiator", "{width: 1200 mm, height: 900 mm}");
        blocks.put("fan", "{free_flow: 3000 m3/h, stall_pressure: 250 Pa}");
        blocks.put("air_conditioning", "{}");
        return blocks;
    }

    private BuildSheet read(Map<String, String> blocks) throws IOException {
        StringBuilder text = new StringBuilder();
        blocks.forEach(
                (key, value) -> text.append(key).append(": ").append(value).append('\n'));
        return BuildSheet.read(Files.writeString(folder.resolve("build.yaml"), text));
    }

    @Test
    void everyPartOfTheShelfCanBeBuiltIn() throws IOException {
        int parts = 0;
        for (String file : DemoShop.SHELF) {
            TypedMap shelf =
                    TypedFile.read(folder.resolve("shelf").resolve(file)).root();
            for (String kind : shelf.keys()) {
                for (String id : shelf.map(kind).orElseThrow().keys()) {
                    Map<String, String> blocks = roomy();
                    String asked = "{part: " + id + "}";
                    String[] names = kind.split("\\.");
                    blocks.put(names[0], names.length == 1 ? asked : "{" + names[1] + ": " + asked + "}");
                    assertThat(read(blocks).vehicle().name())
                            .as(kind + " " + id)
                            .isEqualTo("Roomy");
                    parts++;
                }
            }
        }
        assertThat(parts).isGreaterThan(30);
    }

    /** Demo builds say enough to be whole cars: what is left open is of the kind nobody measures. */
    @Test
    void theDemoBuildsUseTheShelf() {
        BuildSheet heron = BuildSheet.read(shop.build("heron"));
        assertThat(heron.vehicle().gearbox().ratios()).hasSize(8);
        assertThat(heron.vehicle().gearbox().finalDrive()).isEqualTo(3.42);
        assertThat(heron.assumptions())
                .extracting(Assumption::key)
                .doesNotContain("fan.diameter", "gearbox.converter", "electrical.alternator", "gearbox.idle_drag");
        BuildSheet oxbow = BuildSheet.read(shop.build("oxbow"));
        assertThat(oxbow.vehicle().gearboxFluid().coolers()).hasSize(2);
        assertThat(oxbow.vehicle().electrical().current()).endsWith(180.0);
    }

    /** The sheet wins over the part, also inside a block of the part. */
    @Test
    void whatTheSheetSaysWins() throws IOException {
        Map<String, String> blocks = roomy();
        blocks.put("gearbox", "{part: automatic-8-speed, efficiency: 91 %, converter: {lock_gear: 5}}");
        var gearbox = read(blocks).vehicle().gearbox();
        assertThat(gearbox.efficiency()).isEqualTo(0.91);
        assertThat(gearbox.converter().lockGear()).isEqualTo(5);
        assertThat(gearbox.converter().speedRatio()).hasSize(9);
        assertThat(gearbox.ratios()).startsWith(4.71);
    }

    private List<String> faults(String fan) throws IOException {
        Map<String, String> blocks = roomy();
        blocks.put("fan", fan);
        InputException wrong = catchThrowableOfType(InputException.class, () -> read(blocks));
        assertThat(wrong).as("must be refused").isNotNull();
        return wrong.findings().stream().map(Object::toString).toList();
    }

    @Test
    void anUnknownPartSaysWhatTheShelfHas() throws IOException {
        assertThat(faults("{part: fan-16in-60w, free_flow: 1 m3/s, stall_pressure: 200 Pa}"))
                .singleElement()
                .asString()
                .contains("build.yaml:7:13", "did you mean 'fan-16in-600w'", "fan-12in-220w", "fan-18in-850w");
    }

    @Test
    void aPartOfAnotherKindIsNotTaken() throws IOException {
        Map<String, String> blocks = roomy();
        blocks.put("heater", "{part: fan-16in-600w}");
        InputException wrong = catchThrowableOfType(InputException.class, () -> read(blocks));
        assertThat(wrong.findings())
                .singleElement()
                .asString()
                .contains("build.yaml:9:16", "nothing for 'heater'", "stack.condenser", "fan");
    }

    /** Own lines of a part file are shown with their place there, beside those of the sheet, all at once. */
    @Test
    void faultsInsideAPartNameItsFile() throws IOException {
        Files.writeString(
                folder.resolve("shelf/own.yaml"),
                "fan:\n  mine:\n    note: bench\n    free_flow: 5\n    stall_presure: 200 Pa\n  bare: {free_flow: 1 m3/s}\n  fan-16in-600w: {}\n");
        assertThat(faults("{part: mine, stall_pressure: 2 Pa}"))
                .hasSize(4)
                .anyMatch(f -> f.contains("own.yaml:4:16") && f.contains("'fan.free_flow': '5' has no unit"))
                .anyMatch(f -> f.contains("own.yaml:5:5") && f.contains("did you mean 'stall_pressure'?"))
                .anyMatch(f -> f.contains("own.yaml:7:3")
                        && f.contains("on the shelf already, at")
                        && f.contains("fans.yaml:"))
                .anyMatch(f -> f.contains("build.yaml:7:35") && f.contains("between 10 Pa"));
        assertThat(faults("{part: bare, stall_pressure: 200 Pa}"))
                .anyMatch(f -> f.contains("own.yaml:6:9") && f.contains("needs a 'note'"));
    }

    @Test
    void aBlockTakesOnePartAndAPartNone() throws IOException {
        Files.writeString(folder.resolve("shelf/own.yaml"), "fan:\n  mine: {note: bench, part: fan-16in-600w}\n");
        assertThat(faults("{part: fan-16in-600w, part: fan-12in-220w, free_flow: x}"))
                .anyMatch(f -> f.contains("build.yaml:7:28") && f.contains("'part' stands here again"));
        assertThat(faults("{part: mine, free_flow: 1 m3/s, stall_pressure: 200 Pa}"))
                .singleElement()
                .asString()
                .contains("own.yaml:2:29", "cannot stand on another part");
    }

    @Test
    void withoutAShelfThePlacesToPutOneAreSaid() throws IOException {
        Path alone = Files.createDirectories(folder.resolve("a/b/c"));
        Path sheet = alone.resolve("build.yaml");
        Files.copy(folder.resolve("builds/heron/build.yaml"), sheet);
        InputException wrong = catchThrowableOfType(InputException.class, () -> BuildSheet.read(sheet));
        assertThat(wrong.findings())
                .anySatisfy(f -> assertThat(f.toString())
                        .contains(
                                "build.yaml:16:17",
                                "'automatic-8-speed-towing'",
                                alone.resolve("shelf").toString()));
    }
}
