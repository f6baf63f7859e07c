package hotday.study.signoff;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.core.unit.Display;
import hotday.core.unit.UnitSystem;
import hotday.study.prove.Proof;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The pictures of a proof as files: which there are, and what stands in them. */
class ProofChartsTest {
    private static final Proof PROOF = MadeProof.of("Oxbow", "mild day", 3, List.of());

    private final Map<String, String> files = new ProofCharts(PROOF, new Display(UnitSystem.METRIC)).svg();

    private List<String> texts(String file) {
        List<String> texts = new ArrayList<>();
        Matcher m = Pattern.compile("<text [^>]*>([^<]*)</text>").matcher(files.get(file));
        while (m.find()) {
            texts.add(m.group(1));
        }
        return texts;
    }

    private long traces(String file) {
        return Pattern.compile("<polyline [^>]*points=\"[0-9]")
                .matcher(files.get(file))
                .results()
                .count();
    }

    @Test
    void oneFileEachForCeilingsUnknownsAndRuns() {
        assertThat(files.keySet())
                .containsExactly(
                        "ceilings.svg",
                        "parameters.svg",
                        "run-mild_day.svg",
                        "run-mild_day-oil.svg",
                        "run-mild_day_1.svg",
                        "run-mild_day_2.svg",
                        "run-mild_day_3.svg");
        assertThat(files.values())
                .allSatisfy(svg ->
                        assertThat(svg).startsWith("<svg ").endsWith("</svg>\n").doesNotContain("NaN", "Infinity"));
    }

    /** Measured in two pieces around its gap, the model, and what is left over in two. */
    @Test
    void aRunShowsMeasuredModelBandResidualAndWhatSwitched() {
        assertThat(texts("run-mild_day.svg"))
                .contains("mild day (fitted)", "coolant, degC", "model less measured, K", "time, s", "90 % band")
                .contains("fan on", "thermostat")
                .doesNotContain("heater on")
                .anyMatch(t -> t.equals("rms 1.3 K, bias -0.5 K, worst 4.0 K, 90 % inside the band"));
        assertThat(traces("run-mild_day.svg")).isEqualTo(5);
        assertThat(files.get("run-mild_day.svg")).containsOnlyOnce("<polygon");
        assertThat(texts("run-mild_day-oil.svg")).contains("oil, degC").anyMatch(t -> t.contains("80 % inside"));
    }

    @Test
    void aRunWithoutASingleNumberSaysSoAndHasNoModelLine() {
        assertThat(texts("run-mild_day_3.svg")).anyMatch(t -> t.startsWith("no single number"));
        assertThat(traces("run-mild_day_3.svg")).isEqualTo(2);
    }

    @Test
    void unknownsAreSortedByWhatWasToldAndTheRestIsMarked() {
        List<String> texts = texts("parameters.svg");
        assertThat(texts.indexOf("coolant pump flow")).isLessThan(texts.indexOf("not informed by the runs"));
        assertThat(texts.indexOf("fan flow")).isGreaterThan(texts.indexOf("not informed by the runs"));
        assertThat(texts).contains("1.10 m3/s (0.900 to 1.30)", "prior standard deviations from the sheet's value");
    }

    @Test
    void ceilingsNameTheLimitAndStandBesideTheSheets() {
        List<String> texts = texts("ceilings.svg");
        assertThat(texts)
                .contains(
                        "90 % with the runs", "90 % from the sheet alone", "must stand 43 degC", "38.0 (35.0 to 41.0)")
                .anyMatch(t -> t.endsWith("coolant first"));
        assertThat(Pattern.compile("<circle")
                        .matcher(files.get("ceilings.svg"))
                        .results()
                        .count())
                .isEqualTo(2L * PROOF.ceilings().size());
    }
}
