package hotday.vehicle.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.unit.UnitSystem;
import hotday.vehicle.airpath.Sealing;
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
    @Test
    void everyAssumptionCanBeTyped() throws IOException {
        String least = resource("least.yaml");
        BuildSheet assumed = read(least);
        Map<String, StringBuilder> blocks = new LinkedHashMap<>();
        for (String line : least.lines().filter(l -> !l.startsWith("#")).toList()) {
            String inner = line.substring(line.indexOf('{') + 1, line.lastIndexOf('}'));
            blocks.put(line.substring(0, line.indexOf(':')), new StringBuilder(inner));
        }
        for (Assumption a : assumed.assumptions()) {
            String block = a.key().substring(0, a.key().indexOf('.'));
            StringBuilder inner = blocks.computeIfAbsent(block, b -> new StringBuilder());
            inner.append(inner.isEmpty() ? "" : ", ")
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
                "cap: 16 psi|cap: 16 mph|49:8|mph is a unit of speed",
                "cap: 16 psi|cap: 16 psia|49:8|psia is a unit of absolute pressure",
                "cap: 16 psi|cup: 16 psi|49:3|did you mean 'cap'?",
                "coolant:|coolent:|46:1|did you mean 'coolant'?",
                "full: 212 degF|full: 189 degF|54:9|at least 1 K above",
                "off: 197 degF|off: 206 degF|99:8|'schedule.off' must lie below",
                "on: 205 degF|on: 240 degF|98:7|below 'limits.coolant'",
                "[213 degF, 60 %]|[213 degF, 20 %]|97:12|less fan when the coolant is hotter",
                "[213 degF, 60 %]|[200 degF, 60 %]|97:31|must rise from pair to pair",
                "[213 degF, 60 %]|[213 degF, 160 %]|97:42|between 0 % and 100 %",
                "ratios: [4.15, 2.37|ratios: [2.15, 2.37|39:11|gear 2 has 2.37 after 2.15",
                "idle_speed: 800 rpm|idle_speed: 8000 rpm|24:15|between 400 rpm and 1500 rpm",
                "lowest_speed: 1300 rpm|lowest_speed: 2500 rpm|43:17|else no gear fits",
                "diameter: 16 in|diameter: 19 in|77:13|'fan.diameter' is 483 mm, but the core is only 660 mm x 432 mm",
                "free_flow: 1800 cfm|free_flow: 4 m3/s|78:14|through a disc of 406 mm means air at 31 m/s",
                "charging: turbo|charging: none|35:18|say 'charging: turbo' or take the block out",
                "charging: turbo|charging: tubro|25:13|did you mean 'turbo'?",
                "fuel: diesel|fuel: coal|18:9|must be one of petrol, diesel",
                "fuel: diesel|cylinders: 4|20:3|'cylinders' stands here again; first at",
                "heat: 62 kW|heat: 900 kW|66:11|is all that these two flows can exchange",
                "heat: 62 kW|heat: 15 kW|66:5|do not belong together",
                "tube_pitch: 9 mm|air_conductance: 3 kW/K|64:20|say the same thing twice",
                "trailer_mass: 200 kg|rolling: 0.012|11:12|say the same thing twice",
                "[4 m/s, 165 Pa], [8 m/s, 480 Pa]|[4 m/s, 400 Pa], [8 m/s, 9 kPa]|70:60|between 0.001 kPa",
                "[4 m/s, 165 Pa], [8 m/s, 480 Pa]|[4 m/s, 70 Pa], [8 m/s, 80 Pa]|70:18|do not look like a core",
                "compressor_power: 2 hp|compressor_power: 10 hp|87:21|less than 'condenser_heat'",
                "limits:|limits: hot\\nx:|102:9|'limits' must hold lines",
                "friction: [0.97 bar, 0.15 bar, 0.05 bar]|friction: [0.97 bar]|31:13|three mean effective pressures",
                "units: us|units: imperial|5:8|must be one of metric, us, mixed",
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
