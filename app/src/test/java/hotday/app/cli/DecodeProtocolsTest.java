package hotday.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What is read above the frame without a description of the network, on the command line. */
class DecodeProtocolsTest {
    private static final String TRUCK = """
            (10.000000) can0 0CF00400#FF7D7DE015FFF0FF
            (10.100000) can0 18FEEE00#82FFC02BFFFFFFFF
            (10.200000) can0 1CECFF00#200E0002FFE3FE00
            (10.300000) can0 1CEBFF00#01201CFFFFFFFFFF
            (10.400000) can0 1CEBFF00#02FFFFFFFFFFFFFF
            (10.500000) can0 1CEBFF00#02FFFFFFFFFFFFFF
            """;
    private static final String CAR = """
            (20.000000) can0 7DF#0201050000000000
            (20.010000) can0 7E8#0341057B00000000
            (20.100000) can0 7E0#0322F19000000000
            (20.110000) can0 7E8#101462F19057304C
            (20.120000) can0 7E8#037F2231AAAAAAAA
            """;

    @TempDir
    private Path folder;

    private String out;
    private String err;

    private int run(Object... words) {
        CommandRun run = CommandRun.of(
                Stream.concat(Stream.of("decode"), Stream.of(words)).toArray());
        out = run.out();
        err = run.err();
        return run.status();
    }

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    @Test
    void truckWithoutADescription() throws IOException {
        Path csv = folder.resolve("out.csv");
        assertThat(run(file("truck.log", TRUCK), "--j1939", "--to", csv)).isZero();
        assertThat(Files.readAllLines(csv))
                .contains(
                        "0.000000,EEC1.EngineSpeed@00,700,rpm,valid",
                        "0.100000,ET1.CoolantTemperature@00,90,degC,valid",
                        "0.100000,ET1.FuelTemperature1@00,,degC,not-available",
                        "0.400000,EC1.IdleSpeed@00,900,rpm,valid");
        assertThat(err).contains("a packet without a beginning").contains("ET1.OilTemperature1");
    }

    @Test
    void carWithoutADescription() throws IOException {
        assertThat(run(file("car.log", CAR), "--obd")).isZero();
        assertThat(out).contains("OBD.CoolantTemperature@7E8");
        assertThat(err).contains("another message began before it was whole").contains("refused service 22");
    }

    @Test
    void findingsForMachines() throws IOException {
        assertThat(run(file("truck.log", TRUCK), "--j1939", "--summary", "--json"))
                .isZero();
        JsonNode findings = JsonMapper.builder().build().readTree(out).path("findings");
        assertThat(StreamSupport.stream(findings.spliterator(), false)
                        .map(f -> f.path("key").stringValue()))
                .contains("j1939-message-broken", "j1939-from-memory");
    }

    /** A frame that the description knows is the description's; the table takes the rest. */
    @Test
    void descriptionGoesFirst() throws IOException {
        Path dbc = file("car.dbc", "BO_ 2364540158 EEC1: 8 x\n SG_ Speed : 24|16@1+ (0.125,0) [0|0] \"rpm\" x\n");
        assertThat(run(file("truck.log", TRUCK), "--dbc", dbc, "--j1939")).isZero();
        assertThat(out).contains("EEC1.Speed@00", "ET1.CoolantTemperature@00").doesNotContain("EEC1.EngineSpeed@00");
    }

    @Test
    void withoutARecordingTheyAreRefused() throws IOException {
        Path dbc = file("car.dbc", "BO_ 1 a: 8 x\n");
        assertThat(run("--dbc", dbc, "--summary", "--obd")).isEqualTo(2);
        assertThat(err).contains("give a recording of frames");
    }
}
