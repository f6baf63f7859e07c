package hotday.study.signoff;

import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.core.unit.Unit;
import hotday.study.picture.CeilingChart;
import hotday.study.picture.SvgCanvas;
import hotday.study.picture.TraceChart;
import hotday.study.prove.CeilingReport;
import hotday.study.prove.Proof;
import hotday.study.prove.RunReport;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The pictures of a proof in the units somebody chose; the same in the document and as single SVG files. */
public final class ProofCharts {
    private static final double WIDTH = 640;
    private static final double TRACE_HEIGHT = 300;

    private final Proof proof;
    private final Unit temperature;
    private final Unit difference;

    public ProofCharts(Proof proof, Display show) {
        this.proof = proof;
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
                    temperature.fromSi(before.low()),
                    temperature.fromSi(before.high()),
                    (comma < 0 ? "" : title.substring(comma + 2) + "; ")
                            + after.best().binding().id() + " first"));
        }
        double design = proof.ceilings().get(0).designAmbient();
        return new CeilingChart(rows, temperature.fromSi(design), temperature.symbol());
    }

    /** Measured against modelled for one run. */
    TraceChart trace(RunReport run) {
        double[] none = new double[run.time().length];
        Arrays.fill(none, Double.NaN);
        return new TraceChart(
                run.name() + (run.role() == RunReport.Role.FIT ? " (fitted)" : " (predicted from its inputs)"),
                run.time(),
                shown(run.measured()),
                run.single() ? shown(run.predicted()) : none,
                shown(run.lower()),
                shown(run.upper()),
                temperature.symbol(),
                difference.symbol(),
                temperature.factor() / difference.factor());
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
        for (RunReport run : proof.runs()) {
            SvgCanvas one = new SvgCanvas(WIDTH, TRACE_HEIGHT, "Coolant of run " + run.name());
            trace(run).draw(one, 8, 6, WIDTH - 16, TRACE_HEIGHT - 8);
            files.put("run-" + run.name().replaceAll("[^A-Za-z0-9._-]", "_") + ".svg", one.finish());
        }
        return files;
    }
}
