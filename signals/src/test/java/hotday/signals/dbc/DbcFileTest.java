package hotday.signals.dbc;

import static hotday.signals.dbc.Typed.file;
import static hotday.signals.dbc.Typed.keys;
import static org.assertj.core.api.Assertions.assertThat;

import hotday.core.finding.Finding;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class DbcFileTest {
    /** Every kind of statement. */
    static final String[] FULL = {
        "VERSION \"1\"",
        "NS_ :\n\tCM_\n\tBO_",
        "BS_: 500 : 1,2",
        "BU_: ECM FAN",
        "VAL_TABLE_ state 0 \"off\" 1 \"on\" ;",
        "BO_ 2566844926 Air: 8 ECM",
        " SG_ Pressure m0 : 7|16@0+ (0.1,-1E+1) [-10|6543.5] \"hPa\" FAN,ECM",
        " SG_ Which M : 16|2@1+ (1,0) [0|3] \"\" FAN",
        " SG_ Fine : 32|32@1- (1,0) [0|0] \"degC\" Vector__XXX",
        "BO_TX_BU_ 2566844926 : ECM,FAN;",
        "EV_ Lamp: 0 [0|1] \"\" 0 7 DUMMY_NODE_VECTOR0 FAN;",
        "ENVVAR_DATA_ Lamp: 4;",
        "CM_ \"the network\";",
        "CM_ BU_ FAN \"the fan\";",
        "CM_ BO_ 2566844926 \"air; \\\"two\\\"\nlines\";",
        "CM_ SG_ 2566844926 Pressure \"head\";",
        "CM_ EV_ Lamp \"a lamp\";",
        "BA_DEF_ \"Speed\" INT 0 1000000;",
        "BA_DEF_ BO_ \"Cycle\" FLOAT 0 1e3;",
        "BA_DEF_ BO_ \"Frame\" ENUM \"eleven\",\"twenty-nine\";",
        "BA_DEF_ SG_ \"Number\" HEX 0 524287;",
        "BA_DEF_ \"Name\" STRING;",
        "BA_DEF_DEF_ \"Cycle\" 100;",
        "BA_DEF_DEF_ \"Name\" \"none\";",
        "BA_ \"Speed\" 500000;",
        "BA_ \"Frame\" BO_ 2566844926 1;",
        "BA_ \"Number\" SG_ 2566844926 Pressure 190;",
        "VAL_ 2566844926 Which 0 \"pressure\" 3 \"none\";",
        "VAL_ Lamp 0 \"dark\" 1 \"lit\";",
        "SIG_GROUP_ 2566844926 both 1 : Pressure Which;",
        "SIG_VALTYPE_ 2566844926 Fine : 1;",
        "SG_MUL_VAL_ 2566844926 Pressure Which 0-0, 2-2;"
    };

    @Test
    void understandsEveryStatement() {
        DbcFile file = file(FULL);
        assertThat(keys(file)).containsExactly("statement-not-used");
        assertThat(file.nodes()).containsExactly("ECM", "FAN");
        Message air = file.message(0x18FEF1FE, true).orElseThrow();
        assertThat(air.name()).isEqualTo("Air");
        assertThat(air.comment()).isEqualTo("air; \"two\"\nlines");
        assertThat(air.moreSenders()).containsExactly("ECM", "FAN");
        assertThat(file.attribute(air, "Frame")).hasValue("twenty-nine");
        assertThat(file.attribute(air, "Cycle")).hasValue("100");
        assertThat(file.attribute("Speed")).hasValue("500000");
        assertThat(file.attribute("Name")).hasValue("none");
        assertThat(file.attribute("Nothing")).isEmpty();
        Signal pressure = air.signal("Pressure").orElseThrow();
        assertThat(pressure.offset()).isEqualTo(-10);
        assertThat(pressure.max()).isEqualTo(6543.5);
        assertThat(pressure.unit()).isEqualTo("hPa");
        assertThat(pressure.receivers()).containsExactly("FAN", "ECM");
        assertThat(pressure.multiplexing().values()).containsExactly(new ValueRange(0, 0), new ValueRange(2, 2));
        assertThat(file.attribute(pressure, "Number")).hasValue("190");
        assertThat(pressure.comment()).isEqualTo("head");
        assertThat(air.signal("Which").orElseThrow().word(3)).hasValue("none");
        assertThat(air.signal("Which").orElseThrow().word(1)).isEmpty();
        assertThat(air.signal("Fine").orElseThrow().form()).isEqualTo(ValueForm.SINGLE);
        assertThat(pressure.place().toString()).isEqualTo("typed.dbc:9:2");
    }

    @Test
    void writesWhatItRead() {
        DbcFile file = file(FULL);
        DbcFile again = DbcFile.parse(Typed.NAME, file.bytes());
        assertThat(again.statements()).isEqualTo(file.statements());
        assertThat(again.text()).isEqualTo(file.text());
        assertThat(file.text())
                .contains("(0.1,-1E+1) [-10|6543.5]", "\n\nBO_ 2566844926 Air: 8 ECM\n SG_ Pressure m0 : 7");
    }

    @Test
    void dialects() {
        DbcFile file = file(
                "BO_ 1 a:8 x",
                "SG_ 0_name:0|8@1+(1,0)[0|0]\"\"x , y",
                "\tSG_ b : 8|8@1 + (1.,.5) [0|0] \"\" x y",
                "SIG_VALTYPE_ 1 b 0;",
                "VAL_ 1 b -1 \"minus\" 2 \"two\"",
                "CM_ \"end missing above\";");
        assertThat(keys(file)).containsExactly("semicolon-missing");
        Message a = file.messages().get(0);
        assertThat(a.signals()).extracting(Signal::name).containsExactly("0_name", "b");
        assertThat(a.signals().get(0).receivers()).containsExactly("x", "y");
        assertThat(a.signals().get(1).receivers()).containsExactly("x", "y");
        assertThat(a.signals().get(1).offset()).isEqualTo(0.5);
        assertThat(a.signals().get(1).words()).containsEntry(-1L, "minus");
    }

    @Test
    void lineEndsOfAllKindsAndAByteOrderMark() {
        for (String end : new String[] {"\n", "\r\n", "\r"}) {
            String text = "\uFEFFBO_ 1 a: 8 x" + end + " SG_ s : 0|8@1+ (1,0) [0|0] \"\" x" + end + "SG_ bad" + end;
            DbcFile file = DbcFile.parse(Typed.NAME, text.getBytes(StandardCharsets.UTF_8));
            assertThat(file.messages().get(0).signals()).hasSize(1);
            assertThat(file.findings()).extracting(Finding::toString).allMatch(f -> f.startsWith("typed.dbc:3:8: SG_"));
        }
    }

    /** Bytes of Windows-1252, the five without a character among them, come back as they were. */
    @Test
    void otherTextThanUtf8() {
        byte[] comment = new byte[128];
        for (int i = 0; i < comment.length; i++) {
            comment[i] = (byte) (0x80 + i);
        }
        java.io.ByteArrayOutputStream out = new java.io.ByteArrayOutputStream();
        out.writeBytes("BO_ 1 a: 8 x\n SG_ s : 0|8@1+ (1,0) [0|0] \"".getBytes(StandardCharsets.US_ASCII));
        out.writeBytes("°C".getBytes(Charset.forName("windows-1252")));
        out.writeBytes("\" x\n\nCM_ \"".getBytes(StandardCharsets.US_ASCII));
        out.writeBytes(comment);
        out.writeBytes("\";\n".getBytes(StandardCharsets.US_ASCII));
        DbcFile file = DbcFile.parse(Typed.NAME, out.toByteArray());
        assertThat(file.encoding()).isEqualTo(Encoding.WINDOWS_1252);
        assertThat(file.messages().get(0).signals().get(0).unit()).isEqualTo("°C");
        assertThat(file.bytes()).isEqualTo(out.toByteArray());
    }
}
