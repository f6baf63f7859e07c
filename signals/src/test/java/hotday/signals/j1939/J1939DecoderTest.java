package hotday.signals.j1939;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.core.finding.Finding;
import hotday.signals.frame.Frame;
import hotday.signals.frame.SampleSink;
import hotday.signals.frame.SampleState;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class J1939DecoderTest {
    private final J1939Decoder decoder = new J1939Decoder();
    private final HeardSamples heard = new HeardSamples();

    /** Identifiers printed in public descriptions of the standard, taken apart by hand. */
    @ParameterizedTest
    @CsvSource({
        "0CF00400, 3, 61444, 255, 0",
        "18FEEE00, 6, 65262, 255, 0",
        "18FEF803, 6, 65272, 255, 3",
        "18FEBD00, 6, 65213, 255, 0",
        "18E0FF21, 6, 57344, 255, 33",
        "18E01721, 6, 57344, 23, 33",
        "19FEF803, 6, 130808, 255, 3",
        "1FFFFFFF, 7, 262143, 255, 255",
        "00000000, 0, 0, 0, 0"
    })
    void partsOfAnIdentifier(String hex, int priority, int group, int destination, int source) {
        int id = Integer.parseInt(hex, 16);
        assertThat(J1939Id.priority(id)).isEqualTo(priority);
        assertThat(J1939Id.group(id)).isEqualTo(group);
        assertThat(J1939Id.destination(id)).isEqualTo(destination);
        assertThat(J1939Id.source(id)).isEqualTo(source);
    }

    /** Frame printed in the manual of a generator controller: raw 15E0, which is 700 rpm; torque byte 7D, 0 %. */
    @Test
    void publishedFrame() {
        assertThat(take(0x0CF00400, "FF 7D 7D E0 15 FF F0 FF")).isTrue();
        assertThat(heard.lines)
                .containsExactly(
                        "EEC1.DriverDemandTorque@00 = 0.0 %",
                        "EEC1.ActualEngineTorque@00 = 0.0 %",
                        "EEC1.EngineSpeed@00 = 700.0 rpm",
                        "EEC1.EngineStarterMode@00 = 0.0");
    }

    /** Recomputed with the scalings of the standard. */
    @Test
    void temperaturesFanAndSpeed() {
        take(0x18FEEE00, "82 FF C0 2B FF FF FF FF");
        take(0x18FEF803, "FF FF FF FF A0 2D FF FF");
        take(0x18FEBD00, "C8 F2 80 4B FF FF FF FF");
        take(0x18FEF100, "FF 00 41 FF FF FF FF FF");
        assertThat(heard.lines)
                .contains(
                        "ET1.CoolantTemperature@00 = 90.0 degC",
                        "ET1.FuelTemperature1@00: not-available NaN",
                        "ET1.OilTemperature1@00 = 77.0 degC",
                        "TRF1.TransmissionOilTemperature@03 = 92.0 degC",
                        "FD.EstimatedFanSpeed@00 = 80.0 %",
                        "FD.FanDriveState@00 = 2.0",
                        "FD.FanSpeed@00 = 2416.0 rpm",
                        "FD.HydraulicFanMotorPressure@00: not-available NaN",
                        "CCVS.WheelBasedSpeed@00 = 65.0 km/h");
    }

    /** What a raw value says by its size. SAE J1939-71, table of transmitted values, from memory. */
    @ParameterizedTest
    @CsvSource({
        "FA, 8, VALID",
        "FB, 8, SPECIAL",
        "FC, 8, RESERVED",
        "FD, 8, RESERVED",
        "FE, 8, ERROR",
        "FF, 8, NOT_AVAILABLE",
        "FAFF, 16, VALID",
        "FB00, 16, SPECIAL",
        "FDFF, 16, RESERVED",
        "FE00, 16, ERROR",
        "FEFF, 16, ERROR",
        "FF00, 16, NOT_AVAILABLE",
        "FAFFFFFF, 32, VALID",
        "FE000000, 32, ERROR",
        "FFFFFFFF, 32, NOT_AVAILABLE",
        "D, 4, VALID",
        "E, 4, ERROR",
        "F, 4, NOT_AVAILABLE",
        "1, 2, VALID",
        "2, 2, ERROR",
        "3, 2, NOT_AVAILABLE",
        "1, 1, VALID",
        "0, 1, VALID"
    })
    void codes(String raw, int bits, SampleState expected) {
        assertThat(Spn.state(Long.parseLong(raw, 16), bits)).isEqualTo(expected);
    }

    /** 14 is "other" of this one parameter, not "error". */
    @Test
    void aCodeWithAWordIsAState() {
        take(0x18FEBD00, "FE FE 00 FE 00 FB FF FF");
        assertThat(heard.lines)
                .containsExactly(
                        "FD.EstimatedFanSpeed@00: error NaN",
                        "FD.FanDriveState@00 = 14.0",
                        "FD.FanSpeed@00: error NaN",
                        "FD.HydraulicFanMotorPressure@00: special NaN");
        heard.lines.clear();
        take(0x18FEBD00, "FF FF FF FF FF FF FF FF");
        assertThat(heard.lines).hasSize(4).allMatch(line -> line.endsWith(": not-available NaN"));
    }

    @Test
    void switchesOfTwoBits() {
        take(0x18FEE400, "FF FF C1 FF FF FF FF FF");
        take(0x18FEE400, "FF FF FE FF FF FF FF FF");
        assertThat(heard.lines)
                .containsExactly(
                        "SHUTDN.HighPressureFanSwitch@00 = 1.0",
                        "SHUTDN.RefrigerantLowPressureSwitch@00 = 0.0",
                        "SHUTDN.RefrigerantHighPressureSwitch@00 = 0.0",
                        "SHUTDN.HighPressureFanSwitch@00: error NaN",
                        "SHUTDN.RefrigerantLowPressureSwitch@00: not-available NaN",
                        "SHUTDN.RefrigerantHighPressureSwitch@00: not-available NaN");
    }

    @Test
    void sendersAndReceiversAreKeptApart() {
        take(0x18FEEE00, "82 FF FF FF FF FF FF FF");
        take(0x18FEEE01, "50 FF FF FF FF FF FF FF");
        take(0x18E0FF21, "C8");
        take(0x18E01721, "64");
        assertThat(heard.lines)
                .contains(
                        "ET1.CoolantTemperature@00 = 90.0 degC",
                        "ET1.CoolantTemperature@01 = 40.0 degC",
                        "CM1.RequestedFanSpeed@21>FF = 80.0 %",
                        "CM1.RequestedFanSpeed@21>17 = 40.0 %");
    }

    @Test
    void shortFramesHaveWhatTheyHave() {
        take(0x0CF00400, "FF 7D 7D E0");
        assertThat(heard.lines)
                .containsExactly("EEC1.DriverDemandTorque@00 = 0.0 %", "EEC1.ActualEngineTorque@00 = 0.0 %");
        assertThat(take(0x0CF00400, "")).isTrue();
    }

    @Test
    void framesAreCalledAfterTheirGroup() {
        assertThat(decoder.name(frame(0x0CF00421, ""))).isEqualTo("EEC1");
        assertThat(decoder.name(frame(0x18E01721, ""))).isEqualTo("CM1");
        assertThat(decoder.name(frame(0x1CEBFF00, ""))).isEqualTo("packets");
        assertThat(decoder.name(frame(0x18FFFF00, ""))).isEmpty();
        assertThat(decoder.name(new Frame().set(0, 0, 0x123, false, new byte[0], 0, 0)))
                .isEmpty();
    }

    @Test
    void othersAreNotKnown() {
        assertThat(take(0x18FFFF00, "00 00 00 00 00 00 00 00")).isFalse();
        assertThat(decoder.decode(new Frame().set(0, 0, 0x123, false, new byte[8], 0, 8), heard))
                .isFalse();
        assertThat(heard.lines).isEmpty();
        assertThat(decoder.findings()).isEmpty();
    }

    @Test
    void messageOfSeveralPackets() {
        take(0x1CECFF00, "20 0E 00 02 FF E3 FE 00");
        take(0x1CEBFF00, "01 20 1C FF FF FF FF FF");
        assertThat(take(0x1CEBFF00, "02 FF FF FF FF FF FF FF")).isTrue();
        assertThat(heard.lines).containsExactly("EC1.IdleSpeed@00 = 900.0 rpm");
    }

    @Test
    void identificationEndsAtAnAsterisk() {
        take(0x1CECFF00, "20 0C 00 02 FF EC FE 00");
        take(0x1CEBFF00, "01 41 42 43 31 32 33 34");
        take(0x1CEBFF00, "02 35 36 37 0A 2A FF FF");
        assertThat(heard.lines).containsExactly("VI.VehicleIdentification@00 = 'ABC1234567.'");
    }

    @Test
    void tellsWhatIsRememberedAndWhatBroke() {
        take(0x18FEBD00, "C8 F2 80 4B FF FF FF FF");
        take(0x1CEBFF00, "02 FF FF FF FF FF FF FF");
        take(0x1CECFF00, "20 0E 00 02 FF E3 FE 00");
        assertThat(decoder.findings())
                .extracting(Finding::key)
                .containsExactly("j1939-message-broken", "j1939-message-broken", "j1939-from-memory");
        assertThat(decoder.findings())
                .extracting(f -> f.values().get("event"))
                .containsExactly("UNFINISHED", "STRAY", null);
        assertThat(decoder.findings().get(2).values().get("signals"))
                .isEqualTo(List.of("FD.FanDriveState", "FD.HydraulicFanMotorPressure"));
    }

    /** Every row of the table lies in its payload, overlaps no other of its group and says where it comes from. */
    @Test
    void table() {
        List<Spn> spns = SpnTable.shipped();
        assertThat(spns).extracting(Spn::number).doesNotHaveDuplicates();
        for (Spn spn : spns) {
            assertThat(spn.confidence()).as(spn.name()).containsAnyOf("seen", Spn.FROM_MEMORY);
            assertThat(spn.name()).matches("[A-Z][A-Za-z0-9]+");
            assertThat(spn.bit() + spn.bits()).as(spn.name()).isLessThanOrEqualTo(64);
            assertThat(spns)
                    .filteredOn(other -> other != spn && other.pgn() == spn.pgn())
                    .allMatch(
                            other -> other.bit() >= spn.bit() + spn.bits() || spn.bit() >= other.bit() + other.bits());
        }
    }

    /** From the first eight bytes at once or byte by byte: the same bits. */
    @Test
    void bothWaysToTheBits() {
        Random random = new Random(20250105);
        byte[] data = new byte[12];
        for (Spn spn : SpnTable.shipped()) {
            random.nextBytes(data);
            long head = ByteBuffer.wrap(data).order(ByteOrder.LITTLE_ENDIAN).getLong(3);
            assertThat(spn.isInHead()).isTrue();
            assertThat(spn.raw(head)).as(spn.name()).isEqualTo(spn.raw(data, 3));
        }
        Spn far = new Spn(0, "G", 1, "Far", 60, 12, 1, 1, 0, "", Map.of(), "seen");
        assertThat(far.isInHead()).isFalse();
        assertThat(far.raw(HexFormat.of().parseHex("00000000000000A0CB"), 0)).isEqualTo(0xCBA);
    }

    /** A million frames of noise, many of them of the transport: none throws, no code becomes a value. */
    @Test
    void noise() {
        Random random = new Random(20250102);
        byte[] data = new byte[8];
        Frame frame = new Frame();
        long[] states = new long[SampleState.values().length];
        int[] wrong = new int[1];
        SampleSink counting = new SampleSink() {
            private int numbers;

            @Override
            public int signal(String name, String unit) {
                return numbers++;
            }

            @Override
            public void sample(double time, int signal, double value, SampleState state) {
                states[state.ordinal()]++;
                wrong[0] += Double.isNaN(value) == (state == SampleState.VALID) ? 1 : 0;
            }

            @Override
            public void text(double time, int signal, String value) {
                wrong[0] += value.length() > 1785 ? 1 : 0;
            }
        };
        int[] groups = SpnTable.shipped().stream().mapToInt(Spn::pgn).distinct().toArray();
        for (int i = 0; i < 1_000_000; i++) {
            random.nextBytes(data);
            int id = random.nextInt(1 << 29);
            int kind = random.nextInt(4);
            if (kind == 0) {
                id = 0x1CEC0000 | random.nextInt(0x10000);
                data[0] = new byte[] {16, 17, 19, 32, -1, 7}[random.nextInt(6)];
                data[2] = 0;
                data[3] = (byte) (((data[1] & 0xFF) + 6) / 7);
                data[7] = 0;
            } else if (kind == 1) {
                id = 0x1CEB0000 | random.nextInt(0x10000);
                data[0] &= 3;
            } else if (kind == 2) {
                id = 0x18000000 | groups[random.nextInt(groups.length)] << 8 | random.nextInt(256);
            }
            int length = random.nextInt(5) == 0 ? random.nextInt(9) : 8;
            decoder.decode(frame.set(i * 1e-5, random.nextInt(2), id, true, data, 0, length), counting);
        }
        assertThat(wrong).containsExactly(0);
        assertThat(states).doesNotContain(0);
        assertThat(decoder.findings())
                .extracting(Finding::key)
                .contains("j1939-too-many-senders", "j1939-message-broken");
    }

    private boolean take(int id, String hex) {
        return decoder.decode(frame(id, hex), heard);
    }

    private static Frame frame(int id, String hex) {
        byte[] data = HexFormat.of().parseHex(hex.replace(" ", ""));
        return new Frame().set(0, 0, id, true, data, 0, data.length);
    }
}
