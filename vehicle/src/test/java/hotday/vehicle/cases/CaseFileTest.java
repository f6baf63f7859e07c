package hotday.vehicle.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CaseFileTest {
    private static final double ROUNDING = 1e-12;

    private static final String HEAD = """
            case: pass-road
            title: The pass behind the shop
            start: START
            sun: 850 W/m2
            humidity: 40 %
            phases:
            """;

    @TempDir
    private Path folder;

    private Case read(String text) throws IOException {
        return CaseFile.read(Files.writeString(folder.resolve("case.yaml"), text));
    }

    private Case settled(String... phases) throws IOException {
        return read(text("settled", phases));
    }

    private static String text(String start, String... phases) {
        return HEAD.replace("START", start) + "  - {" + String.join("}\n  - {", phases) + "}\n";
    }

    private List<Finding> faults(String text) throws IOException {
        InputException wrong = catchThrowableOfType(InputException.class, () -> read(text));
        assertThat(wrong).as("must be refused").isNotNull();
        return wrong.findings();
    }

    @Test
    void anAmbientOfItsOwnBelongsToAColdStart() throws IOException {
        String phase = "speed: 20 km/h, duration: 10 min, heater: 100 %";
        String cold = text("soaked", phase).replace("sun:", "ambient: 14 degF\nsun:");
        assertThat(read(cold).day().ambient().orElseThrow()).isCloseTo(263.15, within(1e-9));
        assertThat(read(cold).forCold()).isTrue();
        assertThat(settled("speed: 20 km/h").forCold()).isFalse();
        List<Finding> wrong = faults(text("settled", phase).replace("sun:", "ambient: -10 degC\nsun:"));
        assertThat(wrong).singleElement().satisfies(f -> {
            assertThat(f.key()).isEqualTo("value-wrong");
            assertThat(f.place().orElseThrow().line()).isEqualTo(4);
        });
        assertThat(faults(cold.replace("14 degF", "14")))
                .extracting(Finding::key)
                .contains("unit-missing");
        assertThat(faults(cold.replace("14 degF", "140 degF")))
                .extracting(Finding::key)
                .contains("out-of-range");
    }

    @Test
    void everyKeyArrivesInSi() throws IOException {
        Files.writeString(folder.resolve("road.csv"), "time [s],speed [km/h]\n0,0\n60,36\n");
        Case kase = read("""
                case: pass-road
                title: The pass behind the shop
                start: soaked
                sun: 0.7 kW/m2
                humidity: 0.3
                altitude: 1 km
                limits: [gearbox, head-pressure, gearbox]
                phases:
                  - {speed: 36 km/h, grade: -5 %, duration: 2 min, low_range: yes, air_conditioning: cabin_air, blower: 60 %, heater: 10 %}
                  - {speed: 0 mph, duration: 10 s, engine: park}
                  - {trace: road.csv, heater: 50 %}
                """);
        assertThat(kase.id()).isEqualTo("pass-road");
        assertThat(kase.title()).isEqualTo("The pass behind the shop");
        assertThat(kase.start()).isEqualTo(Case.Start.SOAKED);
        assertThat(kase.day().sun()).isCloseTo(700.0, within(ROUNDING));
        assertThat(kase.day().humidity()).isEqualTo(0.3);
        assertThat(kase.day().altitude()).hasValue(1000.0);
        assertThat(kase.limits()).containsExactly(Limit.GEARBOX, Limit.HEAD_PRESSURE);
        assertThat(kase.steady()).isFalse();
        Case.Phase first = kase.first();
        assertThat(first.speed()).isCloseTo(10.0, within(ROUNDING));
        assertThat(first.grade()).isCloseTo(-0.05, within(ROUNDING));
        assertThat(first.duration()).isEqualTo(120.0);
        assertThat(first.lowRange()).isTrue();
        assertThat(first.conditioning()).isEqualTo(Case.Conditioning.CABIN_AIR);
        assertThat(first.blower()).isCloseTo(0.6, within(ROUNDING));
        assertThat(first.heater()).isCloseTo(0.1, within(ROUNDING));
        Case.Phase parked = kase.phases().get(1);
        assertThat(parked.engine()).isEqualTo(Case.Engine.PARK);
        assertThat(parked.blower()).isZero();
        Case.Phase traced = kase.phases().get(2);
        assertThat(traced.duration()).isEqualTo(60.0);
        assertThat(traced.blower()).isEqualTo(1.0);
        assertThat(traced.trace().orElseThrow().speed(30.0)).isCloseTo(5.0, within(ROUNDING));
        assertThat(traced.trace().orElseThrow().acceleration(30.0)).isCloseTo(10.0 / 60.0, within(ROUNDING));
    }

    @Test
    void whatIsLeftOut() throws IOException {
        Case kase = settled("speed: 20 km/h, air_conditioning: outside_air");
        assertThat(kase.steady()).isTrue();
        assertThat(kase.day().altitude()).isEmpty();
        assertThat(kase.limits()).isEmpty();
        assertThat(kase.judges(Limit.SUPPLY)).isTrue();
        Case.Phase phase = kase.first();
        assertThat(phase.grade()).isZero();
        assertThat(phase.engine()).isEqualTo(Case.Engine.DRIVE);
        assertThat(phase.lowRange()).isFalse();
        assertThat(phase.blower()).as("full with air conditioning").isEqualTo(1.0);
        assertThat(phase.heater()).isZero();
        assertThat(phase.trace()).isEmpty();
    }

    /** The fault stands where the fourth word stands in its phase. */
    @ParameterizedTest(name = "{0}, {1} | {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "settled | sped: 3 km/h                              | | sped     | unknown-key  | did you mean 'speed'",
                "settled | speed: 3 km/h, duration: -5 min           | | -5 min   | out-of-range | -5 min",
                "settled | speed: 3 km/h, grade: 5                   | | 5        | out-of-range | between -0.7 and 0.7",
                "settled | speed: 3                                  | | 3        | unit-missing | km/h",
                "settled | speed: 900 km/h                           | | 900      | out-of-range | 432 km/h",
                "settled | speed: 3 km/h, engine: park               | | park     | value-wrong  | while the vehicle moves",
                "settled | speed: 3 km/h, engine: reverse            | | reverse  | word-wrong   | drive, park, off",
                "settled | speed: 0 km/h, engine: off                | | off      | value-wrong  | start: soaked",
                "settled | speed: 3 km/h, low_range: true            | | true     | word-wrong   | yes, no",
                "settled | speed: 3 km/h, blower: 120 %              | | 120      | out-of-range | 100 %",
                "settled | speed: 3 km/h, air_conditioning: on       | | on}      | word-wrong   | off, outside_air",
                "settled | grade: 3 %                                | | {        | key-missing  | speed",
                "soaked  | speed: 3 km/h                             | | {        | key-missing  | duration",
                "settled | trace: road.csv                           | | road.csv | value-wrong  | nothing settles on a trace",
                "soaked  | trace: road.csv, speed: 7 km/h            | | 7        | value-wrong  | beside 'trace'",
                "soaked  | trace: road.csv, engine: off              | | off      | value-wrong  | while the vehicle moves",
                "settled | speed: 3 km/h | speed: 4 km/h             | {        | key-missing  | duration",
                "settled | speed: 3 km/h | trace: absent.csv         | absent   | value-wrong  | no such file",
                "settled | speed: 3 km/h | speed: 1 km/h, duration: 5 min, engine: off | off | value-wrong | moves",
                "settled | speed: 3 km/h | speed: 0 km/h, duration: 5 min, engine: off, air_conditioning: cabin_air"
                        + "                                                   | cabin_air | value-wrong | engine is off",
            })
    void aWrongPhaseIsToldWithItsPlace(String start, String one, String two, String where, String key, String words)
            throws IOException {
        Files.writeString(folder.resolve("road.csv"), "time [s],speed [km/h]\n0,0\n60,36\n");
        String text = two == null ? text(start, one) : text(start, one, two);
        List<String> lines = text.lines().toList();
        String place = folder.resolve("case.yaml") + ":" + lines.size() + ":"
                + (lines.get(lines.size() - 1).indexOf(where) + 1);
        assertThat(faults(text)).anySatisfy(fault -> {
            assertThat(fault.key()).isEqualTo(key);
            assertThat(fault.place().orElseThrow()).hasToString(place);
            assertThat(fault.message()).contains(words);
        });
    }

    @Test
    void everyFaultIsToldAtOnce() throws IOException {
        List<Finding> faults = faults("""
                case: Pass Road
                start: hot
                sun: 850 W
                humidity: 140 %
                altitude: 9 km
                limits: [coolent]
                wind: 3 m/s
                phases: []
                """);
        assertThat(faults)
                .extracting(f -> f.place().orElseThrow().line() + " " + f.key())
                .contains(
                        "1 key-missing", // title
                        "1 value-wrong",
                        "2 word-wrong",
                        "3 unit-wrong",
                        "4 out-of-range",
                        "5 out-of-range",
                        "6 value-wrong",
                        "7 unknown-key",
                        "8 value-wrong");
        assertThat(faults).anyMatch(f -> f.message().contains("did you mean 'coolant'"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "time [s],speed [km/h];0,0;5,20;4,30                  | 4:1 | not-rising",
                "time [s],speed [km/h];0,0;5,20;5,30                  | 4:1 | not-rising",
                "time [s],speed [km/h];0,0;5,fast                     | 3:2 | number-wrong",
                "time [s],speed [km/h];0,0;5,20;10                    | 4   | row-width",
                "time [s],speed [km/h];0,0;5,-3                       | 3:2 | out-of-range",
                "time [s],speed [km/h];0,0;0.5,100                    | 3:2 | out-of-range",
                "time [s],speed [km/h],grade [%];0,0,0;5,20,90        | 3:3 | out-of-range",
                "time [s],speed;0,0;5,20                              | 1:2 | unit-missing",
                "time [s],speed [kg];0,0;5,20                         | 1:2 | unit-wrong",
                "time [s],speed [km/h],wind [m/s];0,0,0;5,20,0        | 1:3 | no-such-column",
                "time [s],speed [km/h],speed [mph];0,0,0;5,20,0       | 1:3 | column-twice",
                "time [s],grade [%];0,0;5,2                           | 1   | no-such-column",
            })
    void aWrongTraceIsToldWithRowAndCell(String rows, String place, String key) throws IOException {
        Path csv = Files.writeString(folder.resolve("road.csv"), rows.replace(';', '\n') + "\n");
        List<Finding> faults = faults(text("soaked", "trace: road.csv"));
        assertThat(faults).anySatisfy(fault -> {
            assertThat(fault.key()).isEqualTo(key);
            assertThat(fault.place().orElseThrow().toString()).isEqualTo(csv + ":" + place);
        });
    }

    @Test
    void aTraceNeedsTwoRows() throws IOException {
        Files.writeString(folder.resolve("road.csv"), "time [s],speed [km/h]\n0,0\n");
        assertThat(faults(text("soaked", "trace: road.csv")).get(0).message()).contains("two or more");
    }

    @Test
    void faultsOfBothFilesComeTogether() throws IOException {
        Files.writeString(folder.resolve("road.csv"), "time [s],speed [km/h]\n0,0\n5,x\n");
        assertThat(faults(text("soaked", "trace: road.csv, heater: 3 l")))
                .extracting(Finding::key)
                .containsExactly("unit-wrong", "number-wrong");
    }

    @Test
    void aTraceMayBeCutByTabsOrSemicolonsWithGradeAndComments() throws IOException {
        String rows = "# from the hill\ngrade [%];Time (min);speed [mph]\n\n5;0;0\n-5;1;30\n";
        for (String mark : List.of(";", "\t")) {
            Files.writeString(
                    folder.resolve("road.csv"),
                    "\uFEFF" + rows.replace(";", mark).replace("\n", "\r\n"));
            Trace trace =
                    read(text("soaked", "trace: road.csv")).first().trace().orElseThrow();
            assertThat(trace.duration()).isEqualTo(60.0);
            assertThat(trace.speed(60.0)).isCloseTo(30.0 * 0.44704, within(ROUNDING));
            assertThat(trace.grade(15.0)).isCloseTo(0.025, within(ROUNDING));
        }
    }
}
