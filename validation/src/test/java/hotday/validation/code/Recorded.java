package hotday.validation.code;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Sheets over recorded networks of the reference data, whose other side is invented. */
final class Recorded {
    private static final String TRUCK = """
            BU_: ECM
            BO_ 2364539904 EEC1: 8 ECM
             SG_ EngineSpeed : 24|16@1+ (0.125,0) [0|8031.875] "rpm" GATE
             SG_ Torque : 16|8@1+ (1,-125) [-125|125] "%" GATE
            BO_ 2566843904 ET1: 8 ECM
             SG_ Coolant : 0|8@1+ (1,-40) [-40|210] "degC" GATE
            BO_ 2566844928 LFE: 8 ECM
             SG_ FuelRate : 0|16@1+ (0.05,0) [0|3212.75] "l/h" GATE
            """;

    private static final String OTHER_OF_TRUCK = """
            BU_: DASH GATE
            BO_ 256 Shown: 8 GATE
             SG_ EngineSpeed : 7|14@0+ (1,0) [0|8031] "rpm" DASH
             SG_ Torque : 16|12@1- (0.1,0) [-125|125] "%" DASH
             SG_ Coolant : 32|12@1+ (0.1,-100) [-100|400] "degF" DASH
             SG_ FuelRate : 47|16@0+ (0.02,0) [0|900] "gal/h" DASH
            """;

    private static final String TRUCK_SHEET = """
            sheet: a truck
            gateway: {poll: 5 ms, processing: 0 ms}
            networks:
              truck: {dbc: truck.dbc, bit_rate: 250 kbit/s, gateway: GATE, jitter: 0 ms}
              other: {dbc: other.dbc, bit_rate: 250 kbit/s, gateway: GATE, jitter: 0 ms, messages: {Shown: {every: 50 ms, on_change: 10 ms}}}
            translations:
              - {from: truck.EEC1.EngineSpeed, to: other.Shown.EngineSpeed, time_out: 50 ms, hold: 2, safe: 0 rpm}
              - {from: truck.EEC1.Torque, to: other.Shown.Torque, time_out: 50 ms, safe: 0 %}
              - {from: truck.ET1.Coolant, to: other.Shown.Coolant, measures: temperature, time_out: 2.5 s, hold: 3, safe: 300 degF}
              - {from: truck.LFE.FuelRate, to: other.Shown.FuelRate, time_out: 300 ms, safe: 0 gal/h}
            """;

    private static final String OTHER_OF_CLIMATE = """
            BU_: DASH GATE
            BO_ 256 Shown: 8 GATE
             SG_ Compressor : 0|16@1+ (0.001,0) [0|65.535] "kW" DASH
             SG_ Heater : 23|16@0+ (0.01,0) [0|90] "hp" DASH
             SG_ On : 32|2@1+ (1,0) [0|3] "" DASH
            """;

    private static final String CLIMATE_SHEET = """
            sheet: a climate network
            gateway: {poll: 1 ms, processing: 0 ms}
            networks:
              climate: {dbc: "%s", bit_rate: 500 kbit/s, gateway: GATE, jitter: 0 ms}
              other: {dbc: other.dbc, bit_rate: 250 kbit/s, gateway: GATE, jitter: 0 ms, messages: {Shown: {every: 10 ms, on_change: 2 ms}}}
            translations:
              - {from: climate.CompressorStatus.CompressorPower, to: other.Shown.Compressor, time_out: 50 ms, hold: 2, safe: 0 kW}
              - {from: climate.HeaterStatus.HeaterPower, to: other.Shown.Heater, time_out: 50 ms, safe: 0 hp}
              - {from: climate.HeaterControl.OnOff, to: other.Shown.On, table: {0: 0, 1: 1}, time_out: 50 ms, safe: 3}
            """;

    private Recorded() {}

    static Path truck(Path folder) throws IOException {
        Path own = Files.createDirectories(folder.resolve("truck"));
        Files.writeString(own.resolve("truck.dbc"), TRUCK);
        Files.writeString(own.resolve("other.dbc"), OTHER_OF_TRUCK);
        return Files.writeString(own.resolve("sheet.yaml"), TRUCK_SHEET);
    }

    static Path climate(Path folder, Path dbc) throws IOException {
        Path own = Files.createDirectories(folder.resolve("climate"));
        Files.writeString(own.resolve("other.dbc"), OTHER_OF_CLIMATE);
        return Files.writeString(own.resolve("sheet.yaml"), String.format(CLIMATE_SHEET, dbc.toAbsolutePath()));
    }
}
