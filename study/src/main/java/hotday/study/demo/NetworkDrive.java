package hotday.study.demo;

import hotday.signals.check.Crc;
import hotday.signals.dbc.DbcFile;
import hotday.signals.dbc.Message;
import hotday.signals.dbc.Signal;
import hotday.signals.translator.Field;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Twelve seconds on the two networks of an invented car, as a logger caught them before there was a gateway: pulling away,
 * air conditioning switched on and off, a coolant sensor in error, an engine message that stops for a second, a damaged
 * frame and one that came twice.
 */
final class NetworkDrive {
    private static final int LENGTH = 12_000; // ms
    private static final int PULLS_AWAY = 2_000;
    private static final int CLIMATE_ON = 3_000;
    private static final int CLIMATE_OFF = 9_000;
    /** From the request on the body side to the enable of the engine, ms. */
    private static final int ENGINE_ANSWERS = 60;

    private static final int DAMAGED = 5_000;
    private static final int TWICE = 6_000;
    private static final int SENSOR_ERROR = 7_500;
    private static final int SENSOR_GOOD = 8_300;
    private static final int SILENT = 10_000;
    private static final int SPEAKS = 11_000;

    private static final int ERROR = 254;
    private static final int COUNTER_VALUES = 15;
    private static final double BEGIN = 1_000; // s, the logger's clock
    private static final double SHORTEST = 1e-4; // s from one frame to the next

    private final Map<String, DbcFile> networks = new LinkedHashMap<>();
    private final SplittableRandom random;
    private final StringBuilder lines = new StringBuilder();
    private int counter;
    private int ms;
    private double time;

    /** @param engine description of the network of the same name, and so on */
    NetworkDrive(DbcFile engine, DbcFile body, long seed) {
        networks.put("engine", engine);
        networks.put("body", body);
        random = new SplittableRandom(seed);
    }

    /** The whole recording as candump writes it. */
    String record() {
        for (ms = 0; ms < LENGTH; ms++) {
            engineSide();
            bodySide();
        }
        return lines.toString();
    }

    private static boolean climate(int at) {
        return at >= CLIMATE_ON && at < CLIMATE_OFF;
    }

    /** Sent every so often, and at once when it changes. */
    private boolean due(int every, int phase, boolean changed) {
        return ms % every == phase || changed;
    }

    private double kmh() {
        return Math.max(0, Math.min(60, (ms - PULLS_AWAY) * 0.01));
    }

    private double rpm() {
        return 750 + 27 * kmh() + 4 * (random.nextDouble() - 0.5);
    }

    private void engineSide() {
        if (ms % 10 == 1) {
            frame("engine", "Wheels", Map.of("VehicleSpeed", kmh(), "YawRate", 0.0));
        }
        if (ms % 10 == 3) {
            engineFast();
        }
        boolean enabled = climate(ms - ENGINE_ANSWERS);
        if (due(100, 7, enabled != climate(ms - 1 - ENGINE_ANSWERS))) {
            frame("engine", "EngineClimate", Map.of("CompressorEnable", enabled ? 1.0 : 0.0));
        }
        if (ms % 20 == 9) {
            frame("engine", "GearboxFast", Map.of("TurbineSpeed", rpm(), "Gear", 1.0));
        }
        if (ms % 100 == 15 && (ms < SILENT || ms >= SPEAKS)) {
            engineSlow();
        }
        if (ms % 200 == 42) {
            frame("engine", "GearboxSlow", Map.of("GearboxTemperature", 71 + ms * 1e-4));
        }
    }

    private void engineSlow() {
        boolean error = ms >= SENSOR_ERROR && ms < SENSOR_GOOD;
        double coolant = error ? ERROR - 40.0 : 88.0 + Math.floorDiv(ms, 3000);
        frame(
                "engine",
                "EngineSlow",
                Map.of("CoolantTemperature", coolant, "OilTemperature", 95.0, "FanDemand", climate(ms) ? 60.0 : 20.0));
    }

    /** Counter and checksum of its own; once the checksum is wrong, once the counter stands still. */
    private void engineFast() {
        counter = ms / 10 == TWICE / 10 ? counter : (counter + 1) % COUNTER_VALUES;
        Map<String, Double> values = Map.of(
                "EngineSpeed", rpm(), "EngineTorque", 40.0, "PedalShare", 12.0, "AliveCounter", (double) counter);
        byte[] data = bytes("engine", "EngineFast", values);
        data[7] = (byte) (Crc.CRC8_1D.of(data, 0, 7) ^ (ms / 10 == DAMAGED / 10 ? 1 : 0));
        line("engine", message("engine", "EngineFast"), data);
    }

    private void bodySide() {
        boolean asked = climate(ms);
        if (due(100, 22, asked != climate(ms - 1))) {
            double head = asked ? 700 + Math.min(600, (ms - CLIMATE_ON) * 0.2) : 700;
            frame("body", "ClimateRequest", Map.of("AcRequest", asked ? 1.0 : 0.0, "HeadPressure", head));
        }
        if (ms % 100 == 31) {
            frame("body", "FanState", Map.of("FanSpeed", 1200.0, "FanCurrent", 9.0));
        }
        if (ms % 200 == 54) {
            frame("body", "DashState", Map.of("LampBrightness", 80.0));
        }
    }

    private void frame(String network, String name, Map<String, Double> values) {
        line(network, message(network, name), bytes(network, name, values));
    }

    private Message message(String network, String name) {
        return networks.get(network).messages().stream()
                .filter(m -> m.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private byte[] bytes(String network, String name, Map<String, Double> values) {
        Message message = message(network, name);
        long word = 0;
        for (Signal s : message.signals()) {
            double value = values.getOrDefault(s.name(), s.offset());
            word = Field.of(s).put(word, Math.round((value - s.offset()) / s.factor()));
        }
        byte[] data = new byte[message.length()];
        Field.bytes(word, data, data.length);
        return data;
    }

    private void line(String network, Message message, byte[] data) {
        time = Math.max(time + SHORTEST, BEGIN + ms / 1000.0 + 1e-4 * random.nextDouble());
        lines.append(String.format(
                Locale.ROOT,
                "(%.6f) %s %03X#%s\n",
                time,
                network,
                message.id(),
                HexFormat.of().withUpperCase().formatHex(data)));
    }
}
