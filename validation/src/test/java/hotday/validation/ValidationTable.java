package hotday.validation;

import hotday.validation.fit.NistChecks;
import hotday.validation.physics.CycleChecks;
import hotday.validation.physics.ElectricalChecks;
import hotday.validation.physics.ExchangerChecks;
import hotday.validation.physics.FluidChecks;
import hotday.validation.physics.GearboxChecks;
import hotday.validation.physics.MoistAirChecks;
import hotday.validation.physics.RefrigerantChecks;
import hotday.validation.physics.TransferChecks;
import hotday.validation.property.GaugeChartChecks;
import hotday.validation.recordings.DieselSedanChecks;
import hotday.validation.recordings.RoadTripsChecks;
import hotday.validation.signals.BusChecks;
import hotday.validation.signals.FrameChecks;
import hotday.validation.signals.ProtocolChecks;
import hotday.validation.units.UnitChecks;
import hotday.validation.vehicle.EngineChecks;
import java.util.ArrayList;
import java.util.List;
import org.opentest4j.TestAbortedException;

/**
 * All checks against outside numbers as one table: {@code check | our value | published value | tolerance | ok | source}.
 * Printed at the end of the validation tests, written to {@code validation/target/validation-table.md}.
 */
public final class ValidationTable {
    /** Every subject, in the order printed. */
    static final List<Topic> TOPICS = List.of(
            new UnitChecks(),
            new NistChecks(),
            new ExchangerChecks(),
            new TransferChecks(),
            new FluidChecks(),
            new GearboxChecks(),
            new RefrigerantChecks(),
            new CycleChecks(),
            new ElectricalChecks(),
            new MoistAirChecks(),
            new GaugeChartChecks(),
            new EngineChecks(),
            new FrameChecks(),
            new ProtocolChecks(),
            new BusChecks(),
            new DieselSedanChecks(),
            new RoadTripsChecks());

    /**
     * A topic that was computed.
     *
     * @param remark why there are no rows; empty when there are
     */
    record Section(String title, List<Check> checks, String remark) {}

    private final List<Section> sections;

    private ValidationTable(List<Section> sections) {
        this.sections = List.copyOf(sections);
    }

    /** @param slow also the slow topics */
    static ValidationTable compute(List<Topic> topics, boolean slow) {
        List<Section> out = new ArrayList<>();
        for (Topic topic : topics) {
            out.add(
                    topic.slow() && !slow
                            ? new Section(topic.title(), List.of(), "slow: not in this pass")
                            : of(topic));
        }
        return new ValidationTable(out);
    }

    private static Section of(Topic topic) {
        try {
            return new Section(topic.title(), topic.checks(), "");
        } catch (TestAbortedException e) {
            return new Section(topic.title(), List.of(), e.getMessage());
        }
    }

    List<Section> sections() {
        return sections;
    }

    List<Check> failing() {
        return sections.stream()
                .flatMap(s -> s.checks().stream())
                .filter(c -> !c.ok())
                .toList();
    }

    /** One line: how many rows hold. */
    String summary() {
        long rows = sections.stream().mapToLong(s -> s.checks().size()).sum();
        return "validation: " + (rows - failing().size()) + " of " + rows + " checks hold";
    }

    /** The table in Markdown, columns aligned so that it reads well as plain text. */
    String markdown() {
        StringBuilder out =
                new StringBuilder("# Validation table\n\n").append(summary()).append(".\n");
        for (Section section : sections) {
            out.append("\n## ").append(section.title()).append("\n\n");
            if (!section.remark().isEmpty()) {
                out.append(section.remark()).append('\n');
            }
            if (!section.checks().isEmpty()) {
                append(out, section.checks());
            }
        }
        return out.toString();
    }

    private static void append(StringBuilder out, List<Check> checks) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("check", "our value", "published value", "unit", "tolerance", "ok", "source"));
        for (Check c : checks) {
            rows.add(List.of(
                    c.what(),
                    Check.number(c.ours()),
                    c.expected().published(),
                    c.unit(),
                    c.expected().margin(),
                    c.ok() ? "yes" : "**NO**",
                    c.source()));
        }
        int[] width = new int[rows.get(0).size()];
        rows.forEach(r -> {
            for (int i = 0; i < width.length; i++) {
                width[i] = Math.max(width[i], r.get(i).length());
            }
        });
        for (int k = 0; k < rows.size(); k++) {
            line(out, rows.get(k), width, ' ');
            if (k == 0) {
                line(out, List.of("", "", "", "", "", "", ""), width, '-');
            }
        }
    }

    private static void line(StringBuilder out, List<String> cells, int[] width, char fill) {
        for (int i = 0; i < width.length; i++) {
            String cell = cells.get(i);
            out.append("| ").append(cell).append(String.valueOf(fill).repeat(width[i] - cell.length()));
            out.append(' ');
        }
        out.append("|\n");
    }

    /** Prints the table with all topics; exit status 1 when a row does not hold. */
    public static void main(String[] arguments) {
        ValidationTable table = compute(TOPICS, true);
        System.out.print(table.markdown());
        System.exit(table.failing().isEmpty() ? 0 : 1);
    }
}
