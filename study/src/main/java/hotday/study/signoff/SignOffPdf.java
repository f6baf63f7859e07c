package hotday.study.signoff;

import hotday.core.finding.Finding;
import hotday.core.finding.Severity;
import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.study.picture.CeilingChart;
import hotday.study.picture.TraceChart;
import hotday.study.prove.Bracket;
import hotday.study.prove.CeilingEnds;
import hotday.study.prove.CeilingReport;
import hotday.study.prove.ParameterReport;
import hotday.study.prove.Proof;
import hotday.study.prove.RunReport;
import hotday.vehicle.cases.Ceiling;
import hotday.vehicle.sheet.Assumption;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.VehicleSpec;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;

/**
 * The sign-off document of a build: what was built, what was measured, what it will stand, on which assumptions. All
 * numbers come from the proof; nothing is worked out here beyond units.
 */
public final class SignOffPdf {
    private static final double TRACE_HEIGHT = 225;

    private final BuildSheet sheet;
    private final Proof proof;
    private final Display show;
    private final ProofCharts charts;
    private final String version;
    private final LocalDate date;

    private SignOffPdf(BuildSheet sheet, Proof proof, String version, LocalDate date) {
        this.sheet = sheet;
        this.proof = proof;
        this.show = new Display(sheet.units());
        this.charts = new ProofCharts(proof, show);
        this.version = version;
        this.date = date;
    }

    /**
     * Writes the document.
     *
     * @param version of the program, for the record
     * @param date of the document
     */
    public static void write(BuildSheet sheet, Proof proof, String version, LocalDate date, OutputStream out)
            throws IOException {
        new SignOffPdf(sheet, proof, version, date).write(out);
    }

    private void write(OutputStream out) throws IOException {
        GregorianCalendar made = new GregorianCalendar(date.getYear(), date.getMonthValue() - 1, date.getDayOfMonth());
        try (Pages pages = new Pages("Sign-off: " + proof.build(), made)) {
            verdict(pages);
            build(pages);
            agreement(pages);
            traces(pages);
            told(pages);
            findings(pages);
            assumptions(pages);
            cautions(pages);
            signatures(pages);
            pages.write(out);
        }
    }

    private String temperature(double kelvin) {
        return show.format(Quantity.TEMPERATURE, kelvin);
    }

    private String difference(double kelvin) {
        return Double.isNaN(kelvin) ? "\u2013" : show.format(Quantity.TEMPERATURE_DIFFERENCE, kelvin);
    }

    private void verdict(Pages pages) throws IOException {
        pages.title(proof.build());
        pages.paragraph("What this build will stand, from " + fitted() + " recorded run" + (fitted() == 1 ? "" : "s")
                + " and its build sheet. Made " + date + " with hotday " + version + ", seed " + proof.seed() + ".");
        for (CeilingReport c : proof.ceilings()) {
            pages.bullet(c.best().kase().title() + ": " + sentence(c));
        }
        pages.space(8);
        CeilingChart chart = charts.ceilings();
        pages.drawing(chart.height() + 10, (canvas, y) -> chart.draw(canvas, Pages.LEFT, y, Pages.WIDTH));
    }

    private long fitted() {
        return proof.runs().stream().filter(r -> r.role() == RunReport.Role.FIT).count();
    }

    private String sentence(CeilingReport c) {
        String answer = switch (c.best().reach()) {
            case FOUND -> "holds to " + temperature(c.best().ambient());
            case ABOVE_RANGE ->
                "holds beyond the searched " + temperature(c.best().ambient());
            case BELOW_RANGE -> "fails even at " + temperature(c.best().ambient());
        };
        String first = c.best().reach() == Ceiling.Reach.ABOVE_RANGE
                ? "nothing gives way"
                : c.best().binding().title() + " gives way first";
        String design = c.low() >= c.designAmbient()
                ? "It holds at the design day."
                : c.high() < c.designAmbient()
                        ? "It does NOT hold at the design day."
                        : "At the design day it is not certain.";
        return answer + " (" + CeilingEnds.words(c.low(), show) + " to " + CeilingEnds.words(c.high(), show) + "); "
                + first + ". " + design;
    }

    private void build(Pages pages) throws IOException {
        VehicleSpec v = sheet.vehicle();
        pages.heading("As built");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "mass with load", show.format(Quantity.MASS, v.roadLoad().mass())));
        rows.add(List.of(
                "engine",
                show.format(Quantity.VOLUME, v.engine().displacement()) + " "
                        + v.engine().fuel().name().toLowerCase(Locale.ROOT) + ", "
                        + show.format(Quantity.POWER, v.engine().ratedPower()) + " at "
                        + show.format(Quantity.ANGULAR_SPEED, v.engine().ratedSpeed())
                        + (v.chargeAir().isPresent() ? ", turbo with charge-air cooler" : "")));
        rows.add(List.of(
                "radiator",
                show.format(Quantity.LENGTH, v.radiator().width()) + " wide, "
                        + show.format(Quantity.LENGTH, v.radiator().height()) + " high, "
                        + show.format(Quantity.LENGTH, v.radiator().depth()) + " deep"));
        rows.add(List.of(
                "coolant",
                show.format(Quantity.RATIO, v.coolant().glycolVolumeShare()) + " glycol, "
                        + show.format(Quantity.VOLUME, v.coolant().volume()) + ", cap "
                        + show.format(Quantity.PRESSURE_GAUGE, v.coolant().capPressure())));
        rows.add(List.of(
                "thermostat",
                "opens at " + temperature(v.thermostat().opens()) + ", full at "
                        + temperature(v.thermostat().full())));
        rows.add(List.of(
                "fan",
                "on at " + temperature(v.schedule().on()) + ", off at "
                        + temperature(v.schedule().off())
                        + (v.fan().control() == VehicleSpec.FanControl.UNKNOWN
                                ? " (sheet; the car's own rules are not known)"
                                : "")));
        rows.add(List.of(
                "A/C",
                v.airConditioning()
                        .map(a -> "condenser heat " + show.format(Quantity.POWER, a.condenserHeat()))
                        .orElse("none")));
        rows.add(List.of(
                "must stand",
                temperature(v.designAmbient()) + " at " + Math.round(v.altitude())
                        + " m, coolant below " + temperature(v.limits().coolant()) + " and "
                        + difference(v.limits().boilMargin()) + " below boiling at the cap"));
        pages.table(new double[] {0.2, 0.8}, List.of("part", "as on the sheet"), rows);
    }

    private void agreement(Pages pages) throws IOException {
        pages.heading("Measured and modelled coolant");
        List<List<String>> rows = new ArrayList<>();
        for (RunReport r : proof.runs()) {
            String role = r.role() == RunReport.Role.FIT ? "fitted" : "predicted";
            if (r.single()) {
                rows.add(List.of(
                        r.name(),
                        role,
                        difference(r.score().rmse()),
                        difference(r.score().bias()),
                        difference(r.nullRmse()),
                        temperature(r.peak().measured()) + " / "
                                + temperature(r.peak().predicted()),
                        Math.round(100 * r.coverage()) + " %"));
            } else {
                rows.add(List.of(
                        r.name(),
                        role,
                        "bracket only",
                        "",
                        difference(r.nullRmse()),
                        temperature(r.peak().measured()) + " / "
                                + temperature(r.peak().low()) + " to "
                                + temperature(r.peak().high()),
                        Math.round(100 * r.coverage()) + " %"));
            }
        }
        pages.table(
                new double[] {0.24, 0.11, 0.13, 0.1, 0.12, 0.2, 0.1},
                List.of("run", "", "rms error", "bias", "no model", "peak, measured / model", "inside band"),
                rows);
        pages.paragraph(
                "'No model' is the error of saying " + temperature(proof.warmLevel())
                        + " throughout, the level the fitted runs sat at once warm. The band is meant to hold nine samples in ten.");
        brackets(pages);
    }

    private void brackets(Pages pages) throws IOException {
        for (RunReport r : proof.runs()) {
            if (!r.single()) {
                for (Bracket b : r.brackets()) {
                    pages.bullet("run " + r.name() + ", " + b.state().title() + " " + b.branch() + ": rms "
                            + difference(b.score().rmse()) + ", peak " + temperature(b.peak()));
                }
            }
        }
    }

    private void traces(Pages pages) throws IOException {
        for (RunReport r : proof.runs()) {
            TraceChart chart = charts.trace(r);
            pages.drawing(
                    TRACE_HEIGHT, (canvas, y) -> chart.draw(canvas, Pages.LEFT, y + 8, Pages.WIDTH, TRACE_HEIGHT - 12));
        }
    }

    private void told(Pages pages) throws IOException {
        pages.heading("What the runs told");
        List<List<String>> rows = new ArrayList<>();
        for (ParameterReport p : proof.parameters()) {
            if (p.informed()) {
                rows.add(List.of(
                        p.label(),
                        number(p, p.sheet()),
                        number(p, p.fitted()),
                        number(p, p.low()) + " to " + number(p, p.high())));
            }
        }
        pages.table(new double[] {0.4, 0.2, 0.2, 0.2}, List.of("", "sheet", "fitted", "90 %"), rows);
        List<String> silent = proof.parameters().stream()
                .filter(p -> !p.informed())
                .map(ParameterReport::label)
                .toList();
        pages.paragraph("The runs said little or nothing about: " + String.join(", ", silent)
                + ". For these the sheet's value stands with its doubt.");
    }

    private String number(ParameterReport p, double value) {
        return ParameterText.of(show, p, value);
    }

    private void findings(Pages pages) throws IOException {
        pages.heading("Look at");
        List<Finding> all = new ArrayList<>(proof.findings());
        proof.runs().forEach(r -> all.addAll(r.findings()));
        List<String> shown = all.stream()
                .filter(f -> f.severity() != Severity.NOTE || f.key().equals("ceiling-leans-on-sheet"))
                .map(Finding::message)
                .distinct()
                .toList();
        for (String message : shown) {
            pages.bullet(message);
        }
        if (shown.isEmpty()) {
            pages.paragraph("Nothing.");
        }
    }

    private void assumptions(Pages pages) throws IOException {
        pages.heading("Assumptions: what the sheet left open");
        List<List<String>> rows = new ArrayList<>();
        for (Assumption a : sheet.assumptions()) {
            rows.add(List.of(a.key(), a.value(), a.reason()));
        }
        pages.table(new double[] {0.28, 0.2, 0.52}, List.of("key", "taken as", "because"), rows);
    }

    private static void cautions(Pages pages) throws IOException {
        pages.heading("Cautions");
        for (String caution : Cautions.ALL) {
            pages.bullet(caution);
        }
    }

    private static void signatures(Pages pages) throws IOException {
        pages.room(90);
        pages.heading("Signed");
        pages.table(
                new double[] {0.34, 0.33, 0.33},
                List.of("built by", "commissioned by", "accepted by"),
                List.of(List.of(" ", " ", " "), List.of("date:", "date:", "date:")));
    }
}
