package hotday.study.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hotday.core.finding.InputException;
import hotday.core.typed.Overlay;
import hotday.study.demo.DemoShop;
import hotday.vehicle.cases.Ceiling;
import hotday.vehicle.sheet.BuildSheet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BenchTest {
    private static final Map<String, String> RAISED =
            Map.of("stack.gearbox_cooler.bottom", "250 mm", "radiator.depth", "40 mm");

    @TempDir
    private Path folder;

    private Shop shop;
    private Bench bench;
    private Path sheet;

    @BeforeEach
    void make() {
        DemoShop.create(folder);
        shop = Shop.open(folder);
        bench = shop.find("heron").orElseThrow();
        sheet = folder.resolve("builds/heron/build.yaml");
    }

    @Test
    void triedIsWhatTheSheetWouldAnswerAndTheFileStaysAsItIs() throws IOException {
        String before = Files.readString(sheet);
        Answer answer = bench.tried(RAISED);
        BuildSheet meant = BuildSheet.read(
                sheet, Overlay.of("test", List.of("stack.gearbox_cooler.bottom=250 mm", "radiator.depth=40 mm")));
        assertThat(answer.sheet().vehicle()).isEqualTo(meant.vehicle());
        assertThat(answer.saved()).hasSameSizeAs(answer.ceilings());
        Ceiling climb = climb(answer.ceilings());
        assertThat(climb.ambient()).isLessThan(climb(answer.saved()).ambient() - 1.0);
        assertThat(Files.readString(sheet)).isEqualTo(before);
    }

    @Test
    void whatLiesBesideTheSheetIsReadAgainWhenItChanges() throws IOException {
        double before = climb(bench.open().answer().orElseThrow().ceilings()).ambient();
        Path faulty = Files.createDirectories(folder.resolve("cases")).resolve("own.yaml");
        Files.writeString(faulty, "case: {nothing: 1}\n");
        assertThat(bench.open().answer()).isEmpty();
        assertThat(bench.open().findings()).isNotEmpty();
        Files.delete(faulty);
        Path gearboxes = folder.resolve("shelf/gearboxes.yaml");
        String text = Files.readString(gearboxes);
        Files.writeString(gearboxes, "nothing: [\n");
        assertThat(bench.open().answer()).isEmpty();
        Files.writeString(gearboxes, text);
        assertThat(climb(bench.open().answer().orElseThrow().ceilings()).ambient())
                .isEqualTo(before);
    }

    private static Ceiling climb(List<Ceiling> all) {
        return all.stream()
                .filter(c -> c.kase().id().equals("loaded-climb"))
                .findFirst()
                .orElseThrow();
    }

    /** What passes the face over its area, against what the radiator, which covers all of it, gets. */
    @Test
    void airAtTheRadiatorIsWarmerThanInFrontOfTheCores() {
        Answer answer = bench.open().answer().orElseThrow();
        List<AirAtCores.At> cores = answer.air().cores();
        assertThat(cores).hasSize(3);
        assertThat(cores.get(2).temperature()).isGreaterThan(cores.get(1).temperature() + 2.0);
        assertThat(cores.get(0).temperature())
                .isGreaterThan(answer.sheet().vehicle().designAmbient());
        assertThat(cores.get(2).speed()).isBetween(1.0, 5.0);
    }

    @Test
    void savedValuesStandInTheFileBesideItsComments() throws IOException {
        Bench.Opened opened = bench.open();
        Bench.Saved saved = bench.save(opened.version(), RAISED);
        assertThat(saved.written()).isTrue();
        assertThat(saved.now().version()).isNotEqualTo(opened.version());
        String text = Files.readString(sheet);
        assertThat(text).contains("# big panes, no insulation", "depth: 40 mm, fins: 14 /in", "bottom: 250 mm");
        assertThat(BuildSheet.read(sheet).vehicle())
                .isEqualTo(bench.tried(RAISED).sheet().vehicle());
        assertThat(saved.now().answer().orElseThrow().ceilings().get(0).ambient())
                .isCloseTo(bench.tried(RAISED).ceilings().get(0).ambient(), within(1e-9));
    }

    @Test
    void whatSomebodyElseWroteIsNotOverwritten() throws IOException {
        Bench.Opened opened = bench.open();
        String theirs = Files.readString(sheet) + "# theirs\n";
        Files.writeString(sheet, theirs);
        Bench.Saved saved = bench.save(opened.version(), RAISED);
        assertThat(saved.written()).isFalse();
        assertThat(Files.readString(sheet)).isEqualTo(theirs);
        assertThat(bench.save(saved.now().version(), RAISED).written()).isTrue();
        assertThat(Files.readString(sheet)).contains("# theirs", "depth: 40 mm");
    }

    @Test
    void aValueIsTakenOutOfTheSheetAndWhatStoodForItIsFilledIn() throws IOException {
        String before = Files.readString(sheet);
        assertThat(before).contains("  off: 199 degF\n");
        Set<String> off = Set.of("schedule.off");
        BuildSheet without = bench.sheet(Map.of("schedule.on", "210 degF"), off);
        // The sheet's own words for a value left open: off 4 K below on.
        assertThat(without.vehicle().schedule().off())
                .isCloseTo(without.vehicle().schedule().on() - 4.0, within(1e-9));
        assertThat(bench.tried(Map.of("schedule.on", "210 degF"), off).sheet().vehicle())
                .isEqualTo(without.vehicle());
        assertThat(Files.readString(sheet)).isEqualTo(before);
        assertThat(bench.save(bench.open().version(), Map.of("schedule.on", "210 degF"), off)
                        .written())
                .isTrue();
        assertThat(Files.readString(sheet))
                .isEqualTo(before.replace("  off: 199 degF\n", "").replace("on: 205.5 degF", "on: 210 degF"));
    }

    @Test
    void faultsCarryTheKeyThatWasTyped() throws IOException {
        String before = Files.readString(sheet);
        Map<String, String> wrong = Map.of("radiator.depth", "12");
        assertThatThrownBy(() -> bench.tried(wrong)).isInstanceOfSatisfying(InputException.class, e -> {
            assertThat(Bench.key(e.findings().get(0))).contains("radiator.depth");
            assertThat(e.findings().get(0).message()).contains("has no unit");
        });
        String version = bench.open().version();
        assertThatThrownBy(() -> bench.save(version, wrong)).isInstanceOf(InputException.class);
        assertThat(Files.readString(sheet)).isEqualTo(before);
    }

    @Test
    void aSheetWithFaultsIsOpenedAndCanBePutRight() throws IOException {
        Files.writeString(sheet, Files.readString(sheet).replace("depth: 52 mm", "depth: 52"));
        Bench.Opened opened = bench.open();
        assertThat(opened.answer()).isEmpty();
        assertThat(opened.findings()).hasSize(1);
        assertThat(bench.save(opened.version(), Map.of("radiator.depth", "52 mm"))
                        .now()
                        .answer())
                .isPresent();
    }

    @Test
    void onlyBuildsOfThisFolderAreFound() throws IOException {
        assertThat(shop.builds()).containsExactly("heron", "oxbow");
        Path outside = Files.createDirectory(folder.resolveSibling("outside-" + folder.getFileName()));
        Files.copy(sheet, outside.resolve("build.yaml"));
        Files.createSymbolicLink(folder.resolve("builds/linked"), outside);
        for (String id : List.of("linked", "..", "../builds/heron", "heron/..", "", ".", "heron\0", "a/b")) {
            assertThat(shop.find(id)).as(id).isEqualTo(Optional.empty());
        }
        assertThat(shop.builds()).containsExactly("heron", "oxbow");
        Files.delete(outside.resolve("build.yaml"));
        Files.delete(outside);
    }

    @Test
    void aFolderWithoutAShopIsRefused() {
        assertThatThrownBy(() -> Shop.open(folder.resolve("builds")))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("hotday new");
    }
}
