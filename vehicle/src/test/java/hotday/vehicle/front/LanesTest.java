package hotday.vehicle.front;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.vehicle.InventedVehicle;
import hotday.vehicle.airpath.TileFlow;
import hotday.vehicle.spec.VehicleSpec;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LanesTest {
    private static final double WARM = 308.15; // K
    private static final double SEA_LEVEL = 101325.0; // Pa
    private static final double ROUNDING = 1e-9;
    private static final double BETWEEN = 0.005; // of the flow
    private static final double TINY_FLOW = 0.05; // kg/s
    private static final double TINY_BETWEEN = 0.01 * TINY_FLOW; // kg/s

    static Stream<VehicleSpec> builds() {
        return Stream.of(InventedVehicle.diesel(), TiledFront.demo("heron"), TiledFront.demo("oxbow"));
    }

    private static double through(Lanes lanes, double[] air) {
        double sum = -air[Lanes.REVERSED];
        for (int lane = 0; lane < lanes.lanes(); lane++) {
            sum += air[lanes.flow(lane)];
        }
        return sum;
    }

    @ParameterizedTest
    @MethodSource("builds")
    void nodesAreTheTiledPath(VehicleSpec spec) {
        Lanes lanes = Lanes.compile(spec);
        TiledFront tiled = new TiledFront(spec, false);
        double[] air = new double[lanes.columns()];
        for (int i = 1; i < Lanes.REACHES; i++) {
            double speed = lanes.nodeSpeed(i, Lanes.SHARES - 1);
            double fan = lanes.nodeFan(i, Lanes.SHARES - 1);
            for (double rear : new double[] {1.0, 1.15, 1.3}) {
                lanes.at(speed * speed, fan, WARM, SEA_LEVEL, rear, air);
                TileFlow flow = tiled.solve(speed, fan, WARM, SEA_LEVEL, rear);
                assertThat(through(lanes, air)).isCloseTo(flow.massFlow(), within(ROUNDING));
                assertThat(air[Lanes.REVERSED]).isCloseTo(flow.reversedMassFlow(), within(ROUNDING));
                assertThat(air[Lanes.FAN_FLOW]).isCloseTo(tiled.fanFlow(), within(ROUNDING));
                for (int core = 0; core < lanes.cores(); core++) {
                    double conductance = 0.0;
                    for (int lane = 0; lane < lanes.lanes(); lane++) {
                        conductance += air[lanes.conductance(lane, core)];
                    }
                    assertThat(conductance).isCloseTo(tiled.conductance(core), within(1e-6));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("builds")
    void betweenNodesTheFlowIsThatOfTheTiles(VehicleSpec spec) {
        Lanes lanes = Lanes.compile(spec);
        TiledFront tiled = new TiledFront(spec, false);
        double[] air = new double[lanes.columns()];
        for (double speed = 0.0; speed <= 60.0; speed += 0.37 + 0.02 * speed) {
            for (double fan = 0.0; fan <= 1.0; fan += 0.0193) {
                for (double rear : new double[] {1.0, 1.07, 1.2}) {
                    lanes.at(speed * speed, fan, WARM, SEA_LEVEL, rear, air);
                    double flow = tiled.solve(speed, fan, WARM, SEA_LEVEL, rear).massFlow();
                    assertThat(through(lanes, air))
                            .as("speed %s fan %s rear %s", speed, fan, rear)
                            .isCloseTo(flow, within(Math.max(TINY_BETWEEN, BETWEEN * flow)));
                }
            }
        }
    }
}
