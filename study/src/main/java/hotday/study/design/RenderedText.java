package hotday.study.design;

import hotday.core.unit.Display;
import hotday.core.unit.Quantity;
import hotday.study.design.Rendering.Named;
import java.util.Locale;

/** A rendering to read (Markdown) and to type or paste (CSV). */
public final class RenderedText {
    private RenderedText() {}

    /** {@code table,unit,axis,percent}, a row for every break point. */
    public static String csv(Rendering r) {
        StringBuilder out = new StringBuilder("table,unit,axis,percent\n");
        for (Named each : r.tables()) {
            for (int i = 0; i < each.table().x().size(); i++) {
                out.append(each.name())
                        .append(',')
                        .append(each.table().unit().symbol())
                        .append(',')
                        .append(plain(each.table().x().get(i)))
                        .append(',')
                        .append(each.table().demand().get(i))
                        .append('\n');
            }
        }
        r.relays().ifPresent(relays -> {
            for (int i = 0; i < relays.speeds().size(); i++) {
                out.append("relay_")
                        .append(i + 1)
                        .append("_in,%,")
                        .append(percent(relays.up().get(i)))
                        .append(',')
                        .append(percent(relays.speeds().get(i)))
                        .append('\n');
                out.append("relay_")
                        .append(i + 1)
                        .append("_out,%,")
                        .append(percent(relays.down().get(i)))
                        .append(',')
                        .append(percent(i == 0 ? 0.0 : relays.speeds().get(i - 1)))
                        .append('\n');
            }
            out.append("least_off,s,").append(plain(r.rest())).append(",\n");
            out.append("head_hysteresis,kPa,")
                    .append(plain(r.headHysteresis() / 1000))
                    .append(",\n");
        });
        r.duty().ifPresent(duty -> {
            for (int percent = 0; percent <= 100; percent += 10) {
                out.append("duty,%,")
                        .append(percent)
                        .append(',')
                        .append(plain(100 * duty.sent(percent / 100.0)))
                        .append('\n');
            }
        });
        return out.toString();
    }

    /** With errors and what they cost. */
    public static String markdown(String title, Rendering r, Display display) {
        StringBuilder out = new StringBuilder("# " + title + "\n");
        for (Named each : r.tables()) {
            out.append("\n## ")
                    .append(each.name())
                    .append("\n\n| ")
                    .append(each.table().unit().symbol());
            each.table().x().forEach(x -> out.append(" | ").append(plain(x)));
            out.append(" |\n|")
                    .append(" --- |".repeat(each.table().x().size() + 1))
                    .append("\n| %");
            each.table().demand().forEach(d -> out.append(" | ").append(d));
            out.append(String.format(
                    Locale.ROOT,
                    " |%n%nLargest error %.1f %% of demand.%n",
                    100 * each.table().error()));
        }
        r.duty()
                .ifPresent(d -> out.append(String.format(
                        Locale.ROOT,
                        "%n## duty%n%nOutput 0 %% is sent as %.1f %%, the lowest speed as %.1f %%, 100 %% as %.1f %%%s; %.0f Hz. Error %.2f %% of output. "
                                + "A line that is cut must let the fan run: see what the fan's maker says.%n",
                        100 * d.sent(0.0),
                        100 * d.sent(1e-9),
                        100 * d.sent(1.0),
                        d.inverted() ? " (inverted)" : "",
                        d.frequency(),
                        100 * d.error())));
        r.relays().ifPresent(relays -> {
            out.append("\n## relays\n\n| stage | fan | in from output | out below |\n| --- | --- | --- | --- |\n");
            for (int i = 0; i < relays.speeds().size(); i++) {
                out.append(String.format(
                        Locale.ROOT,
                        "| %d | %d %% | %d %% | %d %% |%n",
                        i + 1,
                        percent(relays.speeds().get(i)),
                        percent(relays.up().get(i)),
                        percent(relays.down().get(i))));
            }
            out.append(String.format(
                    Locale.ROOT,
                    "%nThe schedule behind these relays has a least_off of %.0f s and a head_hysteresis of %.0f kPa.%n%s",
                    r.rest(),
                    r.headHysteresis() / 1000,
                    r.relaysHold()
                            ? ""
                            : "\n**No thresholds were found with which all holds that a fan at full speed holds**, on the design day and on milder ones: "
                                    + RenderedFindings.INSTEAD + ".\n"));
        });
        out.append(String.format(
                Locale.ROOT,
                "%n## What it costs%n%nThe fan may turn slower than the schedule asks by %.1f %% of full speed at most, never where all of it is asked for.%n%n"
                        + "| case | ceiling of the schedule | at most lower by | with this |%n| --- | --- | --- | --- |%n",
                100 * r.error()));
        for (int i = 0; i < r.cases().size(); i++) {
            out.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %s | %s |%n",
                    r.cases().get(i).title(),
                    display.format(Quantity.TEMPERATURE, r.designed()[i]),
                    display.format(Quantity.TEMPERATURE_DIFFERENCE, r.stated(i)),
                    display.format(Quantity.TEMPERATURE, r.rendered()[i])));
        }
        return out.toString();
    }

    private static long percent(double share) {
        return Math.round(100 * share);
    }

    private static String plain(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
