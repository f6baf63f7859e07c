package hotday.physics;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assumptions;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * A worked sub-problem, calculated independently of this program, from the folder of reference data (system property {@code hotday.data}).
 * Skips the running test, visibly, where the folder is absent.
 */
public final class WorkedProblem {
    private final JsonNode root;

    private WorkedProblem(JsonNode root) {
        this.root = root;
    }

    public static Path file(String name) {
        Path file = Path.of(System.getProperty("hotday.data", "../shared"), "reference", name);
        if (!Files.isRegularFile(file)) {
            String message = "skipped: no reference data at " + file + " (set HOTDAY_DATA)";
            System.err.println(message);
            Assumptions.abort(message);
        }
        return file;
    }

    public static WorkedProblem read(String name) {
        return new WorkedProblem(
                new ObjectMapper().readTree(file("worked/" + name + ".json").toFile()));
    }

    /** A number among the inputs. */
    public double in(String name) {
        return input(name).asDouble();
    }

    public JsonNode input(String name) {
        return value("inputs", name);
    }

    public JsonNode output(String name) {
        return value("outputs", name);
    }

    /** A number of a named group of outputs. */
    public double out(String name, String quantity) {
        return output(name).required(quantity).asDouble();
    }

    public boolean has(String output) {
        for (JsonNode entry : root.required("outputs")) {
            if (entry.required("name").asString().equals(output)) {
                return true;
            }
        }
        return false;
    }

    private JsonNode value(String list, String name) {
        for (JsonNode entry : root.required(list)) {
            if (entry.required("name").asString().equals(name)) {
                return entry.required("value");
            }
        }
        throw new AssertionError("no " + name + " among the " + list);
    }
}
