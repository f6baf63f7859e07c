package hotday.app.web;

import hotday.core.finding.Finding;
import hotday.core.finding.Setting;
import hotday.core.finding.Wording;
import hotday.signals.channel.ModelChannel;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.node.ObjectNode;

/**
 * What the page calls the settings of a channel map: by the controls that set them. The page takes the words of those controls from here too, so
 * that a message and the control it means read the same.
 */
public final class PageWording implements Wording {
    /** The one there is. */
    public static final PageWording PAGE = new PageWording();

    private static final String TIME = "Time stands in column";
    private static final String TIME_UNIT = "Its unit";
    private static final String CLOCK = "time of day, or date and time";
    private static final String COUNTED = "none: rows at equal steps";
    private static final String STEP = "From row to row, as in 0.1 s";
    private static final String TAKEN = "is taken for";
    private static final String UNIT = "in";
    private static final String CONSTANT = "One value for the whole run";
    private static final String KNOWN = "Known of the whole run, though no column shows it";

    /** Facts of a run by their key in the map. */
    private static final Map<String, String> FACTS = facts();

    private PageWording() {}

    private static Map<String, String> facts() {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("heater", "Heater");
        facts.put("fan", "Engine fan");
        facts.put("air_conditioning", "A/C");
        facts.put("thermostat_blocked_open", "Thermostat held open");
        return facts;
    }

    /** Words of the controls, for the page to show. */
    static void put(ObjectNode node) {
        node.put("time", TIME)
                .put("time_unit", TIME_UNIT)
                .put("clock", CLOCK)
                .put("counted", COUNTED)
                .put("step", STEP)
                .put("taken_for", TAKEN)
                .put("unit", UNIT)
                .put("constant", CONSTANT)
                .put("known", KNOWN);
        ObjectNode facts = node.putObject("facts");
        FACTS.forEach(facts::put);
    }

    static String title(ModelChannel channel) {
        return channel.key().replace('_', ' ');
    }

    @Override
    public String of(Setting setting) {
        String[] at = setting.key().split("\\.", 3);
        return switch (at[0]) {
            case "disk" -> "Free space on its disk or let its folder be written to, then try again.";
            case "" -> "the map of the columns";
            case "time" -> time(at, setting);
            case "facts" -> fact(at, setting.value());
            case "channels" -> at.length < 2 ? "a channel" : channel(at, setting);
            default -> fileOnly(setting.key(), setting.value());
        };
    }

    /** Where on the page a finding can be mended: key of the most telling of its settings that has a control there. */
    static Optional<String> control(Finding finding) {
        return finding.sentence().settings().stream()
                .filter(s -> hasControl(s.key()))
                .min(Comparator.comparing((Setting s) -> s.value().isEmpty())
                        .thenComparing(
                                s -> -s.key().chars().filter(c -> c == '.').count()))
                .map(Setting::key);
    }

    private static boolean hasControl(String key) {
        return key.matches(
                "time(\\.(unit|clock|column|position|step))?|facts\\..*|channels\\.[a-z_]+(\\.(unit|column|position|constant))?");
    }

    private static String time(String[] at, Setting setting) {
        if (at.length == 1) {
            return "time";
        }
        return switch (at[1]) {
            case "unit" -> chosen(setting.value(), TIME_UNIT);
            case "clock" -> chosen(setting.value().isEmpty() ? "" : CLOCK, TIME_UNIT);
            case "place" -> "";
            case "step" -> setting.value().isEmpty() ? "'" + STEP + "'" : counted(setting.value());
            case "position" -> "the choice under '" + TIME + "'";
            default -> (setting.value().isEmpty() ? "" : "choose " + setting.value() + " under ") + "'" + TIME + "'";
        };
    }

    private static String counted(String example) {
        return "choose '" + COUNTED + "' there and type how far they are apart, such as " + example;
    }

    private static String chosen(String value, String control) {
        return value.isEmpty() ? "'" + control + "'" : "choose '" + value + "' under '" + control + "'";
    }

    private static String fact(String[] at, String value) {
        String control = "'" + FACTS.getOrDefault(at.length < 2 ? "" : at[1], KNOWN) + "'";
        String where = " in the columns of the recording";
        return value.isEmpty() ? control + where : "set " + control + where + " to " + value;
    }

    private static String channel(String[] at, Setting setting) {
        String title = ModelChannel.of(at[1]).map(PageWording::title).orElse(at[1]);
        boolean named = setting.value().isEmpty();
        return switch (at.length < 3 ? "" : at[2]) {
            case "" -> title;
            case "place" -> "";
            case "column" -> "a column that '" + TAKEN + "' it";
            case "position" -> "the column that '" + TAKEN + "' it";
            case "unit" ->
                named
                        ? "the unit of " + title + ", under '" + UNIT + "'"
                        : "choose one under '" + UNIT + "', such as " + setting.value();
            case "constant" ->
                (named ? "" : "give " + setting.value() + " as ") + "'" + CONSTANT + "'" + ofWhat(named, title);
            default -> fileOnly(at[2], setting.value());
        };
    }

    private static String ofWhat(boolean named, String title) {
        return named ? " of " + title : "";
    }

    private static String fileOnly(String key, String value) {
        return "'" + key + (value.isEmpty() ? "" : ": " + value)
                + "' in the file of the map (the page has no control for it)";
    }
}
