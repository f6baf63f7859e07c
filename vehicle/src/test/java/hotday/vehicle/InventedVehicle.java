package hotday.vehicle;

import hotday.core.typed.Overlay;
import hotday.physics.cycle.Charge;
import hotday.physics.refrigerant.Refrigerant;
import hotday.vehicle.airpath.Rectangle;
import hotday.vehicle.airpath.Sealing;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.spec.CompressorHolds;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Invented vehicles for tests: a 2.0 l turbo diesel saloon and a heavier one. No real ones. */
public final class InventedVehicle {
    private static final String DUNLIN = """
            build: {name: Dunlin}
            design_day: {ambient: 43 degC}
            vehicle: {mass: 1900 kg}
            engine: {fuel: diesel, displacement: 2.4 l, rated_power: 120 kW, charging: turbo}
            gearbox: {cooler: front}
            radiator: {width: 700 mm, height: 480 mm}
            fan: {free_flow: 2800 m3/h, stall_pressure: 260 Pa}
            """;

    private InventedVehicle() {}

    /** Another one, from a sheet that leaves most open; {@code key=value} changes it. */
    public static VehicleSpec dunlin(String... changes) {
        return BuildSheet.of(Path.of("build.yaml"), DUNLIN, Overlay.of("test", List.of(changes)))
                .vehicle();
    }

    public static VehicleSpec diesel() {
        return diesel(0.65, Sealing.FAIR, 103e3);
    }

    public static VehicleSpec diesel(double radiatorWidth, Sealing sealing, double capPressure) {
        return diesel(radiatorWidth, sealing, capPressure, 97000, 15000, 5000, 0.42);
    }

    /** The same with one constant mean effective loss, Pa, and another slope of the Willans line. */
    public static VehicleSpec dieselWithLosses(double loss, double slope) {
        return diesel(0.65, Sealing.FAIR, 103e3, loss, 0.0, 0.0, slope);
    }

    /** The same on another road and with another efficiency of gears and axle. */
    public static VehicleSpec diesel(VehicleSpec.RoadLoad road, double efficiency) {
        VehicleSpec s = diesel();
        VehicleSpec.Gearbox g = s.gearbox();
        return new VehicleSpec(
                s.name(),
                s.designAmbient(),
                s.altitude(),
                road,
                s.engine(),
                s.chargeAir(),
                new VehicleSpec.Gearbox(
                        g.ratios(),
                        g.finalDrive(),
                        efficiency,
                        g.shiftUpSpeed(),
                        g.lowestSpeed(),
                        g.idleDragPower(),
                        g.heatToAir(),
                        g.lowRange(),
                        g.converter()),
                s.gearboxFluid(),
                s.coolant(),
                s.thermostat(),
                s.radiator(),
                s.heater(),
                s.fan(),
                s.airConditioning(),
                s.electrical(),
                s.frontEnd(),
                s.stack(),
                s.schedule(),
                s.limits());
    }

    private static VehicleSpec diesel(
            double radiatorWidth, Sealing sealing, double capPressure, double f0, double f1, double f2, double slope) {
        double share = radiatorWidth / 0.65;
        return new VehicleSpec(
                "invented diesel",
                273.15 + 46.0,
                0.0,
                new VehicleSpec.RoadLoad(1750, 170, 2.0, 0.45, 0.32),
                new VehicleSpec.Engine(
                        VehicleSpec.Fuel.DIESEL,
                        2e-3,
                        4,
                        0.083,
                        110e3,
                        420,
                        84,
                        42.8e6,
                        840,
                        14.5,
                        true,
                        100,
                        4.5,
                        f0,
                        f1,
                        f2,
                        slope,
                        0),
                Optional.of(new VehicleSpec.ChargeAir(0.75, 2.2, 0.7)),
                new VehicleSpec.Gearbox(
                        List.of(4.5, 2.7, 1.8, 1.4, 1.0, 0.75), 2.8, 0.9, 250, 150, 1000, 0, 1, converter()),
                new VehicleSpec.GearboxFluid(
                        0.03,
                        700,
                        209.4,
                        38e3,
                        30e-6,
                        6e-6,
                        0.11,
                        209.4,
                        List.of(VehicleSpec.FluidCooler.TANK),
                        0,
                        250,
                        348.15,
                        358.15,
                        8,
                        0.6),
                new VehicleSpec.CoolantLoop(0.5, 7.5e-3, capPressure, 2e-3, 420),
                new VehicleSpec.Thermostat(360.15, 370.15, 4, 10, 0.005),
                new VehicleSpec.Radiator(
                        radiatorWidth,
                        0.42,
                        0.026,
                        2200 * share,
                        0.5,
                        6000 * share,
                        1.5,
                        List.of(0.001, 0.4, 1.0, 1.5),
                        List.of(0.3, 0.3, 1.0, 1.4),
                        15,
                        8,
                        16000 * share),
                new VehicleSpec.Heater(80, 0.15, 2500),
                new VehicleSpec.Fan(VehicleSpec.FanControl.SCHEDULE, 250, -40, -60, 30, 250, 0.7, 0.38, 0.2, 0.1),
                Optional.of(new VehicleSpec.AirConditioning(
                        6000,
                        2000,
                        circuit(),
                        CompressorHolds.standard(),
                        new VehicleSpec.Evaporator(240, 830, 0.13),
                        cabin())),
                electrical(),
                new VehicleSpec.FrontEnd(0.7, -0.1, 0.15, 12, 0.4, sealing),
                stack(radiatorWidth, share),
                new FanSchedule(
                        List.of(370.0, 380.0),
                        List.of(0.3, 1.0),
                        371,
                        367,
                        List.of(8.0, 30.0),
                        List.of(0.0, 0.8),
                        0.4,
                        List.of(),
                        List.of(),
                        List.of(378.15, 392.15),
                        List.of(0.3, 1.0)),
                new VehicleSpec.Limits(388.15, 3, 394.15, 2.9e6, 285.15, 12.6, OptionalDouble.empty(), 0.1));
    }

    private static VehicleSpec.Converter converter() {
        return new VehicleSpec.Converter(
                List.of(0.0, 0.4, 0.7, 0.86, 0.95),
                List.of(19.0, 19.1, 20.9, 24.5, 37.0),
                List.of(2.05, 1.53, 1.18, 1.0, 0.985),
                3,
                136);
    }

    private static VehicleSpec.RefrigerantCircuit circuit() {
        return new VehicleSpec.RefrigerantCircuit(
                Refrigerant.R134A,
                160e-6,
                true,
                1.3,
                0,
                4,
                VehicleSpec.Expansion.THERMOSTATIC_VALVE,
                6,
                1.8e-3,
                Charge.RIGHT,
                275.15,
                4500,
                3000,
                3.1e6,
                2e6,
                170e3);
    }

    private static VehicleSpec.Cabin cabin() {
        return new VehicleSpec.Cabin(3.2, 60e3, 120, 35, 0.9, 1.4, 4e-3, 0.3e-3, 2, 0.13, 220);
    }

    private static VehicleSpec.Electrical electrical() {
        return new VehicleSpec.Electrical(
                List.of(136.0, 157.0, 230.0, 314.0, 628.0),
                List.of(28.0, 52.0, 98.0, 124.0, 150.0),
                0.0025,
                2.9,
                0.58,
                13.9,
                12.6,
                8e-3,
                288e3,
                25,
                7e-3,
                12,
                32,
                9,
                10.5);
    }

    private static VehicleSpec.Stack stack(double width, double share) {
        Rectangle whole = new Rectangle(0, 0, width, 0.42);
        return new VehicleSpec.Stack(
                width,
                0.42,
                List.of(
                        new VehicleSpec.PlacedCore(
                                VehicleSpec.CoreKind.CONDENSER,
                                2,
                                new Rectangle(0, 0.06, width, 0.36),
                                0.016,
                                1500 * share,
                                0.5,
                                8,
                                5),
                        new VehicleSpec.PlacedCore(
                                VehicleSpec.CoreKind.CHARGE_AIR_COOLER,
                                3,
                                new Rectangle(0, 0.25, width, 0.17),
                                0.05,
                                900 * share,
                                0.5,
                                9,
                                6),
                        new VehicleSpec.PlacedCore(
                                VehicleSpec.CoreKind.RADIATOR, 9, whole, 0.026, 2200 * share, 0.5, 15, 8)),
                List.of(whole),
                whole,
                0,
                1,
                0.38,
                0,
                10);
    }
}
