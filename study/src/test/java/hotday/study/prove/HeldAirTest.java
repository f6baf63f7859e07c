package hotday.study.prove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.signals.channel.Fact;
import hotday.vehicle.plant.Input;
import hotday.vehicle.plant.Plant;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HeldAirTest {
    private static final double SPEED = 25.0;

    @TempDir
    private Path folder;

    /** A hard pull at 90 km/h, 40 min in steps of ten seconds; coolant is what the sheet's vehicle makes of it, in whole degrees. */
    private RunData drive(FittedVehicle vehicle, boolean[] held) {
        double[] coolant = new double[240];
        Arrays.fill(coolant, 363.0);
        RunData run = MadeRun.run(coolant, MadeRun.MILD, Fact.OFF, Fact.OFF, Fact.OFF);
        for (int i = 0; i < run.size(); i++) {
            double[] in = run.inputs();
            int at = i * Input.COUNT;
            in[at + Input.PRESSURE.index()] = 101_325.0;
            in[at + Input.SPEED.index()] = SPEED;
            in[at + Input.ENGINE_SPEED.index()] = 250.0;
            in[at + Input.FUEL_POWER.index()] = 190e3 + (i % 30 < 15 ? 20e3 : -20e3);
        }
        RunData whole = run.withFrontHeld(held);
        double[] z = vehicle.z();
        Simulation.run(
                vehicle.unknowns(),
                vehicle.unknowns().plant(z),
                z,
                whole,
                Branches.plain(whole, false),
                coolant,
                new double[whole.size()]);
        for (int i = 0; i < coolant.length; i++) {
            coolant[i] = 273.15 + Math.round(coolant[i] - 273.15);
        }
        return run;
    }

    private FittedVehicle sheet() {
        return FittedVehicle.ofSheet(new Unknowns(Plant.compile(MadeRun.petrol(folder)), false, false));
    }

    private static boolean[] between(int from, int to) {
        boolean[] held = new boolean[240];
        Arrays.fill(held, from, to, true);
        return held;
    }

    @Test
    void aFlapThatClosesIsFoundWithinAMinute() {
        FittedVehicle vehicle = sheet();
        RunData run = drive(vehicle, between(80, 160));
        List<RunData> found = HeldAirSearch.in(vehicle, List.of(run));
        List<double[]> spells = found.get(0).frontHeldSpells();
        assertThat(spells).hasSize(1);
        assertThat(spells.get(0)[0]).isCloseTo(800.0, within(60.0));
        assertThat(spells.get(0)[1]).isCloseTo(1600.0, within(60.0));
        assertThat(HeldAir.findings(found).get(0).message()).contains("much less air", "flaps");
        HeldAir air = HeldAir.of(found);
        assertThat(air.share()).isCloseTo(800.0 / 2400.0, within(0.05));
        assertThat(air.leastSpeed()).isCloseTo(SPEED, within(1e-9));
    }

    @Test
    void nothingIsFoundWhereNothingWasHeldBack() {
        FittedVehicle vehicle = sheet();
        List<RunData> found = HeldAirSearch.in(vehicle, List.of(drive(vehicle, new boolean[240])));
        assertThat(found.get(0).frontHeldSpells()).isEmpty();
        assertThat(HeldAir.of(found).seen()).isFalse();
        assertThat(HeldAir.findings(found)).isEmpty();
    }

    /** In a run nobody looked at: as often as seen, and never when it stands. */
    @Test
    void whatIsDrawnIsLikeWhatWasSeen() {
        FittedVehicle vehicle = sheet();
        RunData run = drive(vehicle, new boolean[240]);
        Arrays.fill(run.inputs(), 0, 120 * Input.COUNT, 0.0);
        HeldAir air = new HeldAir(0.25, 100.0, 300.0, 0.8 * SPEED);
        int held = 0;
        for (int i = 0; i < 200; i++) {
            RunData drawn = air.in(run, new Well19937c(i));
            for (int row = 0; row < run.size(); row++) {
                boolean now = drawn.input(row, Input.FRONT_HELD) > 0.0;
                assertThat(now && row < 120).isFalse();
                held += now ? 1 : 0;
            }
        }
        assertThat(held / (200.0 * 120.0)).isCloseTo(0.25, within(0.04));
    }
}
