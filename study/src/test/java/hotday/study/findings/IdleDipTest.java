package hotday.study.findings;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.study.demo.DemoShop;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Run;
import hotday.vehicle.sheet.BuildSheet;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A clutch that comes in at rest, and an engine that is switched off right after. */
class IdleDipTest {
    private static final double STEP = 0.1;
    private static final double IDLE = 68.0; // rad/s

    @TempDir
    private Path folder;

    private Run run;
    private IdleDip dip;

    @BeforeEach
    void car() {
        Car car = Car.draw(
                BuildSheet.read(DemoShop.create(folder).build("heron")).vehicle(), FaultKind.NONE, 0.0, 0.0, 1);
        run = new Run(car.plant());
        dip = new IdleDip(car);
        run.set(Input.SPEED, 0.0);
        run.set(Input.ENGINE_SPEED, IDLE);
    }

    private void tick(double compressor, int times) {
        run.set(Input.COMPRESSOR, compressor);
        for (int i = 0; i < times; i++) {
            dip.tick(run, STEP);
        }
    }

    @Test
    void anEngineSwitchedOffRightAfterTheClutchCameInHasNoDip() {
        tick(0.0, 5);
        tick(1.0, 2);
        run.set(Input.ENGINE_SPEED, 0.0);
        tick(1.0, 20);
        assertThat(dip.below()).isZero();
    }

    @Test
    void anEngineThatRunsOnIsFollowed() {
        tick(0.0, 5);
        tick(1.0, 20);
        assertThat(dip.below()).isFinite();
    }
}
