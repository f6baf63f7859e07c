package hotday.validation;

import hotday.app.cli.CommandLineDoor;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** One command line run inside the test, with what it printed. */
public record CommandLineRun(int status, String out, String err) {

    public static CommandLineRun of(Object... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        String[] args = new String[words.length];
        for (int i = 0; i < args.length; i++) {
            args[i] = words[i].toString();
        }
        int status = CommandLineDoor.run(
                args,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
        return new CommandLineRun(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    public JsonNode json() {
        return JsonMapper.builder().build().readTree(out);
    }

    /** A file of the repository. */
    public static Path repository(String name) {
        return Path.of(System.getProperty("hotday.root", "..")).resolve(name);
    }
}
