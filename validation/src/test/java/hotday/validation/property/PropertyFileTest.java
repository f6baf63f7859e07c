package hotday.validation.property;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.physics.refrigerant.FluidState;
import hotday.physics.refrigerant.Refrigerant;
import hotday.validation.CommandLineRun;
import hotday.validation.SharedData;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Files of states through the command line: against the reference tables, and against themselves. */
class PropertyFileTest {
    private static final double STATE = 1e-8;
    private static final double SATURATION = 1e-9;
    private static final double TRANSPORT = 1e-6;
    /** Of the table: what a time loop can bear, K and share. */
    private static final double TABLE_TEMPERATURE = 0.05;

    private static final double TABLE_DENSITY = 5e-4;
    private static final Set<String> TRANSPORT_NAMES =
            Set.of("mu_Pa_s", "k_W_mK", "muL_Pa_s", "muV_Pa_s", "kL_W_mK", "kV_W_mK", "sigma_N_m");
    private static final Set<String> NOT_IN_OURS = Set.of("T_degC", "in_eos_T_range");

    @TempDir
    private Path folder;

    private List<Map<String, String>> answer(Refrigerant fluid, List<String> lines, Object... more) throws IOException {
        Path from = Files.write(folder.resolve("points.csv"), lines);
        Path to = folder.resolve("out.csv");
        List<Object> words = new ArrayList<>(List.of("property", "--fluid", fluid.label(), "--from", from, "--to", to));
        words.addAll(List.of(more));
        CommandLineRun run = CommandLineRun.of(words.toArray());
        assertThat(run.status()).as(run.err()).isZero();
        List<String> out = Files.readAllLines(to);
        String[] names = out.get(0).split(",", -1);
        List<Map<String, String>> rows = new ArrayList<>();
        for (String line : out.subList(1, out.size())) {
            String[] cells = line.split(",", -1);
            assertThat(cells).hasSameSizeAs(names);
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < names.length; i++) {
                row.put(names[i], cells[i]);
            }
            rows.add(row);
        }
        return rows;
    }

    private static double number(Map<String, String> row, String name) {
        return Double.parseDouble(row.get(name));
    }

    private static void near(String what, double ours, double expected, double tolerance) {
        assertThat(Math.abs(ours - expected))
                .as("%s: %s, expected %s", what, ours, expected)
                .isLessThanOrEqualTo(tolerance * Math.abs(expected));
    }

    private static List<Map<String, String>> reference(Refrigerant fluid, String kind) {
        return SharedData.rows("reference/" + fluid.label().replace("-", "") + "_" + kind + ".csv");
    }

    private void sameAsReference(Refrigerant fluid, String kind, String a, String b, double tolerance)
            throws IOException {
        List<Map<String, String>> expected = reference(fluid, kind);
        List<String> lines = new ArrayList<>(List.of(b.isEmpty() ? a : a + "," + b));
        expected.forEach(row -> lines.add(b.isEmpty() ? row.get(a) : row.get(a) + "," + row.get(b)));
        List<Map<String, String>> ours = answer(fluid, lines);
        assertThat(ours).hasSameSizeAs(expected);
        for (int i = 0; i < ours.size(); i++) {
            same(ours.get(i), expected.get(i), tolerance);
        }
    }

    private static void same(Map<String, String> ours, Map<String, String> expected, double tolerance) {
        expected.forEach((name, value) -> {
            if (name.equals("region")) {
                assertThat(ours.get(name)).as("%s", expected).isEqualTo(value);
            } else if (!NOT_IN_OURS.contains(name)) {
                double allowed = TRANSPORT_NAMES.contains(name) ? TRANSPORT : tolerance;
                near(name + " of " + expected, number(ours, name), Double.parseDouble(value), allowed);
            }
        });
    }

    @ParameterizedTest
    @EnumSource(Refrigerant.class)
    void singleStatesByPressureAndTemperature(Refrigerant fluid) throws IOException {
        sameAsReference(fluid, "single", "p_Pa", "T_K", STATE);
    }

    @ParameterizedTest
    @EnumSource(Refrigerant.class)
    void singleStatesByPressureAndEnthalpy(Refrigerant fluid) throws IOException {
        sameAsReference(fluid, "single", "p_Pa", "h_J_kg", STATE);
    }

    @ParameterizedTest
    @EnumSource(Refrigerant.class)
    void saturationByTemperature(Refrigerant fluid) throws IOException {
        sameAsReference(fluid, "sat", "T_K", "", SATURATION);
    }

    @ParameterizedTest
    @EnumSource(Refrigerant.class)
    void saturationByPressure(Refrigerant fluid) throws IOException {
        sameAsReference(fluid, "sat", "p_Pa", "", SATURATION);
    }

    @ParameterizedTest
    @EnumSource(Refrigerant.class)
    void theTableAnswersNearTheReference(Refrigerant fluid) throws IOException {
        for (String second : List.of("h_J_kg", "T_K")) {
            List<Map<String, String>> expected = reference(fluid, "single");
            List<String> lines = new ArrayList<>(List.of("p_Pa," + second));
            expected.forEach(row -> lines.add(row.get("p_Pa") + "," + row.get(second)));
            List<Map<String, String>> ours = answer(fluid, lines, "--table");
            for (int i = 0; i < ours.size(); i++) {
                Map<String, String> row = ours.get(i);
                assertThat(row.get("region"))
                        .as("%s", row)
                        .isEqualTo(expected.get(i).get("region"));
                double off = Math.abs(number(row, "T_K") - number(expected.get(i), "T_K"));
                assertThat(off).as("temperature %s", row).isLessThan(TABLE_TEMPERATURE);
                near("density " + row, number(row, "rho_kg_m3"), number(expected.get(i), "rho_kg_m3"), TABLE_DENSITY);
                assertThat(row.get("w_m_s") + row.get("mu_Pa_s") + row.get("x")).isEmpty();
            }
        }
    }

    /** 500 states of all kinds from a fixed seed; every answer must lie on the equation of state at its own p and T. */
    @ParameterizedTest
    @EnumSource(Refrigerant.class)
    void randomStatesHoldTogether(Refrigerant fluid) throws IOException {
        Random random = new Random(20_240_607);
        List<String> lines = new ArrayList<>(List.of("id,T_K,p_Pa,h_J_kg,x"));
        for (int i = 0; i < 500; i++) {
            lines.add(i + "," + point(fluid, i % 5, random));
        }
        List<Map<String, String>> rows = answer(fluid, lines);
        assertThat(rows).hasSize(500);
        for (int i = 0; i < 500; i++) {
            String[] asked = lines.get(i + 1).split(",", -1);
            Map<String, String> row = rows.get(i);
            assertThat(row.get("id")).isEqualTo(asked[0]);
            echoes(row, asked);
            if (!row.get("rhoL_kg_m3").isEmpty()) {
                bothPhases(fluid, row);
            } else if (row.get("x").isEmpty()) {
                onePhase(fluid, row);
            } else {
                mixture(fluid, row);
            }
        }
    }

    private static String point(Refrigerant fluid, int kind, Random random) {
        double t = 233.15 + random.nextDouble() * (fluid.criticalTemperature() - 2 - 233.15);
        double p = Math.exp(Math.log(5e4) + random.nextDouble() * Math.log(4e6 / 5e4));
        double x = random.nextDouble();
        return switch (kind) {
            case 0 -> "," + p + "," + (160e3 + 320e3 * random.nextDouble()) + ",";
            case 1 -> t + ",,," + x;
            case 2 -> "," + fluid.saturationPressure(t) + ",," + x;
            case 3 -> (233.15 + 190 * random.nextDouble()) + "," + p + ",,";
            default -> random.nextBoolean() ? t + ",,," : "," + fluid.saturationPressure(t) + ",,";
        };
    }

    private static void echoes(Map<String, String> row, String[] asked) {
        String[] names = {"id", "T_K", "p_Pa", "h_J_kg", "x"};
        for (int i = 1; i < names.length; i++) {
            if (!asked[i].isEmpty()) {
                near(names[i] + " given back in " + row, number(row, names[i]), Double.parseDouble(asked[i]), 1e-12);
            }
        }
    }

    private static void onePhase(Refrigerant fluid, Map<String, String> row) {
        FluidState s = fluid.atPressureTemperature(number(row, "p_Pa"), number(row, "T_K"));
        assertThat(row.get("region")).isEqualTo(s.region().word());
        near("density " + row, number(row, "rho_kg_m3"), s.density(), STATE);
        near("enthalpy " + row, number(row, "h_J_kg"), s.enthalpy(), STATE);
        near("entropy " + row, number(row, "s_J_kgK"), s.entropy(), STATE);
        near("specific heat " + row, number(row, "cp_J_kgK"), s.cp(), STATE);
        near("viscosity " + row, number(row, "mu_Pa_s"), s.viscosity(), TRANSPORT);
    }

    private static void mixture(Refrigerant fluid, Map<String, String> row) {
        double t = number(row, "T_K");
        double x = number(row, "x");
        FluidState l = fluid.atTemperatureQuality(t, 0);
        FluidState v = fluid.atTemperatureQuality(t, 1);
        assertThat(row.get("region")).isEqualTo("two_phase");
        assertThat(row.get("cp_J_kgK") + row.get("mu_Pa_s")).isEmpty();
        near("pressure " + row, number(row, "p_Pa"), l.pressure(), STATE);
        near("volume " + row, 1 / number(row, "rho_kg_m3"), (1 - x) / l.density() + x / v.density(), STATE);
        near("enthalpy " + row, number(row, "h_J_kg"), (1 - x) * l.enthalpy() + x * v.enthalpy(), STATE);
        near("entropy " + row, number(row, "s_J_kgK"), (1 - x) * l.entropy() + x * v.entropy(), STATE);
    }

    /** Clausius and Clapeyron across the phases: h_V - h_L = T (s_V - s_L). */
    private static void bothPhases(Refrigerant fluid, Map<String, String> row) {
        double t = number(row, "T_K");
        assertThat(row.get("region")).isEmpty();
        near("pressure " + row, number(row, "p_Pa"), fluid.saturationPressure(t), SATURATION);
        double latent = number(row, "hV_J_kg") - number(row, "hL_J_kg");
        near("latent heat " + row, latent, t * (number(row, "sV_J_kgK") - number(row, "sL_J_kgK")), STATE);
    }
}
