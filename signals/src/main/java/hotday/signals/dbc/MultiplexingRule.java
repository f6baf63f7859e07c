package hotday.signals.dbc;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Who depends on whom in a message: the simple form (M, m3) and the extended one (m3M, SG_MUL_VAL_). */
final class MultiplexingRule {
    private static final Pattern FORM = Pattern.compile("M|m(\\d{1,18})(M?)");

    private final Draft draft;
    private final FindingList findings;
    private final List<Draft.Line> multiplexors = new ArrayList<>();

    private MultiplexingRule(Draft draft, FindingList findings) {
        this.draft = draft;
        this.findings = findings;
        draft.signals.stream().filter(MultiplexingRule::isMultiplexor).forEach(multiplexors::add);
    }

    /** One entry a signal. */
    static List<Multiplexing> of(Draft draft, FindingList findings) {
        MultiplexingRule rule = new MultiplexingRule(draft, findings);
        List<Multiplexing> all = new ArrayList<>();
        draft.signals.forEach(line -> all.add(rule.of(line)));
        rule.withoutRoot(all);
        return all;
    }

    private static boolean isMultiplexor(Draft.Line line) {
        return line.typed.multiplexing().endsWith("M");
    }

    private Multiplexing of(Draft.Line line) {
        String typed = line.typed.multiplexing();
        boolean multiplexor = isMultiplexor(line);
        if (multiplexor && line.form().isFloat()) {
            return unclear(line, "'" + line.typed.name() + "' is a multiplexor and a floating-point number");
        }
        if (!line.multiplexedBy.isEmpty()) {
            return extended(line, multiplexor);
        }
        if (typed.isEmpty()) {
            return Multiplexing.NONE;
        }
        Matcher m = FORM.matcher(typed);
        if (!m.matches()) {
            return unclear(
                    line, "'" + typed + "' does not say how '" + line.typed.name() + "' is multiplexed (M or m3)");
        }
        return m.group(1) == null ? Multiplexing.MULTIPLEXOR : simple(line, Long.parseLong(m.group(1)), multiplexor);
    }

    private Multiplexing simple(Draft.Line line, long value, boolean multiplexor) {
        List<Draft.Line> others =
                multiplexors.stream().filter(l -> l != line).limit(2).toList();
        if (others.size() != 1) {
            String why = others.isEmpty() ? "no multiplexor" : "more than one multiplexor and no SG_MUL_VAL_ for it";
            return unclear(line, "'" + line.typed.name() + "' is multiplexed, the message has " + why);
        }
        return new Multiplexing(multiplexor, others.get(0).typed.name(), List.of(new ValueRange(value, value)), true);
    }

    private Multiplexing extended(Draft.Line line, boolean multiplexor) {
        String by = line.multiplexedBy.get(0).multiplexor();
        List<ValueRange> values = new ArrayList<>();
        for (Statement.MultiplexedBy m : line.multiplexedBy) {
            values.addAll(m.values());
            if (!m.multiplexor().equals(by)) {
                return unclear(
                        line,
                        "'" + line.typed.name() + "' has two multiplexors, '" + by + "' and '" + m.multiplexor() + "'");
            }
        }
        List<Draft.Line> found = draft.byName.getOrDefault(by, List.of());
        if (found.size() != 1 || !isMultiplexor(found.get(0))) {
            return unclear(line, "'" + by + "', which '" + line.typed.name() + "' depends on, is no multiplexor (M)");
        }
        return new Multiplexing(multiplexor, by, values, true);
    }

    private Multiplexing unclear(Draft.Line line, String message) {
        findings.fault("multiplexing-unclear", line.place, message + "; not taken from frames");
        return Multiplexing.unclear(isMultiplexor(line));
    }

    /** Whoever depends, over others, on itself or on a signal that is unclear is unclear too. */
    private void withoutRoot(List<Multiplexing> all) {
        Map<String, List<Integer>> dependents = new HashMap<>();
        List<Integer> reached = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).always()) {
                reached.add(i);
            } else if (all.get(i).clear()) {
                dependents
                        .computeIfAbsent(all.get(i).by(), n -> new ArrayList<>())
                        .add(i);
            }
        }
        for (int k = 0; k < reached.size(); k++) {
            Draft.Line line = draft.signals.get(reached.get(k));
            List<Integer> further = isMultiplexor(line) ? dependents.remove(line.typed.name()) : null;
            reached.addAll(further == null ? List.of() : further);
        }
        dependents
                .values()
                .forEach(left -> left.forEach(i -> {
                    Draft.Line line = draft.signals.get(i);
                    all.set(
                            i,
                            unclear(
                                    line,
                                    "'" + line.typed.name() + "' depends on '"
                                            + all.get(i).by() + "', of which nobody knows when it is there"));
                }));
    }
}
