package hotday.physics.exchanger;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class HotStateTest {
    private static final int PASSES = 20_000;

    private final FaceGrid face = FaceGrid.even(8, 12, 0.4, 0.6);
    private final AirSide side = new AirSide(8000, 3.5, 0.5);
    private final double[] flux = new double[96];
    private final double[] logs = new double[96];
    private final double[] rates = new double[96];
    private final double[] front = new double[96];

    private final RefrigerantMarch condenser = new RefrigerantMarch(
            Passes.multiPass(new Footprint(face, 0, 6, 0, 11), Passes.Side.LEFT, 0.5, 0.3, 0.2),
            RandomCores.stream(new SplittableRandom(5)));
    private final LiquidMarch radiator =
            new LiquidMarch(Passes.crossFlow(face.whole(), Passes.Side.LEFT), TileLaw.TUBE_MIXED);
    private final Stack stack = new Stack(face, List.of(condenser, radiator));

    private double pass() {
        AirSide.logarithms(flux, logs);
        side.fill(condenser.passes(), logs, condenser.airConductance());
        side.fill(radiator.passes(), logs, radiator.airConductance());
        radiator.flow(7000, 375);
        stack.pass(rates, front, 340);
        return radiator.heat() + condenser.heat();
    }

    @Test
    void lettingAirThroughAllocatesNothing() {
        for (int t = 0; t < 96; t++) {
            flux[t] = t < 12 ? -1.0 : 3.0;
            rates[t] = 1007 * flux[t] * face.area(t);
        }
        Arrays.fill(front, 308.0);
        radiator.passes().spread(3800, radiator.liquidConductance());
        double sum = 0;
        for (int i = 0; i < PASSES; i++) {
            sum += pass();
        }
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().getId();
        long before = threads.getThreadAllocatedBytes(id);
        for (int i = 0; i < PASSES; i++) {
            sum += pass();
        }
        assertThat(threads.getThreadAllocatedBytes(id) - before).isLessThan(PASSES / 10);
        assertThat(sum).isFinite();
    }
}
