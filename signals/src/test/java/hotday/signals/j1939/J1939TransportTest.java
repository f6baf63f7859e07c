package hotday.signals.j1939;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.signals.frame.Frame;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class J1939TransportTest {
    private static final int GROUP = 0xFEE3;

    private final List<String> messages = new ArrayList<>();
    private final J1939Transport transport =
            new J1939Transport((time, bus, group, source, destination, data, length) -> messages.add(String.format(
                    "%X %02X>%02X %s",
                    group, source, destination, HexFormat.of().withUpperCase().formatHex(data, 0, length))));
    private double time;

    @ParameterizedTest
    @ValueSource(ints = {9, 13, 14, 15, 400, 1785})
    void everyLength(int length) {
        byte[] sent = new byte[length];
        new Random(length).nextBytes(sent);
        begin(32, 0x00, 0xFF, length);
        for (int packet = 1; packet <= (length + 6) / 7; packet++) {
            packet(0x00, 0xFF, packet, sent);
        }
        assertThat(messages)
                .containsExactly("FEE3 00>FF " + HexFormat.of().withUpperCase().formatHex(sent));
        assertThat(transport.count(TransportEvent.UNFINISHED)).isZero();
    }

    @Test
    void askedForBetweenTwo() {
        begin(16, 0x00, 0x06, 14);
        control(0x06, 0x00, "11 02 01 FF FF E3 FE 00");
        packet(0x00, 0x06, 1, new byte[14]);
        packet(0x00, 0x06, 2, new byte[14]);
        control(0x06, 0x00, "13 0E 00 02 FF E3 FE 00");
        assertThat(messages).containsExactly("FEE3 00>06 " + "00".repeat(14));
        assertThat(lost()).isZero();
    }

    /** The receiver missed a packet and asks for it again; the listener has it twice. */
    @Test
    void askedForAgain() {
        begin(16, 0x00, 0x06, 21);
        packet(0x00, 0x06, 1, new byte[21]);
        packet(0x00, 0x06, 2, new byte[21]);
        control(0x06, 0x00, "11 02 02 FF FF E3 FE 00");
        packet(0x00, 0x06, 2, new byte[21]);
        packet(0x00, 0x06, 3, new byte[21]);
        assertThat(messages).hasSize(1);
        assertThat(lost()).isZero();
    }

    @Test
    void theListenerMissedAPacket() {
        begin(16, 0x00, 0x06, 21);
        packet(0x00, 0x06, 1, new byte[21]);
        packet(0x00, 0x06, 3, new byte[21]);
        control(0x06, 0x00, "13 15 00 03 FF E3 FE 00");
        assertThat(transport.count(TransportEvent.OUT_OF_SEQUENCE)).isEqualTo(1);
        assertThat(messages).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 0, 4})
    void broadcastOutOfTurn(int second) {
        begin(32, 0x00, 0xFF, 21);
        packet(0x00, 0xFF, 1, new byte[21]);
        packet(0x00, 0xFF, second, new byte[35]);
        assertThat(transport.count(TransportEvent.OUT_OF_SEQUENCE)).isEqualTo(1);
        packet(0x00, 0xFF, 2, new byte[21]);
        assertThat(transport.count(TransportEvent.STRAY)).isEqualTo(1);
        assertThat(messages).isEmpty();
    }

    @Test
    void manyAtOnce() {
        byte[][] sent = new byte[200][20];
        Random random = new Random(5);
        for (int source = 0; source < 200; source++) {
            random.nextBytes(sent[source]);
            begin(source % 2 == 0 ? 32 : 16, source, source % 2 == 0 ? 0xFF : 0xF0, 20);
        }
        for (int packet = 1; packet <= 3; packet++) {
            for (int source = 199; source >= 0; source--) {
                packet(source, source % 2 == 0 ? 0xFF : 0xF0, packet, sent[source]);
            }
        }
        assertThat(messages).hasSize(200);
        for (int source = 0; source < 200; source++) {
            assertThat(messages)
                    .contains(String.format(
                            "FEE3 %02X>%s %s",
                            source,
                            source % 2 == 0 ? "FF" : "F0",
                            HexFormat.of().withUpperCase().formatHex(sent[source])));
        }
        assertThat(lost()).isZero();
    }

    /** A broadcast and a message between two, of one sender, at the same time. */
    @Test
    void broadcastBesideAnother() {
        begin(32, 0x00, 0xFF, 14);
        begin(16, 0x00, 0x06, 14);
        packet(0x00, 0xFF, 1, new byte[14]);
        packet(0x00, 0x06, 1, new byte[14]);
        packet(0x00, 0xFF, 2, new byte[14]);
        packet(0x00, 0x06, 2, new byte[14]);
        assertThat(messages).hasSize(2);
    }

    @Test
    void silence() {
        begin(32, 0x00, 0xFF, 14);
        time += 0.74;
        packet(0x00, 0xFF, 1, new byte[14]);
        assertThat(lost()).isZero();
        time += 0.76;
        packet(0x00, 0xFF, 2, new byte[14]);
        assertThat(transport.count(TransportEvent.SILENT)).isEqualTo(1);
    }

    @Test
    void patienceBetweenTwo() {
        begin(16, 0x00, 0x06, 14);
        for (int i = 0; i < 4; i++) {
            time += 1;
            control(0x06, 0x00, "11 00 FF FF FF E3 FE 00");
        }
        packet(0x00, 0x06, 1, new byte[14]);
        time += 1.3;
        begin(32, 0x01, 0xFF, 14);
        assertThat(transport.count(TransportEvent.SILENT)).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void abortedByEither(boolean bySender) {
        begin(16, 0x00, 0x06, 14);
        control(bySender ? 0x00 : 0x06, bySender ? 0x06 : 0x00, "FF 03 FF FF FF E2 FE 00");
        assertThat(lost()).isZero();
        control(bySender ? 0x00 : 0x06, bySender ? 0x06 : 0x00, "FF 03 FF FF FF E3 FE 00");
        assertThat(transport.count(TransportEvent.ABORTED)).isEqualTo(1);
    }

    @Test
    void interrupted() {
        begin(32, 0x00, 0xFF, 14);
        begin(32, 0x00, 0xFF, 14);
        assertThat(transport.count(TransportEvent.INTERRUPTED)).isEqualTo(1);
        assertThat(transport.count(TransportEvent.UNFINISHED)).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "20 08 00 02 FF E3 FE 00", // fits into one frame
                "20 0E 00 03 FF E3 FE 00", // three packets for what two hold
                "20 FA 06 FF FF E3 FE 00", // 1786 bytes
                "20 0E 00 02 FF E3 FE 04", // no such group
                "10 0E 00 02 FF E3 FE 00", // between two, to everybody
                "05 0E 00 02 FF E3 FE 00", // no such control byte
                "20 0E 00 02 FF E3 FE" // cut short
            })
    void noBeginning(String hex) {
        control(0x00, 0xFF, hex);
        assertThat(transport.count(TransportEvent.MALFORMED)).isEqualTo(1);
        assertThat(transport.count(TransportEvent.UNFINISHED)).isZero();
    }

    @Test
    void theQuietestGivesWay() {
        for (int destination = 0; destination < 255; destination++) {
            begin(16, 0x00, destination, 14);
        }
        begin(32, 0x00, 0xFF, 14);
        assertThat(lost()).isZero();
        begin(16, 0x01, 0x00, 14);
        assertThat(transport.count(TransportEvent.DISPLACED)).isEqualTo(1);
        packet(0x00, 0x00, 1, new byte[14]);
        assertThat(transport.count(TransportEvent.STRAY)).isEqualTo(1);
    }

    private long lost() {
        return Arrays.stream(TransportEvent.values())
                .filter(event -> event != TransportEvent.COMPLETE && event != TransportEvent.UNFINISHED)
                .mapToLong(transport::count)
                .sum();
    }

    private void begin(int kind, int source, int destination, int size) {
        control(
                source,
                destination,
                String.format(
                        "%02X %02X %02X %02X FF %02X %02X 00",
                        kind, size & 0xFF, size >> 8, (size + 6) / 7, GROUP & 0xFF, GROUP >> 8));
    }

    private void control(int source, int destination, String hex) {
        send(0x1CEC0000 | destination << 8 | source, HexFormat.of().parseHex(hex.replace(" ", "")));
    }

    private void packet(int source, int destination, int number, byte[] message) {
        byte[] data = new byte[8];
        Arrays.fill(data, (byte) 0xFF);
        data[0] = (byte) number;
        int from = Math.max(0, number - 1) * 7;
        System.arraycopy(message, from, data, 1, Math.max(0, Math.min(7, message.length - from)));
        send(0x1CEB0000 | destination << 8 | source, data);
    }

    private void send(int id, byte[] data) {
        time += 1e-4;
        assertThat(transport.take(new Frame().set(time, 0, id, true, data, 0, data.length)))
                .isTrue();
    }
}
