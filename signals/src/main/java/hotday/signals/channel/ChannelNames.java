package hotday.signals.channel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Names under which loggers write what the model takes: those of two open standards (SAE J1979, the OBD-II parameters, and SAE J1939-71; numbers from
 * memory), their usual abbreviations, and the plain words of the trade (common practice, no source).
 */
final class ChannelNames {
    /** Channel; name in whole words; where it comes from. */
    private static final String TABLE = """
            vehicle_speed; vehicle speed; SAE J1979 PID 0D, vehicle speed
            vehicle_speed; vss; SAE J1979 PID 0D, vehicle speed
            vehicle_speed; wheel based vehicle speed; SAE J1939 SPN 84, wheel-based vehicle speed
            vehicle_speed; road speed; common words
            vehicle_speed; ground speed; common words
            vehicle_speed; gps speed; common words
            vehicle_speed; dyno speed; common words, speed of the rollers
            vehicle_speed; roller speed; common words, speed of the rollers
            vehicle_speed; speed; common words
            engine_speed; engine rpm; SAE J1979 PID 0C, engine speed
            engine_speed; rpm; SAE J1979 PID 0C, engine speed
            engine_speed; engine speed; SAE J1939 SPN 190, engine speed
            engine_speed; engine revolutions; common words
            engine_speed; crankshaft speed; common words
            fuel_flow; fuel flow; common words
            fuel_flow; fuel mass flow; common words
            fuel_flow; engine fuel rate; SAE J1979 PID 9D, engine fuel rate
            fuel_flow; fuel rate; SAE J1979 PID 9D, engine fuel rate
            air_flow; mass air flow; SAE J1979 PID 10, mass air flow rate
            air_flow; mass air flow rate; SAE J1979 PID 10, mass air flow rate
            air_flow; air flow rate mass flow; SAE J1979 PID 10, air flow rate from mass air flow sensor
            air_flow; maf; SAE J1979 PID 10, mass air flow rate
            air_flow; air mass flow; common words
            air_flow; air flow; common words
            air_flow; engine inlet air mass flow rate; SAE J1939 SPN 132, engine inlet air mass flow rate
            air_flow; engine intake air mass flow rate; SAE J1939 SPN 132, engine intake air mass flow rate
            manifold_pressure; intake manifold absolute pressure; SAE J1979 PID 0B, intake manifold absolute pressure
            manifold_pressure; intake manifold pressure; SAE J1979 PID 0B, intake manifold absolute pressure
            manifold_pressure; manifold absolute pressure; SAE J1979 PID 0B, intake manifold absolute pressure
            manifold_pressure; manifold pressure; SAE J1979 PID 0B, intake manifold absolute pressure
            manifold_pressure; map; SAE J1979 PID 0B, intake manifold absolute pressure
            manifold_pressure; engine intake manifold 1 pressure; SAE J1939 SPN 102, engine intake manifold 1 pressure
            engine_load; calculated engine load; SAE J1979 PID 04, calculated load value
            engine_load; calculated load; SAE J1979 PID 04, calculated load value
            engine_load; engine load; SAE J1979 PID 04, calculated load value
            engine_load; engine percent load current speed; SAE J1939 SPN 92, engine percent load at current speed
            engine_load; absolute load; SAE J1979 PID 43, absolute load value
            throttle; throttle position; SAE J1979 PID 11, absolute throttle position
            throttle; absolute throttle position; SAE J1979 PID 11, absolute throttle position
            throttle; tps; SAE J1979 PID 11, absolute throttle position
            throttle; throttle; common words
            throttle; engine throttle valve 1 position; SAE J1939 SPN 51, engine throttle valve 1 position
            pedal; accelerator pedal position d; SAE J1979 PID 49, accelerator pedal position D
            pedal; accelerator pedal position 1; SAE J1939 SPN 91, accelerator pedal position 1
            pedal; accelerator pedal position; SAE J1979 PID 49, accelerator pedal position D
            pedal; accelerator pedal d; SAE J1979 PID 49, accelerator pedal position D
            pedal; pedal position; common words
            pedal; pedal d; SAE J1979 PID 49, accelerator pedal position D
            pedal; accelerator pedal; common words
            pedal; app; SAE J1979 PID 49, accelerator pedal position D
            ambient_temperature; ambient air temperature; SAE J1979 PID 46, ambient air temperature
            ambient_temperature; ambient temperature; SAE J1939 SPN 171, ambient air temperature
            ambient_temperature; aat; SAE J1979 PID 46, ambient air temperature
            ambient_temperature; ambient; common words
            ambient_temperature; outside air; common words
            ambient_temperature; outside temperature; common words
            ambient_temperature; outside air temperature; common words
            ambient_temperature; oat; common words, outside air temperature
            ambient_temperature; cell temperature; common words, air of a test cell
            ambient_temperature; test cell temperature; common words, air of a test cell
            coolant_temperature; engine coolant temperature; SAE J1979 PID 05, engine coolant temperature
            coolant_temperature; coolant temperature; SAE J1979 PID 05, engine coolant temperature
            coolant_temperature; ect; SAE J1979 PID 05, engine coolant temperature
            coolant_temperature; clt; common abbreviation
            coolant_temperature; coolant; common words
            coolant_temperature; engine temperature; common words
            coolant_temperature; water temperature; common words
            oil_temperature; engine oil temperature; SAE J1979 PID 5C, engine oil temperature
            oil_temperature; engine oil temperature 1; SAE J1939 SPN 175, engine oil temperature 1
            oil_temperature; oil temperature; SAE J1979 PID 5C, engine oil temperature
            oil_temperature; eot; SAE J1979 PID 5C, engine oil temperature
            oil_temperature; oil; common words
            gearbox_temperature; transmission oil temperature; SAE J1939 SPN 177, transmission oil temperature
            gearbox_temperature; transmission oil temperature 1; SAE J1939 SPN 177, transmission oil temperature 1
            gearbox_temperature; transmission fluid temperature; common words
            gearbox_temperature; transmission temperature; common words
            gearbox_temperature; gearbox temperature; common words
            gearbox_temperature; gearbox oil temperature; common words
            gearbox_temperature; gearbox fluid temperature; common words
            gearbox_temperature; gearbox; common words
            gearbox_temperature; tft; common abbreviation, transmission fluid temperature
            gearbox_temperature; tot; common abbreviation, transmission oil temperature
            intake_temperature; intake air temperature; SAE J1979 PID 0F, intake air temperature
            intake_temperature; iat; SAE J1979 PID 0F, intake air temperature
            intake_temperature; engine air intake temperature; SAE J1939 SPN 172, engine air intake temperature
            intake_temperature; engine intake air temperature; SAE J1939 SPN 172, engine intake air temperature
            intake_temperature; inlet air temperature; common words
            intake_temperature; engine intake manifold 1 temperature; SAE J1939 SPN 105, engine intake manifold 1 temperature
            vent_temperature; vent temperature; common words
            vent_temperature; vent air temperature; common words
            vent_temperature; duct temperature; common words
            liquid_line_temperature; liquid line temperature; common words
            liquid_line_temperature; condenser outlet temperature; common words
            radiator_outlet_temperature; radiator outlet temperature; common words
            radiator_outlet_temperature; radiator coolant outlet temperature; common words
            radiator_outlet_temperature; coolant radiator outlet temperature; common words
            tractive_force; tractive force; common words
            tractive_force; tractive effort; common words
            grade; road grade; common words
            grade; grade; common words
            grade; gradient; common words
            grade; slope; common words
            altitude; altitude; SAE J1939 SPN 580, altitude
            altitude; elevation; common words
            altitude; gps altitude; common words
            barometer; barometric pressure; SAE J1979 PID 33, absolute barometric pressure
            barometer; absolute barometric pressure; SAE J1979 PID 33, absolute barometric pressure
            barometer; barometer; SAE J1979 PID 33, absolute barometric pressure
            barometer; baro; SAE J1979 PID 33, absolute barometric pressure
            relative_humidity; relative humidity; common words
            relative_humidity; humidity; common words
            relative_humidity; rh; common abbreviation
            fan_speed; estimated percent fan speed; SAE J1939 SPN 975, estimated percent fan speed
            fan_speed; fan speed; common words
            fan_speed; fan duty; common words
            fan_demand; requested percent fan speed; SAE J1939 SPN 986, requested percent fan speed
            fan_demand; fan demand; common words
            fan_demand; fan request; common words
            fan_demand; fan command; common words
            heater; heater; common words
            compressor; compressor; common words
            compressor; ac compressor; common words
            compressor; ac clutch; common words
            compressor; compressor clutch; common words
            head_pressure; head pressure; common words
            head_pressure; high side pressure; common words
            head_pressure; high side; common words
            head_pressure; ac high pressure; common words
            head_pressure; ac high side pressure; common words
            head_pressure; discharge pressure; common words
            suction_pressure; suction pressure; common words
            suction_pressure; low side pressure; common words
            suction_pressure; low side; common words
            suction_pressure; ac low pressure; common words
            suction_pressure; ac low side pressure; common words
            supply_voltage; control module voltage; SAE J1979 PID 42, control module voltage
            supply_voltage; battery voltage; common words
            supply_voltage; battery potential; SAE J1939 SPN 168, battery potential
            supply_voltage; system voltage; common words
            supply_voltage; supply voltage; common words
            fan_current; fan current; common words
            """;

    static final List<Name> ALL = all();

    private static final Map<String, String> WHOLE = Map.ofEntries(
            Map.entry("temp", "temperature"),
            Map.entry("tmp", "temperature"),
            Map.entry("spd", "speed"),
            Map.entry("press", "pressure"),
            Map.entry("pres", "pressure"),
            Map.entry("pos", "position"),
            Map.entry("eng", "engine"),
            Map.entry("veh", "vehicle"),
            Map.entry("amb", "ambient"),
            Map.entry("accel", "accelerator"),
            Map.entry("abs", "absolute"),
            Map.entry("rel", "relative"),
            Map.entry("trans", "transmission"),
            Map.entry("batt", "battery"),
            Map.entry("bat", "battery"),
            Map.entry("volt", "voltage"),
            Map.entry("volts", "voltage"),
            Map.entry("hum", "humidity"),
            Map.entry("percentage", "percent"),
            Map.entry("airflow", "air flow"),
            Map.entry("calc", "calculated"));

    /** Words that say nothing about what is measured. */
    private static final Set<String> EMPTY = Set.of(
            "sensor",
            "signal",
            "value",
            "actual",
            "measured",
            "reading",
            "data",
            "obd",
            "pid",
            "ecu",
            "can",
            "the",
            "of",
            "from",
            "at",
            "in");

    private static final Pattern BRACKET = Pattern.compile("\\[[^\\]]*\\]|\\([^)]*\\)");
    private static final Pattern HUMP = Pattern.compile("(?<=[a-z0-9])(?=[A-Z])|(?<=[A-Z])(?=[A-Z][a-z])");
    private static final Pattern LETTER_TO_DIGIT = Pattern.compile("(?<=[a-z])(?=[0-9])");
    private static final Pattern BETWEEN = Pattern.compile("[^a-z0-9]+");

    /**
     * One name.
     *
     * @param words it is made of
     * @param source why a column of that name is taken for the channel
     */
    record Name(ModelChannel channel, Set<String> words, String source) {}

    private ChannelNames() {}

    private static List<Name> all() {
        List<Name> names = new ArrayList<>();
        for (String line : TABLE.lines().toList()) {
            String[] cells = line.split(";", -1);
            names.add(new Name(
                    ModelChannel.of(cells[0].trim()).orElseThrow(),
                    Set.copyOf(List.of(cells[1].trim().split(" "))),
                    cells[2].trim()));
        }
        return List.copyOf(names);
    }

    /** The words of a header cell: brackets and empty words left out, abbreviations written out. */
    static List<String> words(String header) {
        String bare = BRACKET.matcher(header).replaceAll(" ").replaceAll("(?i)\\ba/c\\b", "ac");
        String apart = HUMP.matcher(bare).replaceAll(" ").toLowerCase(Locale.ROOT);
        String cut = LETTER_TO_DIGIT.matcher(apart).replaceAll(" ");
        return Arrays.stream(BETWEEN.split(cut))
                .flatMap(word -> Arrays.stream(WHOLE.getOrDefault(word, word).split(" ")))
                .filter(word -> !word.isEmpty() && !EMPTY.contains(word))
                .toList();
    }
}
