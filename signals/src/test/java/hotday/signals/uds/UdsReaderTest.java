package hotday.signals.uds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import hotday.signals.isotp.IsoTpMessage;
import java.time.Duration;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class UdsReaderTest {
    /** Example of ISO 14229-1, its text from memory. */
    @Test
    void identificationNumber() {
        assertThat(UdsReader.asked(message("22 F1 90"))).containsExactly(0xF190);
        assertThat(answers("62 F1 90 57 30 4C 30 30 30 30 34 33 4D 42 35 34 31 33 32 36", 0xF190))
                .containsExactly(new UdsAnswer.Data(0xF190, "57304C3030303034334D42353431333236"));
    }

    /** Flap of an air inlet, asked for 60 % and at 12 % so far: example of ISO 14229-1, from memory. */
    @Test
    void actuatorTest() {
        assertThat(answers("6F 9B 00 03 0C")).containsExactly(new UdsAnswer.Control(0x9B00, 3, "0C"));
        assertThat(new UdsAnswer.Control(0x9B00, 3, "0C").words()).isEqualTo("adjusted");
        assertThat(answers("6F 9B 00 00")).containsExactly(new UdsAnswer.Control(0x9B00, 0, ""));
        assertThat(new UdsAnswer.Control(0x9B00, 0, "").words()).isEqualTo("given back");
        assertThat(UdsReader.isRequest(message("2F 9B 00 03 3C"))).isTrue();
        assertThat(answers("2F 9B 00 03 3C")).isEmpty();
    }

    @Test
    void refusals() {
        assertThat(answers("7F 22 31")).containsExactly(new UdsAnswer.Refused(0x22, 0x31));
        assertThat(new UdsAnswer.Refused(0x22, 0x31).words()).isEqualTo("out of range");
        assertThat(new UdsAnswer.Refused(0x22, 0x31).isPending()).isFalse();
        assertThat(new UdsAnswer.Refused(0x2F, 0x78).isPending()).isTrue();
        assertThat(new UdsAnswer.Refused(0x2F, 0x13).words()).contains("length");
        assertThat(new UdsAnswer.Refused(0x2F, 0x22).words()).contains("conditions");
        assertThat(new UdsAnswer.Refused(0x2F, 0x33).words()).contains("locked");
        assertThat(new UdsAnswer.Refused(0x2F, 0xFE).words()).isEqualTo("reason FE");
        assertThat(answers("7F 22")).isEmpty();
    }

    @Test
    void severalIdentifiersAreCutApartWhereTheyWereAskedFor() {
        assertThat(UdsReader.asked(message("22 01 0A 01 10 F4 05"))).containsExactly(0x010A, 0x0110, 0xF405);
        assertThat(answers("62 01 0A A6 66 01 10 8C F4 05 7B", 0x010A, 0x0110, 0xF405))
                .containsExactly(
                        new UdsAnswer.Data(0x010A, "A666"),
                        new UdsAnswer.Data(0x0110, "8C"),
                        new UdsAnswer.Data(0xF405, "7B"));
    }

    /** The second identifier stands there twice: nobody can know which of the two is data. */
    @Test
    void severalIdentifiersThatCannotBeCutApart() {
        assertThat(answers("62 01 0A A6 01 10 8C 01 10 8C", 0x010A, 0x0110))
                .containsExactly(new UdsAnswer.Several(List.of(0x010A, 0x0110), "010AA601108C01108C"));
        assertThat(answers("62 01 0A A6", 0x010A, 0x0110)).hasOnlyElementsOfType(UdsAnswer.Several.class);
        assertThat(answers("62 01 0A 01 10", 0x010A, 0x0110)).hasOnlyElementsOfType(UdsAnswer.Several.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"62", "62 F1", "62 F1 90", "6F 9B 00", "6F", "7F"})
    void cutShort(String hex) {
        assertThat(answers(hex)).isEmpty();
    }

    @Test
    void requestsThatAreNotWhole() {
        assertThat(UdsReader.asked(message("22 F1"))).isEmpty();
        assertThat(UdsReader.asked(message("10 03"))).isEmpty();
    }

    @Test
    void otherServices() {
        assertThat(answers("50 03 00 32 01 F4")).containsExactly(new UdsAnswer.Done(0x10, "03003201F4"));
    }

    /** 4095 zeros, sixteen times asked for the identifier 0: the ways to cut that apart are beyond counting. */
    @Test
    void hostileAnswer() {
        byte[] zeros = new byte[4095];
        zeros[0] = 0x62;
        assertTimeout(
                Duration.ofSeconds(5),
                () -> assertThat(UdsReader.answers(
                                IsoTpMessage.of(0, 0, 0x7E8, false, zeros), Collections.nCopies(16, 0)))
                        .hasOnlyElementsOfType(UdsAnswer.Several.class));
    }

    @Test
    void noise() {
        Random random = new Random(20250103);
        for (int i = 0; i < 100_000; i++) {
            byte[] bytes = new byte[1 + random.nextInt(20)];
            random.nextBytes(bytes);
            bytes[0] = new byte[] {0x62, 0x6F, 0x7F, 0x22, bytes[0]}[random.nextInt(5)];
            IsoTpMessage message = IsoTpMessage.of(0, 0, 0x7E8, false, bytes);
            UdsReader.answers(message, UdsReader.asked(message));
            List<UdsAnswer> answers = UdsReader.answers(message, List.of(random.nextInt(4), random.nextInt(4)));
            assertThat(answers.isEmpty()).isEqualTo((bytes[0] & 0x40) == 0 || bytes.length < least(bytes[0]));
        }
    }

    private static int least(byte first) {
        return switch (first) {
            case 0x62, 0x6F -> 4;
            case 0x7F -> 3;
            default -> 1;
        };
    }

    private static List<UdsAnswer> answers(String hex, Integer... asked) {
        return UdsReader.answers(message(hex), List.of(asked));
    }

    private static IsoTpMessage message(String hex) {
        return IsoTpMessage.of(0, 0, 0x7E8, false, HexFormat.of().parseHex(hex.replace(" ", "")));
    }
}
