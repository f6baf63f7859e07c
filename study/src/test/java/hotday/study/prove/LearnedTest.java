package hotday.study.prove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hotday.core.finding.InputException;
import hotday.signals.channel.Fact;
import hotday.vehicle.plant.Plant;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which fits may stand. */
class LearnedTest {
    private static final List<RunData> RUNS =
            List.of(MadeRun.run(new double[] {350.0, 355.0, 360.0}, 294.0, Fact.OFF, Fact.OFF, Fact.OFF));

    @TempDir
    private Path folder;

    /** One unknown at {@code z} prior standard deviations, all as wide as {@code sd} of them. */
    private FittedVehicle fitted(double z, double sd, double rmse) {
        FittedVehicle sheet = FittedVehicle.ofSheet(new Unknowns(Plant.compile(MadeRun.diesel(folder)), false, false));
        double[] best = sheet.z().clone();
        double[] width = sheet.posteriorSd().clone();
        best[0] = z;
        Arrays.fill(width, sd);
        return new FittedVehicle(
                sheet.unknowns(), best, width, sheet.factor(), rmse, 40.0, 2.0, Double.NaN, 10.0, true, 1);
    }

    private String key(FittedVehicle vehicle) {
        InputException e = catchThrowableOfType(InputException.class, () -> Learned.refuse(vehicle, RUNS));
        return e.findings().get(0).key();
    }

    @Test
    void aFitThatLeftEverythingAsWideAsTheSheetDidIsRefused() {
        assertThat(key(fitted(0.5, 0.95, 1.0))).isEqualTo("runs-told-nothing");
    }

    @Test
    void aFitBeyondTheSheetsDoubtIsRefused() {
        assertThat(key(fitted(5.0, 0.4, 1.0))).isEqualTo("other-vehicle");
        assertThat(key(fitted(-5.0, 0.4, 1.0))).isEqualTo("other-vehicle");
        assertThat(key(fitted(0.5, 0.4, 7.0))).isEqualTo("other-vehicle");
    }

    /** What fits of open recordings to their own sheets reached: 3.4 standard deviations, 3 K. */
    @Test
    void whatGenuineFitsReachMayStand() {
        assertThatCode(() -> Learned.refuse(fitted(3.5, 0.6, 3.0), RUNS)).doesNotThrowAnyException();
    }
}
