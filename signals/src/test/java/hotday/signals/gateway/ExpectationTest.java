package hotday.signals.gateway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hotday.core.finding.InputException;
import hotday.signals.expect.Verdict;
import hotday.signals.expect.Watchman;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is expected, judged over frames whose outcome is plain. Times in ms. */
class ExpectationTest {
    private static final long MS = 1_000_000;

    @TempDir
    private Path folder;

    private TypedNetworks typed;
    private Path file;
    private Watchman watchman;

    @BeforeEach
    void aSoundSheet() {
        typed = TypedNetworks.in(folder);
        file = folder.resolve("expect.yaml");
    }

    private void expect(String line) throws IOException {
        Files.writeString(file, "expect:\n  - {name: it, " + line + "}\n");
        watchman = new Watchman(TranslationSheet.read(typed.sheet()).expectations(file));
    }

    private void frame(long ms, int network, int id, String hex) {
        byte[] data = HexFormat.of().parseHex(hex);
        watchman.frame(ms * MS, network, id, false, data, 0, data.length);
    }

    private void wish(long ms, String hex) {
        frame(ms, 1, 256, hex);
    }

    private void asked(long ms, String hex) {
        frame(ms, 0, 768, hex);
    }

    private Verdict end(long ms) {
        watchman.end(ms * MS);
        return watchman.verdicts().get(0);
    }

    private static void is(Verdict verdict, int judged, int failed) {
        assertThat(verdict.judged()).isEqualTo(judged);
        assertThat(verdict.failed()).isEqualTo(failed);
    }

    private static final String RESPONSE =
            "when: right.Wish.Request is on, then: left.Asked.Request is on, within: 50 ms";

    @Test
    void anAnswerInTime() throws IOException {
        expect(RESPONSE);
        wish(0, "0000");
        asked(10, "0000");
        wish(100, "0100");
        wish(120, "0100");
        asked(150, "0100");
        is(end(500), 1, 0);
    }

    @Test
    void anAnswerThatComesLateOrNever() throws IOException {
        expect(RESPONSE);
        wish(0, "0000");
        asked(10, "0000");
        wish(100, "0100");
        asked(151, "0100");
        asked(200, "0000");
        wish(210, "0000");
        wish(300, "0100");
        Verdict verdict = end(400);
        is(verdict, 2, 2);
        assertThat(verdict.first()).extracting(Verdict.Failure::time).containsExactly(100 * MS, 300 * MS);
        assertThat(verdict.first().get(0).what()).isEqualTo("left.Asked.Request is still off after 50 ms");
    }

    @Test
    void whatIsOnFromTheBeginningHasNotBecomeSoAndAnOpenEndIsNotJudged() throws IOException {
        expect(RESPONSE);
        wish(0, "0100");
        wish(100, "0000");
        wish(200, "0100");
        is(end(240), 1, 0);
    }

    @Test
    void neverWhile() throws IOException {
        expect("never: right.Shown.Coolant above 130 degC, while: left.Slow.Coolant is error, after: 20 ms");
        frame(0, 1, 384, "0000b40000000000"); // 140 degC, not yet while
        frame(10, 0, 512, "fe00000000000000");
        frame(20, 1, 384, "0000b40000000000"); // too early
        frame(31, 1, 384, "0000b40000000000"); // stands at 30 already, and comes again
        frame(40, 1, 384, "0000a00000000000");
        frame(50, 0, 512, "7800000000000000");
        frame(60, 1, 384, "0000b40000000000");
        Verdict verdict = end(100);
        assertThat(verdict.failed()).isEqualTo(2);
        assertThat(verdict.first().get(0).time()).isEqualTo(30 * MS);
        assertThat(verdict.first().get(0).what()).isEqualTo("right.Shown.Coolant is 140 °C");
        assertThat(verdict.first().get(0).limit())
                .isEqualTo("never right.Shown.Coolant above 130 degC while left.Slow.Coolant is error");
    }

    /** Both change in one frame, and so does a signal that does not matter: one failure. */
    @Test
    void oneFrameFailsOnce() throws IOException {
        expect("never: right.Shown.Coolant above 130 degC, while: right.Shown.Enable is on");
        frame(0, 1, 384, "0000780000000000");
        frame(10, 1, 384, "0000b40000010000");
        is(end(20), 1, 1);
    }

    @Test
    void alwaysAndWordsThatBeginWithNot() throws IOException {
        expect("always: right.Shown.Enable is not available");
        frame(0, 1, 384, "0000000000030000");
        frame(10, 1, 384, "0000000000010000");
        is(end(20), 2, 1);
        expect("always: right.Shown.Enable is not on");
        frame(0, 1, 384, "0000000000030000");
        frame(10, 1, 384, "0000000000010000");
        is(end(20), 2, 1);
    }

    @Test
    void framesThatKeepComing() throws IOException {
        expect("message: right.Shown, every: 100 ms, not_closer: 10 ms");
        for (long ms : new long[] {100, 150, 155, 255, 356}) {
            frame(ms, 1, 384, "0000000000000000");
        }
        Verdict verdict = end(457);
        is(verdict, 6, 3);
        assertThat(verdict.first())
                .extracting(Verdict.Failure::what)
                .containsExactly(
                        "right.Shown came after 5 ms",
                        "right.Shown came after 101 ms",
                        "right.Shown did not come any more for 101 ms");
    }

    /** 1000 rpm = 4000 raw; a step is 0.25 rpm. */
    @Test
    void equalAndNotTooOld() throws IOException {
        expect("signal: right.Shown.Speed, equals: left.Fast.Speed, tolerance: 1 step, not_older: 50 ms");
        frame(0, 1, 384, "ffff000000000000"); // nothing to compare with, and outside the limits
        frame(10, 0, 256, "a00f000000000000");
        frame(20, 0, 256, "b00f000000000000");
        frame(60, 1, 384, "a00f000000000000"); // the first is 50 ms old
        frame(61, 1, 384, "a00f000000000000"); // now too old, 4 rpm off
        frame(62, 1, 384, "b10f000000000000"); // one step
        frame(63, 1, 384, "b20f000000000000"); // two
        frame(90, 1, 384, "b00f000000000000"); // nothing in time
        is(end(100), 5, 3);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "when: right.Wish.Request is on, then: left.Asked.Request is on; within",
                "when: right.Wish.Request is open, then: left.Asked.Request is on, within: 1 s; neither a number nor a word",
                "when: right.Wish.Request on, then: left.Asked.Request is on, within: 1 s; is no condition",
                "when: right.Wish.Reqest is on, then: left.Asked.Request is on, within: 1 s; did you mean 'Request'?",
                "when: right.Wish.Request is on, then: left.Asked.Request is on, within: 1; has no unit",
                "never: right.Shown.Coolant above 130; a unit is needed, such as °C",
                "never: right.Shown.Coolant above 130 rpm; measure no quantity in common",
                "never: right.Shown.Coolant above 130 degC, after: 1 s; 'while'",
                "never: right.Shown.Coolant above 130 degC, until: 1 s; not a key known here",
                "message: right.Shwn, every: 1 s; there is no message 'right.Shwn'",
                "signal: right.Shown.Speed, equals: left.Fast.Speed, tolerance: 1, not_older: 1 s; is typed like '1 step'",
                "signal: right.Shown.Speed, equals: left.Slow.Coolant, tolerance: 1 step, not_older: 1 s; measure no quantity",
                "to: right.Shown.Speed; an expectation has"
            })
    void whatCannotBeUnderstoodIsRefusedWhereItStands(String line, String message) {
        assertThatThrownBy(() -> expect(line)).isInstanceOfSatisfying(InputException.class, e -> {
            assertThat(e.findings()).hasSize(1);
            assertThat(e.findings().get(0).message()).contains(message);
            assertThat(e.findings().get(0).place().orElseThrow().line()).isEqualTo(2);
            assertThat(e.findings().get(0).place().orElseThrow().column()).isPositive();
        });
    }

    @Test
    void mayStandInTheSheet() {
        typed.write(
                TypedNetworks.SHEET,
                typed.text(TypedNetworks.SHEET) + "expect:\n  - {name: it, message: right.Shown, every: 1 s}\n");
        assertThat(TranslationSheet.read(typed.sheet()).expectations())
                .singleElement()
                .satisfies(e -> assertThat(e.name()).isEqualTo("it"));
        assertThat(typed.check().findings()).isEmpty();
    }
}
