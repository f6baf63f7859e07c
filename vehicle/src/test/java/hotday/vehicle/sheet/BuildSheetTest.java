package hotday.vehicle.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.unit.UnitSystem;
import hotday.physics.component.Evaporator;
import hotday.physics.cycle.Charge;
import hotday.physics.refrigerant.Refrigerant;
import hotday.vehicle.airpath.Sealing;
import hotday.vehicle.spec.FanSchedule;
import hotday.vehicle.spec.VehicleSpec;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BuildSheetTest {
    /** Typed with four significant digits and more: what a hand calculation with printed factors can hold. */
    private static final double HAND = 1e-4;

    @TempDir
    private Path folder;

    private static String resource(String name) throws IOException {
        try (InputStream in = BuildSheetTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private BuildSheet read(String text) throws IOException {
        return BuildSheet.read(Files.writeString(folder.resolve("build.yaml"), text));
    }

    private List<Finding> faults(String text) throws IOException {
        InputException wrong = catchThrowableOfType(InputException.class, () -> read(text));
        assertThat(wrong).as("must be refused").isNotNull();
        return wrong.findings();
    }

    private static void near(double ours, double expected) {
        assertThat(ours).isCloseTo(expected, within(HAND * Math.abs(expected)));
    }

    /** SI values by hand from the factors of NIST SP 811. */
    @Test
    void everyKeyArrivesInSi() throws IOException {
        BuildSheet sheet = read(resource("full.yaml"));
        VehicleSpec v = sheet.vehicle();
        assertThat(v.name()).isEqualTo("Curlew");
        assertThat(sheet.units()).isEqualTo(UnitSystem.US);
        near(v.designAmbient(), 319.2611);
        near(v.altitude(), 1524.0);
        near(v.roadLoad().mass(), 1727.28 + 200);
        near(v.roadLoad().constant(), 100.690);
        near(v.roadLoad().linear(), 12.33291);
        near(v.roadLoad().square(), 0.0429364);
        near(v.roadLoad().tyreRadius(), 0.3556);
        assertThat(v.engine().fuel()).isEqualTo(VehicleSpec.Fuel.DIESEL);
        near(v.engine().displacement(), 2e-3);
        near(v.engine().ratedPower(), 111855);
        near(v.engine().ratedSpeed(), 418.879);
        near(v.engine().idleSpeed(), 83.7758);
        near(v.engine().heatingValue(), 42.796e6);
        near(v.engine().fuelDensity(), 851);
        assertThat(v.engine().turbocharged()).isTrue();
        near(v.engine().metalMass(), 110);
        near(v.engine().oilMass(), 4.5 * 0.946353 * 0.870);
        near(v.engine().frictionConstant(), 97e3);
        near(v.engine().frictionLinear(), 15e3);
        near(v.engine().frictionSquare(), 5e3);
        near(v.engine().indicatedEfficiency(), 0.43);
        near(v.chargeAir().orElseThrow().effectiveness(), 0.75);
        assertThat(v.gearbox().ratios()).containsExactly(4.15, 2.37, 1.56, 1.16, 0.86, 0.69);
        near(v.gearbox().shiftUpSpeed(), 251.327);
        near(v.gearbox().heatToAir(), 1);
        near(v.coolant().volume(), 7.57082e-3);
        near(v.coolant().capPressure(), 110316);
        near(v.coolant().pumpFlow(), 2.208157e-3);
        near(v.thermostat().opens(), 360.9278);
        near(v.thermostat().full(), 373.15);
        near(v.thermostat().hysteresis(), 5);
        near(v.radiator().faceArea(), 0.6604 * 0.4318);
        near(v.heater().conductance(), 90);
        assertThat(v.fan().control()).isEqualTo(VehicleSpec.FanControl.UNKNOWN);
        near(v.fan().stallPressure(), 249.089);
        double free = 1800 * 4.719474e-4;
        near(v.fan().square(), -249.089 / (free * free));
        near(v.fan().windmill(), 0.2 * 249.089 / (free * free));
        near(v.fan().shaftPower(), 350);
        near(v.fan().slewUp(), 0.2);
        near(v.airConditioning().orElseThrow().condenserHeat(), 22000 * 0.2930711);
        near(v.frontEnd().openingArea(), 0.129032);
        assertThat(v.frontEnd().sealing()).isEqualTo(Sealing.GOOD);
        near(v.schedule().coolantTemperature().get(0), 367.0389);
        near(v.schedule().on(), 369.2611);
        near(v.schedule().allowanceSpeed().get(1), 24.5872);
        near(v.limits().coolant(), 385.9278);
    }

    /** The same for gearbox, refrigerant circuit, cabin and supply. */
    @Test
    void everyKeyAroundTheEngineArrivesInSi() throws IOException {
        VehicleSpec v = read(resource("full.yaml")).vehicle();
        near(v.gearbox().lowRange(), 2.7);
        VehicleSpec.Converter converter = v.gearbox().converter();
        near(converter.capacity().get(0), 12.36244);
        near(converter.capacity().get(1), 14.66077);
        near(converter.capacity().get(2), 18);
        assertThat(converter.torqueRatio()).containsExactly(2.2, 1.5, 1.0);
        assertThat(converter.lockGear()).isEqualTo(4);
        near(converter.lockSpeed(), 157.0796);
        VehicleSpec.GearboxFluid fluid = v.gearboxFluid();
        assertThat(fluid.coolers()).containsExactly(VehicleSpec.FluidCooler.TANK, VehicleSpec.FluidCooler.FRONT);
        near(fluid.meshLoss(), 0.025);
        near(fluid.spinLoss(), 745.700);
        near(fluid.spinSpeed(), 188.4956);
        near(fluid.capacity(), 9 * 0.946353 * 0.81 * 2090 + 29.93710 * 900);
        near(fluid.viscosityAt40(), 35e-6);
        near(fluid.viscosityAt100(), 7.4e-6);
        near(fluid.flow(), 1.261804e-4 * 810);
        near(fluid.flowSpeed(), 198.9675);
        near(fluid.frontConductance(), 340);
        near(fluid.tankConductance(), 200);
        near(fluid.bypassOpens(), 349.8167);
        near(fluid.bypassFull(), 360.9278);
        near(fluid.caseLossPerSpeed(), 0.6710809);
        VehicleSpec.RefrigerantCircuit circuit =
                v.airConditioning().orElseThrow().circuit();
        assertThat(circuit.refrigerant()).isEqualTo(Refrigerant.R1234YF);
        near(circuit.displacement(), 163.8706e-6);
        assertThat(circuit.variable()).isFalse();
        near(circuit.pulleyRatio(), 1.4);
        assertThat(circuit.electricSpeed()).isZero();
        near(circuit.clutchCurrent(), 3.5);
        assertThat(circuit.expansion()).isEqualTo(VehicleSpec.Expansion.ORIFICE);
        near(circuit.superheat(), 5);
        near(circuit.orificeDiameter(), 1.8288e-3);
        assertThat(circuit.charge()).isEqualTo(Charge.HIGH);
        near(circuit.freezeLimit(), 274.2611);
        near(circuit.cutOut(), 2826850);
        near(circuit.cutIn(), 2e6);
        near(circuit.lowCutOut(), 196e3);
        near(circuit.highCapacity(), 5000);
        near(circuit.lowCapacity(), 3798.202);
        VehicleSpec.Evaporator evaporator = v.airConditioning().orElseThrow().evaporator();
        near(evaporator.airConductance(), 270);
        near(evaporator.refrigerantConductance(), 1000);
        near(evaporator.airFlow(), 0.1415842 * 1.2);
        VehicleSpec.Cabin cabin = v.airConditioning().orElseThrow().cabin();
        near(cabin.volume(), 3.114853);
        near(cabin.interiorCapacity(), 56973.02);
        near(cabin.interiorConductance(), 110);
        near(cabin.shellConductance(), 36.92696);
        near(cabin.shellPerSpeed(), 0.9);
        near(cabin.glass(), 1.393546);
        near(cabin.leakage(), 5e-3);
        near(cabin.leakagePerSpeed(), 2.236936e-4);
        assertThat(cabin.people()).isEqualTo(4);
        near(cabin.blowerFlow(), 0.1227063 * 1.2);
        near(cabin.blowerPower(), 250);
        VehicleSpec.Electrical electrical = v.electrical();
        near(electrical.rotorSpeed().get(1), 209.4395);
        assertThat(electrical.current()).containsExactly(60.0, 100.0, 180.0);
        near(electrical.temperatureCoefficient(), 0.0018);
        near(electrical.alternatorRatio(), 2.8);
        near(electrical.alternatorEfficiency(), 0.6);
        near(electrical.regulated(), 14.2);
        near(electrical.batteryVoltage(), 12.7);
        near(electrical.batteryResistance(), 0.007);
        near(electrical.batteryCapacity(), 252e3);
        near(electrical.baseCurrent(), 30);
        near(electrical.fanCableResistance(), 6.096 * 1.91e-3 * 1.1572);
        near(electrical.fanCurrentLimit(), 45);
        near(electrical.fanElectronics(), 8);
        near(electrical.fanDerated(), 9.5);
        near(electrical.fanFull(), 11);
        near(v.schedule().headPressure().get(0), 1034214);
        near(v.schedule().headPressure().get(1), 2e6);
        near(v.schedule().gearboxTemperature().get(0), 377.5944);
        near(v.limits().gearbox(), 394.2611);
        near(v.limits().headPressure(), 2757903);
        near(v.limits().evaporating(), 283.15);
        near(v.limits().supply(), 12.5);
    }

    /** At idle and stall the assumed converter takes what the sheet says the drag at idle is. */
    @Test
    void theAssumedConverterTakesTheDragAtIdle() throws IOException {
        VehicleSpec v = read(resource("least.yaml")).vehicle();
        double idle = v.engine().idleSpeed();
        double stall = idle / v.gearbox().converter().capacity().get(0);
        assertThat(stall * stall * idle).isCloseTo(v.gearbox().idleDragPower(), within(1e-6));
    }

    /** 800 rpm at 118.05 rpm/sqrt(N m): 45.9 N m, 3.85 kW. */
    @Test
    void aDragThatContradictsTheConverterIsRefused() throws IOException {
        String full = resource("full.yaml");
        near(read(full).vehicle().gearbox().idleDragPower(), 3847.4);
        List<Finding> faults = faults(full.replace("idle_drag: 3.85 kW", "idle_drag: 0.7 kW"));
        assertThat(faults).hasSize(1);
        assertThat(faults.get(0).message())
                .contains("'gearbox.idle_drag' is 0.70 kW", "takes 3.85 kW at stall", "leave one of them out");
        String without = full.replace("  idle_drag: 3.85 kW\n", "");
        near(read(without).vehicle().gearbox().idleDragPower(), 3847.4);
    }

    /** A sheet with air conditioning gets a head-pressure curve, unless it types one demand. */
    @Test
    void headPressureCurveOrOneDemand() throws IOException {
        String least = resource("least.yaml");
        String cooled = least + "air_conditioning: {}\n";
        assertThat(read(least).vehicle().schedule().headPressure()).isEmpty();
        assertThat(read(cooled).vehicle().schedule().headPressure()).hasSize(5);
        FanSchedule typed =
                read(cooled + "schedule: {air_conditioning: 40 %}\n").vehicle().schedule();
        assertThat(typed.headPressure()).isEmpty();
        near(typed.airConditioningDemand(), 0.4);
    }

    @ParameterizedTest
    @ValueSource(strings = {"evaporator", "cabin"})
    void aBlockOfTheAirConditioningAloneIsRefused(String block) throws IOException {
        List<Finding> faults = faults(resource("least.yaml") + block + ": {}\n");
        assertThat(faults).hasSize(1);
        assertThat(faults.get(0).message()).contains("there is no 'air_conditioning'");
    }

    /** A bigger system has a bigger compressor and evaporator; a compressor with its own motor has no clutch. */
    @Test
    void theCircuitFollowsItsCondenser() throws IOException {
        VehicleSpec.AirConditioning made = read(resource("least.yaml")
                        + "air_conditioning: {condenser_heat: 13 kW, electric_speed: 4000 rpm}\n")
                .vehicle()
                .airConditioning()
                .orElseThrow();
        near(made.circuit().displacement(), 340e-6);
        near(made.circuit().electricSpeed(), 418.879);
        assertThat(made.circuit().clutchCurrent()).isZero();
        near(made.evaporator().airConductance(), 520);
        near(made.evaporator().airFlow(), made.cabin().blowerFlow());
    }

    /** Evaporator and rating belong together: 4 degC, full blower, outside air of 35 degC with 0.0142 kg/kg (40 %). */
    @Test
    void theAssumedEvaporatorTakesWhatTheRatingSays() throws IOException {
        VehicleSpec.AirConditioning made = read(resource("least.yaml") + "air_conditioning: {}\n")
                .vehicle()
                .airConditioning()
                .orElseThrow();
        VehicleSpec.Evaporator e = made.evaporator();
        double[] out = new double[Evaporator.RESULTS];
        new Evaporator(e.airConductance(), e.airFlow(), 0.6, e.refrigerantConductance())
                .exchange(made.cabin().blowerFlow(), 308.15, 0.0142, 101325.0, 277.15, out);
        double rating = made.condenserHeat() - made.compressorPower();
        assertThat(out[Evaporator.HEAT]).isBetween(0.9 * rating, rating);
    }

    /** A cut-out that is typed low takes the assumed limit of the head pressure with it. */
    @Test
    void theHeadLimitStaysBelowTheCutOut() throws IOException {
        String cooled = resource("least.yaml") + "air_conditioning: {cut_out: 2.75 MPa}\n";
        near(read(cooled).vehicle().limits().headPressure(), 2.65e6);
    }

    @Test
    void aSheetThatSaysEverythingAssumesOnlyWhatFollowsFromTheTest() throws IOException {
        assertThat(read(resource("full.yaml")).assumptions().stream().map(Assumption::key))
                .containsExactly("radiator.air_conductance", "radiator.coolant_conductance");
    }

    /** 60, 165, 480 Pa at 2, 4, 8 m/s: least relative errors by hand give a = 22.23, b = 4.78 (within 3 % of each point). */
    @Test
    void measuredPressureDropsAreFitted() throws IOException {
        VehicleSpec.Radiator radiator = read(resource("full.yaml")).vehicle().radiator();
        double[][] points = {{2, 60}, {4, 165}, {8, 480}};
        for (double[] p : points) {
            double drop = radiator.resistanceLinear() * p[0] + radiator.resistanceSquare() * p[0] * p[0];
            assertThat(drop).isCloseTo(p[1], within(0.03 * p[1]));
        }
    }

    /** The number of transfer units of the test point comes back out of the rescaled conductances. */
    @Test
    void theTestPointIsMet() throws IOException {
        String without = resource("full.yaml")
                .replaceAll("(?m)^  test:\n(    .*\n)+", "")
                .replaceAll("(?m)^  pressure_drop:.*\n", "");
        String low = without.replace("  tube_pitch: 9 mm\n", "  tube_pitch: 9 mm\n  test: " + test(58) + "\n");
        String high = without.replace("  tube_pitch: 9 mm\n", "  tube_pitch: 9 mm\n  test: " + test(62) + "\n");
        VehicleSpec.Radiator plain = read(without).vehicle().radiator();
        VehicleSpec.Radiator less = read(low).vehicle().radiator();
        VehicleSpec.Radiator more = read(high).vehicle().radiator();
        assertThat(more.airConductance()).isGreaterThan(less.airConductance());
        assertThat(less.airConductance() / plain.airConductance())
                .isCloseTo(less.coolantConductance() / plain.coolantConductance(), within(1e-9));
        assertThat(less.resistanceSquare()).isEqualTo(plain.resistanceSquare());
    }

    private static String test(int kilowatts) {
        return "{heat: " + kilowatts + " kW, air_speed: 4.5 m/s, coolant_flow: 100 l/min, inlet_difference: 70 K}";
    }

    @Test
    void theLeastSheetSaysWhatItAssumes() throws IOException {
        BuildSheet sheet = read(resource("least.yaml"));
        assertThat(sheet.units()).isEqualTo(UnitSystem.METRIC);
        assertThat(sheet.vehicle().airConditioning()).isEmpty();
        assertThat(sheet.vehicle().chargeAir()).isEmpty();
        assertThat(sheet.assumptions())
                .hasSizeGreaterThan(40)
                .allMatch(a -> !a.value().isBlank() && a.reason().length() > 5)
                .extracting(Assumption::key)
                .doesNotHaveDuplicates()
                .contains("engine.metal_mass", "coolant.cap", "gearbox.ratios", "thermostat.hysteresis");
        assertFinite("", sheet.vehicle());
    }

    /** What is listed as assumed can be typed as it stands and gives the same car, but for the digits shown. */
    @ParameterizedTest
    @ValueSource(strings = {"", "air_conditioning: { }\n", "gearbox: {cooler: [tank, front]}\nair_conditioning: { }\n"})
    void everyAssumptionCanBeTyped(String more) throws IOException {
        String least = resource("least.yaml") + more;
        BuildSheet assumed = read(least);
        Map<String, StringBuilder> blocks = new LinkedHashMap<>();
        for (String line : least.lines().filter(l -> !l.startsWith("#")).toList()) {
            String inner = line.substring(line.indexOf('{') + 1, line.lastIndexOf('}'));
            blocks.put(line.substring(0, line.indexOf(':')), new StringBuilder(inner));
        }
        for (Assumption a : assumed.assumptions()) {
            String block = a.key().substring(0, a.key().indexOf('.'));
            StringBuilder inner = blocks.computeIfAbsent(block, b -> new StringBuilder());
            inner.append(inner.toString().isBlank() ? "" : ", ")
                    .append(a.key().substring(block.length() + 1))
                    .append(": ")
                    .append(a.value());
        }
        StringBuilder text = new StringBuilder();
        blocks.forEach((block, inner) -> text.append(block + ": {" + inner + "}\n"));
        BuildSheet typed = read(text.toString());
        assertThat(typed.assumptions()).isEmpty();
        Map<String, Double> before = numbers("", assumed.vehicle(), new LinkedHashMap<>());
        Map<String, Double> after = numbers("", typed.vehicle(), new LinkedHashMap<>());
        assertThat(after.keySet()).isEqualTo(before.keySet());
        before.forEach((key, value) -> {
            double digits = key.contains("resistance") ? 0.25 : 0.02;
            assertThat(after.get(key)).as(key).isCloseTo(value, within(digits * Math.abs(value) + 1e-9));
        });
    }

    /** The page for people names every key. */
    @Test
    void everyKeyIsDocumented() throws IOException {
        String page = Files.readString(Path.of(System.getProperty("hotday.root"), "docs", "build-sheet.md"));
        String block = "";
        for (String line : (resource("full.yaml")
                        + "  rolling: 1\n  drag_area: 1\n  air_conductance: 1\n  coolant_conductance: 1\n")
                .lines()
                .toList()) {
            String key = line.strip().replaceAll(":.*", "");
            if (!line.startsWith("#")) {
                block = line.startsWith(" ") ? block : key;
                assertThat(page)
                        .as("docs/build-sheet.md on " + block + "." + key)
                        .contains("`" + key + "`");
            }
        }
    }

    @Test
    void theSheetOfTheRecordingsReads() {
        BuildSheet sheet = BuildSheet.read(
                Path.of(System.getProperty("hotday.root"), "validation/sets/d3-diesel-sedan/build.yaml"));
        near(sheet.vehicle().roadLoad().mass(), 1727.28);
        assertThat(sheet.vehicle().fan().control()).isEqualTo(VehicleSpec.FanControl.UNKNOWN);
    }

    /** One change to the full sheet: the place and the words of the fault. */
    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "mass: 3808 lb|mass: 3808|10:9|'vehicle.mass': '3808' has no unit",
                "mass: 3808 lb|mass: 38 lb|10:9|between 440.9 lb and 132277 lb",
                "mass: 3808 lb|mass: 3,808 lb|10:9|comma",
                "mass: 3808 lb|mass: heavy|10:9|'heavy' is not a number with a unit",
                "mass: 3808 lb|mass: 1e400 lb|10:9|larger than any number",
                "mass: 3808 lb|mass: NaN lb|10:9|not a number",
                "mass: 3808 lb|mass: 3808 psi|10:9|psi is a unit of gauge pressure; a mass is needed",
                "mass: 3808 lb|mass: 3808 lbz|10:9|did you mean 'lb",
                "cap: 16 psi|cap: 16 mph|56:8|mph is a unit of speed",
                "cap: 16 psi|cap: 16 psia|56:8|psia is a unit of absolute pressure",
                "cap: 16 psi|cup: 16 psi|56:3|did you mean 'cap'?",
                "coolant:|coolent:|53:1|did you mean 'coolant'?",
                "full: 212 degF|full: 189 degF|61:9|at least 1 K above",
                "off: 197 degF|off: 206 degF|121:8|'schedule.off' must lie below",
                "on: 205 degF|on: 240 degF|120:7|below 'limits.coolant'",
                "[213 degF, 60 %]|[213 degF, 20 %]|119:12|less fan when the coolant is hotter",
                "[213 degF, 60 %]|[200 degF, 60 %]|119:31|must rise from pair to pair",
                "[213 degF, 60 %]|[213 degF, 160 %]|119:42|between 0 % and 100 %",
                "ratios: [4.15, 2.37|ratios: [2.15, 2.37|39:11|gear 2 has 2.37 after 2.15",
                "idle_speed: 800 rpm|idle_speed: 8000 rpm|24:15|between 400 rpm and 1500 rpm",
                "lowest_speed: 1300 rpm|lowest_speed: 2500 rpm|43:17|else no gear fits",
                "diameter: 16 in|diameter: 19 in|84:13|'fan.diameter' is 483 mm, but the core is only 660 mm x 432 mm",
                "free_flow: 1800 cfm|free_flow: 4 m3/s|85:14|through a disc of 406 mm means air at 31 m/s",
                "charging: turbo|charging: none|35:18|say 'charging: turbo' or take the block out",
                "charging: turbo|charging: tubro|25:13|did you mean 'turbo'?",
                "fuel: diesel|fuel: coal|18:9|must be one of petrol, diesel",
                "fuel: diesel|cylinders: 4|20:3|'cylinders' stands here again; first at",
                "heat: 62 kW|heat: 900 kW|73:11|is all that these two flows can exchange",
                "heat: 62 kW|heat: 15 kW|73:5|do not belong together",
                "tube_pitch: 9 mm|air_conductance: 3 kW/K|71:20|say the same thing twice",
                "trailer_mass: 200 kg|rolling: 0.012|11:12|say the same thing twice",
                "[4 m/s, 165 Pa], [8 m/s, 480 Pa]|[4 m/s, 400 Pa], [8 m/s, 9 kPa]|77:60|between 0.001 kPa",
                "[4 m/s, 165 Pa], [8 m/s, 480 Pa]|[4 m/s, 70 Pa], [8 m/s, 80 Pa]|77:18|do not look like a core",
                "compressor_power: 2 hp|compressor_power: 10 hp|94:21|less than 'condenser_heat'",
                "limits:|limits: hot\\nx:|125:9|'limits' must hold lines",
                "friction: [0.97 bar, 0.15 bar, 0.05 bar]|friction: [0.97 bar]|31:13|three mean effective pressures",
                "units: us|units: imperial|5:8|must be one of metric, us, mixed",
                "low_range: 2.7|low_range: 27|46:14|must lie between 1 and 6",
                "torque_ratio: [2.2, 1.5, 1]|torque_ratio: [2.2, 2.1, 1]|50:19|at speed ratio 0.5 a torque ratio of 2.1 gives out 1.050",
                "torque_ratio: [2.2, 1.5, 1]|torque_ratio: [2.2, 1.5]|48:18|there are 3, 3 and 2",
                "speed_ratio: [0, 0.5|speed_ratio: [0.1, 0.5|48:18|must begin with 0",
                "speed_ratio: [0, 0.5, 0.9]|speed_ratio: [0, 0.5, 0.4]|48:18|must rise; value 3",
                "18 rad/s/sqrt(N m)|3 rad/s/sqrt(N m)|48:18|row 3: capacity factor falls",
                "140 rpm/sqrt(N m)|140 rpm|49:40|rpm is a unit of rotational speed; a converter capacity is needed",
                "cooler: [tank, front]|cooler: [tank, tank]|45:11|both in flow order",
                "cooler: [tank, front]|cooler: [tank, none]|45:11|both in flow order",
                "cooler: [tank, front]|cooler: [tank, rear]|45:11|lists 'rear', it may list none, front, tank",
                "cooler: [tank, front]|cooler: tonk|45:11|did you mean 'tank'?",
                "cooler: [tank, front]|cooler: front|156:21|say 'gearbox: {cooler: tank}' or take it out",
                "cooler: [tank, front]|cooler: tank|155:22|say 'gearbox: {cooler: front}' or take it out",
                "viscosity_100: 7.4 mm2/s|viscosity_100: 37 mm2/s|152:18|hot fluid is thinner",
                "bypass_full: 190 degF|bypass_full: 165 degF|158:16|at least 1 K above",
                "mesh_loss: 2.5 %|mesh_loss: 25 %|146:14|between 0 % and 10 %",
                "flow: 2 gal/min|flow: 2 kg/s|153:9|kg/s is a unit of mass flow",
                "compressor: fixed|electric_speed: 3000 rpm|98:17|two drives of one compressor",
                "refrigerant: r1234yf|refrigerant: r12|95:16|must be one of r134a, r1234yf",
                "cut_out: 410 psia|cut_out: 410 psi|105:12|write 'psi abs'",
                "cut_in: 20 bar abs|cut_in: 29 bar abs|106:11|else the compressor chatters",
                "cut_out: 410 psia|cut_out: 395 psia|129:18|which stops the compressor first",
                "evaporating: 50 degF|evaporating: 33 degF|130:16|above 'air_conditioning.freeze_limit'",
                "supply: 12500 mV|supply: 14.3 V|131:11|below 'electrical.alternator.regulated'",
                "  head_pressure: [[150 psia, 25 %]|  air_conditioning: 40 %\\n  head_pressure: [[150 psia, 25 %]|123:21|both say what the fan does",
                "[20 bar abs, 100 %]|[20 bar abs, 20 %]|123:18|less fan at a higher pressure",
                "[20 bar abs, 100 %]|[1035 kPa abs, 100 %]|123:18|steps of 1 kPa",
                "gearbox: [[220 degF, 30 %]|gearbox: [[118.9 degC, 30 %]|124:12|steps of 0.1 K",
                "people: 4|people: 4.5|174:11|a whole number is needed",
                "blower: 260 cfm|blower: 26000 cfm|175:11|between 17.66 cfm and 3531 cfm",
                "blower: 260 cfm|blower: 260 kPa|175:11|kPa is a unit of",
                "[2000 rpm, 100 A]|[2000 rpm, 50 A]|179:12|less current at a higher rotor speed",
                "    ratio: 2.8|    rating: 150 A|180:13|say the same thing twice",
                "regulated: 14.2 V|regulated: 12.6 V|184:22|else it is never charged",
                "voltage: 12.7 V|voltage: 14.2 V|184:22|between 10 V and 14 V",
                "fan_derated: 9.5 V|fan_derated: 12 V|189:16|below 'electrical.fan_full'",
                "area: 10 mm2|area: 10 mm|186:36|mm is a unit of length",
                "name: Curlew|name: ''|3:9|must not be empty"
            })
    void faultsHaveAPlaceAndAReason(String good, String bad, String place, String words) throws IOException {
        String text = resource("full.yaml");
        assertThat(text).contains(good);
        List<Finding> faults = faults(text.replaceFirst(java.util.regex.Pattern.quote(good), bad.replace("\\n", "\n")));
        assertThat(faults)
                .as(faults.toString())
                .anyMatch(f -> f.message().contains(words) && f.toString().contains("build.yaml:" + place + ":"));
    }

    @Test
    void allFaultsComeAtOnceInOrder() throws IOException {
        String text = resource("full.yaml")
                .replace("3808 lb", "3808")
                .replace("16 psi", "16 mph")
                .replace("off: 197", "off: 207")
                .replace("sealing: good", "sealing: god");
        List<Finding> faults = faults(text);
        assertThat(faults).hasSize(4);
        assertThat(faults.stream().map(f -> f.place().orElseThrow().line()).toList())
                .isSorted();
    }

    @ParameterizedTest
    @ValueSource(strings = {"build", "design_day", "vehicle", "engine", "radiator", "fan"})
    void aNeededBlockIsMissed(String block) throws IOException {
        List<Finding> faults = faults(resource("least.yaml").replaceAll("(?m)^" + block + ":.*\n", ""));
        assertThat(faults).hasSize(1);
        assertThat(faults.get(0).message()).contains("'" + block + "' is missing");
    }

    @ParameterizedTest
    @CsvSource({
        "name: Plover, build.name",
        "ambient: 43 degC, design_day.ambient",
        "mass: 1600 kg, vehicle.mass",
        "fuel: petrol, engine.fuel",
        "displacement: 2.5 l, engine.displacement",
        "rated_power: 120 kW, engine.rated_power",
        "width: 600 mm, radiator.width",
        "height: 450 mm, radiator.height",
        "free_flow: 2500 m3/h, fan.free_flow",
        "stall_pressure: 250 Pa, fan.stall_pressure"
    })
    void aNeededValueIsMissed(String typed, String key) throws IOException {
        List<Finding> faults = faults(resource("least.yaml").replaceFirst(typed + "(, )?", ""));
        assertThat(faults).hasSize(1);
        assertThat(faults.get(0).message()).contains("'" + key + "' is missing");
    }

    /** Lines lost, doubled or with a value from another line: a whole car or faults, never anything else; seeded. */
    @Test
    void damagedSheetsAreReadWholeOrRefused() throws IOException {
        List<String> good = resource("full.yaml").lines().toList();
        Random random = new Random(11);
        int read = 0;
        for (int i = 0; i < 150; i++) {
            List<String> lines = new ArrayList<>(good);
            for (int hits = random.nextInt(3); hits >= 0; hits--) {
                int at = random.nextInt(lines.size());
                String donor = good.get(random.nextInt(good.size()));
                switch (random.nextInt(3)) {
                    case 0 -> lines.remove(at);
                    case 1 -> lines.add(at, donor);
                    default ->
                        lines.set(at, lines.get(at).replaceFirst(": .*", "") + ": " + donor.replaceFirst(".*?: ?", ""));
                }
            }
            try {
                assertFinite("", read(String.join("\n", lines)).vehicle());
                read++;
            } catch (InputException e) {
                assertThat(e.findings()).isNotEmpty().allMatch(f -> f.place().isPresent());
            }
        }
        assertThat(read).as("some damage does no harm").isPositive();
    }

    private static void assertFinite(String name, Object value) {
        numbers(name, value, new LinkedHashMap<>())
                .forEach((key, number) -> assertThat(number).as(key).isFinite());
    }

    private static Map<String, Double> numbers(String name, Object value, Map<String, Double> all) {
        if (value instanceof Number number) {
            all.put(name, number.doubleValue());
        } else if (value instanceof Optional<?> maybe) {
            maybe.ifPresent(v -> numbers(name, v, all));
        } else if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                numbers(name + "[" + i + "]", list.get(i), all);
            }
        } else if (value instanceof Record) {
            for (RecordComponent c : value.getClass().getRecordComponents()) {
                try {
                    numbers(name + "." + c.getName(), c.getAccessor().invoke(value), all);
                } catch (ReflectiveOperationException e) {
                    throw new AssertionError(e);
                }
            }
        }
        return all;
    }
}
