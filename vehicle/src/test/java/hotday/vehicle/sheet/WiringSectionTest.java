package hotday.vehicle.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import hotday.core.finding.InputException;
import hotday.core.typed.Overlay;
import hotday.vehicle.spec.Wiring;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WiringSectionTest {
    private static final String LEAST = """
            build: {name: Plover}
            design_day: {ambient: 43 degC}
            vehicle: {mass: 1600 kg}
            engine: {fuel: petrol, displacement: 2.5 l, rated_power: 120 kW}
            radiator: {width: 600 mm, height: 450 mm}
            fan: {free_flow: 2500 m3/h, stall_pressure: 250 Pa}
            """;
    private static final String REST = "fuse: {rating: 60 A}, drive: {kind: driver, rating: 80 A}";

    private static BuildSheet read(String more) {
        return BuildSheet.of(Path.of("build.yaml"), LEAST + more, Overlay.none());
    }

    private static Wiring wiring(String keys) {
        return read("wiring: {" + REST + ", " + keys + "}\n").wiring().orElseThrow();
    }

    private static InputException refused(String more) {
        return catchThrowableOfType(InputException.class, () -> read(more));
    }

    /** Cross-sections by IEC 60228 (1.91 mOhm/m), ISO 6722 (1.82); gauges by their formulas. */
    @ParameterizedTest
    @CsvSource({
        "10 mm2, IEC, 1.91",
        "10 mm2; conductor: iso, ISO, 1.82",
        "8 AWG, AWG, 2.061",
        "1/0 AWG, AWG, 0.322",
        "8 sae, SAE, 2.297",
        "0.1 cm2, IEC, 1.91"
    })
    void sizes(String size, Wiring.Series series, double milliohm) {
        Wiring w = wiring("feed: {size: " + size.replace(';', ',') + ", length: 2 m}");
        assertThat(w.feed().series()).isEqualTo(series);
        assertThat(1e3 * w.feed().conductor().resistancePerMetre()).isCloseTo(milliohm, within(0.002));
        assertThat(w.feed().length()).isEqualTo(2);
        assertThat(w.back()).contains(w.feed());
    }

    /** 5 m both ways and 16 mm2 are what a sheet that says nothing has. */
    @Test
    void withoutCablesOfItsOwnItTakesThoseOfTheElectricalBlock() {
        Wiring w = wiring("bundled: 2");
        assertThat(w.feed().size()).isEqualTo("16 mm2");
        assertThat(w.feed().length()).isEqualTo(2.5);
        double loop = w.feed().resistance(333.15) + w.back().orElseThrow().resistance(333.15);
        assertThat(loop).isCloseTo(read("").vehicle().electrical().fanCableResistance(), within(1e-12));
    }

    /** The fan of the model hangs on the typed cable: feed, then body and joints. */
    @Test
    void theModelUsesTheTypedCable() {
        BuildSheet sheet = read("wiring: {" + REST
                + ", feed: {size: 6 mm2, length: 1 m}, ground: chassis, ground_resistance: 3 mohm}\n");
        assertThat(sheet.vehicle().electrical().fanCableResistance()).isCloseTo(3.819e-3 + 3e-3, within(1e-6));
        assertThat(sheet.wiring().orElseThrow().back()).isEmpty();
        assertThat(sheet.assumptions()).extracting(Assumption::key).doesNotContain("electrical.fan_cable");
    }

    @Test
    void aSheetWithoutTheBlockAssumesNothingAboutIt() {
        assertThat(read("").wiring()).isEmpty();
        assertThat(read("").assumptions()).extracting(Assumption::key).noneMatch(k -> k.startsWith("wiring"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "feed: {size: 8, length: 2 m} | '8' is no cable size",
                "feed: {size: 8 gauge, length: 2 m} | '8 gauge' is no cable size",
                "feed: {size: 8 AWG, length: 2 m, conductor: iso} | belongs to cross-sections in mm2",
                "feed: {size: 8 AWG} | 'wiring.feed.length' is missing",
                "feed: {size: 8 AWG, length: 2} | 2",
                "ground: chassis | needs 'wiring.feed'",
                "ground_resistance: 2 mohm | belongs to 'ground: chassis'",
                "surroundings: 124 degC | must lie 5 K or more above",
                "bundled: 0 | must lie between 1 and 40"
            })
    void faults(String keys, String said) {
        InputException wrong = refused("wiring: {" + REST + ", " + keys.strip() + "}\n");
        assertThat(wrong.findings()).hasSize(1);
        assertThat(wrong.findings().get(0).toString())
                .startsWith("build.yaml:7:")
                .contains(said.strip());
    }

    @Test
    void fuseAndDriveMustBeTypedAndCablesOnce() {
        assertThat(refused("wiring: {bundled: 2}\n").findings())
                .extracting(f -> f.message())
                .anyMatch(m -> m.contains("'wiring.fuse' is missing"))
                .anyMatch(m -> m.contains("'wiring.drive' is missing"));
        assertThat(refused("electrical: {fan_cable: {area: 10 mm2}}\nwiring: {" + REST
                                + ", feed: {size: 6 mm2, length: 1 m}}\n")
                        .findings()
                        .get(0)
                        .message())
                .contains("say the same thing twice");
    }

    @Test
    void placesOfKeys() {
        BuildSheet sheet = read("wiring:\n  fuse: {rating: 60 A}\n  drive: {kind: driver, rating: 80 A}\n");
        assertThat(sheet.place("wiring.fuse.rating").orElseThrow()).hasToString("build.yaml:8:18");
        assertThat(sheet.place("wiring.fuse.distance").orElseThrow()).hasToString("build.yaml:8:3");
        assertThat(sheet.place("electrical.battery")).isEmpty();
    }
}
