package hotday.signals.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hotday.core.finding.InputException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChannelMapTest {
    @TempDir
    private Path folder;

    private List<String> refused(String map) {
        InputException wrong = catchThrowableOfType(InputException.class, () -> Logged.map(folder, map));
        assertThat(wrong).as("must be refused").isNotNull();
        return wrong.findings().stream().map(Logged::at).toList();
    }

    /** One wrong value in the third line, the channel's block beginning in column 3. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            coolant_temperature: {column: c, unit: mph}                          | unit-wrong@3:42
            coolant_temperature: {column: c, unit: degC, range: [5 degC]}        | value-wrong@3:55
            coolant_temperature: {column: c, unit: degC, range: [9 degC, 5 degC]} | value-wrong@3:55
            coolant_temperature: {column: c, unit: degC, lag: 90 s}              | out-of-range@3:53
            coolant_temperature: {column: c, unit: degC, lag: 2}                 | unit-missing@3:53
            coolant_temperature: {column: c, unit: degC, resolution: -1 K}       | out-of-range@3:60
            coolant_temperature: {column: c, constant: 80 degC}                  | value-wrong@3:46
            coolant_temperature: {constant: 800 degC}                            | out-of-range@3:35
            coolant_temperature: {unit: degC}                                    | value-wrong@3:3
            coolant_temperature: {column: c, position: 0}                        | out-of-range@3:46
            coolant_temperature: {colum: c}                                      | unknown-key@3:25
            coolent_temperature: {column: c}                                     | unknown-key@3:3
            head_pressure: {column: p, unit: psi}                                | pressure-ambiguous@3:36
            """)
    void aWrongValueIsNamedWithItsPlace(String channel, String expected) {
        assertThat(refused("time: {column: t, unit: s}\nchannels:\n  " + channel + "\n"))
                .contains(expected);
    }

    @Test
    void blocksThatAreWrongOrMissing() {
        assertThat(refused("channels: {}\n")).containsExactly("key-missing@1:1");
        assertThat(refused("time: {column: t, unit: s}\n")).containsExactly("key-missing@1:1");
        assertThat(refused("time: {column: t, unit: s, clock: \"hh:mm:ss\"}\nchannels: {}\n"))
                .containsExactly("value-wrong@1:25");
        assertThat(refused("time: {unit: s}\nchannels: {}\n")).containsExactly("key-missing@1:1");
        assertThat(refused("time: {column: t, unit: s}\nchannels: {}\nfacts: {heater: maybe}\n"))
                .containsExactly("word-wrong@3:17");
        assertThat(refused("time: {column: t, unit: s}\nchannels: {}\nruns:\n  a: {hater: on}\n"))
                .containsExactly("unknown-key@4:7");
        assertThat(refused("time: {column: t, unit: s}\nchannels: {}\nreader: {delimiter: pipe}\n"))
                .containsExactly("word-wrong@3:21");
    }

    @Test
    void allFaultsComeTogether() {
        assertThat(refused("""
                        time: {column: t, unit: km/h}
                        channels:
                          vehicle_speed: {column: v, unit: degC}
                          oil_temperature: {column: o, unit: K, floor: 3 mph}
                        """)).containsExactly("unit-wrong@1:25", "unit-wrong@3:36", "unit-wrong@4:48");
    }

    @Test
    void factsOfARunGoBeforeThoseOfAll() {
        String map = Logged.MAP + "facts: {fan: on, heater: unknown}\nruns:\n  \"run 1\": {fan: off}\n";
        Recording run = Logged.read(folder, map, Logged.HEADER + "0,0,800,20\n1,0,801,21\n");
        assertThat(run.facts())
                .isEqualTo(Map.of(
                        "fan",
                        Fact.OFF,
                        "heater",
                        Fact.UNKNOWN,
                        "air_conditioning",
                        Fact.UNKNOWN,
                        "thermostat_blocked_open",
                        Fact.UNKNOWN));
    }

    @ParameterizedTest
    @CsvSource({
        "61410012.txt, 61410012",
        "a/b/trip.csv.gz, trip",
        "run 3.5 kW.csv, run 3.5 kW",
        "noend, noend",
        ".x, .x"
    })
    void runsAreNamedAfterTheirFiles(String path, String name) {
        assertThat(ChannelMap.nameOf(Path.of(path))).isEqualTo(name);
    }
}
