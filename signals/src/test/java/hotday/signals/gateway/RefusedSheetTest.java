package hotday.signals.gateway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sheets of the wrong form: all faults at once, each with its place, and never anything but an answer. */
class RefusedSheetTest {
    @TempDir
    private Path folder;

    private TypedNetworks typed;

    @BeforeEach
    void aSoundSheet() {
        typed = TypedNetworks.in(folder);
    }

    private InputException refused() {
        return catchThrowableOfType(InputException.class, () -> typed.check());
    }

    @ParameterizedTest(name = "{0}: {1} -> {2}")
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "unknown-key;    `gateway: {poll: 5 ms`; `gateway: {poll: 5 ms, pole: 1 ms`;  2:23",
                "key-missing;    `    bit_rate: 500 kbit/s\n`; ``;  4:3",
                "out-of-range;   500 kbit/s;        5 Mbit/s;        6:15",
                "unit-missing;   500 kbit/s;        500;             6:15",
                "no-such-file;   dbc: left.dbc;     dbc: lost.dbc;   5:10",
                "is-folder;      dbc: left.dbc;     dbc: .;          0",
                "value-wrong;    from: left.Fast.Speed; from: Speed; 24:11",
                "value-wrong;    `  - from: left.Fast.Speed\n    to`; `  - to`;  24:5",
                "out-of-range;   time_out: 40 ms;   time_out: 2 h;   26:15",
                "number-wrong;   hold: 2;           hold: often;     32:11",
                "word-wrong;     safe: 0 rpm;       `safe: 0 rpm\n    clip: perhaps`; 28:11",
                "yaml-syntax;    `table: {off: off, on: on}`; `table: {off: off, on: [}`; 45:28",
                "key-twice;      safe: 0 rpm;       `safe: 0 rpm\n    safe: 1 rpm`; 28:5",
            })
    void isRefusedWhereItStands(String key, String old, String other, String place) {
        typed.change(TypedNetworks.SHEET, old, other);
        Finding first = refused().findings().get(0);
        assertThat(first.key()).isEqualTo(key);
        assertThat(first.place().orElseThrow().toString())
                .isEqualTo(place.equals("0") ? folder.resolve(".").toString() : typed.sheet() + ":" + place);
    }

    @Test
    void allFaultsComeAtOnce() {
        typed.change(TypedNetworks.SHEET, "time_out: 40 ms", "time_out: soon");
        typed.change(TypedNetworks.SHEET, "dbc: right.dbc", "dbc: lost.dbc");
        typed.change(TypedNetworks.SHEET, "limit: 250 ms", "limit: 250 kg");
        assertThat(refused().findings())
                .extracting(Finding::key)
                .containsExactly("no-such-file", "number-wrong", "unit-wrong");
    }

    @Test
    void oneNetworkIsNotEnoughAndNineAreTooMany() {
        String text = typed.text(TypedNetworks.SHEET);
        int from = text.indexOf("  right:");
        int to = text.indexOf("translations:");
        String right = text.substring(from, to);
        typed.write(TypedNetworks.SHEET, text.substring(0, from) + text.substring(to));
        assertThat(refused()).hasMessageContaining("describes 1").hasMessageContaining("2 to 8");
        StringBuilder many = new StringBuilder(text.substring(0, to));
        for (int i = 0; i < 7; i++) {
            many.append(right.replace("right:", "right" + i + ":"));
        }
        typed.write(TypedNetworks.SHEET, many + text.substring(to));
        assertThat(refused()).hasMessageContaining("describes 9");
    }

    @Test
    void hostileSizesAreRefusedOrAnswered() {
        String text = typed.text(TypedNetworks.SHEET);
        String line = "  - {to: right.Shown.Speed, fixed: 0 rpm}\n";
        typed.write(TypedNetworks.SHEET, text.replace("paths:", line.repeat(2001) + "paths:"));
        assertThat(refused()).hasMessageContaining("lists 2006").hasMessageContaining("2000");
        typed.write(TypedNetworks.SHEET, text.replace("paths:", line.repeat(1990) + "paths:"));
        assertThat(typed.check().findings()).extracting(Finding::key).contains("target-twice");
        typed.write(TypedNetworks.SHEET, text + "# " + "x".repeat(5_000_000));
        assertThat(refused().findings()).extracting(Finding::key).containsExactly("file-too-large");
        typed.write(TypedNetworks.SHEET, "a: " + "[".repeat(10_000));
        assertThat(refused().findings()).hasSize(1);
    }

    @Test
    void aNetworkOfTwoThousandMessagesIsAnsweredInSeconds() {
        StringBuilder dbc = new StringBuilder(typed.text(TypedNetworks.LEFT));
        StringBuilder messages = new StringBuilder();
        for (int i = 0; i < 2000; i++) {
            dbc.append("BO_ ").append(0x8000_1000L + i).append(" M").append(i).append(": 8 ECM\n");
            messages.append("      M").append(i).append(": {every: 1.7 s}\n");
        }
        typed.write(TypedNetworks.LEFT, dbc.toString());
        typed.change(TypedNetworks.SHEET, "      Asked: {every: 20 ms}\n", "      Asked: {every: 20 ms}\n" + messages);
        GatewayReport report = typed.check();
        assertThat(report.buses().get(0).messages()).hasSize(2004);
        assertThat(report.buses().get(0).load()).isBetween(0.3, 0.7);
    }

    @Test
    void damagedSheetsAreAnsweredNeverFailed() {
        damaged(200);
    }

    @Test
    @Tag("slow")
    void manyDamagedSheetsAreAnsweredNeverFailed() {
        damaged(5000);
    }

    private void damaged(int count) {
        byte[] sound = typed.text(TypedNetworks.SHEET).getBytes(StandardCharsets.UTF_8);
        Random random = new Random(3);
        int refused = 0;
        for (int i = 0; i < count; i++) {
            byte[] damaged = sound.clone();
            for (int k = random.nextInt(6); k >= 0; k--) {
                damaged[random.nextInt(damaged.length)] =
                        (byte) (random.nextBoolean() ? sound[random.nextInt(sound.length)] : 32 + random.nextInt(95));
            }
            refused += refusedBytes(damaged) ? 1 : 0;
        }
        assertThat(refused).isBetween(count / 20, count - 1);
    }

    private boolean refusedBytes(byte[] bytes) {
        try {
            Files.write(typed.sheet(), bytes);
            typed.check();
            return false;
        } catch (InputException e) {
            assertThat(e.findings()).isNotEmpty().allMatch(f -> f.place().isPresent());
            return true;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
