package hotday.physics.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import hotday.physics.WorkedProblem;
import hotday.physics.fluid.Air;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

class LouveredFinTest {
    private static final LouveredFin.Geometry CORE =
            new LouveredFin.Geometry(1.4, 1.8, 8.0, 6.8, 26, 10, 0.08, 2.0, 26, 28);
    /** Percent: the worked problem is printed with ten digits. */
    private static final double WORKED = 1e-6;

    /** Chang and Wang 1997; Chang, Hsu, Lin and Wang 2000: the printed equations, recomputed for this check. */
    @ParameterizedTest
    @CsvSource({
        "100, 0.044285, 0.269514",
        "149.9, 0.036318, 0.186219",
        "150, 0.036306, 0.175069",
        "300, 0.025851, 0.111005",
        "1000, 0.014330, 0.058955"
    })
    void printedEquations(double re, double j, double f) {
        assertThat(LouveredFin.j(CORE, re)).isCloseTo(j, within(6e-7));
        assertThat(LouveredFin.f(CORE, re)).isCloseTo(f, within(6e-7));
    }

    @Test
    void frictionJumpsSixPercentAtReynolds150() {
        double jump = LouveredFin.f(CORE, 149.999999) / LouveredFin.f(CORE, 150.0) - 1.0;
        assertThat(jump).isBetween(0.06, 0.07);
    }

    @Test
    void onlyRatiosCount() {
        LouveredFin.Geometry metres =
                new LouveredFin.Geometry(1.4e-3, 1.8e-3, 8e-3, 6.8e-3, 26e-3, 10e-3, 0.08e-3, 2e-3, 26e-3, 28);
        assertThat(LouveredFin.j(metres, 300)).isCloseTo(LouveredFin.j(CORE, 300), withinPercentage(1e-10));
        assertThat(LouveredFin.f(metres, 300)).isCloseTo(LouveredFin.f(CORE, 300), withinPercentage(1e-10));
        assertThat(LouveredFin.f(metres, 120)).isCloseTo(LouveredFin.f(CORE, 120), withinPercentage(1e-10));
    }

    @Test
    void bothFallWithReynolds() {
        for (double re = 100; re < 2900; re *= 1.05) {
            assertThat(LouveredFin.j(CORE, re * 1.05)).isLessThan(LouveredFin.j(CORE, re));
            assertThat(LouveredFin.f(CORE, re * 1.05)).isLessThan(LouveredFin.f(CORE, re));
        }
    }

    private static List<String> names(LouveredFin.Geometry g, double re) {
        return LouveredFin.outside(g, 1e-3, re).stream()
                .map(LouveredFin.Excess::name)
                .toList();
    }

    @Test
    void namesEveryQuantityOutsideThePublishedData() {
        assertThat(names(CORE, 500)).isEmpty();
        assertThat(names(CORE, 60)).containsExactly("Reynolds number on louver pitch");
        assertThat(names(CORE, 3100)).containsExactly("Reynolds number on louver pitch");
        assertThat(names(CORE, Double.NaN)).containsExactly("Reynolds number on louver pitch");
        assertThat(names(new LouveredFin.Geometry(0.4, 4.0, 22.0, 19.0, 60, 26, 0.2, 2.0, 60, 40), 500))
                .containsExactly(
                        "louver pitch",
                        "fin pitch",
                        "fin length",
                        "louver length",
                        "tube depth",
                        "tube pitch",
                        "fin thickness",
                        "louver angle",
                        "hydraulic diameter");
        assertThat(names(new LouveredFin.Geometry(1.4, 3.0, 8.0, 6.8, 26, 10, 0.03, 2.0, 26, 28), 500))
                .containsExactly("fin thickness over fin pitch");
        assertThat(names(new LouveredFin.Geometry(1.4, 1.8, 8.0, 6.8, 26, 8.0, 0.08, 8.0, 26, 28), 500))
                .containsExactly("tube pitch over tube size");
    }

    @Test
    void saysValueUnitAndLimitsInWhateverUnitTheLengthsAre() {
        LouveredFin.Geometry metres =
                new LouveredFin.Geometry(1.4e-3, 3.6e-3, 8e-3, 6.8e-3, 26e-3, 10e-3, 0.08e-3, 2e-3, 26e-3, 28);
        List<LouveredFin.Excess> excess = LouveredFin.outside(metres, 1.0, 500);
        assertThat(excess).hasSize(1);
        assertThat(excess.get(0).value()).isCloseTo(3.6, within(1e-12));
        assertThat(excess.get(0).text()).isEqualTo("fin pitch 3.600 mm, published data 0.51 to 3.33 mm");
    }

    /** From catalogue geometry to UA and pressure drop, calculated independently. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4})
    void wholeCore(int row) {
        WorkedProblem p = WorkedProblem.read("louvered-fin-core");
        LouveredFin.Geometry g = new LouveredFin.Geometry(
                p.in("Lp"),
                p.in("Fp"),
                p.in("Fl"),
                p.in("Ll"),
                p.in("Td"),
                p.in("Tp"),
                p.in("df"),
                p.in("Dm"),
                p.in("Fd"),
                p.in("theta"));
        JsonNode speeds = p.input("v (face)");
        String name = "v=" + speeds.get(row).asDouble();
        double sigma = p.out("geometry", "sigma");
        double area = p.out("geometry", "A");
        double density = Air.density(p.in("p"), p.in("T_in"));
        double flux = density * speeds.get(row).asDouble() / sigma;
        double re = flux * p.in("Lp") * 1e-3 / p.in("mu");
        double f = LouveredFin.f(g, re);
        double h = LouveredFin.j(g, re) * flux * p.in("cp") * Math.pow(p.in("Pr"), -2.0 / 3.0);
        double fin = Fin.straight(h, p.in("k_fin"), p.in("df") * 1e-3, p.in("Fl") * 0.5e-3);
        double surface = Fin.surface(p.out("geometry", "A_fin") / area, fin);
        double air = surface * h * area;
        double coolant = p.in("h_c") * p.out("geometry", "A_i");
        double outletDensity =
                density * p.in("T_in") / p.input("T_out for each v").get(row).asDouble();
        double drop = CoreLoss.pressureDrop(
                flux, density, outletDensity, sigma, p.in("Kc"), p.in("Ke"), f, area / p.out("geometry", "A_c"));

        assertThat(g.hydraulicDiameter()).isCloseTo(p.out("geometry", "Dh_mm"), withinPercentage(WORKED));
        assertThat(re).isCloseTo(p.out(name, "Re"), withinPercentage(WORKED));
        assertThat(LouveredFin.j(g, re)).isCloseTo(p.out(name, "j"), withinPercentage(WORKED));
        assertThat(f).isCloseTo(p.out(name, "f"), withinPercentage(WORKED));
        assertThat(fin).isCloseTo(p.out(name, "eta"), withinPercentage(WORKED));
        assertThat(surface).isCloseTo(p.out(name, "eta_o"), withinPercentage(WORKED));
        assertThat(air).isCloseTo(p.out(name, "G_air"), withinPercentage(WORKED));
        assertThat(1.0 / (1.0 / air + 1.0 / coolant)).isCloseTo(p.out(name, "UA"), withinPercentage(WORKED));
        assertThat(drop).isCloseTo(p.out(name, "dp"), withinPercentage(WORKED));
    }
}
