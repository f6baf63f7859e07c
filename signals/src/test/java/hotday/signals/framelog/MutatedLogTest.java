package hotday.signals.framelog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hotday.core.finding.InputException;
import hotday.signals.frame.Frame;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Lines as recorders write them, damaged at random: a line is a frame, nothing, or broken at a column inside it; a file is
 * read or refused as wrong input. Nothing else comes out, and it comes soon.
 */
class MutatedLogTest {
    private static final List<String> CANDUMP = List.of(
            "(1622547830.084000) can0 0CF00400#F0FF7D0000FFFFFF",
            "(1622547830.084006) vcan1 123##1112233445566778899AABBCCDDEEFF",
            "(2023-03-01 12:00:00.123456)  can0  RX - -  123   [8]  11 22 33 44 55 66 77 88   '..3DUfw.'",
            "  can0  18FEEE00   [4]  remote request",
            "(0.001) can0 20000080#0000000000000000_F R",
            "(1.5) can1 7FF#R8 T");
    private static final String BYTES = "Time Stamp,ID,Extended,Dir,Bus,LEN,D1,D2,D3,D4,D5,D6,D7,D8";
    private static final List<String> BYTE_ROWS = List.of(
            "22213513,00000111,false,Rx,0,8,00,00,00,00,00,00,00,00,", "22218355,18FEEE00,true,Rx,1,3,0B,02,FF,,,,,");
    private static final String GROUPS = ",time,pgn,priority,source,destination,data,description";
    private static final List<String> GROUP_ROWS =
            List.of("0,0.0,60928,6,71,255,4D 74 30 04 00 34 02 20 ,Unknown", "7,2e3,61444,3,0,255,\"F0 FF\",\"a, b\"");
    private static final byte[] ODD =
            "#,;:()[]{}\"' \t\0.-+eExX0189afgRTZ_/%\u00FF".getBytes(StandardCharsets.ISO_8859_1);

    @TempDir
    private Path folder;

    private static byte[] mutated(String line, Random random) {
        byte[] bytes = line.getBytes(StandardCharsets.ISO_8859_1);
        for (int n = 1 + random.nextInt(4); n > 0; n--) {
            bytes = once(bytes, random);
        }
        return bytes;
    }

    private static byte[] once(byte[] b, Random random) {
        int at = b.length == 0 ? 0 : random.nextInt(b.length);
        switch (random.nextInt(5)) {
            case 0:
                return Arrays.copyOf(b, at);
            case 1: {
                byte[] without = Arrays.copyOf(b, Math.max(0, b.length - 1));
                System.arraycopy(b, Math.min(b.length, at + 1), without, at, Math.max(0, b.length - at - 1));
                return without;
            }
            case 2: {
                byte[] more = Arrays.copyOf(b, b.length + 1);
                System.arraycopy(b, at, more, at + 1, b.length - at);
                more[at] = ODD[random.nextInt(ODD.length)];
                return more;
            }
            case 3: {
                byte[] twice = Arrays.copyOf(b, b.length + b.length - at);
                System.arraycopy(b, at, twice, b.length, b.length - at);
                return twice;
            }
            default: {
                byte[] other = b.clone();
                if (other.length > 0) {
                    other[at] = random.nextBoolean() ? ODD[random.nextInt(ODD.length)] : (byte) random.nextInt(256);
                }
                return other;
            }
        }
    }

    private static void lines(LineForm form, List<String> lines, int count, long seed) {
        Random random = new Random(seed);
        Frame frame = new Frame();
        int frames = 0;
        int broken = 0;
        int odd = 0;
        for (int i = 0; i < count; i++) {
            byte[] line = mutated(lines.get(random.nextInt(lines.size())), random);
            int code = form.read(line, 0, line.length, frame);
            if (code == LineForm.FRAME) {
                frames++;
                odd += frame.length() > 64 || Double.isInfinite(frame.time()) ? 1 : 0;
            } else if (code != LineForm.NOTHING) {
                broken++;
                odd += code < 1 || code > line.length + 1 || form.why().isBlank() ? 1 : 0;
            }
        }
        assertThat(odd).isZero();
        assertThat(frames).isGreaterThan(count / 100);
        assertThat(broken).isGreaterThan(count / 4);
    }

    private static LineForm rows(String header, List<String> rows) {
        List<byte[]> head = new java.util.ArrayList<>(List.of(header.getBytes(StandardCharsets.US_ASCII)));
        rows.forEach(r -> head.add(r.getBytes(StandardCharsets.US_ASCII)));
        FrameLogOptions said = new FrameLogOptions(
                java.util.Optional.of(StampUnit.MICROSECONDS), java.util.Optional.empty(), java.util.Optional.empty());
        return new DelimitedLine(
                new BusNames(), DelimitedHead.columns("rows", head, said).orElseThrow());
    }

    private static void everyForm(int count, long seed) {
        Assertions.assertTimeoutPreemptively(Duration.ofMinutes(10), () -> {
            lines(new CandumpLine(new BusNames(), null), CANDUMP, count, seed);
            lines(rows(BYTES, BYTE_ROWS), BYTE_ROWS, count, seed + 1);
            lines(rows(GROUPS, GROUP_ROWS), GROUP_ROWS, count, seed + 2);
        });
    }

    @Test
    void aDamagedLineIsAFrameOrBroken() {
        everyForm(20_000, 1);
    }

    @Test
    @Tag("slow")
    void aDamagedLineIsAFrameOrBrokenMillionsOfTimes() {
        everyForm(1_000_000, 100);
    }

    private void files(int count, long seed) {
        Random random = new Random(seed);
        List<List<String>> kinds = List.of(CANDUMP, BYTE_ROWS, GROUP_ROWS);
        List<String> headers = List.of("", BYTES, GROUPS);
        int refused = 0;
        for (int i = 0; i < count; i++) {
            int kind = random.nextInt(kinds.size());
            StringBuilder text = new StringBuilder();
            String header = headers.get(kind);
            text.append(random.nextBoolean() ? header : text(mutated(header, random)))
                    .append('\n');
            for (int line = random.nextInt(60); line > 0; line--) {
                String whole =
                        kinds.get(kind).get(random.nextInt(kinds.get(kind).size()));
                text.append(random.nextInt(3) > 0 ? whole : text(mutated(whole, random)))
                        .append('\n');
            }
            refused += isRead(text.toString()) ? 0 : 1;
        }
        assertThat(refused).isBetween(count / 20, count - count / 20);
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    private boolean isRead(String text) {
        try {
            ReadFrames.of(folder, text);
            return true;
        } catch (InputException e) {
            assertThat(e.findings()).isNotEmpty();
            return false;
        }
    }

    @Test
    void aDamagedFileIsReadOrRefused() {
        Assertions.assertTimeoutPreemptively(Duration.ofMinutes(2), () -> files(400, 1));
    }

    @Test
    @Tag("slow")
    void aDamagedFileIsReadOrRefusedThousandsOfTimes() {
        Assertions.assertTimeoutPreemptively(Duration.ofMinutes(10), () -> files(5_000, 2));
    }

    @Test
    void aLineWithoutEndIsRefusedAndNotKept() throws IOException {
        Path path = folder.resolve("endless.log");
        byte[] line = new byte[3_000_000];
        Arrays.fill(line, (byte) 'A');
        Files.write(path, line);
        assertThatThrownBy(() -> ReadFrames.of(path, FrameLogOptions.NONE))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("more than 1000000 bytes");
    }
}
