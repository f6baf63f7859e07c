package hotday.study.prove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.study.prove.MadeRun.Column;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The level of fuel that follows from load is an unknown; recorded fuel is what it is. */
class WorkedOutFuelTest {
    @TempDir
    private static Path folder;

    private VehicleSpec diesel;
    private Unknowns unknowns;

    @BeforeEach
    void sheet() {
        diesel = MadeRun.diesel(folder);
        unknowns = new Unknowns(Plant.compile(diesel), false, true);
    }

    private RunData run(double manifold, Column... more) {
        List<Column> columns = new ArrayList<>(List.of(
                Column.of("ambient_temperature", "degC", 10.0),
                new Column("coolant_temperature", "degC", t -> 10.0 + 0.1 * t),
                new Column("vehicle_speed", "km/h", t -> t < 40 ? 0.0 : 60.0),
                Column.of("engine_speed", "rpm", 1500.0),
                new Column("manifold_pressure", "kPa abs", t -> t < 40 ? 98.0 : manifold)));
        columns.addAll(List.of(more));
        return Preparation.of(MadeRun.recording(folder, 300, columns), diesel);
    }

    private double end(RunData run, double level) {
        double[] z = new double[unknowns.size()];
        z[z.length - 1] = level;
        double[] coolant = new double[run.size()];
        Simulation.run(
                unknowns, unknowns.plant(z), z, run, Branches.plain(run, false), coolant, new double[run.size()]);
        return coolant[coolant.length - 1];
    }

    @Test
    void moreFuelForTheSameLoadWarmsFaster() {
        RunData run = run(150.0);
        assertThat(unknowns.all().get(unknowns.size() - 1).id()).isEqualTo("worked_out_fuel");
        assertThat(unknowns.value(unknowns.size() - 1, 0.0)).isEqualTo(1.0);
        assertThat(end(run, 1.0)).isGreaterThan(end(run, 0.0) + 1.0);
        assertThat(end(run, 0.0)).isGreaterThan(end(run, -1.0) + 1.0);
    }

    @Test
    void whatAnIdlingEngineNeedsForItselfIsNotInDoubt() {
        RunData idle = run(98.0);
        assertThat(end(idle, 1.0)).isCloseTo(end(idle, 0.0), within(1e-9));
    }

    @Test
    void recordedFuelIsNotScaled() {
        RunData run = run(150.0, Column.of("fuel_flow", "g/s", 1.0));
        assertThat(run.fuelWorkedOut()).isFalse();
        assertThat(end(run, 1.0)).isEqualTo(end(run, 0.0));
    }
}
