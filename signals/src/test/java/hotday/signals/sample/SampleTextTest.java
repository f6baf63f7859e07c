package hotday.signals.sample;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.signals.frame.SampleSink;
import hotday.signals.frame.SampleState;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SampleTextTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();

    private String text() {
        return out.toString(StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "-0.0, 0",
        "5, 5",
        "-40, -40",
        "100, 100",
        "650.125, 650.125",
        "0.30000000000000004, 0.3",
        "-0.05, -0.05",
        "0.0001, 0.0001",
        "1e-7, 1.0E-7",
        "99999.9999999999, 99999.9999999999",
        "999999999999999, 999999999999999",
        "1e15, 1.0E15",
        "123456789.125, 123456789.125",
        "0.1, 0.1",
        "1.0, 1",
        "9.99999999999999999, 10",
    })
    void numbersAreShortAndExact(double value, String expected) {
        TextBuffer text = new TextBuffer(out);
        text.put(value);
        text.flush();
        assertThat(text()).isEqualTo(expected);
    }

    @Test
    void numbersReadBackToFifteenDigits() {
        Random random = new Random(7);
        for (int i = 0; i < 20_000; i++) {
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(20) - 5);
            out.reset();
            TextBuffer text = new TextBuffer(out);
            text.put(value);
            text.flush();
            assertThat(Double.parseDouble(text()))
                    .isCloseTo(value, org.assertj.core.api.Assertions.within(1e-14 * Math.abs(value) + 1e-300));
        }
    }

    private static void feed(SampleSink sink) {
        int a = sink.signal("M.A", "rpm");
        int b = sink.signal("M.\"B,\"", "");
        sink.sample(100.0, a, 1.5, SampleState.VALID);
        sink.sample(100.0, b, 2, SampleState.VALID);
        sink.sample(100.000001, a, Double.NaN, SampleState.NOT_AVAILABLE);
        sink.sample(100.25, a, 3, SampleState.VALID);
        sink.sample(100.25, a, 4, SampleState.VALID);
        sink.text(102.0, b, "two, words");
    }

    @Test
    void aRowForEverySample() {
        SampleRows rows = new SampleRows(out, () -> 100.0);
        feed(rows);
        rows.finish();
        assertThat(text()).isEqualTo("""
                        time_s,signal,value,unit,state
                        0.000000,M.A,1.5,rpm,valid
                        0.000000,"M.""B,""\",2,,valid
                        0.000001,M.A,,rpm,not-available
                        0.250000,M.A,3,rpm,valid
                        0.250000,M.A,4,rpm,valid
                        2.000000,"M.""B,""\","two, words",,valid
                        """);
    }

    private String columns(double raster) {
        SampleStatistics statistics = new SampleStatistics();
        feed(statistics);
        SampleColumns columns = new SampleColumns(out, () -> 100.0, raster, statistics.signals());
        feed(columns);
        columns.finish();
        return text();
    }

    @Test
    void aColumnForEverySignal() {
        assertThat(columns(0)).isEqualTo("""
                        time_s,M.A [rpm],"M.""B,""\"
                        0.000000,1.5,2
                        0.250000,3,
                        0.250000,4,
                        2.000000,,"two, words"
                        """);
    }

    @Test
    void aRasterHoldsWhatCameSinceTheRowBefore() {
        assertThat(columns(0.5)).isEqualTo("""
                        time_s,M.A [rpm],"M.""B,""\"
                        0.000000,1.5,2
                        0.500000,4,
                        2.000000,,"two, words"
                        """);
    }

    @Test
    void statisticsCountStates() {
        SampleStatistics statistics = new SampleStatistics();
        feed(statistics);
        SignalStatistics a = statistics.signals().get(0);
        assertThat(a.of(SampleState.VALID)).isEqualTo(3);
        assertThat(a.of(SampleState.NOT_AVAILABLE)).isEqualTo(1);
        assertThat(a.count()).isEqualTo(4);
        assertThat(a.min()).isEqualTo(1.5);
        assertThat(a.max()).isEqualTo(4);
        assertThat(a.mean()).isCloseTo(8.5 / 3, org.assertj.core.api.Assertions.within(1e-12));
        assertThat(statistics.signals().get(1).lastText()).isEqualTo("two, words");
    }

    @Test
    void largeTextsAndManyRowsComeWhole() {
        SampleRows rows = new SampleRows(out, () -> 0);
        int s = rows.signal("s", "");
        String large = "x".repeat(200_000);
        rows.text(0, s, large);
        for (int i = 0; i < 10_000; i++) {
            rows.sample(i, s, i, SampleState.VALID);
        }
        rows.finish();
        assertThat(text()).contains(large).endsWith("9999.000000,s,9999,,valid\n");
        assertThat(text().lines()).hasSize(10_002);
    }
}
