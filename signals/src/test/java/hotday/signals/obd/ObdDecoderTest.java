package hotday.signals.obd;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.core.finding.Finding;
import hotday.signals.frame.Frame;
import hotday.signals.frame.SampleSink;
import hotday.signals.frame.SampleState;
import hotday.signals.isotp.IsoTpEvent;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ObdDecoderTest {
    /** Printed examples are rounded to three digits. */
    private static final double PRINTED = 5e-4;

    private static final int UNIT = 0x7E8;

    private final ObdDecoder decoder = new ObdDecoder();
    private final Map<String, Double> values = new LinkedHashMap<>();
    private final Map<String, String> texts = new LinkedHashMap<>();
    private final List<String> units = new ArrayList<>();
    private final SampleSink heard = new SampleSink() {
        private final List<String> names = new ArrayList<>();

        @Override
        public int signal(String name, String unit) {
            if (!names.contains(name)) {
                names.add(name);
                units.add(unit);
            }
            return names.indexOf(name);
        }

        @Override
        public void sample(double time, int signal, double value, SampleState state) {
            assertThat(state).isEqualTo(SampleState.VALID);
            values.put(names.get(signal), value);
        }

        @Override
        public void text(double time, int signal, String value) {
            texts.put(names.get(signal), value);
        }
    };

    private double time;

    /** Public tables of SAE J1979; values recomputed from their formulas, that of the vehicle speed printed there. */
    @ParameterizedTest
    @CsvSource({
        "03 41 05 7B, CoolantTemperature, 83, degC",
        "04 41 0C 1A F8, EngineSpeed, 1726, rpm",
        "04 41 10 01 A4, AirMassFlow, 4.20, g/s",
        "04 41 42 36 37, ModuleVoltage, 13.879, V",
        "03 41 46 4B, AmbientAirTemperature, 35, degC",
        "03 41 5C 96, OilTemperature, 110, degC",
        "04 41 5E 00 C8, FuelRate, 10, L/h",
        "04 41 1F 02 58, TimeSinceStart, 600, s",
        "03 41 2F 99, FuelLevel, 60, %",
        "03 41 0D 12, VehicleSpeed, 18, km/h",
        "03 41 04 80, CalculatedLoad, 50.196, %",
        "03 41 0B 21, IntakeManifoldPressure, 33, kPa",
        "03 41 0E 94, TimingAdvance, 10, deg",
        "03 41 0F 41, IntakeAirTemperature, 25, degC",
        "03 41 11 2D, ThrottlePosition, 17.647, %",
        "03 41 33 62, BarometricPressure, 98, kPa",
        "04 41 43 00 40, AbsoluteLoad, 25.098, %",
        "03 41 49 26, AcceleratorPedalPositionD, 14.902, %"
    })
    void examples(String frame, String name, double value, String unit) {
        assertThat(send(UNIT, frame)).isTrue();
        assertThat(values).containsOnlyKeys("OBD." + name + "@7E8");
        assertThat(values.get("OBD." + name + "@7E8")).isCloseTo(value, within(PRINTED));
        assertThat(units).containsExactly(unit);
    }

    /** Six parameters in one answer over three frames, one of them bits only. */
    @Test
    void severalParametersInOneAnswer() {
        send(0x7DF, "07 01 05 0C 0D 03 42 46");
        send(UNIT, "10 10 41 05 7B 0C 1A F8");
        send(0x7E0, "30 00 00");
        send(UNIT, "21 0D 12 03 02 00 42 36");
        assertThat(values).isEmpty();
        send(UNIT, "22 37 46 4B");
        assertThat(values)
                .containsEntry("OBD.CoolantTemperature@7E8", 83.0)
                .containsEntry("OBD.EngineSpeed@7E8", 1726.0)
                .containsEntry("OBD.VehicleSpeed@7E8", 18.0)
                .containsEntry("OBD.ModuleVoltage@7E8", 13.879)
                .containsEntry("OBD.AmbientAirTemperature@7E8", 35.0)
                .hasSize(5);
        assertThat(decoder.findings()).isEmpty();
    }

    /** The same, one byte shorter than its last parameter needs: what is whole counts, the rest is told. */
    @Test
    void lastParameterCutShort() {
        send(UNIT, "10 0F 41 05 7B 0C 1A F8");
        send(UNIT, "21 0D 12 03 02 00 42 36");
        send(UNIT, "22 37 46");
        assertThat(values).hasSize(4).doesNotContainKey("OBD.AmbientAirTemperature@7E8");
        assertThat(decoder.findings()).extracting(Finding::key).containsExactly("obd-answer-not-understood");
    }

    @Test
    void unitsAreKeptApart() {
        send(0x7E8, "03 41 05 7B");
        send(0x7E9, "03 41 05 50");
        byte[] data = HexFormat.of().parseHex("03410532");
        decoder.decode(new Frame().set(0, 0, 0x18DAF110, true, data, 0, 4), heard);
        assertThat(values)
                .containsEntry("OBD.CoolantTemperature@7E8", 83.0)
                .containsEntry("OBD.CoolantTemperature@7E9", 40.0)
                .containsEntry("OBD.CoolantTemperature@18DAF110", 10.0);
    }

    /** A7 is parameter 01, D0 is 20: 05 and 0C are supported here, 0D is not. */
    @Test
    void whatTheMaskDeniesIsTold() {
        send(UNIT, "06 41 00 08 10 00 00");
        send(UNIT, "03 41 05 7B");
        send(UNIT, "04 41 0C 1A F8");
        assertThat(decoder.findings()).isEmpty();
        send(UNIT, "03 41 0D 12");
        send(0x7E9, "03 41 0D 12");
        send(UNIT, "03 41 46 4B");
        assertThat(decoder.findings()).extracting(Finding::key).containsExactly("obd-value-denied");
        assertThat(decoder.findings().get(0).values())
                .containsEntry("unit", "7E8")
                .containsEntry("pids", "0D");
    }

    @Test
    void lastBitOfAMask() {
        send(UNIT, "06 41 40 00 00 00 20");
        send(UNIT, "03 41 5B 80");
        assertThat(decoder.findings()).extracting(Finding::key).containsExactly("obd-from-memory");
        send(UNIT, "03 41 5C 80");
        assertThat(decoder.findings()).extracting(Finding::key).contains("obd-value-denied");
    }

    @ParameterizedTest
    @CsvSource({"03 41 0C 1A", "03 41 C1 00", "01 41", "02 41 05", "06 41 05 7B C1 00 00", "05 41 00 08 10 00"})
    void answersCutShortOrUnknown(String frame) {
        send(UNIT, frame);
        assertThat(decoder.findings()).extracting(Finding::key).containsExactly("obd-answer-not-understood");
    }

    /** Only the units that the law names are taken for such: others use the same bytes for something else. */
    @Test
    void otherIdentifiers() {
        send(0x7C8, "03 41 05 7B");
        assertThat(values).isEmpty();
        assertThat(send(0x123, "03 41 05 7B")).isFalse();
        Frame frame = new Frame();
        assertThat(decoder.name(frame.set(0, 0, 0x123, false, new byte[0], 0, 0)))
                .isEmpty();
        assertThat(decoder.name(frame.set(0, 0, 0x7C8, false, new byte[0], 0, 0)))
                .isEqualTo("diagnosis");
        assertThat(decoder.findings()).isEmpty();
    }

    @Test
    void vehicleTexts() {
        send(0x7DF, "02 09 02");
        send(UNIT, "10 14 49 02 01 57 30 4C");
        send(UNIT, "21 30 30 30 30 34 33 4D");
        send(UNIT, "22 42 35 34 31 33 32 36");
        send(UNIT, "10 23 49 04 02 41 42 43");
        send(UNIT, "21 31 00 00 00 00 00 00");
        send(UNIT, "22 00 00 00 00 00 00 44");
        send(UNIT, "23 45 46 32 20 20 20 20");
        send(UNIT, "24 20 20 20 20 20 20 20");
        send(UNIT, "25 20");
        send(UNIT, "07 49 06 01 1A 2B 3C 4D");
        assertThat(texts)
                .containsEntry("OBD.VehicleIdentification@7E8", "W0L000043MB541326")
                .containsEntry("OBD.Calibration@7E8", "ABC1 DEF2")
                .containsEntry("OBD.CalibrationVerification@7E8", "1A2B3C4D");
    }

    @Test
    void dataByIdentifier() {
        send(0x7E0, "03 22 F1 90");
        send(UNIT, "04 62 F1 90 57");
        send(0x7E0, "05 22 01 0A 01 10");
        send(UNIT, "07 62 01 0A A6 01 10 8C");
        send(0x7E0, "05 2F 9B 00 03 3C");
        send(UNIT, "05 6F 9B 00 03 0C");
        assertThat(texts)
                .containsEntry("UDS.F190@7E8", "57")
                .containsEntry("UDS.010A@7E8", "A6")
                .containsEntry("UDS.0110@7E8", "8C")
                .containsEntry("UDS.9B00.control@7E8", "adjusted 0C");
        assertThat(decoder.findings()).isEmpty();
    }

    @Test
    void pendingAnswers() {
        send(0x7E0, "05 2F 9B 00 03 3C");
        send(UNIT, "03 7F 2F 78");
        send(UNIT, "03 7F 2F 78");
        assertThat(decoder.findings()).extracting(Finding::key).containsExactly("diagnosis-still-pending");
        send(UNIT, "05 6F 9B 00 03 0C");
        assertThat(decoder.findings()).isEmpty();
        send(UNIT, "03 7F 2F 78");
        send(UNIT, "03 7F 2F 22");
        assertThat(decoder.findings()).extracting(Finding::key).containsExactly("diagnosis-refused");
        assertThat(decoder.findings().get(0).values())
                .containsEntry("service", 0x2F)
                .containsEntry("code", 0x22)
                .containsEntry("count", 1L);
    }

    @Test
    void silentAddresses() {
        send(0x7E0, "03 22 F1 90");
        send(0x7E1, "03 22 F1 90");
        send(0x7E9, "03 7F 22 31");
        send(0x7E2, "02 3E 80");
        send(0x7DF, "02 01 00");
        send(0x7EA, "06 41 00 08 10 00 00");
        assertThat(decoder.findings())
                .filteredOn(f -> f.key().equals("diagnosis-no-answer"))
                .extracting(f -> f.values().get("addresses"))
                .containsExactly(List.of("7E0"));
    }

    @Test
    void table() {
        List<Pid> pids = PidTable.shipped();
        assertThat(pids).extracting(Pid::number).doesNotHaveDuplicates().isSorted();
        assertThat(pids).extracting(Pid::name).doesNotHaveDuplicates();
        for (Pid pid : pids) {
            assertThat(pid.first() + pid.count()).as(pid.name()).isLessThanOrEqualTo(pid.length());
            assertThat(pid.number() % 32).as(pid.name()).isNotZero();
            assertThat(pid.name()).matches("[A-Z][A-Za-z0-9]+");
        }
    }

    /** A million frames of noise on the identifiers of diagnosis. */
    @Test
    void noise() {
        Random random = new Random(20250104);
        byte[] data = new byte[8];
        Frame frame = new Frame();
        int[] wrong = new int[1];
        SampleSink counting = new SampleSink() {
            private int numbers;

            @Override
            public int signal(String name, String unit) {
                return numbers++;
            }

            @Override
            public void sample(double time, int signal, double value, SampleState state) {
                wrong[0] += Double.isFinite(value) ? 0 : 1;
            }

            @Override
            public void text(double time, int signal, String value) {
                wrong[0] += value.isEmpty() ? 1 : 0;
            }
        };
        for (int i = 0; i < 1_000_000; i++) {
            random.nextBytes(data);
            if (random.nextBoolean()) {
                data[0] = (byte) random.nextInt(8);
                data[1] = new byte[] {0x41, 0x49, 0x62, 0x6F, 0x7F, 0x22, 0x01}[random.nextInt(7)];
            }
            boolean extended = random.nextInt(4) == 0;
            int id = extended ? 0x18DA0000 | random.nextInt(0x20000) : 0x700 + random.nextInt(0x100);
            int length = random.nextInt(4) == 0 ? random.nextInt(9) : 8;
            decoder.decode(frame.set(i * 1e-5, random.nextInt(2), id, extended, data, 0, length), counting);
        }
        assertThat(wrong).containsExactly(0);
        assertThat(decoder.transport().count(IsoTpEvent.COMPLETE)).isPositive();
        assertThat(decoder.findings())
                .hasSizeLessThan(2000)
                .extracting(Finding::key)
                .contains("diagnosis-refused-more");
    }

    private boolean send(int id, String hex) {
        byte[] data = HexFormat.of().parseHex(hex.replace(" ", ""));
        time += 0.001;
        return decoder.decode(new Frame().set(time, 0, id, false, data, 0, data.length), heard);
    }
}
