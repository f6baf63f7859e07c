package hotday.study.prove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.signals.channel.ChannelMap;
import hotday.signals.channel.Recording;
import hotday.study.demo.DemoShop;
import hotday.study.demo.VirtualCar;
import hotday.study.prove.MadeRun.Column;
import hotday.vehicle.cases.Ceiling;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Proofs from end to end, on virtual cars whose truth is known and on small made-up runs. */
class ProveTest {
    @TempDir
    private Path folder;

    private static Proof prove(VehicleSpec spec, List<Recording> fit, List<Recording> predict, int threads) {
        return Prove.prove(new ProveRequest(
                spec, StandardCases.steady(), fit, predict, false, 5, threads, (stage, share) -> {}, () -> false));
    }

    private static List<String> keys(Proof proof) {
        return proof.findings().stream().map(Finding::key).toList();
    }

    /** Four minutes; from cold or hot, at some load and weather. */
    private Recording made(String name, double fromDegC, double toDegC, double fuel, double ambient) {
        return MadeRun.recording(folder.resolve(name), 240, columns(fromDegC, toDegC, fuel, ambient));
    }

    private Recording withOil(String name, double fromDegC, double toDegC) {
        List<Column> columns = new ArrayList<>(columns(fromDegC, toDegC, 1.6, 21.0));
        columns.add(new Column("oil_temperature", "degC", t -> toDegC + (fromDegC - toDegC) * Math.exp(-t / 200.0)));
        return MadeRun.recording(folder.resolve(name), 240, columns);
    }

    private static List<Column> columns(double fromDegC, double toDegC, double fuel, double ambient) {
        return List.of(
                Column.of("ambient_temperature", "degC", ambient),
                new Column("coolant_temperature", "degC", t -> toDegC + (fromDegC - toDegC) * Math.exp(-t / 90.0)),
                Column.of("vehicle_speed", "km/h", 60.0),
                Column.of("engine_speed", "rpm", 1800.0),
                Column.of("fuel_flow", "g/s", fuel),
                Column.of("fan_speed", "%", 0.0),
                Column.of("heater", "%", 0.0),
                Column.of("compressor", "%", 0.0));
    }

    @Test
    @Tag("slow")
    void theHiddenTruthLiesInTheIntervals() {
        int inside = 0;
        int all = 0;
        for (long seed = 1; seed <= 4; seed++) {
            Path shopFolder = folder.resolve("shop" + seed);
            DemoShop shop = DemoShop.create(shopFolder);
            String name = DemoShop.BUILDS.get((int) (seed % DemoShop.BUILDS.size()));
            VirtualCar car = shop.drive(name, seed);
            ChannelMap map = ChannelMap.read(shop.channels());
            Proof proof = prove(
                    BuildSheet.read(shop.build(name)).vehicle(),
                    List.of(map.recording(car.commissioning())),
                    List.of(map.recording(car.another())),
                    2);
            List<Ceiling> truth = car.truth(StandardCases.steady());
            for (int i = 0; i < truth.size(); i++) {
                CeilingReport said = proof.ceilings().get(i);
                double slack = 0.05; // K, of the search
                double real = truth.get(i).ambient();
                inside += real >= said.low() - slack && real <= said.high() + slack ? 1 : 0;
                all++;
                assertThat(said.high() - said.low())
                        .as("interval of " + truth.get(i).kase().id())
                        .isLessThanOrEqualTo(1.1
                                * (proof.ceilingsBefore().get(i).high()
                                        - proof.ceilingsBefore().get(i).low()));
            }
            assertThat(proof.pooledFit().rmse()).isLessThan(2.0);
            assertThat(proof.pooledPrediction().rmse()).isLessThan(proof.pooledNull());
            assertThat(proof.pooledCoverage()).isGreaterThan(0.8);
        }
        // 90 % intervals over 20 ceilings: 18 are expected; 15 or fewer would come up in 4 of 100 honest programs
        assertThat(inside).as("of " + all).isGreaterThanOrEqualTo(16);
    }

    /** The second run starts warm: its oil is predicted from its first reading. */
    @Test
    @Tag("slow")
    void oilGetsAScoreWhereItIsFitted() {
        VehicleSpec spec = MadeRun.diesel(folder);
        List<Recording> fit = List.of(withOil("fit", 60.0, 90.0));
        List<Recording> predict = List.of(withOil("other", 70.0, 92.0), made("no-oil", 70.0, 90.0, 1.6, 21.0));
        Proof proof = Prove.prove(new ProveRequest(
                spec, StandardCases.steady(), fit, predict, true, 5, 2, (stage, share) -> {}, () -> false));
        RunReport.Oil oil = proof.runs().get(1).oil().orElseThrow();
        assertThat(oil.score().rmse())
                .isBetween(Math.abs(oil.score().bias()), oil.score().maxError());
        assertThat(oil.coverage()).isBetween(0.0, 1.0);
        assertThat(oil.bandHalfWidth()).isGreaterThan(1.0);
        assertThat(proof.runs().get(2).oil()).isEmpty();
        String json = ProofJson.of(proof).toString();
        assertThat(json).contains("\"predict_oil_rmse_K\":").doesNotContain("NaN");
        assertThat(ProofJson.of(proof)
                        .get("runs")
                        .get(1)
                        .get("oil")
                        .get("rmse_K")
                        .asDouble())
                .isCloseTo(oil.score().rmse(), within(1e-4));
        assertThat(ProofJson.of(proof).get("runs").get(2).has("oil")).isFalse();
    }

    @Test
    void oilThatNobodyRecordedIsNotObserved() {
        VehicleSpec spec = MadeRun.diesel(folder);
        List<Recording> fit = List.of(made("fit", 60.0, 88.0, 1.6, 21.0));
        assertThatThrownBy(() -> Prove.prove(new ProveRequest(
                        spec, List.of(), fit, List.of(), true, 5, 1, (stage, share) -> {}, () -> false)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("oil_temperature");
    }

    @Test
    @Tag("slow")
    void oneThreadAndTwoWriteTheSameBytes() {
        VehicleSpec spec = MadeRun.diesel(folder);
        List<Recording> fit = List.of(made("fit", 60.0, 88.0, 1.6, 21.0));
        List<Recording> predict = List.of(made("other", 70.0, 90.0, 1.7, 22.0));
        String one = ProofJson.of(prove(spec, fit, predict, 1)).toString();
        assertThat(ProofJson.of(prove(spec, fit, predict, 2)).toString()).isEqualTo(one);
        assertThat(one).doesNotContain("NaN", "Infinity");
    }

    @Test
    @Tag("slow")
    void aRunOutsideWhatWasFittedSaysSo() {
        VehicleSpec spec = MadeRun.diesel(folder);
        List<Recording> fit = List.of(made("fit", 60.0, 88.0, 1.6, 21.0));
        Proof alike = prove(spec, fit, List.of(made("alike", 62.0, 89.0, 1.6, 23.0)), 2);
        assertThat(keys(alike)).doesNotContain("beyond-fitted-load", "cold-start-not-fitted", "beyond-fitted-weather");
        Proof strange = prove(
                spec,
                fit,
                List.of(
                        made("harder", 60.0, 95.0, 3.2, 21.0),
                        made("cold", 21.0, 70.0, 1.6, 21.0),
                        made("winter", 60.0, 85.0, 1.6, 3.0)),
                2);
        assertThat(keys(strange))
                .containsOnlyOnce("beyond-fitted-load", "cold-start-not-fitted", "beyond-fitted-weather");
        Finding load = strange.findings().stream()
                .filter(f -> f.key().equals("beyond-fitted-load"))
                .findFirst()
                .orElseThrow();
        assertThat((double) load.values().get("fuel_power_W"))
                .isCloseTo(2.0 * (double) load.values().get("fitted_fuel_power_W"), within(1.0));
    }

    /** Coolant that jumps up and down as no engine lets it. */
    @Test
    @Tag("slow")
    void aFitThatMissesEverythingIsRefused() {
        VehicleSpec spec = MadeRun.diesel(folder);
        Recording wild = MadeRun.recording(
                folder.resolve("wild"),
                600,
                List.of(
                        Column.of("ambient_temperature", "degC", 21.0),
                        new Column("coolant_temperature", "degC", t -> 80.0 + 20.0 * Math.sin(t / 20.0)),
                        Column.of("vehicle_speed", "km/h", 60.0),
                        Column.of("engine_speed", "rpm", 1600.0),
                        Column.of("fuel_flow", "g/s", 1.0)));
        InputException e = catchThrowableOfType(InputException.class, () -> prove(spec, List.of(wild), List.of(), 2));
        assertThat(e.findings()).extracting(Finding::key).containsExactly("other-vehicle");
        assertThat((double) e.findings().get(0).values().get("fit_rmse_K")).isGreaterThan(6.0);
    }

    @Test
    void runsThatCannotCarryAProofAreRefusedTogether() {
        VehicleSpec spec = MadeRun.diesel(folder);
        Recording constant = made("flat", 80.0, 80.0, 1.6, 21.0);
        assertThatThrownBy(() -> prove(spec, List.of(constant), List.of(), 1))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("never changes");
        assertThatThrownBy(() -> prove(spec, List.of(), List.of(constant), 1))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("at least one run to fit");
    }
}
