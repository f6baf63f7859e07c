package hotday.study.signoff;

import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.core.unit.Unit;
import hotday.study.picture.CeilingChart;
import hotday.study.picture.ParameterChart;
import hotday.study.picture.SvgCanvas;
import hotday.study.picture.TraceChart;
import hotday.study.prove.CeilingEnds;
import hotday.study.prove.CeilingReport;
import hotday.study.prove.ParameterReport;
import hotday.study.prove.Proof;
import hotday.study.prove.RunReport;
import hotday.study.prove.Score;
import hotday.vehicle.cases.Ceiling;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The pictures of a proof in the units somebody chose; the same in the document and as single SVG files. */
public final class ProofCharts {
    private static final double WIDTH = 640;
    private static final double TRACE_HEIGHT = 300;

    private final Proof proof;
    private final Display show;
    private final Unit temperature;
    private final Unit difference;

    public ProofCharts(Proof proof, Display show) {
        this.proof = proof;
        this.show = show;
        this.temperature = show.unitFor(Quantity.TEMPERATURE);
        this.difference = show.unitFor(Quantity.TEMPERATURE_DIFFERENCE);
    }

    /** All ceilings after the run, over those before it. */
    CeilingChart ceilings() {
        List<CeilingChart.Row> rows = new ArrayList<>();
        for (int i = 0; i < proof.ceilings().size(); i++) {
            CeilingReport after = proof.ceilings().get(i);
            CeilingReport before = proof.ceilingsBefore().get(i);
            String title = after.best().kase().title();
            int comma = title.indexOf(',');
            rows.add(new CeilingChart.Row(
                    comma < 0 ? title : title.substring(0, comma),
                    temperature.fromSi(after.best().ambient()),
                    temperature.fromSi(after.low()),
                    temperature.fromSi(after.high()),
                    temperature.fromSi(before.best().ambient()),
                    temperature.fromSi(before.low()),
                    temperature.fromSi(before.high()),
                    CeilingEnds.sign(after.best().ambient(), show) + " (" + CeilingEnds.sign(after.low(), show) + " to "
                            + CeilingEnds.sign(after.high(), show) + ")",
                    (comma < 0 ? "" : title.substring(comma + 2) + "; ") + first(after, before)));
        }
        double design = proof.ceilings().get(0).designAmbient();
        return new CeilingChart(rows, temperature.fromSi(design), temperature.symbol());
    }

    /** What gives way first, and what the sheet alone said where that was something else. */
    private static String first(CeilingReport after, CeilingReport before) {
        String first = limit(after.best());
        String sheet = limit(before.best());
        return first + (first.equals(sheet) ? "" : " (sheet: " + sheet.replace(" first", "") + ")");
    }

    private static String limit(Ceiling best) {
        return best.reach() == Ceiling.Reach.ABOVE_RANGE
                ? "nothing gives way"
                : best.binding().title().replace(" temperature", "") + " first";
    }

    /** Every unknown, what the runs told most about first. */
    ParameterChart parameters() {
        return new ParameterChart(
                "What the runs told about " + proof.build(),
                proof.parameters().stream()
                        .sorted(Comparator.comparingDouble(ParameterReport::narrowed))
                        .map(p -> new ParameterChart.Row(
                                p.label(),
                                p.shift(),
                                p.narrowed(),
                                ParameterText.of(show, p, p.fitted()) + " (" + bare(p, p.low()) + " to "
                                        + bare(p, p.high()) + ")",
                                bare(p, p.sheet()),
                                p.informed()))
                        .toList());
    }

    /** The value without its unit, which stands before. */
    private String bare(ParameterReport p, double value) {
        String text = ParameterText.of(show, p, value);
        int blank = text.indexOf(' ');
        return blank < 0 ? text : text.substring(0, blank);
    }

    /** Oil of one run, where the fit saw it. */
    Optional<TraceChart> oil(RunReport run) {
        return run.oil()
                .map(oil -> chart(
                        run,
                        "oil",
                        oil.measured(),
                        oil.predicted(),
                        oil.lower(),
                        oil.upper(),
                        oil.score(),
                        oil.coverage()));
    }

    /** Measured against modelled coolant of one run. */
    TraceChart trace(RunReport run) {
        return chart(
                run, "coolant", run.measured(), run.predicted(), run.lower(), run.upper(), run.score(), run.coverage());
    }

    private TraceChart chart(
            RunReport run,
            String quantity,
            double[] measured,
            double[] predicted,
            double[] lower,
            double[] upper,
            Score score,
            double coverage) {
        double[] none = new double[run.time().length];
        Arrays.fill(none, Double.NaN);
        return new TraceChart(
                run.name() + (run.role() == RunReport.Role.FIT ? " (fitted)" : " (predicted from its inputs)"),
                run.time(),
                shown(measured),
                run.single() ? shown(predicted) : none,
                shown(lower),
                shown(upper),
                quantity,
                agreement(run, score, coverage),
                SwitchLanes.of(proof.inferred(), run),
                temperature.symbol(),
                difference.symbol(),
                temperature.factor() / difference.factor());
    }

    private String agreement(RunReport run, Score score, double coverage) {
        String inside = Math.round(100.0 * coverage) + " % inside the band";
        return run.single()
                ? "rms " + show.format(Quantity.TEMPERATURE_DIFFERENCE, score.rmse()) + ", bias "
                        + show.format(Quantity.TEMPERATURE_DIFFERENCE, score.bias()) + ", worst "
                        + show.format(Quantity.TEMPERATURE_DIFFERENCE, score.maxError()) + ", " + inside
                : "no single number: the band spans what nobody recorded; " + inside;
    }

    private double[] shown(double[] kelvin) {
        return Arrays.stream(kelvin).map(temperature::fromSi).toArray();
    }

    /** Every picture as SVG text, by file name. */
    public Map<String, String> svg() {
        Map<String, String> files = new LinkedHashMap<>();
        CeilingChart ceilings = ceilings();
        SvgCanvas canvas = new SvgCanvas(WIDTH, ceilings.height() + 16, "Ambient ceilings of " + proof.build());
        ceilings.draw(canvas, 10, 8, WIDTH - 20);
        files.put("ceilings.svg", canvas.finish());
        ParameterChart parameters = parameters();
        SvgCanvas told = new SvgCanvas(
                WIDTH, parameters.height() + 12, "Unknowns of " + proof.build() + " before and after the runs");
        parameters.draw(told, 10, 6, WIDTH - 20);
        files.put("parameters.svg", told.finish());
        for (RunReport run : proof.runs()) {
            String name = "run-" + run.name().replaceAll("[^A-Za-z0-9._-]", "_");
            files.put(name + ".svg", svg("Coolant of run " + run.name(), trace(run)));
            oil(run).ifPresent(chart -> files.put(name + "-oil.svg", svg("Oil of run " + run.name(), chart)));
        }
        return files;
    }

    private static String svg(String title, TraceChart chart) {
        SvgCanvas canvas = new SvgCanvas(WIDTH, TRACE_HEIGHT, title);
        chart.draw(canvas, 8, 6, WIDTH - 16, TRACE_HEIGHT - 8);
        return canvas.finish();
    }
}
