package hotday.signals.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LineReaderTest {
    /** Gives a few bytes at a time, as a packed or remote file does. */
    private static InputStream slow(byte[] bytes, int most) {
        return new ByteArrayInputStream(bytes) {
            @Override
            public synchronized int read(byte[] to, int offset, int length) {
                return super.read(to, offset, Math.min(length, most));
            }
        };
    }

    private static List<String> lines(InputStream in) throws IOException {
        List<String> lines = new ArrayList<>();
        try (LineReader reader = new LineReader(in)) {
            while (reader.next()) {
                lines.add(reader.line() + ":"
                        + new String(
                                reader.bytes(),
                                reader.start(),
                                reader.end() - reader.start(),
                                StandardCharsets.ISO_8859_1)
                        + (reader.unfinished() ? "|" : ""));
            }
        }
        return lines;
    }

    @Test
    void everyLineEndCountsOnce() throws IOException {
        byte[] text = "a\nb\r\nc\rd\n\ne\r\n\r\nf".getBytes(StandardCharsets.ISO_8859_1);
        for (int most : new int[] {1, 2, 3, 100}) {
            assertThat(lines(slow(text, most))).containsExactly("1:a", "2:b", "3:c", "4:d", "5:", "6:e", "7:", "8:f|");
        }
    }

    @Test
    void nothingAndAlmostNothing() throws IOException {
        assertThat(lines(new ByteArrayInputStream(new byte[0]))).isEmpty();
        assertThat(lines(new ByteArrayInputStream(new byte[] {'\n'}))).containsExactly("1:");
        assertThat(lines(new ByteArrayInputStream(new byte[] {'\r', '\n'}))).containsExactly("1:");
        assertThat(lines(new ByteArrayInputStream(new byte[] {'x'}))).containsExactly("1:x|");
    }

    @Test
    void linesAcrossTheBufferStayWhole() throws IOException {
        Random random = new Random(7);
        StringBuilder text = new StringBuilder();
        List<String> expected = new ArrayList<>();
        for (int i = 1; i <= 4000; i++) {
            String line = "x".repeat(random.nextInt(400));
            expected.add(i + ":" + line);
            text.append(line).append(random.nextBoolean() ? "\r\n" : "\n");
        }
        byte[] bytes = text.toString().getBytes(StandardCharsets.ISO_8859_1);
        assertThat(lines(slow(bytes, 1 << 20))).isEqualTo(expected);
        assertThat(lines(slow(bytes, 4093))).isEqualTo(expected);
    }

    @Test
    void aLineWithoutEndIsRefusedBeforeItFillsTheMemory() {
        byte[] endless = new byte[4_000_000];
        Arrays.fill(endless, (byte) 'x');
        assertThatThrownBy(() -> lines(new ByteArrayInputStream(endless))).isInstanceOf(LineReader.LineTooLong.class);
    }

    @Test
    void zeroBytesAtTheEndAreNoEndlessLine() throws IOException {
        byte[] cutOff = Arrays.copyOf("a\nb\n".getBytes(StandardCharsets.ISO_8859_1), 5_000_000);
        List<String> lines = lines(new ByteArrayInputStream(cutOff));
        assertThat(lines).hasSize(3);
        assertThat(lines.get(1)).isEqualTo("2:b");
    }
}
