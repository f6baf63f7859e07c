package hotday.study.export;

import hotday.signals.check.Checksum;
import hotday.signals.translator.Field;
import hotday.signals.translator.Program;
import hotday.signals.translator.Program.Counter;
import hotday.signals.translator.Program.Guard;
import hotday.signals.translator.Program.Incoming;
import hotday.signals.translator.Program.Line;
import hotday.signals.translator.Program.Outgoing;
import hotday.signals.translator.Program.Rest;
import hotday.signals.translator.Program.Row;
import hotday.signals.translator.Program.Values;
import hotday.signals.translator.Scaling;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The tables of a translation in C. */
final class GatewayTables {
    private final Program program;
    private final List<String> ranges = new ArrayList<>();
    private final List<String> conditions = new ArrayList<>();
    private final List<String> rows = new ArrayList<>();
    private final List<String> octets = new ArrayList<>();

    GatewayTables(Program program) {
        this.program = program;
    }

    /** What is filled into the files of code. */
    Map<String, String> places() {
        Map<String, String> places = new LinkedHashMap<>();
        places.put("TITLE", Template.comment(program.title()));
        places.put("POLL", program.poll() + "LL");
        places.put("NETWORKS", networks());
        places.put("INCOMING", String.valueOf(program.incoming().size()));
        places.put("OUTGOING", String.valueOf(program.outgoing().size()));
        places.put("LINES", String.valueOf(program.lines().size()));
        places.put("TABLES", tables());
        return places;
    }

    private String networks() {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < program.networks().size(); i++) {
            String name = program.networks().get(i).toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "_");
            out.append("#define GATEWAY_NETWORK_").append(i).append('_').append(name);
            out.append(' ').append(i).append('\n');
        }
        return out.toString();
    }

    private String tables() {
        List<String> lines = program.lines().stream().map(this::line).toList();
        List<String> incoming = program.incoming().stream().map(this::incoming).toList();
        List<String> outgoing = program.outgoing().stream().map(this::outgoing).toList();
        return table("uint8_t", "OCTETS", octets, "0")
                + table("range", "RANGES", ranges, "{0, 0}")
                + table("condition", "CONDITIONS", conditions, "{.ranges = 0}")
                + table("row", "ROWS", rows, "{0, 0}")
                + table("line", "LINES", lines, "{.rest = REST_NOTHING}")
                + table("incoming", "INCOMING", incoming, "{.id = 0}")
                + table("outgoing", "OUTGOING", outgoing, "{.id = 0}");
    }

    /** C knows no empty table: one entry that nobody looks at stands in. */
    private static String table(String type, String name, List<String> entries, String nothing) {
        String content = entries.isEmpty() ? nothing : String.join(",\n    ", entries);
        return "static const " + type + " " + name + "[] = {\n    " + content + "\n};\n\n";
    }

    /** The members of an entry by their names; those that are 0 are left to the compiler. */
    private static final class Entry {
        private final List<String> members = new ArrayList<>();

        Entry put(String member, String value) {
            members.add("." + member + " = " + value);
            return this;
        }

        Entry put(String member, long value) {
            return value == 0 ? this : put(member, number(value));
        }

        Entry word(String member, long value) {
            return value == 0 ? this : put(member, String.format("UINT64_C(0x%016X)", value));
        }

        String text() {
            return "{" + String.join(", ", members) + "}";
        }

        /** With a comment, and as many members a line as there is room for. */
        String text(String comment) {
            StringBuilder out = new StringBuilder("{ /* " + Template.comment(comment) + " */\n        ");
            int used = 0;
            for (int i = 0; i < members.size(); i++) {
                String member = members.get(i) + (i < members.size() - 1 ? "," : "");
                if (used + member.length() > 105) {
                    out.append("\n        ");
                    used = 0;
                }
                out.append(used == 0 ? "" : " ").append(member);
                used += member.length() + 1;
            }
            return out.append("\n    }").toString();
        }

        private static String number(long value) {
            if (value == Long.MIN_VALUE) {
                return "INT64_MIN";
            }
            return Math.abs(value) <= Integer.MAX_VALUE ? String.valueOf(value) : "INT64_C(" + value + ")";
        }
    }

    private static String field(Field f) {
        return new Entry()
                .put("big_endian", f.bigEndian() ? 1 : 0)
                .put("shift", f.shift())
                .put("bits", f.bits())
                .put("is_signed", f.signed() ? 1 : 0)
                .put("last_byte", f.lastByte())
                .text();
    }

    private String line(Line l) {
        Entry entry = new Entry()
                .put("incoming", String.valueOf(l.incoming()))
                .put("source", field(l.source().field()))
                .put("first_condition", conditions.size())
                .put("conditions", l.source().when().size())
                .word("exponent", l.source().exponent())
                .put("first_row", rows.size())
                .put("rows", l.values().rows().size());
        l.source().when().forEach(this::condition);
        for (Row row : l.values().rows()) {
            long to = row.safe() ? l.safe() : row.to();
            rows.add("{" + Entry.number(row.from()) + ", " + Entry.number(to) + "}");
        }
        rest(entry, l.values(), l.safe());
        return entry.put("outgoing", String.valueOf(l.outgoing()))
                .put("target", field(l.target()))
                .put("time_out", l.timeOut())
                .put("hold", l.hold())
                .put("safe", l.safe())
                .text(l.from() + " to " + l.to());
    }

    private void condition(Program.Condition c) {
        conditions.add(new Entry()
                .put("at", field(c.field()))
                .put("first_range", ranges.size())
                .put("ranges", c.ranges().size())
                .text());
        c.ranges().forEach(r -> ranges.add("{" + Entry.number(r.low()) + ", " + Entry.number(r.high()) + "}"));
    }

    private static void rest(Entry entry, Values values, long safe) {
        switch (values.rest()) {
            case SCALED -> {
                Scaling s = values.scaling();
                entry.put("rest", "REST_SCALED")
                        .put("low", values.low())
                        .put("high", values.high())
                        .put("numerator", s.numerator())
                        .put("offset", s.offset())
                        .put("denominator", s.denominator())
                        .put("target_low", s.low())
                        .put("target_high", s.high());
            }
            case VALUE, SAFE ->
                entry.put("rest", "REST_VALUE")
                        .put("otherwise", values.rest() == Rest.SAFE ? safe : values.otherwise());
            case NOTHING -> entry.put("rest", "REST_NOTHING");
        }
    }

    private String name(int network, String message) {
        return program.networks().get(network) + "." + message;
    }

    private String incoming(Incoming m) {
        Entry entry = new Entry()
                .put("network", m.network())
                .put("id", String.format("0x%X", m.id()))
                .put("extended", m.extended() ? 1 : 0);
        m.counter().ifPresent(c -> entry.put("counts", counter(c)));
        m.checksum().ifPresent(g -> entry.put("checks", guard(g)));
        return entry.text(name(m.network(), m.name()));
    }

    private String outgoing(Outgoing m) {
        Entry entry = new Entry()
                .put("network", m.network())
                .put("id", String.format("0x%X", m.id()))
                .put("extended", m.extended() ? 1 : 0)
                .put("length", m.length())
                .put("every", m.every())
                .put("on_change", m.onChange())
                .word("fixed", m.fixed());
        m.counter().ifPresent(c -> entry.put("counts", counter(c)));
        m.checksum().ifPresent(g -> entry.put("checks", guard(g)));
        return entry.text(name(m.network(), m.name()));
    }

    private static String counter(Counter c) {
        return new Entry()
                .put("used", 1)
                .put("at", field(c.field()))
                .put("first", c.first())
                .put("last", c.last())
                .put("step", c.step())
                .text();
    }

    private String guard(Guard g) {
        Checksum rule = g.rule();
        boolean crc = rule.kind() == Checksum.Kind.CRC;
        int top = Integer.SIZE - rule.bits();
        int generator = (int) rule.generator() << top;
        int start = crc ? (int) rule.init() << top : (int) rule.init();
        boolean reflected = crc && rule.reflected();
        String text = new Entry()
                .put("kind", kind(rule.kind(), reflected))
                .put("at", field(g.field()))
                .put("bits", rule.bits())
                .put("generator", String.format("0x%Xu", reflected ? Integer.reverse(generator) : generator))
                .put("start", String.format("0x%Xu", reflected ? Integer.reverse(start) : start))
                .put("inverted", String.format("0x%Xu", rule.inverted()))
                .put(
                        "first_octet",
                        octets.stream().mapToInt(o -> o.split(",").length).sum())
                .put("before", g.before().size())
                .put("bytes", g.bytes().size())
                .put("after", g.after().size())
                .put("last_byte", g.lastByte())
                .text();
        octets.add(octets(g));
        return text;
    }

    /** Those of one guard stand in one line. */
    private static String octets(Guard g) {
        List<String> all = new ArrayList<>();
        g.before().forEach(o -> all.add(String.valueOf(o)));
        g.bytes().forEach(o -> all.add(String.valueOf(o)));
        g.after().forEach(o -> all.add(String.valueOf(o)));
        return all.isEmpty() ? "0" : String.join(", ", all);
    }

    private static String kind(Checksum.Kind kind, boolean reflected) {
        return switch (kind) {
            case CRC -> reflected ? "GUARD_CRC_REFLECTED" : "GUARD_CRC";
            case XOR -> "GUARD_XOR";
            case SUM -> "GUARD_SUM";
        };
    }
}
