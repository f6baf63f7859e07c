package hotday.physics.component;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class CatalogueCoreTest {
    private static final double FINS = 1.0 / 1.8e-3;
    private static final CatalogueCore CORE = new CatalogueCore(0.72, 0.47, 0.026, FINS, 1, 0.010);

    /**
     * The worked louvered core has the same fins, 48 rows of them instead of 47, and air at 1.145 kg/m3: air conductance 1441 W/K at 4 m/s (printed there);
     * scaled by rows and by density to the power 0.51 this core must agree.
     */
    @Test
    void airSideOfTheWorkedCore() {
        double scaled = 1445.454382 * 47.0 / 48.0 * Math.pow(1.2 / 1.145484783, 0.5);
        assertThat(CORE.airConductance(4.0 * 0.98)).isCloseTo(scaled, withinPercentage(3.0));
        assertThat(CORE.airExponent()).isBetween(0.40, 0.51);
    }

    @Test
    void moreOfEverythingGivesMore() {
        CatalogueCore thick = new CatalogueCore(0.72, 0.47, 0.042, FINS, 1, 0.010);
        CatalogueCore dense = new CatalogueCore(0.72, 0.47, 0.026, 1.0 / 1.2e-3, 1, 0.010);
        CatalogueCore wide = new CatalogueCore(0.80, 0.47, 0.026, FINS, 1, 0.010);
        for (CatalogueCore more : new CatalogueCore[] {thick, dense, wide}) {
            assertThat(more.airConductance(4)).isGreaterThan(CORE.airConductance(4));
        }
        assertThat(thick.pressureDrop(4)).isGreaterThan(CORE.pressureDrop(4));
        assertThat(dense.pressureDrop(4)).isGreaterThan(CORE.pressureDrop(4));
        assertThat(wide.pressureDrop(4)).isCloseTo(CORE.pressureDrop(4), within(1e-9));
        assertThat(thick.heatCapacity(0.5)).isGreaterThan(CORE.heatCapacity(0.5));
    }

    /** Flat tubes with half glycol are laminar at small flow: conductance does not grow there, then it does. */
    @Test
    void coolantSideStaysWhileLaminar() {
        assertThat(CORE.coolantConductance(0.4, 0.5)).isCloseTo(CORE.coolantConductance(0.2, 0.5), within(1e-9));
        assertThat(CORE.coolantConductance(3.0, 0.5)).isGreaterThan(3 * CORE.coolantConductance(0.2, 0.5));
    }

    /** The fit misses the pressure drop by less than the jump of the friction law at Re 150 allows elsewhere. */
    @Test
    void resistanceFollowsThePressureDrop() {
        double[] r = CORE.resistance();
        for (double v = 2; v <= 8; v += 0.5) {
            assertThat(r[0] * v + r[1] * v * v).isCloseTo(CORE.pressureDrop(v), withinPercentage(4));
        }
        assertThat(r[0]).isPositive();
        assertThat(r[1]).isPositive();
    }
}
