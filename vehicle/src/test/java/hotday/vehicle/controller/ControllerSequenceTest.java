package hotday.vehicle.controller;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * 600 s of scripted inputs against the sequence worked out independently in another language (reference/worked/
 * controller-sequence of the reference data): every listed value is an integer and must be equal.
 */
class ControllerSequenceTest {
    private static final int LAST = 6000;
    private static final long MODULUS = 2_147_483_647L;
    private static final List<String> STATES = List.of("lc", "lg", "la", "slow", "fault", "ar", "on");

    private static Map<String, Object> inputs;
    private static Map<String, Object> outputs;
    private static List<String> table;

    @BeforeAll
    static void read() throws IOException {
        Path folder = Path.of(System.getProperty("hotday.data", "../shared"), "reference", "worked");
        if (!Files.isDirectory(folder)) {
            System.err.println("skipped: no reference data at " + folder + " (set HOTDAY_DATA)");
        }
        assumeTrue(Files.isDirectory(folder), "no reference data at " + folder);
        try (InputStream in = Files.newInputStream(folder.resolve("controller-sequence.json"))) {
            Map<?, ?> file =
                    (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromInputStream(in); // JSON is YAML
            inputs = byName(file.get("inputs"));
            outputs = byName(file.get("outputs"));
        }
        table = Files.readAllLines(folder.resolve("controller-sequence.csv"));
    }

    private static Map<String, Object> byName(Object list) {
        Map<String, Object> out = new LinkedHashMap<>();
        for (Object item : (List<?>) list) {
            Map<?, ?> entry = (Map<?, ?>) item;
            out.put((String) entry.get("name"), entry.get("value"));
        }
        return out;
    }

    private static int[][] points(Object list) {
        return ((List<?>) list)
                .stream()
                        .map(p -> ((List<?>) p)
                                .stream().mapToInt(v -> (Integer) v).toArray())
                        .toArray(int[][]::new);
    }

    /** The script's channel at tick k: straight between breakpoints, rounded toward minus infinity. */
    private static int script(String channel, int k) {
        int[][] p = points(inputs.get("script " + channel));
        for (int i = 0; i + 1 < p.length; i++) {
            if (k < p[i + 1][0]) {
                long rise = (long) (p[i + 1][1] - p[i][1]) * (k - p[i][0]);
                return p[i][1] + (int) Math.floorDiv(rise, (long) (p[i + 1][0] - p[i][0]));
            }
        }
        return p[p.length - 1][1];
    }

    private static void fill(Inputs in, int k) {
        in.set(
                script("run", k) == 1,
                script("Tc", k),
                script("Tg", k),
                script("ph", k),
                script("ac", k) == 1,
                script("v", k),
                script("Vb", k));
    }

    private static List<Integer> states(Controller c) {
        return List.of(
                c.coolantLatched() ? 1 : 0,
                c.gearboxLatched() ? 1 : 0,
                c.airConditioningLatched() ? 1 : 0,
                c.slow() ? 1 : 0,
                c.fault() ? 1 : 0,
                c.afterRun() ? 1 : 0,
                c.on() ? 1 : 0);
    }

    private static String row(int k, Inputs in, Controller c) {
        return String.join(
                ",",
                k / 10 + ".0",
                flag(in.running),
                String.valueOf(in.coolant),
                String.valueOf(in.gearbox),
                String.valueOf(in.headPressure),
                flag(in.airConditioning),
                String.valueOf(in.speed),
                String.valueOf(in.battery),
                String.valueOf(c.want()),
                c.source().label(),
                flag(c.on()),
                String.valueOf(c.output()),
                flag(c.coolantLatched()),
                flag(c.gearboxLatched()),
                flag(c.airConditioningLatched()),
                flag(c.slow()),
                flag(c.fault()),
                flag(c.afterRun()));
    }

    private static String flag(boolean value) {
        return value ? "1" : "0";
    }

    @Test
    void theStandardScheduleHoldsTheCurvesOfTheSequence() {
        Schedule s = Schedule.standard();
        assertThat(s.coolant().demand()).isEqualTo(DemandCurve.of(points(inputs.get("CO"))));
        assertThat(s.gearbox().demand()).isEqualTo(DemandCurve.of(points(inputs.get("GB"))));
        assertThat(s.airConditioning().demand()).isEqualTo(DemandCurve.of(points(inputs.get("AC"))));
        assertThat(s.allowance().demand()).isEqualTo(DemandCurve.of(points(inputs.get("AL"))));
        assertThat(s.afterRun().demand()).isEqualTo(DemandCurve.of(points(inputs.get("AR"))));
    }

    @Test
    void everyTickEveryRowEverySwitchingInstant() {
        Controller controller = new Controller(Schedule.standard());
        Inputs in = new Inputs();
        List<List<Object>> changes = new ArrayList<>();
        List<String> rows = new ArrayList<>();
        List<Integer> before = states(controller);
        long sum = 0;
        long hash = 0;
        for (int k = 0; k <= LAST; k++) {
            fill(in, k);
            int out = controller.step(in);
            sum += out;
            hash = (hash * 31 + out) % MODULUS;
            List<Integer> now = states(controller);
            for (int i = 0; i < STATES.size(); i++) {
                if (!now.get(i).equals(before.get(i))) {
                    changes.add(List.of(k, STATES.get(i), now.get(i)));
                }
            }
            before = now;
            if (k % 50 == 0) {
                rows.add(row(k, in, controller));
            }
        }
        assertThat(changes).isEqualTo(outputs.get("state changes [tick, state, new value]"));
        assertThat(rows).isEqualTo(table.subList(1, table.size()));
        assertThat(sum).isEqualTo(((Number) outputs.get("sum of out")).longValue());
        assertThat(hash).isEqualTo(((Number) outputs.get("hash")).longValue());
    }

    @Test
    void instancesAreIndependentAndAStateCanBeTakenOver() {
        Controller whole = new Controller(Schedule.standard());
        Controller first = new Controller(Schedule.standard());
        Controller second = new Controller(Schedule.standard());
        Inputs in = new Inputs();
        for (int k = 0; k <= LAST; k++) {
            fill(in, k);
            int expected = whole.step(in);
            if (k == 2300) {
                second.copyFrom(first); // in the middle of a sensor fault
            }
            assertThat((k < 2300 ? first : second).step(in)).isEqualTo(expected);
            assertThat(states(k < 2300 ? first : second)).isEqualTo(states(whole));
        }
        whole.reset();
        fill(in, 0);
        assertThat(whole.step(in)).isZero();
        assertThat(states(whole)).isEqualTo(states(new Controller(Schedule.standard())));
    }
}
