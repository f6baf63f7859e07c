package hotday.app.cli;

import hotday.signals.dbc.DbcFile;
import hotday.signals.dbc.Message;
import hotday.signals.dbc.Multiplexing;
import hotday.signals.dbc.Signal;
import hotday.signals.dbc.ValueRange;
import java.util.Locale;
import java.util.stream.Collectors;

/** The description of a network for people. */
final class DecodeText {
    private DecodeText() {}

    static void print(Console console, DbcFile file) {
        int signals = file.messages().stream().mapToInt(m -> m.signals().size()).sum();
        console.result(
                file.name() + ": " + counted(file.messages().size(), "message") + ", " + counted(signals, "signal"));
        for (Message message : file.messages()) {
            console.result("");
            console.result(head(message));
            message.signals().forEach(s -> console.result(line(s)));
        }
        file.findings().forEach(f -> console.say(f.severity().name().toLowerCase(Locale.ROOT) + ": " + f));
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private static String head(Message m) {
        String id = String.format(m.extended() ? "%08X" : "%03X", m.id());
        String sender = m.sender().isEmpty() ? "" : ", from " + m.sender();
        return id + "  " + m.name() + ", " + counted(m.length(), "byte") + sender + remark(m.comment());
    }

    private static String line(Signal s) {
        String place = String.format(
                "%d|%d %s %s",
                s.start(), s.bits(), s.bigEndian() ? "big" : "little", s.form().word());
        String range = s.min() == 0 && s.max() == 0 ? "" : plain(s.min()) + " to " + plain(s.max());
        return String.format(
                                "  %-32s %-24s x %s%s  %s %s",
                                s.name(), place, plain(s.factor()), offset(s.offset()), range, s.unit())
                        .stripTrailing()
                + when(s.multiplexing())
                + remark(s.comment());
    }

    private static String offset(double offset) {
        return offset == 0 ? "" : (offset > 0 ? " + " : " - ") + plain(Math.abs(offset));
    }

    private static String when(Multiplexing m) {
        if (!m.clear()) {
            return "  [not taken: multiplexing unclear]";
        }
        String which = m.multiplexor() ? "  [multiplexor]" : "";
        return m.by().isEmpty() ? which : which + "  [when " + m.by() + " is " + values(m) + "]";
    }

    private static String values(Multiplexing m) {
        return m.values().stream().map(DecodeText::range).collect(Collectors.joining(", "));
    }

    private static String range(ValueRange v) {
        return v.low() == v.high() ? String.valueOf(v.low()) : v.low() + " to " + v.high();
    }

    private static String remark(String comment) {
        return comment.isBlank() ? "" : "  \"" + comment.strip().replaceAll("\\s+", " ") + '"';
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? String.valueOf((long) value)
                : String.valueOf(value);
    }
}
