package hotday.signals.dbc;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.signals.frame.Frame;
import hotday.signals.frame.SampleSink;
import hotday.signals.frame.SampleState;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class NetworkDecoderTest {
    private static final String ENGINE = """
            BO_ 2364540158 EEC1: 8 x
             SG_ EngineSpeed : 24|16@1+ (0.125,0) [0|0] "rpm" x
             SG_ Starter : 48|4@1+ (1,0) [0|0] "" x
            BO_ 291 Plain: 2 x
             SG_ A : 0|8@1+ (1,-40) [0|0] "degC" x
            """;
    private static final String MARK = "BA_DEF_ BO_ \"VFrameFormat\" ENUM \"StandardCAN\",\"J1939PG\";\n"
            + "BA_DEF_DEF_ \"VFrameFormat\" \"StandardCAN\";\nBA_ \"VFrameFormat\" BO_ 2364540158 1;\n";

    private final List<String> names = new ArrayList<>();
    private final List<String> seen = new ArrayList<>();
    private final SampleSink sink = new SampleSink() {
        @Override
        public int signal(String name, String unit) {
            names.add(name + " " + unit);
            return names.size() - 1;
        }

        @Override
        public void sample(double time, int signal, double value, SampleState state) {
            seen.add(names.get(signal) + " " + value + " " + state.word());
        }

        @Override
        public void text(double time, int signal, String value) {
            throw new AssertionError(value);
        }
    };

    private static DbcFile file(String text) {
        return DbcFile.parse("net", text.getBytes(StandardCharsets.UTF_8));
    }

    private static Frame frame(int id, boolean extended, int... bytes) {
        byte[] data = new byte[bytes.length];
        for (int i = 0; i < bytes.length; i++) {
            data[i] = (byte) bytes[i];
        }
        return new Frame().set(1.0, 0, id, extended, data, 0, data.length);
    }

    private static Frame engine(int id) {
        // published frame of group 61444: 0x15E0 is 700 rpm
        return frame(id, true, 0xFF, 0x7D, 0x7D, 0xE0, 0x15, 0xFF, 0xF0, 0xFF);
    }

    @Test
    void oneMessageStandsForAllSendersWhereTheFileSaysSo() {
        NetworkDecoder decoder = new NetworkDecoder(List.of(file(ENGINE + MARK)), false);
        assertThat(decoder.decode(engine(0x0CF00400), sink)).isTrue();
        assertThat(decoder.decode(engine(0x0CF00421), sink)).isTrue();
        assertThat(decoder.decode(engine(0x18F004FE), sink)).isTrue();
        assertThat(seen)
                .containsExactly(
                        "EEC1.EngineSpeed@00 rpm 700.0 valid",
                        "EEC1.Starter@00  0.0 valid",
                        "EEC1.EngineSpeed@21 rpm 700.0 valid",
                        "EEC1.Starter@21  0.0 valid",
                        "EEC1.EngineSpeed@FE rpm 700.0 valid",
                        "EEC1.Starter@FE  0.0 valid");
        assertThat(decoder.name(engine(0x0CF00421))).isEqualTo("EEC1");
        assertThat(decoder.decode(engine(0x0CF00500), sink)).isFalse();
        assertThat(decoder.decode(frame(0x123, true, 1, 2), sink)).isFalse();
    }

    @Test
    void withoutThatIdentifiersMustBeEqual() {
        NetworkDecoder decoder = new NetworkDecoder(List.of(file(ENGINE)), false);
        assertThat(decoder.decode(engine(0x0CF00400), sink)).isFalse();
        assertThat(decoder.decode(engine(0x0CF004FE), sink)).isTrue();
        assertThat(decoder.decode(frame(291, false, 50), sink)).isTrue();
        assertThat(seen).contains("EEC1.EngineSpeed rpm 700.0 valid", "Plain.A degC 10.0 valid");
        NetworkDecoder said = new NetworkDecoder(List.of(file(ENGINE)), true);
        assertThat(said.decode(engine(0x0CF00400), sink)).isTrue();
        assertThat(seen).contains("EEC1.EngineSpeed@00 rpm 700.0 valid");
    }

    @Test
    void codesAreNoValues() {
        NetworkDecoder decoder = new NetworkDecoder(List.of(file(ENGINE + MARK)), false);
        decoder.decode(frame(0x0CF00400, true, 0, 0, 0, 0xFF, 0xFF, 0, 0x0F), sink);
        decoder.decode(frame(0x0CF00400, true, 0, 0, 0, 0x00, 0xFE, 0, 0x0E), sink);
        decoder.decode(frame(291, false, 255), sink);
        assertThat(seen)
                .containsExactly(
                        "EEC1.EngineSpeed@00 rpm NaN not-available",
                        "EEC1.Starter@00  NaN not-available",
                        "EEC1.EngineSpeed@00 rpm NaN error",
                        "EEC1.Starter@00  NaN error",
                        "Plain.A degC 215.0 valid");
    }

    @Test
    void longFieldsHaveNoCodeButAllOnes() {
        String name = "BO_ 2566844672 Claim: 8 x\n SG_ Name : 0|64@1+ (1,0) [0|0] \"\" x\n";
        NetworkDecoder decoder = new NetworkDecoder(List.of(file(name)), true);
        decoder.decode(frame(0x18FEF100, true, 0, 0, 0, 0, 0, 0, 0, 0xFE), sink);
        decoder.decode(frame(0x18FEF100, true, 255, 255, 255, 255, 255, 255, 255, 255), sink);
        assertThat(seen)
                .containsExactly("Claim.Name@00  1.8302628885633696E19 valid", "Claim.Name@00  NaN not-available");
    }

    @Test
    void destinationsDoNotMatterAndSendersOfTheirOwnStayTheirOwn() {
        String fan = "BO_ 2564882430 Request: 8 x\n SG_ Speed : 0|8@1+ (0.4,0) [0|0] \"%\" x\n";
        NetworkDecoder decoder = new NetworkDecoder(List.of(file(fan)), true);
        // 0x18E0FFFE is group 57344, below 240: the third byte is the destination
        assertThat(decoder.decode(frame(0x18E00321, true, 0xC8), sink)).isTrue();
        assertThat(seen).containsExactly("Request.Speed@21 % 80.0 valid");
        String two = "BO_ 2566844672 FromEngine: 8 x\n SG_ A : 0|8@1+ (1,0) [0|0] \"\" x\n"
                + "BO_ 2566844675 FromGearbox: 8 x\n SG_ B : 0|8@1+ (1,0) [0|0] \"\" x\n";
        NetworkDecoder own = new NetworkDecoder(List.of(file(two)), true);
        assertThat(own.decode(frame(0x18FEF100, true, 1), sink)).isTrue();
        assertThat(own.decode(frame(0x18FEF103, true, 1), sink)).isTrue();
        assertThat(own.decode(frame(0x18FEF105, true, 1), sink)).isFalse();
        assertThat(names).contains("FromEngine.A@00 ", "FromGearbox.B@03 ");
    }

    @Test
    void theFirstOfSeveralFilesHolds() {
        NetworkDecoder decoder = new NetworkDecoder(
                List.of(file(ENGINE), file("BO_ 291 Other: 2 x\n SG_ A : 0|8@1+ (1,0) [0|0] \"\" x\n")), false);
        decoder.decode(frame(291, false, 50), sink);
        assertThat(seen).containsExactly("Plain.A degC 10.0 valid");
        assertThat(decoder.findings())
                .singleElement()
                .satisfies(f -> assertThat(f.key()).isEqualTo("message-in-two-files"));
    }
}
