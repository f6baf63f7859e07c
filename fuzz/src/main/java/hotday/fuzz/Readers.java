package hotday.fuzz;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.typed.Overlay;
import hotday.signals.channel.ChannelGuess;
import hotday.signals.channel.ChannelMap;
import hotday.signals.channel.Recording;
import hotday.signals.dbc.DbcFile;
import hotday.signals.dbc.NetworkDecoder;
import hotday.signals.frame.BusDecoders;
import hotday.signals.frame.Frame;
import hotday.signals.frame.FrameDecoder;
import hotday.signals.framelog.FrameLog;
import hotday.signals.framelog.FrameLogOptions;
import hotday.signals.framelog.LogCounts;
import hotday.signals.gateway.GatewayCheck;
import hotday.signals.gateway.TranslationSheet;
import hotday.signals.j1939.J1939Decoder;
import hotday.signals.log.DelimitedText;
import hotday.signals.log.ReaderOptions;
import hotday.signals.mdf.MdfLog;
import hotday.signals.obd.ObdDecoder;
import hotday.vehicle.sheet.BuildSheet;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * All readers by name, each as a thing that takes bytes. A reader may refuse with an {@link InputException} that gives a
 * reason; whatever else it throws, and every promise below that does not hold, is a fault of the reader.
 */
final class Readers {
    private static final String DEMO = "/hotday/study/demo/network/";
    private static final Map<String, Supplier<Consumer<byte[]>>> ALL = all();

    private Readers() {}

    private static Map<String, Supplier<Consumer<byte[]>>> all() {
        Map<String, Supplier<Consumer<byte[]>>> all = new LinkedHashMap<>();
        all.put("delimited", () -> files("log.csv", Readers::delimited));
        all.put("recording", () -> files("log.csv", Readers::recording));
        all.put("parquet", () -> files("log.parquet", Readers::parquet));
        all.put("frames", () -> files("log.txt", Readers::frames));
        all.put("mdf", () -> files("log.mf4", Readers::mdf));
        all.put("dbc", () -> Readers::dbc);
        all.put("protocols", Readers::protocols);
        all.put("channels", () -> Readers::channels);
        all.put("translation", Readers::translation);
        all.put("build", () -> Readers::build);
        return all;
    }

    static List<String> names() {
        return List.copyOf(ALL.keySet());
    }

    /** Made anew; refused inputs come back as if they had been read. */
    static Consumer<byte[]> reader(String name) {
        Supplier<Consumer<byte[]>> maker = ALL.get(name);
        if (maker == null) {
            throw new IllegalArgumentException("no reader '" + name + "'; there are: " + String.join(", ", names()));
        }
        Consumer<byte[]> reader = maker.get();
        return bytes -> {
            try {
                reader.accept(bytes);
            } catch (InputException refused) {
                promise(!refused.findings().isEmpty(), "refused without a reason");
                told(refused.findings());
            }
        };
    }

    private static Consumer<byte[]> files(String name, Consumer<Path> reader) {
        ScratchFile file = new ScratchFile(name);
        return bytes -> reader.accept(file.with(bytes));
    }

    private static void promise(boolean held, String what) {
        if (!held) {
            throw new IllegalStateException(what);
        }
    }

    private static void told(List<Finding> findings) {
        findings.forEach(f -> promise(!f.message().isBlank(), "a finding without words"));
    }

    private static void delimited(Path path) {
        DelimitedText text = DelimitedText.open(path, ReaderOptions.auto());
        text.rows(row -> {
            for (int i = 0; i < row.count(); i++) {
                double number = row.number(i);
                promise(!row.blank(i) || Double.isNaN(number), "a blank cell is no number");
            }
        });
    }

    /** Every cell of the table. */
    private static void parquet(Path path) {
        ChannelMap.tableUnmapped(path).rows(row -> {
            for (int i = 0; i < row.count(); i++) {
                row.number(i);
                row.text(i);
            }
        });
    }

    /** As somebody who drops a recording: columns are guessed, and what was guessed is read. */
    private static void recording(Path path) {
        byte[] map = ChannelGuess.of(ChannelMap.headUnmapped(path)).file(ChannelMap.headUnmapped(path));
        Recording read = ChannelMap.of("channels.yaml", new String(map, StandardCharsets.UTF_8))
                .recording(path);
        double[] time = read.time();
        for (int i = 1; i < time.length; i++) {
            promise(time[i] > time[i - 1], "time goes forward");
        }
        told(read.findings());
    }

    private static void frames(Path path) {
        try (FrameLog log = FrameLog.open(path, FrameLogOptions.NONE)) {
            Frame frame = new Frame();
            LogCounts counts = new LogCounts();
            while (log.next(frame)) {
                promise(frame.length() <= Frame.LONGEST, "a payload of " + frame.length() + " bytes");
                counts.add(frame, false, f -> "");
            }
            told(log.findings());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void mdf(Path path) {
        try (MdfLog log = MdfLog.open(path)) {
            log.samplesTo(new Sane());
            Frame frame = new Frame();
            while (log.next(frame)) {
                promise(frame.bus() < log.buses().size(), "a bus without a name");
            }
            told(log.findings());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Reads, finds the same in what it writes, and decodes a payload with whatever came out. */
    private static void dbc(byte[] bytes) {
        DbcFile file = DbcFile.parse("network.dbc", bytes);
        DbcFile again = DbcFile.parse("written.dbc", file.bytes());
        promise(Arrays.equals(again.bytes(), file.bytes()), "not the same bytes when written and read again");
        promise(
                again.encoding() != file.encoding() || again.statements().equals(file.statements()),
                "not the same statements when written and read again");
        told(file.findings());
        BusDecoders decoders =
                new BusDecoders(List.of(() -> new NetworkDecoder(List.of(file), true)), b -> "", new Sane());
        byte[] payload = Arrays.copyOf(bytes, Frame.LONGEST);
        file.messages().stream().limit(100).forEach(m -> {
            boolean fits = m.id() >= 0 && m.id() <= (m.extended() ? Frame.HIGHEST_EXTENDED : Frame.HIGHEST_STANDARD);
            for (int length = 0; fits && length <= Frame.LONGEST; length += 4) {
                decoders.decode(new Frame().set(0, 0, m.id(), m.extended(), payload, 0, length));
            }
        });
    }

    /** Frames with the identifiers that transports listen to: one byte chooses, one gives the length, the payload follows. */
    private static Consumer<byte[]> protocols() {
        int[] ids = {
            0x7E8,
            0x7E0,
            0x7DF,
            0x18DAF110,
            0x18DA10F1,
            0x18DB33F1,
            0x1CECFF00,
            0x1CEBFF00,
            0x18EC0300,
            0x18EB0300,
            0x0CF00400,
            0x18FEEE00,
            0x18FECA00,
            0x100,
            0x18F00503
        };
        DbcFile engine = DbcFile.parse("engine-side.dbc", resource("engine-side.dbc"));
        List<Supplier<FrameDecoder>> decoders =
                List.of(() -> new NetworkDecoder(List.of(engine), true), J1939Decoder::new, ObdDecoder::new);
        return bytes -> {
            BusDecoders known = new BusDecoders(decoders, b -> "bus" + b + ":", new Sane());
            double time = 0;
            for (int at = 0; at + 2 <= bytes.length; ) {
                int id = ids[(bytes[at] & 0xFF) % ids.length];
                int length = Math.min(bytes[at + 1] & 0x3F, bytes.length - at - 2);
                time += (bytes[at + 1] & 0xC0) == 0xC0 ? 2 : 0.001;
                known.decode(new Frame()
                        .set(time, (bytes[at] & 0x80) >> 7, id, id > Frame.HIGHEST_STANDARD, bytes, at + 2, length));
                at += 2 + length;
            }
            told(known.findings());
        };
    }

    private static void channels(byte[] bytes) {
        ChannelMap.of("channels.yaml", new String(bytes, StandardCharsets.UTF_8));
    }

    private static Consumer<byte[]> translation() {
        ScratchFile file = new ScratchFile("sheet.yaml")
                .beside("engine-side.dbc", resource("engine-side.dbc"))
                .beside("body-side.dbc", resource("body-side.dbc"));
        return bytes ->
                told(GatewayCheck.of(TranslationSheet.read(file.with(bytes))).findings());
    }

    private static void build(byte[] bytes) {
        BuildSheet.of(Path.of("build.yaml"), new String(bytes, StandardCharsets.UTF_8), Overlay.none());
    }

    private static byte[] resource(String name) {
        try (InputStream in = Readers.class.getResourceAsStream(DEMO + name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
