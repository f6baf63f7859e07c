package hotday.study.prove;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A diesel that throttles itself to burn its exhaust filter clean. */
class FilterBurningTest {
    private static final double IDLE = 98e3;
    private static final double IDLE_SPEED = 100.0;

    @TempDir
    private Path folder;

    private final double[] manifold = filled(IDLE);
    private final double[] engine = filled(IDLE_SPEED);

    private static double[] filled(double value) {
        double[] out = new double[600];
        Arrays.fill(out, value);
        return out;
    }

    private boolean[] burning() {
        return FilterBurning.in(manifold, engine, IDLE, 1.0);
    }

    private static int count(boolean[] rows) {
        int n = 0;
        for (boolean row : rows) {
            n += row ? 1 : 0;
        }
        return n;
    }

    @Test
    void aThrottledSpellIsFoundThroughTheLoadsInside() {
        Arrays.fill(manifold, 200, 400, 68e3);
        Arrays.fill(manifold, 280, 300, 180e3);
        boolean[] burning = burning();
        assertThat(burning[290]).isTrue();
        assertThat(burning[210]).isTrue();
        assertThat(burning[150]).isFalse();
        assertThat(burning[450]).isFalse();
        assertThat(count(burning)).isBetween(190, 260);
    }

    @Test
    void anEngineThatRunsDownOrIdlesFreelyBurnsNoFilter() {
        assertThat(count(burning())).isZero();
        Arrays.fill(manifold, 200, 205, 37e3);
        assertThat(count(burning())).isZero();
        Arrays.fill(manifold, 200, 260, 37e3);
        Arrays.fill(engine, 200, 260, 0.0);
        assertThat(count(burning())).isZero();
    }

    /** An idling engine of two litres burns about 1.5 l/h meanwhile, three times as much as usual; common practice, no source. */
    @Test
    void fuelIsAFewTimesThatOfIdle() {
        VehicleSpec diesel = MadeRun.diesel(folder);
        double perLitre = FilterBurning.fuelPower(diesel.engine(), 68e3, IDLE_SPEED)
                / (1e3 * diesel.engine().displacement());
        assertThat(perLitre).isBetween(5e3, 12e3);
        double idle = diesel.engine().fuelLine().fuelPower(Preparation.ACCESSORY_POWER, IDLE_SPEED);
        assertThat(1e3 * perLitre * diesel.engine().displacement()).isGreaterThan(1.3 * idle);
    }
}
