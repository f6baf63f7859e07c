package hotday.core.typed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.unit.Quantity;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TypedFileTest {
    @TempDir
    private Path folder;

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("typed.yaml"), text);
    }

    private Path file(byte... bytes) throws IOException {
        return Files.write(folder.resolve("typed.yaml"), bytes);
    }

    private static Finding refused(Path path) {
        InputException wrong = catchThrowableOfType(InputException.class, () -> TypedFile.read(path));
        assertThat(wrong).as("must be refused").isNotNull();
        assertThat(wrong.findings()).hasSize(1);
        return wrong.findings().get(0);
    }

    private List<Finding> faults(String text, Consumer<TypedMap> asks) throws IOException {
        TypedFile typed = TypedFile.read(file(text));
        asks.accept(typed.root());
        InputException wrong =
                catchThrowableOfType(InputException.class, () -> typed.faults().throwIfAny());
        return wrong == null ? List.of() : wrong.findings();
    }

    private static String at(Finding finding) {
        Place place = finding.place().orElseThrow();
        return finding.key() + "@" + place.line() + ":" + place.column();
    }

    @Test
    void missing() {
        assertThat(refused(folder.resolve("none.yaml")).key()).isEqualTo("no-such-file");
    }

    @Test
    void folderInsteadOfFile() {
        assertThat(refused(folder).key()).isEqualTo("is-folder");
    }

    @ParameterizedTest
    @CsvSource({"''", "'   '", "'# only a comment'"})
    void empty(String text) throws IOException {
        assertThat(refused(file(text + "\n\n")).key()).isEqualTo("empty-file");
    }

    @Test
    void binary() throws IOException {
        assertThat(refused(file((byte) 'a', (byte) 0, (byte) 'b')).key()).isEqualTo("binary-file");
        assertThat(refused(file((byte) 'a', (byte) 0xC3, (byte) 0x28)).message())
                .contains("UTF-8");
        assertThat(refused(file("a: 1".getBytes(StandardCharsets.UTF_16))).message())
                .contains("UTF-16");
    }

    @Test
    void byteOrderMarkIsNoFault() throws IOException {
        TypedFile typed = TypedFile.read(file("\uFEFFa: 3 kg\n"));
        assertThat(typed.root().requiredQuantity("a", Quantity.MASS, 0, 10)).isEqualTo(3);
        assertThat(typed.root().place("a").column()).isEqualTo(4);
    }

    @Test
    void windowsLineEnds() throws IOException {
        TypedFile typed = TypedFile.read(file("a: 3 kg\r\nb: 4 kg\r\n"));
        assertThat(typed.root().requiredQuantity("b", Quantity.MASS, 0, 10)).isEqualTo(4);
        assertThat(typed.root().place("b").line()).isEqualTo(2);
    }

    @Test
    void tooLarge() throws IOException {
        assertThat(refused(file("a: '" + "x".repeat(5_000_001) + "'")).key()).isEqualTo("file-too-large");
    }

    @ParameterizedTest
    @CsvSource({"60", "2000", "1000000"})
    void nestedTooDeep(int levels) throws IOException {
        assertThat(refused(file("a: " + "[".repeat(levels) + "]".repeat(levels)))
                        .key())
                .isEqualTo("nested-too-deep");
        assertThat(refused(file("a: " + "[".repeat(levels))).key()).isIn("nested-too-deep", "yaml-syntax");
        assertThat(refused(file("{a: ".repeat(levels / 2))).key()).isIn("nested-too-deep", "yaml-syntax");
    }

    @Test
    void bracketsInsideTextAreNoNesting() throws IOException {
        assertThat(TypedFile.read(file("a: '" + "[".repeat(500) + "'\n")).root().text("a"))
                .isPresent();
    }

    @Test
    void aliasesThatGrow() throws IOException {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 12; i++) {
            bomb.append("a" + i + ": &a" + i + " [" + ("*a" + (i - 1) + ", ").repeat(9) + "*a" + (i - 1) + "]\n");
        }
        assertThat(refused(file(bomb.toString())).key()).isEqualTo("yaml-syntax");
    }

    @Test
    void aliasOfItselfIsNotFollowed() throws IOException {
        assertThat(faults("a: &a [*a]\nb: &b {b: *b}\n", root -> {
                            root.texts("a");
                            root.map("b").orElseThrow().map("b").orElseThrow().text("b");
                        })
                        .stream()
                        .map(Finding::key))
                .containsExactly("value-wrong", "value-wrong");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a: [1, 2\\nb: 3|2",
                "a: 1\\n  b: 2|2",
                "a: 'open|1",
                "\\ta: 1|1",
                "a: *nothing|1",
                "a: {b: 1|1",
                "---\\na: 1\\n---\\nb: 1|3"
            })
    void syntax(String text, int line) throws IOException {
        Finding finding = refused(file(text.replace("\\n", "\n").replace("\\t", "\t")));
        assertThat(finding.key()).isEqualTo("yaml-syntax");
        assertThat(finding.place().orElseThrow().line()).isBetween(line, line + 1);
        assertThat(finding.place().orElseThrow().column()).isPositive();
    }

    @ParameterizedTest
    @CsvSource({"'- a\n- b'", "just words", "'[1, 2]'"})
    void noMapping(String text) throws IOException {
        assertThat(refused(file(text)).key()).isEqualTo("not-a-mapping");
    }

    @Test
    void allFaultsComeTogetherInTheOrderOfTheFile() throws IOException {
        String text = """
                coolant:
                  cap: 16
                  volume: 900 l
                  glycl: 50 %
                  cap: 15 psi
                fan: [1, 2]
                name: {x: 1}
                speeds: [10 mph, fast, 12 kg]
                """;
        List<Finding> faults = faults(text, root -> {
            root.quantities("speeds", Quantity.SPEED, 0, 50);
            root.text("name");
            root.map("fan");
            TypedMap coolant = root.requiredMap("coolant").orElseThrow();
            coolant.refuseUnknown("cap", "volume", "glycol");
            coolant.requiredQuantity("volume", Quantity.VOLUME, 0.001, 0.08);
            coolant.requiredQuantity("cap", Quantity.PRESSURE_GAUGE, 0, 250e3);
            root.requiredQuantity("mass", Quantity.MASS, 0, 1);
        });
        assertThat(faults.stream().map(TypedFileTest::at))
                .containsExactly(
                        "key-missing@1:1",
                        "unit-missing@2:8",
                        "out-of-range@3:11",
                        "unknown-key@4:3",
                        "key-twice@5:3",
                        "not-a-mapping@6:6",
                        "value-wrong@7:7",
                        "number-wrong@8:18",
                        "unit-wrong@8:24");
        assertThat(faults.get(1).message()).contains("coolant.cap", "gauge pressure", "16 psi");
        assertThat(faults.get(2).message()).contains("900 l", "between 1 l and 80 l");
        assertThat(faults.get(3).message()).contains("did you mean 'glycol'?");
        assertThat(faults.get(4).message()).contains("typed.yaml:2:3");
        assertThat(faults.get(0).message()).contains("mass");
    }

    @ParameterizedTest
    @CsvSource({
        "3808 lb, between 220.5 lb and 2205 lb",
        "5 t, between 0.1 t and 1 t",
        "5000000 g, between 100000 g and 1000000 g"
    })
    void limitsAreSaidInTheUnitThatWasTyped(String typed, String limits) throws IOException {
        List<Finding> faults = faults("m: " + typed, root -> root.quantity("m", Quantity.MASS, 100, 1000, 500));
        assertThat(faults.get(0).message()).contains(typed, limits);
    }

    @Test
    void limitsThemselvesAreAllowed() throws IOException {
        assertThat(faults("{a: 100 kg, b: 1000 kg}", root -> {
                    root.quantity("a", Quantity.MASS, 100, 1000, 500);
                    root.quantity("b", Quantity.MASS, 100, 1000, 500);
                }))
                .isEmpty();
    }

    @Test
    void absentIsTheDefaultAndWrongIsNot() throws IOException {
        TypedFile typed = TypedFile.read(file("a: wrong\n"));
        assertThat(typed.root().quantity("b", Quantity.MASS, 0, 1, 0.5)).isEqualTo(0.5);
        assertThat(typed.root().quantity("a", Quantity.MASS, 0, 1, 0.5)).isNaN();
        assertThat(typed.root().optionalQuantity("b", Quantity.MASS, 0, 1)).isEmpty();
        assertThat(typed.faults().any()).isTrue();
    }

    @Test
    void wordsAreOneOfAFew() throws IOException {
        List<Finding> faults = faults("fuel: desel", root -> root.text("fuel", "petrol", "diesel"));
        assertThat(faults.get(0).message()).contains("petrol, diesel", "did you mean 'diesel'?");
    }

    @ParameterizedTest
    @CsvSource({"3.5, number-wrong", "many, number-wrong", "17, out-of-range", "99999999999, number-wrong"})
    void wholeNumbers(String typed, String key) throws IOException {
        assertThat(faults("n: " + typed, root -> root.integer("n", 1, 16, 4))
                        .get(0)
                        .key())
                .isEqualTo(key);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[[90 degC, 25 %], [90 degC, 60 %]]|not-rising",
                "[[90 degC, 25 %], [80 degC, 60 %]]|not-rising",
                "[[90 degC, 25 %], 60 %]|not-a-pair",
                "[[90 degC, 25 %, 3]]|not-a-pair",
                "[[90 degC, 125 %]]|out-of-range",
                "[[90, 25 %]]|unit-missing",
                "[]|value-wrong",
                "25 %|not-a-list",
                "{a: 1}|not-a-list"
            })
    void curves(String typed, String key) throws IOException {
        List<Finding> faults = faults(
                "c: " + typed,
                root -> assertThat(root.pairs("c", Quantity.TEMPERATURE, Quantity.RATIO))
                        .isEmpty());
        assertThat(faults).hasSize(1);
        assertThat(faults.get(0).key()).isEqualTo(key);
    }

    @Test
    void everyFaultOfACurveIsSaid() throws IOException {
        List<Finding> faults = faults(
                "c: [[90, 25 %], [95 degC, 900 %], [99 degC, 1]]",
                root -> root.pairs("c", Quantity.TEMPERATURE, Quantity.RATIO));
        assertThat(faults.stream().map(TypedFileTest::at)).containsExactly("unit-missing@1:6", "out-of-range@1:27");
    }

    /** A good file with bytes changed, lost or doubled: read or refused in words, never anything else; seeded. */
    @Test
    void damagedFilesAreReadOrRefused() throws IOException {
        byte[] good = """
                build: {name: Heron, note: "quoted # text"}
                coolant: {glycol: 50 %, cap: 16 psi}
                schedule:
                  coolant: [[201 degF, 25 %], [213 degF, 60 %]]
                  note: |
                    two
                    lines
                """.getBytes(StandardCharsets.UTF_8);
        String damage = "[]{}:,'\"|>&*!%@`-#\n\t x\u0007\u00c3";
        Random random = new Random(31);
        for (int i = 0; i < 1000; i++) {
            byte[] bytes = good.clone();
            for (int hits = random.nextInt(4); hits >= 0; hits--) {
                bytes[random.nextInt(bytes.length)] = (byte) damage.charAt(random.nextInt(damage.length()));
            }
            Path path = file(java.util.Arrays.copyOf(bytes, 1 + random.nextInt(bytes.length)));
            try {
                TypedFile typed = TypedFile.read(path);
                typed.root().refuseUnknown("build", "coolant", "schedule");
                typed.root().map("coolant").ifPresent(m -> m.quantity("cap", Quantity.PRESSURE_GAUGE, 0, 1e6, 0));
                typed.root().map("schedule").ifPresent(m -> m.pairs("coolant", Quantity.TEMPERATURE, Quantity.RATIO));
                typed.faults().throwIfAny();
            } catch (InputException e) {
                assertThat(e.findings()).isNotEmpty().allMatch(f -> f.place().isPresent());
            }
        }
    }
}
