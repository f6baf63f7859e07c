package hotday.signals.channel;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.core.finding.Finding;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A row of units under the names: guessed from, read by, never data. */
class UnitsUnderHeaderTest {
    private static final String ROWS = "0;80,5;700\n1;81;710\n2;82;720\n";

    private static final String MAP = """
            time: {column: Time}
            channels:
              coolant_temperature: {column: ECT}
              engine_speed: {column: RPM}
            """;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"s;degC;rpm", "[s];[°C];[1/min]", "(s);(C);(U/min)"})
    void theMapNeedsNoUnits(String units) {
        Recording run = Logged.read(folder, MAP, "Time;ECT;RPM\n" + units + "\n" + ROWS);
        assertThat(run.time()).containsExactly(0, 1, 2);
        assertThat(Logged.values(run, ModelChannel.COOLANT_TEMPERATURE)[0]).isEqualTo(353.65);
        assertThat(Logged.keys(run)).containsExactly("recording-read", "units-under-header");
        assertThat(Logged.at(run.findings().get(1))).isEqualTo("units-under-header@2:0");
        assertThat(run.place(0).line()).isEqualTo(3);
    }

    @Test
    void theGuessTakesThemAndItsMapReadsTheFile() throws IOException {
        Path file = Files.writeString(folder.resolve("a.csv"), "Time;ECT;RPM\nms;degF;rpm\n0;180;700\n500;181;710\n");
        RecordingHead head = ChannelMap.headUnmapped(file);
        assertThat(head.rows()).isEqualTo(2);
        assertThat(head.columns().get(1).unit()).contains("degF");
        assertThat(head.columns().get(1).examples()).containsExactly("180", "181");
        MapDraft guess = ChannelGuess.of(head);
        assertThat(guess.time().unit()).contains("ms");
        assertThat(guess.channels().stream().map(MapDraft.Line::unit))
                .containsExactly(Optional.of("rpm"), Optional.of("degF"));
        ChannelMap map = ChannelMap.of("a.channels.yaml", new String(guess.file(head), StandardCharsets.UTF_8));
        assertThat(map.faultsOfHeader(file)).isEmpty();
        assertThat(map.recording(file).time()).containsExactly(0, 0.5);
        assertThat(map.draft(file).channels().get(1).unit()).contains("degF");
    }

    /** A bracket that holds no unit leaves the word to the row; one that holds a unit has it itself. */
    @Test
    void bracketsGoBeforeWhereTheyHoldAUnit() {
        String map = MAP.replace("column: ECT", "column: \"ECT (bank 1)\"")
                .replace("column: RPM", "column: \"V [km/h]\"")
                .replace("engine_speed", "vehicle_speed");
        Recording run = Logged.read(folder, map, "Time;ECT (bank 1);V [km/h]\ns;degF;mph\n0;212;36\n1;212;72\n");
        assertThat(Logged.values(run, ModelChannel.VEHICLE_SPEED)[0]).isEqualTo(10.0);
        assertThat(Logged.values(run, ModelChannel.COOLANT_TEMPERATURE)[0]).isBetween(373.14, 373.16);
    }

    @Test
    void aMapThatSaysAnotherUnitIsFollowedWithAWarning() {
        String map = MAP.replace("column: ECT", "column: ECT, unit: degF");
        Recording run = Logged.read(folder, map, "Time;ECT;RPM\ns;degC;rpm\n" + ROWS);
        Finding warning = Logged.finding(run, "unit-differs-from-header");
        assertThat(warning.message()).contains("the file says degC for 'ECT'");
    }

    @Test
    void aUnitOfAnotherKindIsRefused() {
        assertThat(Logged.refused(folder, MAP, "Time;ECT;RPM\ns;km/h;rpm\n" + ROWS))
                .containsExactly("unit-wrong@3:3");
    }

    /** Words that are no units are left out with a warning that names their line. */
    @Test
    void wordsUnderTheHeaderAreTold() {
        String map = MAP.replace("Time}", "Time, unit: s}")
                .replace("ECT}", "ECT, unit: degC}")
                .replace("RPM}", "RPM, unit: rpm}");
        Recording run = Logged.read(folder, map, "Time;ECT;RPM\nclock;sensor A;sensor B\n" + ROWS);
        assertThat(run.time()).hasSize(3);
        assertThat(Logged.at(Logged.finding(run, "words-under-header"))).isEqualTo("words-under-header@2:0");
        assertThat(Logged.finding(run, "words-under-header").message()).contains("clock; sensor A; sensor B");
        assertThat(Logged.refused(folder, map, "Time;ECT;RPM\nclock;sensor A;sensor B\n"))
                .containsExactly("no-rows@0:0");
    }

    /** Whole numbers for a minute, then the first decimal comma; beyond what is looked at the fault says what to do. */
    @Test
    void aDecimalCommaMayComeLate() {
        StringBuilder log = new StringBuilder("Time;ECT;RPM\ns;degC;rpm\n");
        for (int i = 0; i < 700; i++) {
            log.append(i).append(i == 100 ? ";80,5;700\n" : ";80;700\n");
        }
        Recording run = Logged.read(folder, MAP, log.toString());
        assertThat(Logged.values(run, ModelChannel.COOLANT_TEMPERATURE)[100]).isEqualTo(353.65);
        String late = log.toString().replace(";80,5;", ";80;") + "700;80,5;700\n";
        Finding fault = Logged.faults(folder, MAP, late).get(0);
        assertThat(Logged.at(fault)).isEqualTo("text-in-number-column@703:2");
        assertThat(fault.message()).contains("'80,5'", "reader: {decimal: comma}");
    }

    @Test
    void withoutATimeColumnRowsAreCounted() {
        String map = MAP.replace("column: Time", "step: 250 ms");
        Recording run = Logged.read(folder, map, "ECT;RPM\ndegC;rpm\n80;700\n81;710\n82;720\n");
        assertThat(run.time()).containsExactly(0, 0.25, 0.5);
        String both = MAP.replace("column: Time", "column: Time, step: 1 s");
        assertThat(Logged.refused(folder, both, "a;b\n")).containsExactly("value-wrong@1:28");
        for (String wrong : List.of("0 s", "61 s", "-1 s")) {
            assertThat(Logged.refused(folder, MAP.replace("column: Time", "step: " + wrong), "a;b\n"))
                    .containsExactly("out-of-range@1:14");
        }
    }
}
