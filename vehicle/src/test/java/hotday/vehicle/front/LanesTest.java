package hotday.vehicle.front;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import hotday.physics.fluid.Air;
import hotday.vehicle.InventedVehicle;
import hotday.vehicle.airpath.Rectangle;
import hotday.vehicle.airpath.TileFlow;
import hotday.vehicle.spec.VehicleSpec;
import hotday.vehicle.spec.VehicleSpec.CoreKind;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LanesTest {
    private static final double WARM = 308.15; // K
    private static final double SEA_LEVEL = 101325.0; // Pa
    private static final double ROUNDING = 1e-9;
    private static final double BETWEEN = 0.005; // of the flow
    private static final double TINY_FLOW = 0.05; // kg/s
    private static final double TINY_BETWEEN = 0.01 * TINY_FLOW; // kg/s

    /** A slow lane about to blow backward counts with the root of its flow, which the flow of all lanes hardly shows. */
    private static final double CONDUCTANCE = 0.02;

    private static final double RADIATOR_HEAT = 0.01;
    private static final double HEAT = 0.025; // of the other cores
    private static final double TINY_HEAT = 100.0; // W; still air, fan off
    private static final double TINY_CONDUCTANCE = 2.0; // W/K

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
        LaneTable table = LaneTable.fill(spec);
        Lanes lanes = Lanes.of(spec, table);
        TiledFront tiled = new TiledFront(spec, false);
        double[] air = new double[lanes.columns()];
        for (int i = 1; i < LaneTable.REACHES; i++) {
            double speed = table.speed(i, LaneTable.SHARES - 1);
            double fan = table.fan(i, LaneTable.SHARES - 1);
            for (double rear : new double[] {1.0, 1.15, 1.3}) {
                lanes.at(speed * speed, fan, WARM, SEA_LEVEL, rear, air);
                TileFlow flow = tiled.solve(speed, fan, WARM, SEA_LEVEL, rear);
                assertThat(through(lanes, air)).isCloseTo(flow.massFlow(), within(ROUNDING));
                assertThat(air[Lanes.REVERSED]).isCloseTo(flow.reversedMassFlow(), within(ROUNDING));
                assertThat(air[Lanes.FAN_FLOW]).isCloseTo(tiled.fanFlow(), within(ROUNDING));
                for (int core = 0; core < lanes.cores(); core++) {
                    assertThat(conductance(lanes, air, core)).isCloseTo(tiled.conductance(core), within(1e-6));
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

    /** Thin and warm air, and cold one: no table of its own, the similarity holds. */
    @ParameterizedTest
    @MethodSource("builds")
    void airOfAnotherDensityAndViscosityIsTheSameTable(VehicleSpec spec) {
        Lanes lanes = Lanes.compile(spec);
        TiledFront tiled = new TiledFront(spec, false);
        double[] air = new double[lanes.columns()];
        for (double[] place : new double[][] {{45.0, 3000.0}, {-20.0, 0.0}, {20.0, 0.0}, {50.0, 1500.0}}) {
            double temperature = 273.15 + place[0];
            double pressure = Air.isaPressure(place[1]);
            for (double speed = 0.0; speed <= 40.0; speed += 4.0) {
                for (double fan = 0.0; fan <= 1.0; fan += 0.125) {
                    for (double rear : new double[] {1.0, 1.12}) {
                        lanes.at(speed * speed, fan, temperature, pressure, rear, air);
                        TileFlow flow = tiled.solve(speed, fan, temperature, pressure, rear);
                        assertThat(through(lanes, air))
                                .as("%s degC %s m speed %s fan %s rear %s", place[0], place[1], speed, fan, rear)
                                .isCloseTo(flow.massFlow(), within(Math.max(TINY_BETWEEN, BETWEEN * flow.massFlow())));
                        for (int core = 0; core < lanes.cores(); core++) {
                            double expected = tiled.conductance(core);
                            assertThat(conductance(lanes, air, core))
                                    .as("%s degC %s m speed %s fan %s rear %s", place[0], place[1], speed, fan, rear)
                                    .isCloseTo(expected, within(Math.max(TINY_CONDUCTANCE, CONDUCTANCE * expected)));
                        }
                    }
                }
            }
        }
    }

    /** Natural draught lifts every tile alike, ram does not; what the equivalent speed makes of it differs only where little flows. */
    @ParameterizedTest
    @MethodSource("builds")
    void warmAirDrawsLikeASpeedOfTheSameMeanPressure(VehicleSpec spec) {
        Lanes lanes = Lanes.compile(spec);
        TiledFront tiled = new TiledFront(spec, true);
        double[] air = new double[lanes.columns()];
        for (double rear : new double[] {1.0, 1.05, 1.1, 1.2, 1.3}) {
            for (double speed : new double[] {0.0, 0.5, 1.0, 3.0, 10.0}) {
                for (double fan : new double[] {0.0, 0.1, 0.5}) {
                    lanes.look(speed, fan, WARM, SEA_LEVEL, rear, air);
                    double flow = tiled.solve(speed, fan, WARM, SEA_LEVEL, rear).massFlow();
                    assertThat(through(lanes, air))
                            .as("speed %s fan %s rear %s", speed, fan, rear)
                            .isCloseTo(flow, within(Math.max(TINY_BETWEEN, BETWEEN * flow)));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("builds")
    void moreFanOrMoreSpeedNeverMeansLessAir(VehicleSpec spec) {
        Lanes lanes = Lanes.compile(spec);
        double[] air = new double[lanes.columns()];
        double[] slower = new double[501];
        for (double speed = 0.0; speed <= 60.0; speed += 0.1 + 0.005 * speed) {
            double before = 0.0;
            for (int i = 0; i < slower.length; i++) {
                lanes.look(speed, 0.002 * i, WARM, SEA_LEVEL, 1.08, air);
                double now = through(lanes, air);
                assertThat(now).as("speed %s fan %s", speed, 0.002 * i).isGreaterThanOrEqualTo(before);
                assertThat(now).as("speed %s fan %s", speed, 0.002 * i).isGreaterThanOrEqualTo(slower[i]);
                before = now;
                slower[i] = now;
            }
        }
    }

    @ParameterizedTest
    @MethodSource("builds")
    void heatFromLanesIsThatFromTiles(VehicleSpec spec) {
        Lanes lanes = Lanes.compile(spec);
        TiledFront tiled = new TiledFront(spec, true);
        double[] fluid = spec.stack().cores().stream()
                .mapToDouble(core -> fluid(core.kind()))
                .toArray();
        for (double[] weather : new double[][] {{WARM, SEA_LEVEL}, {318.15, 70000.0}}) {
            for (double speed : new double[] {0.0, 5.0, 12.0, 20.0, 30.0}) {
                for (double fan : new double[] {0.0, 0.3, 0.6, 1.0}) {
                    double[] whole = tiled.heats(speed, fan, weather[0], weather[1], fluid);
                    double[] few = heats(lanes, speed, fan, weather[0], weather[1], fluid);
                    for (int core = 0; core < fluid.length; core++) {
                        boolean radiator = core == fluid.length - 1;
                        double share = radiator ? RADIATOR_HEAT : HEAT;
                        assertThat(few[core])
                                .as("core %s %s K speed %s fan %s", core, weather[0], speed, fan)
                                .isCloseTo(whole[core], within(Math.max(TINY_HEAT, share * whole[core])));
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("builds")
    void lanesAreFewAndShareTheFace(VehicleSpec spec) {
        Lanes lanes = Lanes.compile(spec);
        double face = spec.stack().width() * spec.stack().height();
        double sum = 0.0;
        for (int lane = 0; lane < lanes.lanes(); lane++) {
            assertThat(lanes.area(lane)).isGreaterThan(0.02 * face);
            sum += lanes.area(lane);
        }
        assertThat(lanes.lanes()).isLessThanOrEqualTo(LaneMap.MOST);
        assertThat(sum).isCloseTo(face, within(ROUNDING));
    }

    /** Thirty kinds of tiles: small coolers all over the face. */
    @Test
    void aCrowdedFaceHasTenLanes() {
        VehicleSpec.Stack s = InventedVehicle.diesel().stack();
        List<VehicleSpec.PlacedCore> cores = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            Rectangle place = new Rectangle(0.1 * i, 0.06 * i, 0.12, 0.42 - 0.06 * i);
            cores.add(new VehicleSpec.PlacedCore(CoreKind.GEARBOX_COOLER, i + 1, place, 0.019, 300, 0.5, 6, 5));
        }
        cores.add(s.cores().get(s.cores().size() - 1));
        VehicleSpec crowded = FrontTest.stack(
                InventedVehicle.diesel(),
                new VehicleSpec.Stack(
                        s.width(),
                        s.height(),
                        cores,
                        List.of(new Rectangle(0, 0.1, s.width(), 0.15)),
                        s.shroud(),
                        0,
                        1,
                        s.fanDiameter(),
                        0,
                        10));
        Lanes lanes = Lanes.compile(crowded);
        assertThat(lanes.lanes()).isEqualTo(LaneMap.MOST);
        double[] air = new double[lanes.columns()];
        lanes.look(10.0, 1.0, WARM, SEA_LEVEL, 1.0, air);
        double flow = new TiledFront(crowded, false)
                .solve(10.0, 1.0, WARM, SEA_LEVEL, 1.0)
                .massFlow();
        assertThat(through(lanes, air)).isCloseTo(flow, within(BETWEEN * flow));
    }

    private static double fluid(CoreKind kind) {
        return switch (kind) {
            case RADIATOR -> 378.15;
            case CONDENSER -> 338.15;
            case GEARBOX_COOLER -> 373.15;
            case CHARGE_AIR_COOLER -> 353.15;
        };
    }

    /** Lanes through the cores in their order, the air behind settled. */
    private static double[] heats(
            Lanes lanes, double speed, double fan, double temperature, double pressure, double[] fluid) {
        double[] air = new double[lanes.columns()];
        double[] heats = new double[fluid.length];
        double rear = temperature + 20.0;
        for (int sweep = 0; sweep < 60; sweep++) {
            lanes.look(speed, fan, temperature, pressure, rear / temperature, air);
            Arrays.fill(heats, 0.0);
            double mass = 0.0;
            double carried = 0.0;
            for (int lane = 0; lane < lanes.lanes(); lane++) {
                double flow = Math.max(1e-9, air[lanes.flow(lane)]);
                double capacity = TiledFront.SPECIFIC_HEAT * flow;
                double warm = temperature;
                for (int core = 0; core < fluid.length; core++) {
                    double given =
                            (1.0 - Math.exp(-air[lanes.conductance(lane, core)] / capacity)) * (fluid[core] - warm);
                    heats[core] += capacity * given;
                    warm += given;
                }
                mass += flow;
                carried += flow * warm;
            }
            rear += 0.5 * (carried / mass - rear);
        }
        return heats;
    }

    @Test
    void aLookAllocatesNothing() {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        Lanes lanes = Lanes.compile(InventedVehicle.diesel());
        double[] air = new double[lanes.columns()];
        double sum = many(lanes, air, 20_000);
        long before = threads.getCurrentThreadAllocatedBytes();
        sum += many(lanes, air, 100_000);
        long bytes = threads.getCurrentThreadAllocatedBytes() - before;
        assertThat(bytes).as("bytes for 100000 looks, sum %s", sum).isLessThan(100_000 / 10);
    }

    private static double many(Lanes lanes, double[] air, int count) {
        double sum = 0.0;
        for (int i = 0; i < count; i++) {
            lanes.look(0.3 * (i % 100), (i % 7) / 7.0, 300.0 + i % 11, 1e5, 1.0 + 0.01 * (i % 13), air);
            sum += air[lanes.flow(0)];
        }
        return sum;
    }

    private static double conductance(Lanes lanes, double[] air, int core) {
        double sum = 0.0;
        for (int lane = 0; lane < lanes.lanes(); lane++) {
            sum += air[lanes.conductance(lane, core)];
        }
        return sum;
    }
}
