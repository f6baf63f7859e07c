package hotday.validation.signals;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.core.finding.Severity;
import hotday.signals.dbc.DbcFile;
import hotday.signals.dbc.Message;
import hotday.signals.dbc.MessageDecoder;
import hotday.signals.dbc.Signal;
import hotday.signals.dbc.ValueForm;
import hotday.validation.SharedData;
import java.io.IOException;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All DBC files of the reference data: read, written back, and decoded beside an outside library. */
class NetworkFilesTest {
    private static final int PAYLOADS = 10_000;
    private static final long NOT_THERE = 0x5555;
    private static final long PRIME = 1_099_511_628_211L;
    private static final Pattern TOKEN =
            Pattern.compile("\"(?:\\\\\"|[^\"])*\"|[:;,|@()\\[\\]]|[^\\s\":;,|@()\\[\\]]+");

    @TempDir
    private Path folder;

    private static List<Path> files() throws IOException {
        List<Path> all = new ArrayList<>();
        for (String name : List.of("data/can-logs", "data/dbc-files")) {
            try (Stream<Path> found = Files.list(SharedData.file(name))) {
                found.filter(p -> p.toString().endsWith(".dbc")).sorted().forEach(all::add);
            }
        }
        return all;
    }

    /** What is not understood in them: nothing else, and nothing less. */
    @Test
    void faultsAreThoseOfTheFiles() throws IOException {
        Map<String, Integer> faults = new TreeMap<>();
        for (Path path : files()) {
            DbcFile.read(path).findings().stream()
                    .filter(f -> f.severity() == Severity.FAULT)
                    .forEach(f -> faults.merge(f.key(), (int) f.values().getOrDefault("count", 1), Integer::sum));
        }
        assertThat(faults)
                .containsExactlyInAnyOrderEntriesOf(Map.of("identifier-impossible", 32, "multiplexing-unclear", 5));
    }

    /** Every token of every file comes back, two semicolons more that one file lacks. */
    @Test
    void writtenBackTokenForToken() throws IOException {
        for (Path path : files()) {
            DbcFile file = DbcFile.read(path);
            DbcFile again = DbcFile.parse(path.toString(), file.bytes());
            assertThat(again.statements()).as(path.toString()).isEqualTo(file.statements());
            int missing = (int) file.findings().stream()
                    .filter(f -> f.key().equals("semicolon-missing"))
                    .count();
            List<String> before = tokens(Files.readString(path, StandardCharsets.UTF_8));
            List<String> after = tokens(file.text());
            assertThat(after).hasSize(before.size() + missing);
            if (missing == 0) {
                assertThat(after).as(path.toString()).isEqualTo(before);
            }
        }
    }

    private static List<String> tokens(String text) {
        List<String> tokens = new ArrayList<>();
        Matcher m = TOKEN.matcher(text);
        while (m.find()) {
            tokens.add(m.group());
        }
        return tokens;
    }

    /**
     * Raw values of random payloads by digest, factor and offset by value. Explained differences: the reference gives the
     * signals behind a message whose identifier it refuses to the message before; it takes a signal that is multiplexed
     * where no multiplexor is known; it does not read a signal with an unclear multiplexor.
     */
    @Test
    @Tag("slow")
    void decodesAsAnOutsideLibrary() throws IOException, InterruptedException {
        List<Path> files = files();
        Map<String, List<NetworkReference.Line>> reference = new LinkedHashMap<>();
        for (NetworkReference.Line line : NetworkReference.lines(folder, PAYLOADS, files)) {
            reference
                    .computeIfAbsent(line.file() + " " + line.identifier(), k -> new ArrayList<>())
                    .add(line);
        }
        List<String> unlike = new ArrayList<>();
        int compared = 0;
        for (int f = 0; f < files.size(); f++) {
            for (Message m : DbcFile.read(files.get(f)).messages()) {
                List<NetworkReference.Line> lines = reference.getOrDefault(f + " " + identifier(m), List.of());
                compared += compare(m, lines, unlike);
            }
        }
        System.out.println("decoded alike: " + compared + " signals, " + PAYLOADS + " payloads each");
        assertThat(unlike).isEmpty();
        assertThat(compared).isGreaterThan(6000);
    }

    private static long identifier(Message m) {
        return m.extended() ? m.id() | 0x8000_0000L : m.id();
    }

    private static int compare(Message message, List<NetworkReference.Line> lines, List<String> unlike) {
        MessageDecoder decoder = MessageDecoder.of(message);
        String[] digests = digests(decoder, identifier(message));
        int compared = 0;
        int at = 0;
        for (int i = 0; i < decoder.size(); i++) {
            Signal signal = message.signals().get(i);
            if (!signal.multiplexing().clear()) {
                at += at < lines.size() && lines.get(at).signal().equals(signal.name()) ? 1 : 0;
                continue;
            }
            String ours = ours(signal, digests[i]);
            String theirs = at < lines.size() ? theirs(lines.get(at)) : "nothing";
            if (!ours.equals(theirs)) {
                unlike.add(message.name() + ": " + ours + " is not " + theirs);
            }
            at++;
            compared++;
        }
        return compared;
    }

    private static String ours(Signal s, String digest) {
        return s.name() + " " + s.factor() + " " + s.offset() + " " + digest;
    }

    private static String theirs(NetworkReference.Line l) {
        return l.signal() + " " + l.factor() + " " + l.offset() + " " + l.digest();
    }

    private static String[] digests(MessageDecoder decoder, long seed) {
        int length = decoder.message().length();
        long[] sums = new long[decoder.size()];
        double[] out = new double[decoder.size()];
        byte[] data = new byte[(length + 7) / 8 * 8];
        long state = seed;
        for (int k = 0; k < PAYLOADS && length > 0; k++) {
            state = fill(data, state);
            decoder.decode(data, length, out);
            for (int i = 0; i < out.length; i++) {
                sums[i] = sums[i] * PRIME + seen(decoder, i, data, out[i]);
            }
        }
        String[] digests = new String[sums.length];
        for (int i = 0; i < sums.length; i++) {
            boolean inside = length > 0 && decoder.reaches(i, length);
            digests[i] = inside ? Long.toUnsignedString(sums[i]) : "beyond";
        }
        return digests;
    }

    /** The raw value, after the physical one was seen to be that scaled. */
    private static long seen(MessageDecoder decoder, int signal, byte[] data, double value) {
        if (Double.isNaN(value)) {
            return NOT_THERE;
        }
        Signal s = decoder.message().signals().get(signal);
        long raw = decoder.raw(signal, data, 0, decoder.message().length());
        double number = s.bits() == Long.SIZE && raw < 0 && s.form() == ValueForm.UNSIGNED
                ? new BigInteger(Long.toUnsignedString(raw)).doubleValue()
                : raw;
        if (value != number * s.factor() + s.offset()) {
            throw new AssertionError(s.name() + ": raw " + raw + " became " + value);
        }
        return raw + 1;
    }

    /** splitmix64, eight bytes a number, the lowest first. */
    private static long fill(byte[] data, long from) {
        long state = from;
        for (int b = 0; b < data.length; b += 8) {
            state += 0x9E3779B97F4A7C15L;
            long z = (state ^ state >>> 30) * 0xBF58476D1CE4E5B9L;
            z = (z ^ z >>> 27) * 0x94D049BB133111EBL;
            z ^= z >>> 31;
            for (int k = 0; k < 8; k++) {
                data[b + k] = (byte) (z >>> 8 * k);
            }
        }
        return state;
    }
}
