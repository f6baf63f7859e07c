package hotday.signals.channel;

import static hotday.signals.channel.Logged.HEADER;
import static hotday.signals.channel.Logged.MAP;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.core.finding.Finding;
import hotday.core.finding.Severity;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is wrong with a recording is told by key and place; what can be lived with is a finding with its count. */
class BrokenRecordingTest {
    private static final String SKIP = "reader: {text: skip}\n";

    @TempDir
    private Path folder;

    private Recording read(String map, String log) {
        return Logged.read(folder, map, log);
    }

    private List<String> refused(String map, String log) {
        return Logged.refused(folder, map, log);
    }

    /** Rows 0..n-1, one second each, speed and coolant moving. */
    private static String rows(int n) {
        StringBuilder rows = new StringBuilder(HEADER);
        for (int i = 0; i < n; i++) {
            rows.append(row(i));
        }
        return rows.toString();
    }

    private static String row(int i) {
        return i + "," + (i % 50) + "," + (800 + i % 7) + "," + (20 + i / 10) + "\n";
    }

    @Test
    void headerOnly() {
        assertThat(refused(MAP, HEADER)).containsExactly("no-rows@0:0");
    }

    @Test
    void halfOfTheRowsDamagedAndHalfTooWide() {
        assertThat(refused(MAP, HEADER + "0,1,2,3,4\n1,2,\"3,4\n")).containsExactly("no-rows@0:0");
    }

    @Test
    void noTimeColumnNamesWhatIsThere() {
        Finding fault = Logged.faults(folder, MAP, "tt [s],speed [km/h],engine [rpm],coolant [°C]\n1,2,3,4\n")
                .get(0);
        assertThat(Logged.at(fault)).isEqualTo("no-time-column@1:0");
        assertThat(fault.message()).contains("'t [s]'", "nearest is 'tt [s]'", "engine [rpm]", "channels.yaml:1");
    }

    @Test
    void everyColumnThatIsNotThere() {
        assertThat(refused(MAP, "t [s],speed [km/h]\n1,2\n"))
                .containsExactly("no-such-column@1:0", "no-such-column@1:0");
    }

    @Test
    void anOptionalColumnMayBeAbsent() {
        String map = MAP + "  oil_temperature: {column: oil, unit: degC, optional: yes}\n";
        Recording run = read(map, rows(20));
        assertThat(run.has(ModelChannel.OIL_TEMPERATURE)).isFalse();
        assertThat(Logged.finding(run, "column-absent").values()).containsEntry("channel", "oil_temperature");
    }

    @Test
    void misspeltColumnsAreFoundByPosition() {
        String map = MAP.replace("\"t [s]\"", "\"t [s]\", position: 1, unit: s");
        Recording run = read(map, rows(20).replace("t [s]", "fpt"));
        assertThat(Logged.finding(run, "column-by-position").values()).containsEntry("column", "fpt");
        assertThat(run.time()).hasSize(20);
    }

    @Test
    void twoColumnsOfOneName() {
        String log = "t [s],x [km/h],engine [rpm],x [km/h]\n0,1,800,20\n1,2,810,21\n";
        String map =
                MAP.replace("speed [km/h]", "x [km/h]").replace("{column: \"coolant [°C]\"}", "{constant: 80 degC}");
        assertThat(refused(map, log)).containsExactly("column-twice@1:0");
        Recording run = read(map.replace("\"x [km/h]\"", "\"x [km/h]\", position: 4"), log);
        assertThat(Logged.values(run, ModelChannel.VEHICLE_SPEED)[0]).isEqualTo(20 / 3.6);
    }

    @Test
    void missingUnitNamesTheColumn() {
        String map = MAP.replace("coolant [°C]", "coolant");
        Finding fault = Logged.faults(folder, map, rows(5).replace("coolant [°C]", "coolant"))
                .get(0);
        assertThat(Logged.at(fault)).startsWith("unit-missing@5:");
        assertThat(fault.message()).contains("'coolant'", "coolant_temperature");
    }

    @Test
    void bracketsWithoutAUnitAreNoUnit() {
        String map = MAP.replace("coolant [°C]", "coolant (mean)");
        assertThat(refused(map, rows(5).replace("coolant [°C]", "coolant (mean)")))
                .allMatch(f -> f.startsWith("unit-missing@5:"));
    }

    @Test
    void wrongUnitInTheHeader() {
        String map = MAP.replace("coolant [°C]", "coolant [mph]");
        assertThat(refused(map, rows(5).replace("coolant [°C]", "coolant [mph]")))
                .allMatch(f -> f.startsWith("unit-wrong@5:"));
    }

    @Test
    void timeWithoutUnit() {
        assertThat(refused(MAP.replace("t [s]", "t"), rows(5).replace("t [s]", "t")))
                .containsExactly("unit-missing@1:1");
    }

    @Test
    void mapAndHeaderDisagree() {
        Recording run = read(MAP.replace("\"speed [km/h]\"", "\"speed [km/h]\", unit: mph"), rows(20));
        assertThat(Logged.finding(run, "unit-differs-from-header").severity()).isEqualTo(Severity.WARNING);
    }

    @Test
    void oneColumnForTwoChannels() {
        String map = MAP + "  oil_temperature: {column: \"coolant [°C]\"}\n";
        assertThat(Logged.keys(read(map, rows(20)))).contains("column-used-twice");
    }

    @Test
    void textAmongNumbers() {
        String log = rows(100).replace("\n7,7,", "\n7,warm,").replace("\n9,9,", "\n9,hot,");
        Finding fault = Logged.faults(folder, MAP, log).get(0);
        assertThat(Logged.at(fault)).isEqualTo("text-in-number-column@9:2");
        assertThat(fault.values()).containsEntry("samples", 2).containsEntry("lines", List.of(9, 11));
        assertThat(fault.message()).contains("'warm'", "missing");
    }

    @Test
    void textAmongNumbersWhereTheMapLivesWithIt() {
        String log = rows(100).replace("\n7,7,", "\n7,warm,").replace("\n9,9,", "\n9,hot,");
        Recording run = read(MAP + SKIP, log);
        assertThat(Logged.finding(run, "text-in-number-column").values()).containsEntry("samples", 2);
        Channel speed = run.channel(ModelChannel.VEHICLE_SPEED).orElseThrow();
        assertThat(speed.count(Channel.NOT_A_NUMBER)).isEqualTo(2);
        assertThat(speed.values()[7]).isNaN();
        assertThat(speed.good()).isEqualTo(98);
    }

    @Test
    void aColumnThatIsMostlyText() {
        String log = HEADER + "0,slow,800,20\n1,fast,810,20\n2,3,820,21\n";
        assertThat(refused(MAP + SKIP, log)).containsExactly("text-in-number-column@2:2");
    }

    @Test
    void wordsAndNumbersThatMeanNoValue() {
        String log = HEADER + "0,1,800,20\n1,ERR,810,-\n2,255,820,N/A\n3,4,800,22\n";
        String map = MAP.replace("\"speed [km/h]\"", "\"speed [km/h]\", missing: [err, \"255\"]");
        Recording run = read(map, log);
        assertThat(run.channel(ModelChannel.VEHICLE_SPEED).orElseThrow().flags())
                .containsExactly(Channel.OK, Channel.BLANK, Channel.BLANK, Channel.OK);
        assertThat(run.channel(ModelChannel.COOLANT_TEMPERATURE).orElseThrow().count(Channel.BLANK))
                .isEqualTo(2);
    }

    @Test
    void rowsWithoutTime() {
        Recording run = read(MAP, rows(100).replace("\n7,7,", "\n,7,"));
        assertThat(Logged.at(Logged.finding(run, "rows-without-time"))).isEqualTo("rows-without-time@9:1");
        assertThat(run.time()).hasSize(99);
        assertThat(refused(MAP, rows(100).replaceAll("\n(\\d+)(\\d),", "\n$1:$2,")))
                .contains("time-unreadable@12:1");
    }

    @Test
    void aDecimalCommaInAFileCutByCommas() {
        String log = HEADER + "0,1,5,800,20,5\n1,1,6,800,20,5\n2,3,800,21\n";
        assertThat(refused(MAP, log)).containsExactly("rows-too-wide@2:5");
    }

    @Test
    void someRowsTooWideOrTooNarrowOrDamaged() {
        String log = rows(50).replace("\n5,5,", "\n5,5,5,")
                .replace("\n6,6,806,20\n", "\n6,6\n")
                .replace("\n8,8,", "\n8,\"8,");
        Recording run = read(MAP, log);
        assertThat(Logged.at(Logged.finding(run, "rows-too-wide"))).isEqualTo("rows-too-wide@7:5");
        assertThat(Logged.at(Logged.finding(run, "rows-too-narrow"))).isEqualTo("rows-too-narrow@8:0");
        assertThat(Logged.at(Logged.finding(run, "rows-damaged"))).isEqualTo("rows-damaged@10:0");
        assertThat(run.time()).hasSize(48);
    }

    @Test
    void trailingCommasAreNoSurplus() {
        assertThat(Logged.keys(read(MAP, rows(50).replaceAll("(\\d)\n", "$1, \n"))))
                .doesNotContain("rows-too-wide");
    }

    /** The last number of a cut row may be half of itself: it does not count. */
    @Test
    void theLastRowIsCutShort() {
        Recording run = read(MAP, rows(50) + "50,1,80");
        assertThat(Logged.at(Logged.finding(run, "last-row-cut"))).isEqualTo("last-row-cut@52:0");
        assertThat(Logged.values(run, ModelChannel.VEHICLE_SPEED)).hasSize(51);
        assertThat(Logged.values(run, ModelChannel.ENGINE_SPEED)[50]).isNaN();
        assertThat(Logged.keys(read(MAP, rows(50) + "50,1,\"80"))).contains("last-row-cut");
        assertThat(Logged.keys(read(MAP, rows(50) + "50,1,800,25"))).doesNotContain("last-row-cut");
    }

    @Test
    void zeroBytesAfterALossOfPower() {
        Recording run = read(MAP, rows(50) + "\0".repeat(5000));
        assertThat(run.time()).hasSize(50);
        assertThat(Logged.at(Logged.finding(run, "last-row-cut"))).isEqualTo("last-row-cut@52:0");
    }

    @Test
    void aColumnWithoutAnyValue() {
        assertThat(refused(MAP, HEADER + "0,1,800,\n1,2,810,\n2,3,820,\n")).containsExactly("channel-empty@0:0");
    }

    @Test
    void samplesThatCannotBeRight() {
        String log = rows(50).replace("\n5,5,805,20\n", "\n5,5,805,-60\n");
        Recording run = read(MAP, log);
        Finding finding = Logged.finding(run, "samples-out-of-range");
        assertThat(Logged.at(finding)).isEqualTo("samples-out-of-range@7:4");
        assertThat(finding.severity()).isEqualTo(Severity.WARNING);
        assertThat(run.channel(ModelChannel.COOLANT_TEMPERATURE).orElseThrow().flags()[5])
                .isEqualTo(Channel.OUT_OF_RANGE);
        String wide = MAP.replace("\"coolant [°C]\"", "\"coolant [°C]\", range: [-80 degC, 140 degC], spike: 200 K");
        assertThat(Logged.values(read(wide, log), ModelChannel.COOLANT_TEMPERATURE)[5])
                .isCloseTo(213.15, within(1e-9));
    }

    @Test
    void aCoolantGaugeThatNeverMoves() {
        StringBuilder log = new StringBuilder(HEADER);
        for (int i = 0; i < 400; i++) {
            log.append(i).append(i % 2 == 0 ? ",10,800,88\n" : ",11,801,88\n");
        }
        Finding fault = Logged.faults(folder, MAP, log.toString()).get(0);
        assertThat(fault.key()).isEqualTo("channel-constant");
        assertThat(fault.values()).containsEntry("value", "88.0 degC").containsEntry("samples", 400);
    }

    @Test
    void aShortRunMayHoldOneTemperature() {
        StringBuilder log = new StringBuilder(HEADER);
        for (int i = 0; i < 100; i++) {
            log.append(i).append(i % 2 == 0 ? ",10,800,88\n" : ",11,801,88\n");
        }
        Finding finding = Logged.finding(read(MAP, log.toString()), "channel-constant");
        assertThat(finding.severity()).isEqualTo(Severity.WARNING);
        assertThat(finding.values())
                .containsEntry("channel", "coolant_temperature")
                .containsEntry("samples", 100);
    }

    @Test
    void aStandingVehicleIsNoDeadChannelAndASteadyOneIsLookedAt() {
        StringBuilder log = new StringBuilder(HEADER);
        for (int i = 0; i < 100; i++) {
            log.append(i)
                    .append(",0,")
                    .append(800 + i % 3)
                    .append(',')
                    .append(20 + i / 10)
                    .append('\n');
        }
        assertThat(Logged.finding(read(MAP, log.toString()), "channel-constant").severity())
                .isEqualTo(Severity.NOTE);
        assertThat(Logged.finding(read(MAP, log.toString().replace(",0,8", ",50,8")), "channel-constant")
                        .severity())
                .isEqualTo(Severity.WARNING);
    }

    @Test
    void aFuelChannelWithoutFuelIsDead() {
        String map = MAP + "  fuel_flow: {column: \"fuel [g/s]\"}\n";
        String log =
                rows(100).replaceAll("(\\d)\n", "$1,0.000\n").replace("coolant [°C]\n", "coolant [°C],fuel [g/s]\n");
        Finding finding = Logged.finding(read(map, log), "channel-dead");
        assertThat(finding.severity()).isEqualTo(Severity.WARNING);
        assertThat(finding.values())
                .containsEntry("channel", "fuel_flow")
                .containsEntry("value", "0.0 g/s")
                .containsEntry("samples", 100);
    }

    @Test
    void everyRunBeginsWithASummary() {
        Finding first = read(MAP, rows(50)).findings().get(0);
        assertThat(first.key()).isEqualTo("recording-read");
        assertThat(first.values()).containsEntry("rows", 50).containsEntry("length_s", 49.0);
    }
}
