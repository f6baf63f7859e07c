package hotday.signals.isotp;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.signals.frame.Frame;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class IsoTpListenerTest {
    private static final int TESTER = 0x7E0;
    private static final int UNIT = 0x7E8;

    private final List<String> messages = new ArrayList<>();
    private final List<IsoTpEvent> lost = new ArrayList<>();
    private final IsoTpSink sink = new IsoTpSink() {
        @Override
        public void message(IsoTpMessage m) {
            messages.add(String.format(
                    "%X %s", m.id(), HexFormat.of().withUpperCase().formatHex(m.bytes(0))));
        }

        @Override
        public void lost(IsoTpEvent event, double time, int bus, int id) {
            lost.add(event);
        }
    };
    private IsoTpListener listener = new IsoTpListener(Addressing.NORMAL, sink);
    private double time;

    /** The identification number read by identifier F190: example of ISO 14229-1, its text from memory. */
    @Test
    void identificationNumber() {
        send(TESTER, "03 22 F1 90");
        send(UNIT, "10 14 62 F1 90 57 30 4C");
        send(TESTER, "30 00 00");
        send(UNIT, "21 30 30 30 30 34 33 4D");
        send(UNIT, "22 42 35 34 31 33 32 36");
        assertThat(messages).containsExactly("7E0 22F190", "7E8 62F19057304C3030303034334D42353431333236");
        assertThat(messages.get(1)).hasSize(4 + 2 * 20);
        assertThat(lost).isEmpty();
    }

    @Test
    void sevenBytesAreOneFrameAndEightAreTwo() {
        send(UNIT, "07 01 02 03 04 05 06 07");
        send(UNIT, "10 08 01 02 03 04 05 06");
        assertThat(messages).containsExactly("7E8 01020304050607");
        send(UNIT, "21 07 08 AA AA AA AA AA");
        assertThat(messages).containsExactly("7E8 01020304050607", "7E8 0102030405060708");
    }

    /** 12-bit lengths to their end, then the 32-bit length of the edition of 2016. */
    @ParameterizedTest
    @ValueSource(ints = {8, 9, 13, 14, 111, 118, 4095, 4096, 100_000, IsoTpListener.LONGEST})
    void everyLength(int length) {
        byte[] sent = bytes(length);
        sendAll(UNIT, sent, 8);
        assertThat(messages)
                .containsExactly("7E8 " + HexFormat.of().withUpperCase().formatHex(sent));
        assertThat(lost).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {63, 200, 4095, 5000})
    void longFrames(int length) {
        byte[] sent = bytes(length);
        sendAll(UNIT, sent, 64);
        assertThat(messages)
                .containsExactly("7E8 " + HexFormat.of().withUpperCase().formatHex(sent));
    }

    @Test
    void oneLongFrame() {
        send(UNIT, "00 0A 01 02 03 04 05 06 07 08 09 0A");
        assertThat(messages).containsExactly("7E8 0102030405060708090A");
    }

    @Test
    void stallsAfterABlockOfTwo() {
        send(UNIT, "10 20 01 02 03 04 05 06");
        send(TESTER, "30 02 00");
        send(UNIT, "21 00 00 00 00 00 00 00");
        send(UNIT, "22 00 00 00 00 00 00 00");
        time += 1.01;
        send(0x123, "01 3E");
        assertThat(lost).containsExactly(IsoTpEvent.UNANSWERED);
    }

    @Test
    void blocksWithFlowControlBetween() {
        send(UNIT, "10 16 01 02 03 04 05 06");
        for (int i = 1; i <= 3; i++) {
            send(TESTER, "30 01 14");
            send(UNIT, "2" + i + " 00 00 00 00 00 00 00");
        }
        assertThat(messages).hasSize(1);
        assertThat(lost).isEmpty();
    }

    @Test
    void waitingKeepsAMessageAliveAndOverflowEndsIt() {
        send(UNIT, "10 0A 01 02 03 04 05 06");
        for (int i = 0; i < 3; i++) {
            time += 0.9;
            send(TESTER, "31 00 00");
        }
        send(TESTER, "30 00 00");
        send(UNIT, "21 07 08 09 0A");
        assertThat(messages).hasSize(1);
        send(UNIT, "10 0A 01 02 03 04 05 06");
        send(TESTER, "32 00 00");
        assertThat(lost).containsExactly(IsoTpEvent.REFUSED);
    }

    @ParameterizedTest
    @CsvSource({"22", "20", "2F"})
    void wrongSequenceEndsTheMessage(String next) {
        send(UNIT, "10 20 01 02 03 04 05 06");
        send(UNIT, next + " 00 00 00 00 00 00 00");
        assertThat(lost).containsExactly(IsoTpEvent.OUT_OF_SEQUENCE);
        send(UNIT, "21 00 00 00 00 00 00 00");
        assertThat(lost).containsExactly(IsoTpEvent.OUT_OF_SEQUENCE, IsoTpEvent.STRAY);
        assertThat(messages).isEmpty();
    }

    @Test
    void aSecondOfSilenceEndsTheMessage() {
        send(UNIT, "10 14 01 02 03 04 05 06");
        send(TESTER, "30 00 00");
        time += IsoTpListener.SILENCE - 0.002;
        send(UNIT, "21 00 00 00 00 00 00 00");
        assertThat(lost).isEmpty();
        // Other frames in between, so that the look for what is overdue was a moment ago.
        time += 0.9;
        send(0x123, "01 3E");
        time += 0.12;
        send(UNIT, "22 00 00 00 00 00 00 00");
        assertThat(lost).containsExactly(IsoTpEvent.SILENT);
        assertThat(messages).containsExactly("123 3E");
    }

    @Test
    void interruptedMessagesAreCounted() {
        send(UNIT, "10 14 01 02 03 04 05 06");
        send(UNIT, "10 08 01 02 03 04 05 06");
        send(UNIT, "02 50 03");
        send(UNIT, "10 08 01 02 03 04 05 06");
        assertThat(lost).containsExactly(IsoTpEvent.INTERRUPTED, IsoTpEvent.INTERRUPTED);
        assertThat(listener.count(IsoTpEvent.UNFINISHED)).isEqualTo(1);
        assertThat(listener.count(IsoTpEvent.INTERRUPTED)).isEqualTo(2);
        assertThat(listener.count(IsoTpEvent.COMPLETE)).isEqualTo(1);
    }

    @Test
    void messagesOfManySendersAtOnce() {
        for (int id = 0x700; id < 0x780; id++) {
            send(id, "10 08 01 02 03 04 05 " + String.format("%02X", id & 0xFF));
        }
        for (int id = 0x77F; id >= 0x700; id--) {
            send(id, "21 07 08");
        }
        assertThat(messages).hasSize(0x80).contains("733 0102030405330708");
        assertThat(lost).isEmpty();
    }

    @Test
    void sameIdentifierOnTwoNetworks() {
        Frame frame = new Frame();
        byte[] first = HexFormat.of().parseHex("1008010203040506");
        byte[] next = HexFormat.of().parseHex("210708");
        for (int bus = 0; bus < 2; bus++) {
            listener.take(frame.set(0, bus, UNIT, false, first, 0, 8));
        }
        listener.take(frame.set(0, 2, UNIT, true, first, 0, 8));
        for (int bus = 1; bus >= 0; bus--) {
            listener.take(frame.set(0, bus, UNIT, false, next, 0, 3));
        }
        assertThat(messages).hasSize(2);
        assertThat(lost).isEmpty();
    }

    @Test
    void extendedAddressing() {
        listener = new IsoTpListener(Addressing.EXTENDED, sink);
        send(0x6F1, "12 03 22 F1 90");
        send(0x612, "F1 10 09 62 F1 90 01 02");
        send(0x613, "F1 10 07 62 F1 90 07 08");
        send(0x612, "F1 21 03 04 05 06");
        send(0x613, "F1 21 09 0A");
        assertThat(messages).containsExactly("6F1 22F190", "612 62F190010203040506", "613 62F1900708090A");
        send(0x6F1, "12 06 01 02 03 04 05 06");
        send(0x6F1, "12 07 01 02 03 04 05 06");
        assertThat(lost).containsExactly(IsoTpEvent.MALFORMED);
    }

    @Test
    void flowControlOfIdentifiersOfTwentyNineBits() {
        byte[] first = HexFormat.of().parseHex("1008010203040506");
        Frame frame = new Frame();
        listener.take(frame.set(0, 0, 0x18DAF110, true, first, 0, 8));
        listener.take(frame.set(0, 0, 0x18DA11F1, true, new byte[] {0x32, 0, 0}, 0, 3));
        assertThat(lost).isEmpty();
        listener.take(frame.set(0, 0, 0x18DA10F1, true, new byte[] {0x32, 0, 0}, 0, 3));
        assertThat(lost).containsExactly(IsoTpEvent.REFUSED);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "00", // no length
                "08 01 02 03 04 05 06 07", // more than there is
                "03 01 02", // cut short
                "10 07 01 02 03 04 05 06", // would have fitted into one frame
                "10 14 01 02", // a first frame is full
                "10 00 00 00 0F FF 01 02", // 32 bits for what 12 hold
                "33 00 00", // no such flow state
                "30 00", // cut short
                "40 00",
                "01 02 03 04 05 06 07 08 09" // long frames have their length in the second byte
            })
    void noFramesOfThisTransport(String frame) {
        send(UNIT, frame);
        assertThat(messages).isEmpty();
        assertThat(lost).containsExactly(IsoTpEvent.MALFORMED);
    }

    @Test
    void noFrameAtAll() {
        listener.take(new Frame().set(0, 0, 1, false, new byte[0], 0, 0));
        assertThat(lost).containsExactly(IsoTpEvent.MALFORMED);
    }

    /** Two gigabytes promised: nothing is reserved, its frames are no strays, and the next message is read. */
    @Test
    void tooLongToKeep() {
        send(UNIT, "10 00 80 00 00 00 01 02");
        send(UNIT, "21 00 00 00 00 00 00 00");
        send(UNIT, "02 50 03");
        assertThat(lost).containsExactly(IsoTpEvent.TOO_LONG);
        assertThat(messages).containsExactly("7E8 5003");
    }

    /** Many long messages at once: room for all is bounded, and comes back when they end. */
    @Test
    void roomForAllIsBounded() {
        byte[] next = new byte[64];
        int ids = 64;
        for (int id = 0; id < ids; id++) {
            send(id, "10 00 00 0F FF FF 01 02");
        }
        for (int step = 1; step <= (1 << 20) / 63; step++) {
            next[0] = (byte) (0x20 | step & 0xF);
            for (int id = 0; id < ids; id++) {
                listener.take(new Frame().set(time, 0, id, false, next, 0, 64));
            }
        }
        assertThat(listener.held()).isLessThanOrEqualTo(IsoTpListener.ROOM + 64 * IsoTpListener.SESSIONS);
        assertThat(listener.count(IsoTpEvent.TOO_LONG)).isPositive();
        time += 2;
        send(0x123, "01 3E");
        assertThat(listener.count(IsoTpEvent.UNFINISHED)).isZero();
        assertThat(listener.held()).isLessThanOrEqualTo(64 * ids);
    }

    @Test
    void theQuietestGivesWay() {
        for (int id = 0; id <= IsoTpListener.SESSIONS; id++) {
            send(0x300 + id, "10 08 01 02 03 04 05 06");
        }
        assertThat(lost).containsExactly(IsoTpEvent.DISPLACED);
        send(0x300, "21 07 08");
        send(0x301, "21 07 08");
        assertThat(messages).containsExactly("301 0102030405060708");
    }

    /** A million frames of noise: none throws, and what is promised is never reserved. */
    @Test
    void noise() {
        int[] wrong = new int[1];
        Random random = new Random(20250101);
        byte[] data = new byte[64];
        Frame frame = new Frame();
        for (Addressing addressing : Addressing.values()) {
            listener = new IsoTpListener(addressing, new IsoTpSink() {
                @Override
                public void message(IsoTpMessage message) {
                    wrong[0] += message.at(message.length() - 1) < 0 ? 1 : 0;
                }
            });
            for (int i = 0; i < 500_000; i++) {
                random.nextBytes(data);
                data[addressing.bytes] &= 0x3F;
                int length = random.nextInt(8) == 0 ? random.nextInt(65) : random.nextInt(9);
                time += random.nextInt(1000) == 0 ? -random.nextDouble() : 0.001 * random.nextDouble();
                listener.take(frame.set(time, 0, random.nextInt(0x800), false, data, 0, length));
            }
            assertThat(wrong).containsExactly(0);
            assertThat(listener.count(IsoTpEvent.COMPLETE)).isPositive();
            assertThat(listener.count(IsoTpEvent.DISPLACED)).isPositive();
            assertThat(listener.held()).isLessThan(IsoTpListener.SESSIONS * 4096 + 1);
        }
    }

    private static byte[] bytes(int length) {
        byte[] bytes = new byte[length];
        new Random(length).nextBytes(bytes);
        return bytes;
    }

    /** A sender written from the standard, for the test alone. */
    private void sendAll(int id, byte[] message, int width) {
        byte[] frame = new byte[width];
        int head = message.length <= 0xFFF ? 2 : 6;
        if (head == 2) {
            frame[0] = (byte) (0x10 | message.length >> 8);
            frame[1] = (byte) message.length;
        } else {
            frame[0] = 0x10;
            for (int i = 0; i < 4; i++) {
                frame[2 + i] = (byte) (message.length >> 24 - 8 * i);
            }
        }
        System.arraycopy(message, 0, frame, head, width - head);
        send(id, frame, width);
        int sent = width - head;
        for (int sequence = 1; sent < message.length; sequence++) {
            int piece = Math.min(width - 1, message.length - sent);
            Arrays.fill(frame, (byte) 0xAA);
            frame[0] = (byte) (0x20 | sequence & 0xF);
            System.arraycopy(message, sent, frame, 1, piece);
            send(id, frame, width);
            sent += piece;
        }
    }

    private void send(int id, String hex) {
        byte[] data = HexFormat.of().parseHex(hex.replace(" ", ""));
        send(id, data, data.length);
    }

    private void send(int id, byte[] data, int length) {
        time += 0.001;
        listener.take(new Frame().set(time, 0, id, false, data, 0, length));
    }
}
