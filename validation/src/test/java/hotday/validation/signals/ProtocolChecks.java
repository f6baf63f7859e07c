package hotday.validation.signals;

import hotday.signals.check.Crc;
import hotday.signals.frame.Frame;
import hotday.signals.j1939.J1939Decoder;
import hotday.signals.obd.ObdDecoder;
import hotday.validation.Check;
import hotday.validation.Topic;
import hotday.validation.signals.RecordedFrames.Heard;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

/** Protocols above the frame; edges and broken messages are tested in module signals. */
public final class ProtocolChecks implements Topic {
    private static final String CHECKSUMS = "usual check value, of the text 123456789";
    private static final String TRUCK = "recording of a truck at idle, worked out with the standard's scalings";
    private static final String PIDS = "public tables of SAE J1979, example recomputed";

    @Override
    public String title() {
        return "Protocols";
    }

    @Override
    public List<Check> checks() {
        Map<String, Heard> truck = RecordedFrames.decoded(
                new J1939Decoder(), RecordedFrames.ofText("css_j1939_truck_idle_127s.candump.log.gz"));
        return List.of(
                crc(Crc.CRC8_1D, 0x4B),
                crc(Crc.CRC8_2F, 0xDF),
                crc(Crc.CRC16_1021, 0x29B1),
                crc(Crc.CRC32_04C11DB7, 0xCBF43926L),
                crc(Crc.CRC32_F4ACFB13, 0x1697D06AL),
                Check.inside(
                        "truck, lowest engine speed", lowest(truck, "EEC1.EngineSpeed@00"), 646, 654, "rpm", TRUCK),
                Check.inside(
                        "truck, highest engine speed", highest(truck, "EEC1.EngineSpeed@00"), 646, 654, "rpm", TRUCK),
                truck("lowest coolant", lowest(truck, "ET1.CoolantTemperature@00"), 71, 1e-9, "degC"),
                truck("highest coolant", highest(truck, "ET1.CoolantTemperature@00"), 72, 1e-9, "degC"),
                truck(
                        "ambient at first",
                        truck.get("AMB.AmbientAirTemperature@00").first(),
                        13.3,
                        0.05,
                        "degC"),
                truck(
                        "barometer at first",
                        truck.get("AMB.BarometricPressure@00").first(),
                        98.5,
                        1e-9,
                        "kPa"),
                truck("lowest fuel rate", lowest(truck, "LFE.FuelRate@00"), 2.45, 1e-9, "L/h"),
                truck("highest fuel rate", highest(truck, "LFE.FuelRate@00"), 2.85, 1e-9, "L/h"),
                pid("engine speed", "04410C1AF8", 1726, "rpm"),
                pid("air flow", "04411001A4", 4.2, "g/s"),
                pid("supply", "0441423637", 13.879, "V"),
                pid("oil", "03415C96", 110, "degC"));
    }

    private static Check crc(Crc crc, long published) {
        byte[] digits = "123456789".getBytes(StandardCharsets.US_ASCII);
        return Check.near("checksum " + crc, crc.of(digits, 0, 9), published, 0, "-", CHECKSUMS);
    }

    private static double lowest(Map<String, Heard> truck, String signal) {
        return truck.get(signal).least();
    }

    private static double highest(Map<String, Heard> truck, String signal) {
        return truck.get(signal).most();
    }

    private static Check truck(String what, double ours, double published, double margin, String unit) {
        return Check.near("truck, " + what, ours, published, margin, unit, TRUCK);
    }

    private static Check pid(String what, String hex, double published, String unit) {
        byte[] data = HexFormat.of().parseHex(hex);
        Frame frame = new Frame().set(0, 0, 0x7E8, false, data, 0, data.length);
        Map<String, Heard> heard = RecordedFrames.decoded(new ObdDecoder(), List.of(frame));
        double ours = heard.values().iterator().next().first();
        return Check.near("diagnostic connector, " + what, ours, published, 1e-9, unit, PIDS);
    }
}
