package hotday.study.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RunNameTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Messfahrt K\u00F6ln.csv         | Messfahrt Koeln.csv      | Messfahrt K\u00F6ln
            Messfahrt Ko\u0308ln.csv        | Messfahrt Koeln.csv      | Messfahrt K\u00F6ln
            \u00DCbung.CSV.gz               | Uebung.CSV.gz            | \u00DCbung
            Stra\u00DFe #3 \u2013 hei\u00DF.txt | Strasse -3 - heiss.txt | Stra\u00DFe #3 \u2013 hei\u00DF
            \u00C5re \u00E9t\u00E9.log      | Are ete.log              | \u00C5re \u00E9t\u00E9
            \u8A66\u9A13 12.tsv            | -- 12.tsv                | \u8A66\u9A13 12
            run 3.5 kW.csv                   | run 3.5 kW.csv           | run 3.5 kW
            """)
    void aSafeNameAndTheTitleItCameWith(String sent, String file, String title) {
        RunName name = RunName.of(sent).orElseThrow();
        assertThat(name.file()).isEqualTo(file);
        assertThat(name.title()).isEqualTo(title);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "a",
                "a.yaml",
                "a.channels.yaml",
                ".a.csv",
                "../a.csv",
                "a/b.csv",
                "a\\b.csv",
                "a\u0000.csv",
                "\u8A66\u9A13.csv",
                "---.csv",
                "a\nb.csv"
            })
    void whatIsNoNameIsRefused(String sent) {
        assertThat(RunName.of(sent)).isEmpty();
    }

    /** Any letters at all: what is accepted is safe, and stays what it is when it is sent again. */
    @Test
    void whatIsAcceptedIsSafe() {
        Random random = new Random(3);
        int accepted = 0;
        for (int run = 0; run < 5000; run++) {
            StringBuilder sent = new StringBuilder();
            int letters = 1 + random.nextInt(90);
            for (int i = 0; i < letters; i++) {
                sent.appendCodePoint(random.nextBoolean() ? ' ' + random.nextInt(95) : 0xA0 + random.nextInt(0x2000));
            }
            RunName name = RunName.of(sent + ".csv").orElse(null);
            if (name != null) {
                accepted++;
                assertThat(name.file()).matches(RunName.SAFE).hasSizeLessThanOrEqualTo(RunName.LONGEST + 4);
                assertThat(RunName.of(name.file()).orElseThrow().file()).isEqualTo(name.file());
            }
        }
        assertThat(accepted).isGreaterThan(1000);
    }
}
