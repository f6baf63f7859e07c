package hotday.signals.gateway;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.finding.Severity;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One known fault in a sound sheet, and it alone is found, where it stands. */
class BrokenSheetTest {
    @TempDir
    private Path folder;

    private TypedNetworks typed;

    @BeforeEach
    void aSoundSheet() {
        typed = TypedNetworks.in(folder);
    }

    @Test
    void aSoundSheetHasNothingToTell() {
        assertThat(typed.check().findings()).isEmpty();
        assertThat(typed.check().holds()).isTrue();
    }

    /** Where it must be told: at the first place of {@code at} behind {@code behind} in the file named. */
    private Place place(String file, String behind, String at) {
        String text = typed.text(file);
        int start = text.indexOf(at, text.indexOf(behind));
        assertThat(text.indexOf(behind)).as(behind).isNotNegative();
        assertThat(start).as(at).isNotNegative();
        int line = (int) text.substring(0, start).chars().filter(c -> c == '\n').count() + 1;
        int column = start - text.lastIndexOf('\n', start - 1);
        return new Place(folder.resolve(file).toString(), line, column);
    }

    @ParameterizedTest(name = "{0}: {2} -> {3}")
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                // signals and networks
                "source-missing;          sheet.yaml; from: left.Fast.Speed; from: left.Fast.Speeed; translations; left.Fast.Speeed",
                "source-missing;          sheet.yaml; from: left.Fast.Speed; from: lift.Fast.Speed; translations; lift.Fast",
                "source-missing;          sheet.yaml; from: left.Fast.Speed; from: left.Fest.Speed; translations; left.Fest",
                "target-missing;          sheet.yaml; to: right.Shown.Speed; to: right.Shown.Sped; translations; right.Shown.Sped",
                "target-missing;          sheet.yaml; to: right.Shown.Speed; to: right.State.Sped; translations; right.State.Sped",
                "message-missing;         sheet.yaml; Clutch: {every: 20 ms}; `Clutch: {every: 20 ms}\n      Cloth: {every: 20 ms}`; Cloth; Cloth",
                "target-twice;            sheet.yaml; `paths:`; `  - {to: right.Shown.Speed, fixed: 0 rpm}\npaths:`; {to; right.Shown.Speed",
                // units
                "unit-mismatch;           left.dbc;   `kPa abs`; km/h; sheet: ; left.Slow.Pressure",
                "unit-ambiguous;          left.dbc;   `kPa abs`; kPa; sheet: ; left.Slow.Pressure",
                "unit-missing;            left.dbc;   `\"kPa abs\"`; `\"\"`; sheet: ; left.Slow.Pressure",
                "unit-unknown;            left.dbc;   `kPa abs`; kilopond; sheet: ; left.Slow.Pressure",
                "unit-ambiguous;          left.dbc;   `[-40|210] \"degC\"`; `[-40|210] \"degF\"`; sheet: ; left.Slow.Coolant",
                // ranges and steps
                "range-loss;              left.dbc;   `[-40|210]`; `[-40|213]`; sheet: ; right.Shown.Coolant",
                "range-loss;              right.dbc;  `[0|40]`; `[0|35]`; sheet: ; right.Shown.Pressure",
                "resolution-loss;         right.dbc;  `24|16@1+ (0.01,0)`; `24|16@1+ (0.02,0)`; sheet: ; right.Shown.Pressure",
                "special-value-not-mapped; left.dbc;  `254 \"error\"`; `254 \"error\" 100 \"cold\"`; sheet: ; left.Slow.Coolant",
                "special-value-hit;       right.dbc;  `384 Coolant 255 \"not available\"`; `384 Coolant 255 \"not available\" 200 \"hot\"`; sheet: ; right.Shown.Coolant",
                // tables
                "table-gap;               sheet.yaml; `not available: safe, 2: safe`; 2: safe; table; {off",
                "word-unknown;            sheet.yaml; `not available: safe, 2: safe`; `not available: safe, 2: open`; table; {off",
                "raw-value-impossible;    sheet.yaml; `not available: safe, 2: safe`; `not available: safe, 2: 4`; table; {off",
                "row-twice;               sheet.yaml; `not available: safe, 2: safe`; `not available: safe, 2: safe, 3: safe`; table; {off",
                // silence
                "time-out-missing;        sheet.yaml; `    time_out: 40 ms\n`; ``; translations; from",
                "time-out-too-long;       sheet.yaml; time_out: 40 ms; time_out: 51 ms; left.Fast.Speed; 51 ms",
                "time-out-too-long;       sheet.yaml; hold: 2; hold: 3; left.Slow.Coolant; 300 ms",
                "time-out-too-short;      sheet.yaml; time_out: 40 ms; time_out: 12 ms; left.Fast.Speed; 12 ms",
                "safe-value-missing;      sheet.yaml; `    safe: 0 rpm\n`; ``; translations; from",
                "value-out-of-range;      sheet.yaml; safe: 120 degC; safe: 300 degC; hold; 300 degC",
                "unit-missing;            sheet.yaml; safe: 120 degC; `safe: 120`; hold; `120`",
                "unit-mismatch;           sheet.yaml; safe: 120 degC; safe: 120 rpm; hold; 120 rpm",
                "value-wrong;             sheet.yaml; safe: 120 degC; safe: warm; hold; warm",
                // senders, counters, checksums
                "two-senders;             right.dbc;  384 Shown: 8 GATE; 384 Shown: 8 BOX; translations; right.Shown.Speed",
                "sender-missing;          right.dbc;  384 Shown: 8 GATE; 384 Shown: 8 nobody; translations; right.Shown.Speed",
                "two-senders;             right.dbc;  BO_ 1024 State; BO_ 384 State; networks; State: {every",
                "counter-missing;         sheet.yaml; `counter: Alive, `; ``; Fast; Fast: {every",
                "checksum-missing;        sheet.yaml; `, checksum: Crc`; ``; networks; Fast: {every",
                "checksum-missing;        right.dbc;  `\"bar abs\" BOX`; `\"bar abs\" BOX\n SG_ MsgChecksum : 48|8@1+ (1,0) [0|255] \"\" BOX`; Shown; Shown",
                "counter-wrong;           sheet.yaml; counter: Alive; counter: Alife; networks; Fast: {every",
                "counter-wrong;           sheet.yaml; counter: Alive; `counter: Alive, counter_last: 20`; networks; Fast: {every",
                "counter-wrong;           sheet.yaml; counter: Alive; `counter: Alive, counter_step: 2`; networks; Fast: {every",
                "counter-wrong;           sheet.yaml; counter: Alive; `counter: Alive, counter_first: 9, counter_last: 9`; networks; Fast: {every",
                "counter-wrong;           left.dbc;   Alive : 48|4@1+; Alive : 48|20@1+; networks; Fast: {every",
                "checksum-wrong;          sheet.yaml; checksum: Crc,; checksum: Crk,; networks; Fast: {every",
                "checksum-wrong;          sheet.yaml; checksum: Crc,; checksum: none,; networks; checksum_rule",
                "checksum-wrong;          sheet.yaml; kind: crc-8 sae j1850; `kind: sum, bytes: 0-7`; networks; checksum_rule",
                "checksum-wrong;          sheet.yaml; kind: crc-8 sae j1850; `kind: crc, poly: 0x1021, init: 0, xor: 0`; networks; checksum_rule",
                "checksum-wrong;          left.dbc;   Crc : 56|8@1+; Crc : 48|16@1+; networks; checksum_rule",
                // arithmetic
                "arithmetic-too-wide;     left.dbc;   `Pressure : 8|16@1+ (1,0)`; `Pressure : 8|16@1+ (1.0000000000000002,0)`; sheet: ; left.Slow.Pressure",
                // time on the bus
                "period-missing;          sheet.yaml; `      State: {every: 100 ms}\n`; ``; networks; right:",
                "period-missing;          sheet.yaml; State: {every: 100 ms}; State: {on_change: 100 ms}; networks; right:",
                "jitter-too-long;         sheet.yaml; Wish: {every: 20 ms}; `Wish: {every: 20 ms, jitter: 20 ms, deadline: 60 ms}`; right:; Wish",
                "response-too-late;       sheet.yaml; Wish: {every: 20 ms}; `Wish: {every: 20 ms, deadline: 1.5 ms}`; right:; Wish",
                // paths
                "path-too-late;           sheet.yaml; limit: 250 ms; limit: 160 ms; paths; 160 ms",
                "path-broken;             sheet.yaml; `[right.Wish.Request, left.Asked.Request, `; `[right.Wish.Request, `; paths; left.Clutch.Enable",
                "path-broken;             sheet.yaml; `[right.Wish.Request, `; `[right.Wish.Requst, `; paths; right.Wish.Requst",
                "path-time-missing;       sheet.yaml; `takes: {TCM: 20 ms}`; `takes: {ECM: 20 ms}`; paths; left.Clutch.Enable",
            })
    void isFoundWhereItStands(String key, String file, String old, String other, String behind, String at) {
        typed.change(file, old, other);
        List<Finding> faults = typed.check().findings().stream()
                .filter(f -> f.severity() == Severity.FAULT)
                .toList();
        assertThat(faults).extracting(Finding::key).containsExactly(key);
        assertThat(faults.get(0).place()).contains(place(TypedNetworks.SHEET, behind, at));
    }

    /** Sheets from before rules could be typed are still checked; what is missing is worth a look. */
    @Test
    void aChecksumWithoutARuleIsWorthALook() {
        typed.change(TypedNetworks.SHEET, ", checksum_rule: {kind: crc-8 sae j1850}", "");
        assertThat(typed.check().findings()).extracting(Finding::key).containsExactly("checksum-rule-missing");
        assertThat(typed.check().holds()).isTrue();
    }

    @Test
    void floatingPointGetsOverAsItIsOnly() {
        typed.change(
                TypedNetworks.LEFT,
                "BO_ 640 Clutch",
                "BO_ 600 Real: 8 TCM\n SG_ Torque : 0|32@1- (1,0) [0|0] \"N m\" GATE\n SG_ Whole : 32|16@1- (1,0) [0|0] \"N m\" GATE\nBO_ 640 Clutch");
        typed.change(TypedNetworks.LEFT, "VAL_ 768", "SIG_VALTYPE_ 600 Torque : 1;\nVAL_ 768");
        typed.change(
                TypedNetworks.RIGHT,
                "BO_ 1024 State",
                "BO_ 900 Felt: 4 GATE\n SG_ Torque : 0|32@1- (1,0) [0|0] \"N m\" BOX\nBO_ 1024 State");
        typed.change(TypedNetworks.SHEET, "      Clutch: {", "      Real: {every: 20 ms}\n      Clutch: {");
        typed.change(TypedNetworks.SHEET, "      State: {", "      Felt: {every: 20 ms}\n      State: {");
        typed.change(
                TypedNetworks.SHEET,
                "paths:",
                "  - {from: left.Real.Torque, to: right.Felt.Torque, time_out: 60 ms, safe: 0 N m}\npaths:");
        assertThat(typed.check().findings()).extracting(Finding::key).containsExactly("floating-point");
        typed.write(TypedNetworks.RIGHT, typed.text(TypedNetworks.RIGHT) + "SIG_VALTYPE_ 900 Torque : 1;\n");
        assertThat(typed.check().findings()).isEmpty();
        typed.change(TypedNetworks.SHEET, "time_out: 60 ms, safe: 0 N m", "factor: 2, time_out: 60 ms, safe: 0 N m");
        assertThat(typed.check().findings()).extracting(Finding::key).containsExactly("floating-point");
        typed.change(
                TypedNetworks.SHEET,
                "left.Real.Torque, to: right.Felt.Torque, factor: 2",
                "left.Real.Whole, to: right.Felt.Torque");
        assertThat(typed.check().findings()).extracting(Finding::key).containsExactly("floating-point");
    }

    @Test
    void aFrameLongerThanAClassicOneIsLeftOut() {
        typed.change(
                TypedNetworks.LEFT,
                "BO_ 768 Asked: 2",
                "BO_ 900 Long: 12 TCM\n SG_ X : 0|8@1+ (1,0) [0|0] \"\" GATE\nBO_ 768 Asked: 2");
        typed.change(TypedNetworks.SHEET, "      Asked: {", "      Long: {every: 100 ms}\n      Asked: {");
        assertThat(typed.check().findings()).extracting(Finding::key).containsExactly("frame-too-long");
        assertThat(typed.check().buses().get(0).messages())
                .anyMatch(m -> m.name().equals("Long") && m.response().isEmpty());
    }

    /** Common practice: half of the bus is worth a look, seven tenths are too much; a typed limit takes their place. */
    @ParameterizedTest
    @CsvSource({
        "54 kbit/s, , load-high",
        "33.3 kbit/s, , load-too-high",
        "54 kbit/s, 30 %, load-too-high",
        "54 kbit/s, 90 %, ''"
    })
    void aFullBusIsTold(String rate, String limit, String key) {
        for (String m : List.of("Wish: {every: 20 ms", "Shown: {every: 100 ms", "State: {every: 100 ms")) {
            typed.change(TypedNetworks.SHEET, m, m.replace("20 ms", "10 ms").replace("100 ms", "10 ms, deadline: 1 s"));
        }
        typed.change(
                TypedNetworks.SHEET,
                "bit_rate: 250 kbit/s",
                "bit_rate: " + rate + (limit == null ? "" : "\n    load_limit: " + limit));
        List<Finding> told = typed.check().findings().stream()
                .filter(f -> f.key().startsWith("load-"))
                .toList();
        assertThat(told).extracting(Finding::key).containsExactlyElementsOf(key.isEmpty() ? List.of() : List.of(key));
        told.forEach(f -> assertThat((double) f.values().get("load_percent")).isGreaterThan(50));
    }

    @Test
    void lossesThatAreKnownAreToldAndDoNoHarm() {
        typed.change(TypedNetworks.RIGHT, "24|16@1+ (0.01,0) [0|40]", "24|16@1+ (0.02,0) [0|35]");
        typed.change(TypedNetworks.SHEET, "safe: 30 bar abs", "safe: 30 bar abs\n    clip: yes\n    coarser: yes");
        GatewayReport report = typed.check();
        assertThat(report.findings())
                .extracting(Finding::key)
                .containsExactlyInAnyOrder("range-loss", "resolution-loss");
        assertThat(report.findings()).extracting(Finding::severity).containsOnly(Severity.NOTE);
        assertThat(report.holds()).isTrue();
    }

    @Test
    void whatIsWorthALookDoesNoHarm() {
        typed.change(TypedNetworks.SHEET, "Shown: {every: 100 ms}", "Shown: {every: 48 ms}");
        GatewayReport report = typed.check();
        assertThat(report.findings())
                .extracting(Finding::key)
                .containsExactlyInAnyOrder("period-rounded", "rate-repeats", "rate-repeats");
        assertThat(report.holds()).isTrue();
    }

    @Test
    void anEmptyPlaceInAMessageOfTheGatewayIsToldUnlessItIsFilled() {
        typed.change(TypedNetworks.RIGHT, "BO_ 1024", " SG_ Level : 48|8@1+ (0.5,0) [0|100] \"%\" BOX\nBO_ 1024");
        assertThat(typed.check().findings()).extracting(Finding::key).containsExactly("signal-not-filled");
        typed.change(TypedNetworks.SHEET, "paths:", "  - {to: right.Shown.Level, fixed: 50 %}\npaths:");
        assertThat(typed.check().findings()).isEmpty();
    }

    @Test
    void aSenderThatIsGoneMayBeReplaced() {
        typed.change(TypedNetworks.RIGHT, "384 Shown: 8 GATE", "384 Shown: 8 BOX");
        typed.change(TypedNetworks.SHEET, "Shown: {every: 100 ms}", "Shown: {every: 100 ms, from: GATE}");
        assertThat(typed.check().findings()).extracting(Finding::key).containsExactly("sender-replaced");
        assertThat(typed.check().holds()).isTrue();
    }

    @Test
    void periodsOfTheDbcFileStandInAndDifferencesAreTold() {
        String attribute = """
                BA_DEF_ BO_ "GenMsgCycleTime" INT 0 60000;
                BA_DEF_DEF_ "GenMsgCycleTime" 0;
                BA_ "GenMsgCycleTime" BO_ 1024 100;
                """;
        typed.write(TypedNetworks.RIGHT, typed.text(TypedNetworks.RIGHT) + attribute);
        typed.change(TypedNetworks.SHEET, "      State: {every: 100 ms}\n", "");
        assertThat(typed.check().findings()).isEmpty();
        typed.change(TypedNetworks.SHEET, "      Shown:", "      State: {every: 50 ms}\n      Shown:");
        assertThat(typed.check().findings()).extracting(Finding::key).containsExactly("period-differs");
    }

    @Test
    void whatTheDbcFileGotWrongIsTold() {
        typed.write(TypedNetworks.RIGHT, typed.text(TypedNetworks.RIGHT) + "BO_ 77 Half\n");
        assertThat(typed.check().findings()).extracting(Finding::key).containsExactly("statement-not-understood");
        assertThat(typed.check().findings().get(0).place().orElseThrow().file()).endsWith(TypedNetworks.RIGHT);
    }

    /** Maps of words keep no order of their own: texts would differ from one start to the next. */
    @Test
    void wordsAndNamesAreToldInOneOrder() {
        typed.change(TypedNetworks.SHEET, "table: {off: off, on: on}", "table: {off: off, on: open}");
        typed.change(
                TypedNetworks.SHEET,
                "    jitter: 1 ms\n    messages:\n      Wish",
                "    jitter: 1 ms\n    not_on_bus: [P, O, N, M, L, K]\n    messages:\n      Wish");
        GatewayReport report = typed.check();
        assertThat(report.findings())
                .filteredOn(f -> f.key().equals("message-missing"))
                .extracting(f -> f.message().replaceAll(".*message '(.)'.*", "$1"))
                .containsExactly("P", "O", "N", "M", "L", "K");
        assertThat(report.findings())
                .filteredOn(f -> f.key().equals("word-unknown"))
                .extracting(Finding::message)
                .singleElement()
                .asString()
                .endsWith("its words: off, on, not available");
    }
}
