package hotday.vehicle.idle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** Six variants of the worked governor (reference/worked/idle-step of the reference data, solved independently), to its own tolerance. */
class WorkedIdleTest {
    private static final double RPM = Math.PI / 30.0;
    private static final double SPEED = 1e-4 * RPM; // stated by the problem
    private static final double TIME = 1e-5; // s, stated by the problem

    private static Map<String, Object> inputs;
    private static Map<String, Object> outputs;

    @BeforeAll
    static void read() throws IOException {
        Path file = Path.of(System.getProperty("hotday.data", "../shared"), "reference/worked/idle-step.json");
        if (!Files.isRegularFile(file)) {
            System.err.println("skipped: no reference data at " + file + " (set HOTDAY_DATA)");
        }
        assumeTrue(Files.isRegularFile(file), "no reference data at " + file);
        try (InputStream in = Files.newInputStream(file)) {
            Map<?, ?> problem =
                    (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromInputStream(in); // JSON is YAML
            inputs = byName(problem.get("inputs"));
            outputs = byName(problem.get("outputs"));
        }
    }

    private static Map<String, Object> byName(Object list) {
        Map<String, Object> out = new LinkedHashMap<>();
        for (Object item : (List<?>) list) {
            Map<?, ?> entry = (Map<?, ?>) item;
            out.put((String) entry.get("name"), entry.get("value"));
        }
        return out;
    }

    private static double in(String name) {
        return number(inputs.get(name));
    }

    private static double number(Object value) {
        return ((Number) value).doubleValue();
    }

    private static IdleSettings settings() {
        return new IdleSettings(
                in("J"),
                in("n_set") * RPM,
                in("b"),
                in("tau_a"),
                in("Kp") / RPM,
                in("Ki") / RPM,
                in("Ks") / RPM,
                in("R_up"),
                in("R_dn"));
    }

    @Test
    void everyVariant() {
        List<?> variants = (List<?>) inputs.get("variants [F N m, lead s]");
        for (Object variant : variants) {
            double torque = number(((List<?>) variant).get(0));
            double lead = number(((List<?>) variant).get(1));
            IdleLoad load = new IdleLoad(in("T_c"), in("tau_c"));
            IdleRun run = IdleStudy.run(settings(), load, new FeedForward(torque, lead));
            compare(run, (Map<?, ?>) outputs.get("F=" + torque + " lead=" + lead));
        }
        assertThat(variants).hasSize(6);
    }

    private static void compare(IdleRun run, Map<?, ?> expected) {
        speed(run.lowest(), expected.get("n_min"));
        time(run.lowestTime(), expected.get("t_min"));
        speed(run.highest(), expected.get("n_max"));
        time(run.highestTime(), expected.get("t_max"));
        time(run.settling(), expected.get("settling"));
        int[] at = {80, 120, 150, 200, 300, 500, 1000};
        for (int i = 0; i < at.length; i++) {
            speed(run.trace().speed(at[i]), ((List<?>) expected.get("n")).get(i));
        }
    }

    private static void speed(double ours, Object rpm) {
        assertThat(ours).isCloseTo(number(rpm) * RPM, within(SPEED));
    }

    private static void time(double ours, Object seconds) {
        assertThat(ours).isCloseTo(number(seconds), within(TIME));
    }

    /** The problem's engine is the usual one of 4.8 l. */
    @Test
    void usualEngineIsThatOfTheProblem() {
        IdleSettings usual = IdleSettings.of(4.8e-3, 700 * RPM);
        assertThat(usual.inertia()).isCloseTo(in("J"), within(1e-12));
        assertThat(usual.airLag()).isCloseTo(in("tau_a"), within(1e-12));
        assertThat(usual.spark() * RPM).isCloseTo(in("Ks"), within(1e-12));
        assertThat(usual.reserveUp()).isCloseTo(in("R_up"), within(1e-12));
    }
}
