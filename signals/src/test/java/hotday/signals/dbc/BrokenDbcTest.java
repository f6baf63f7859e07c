package hotday.signals.dbc;

import static hotday.signals.dbc.Typed.file;
import static hotday.signals.dbc.Typed.keys;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BrokenDbcTest {
    private static final String GOOD = " SG_ good : 0|8@1+ (1,0) [0|0] \"\" x";

    @TempDir
    private Path folder;

    private static void refused(byte[] bytes, String words) {
        assertThatThrownBy(() -> DbcFile.parse(Typed.NAME, bytes))
                .isInstanceOf(InputException.class)
                .hasMessageContaining(words);
    }

    @Test
    void refusesWhatIsNoDbc() {
        refused(new byte[0], "empty");
        refused(" \n".getBytes(StandardCharsets.US_ASCII), "empty");
        refused(new byte[] {'P', 'K', 3, 4, 0}, "binary");
        refused("BO_".getBytes(StandardCharsets.UTF_16), "UTF-16");
        refused("time,speed\n1,2\n".getBytes(StandardCharsets.US_ASCII), "no statement");
        assertThatThrownBy(() -> DbcFile.read(folder)).hasMessageContaining("is a folder");
        assertThatThrownBy(() -> DbcFile.read(folder.resolve("nothing.dbc"))).hasMessageContaining("no such file");
    }

    /** The finding stands where the fault is; what surrounds it is used, the line itself comes back as it was. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '~',
            quoteCharacter = '\'',
            value = {
                "SG_ s 0|8@1+ (1,0) [0|0] \"\" x ~ 3:8: SG_: ':' is needed",
                "SG_ s : 0-8@1+ (1,0) [0|0] \"\" x ~ 3:9: SG_: first bit",
                "SG_ s : 0|8@2+ (1,0) [0|0] \"\" x ~ 3:13: SG_: byte order",
                "SG_ s : 0|8@1+ (1;0) [0|0] \"\" x ~ 3:18: SG_: ',' is needed",
                "SG_ s : 0|8@1+ (nan,0) [0|0] \"\" x ~ 3:17: SG_: factor",
                "SG_ s : 0|8@1+ (1e999,0) [0|0] \"\" x ~ 3:17: SG_: factor",
                "SG_ s : 0|8@1+ (1,0) [0|0] degC x ~ 3:28: SG_: unit in quotes",
                "SG_ s : 0|8@1+ (1,0) [0|0] \"degC x ~ 3:28: SG_: unit in quotes is needed, the quote is not closed in its line",
                "SG_ s : 0|8@1+ (1,0) [0|0] \"\" x ; ~ 3:33: SG_: end of the line",
                "SG_ s : 99999999999|8@1+ (1,0) [0|0] \"\" x ~ 3:9: SG_: first bit 99999999999 must be 0 to",
                "SG_ ~ 3:4: SG_: name of a signal is needed, the next statement begins",
                "VAL_ 1 good 0 off; ~ 3:15: VAL_: its word in quotes",
                "CM_ SG_ 1 \"text\"; ~ 3:11: CM_: name of a signal",
                "BA_DEF_ \"x\" TEXT; ~ 3:13: BA_DEF_: INT, HEX",
                "SG_MUL_VAL_ 1 good good 5-3; ~ 3:25: SG_MUL_VAL_: the values 5-3 run backwards",
                "SIG_VALTYPE_ 1 good : 3; ~ 3:23: SIG_VALTYPE_: type (0, 1 or 2) 3 must be 0 to 2",
                "// a remark ~ 3:1: first word of a statement is needed, '//' stands there",
            })
    void tellsPlaceAndGoesOn(String line, String finding) {
        DbcFile file = file("BO_ 1 a: 8 x", GOOD, line, " SG_ also : 8|8@1+ (1,0) [0|0] \"\" x");
        assertThat(file.findings()).extracting(Finding::toString).anyMatch(f -> f.startsWith("typed.dbc:" + finding));
        assertThat(keys(file)).containsOnly("statement-not-understood");
        assertThat(file.hasFaults()).isTrue();
        assertThat(file.messages().get(0).signals()).extracting(Signal::name).containsExactly("good", "also");
        assertThat(file.text()).contains("\n" + line.strip() + "\n");
        assertThat(DbcFile.parse(Typed.NAME, file.bytes()).statements()).isEqualTo(file.statements());
    }

    @ParameterizedTest
    @ValueSource(strings = {"BO_ 2 b 8 x", "BO 2 b: 8 x", ": 2 b"})
    void signalsBehindADamagedMessageGoToNobody(String damaged) {
        DbcFile file = file("BO_ 1 a: 8 x", GOOD, damaged, GOOD, "BO_ 3 c: 8 x", GOOD);
        assertThat(keys(file)).containsExactly("statement-not-understood", "signal-without-message");
        assertThat(file.messages()).allMatch(m -> m.signals().size() == 1).hasSize(2);
    }

    @Test
    void identifiersThatNoFrameCanHave() {
        DbcFile file = file("BO_ 2048 a: 8 x", GOOD, "BO_ 3758096384 b: 8 x", GOOD, "BO_ 3221225472 none: 0 x", GOOD);
        assertThat(keys(file))
                .containsExactly("identifier-impossible", "identifier-impossible", "signals-of-no-message");
        assertThat(file.messages()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                " SG_ s : 0|0@1+ (1,0) [0|0] \"\" x",
                " SG_ s : 0|65@1+ (1,0) [0|0] \"\" x",
                " SG_ s : 0|31@1+ (1,0) [0|0] \"\" x\nSIG_VALTYPE_ 1 s : 1;",
                " SG_ s : 0|32@1+ (1,0) [0|0] \"\" x\nSIG_VALTYPE_ 1 s : 2;"
            })
    void signalsOfImpossibleLengthAreNotTaken(String line) {
        DbcFile file = file("BO_ 1 a: 8 x", line);
        assertThat(keys(file)).containsExactly("signal-length");
        assertThat(Typed.decoded(MessageDecoder.of(file.messages().get(0)), "00 00 00 00 00 00 00 00"))
                .containsExactly(Double.NaN);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '~',
            value = {
                "m~m1", "Mm~m1", "m1~m1", "m0M~m1M",
            })
    void unclearMultiplexingIsNotTaken(String first, String second) {
        DbcFile file = file(
                "BO_ 1 a: 8 x",
                " SG_ one " + first + " : 0|8@1+ (1,0) [0|0] \"\" x",
                " SG_ two " + second + " : 8|8@1+ (1,0) [0|0] \"\" x");
        assertThat(keys(file)).containsOnly("multiplexing-unclear");
        assertThat(Typed.decoded(MessageDecoder.of(file.messages().get(0)), "01 01"))
                .containsExactly(Double.NaN, Double.NaN);
    }

    @Test
    void aSecondSignalOfTheNameDoesNotHideACircle() {
        DbcFile file = file(
                "BO_ 1 a: 8 x",
                " SG_ one m0M : 0|8@1+ (1,0) [0|0] \"\" x",
                " SG_ two m1M : 8|8@1+ (1,0) [0|0] \"\" x",
                " SG_ one : 16|8@1+ (1,0) [0|0] \"\" x");
        assertThat(Typed.decoded(MessageDecoder.of(file.messages().get(0)), "01 00 05"))
                .containsExactly(Double.NaN, Double.NaN, 5.0);
    }

    @Test
    void whatDoesNotFitTogetherIsTold() {
        DbcFile file = file(
                "BO_ 1 a: 1 x",
                GOOD,
                " SG_ good : 4|8@1+ (0,0) [0|0] \"\" x",
                "BO_ 1 b: 8 x",
                "CM_ BO_ 2 \"\";",
                "CM_ SG_ 1 bad \"\";",
                "VAL_ 1 good 0 \"a\" 0 \"b\" 0.5 \"c\";",
                "BA_ \"x\" 1;",
                "BA_DEF_ \"y\" ENUM \"a\";",
                "BA_ \"y\" 1;");
        assertThat(keys(file))
                .contains(
                        "signal-twice",
                        "message-twice",
                        "no-such-message",
                        "no-such-signal",
                        "word-twice",
                        "word-of-no-raw-value",
                        "attribute-undefined",
                        "attribute-out-of-range",
                        "signal-beyond-message",
                        "factor-zero",
                        "signals-overlap");
    }

    @Test
    void manyFindingsOfAKindAreCounted() {
        DbcFile file = file("BO_ 1 a: 8 x", "SG_ ?\n".repeat(1000));
        assertThat(file.findings()).hasSize(21);
        assertThat(file.findings().get(20).values()).containsEntry("count", 980);
    }

    /** Texts that would make a careless reader go back again and again, or deep. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "CM_ \"\n",
                "CM_ \\\"\n",
                "FILTER \\\"\n",
                "VAL_ 1 s 0 \"\n",
                "VAL_ 1 s 0 \" 0 \" 0 \"\n",
                "SG_ ",
                "\"\\\"",
                "BA_DEF_ ENUM \"a\",",
                "(",
                "BO_ 1 a: 8 x\n",
                "\r",
                "NS_ :\n",
                "BA_REL_ x\n",
                "\\",
                "m0M ",
                "BU_: a\n,",
                "9"
            })
    void hostileTextsEndSoon(String piece) {
        String text = "BO_ 1 a: 8 x\n" + piece.repeat(500_000 / piece.length());
        assertEndsSoon(() -> Typed.file(text).text());
    }

    /** By the clock of this thread: others may hold up the machine. */
    private static void assertEndsSoon(Runnable work) {
        long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        work.run();
        long after = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        assertThat(Duration.ofNanos(after - before)).isLessThan(Duration.ofSeconds(4));
    }

    @Test
    void aLongChainOfMultiplexorsEndsSoon() {
        int many = 30_000;
        StringBuilder text = new StringBuilder("BO_ 1 a: 8 x\n");
        for (int i = many; i >= 0; i--) {
            text.append(" SG_ s" + i + (i == 0 ? " M" : " m0M") + " : 0|8@1+ (1,0) [0|0] \"\" x\n");
        }
        for (int i = 1; i <= many; i++) {
            text.append("SG_MUL_VAL_ 1 s" + i + " s" + (i - 1) + " 7-7;\n");
        }
        assertEndsSoon(() -> assertThat(Typed.decoded(Typed.decoder(text.toString()), "07"))
                .hasSize(many + 1)
                .containsOnly(7.0));
    }

    /** Whatever is done to a file, it is read, and what is written reads as the same. */
    @Test
    void damagedFilesAreReadAndWrittenBack() {
        Random random = new Random(11);
        String good = String.join("\n", DbcFileTest.FULL) + "\n";
        String alphabet = " \n\r\"\\;:,|@()[]SGBOm0M-.e\u00e9";
        for (int round = 0; round < 4_000; round++) {
            StringBuilder text = new StringBuilder(good);
            for (int hits = 1 + random.nextInt(6); hits > 0; hits--) {
                int at = random.nextInt(text.length());
                switch (random.nextInt(3)) {
                    case 0 -> text.deleteCharAt(at);
                    case 1 -> text.insert(at, alphabet.charAt(random.nextInt(alphabet.length())));
                    default -> text.setCharAt(at, alphabet.charAt(random.nextInt(alphabet.length())));
                }
            }
            DbcFile file = file(text.toString());
            DbcFile again = DbcFile.parse(Typed.NAME, file.bytes());
            assertThat(again.text()).isEqualTo(file.text());
            assertThat(again.statements()).isEqualTo(file.statements());
            file.messages().forEach(m -> Typed.decoded(MessageDecoder.of(m), "01 02 03 04 05 06 07 08"));
        }
    }
}
