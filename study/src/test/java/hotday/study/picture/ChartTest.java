package hotday.study.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Both charts as SVG: well-formed, every text on the paper, gaps left open. */
class ChartTest {
    private static final double WIDTH = 640;
    private static final double HEIGHT = 300;

    private static String trace(String title, double[] measured, double[] predicted) {
        double[] time = new double[measured.length];
        double[] low = new double[measured.length];
        double[] high = new double[measured.length];
        for (int i = 0; i < time.length; i++) {
            time[i] = 0.5 * i;
            low[i] = 80;
            high[i] = 96;
        }
        SvgCanvas canvas = new SvgCanvas(WIDTH, HEIGHT, title);
        new TraceChart(title, time, measured, predicted, low, high, "coolant", "rms 1.0 K", List.of(), "degC", "K", 1.0)
                .draw(canvas, 8, 6, WIDTH - 16, HEIGHT - 8);
        return canvas.finish();
    }

    private static double[] flat(int n, double value) {
        double[] out = new double[n];
        Arrays.fill(out, value);
        return out;
    }

    private static String ceilings(double design, CeilingChart.Row... rows) {
        CeilingChart chart = new CeilingChart(List.of(rows), design, "degC");
        SvgCanvas canvas = new SvgCanvas(WIDTH, chart.height() + 16, "ceilings");
        chart.draw(canvas, 10, 8, WIDTH - 20);
        return canvas.finish();
    }

    private static CeilingChart.Row row(double best, double low, double high) {
        return new CeilingChart.Row(
                "Hot idle in gear",
                best,
                low,
                high,
                best - 1,
                low - 4,
                high + 4,
                String.format("%.1f (%.1f to %.1f)", best, low, high),
                "A/C on; gearbox fluid temperature first (sheet: A/C high side)");
    }

    private static void allTextOnThePaper(String svg) {
        Drawn drawn = Drawn.of(svg);
        String[] box = drawn.all("svg").get(0).getAttribute("viewBox").split(" ");
        double width = Double.parseDouble(box[2]);
        double height = Double.parseDouble(box[3]);
        assertThat(drawn.all("text")).isNotEmpty().allSatisfy(text -> {
            double[] span = Drawn.span(text);
            assertThat(span[0]).as("left of '%s'", text.getTextContent()).isGreaterThanOrEqualTo(0.0);
            assertThat(span[1]).as("right of '%s'", text.getTextContent()).isLessThanOrEqualTo(width);
            double y = Drawn.number(text, "y");
            assertThat(y - Drawn.number(text, "font-size")).isGreaterThanOrEqualTo(-1.0);
            assertThat(y).isLessThanOrEqualTo(height);
        });
        assertThat(svg).doesNotContain("NaN", "Infinity");
    }

    static Stream<String> pictures() {
        double[] measured = flat(400, 88);
        return Stream.of(
                trace("mild day (fitted)", measured, flat(400, 89)),
                trace("no single number", measured, flat(400, Double.NaN)),
                trace(
                        "the run of the blue pick-up after the new fan went in and before the shroud was cut, take two "
                                + "(predicted from its inputs)",
                        measured,
                        flat(400, 89)),
                ceilings(40, row(45, 42, 48), row(35, 30, 41)),
                ceilings(60, row(45, 42, 48)),
                ceilings(10, row(45, 42, 48)),
                ceilings(45, row(45.2, 45.1, 45.3)));
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void isWellFormedAndKeepsItsTextOnThePaper(String svg) {
        allTextOnThePaper(svg);
    }

    @Test
    void randomCeilingsStayOnThePaper() {
        SplittableRandom random = new SplittableRandom(19);
        for (int trial = 0; trial < 200; trial++) {
            CeilingChart.Row[] rows = new CeilingChart.Row[1 + random.nextInt(5)];
            for (int i = 0; i < rows.length; i++) {
                double best = random.nextDouble(-20, 75);
                rows[i] = row(best, best - random.nextDouble(0, 20), best + random.nextDouble(0, 20));
            }
            allTextOnThePaper(ceilings(random.nextDouble(-20, 60), rows));
        }
    }

    @Test
    void numbersAlongTheCeilingsDifferFromEachOther() {
        CeilingChart.Row narrow =
                new CeilingChart.Row("Hot idle", 45.2, 45.0, 45.4, Double.NaN, Double.NaN, Double.NaN, "value", "note");
        List<String> numbers = Drawn.of(ceilings(45, narrow)).texts().stream()
                .filter(t -> t.matches("-?[0-9.]+"))
                .toList();
        assertThat(numbers).hasSizeGreaterThan(2).doesNotHaveDuplicates();
    }

    @Test
    void aLongTitleStopsShortOfTheLegend() {
        String title = "the blue pick-up with the new fan, ".repeat(20) + "(fitted)";
        Drawn drawn = Drawn.of(trace(title, flat(50, 88), flat(50, 89)));
        double[] shown = Drawn.span(drawn.all("text").get(0));
        double[] legend = Drawn.span(drawn.all("text").get(1));
        assertThat(drawn.texts().get(0)).startsWith("the blue").endsWith("(fitted)");
        assertThat(drawn.texts().get(1)).isEqualTo("measured");
        assertThat(shown[1]).isLessThan(legend[0]);
    }

    @Test
    void whatWasNotMeasuredLeavesAGap() {
        double[] measured = flat(100, 88);
        Arrays.fill(measured, 40, 60, Double.NaN);
        List<List<String>> lines =
                Drawn.of(trace("gap", measured, flat(100, 89))).lines();
        // measured in two pieces, the model in one, what is left over in two
        assertThat(lines.stream().map(List::size)).containsExactly(40, 40, 100, 40, 40);
    }

    @Test
    void withoutASingleNumberThereIsNoModelLine() {
        Drawn drawn = Drawn.of(trace("bracket", flat(50, 88), flat(50, Double.NaN)));
        assertThat(drawn.lines()).hasSize(1);
        assertThat(drawn.all("polygon")).hasSize(1);
    }

    @Test
    void oddCharactersDoNotBreakThePicture() {
        String odd = "a<b> & \"c\" 'd' \u0000\u0007\u001b \ud83d\ude97 \ud83d alone \uffff";
        Drawn drawn = Drawn.of(trace(odd, flat(50, 88), flat(50, 89)));
        assertThat(drawn.all("title").get(0).getTextContent())
                .startsWith("a<b> & \"c\" 'd'")
                .contains("\ud83d\ude97");
    }
}
