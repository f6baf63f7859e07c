package hotday.core.typed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hotday.core.finding.InputException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TypedEditTest {
    private static final String SHEET = """
            # a note that somebody cares for
            radiator: {width: 31.5 in, height: 24 in}   # measured

            stack:
              # left of the horn
              gearbox_cooler: {left: 0 mm}
              fans: 1  # one
            schedule:
              coolant: [[94 degC, 25 %], [100 degC, 60 %]]
            """;

    private static String with(String key, String value) {
        return TypedEdit.of("sheet", SHEET, Map.of(key, value));
    }

    @Test
    void aValueIsChangedWhereItStandsAndNothingElse() {
        assertThat(with("radiator.width", "800 mm")).isEqualTo(SHEET.replace("31.5 in", "800 mm"));
        assertThat(with("stack.fans", "2")).isEqualTo(SHEET.replace("fans: 1", "fans: 2"));
        assertThat(with("schedule.coolant", "[[90 degC, 30 %]]"))
                .isEqualTo(SHEET.replace("[[94 degC, 25 %], [100 degC, 60 %]]", "[[90 degC, 30 %]]"));
    }

    @Test
    void aKeyThatIsNotThereIsAddedToItsBlock() {
        assertThat(with("radiator.depth", "52 mm")).isEqualTo(SHEET.replace("24 in}", "24 in, depth: 52 mm}"));
        assertThat(with("stack.flap_area", "0.02 m2"))
                .isEqualTo(SHEET.replace("fans: 1  # one\n", "fans: 1  # one\n  flap_area: 0.02 m2\n"));
        assertThat(with("stack.condenser.left", "10 mm"))
                .isEqualTo(SHEET.replace("fans: 1  # one\n", "fans: 1  # one\n  condenser: {left: 10 mm}\n"));
        assertThat(with("heater.conductance", "80 W/K")).isEqualTo(SHEET + "heater: {conductance: 80 W/K}\n");
    }

    @Test
    void aFileWithoutALastLineBreakIsAddedTo() {
        assertThat(TypedEdit.of("sheet", "a: 1", Map.of("b", "2 mm"))).isEqualTo("a: 1\nb: 2 mm\n");
        assertThat(TypedEdit.of("sheet", "a: {}\r\nc: 1\r\n", Map.of("a.b", "2 mm", "d", "3")))
                .isEqualTo("a: {b: 2 mm}\r\nc: 1\r\nd: 3\r\n");
    }

    @Test
    void signsBeyondTheUsualPlaneDoNotShiftTheEdit() {
        String text = "note: \"\uD83D\uDE97 car\"\nradiator: {depth: 40 mm}\n";
        assertThat(TypedEdit.of("sheet", text, Map.of("radiator.depth", "52 mm")))
                .isEqualTo(text.replace("40 mm", "52 mm"));
    }

    @Test
    void whatWasEditedReadsAsIfItHadBeenLaidOver() {
        Map<String, String> changes = new LinkedHashMap<>();
        changes.put("radiator.depth", "52 mm");
        changes.put("stack.gearbox_cooler.bottom", "30 mm");
        changes.put("stack.gearbox_cooler.bottom", "40 mm");
        String text = TypedEdit.of("sheet", SHEET, changes);
        assertThat(TypedFile.of("sheet", text).root().singles())
                .containsEntry("radiator.depth", "52 mm")
                .containsEntry("stack.gearbox_cooler.bottom", "40 mm")
                .containsEntry("stack.gearbox_cooler.left", "0 mm");
    }

    @Test
    void aValueIsTakenOutAndNothingElse() {
        assertThat(TypedEdit.without("sheet", SHEET, "radiator.height"))
                .isEqualTo(SHEET.replace("31.5 in, height: 24 in", "31.5 in"));
        assertThat(TypedEdit.without("sheet", SHEET, "radiator.width"))
                .isEqualTo(SHEET.replace("width: 31.5 in, ", ""));
        assertThat(TypedEdit.without("sheet", SHEET, "stack.gearbox_cooler.left"))
                .isEqualTo(SHEET.replace("left: 0 mm", ""));
        assertThat(TypedEdit.without("sheet", SHEET, "stack.fans")).isEqualTo(SHEET.replace("  fans: 1  # one\n", ""));
        assertThat(TypedEdit.without("sheet", "a: 1\r\nb: 2", "b")).isEqualTo("a: 1\r\n");
        assertThat(TypedEdit.without("sheet", SHEET, "stack.horn")).isEqualTo(SHEET);
        assertThat(TypedEdit.without("sheet", SHEET, "heater.conductance")).isEqualTo(SHEET);
        assertThatThrownBy(() -> TypedEdit.without("sheet", SHEET, "stack"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("several lines");
    }

    @Test
    void aListOverSeveralLinesIsReplacedUnlessACommentWouldBeLost() {
        String lines = "s:\n  curve:\n    - [94 degC, 25 %]\n    - [100 degC, 60 %]\n  on: 94 degC  # from here\n";
        assertThat(TypedEdit.of("sheet", lines, Map.of("s.curve", "[[90 degC, 30 %]]")))
                .isEqualTo("s:\n  curve: [[90 degC, 30 %]]\n  on: 94 degC  # from here\n");
        assertThat(TypedEdit.of("sheet", "curve:\r\n- 1\r\n- 2", Map.of("curve", "[3]")))
                .isEqualTo("curve: [3]");
        for (String comment : new String[] {"- [94 degC, 25 %]", "- [100 degC, 60 %]", "curve:"}) {
            String said = lines.replace(comment, comment + "  # measured");
            assertThatThrownBy(() -> TypedEdit.of("sheet", said, Map.of("s.curve", "[[90 degC, 30 %]]")))
                    .isInstanceOf(InputException.class)
                    .hasMessageContaining("comments that would be lost");
        }
    }

    @Test
    void whatWasTypedOverLinesReadsAsOneLine() {
        String typed =
                "schedule:\n  coolant:\n    - [94 degC, 25 %]\n    - [100 degC, 60 %]\n  floor: {demand: 20 %}\n  on: 94 degC\n";
        assertThat(TypedFile.of("sheet", typed).root().inLine())
                .isEqualTo(Map.of(
                        "schedule.coolant",
                        "[[94 degC, 25 %], [100 degC, 60 %]]",
                        "schedule.floor.demand",
                        "20 %",
                        "schedule.on",
                        "94 degC"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "  ",
                "1 mm}, evil: {a: b",
                "&x 1",
                "*x",
                "!!js 1",
                "a: b",
                "12 mm # x",
                "{a: 1}",
                "1\n2",
                "[1"
            })
    void moreThanOneValueIsRefused(String value) {
        assertThatThrownBy(() -> with("radiator.depth", value))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("no single value");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a b", "a.", "../x", "A", "a..b", "a: b"})
    void whatIsNoKeyIsRefused(String key) {
        assertThatThrownBy(() -> with(key, "1 mm")).isInstanceOf(InputException.class);
    }

    @Test
    void aBlockIsNoPlaceForAValue() {
        assertThatThrownBy(() -> with("stack", "1 mm"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("several lines");
        assertThatThrownBy(() -> with("stack.fans.left", "1 mm"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("single value");
    }
}
