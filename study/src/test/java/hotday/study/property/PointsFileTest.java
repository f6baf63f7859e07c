package hotday.study.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hotday.core.finding.InputException;
import hotday.physics.refrigerant.FluidState;
import hotday.physics.refrigerant.Refrigerant;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PointsFileTest {
    private static final Refrigerant FLUID = Refrigerant.R134A;
    private static final String STATE =
            "p_Pa,T_K,T_degC,region,in_eos_T_range,rho_kg_m3,h_J_kg,s_J_kgK,cp_J_kgK,cv_J_kgK,w_m_s,mu_Pa_s,k_W_mK,x";
    private static final String BOTH =
            "rhoL_kg_m3,rhoV_kg_m3,hL_J_kg,hV_J_kg,sL_J_kgK,sV_J_kgK,cpL_J_kgK,cpV_J_kgK,cvL_J_kgK,cvV_J_kgK,"
                    + "wL_m_s,wV_m_s,muL_Pa_s,muV_Pa_s,kL_W_mK,kV_W_mK,sigma_N_m";

    @TempDir
    private Path folder;

    private List<String> answer(String text) throws IOException {
        Path from = Files.writeString(folder.resolve("points.csv"), text);
        Path to = folder.resolve("out.csv");
        PointsFile.open(from).answer(FLUID, Answers.ofEquation(FLUID), to);
        return Files.readAllLines(to);
    }

    /** Faults as {@code key@line:column}. */
    private List<String> refused(String text) throws IOException {
        InputException e = catchThrowableOfType(InputException.class, () -> answer(text));
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).hasSize(1);
        }
        List<String> out = new ArrayList<>();
        e.findings()
                .forEach(f -> out.add(f.key() + "@" + f.place().orElseThrow().line() + ":"
                        + f.place().orElseThrow().column()));
        return out;
    }

    private static String[] cells(String line) {
        return line.split(",", -1);
    }

    @Test
    void everyPairOfAStateComesBackFromEveryOther() throws IOException {
        FluidState s = FLUID.atPressureTemperature(5e5, 320);
        FluidState mixed = FLUID.atTemperatureQuality(300, 0.4);
        List<String> out = answer("T_K,p_Pa,h_J_kg,x\n320,500000,,\n,500000," + s.enthalpy() + ",\n320,," + s.enthalpy()
                + ",\n300,,,0.4\n," + mixed.pressure() + ",,0.4\n,," + mixed.enthalpy() + ",0.4\n,"
                + mixed.pressure() + "," + mixed.enthalpy() + ",\n");
        assertThat(out).hasSize(8).first().isEqualTo(STATE);
        for (int row = 1; row < 8; row++) {
            FluidState expected = row < 4 ? s : mixed;
            double[] values = Columns.values(FLUID, expected);
            String[] cells = cells(out.get(row));
            assertThat(cells[3]).isEqualTo(row < 4 ? "superheated" : "two_phase");
            for (int i = 0; i < values.length; i++) {
                String cell = cells[i < Columns.REGION ? i : i + 1];
                if (Double.isNaN(values[i])) {
                    assertThat(cell).isEmpty();
                } else {
                    assertThat(Double.parseDouble(cell))
                            .isCloseTo(values[i], org.assertj.core.api.Assertions.withinPercentage(1e-7));
                }
            }
        }
    }

    @Test
    void temperatureOrPressureAloneIsSaturation() throws IOException {
        List<String> out = answer("T_K\n300\n310\n");
        assertThat(out).hasSize(3).first().isEqualTo("T_K,T_degC,p_Pa," + BOTH);
        assertThat(cells(out.get(1))[2]).isEqualTo("702820.6471671");
        assertThat(cells(out.get(2))).hasSize(20).doesNotContain("");
        assertThat(answer("p_Pa\n702820.6471671\n").get(1)).startsWith("300,26.85,702820.6471671,1199.66643659");
    }

    @Test
    void aMixedFileHasBothSetsOfColumnsAndCarriesNames() throws IOException {
        List<String> out = answer("note,T_K,id,p_Pa\n\"a, \"\"b\"\"\",300,1,101325\n,300,2,\n");
        assertThat(out.get(0)).isEqualTo("note,id," + STATE + "," + BOTH);
        assertThat(out.get(1))
                .startsWith("\"a, \"\"b\"\"\",1,101325,300,26.85,superheated,1,")
                .endsWith(",".repeat(18));
        assertThat(out.get(2))
                .startsWith(",2,702820.6471671,300,26.85" + ",".repeat(12) + "1199.6")
                .doesNotEndWith(",");
    }

    @Test
    void semicolonsDecimalCommasAndBlankLinesAreUnderstood() throws IOException {
        assertThat(answer("\uFEFFT_K;p_Pa\r\n300,5;101325,0\r\n\r\n301,5;101325,0\r\n"))
                .hasSize(3)
                .anyMatch(line -> line.startsWith("101325,300.5,"));
    }

    @Test
    void everyFaultComesAtOnceWithItsPlaceAndNothingIsWritten() throws IOException {
        assertThat(refused("T_K,p_Pa,h_J_kg,x\n1000,101325,,\n300,,,2\n,5e9,350000,\n,,500000,\nabc,1,,\n300,1,2,\n"
                        + ",,,\n300,101325,,,,7\n300,101325,,\n,1e5,9e9,\n,NaN,1e5,\n\"300,1,,\n"))
                .containsExactly(
                        "out-of-range@2:1",
                        "out-of-range@3:4",
                        "out-of-range@4:2",
                        "pair-needed@5:3",
                        "text-in-number-column@6:1",
                        "pair-needed@7:3",
                        "pair-needed@8:1",
                        "row-too-wide@9:6",
                        "out-of-range@11:3",
                        "text-in-number-column@12:2",
                        "row-damaged@13:1");
    }

    @Test
    void aFileOfFaultsIsCutShort() throws IOException {
        List<String> faults = refused("T_K\n" + "20\n".repeat(1500));
        assertThat(faults).hasSize(1001).last().isEqualTo("more-faults@0:0");
    }

    @Test
    void headersAreRefusedNameByName() throws IOException {
        assertThat(refused("T_C,p_Pa,p_Pa,T_K\n1,2,3,4\n")).containsExactly("no-such-column@1:1", "column-twice@1:3");
        assertThat(refused("h_J_kg,id\n1,2\n")).containsExactly("pair-needed@1:0");
        assertThat(refused("id\n1\n")).containsExactly("pair-needed@1:0");
        assertThat(refused("T_K,p_Pa\n")).containsExactly("no-rows@0:0");
        assertThat(refused("")).containsExactly("empty-file@0:0");
    }

    @Test
    void thirteenDigitsAndNoneForNothing() {
        assertThat(digits(1.0 / 3)).isEqualTo("0.3333333333333");
        assertThat(digits(702820.64716712)).isEqualTo("702820.6471671");
        assertThat(digits(9.268984618554123e-06)).isIn("0.000009268984618554", "9.268984618554E-6");
        assertThat(digits(100000)).isEqualTo("100000");
        assertThat(digits(0)).isEqualTo("0");
        assertThat(digits(-1.5e-9)).isEqualTo("-1.5E-9");
        assertThat(digits(Double.NaN)).isEmpty();
    }

    private static String digits(double value) {
        StringBuilder out = new StringBuilder();
        Digits.append(out, value);
        return out.toString();
    }
}
