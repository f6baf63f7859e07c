package hotday.app.cli;

import java.io.PrintStream;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Results go to one stream, everything said on the way to the other. */
final class Console {
    private static final int BAR = 24;
    private static final long SHOW_AFTER_MS = 1000;

    private final PrintStream out;
    private final PrintStream err;
    private final boolean terminal;
    private final long began = System.currentTimeMillis();
    private String shown = "";

    /** @param terminal whether a person watches {@code err}: only then is there a progress bar */
    Console(PrintStream out, PrintStream err, boolean terminal) {
        this.out = out;
        this.err = err;
        this.terminal = terminal;
    }

    /** A line of the result. */
    void result(String line) {
        out.println(line);
    }

    /** A result for machines, indented. */
    void json(ObjectNode node) {
        out.println(
                JsonMapper.builder().build().writerWithDefaultPrettyPrinter().writeValueAsString(node));
    }

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    /** A line on the way, for people. */
    void say(String line) {
        clear();
        err.println(line);
    }

    /** A progress bar on the error stream; shows nothing off a terminal or in the first second. */
    synchronized void progress(String stage, double share) {
        if (!terminal || System.currentTimeMillis() - began < SHOW_AFTER_MS) {
            return;
        }
        int full = (int) Math.round(BAR * Math.min(1.0, Math.max(0.0, share)));
        String line = "[" + "#".repeat(full) + ".".repeat(BAR - full) + "] " + stage;
        err.print("\r" + line + " ".repeat(Math.max(0, shown.length() - line.length())));
        err.flush();
        shown = line;
    }

    /** Takes the progress bar away. */
    synchronized void clear() {
        if (!shown.isEmpty()) {
            err.print("\r" + " ".repeat(shown.length()) + "\r");
            err.flush();
            shown = "";
        }
    }
}
