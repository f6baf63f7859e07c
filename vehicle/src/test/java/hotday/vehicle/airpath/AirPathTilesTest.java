package hotday.vehicle.airpath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import hotday.physics.component.FanCurve;
import hotday.vehicle.airpath.Face.Core;
import hotday.vehicle.airpath.Face.Disc;
import hotday.vehicle.airpath.Face.ElectricFan;
import hotday.vehicle.airpath.Face.Exit;
import hotday.vehicle.airpath.Face.Flaps;
import hotday.vehicle.airpath.Face.Inlet;
import hotday.vehicle.airpath.Face.Opening;
import hotday.vehicle.airpath.Face.Shroud;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * The face of the worked problem (reference/worked/air-path-tiles of the reference data, solved independently with all 99
 * unknowns at once): every number of every case.
 */
class AirPathTilesTest {
    private static final double RELATIVE = 1e-7; // stated by the problem
    private static final double SPEED = 1e-7; // m/s
    private static final double PRESSURE = 1e-6; // Pa
    private static final int COLUMNS = 12;
    private static final int ROWS = 8;
    private static final double TILE = 0.06; // m, square root of the stated tile area

    private static Map<String, Object> inputs;
    private static Map<String, Object> outputs;

    @BeforeAll
    static void read() throws IOException {
        Path file = Path.of(System.getProperty("hotday.data", "../shared"), "reference/worked/air-path-tiles.json");
        if (!Files.isRegularFile(file)) {
            System.err.println("skipped: no reference data at " + file + " (set HOTDAY_DATA)");
        }
        assumeTrue(Files.isRegularFile(file), "no reference data at " + file);
        try (InputStream in = Files.newInputStream(file)) {
            Map<?, ?> problem =
                    (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromInputStream(in); // JSON is YAML
            inputs = byName(problem.get("inputs"));
            outputs = byName(problem.get("outputs"));
        }
    }

    private static Map<String, Object> byName(Object list) {
        Map<String, Object> out = new LinkedHashMap<>();
        for (Object item : (List<?>) list) {
            Map<?, ?> entry = (Map<?, ?>) item;
            out.put((String) entry.get("name"), entry.get("value"));
        }
        return out;
    }

    private static double in(String name) {
        return ((Number) inputs.get(name)).doubleValue();
    }

    private static double in(String name, int place) {
        return ((Number) ((List<?>) inputs.get(name)).get(place)).doubleValue();
    }

    /** Tiles from first to last, counted from 1 as the problem does. */
    private static Rectangle tiles(double firstColumn, double lastColumn, double firstRow, double lastRow) {
        return new Rectangle(
                (firstColumn - 1) * TILE,
                (firstRow - 1) * TILE,
                (lastColumn - firstColumn + 1) * TILE,
                (lastRow - firstRow + 1) * TILE);
    }

    private static Core core(String name, int depth, Rectangle place) {
        return new Core(name, depth, place, in(name + " [a,b]", 0), in(name + " [a,b]", 1));
    }

    private static Face face() {
        String cooler = "gearbox cooler columns, rows";
        double blankedTop = in("blanked rows", 0);
        double blankedBottom = in("blanked rows", 1);
        Inlet open = new Inlet(in("Cp open"), in("K_grille open"));
        FanCurve curve = new FanCurve(
                in("fan a0"),
                in("fan a1"),
                in("fan a2"),
                in("fan kw"),
                in("fan b0"),
                in("fan b1"),
                in("fan b2"),
                in("fan rho0"));
        return new Face(
                Grid.uniform(COLUMNS, ROWS, COLUMNS * TILE, ROWS * TILE),
                List.of(
                        core("gearbox cooler", 0, tiles(in(cooler, 0), in(cooler, 1), in(cooler, 2), in(cooler, 3))),
                        core("condenser", 1, tiles(1, COLUMNS, in("condenser rows", 0), in("condenser rows", 1))),
                        core("radiator", 2, tiles(1, COLUMNS, 1, ROWS))),
                List.of(
                        new Opening(tiles(1, COLUMNS, 1, blankedTop - 1), open),
                        new Opening(tiles(1, COLUMNS, blankedBottom + 1, ROWS), open)),
                new Inlet(in("Cp blanked"), in("K_grille blanked")),
                new Shroud(tiles(1, COLUMNS, in("unshrouded rows", 0) + 1, ROWS), 0.0),
                List.of(new ElectricFan(curve, new Disc(0.36, 0.27, 0.4), false)),
                new Flaps(in("A_fl"), in("Cd"), in("p_crack")),
                new Exit(in("A_exit"), in("K_exit")),
                in("Cp_base"),
                0.0,
                Sealing.GOOD);
    }

    @ParameterizedTest
    @CsvSource({
        "idle-fan100, 0, 1.0, 308.15",
        "110kmh-fan0, 110, 0.0, 308.15",
        "110kmh-fan100, 110, 1.0, 308.15",
        "idle-fan100-hot-rear-348.15K, 0, 1.0, 348.15",
        "110kmh-fan40, 110, 0.4, 308.15"
    })
    void everyNumber(String name, double speed, double ratio, double rear) {
        TilePath path = TilePath.compile(face());
        TileFlow flow = path.start();
        flow.air(speed / 3.6, in("T_amb"), in("p_amb"), rear);
        flow.fan(0, ratio);
        path.solve(flow);
        Map<?, ?> out = (Map<?, ?>) outputs.get(name);
        List<?> rows = (List<?>) out.get("v");
        for (int tile = 0; tile < COLUMNS * ROWS; tile++) {
            double expected = ((Number) ((List<?>) rows.get(tile / COLUMNS)).get(tile % COLUMNS)).doubleValue();
            assertThat(flow.velocity(tile)).as("tile %s", tile).isCloseTo(expected, within(SPEED));
        }
        check(flow.plenumPressure(), out, "p_plenum", PRESSURE);
        check(flow.underhoodPressure(), out, "p_underhood", PRESSURE);
        check(flow.fanPressure(0), out, "dp_fan", PRESSURE);
        check(flow.massFlow(), out, "m_total", 0.0);
        check(flow.exitMassFlow(), out, "m_total", 0.0);
        check(flow.unshroudedMassFlow(), out, "m_unshrouded", 0.0);
        check(flow.fanFlow(0), out, "Q_fan", 0.0);
        check(flow.flapMassFlow(), out, "m_flap", 0.0);
        check(flow.shaftPower(0), out, "P_fan", 0.0);
        assertThat(flow.fanState(0).name().toLowerCase(Locale.ROOT)).isEqualTo(out.get("fan_state"));
    }

    private static void check(double actual, Map<?, ?> out, String name, double absolute) {
        double expected = ((Number) out.get(name)).doubleValue();
        assertThat(actual).as(name).isCloseTo(expected, within(absolute + RELATIVE * Math.abs(expected)));
    }
}
