package hotday.signals.channel;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.core.finding.InputException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Bytes changed, cut out and cut off at random: a recording with rising time, or a refusal in words; nothing else. */
class DamagedFileTest {
    private static final int FILES_EACH = 150;
    private static final byte[] NASTY = "\0\"\n\r,;\t:.-eE9\u00FF".getBytes(StandardCharsets.ISO_8859_1);

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void nothingButARecordingOrARefusal(long seed) throws IOException {
        Random random = new Random(seed);
        ChannelMap numbers = Logged.map(folder, Logged.MAP + "reader: {text: skip}\n");
        ChannelMap clock = Logged.map(folder, Logged.MAP.replace("\"t [s]\"", "\"t [s]\", clock: \"hh:mm:ss\""));
        for (int i = 0; i < FILES_EACH; i++) {
            boolean stamps = random.nextBoolean();
            Path file = Files.write(folder.resolve("log.csv"), damaged(random, good(stamps)));
            try {
                rises((stamps ? clock : numbers).recording(file));
            } catch (InputException e) {
                assertThat(e.findings()).isNotEmpty();
                assertThat(e.findings())
                        .allMatch(f -> f.place().isPresent() && !f.message().isBlank());
            }
        }
    }

    private static byte[] good(boolean stamps) {
        StringBuilder log = new StringBuilder(Logged.HEADER);
        for (int i = 0; i < 40; i++) {
            log.append(stamps ? "23:59:" + (20 + i) : String.valueOf(i))
                    .append(',')
                    .append(i)
                    .append(",80")
                    .append(i % 7);
            log.append(',').append(20 + i / 4).append(i % 2 == 0 ? "\n" : "\r\n");
        }
        return log.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] damaged(Random random, byte[] bytes) {
        byte[] out = random.nextInt(4) == 0 ? Arrays.copyOf(bytes, random.nextInt(bytes.length)) : bytes;
        int changes = out.length == 0 ? 0 : random.nextInt(12);
        for (int k = 0; k < changes; k++) {
            out[random.nextInt(out.length)] =
                    random.nextBoolean() ? NASTY[random.nextInt(NASTY.length)] : (byte) random.nextInt(256);
        }
        return out;
    }

    private static void rises(Recording run) {
        double[] time = run.time();
        for (int i = 0; i < time.length; i++) {
            assertThat(time[i]).isFinite();
            assertThat(i == 0 || time[i] > time[i - 1]).isTrue();
        }
        for (Channel c : run.channels()) {
            assertThat(c.values()).hasSameSizeAs(time);
            assertThat(c.good()).isPositive();
        }
    }
}
