package hotday.signals.gateway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.management.ThreadMXBean;
import hotday.core.finding.InputException;
import hotday.signals.check.Crc;
import hotday.signals.translator.Translator;
import hotday.signals.translator.Translator.Content;
import hotday.signals.translator.Translator.Reception;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A gateway at work, look by look; what is expected follows from the state machine of docs/network.md by hand. Looks come
 * every 5 ms, so that 100 ms are 20 looks; networks: 0 left, 1 right.
 */
class TranslatorTest {
    private static final int FAST = 256;
    private static final int SLOW = 512;
    private static final int CLUTCH = 640;
    private static final int WISH = 256;

    @TempDir
    private Path folder;

    private TypedNetworks typed;
    private Translator gateway;
    private int counter;

    @BeforeEach
    void aSoundSheet() {
        typed = TypedNetworks.in(folder);
    }

    private void start() {
        gateway = new Translator(SheetProgram.of(TranslationSheet.read(typed.sheet())));
    }

    private Reception receive(int network, int id, String hex) {
        byte[] data = HexFormat.of().parseHex(hex);
        return gateway.receive(network, id, false, data, 0, data.length);
    }

    /** Engine speed in steps of 0.25 rpm, counter and checksum as they should be. */
    private Reception fast(int speed) {
        return fast(speed, counter++ % 16, 0);
    }

    private Reception fast(int speed, int count, int wrong) {
        byte[] data = {(byte) speed, (byte) (speed >> 8), 1, 2, 3, 4, (byte) count, 0};
        data[7] = (byte) (Crc.CRC8_1D.of(data, 0, 7) ^ wrong);
        return gateway.receive(0, FAST, false, data, 0, 8);
    }

    private List<String> look() {
        List<String> sent = new ArrayList<>();
        gateway.look((network, id, extended, data, length) ->
                sent.add(network + " " + id + " " + HexFormat.of().formatHex(data, 0, length)));
        return sent;
    }

    /** Looks until Shown is sent once more. */
    private String shown() {
        for (int i = 0; i < 100; i++) {
            for (String frame : look()) {
                if (frame.startsWith("1 384 ")) {
                    return frame.substring(6);
                }
            }
        }
        throw new AssertionError("never sent");
    }

    /** 0 rpm, 120 degC = 160, 30 bar abs = 3000 = 0BB8, off. */
    private static final String SAFE = "0000a0b80b000000";

    @Test
    void safeValuesAreSentBeforeTheFirstFrame() {
        start();
        assertThat(look()).containsExactly("0 768 0000", "1 384 " + SAFE);
        for (int i = 1; i < 20; i++) {
            assertThat(look()).as("look %d", i).hasSize(i % 4 == 0 ? 1 : 0);
        }
        assertThat(look()).containsExactly("0 768 0000", "1 384 " + SAFE);
        assertThat(gateway.sent(0, Content.SAFE)).isEqualTo(2);
    }

    /** 1000 kPa are 10 bar; 80 degC are 120 on both sides; on is on. */
    @Test
    void valuesGetOver() {
        start();
        look();
        receive(0, SLOW, "78e8030000000000");
        receive(0, CLUTCH, "01");
        receive(1, WISH, "0100");
        for (int i = 0; i < 18; i++) {
            look();
        }
        assertThat(fast(4000)).isEqualTo(Reception.TAKEN);
        receive(0, CLUTCH, "01");
        assertThat(shown()).isEqualTo("a00f78e803010000");
    }

    @Test
    void framesWithWrongGuardsCountAsNotCome() {
        typed.change(TypedNetworks.SHEET, "counter: Alive", "counter: Alive, counter_last: 14");
        start();
        assertThat(fast(1, 3, 0)).isEqualTo(Reception.TAKEN);
        assertThat(fast(2, 4, 1)).isEqualTo(Reception.WRONG_CHECKSUM);
        assertThat(fast(3, 3, 0)).isEqualTo(Reception.WRONG_COUNTER);
        assertThat(fast(4, 15, 0)).isEqualTo(Reception.WRONG_COUNTER);
        assertThat(receive(0, FAST, "01020304050607")).isEqualTo(Reception.WRONG_CHECKSUM);
        assertThat(shown()).startsWith("0100");
        assertThat(fast(5, 6, 0)).isEqualTo(Reception.TAKEN);
        assertThat(gateway.lost(0)).isEqualTo(2);
        assertThat(gateway.received(0, Reception.WRONG_COUNTER)).isEqualTo(2);
        assertThat(gateway.received(0, Reception.WRONG_CHECKSUM)).isEqualTo(2);
        assertThat(gateway.received(0, Reception.TAKEN)).isEqualTo(2);
    }

    @Test
    void nothingComesOfFramesThatNobodyListensTo() {
        start();
        assertThat(receive(1, FAST + 1, "0102")).isEqualTo(Reception.UNKNOWN);
        assertThat(gateway.receive(0, SLOW, true, new byte[8], 0, 8)).isEqualTo(Reception.UNKNOWN);
        assertThat(gateway.receive(0, SLOW, false, new byte[12], 0, 12)).isEqualTo(Reception.UNKNOWN);
        assertThat(receive(1, SLOW, "78e8030000000000")).isEqualTo(Reception.UNKNOWN);
        assertThat(gateway.unknown()).isEqualTo(4);
        assertThat(shown()).isEqualTo(SAFE);
    }

    /** Coolant: 300 ms are 60 looks, then two frames hold it, then 120 degC are sent. Frames leave every 20 looks. */
    @Test
    void aMissingSourceIsHeldAndThenSafe() {
        start();
        look();
        receive(0, SLOW, "7800000000000000");
        List<String> coolant = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            coolant.add(shown().substring(4, 6));
        }
        // taken at look 1; sent at looks 20, 40, 60 (59 looks old) live, at 80 and 100 held
        assertThat(coolant).containsExactly("78", "78", "78", "78", "78", "a0", "a0", "a0");
        int line = 1;
        assertThat(gateway.sent(line, Content.LIVE)).isEqualTo(3);
        assertThat(gateway.sent(line, Content.HELD)).isEqualTo(2);
        receive(0, SLOW, "7900000000000000");
        assertThat(shown().substring(4, 6)).isEqualTo("79");
    }

    /** 254 says error: the safe value at once. 255: a row of its own. 253 lies outside the limits: as if none had come. */
    @Test
    void specialValuesAndThoseOutsideTheLimits() {
        start();
        receive(0, SLOW, "7800000000000000");
        assertThat(shown().substring(4, 6)).isEqualTo("78");
        receive(0, SLOW, "fd00000000000000");
        assertThat(shown().substring(4, 6)).isEqualTo("78");
        receive(0, SLOW, "ff00000000000000");
        assertThat(shown().substring(4, 6)).isEqualTo("ff");
        receive(0, SLOW, "fe00000000000000");
        assertThat(shown().substring(4, 6)).isEqualTo("a0");
    }

    @Test
    void aSignalBehindTheEndOfItsFrameIsNotThere() {
        start();
        receive(0, SLOW, "7801");
        assertThat(shown()).isEqualTo("000078b80b000000");
    }

    /** Asked is sent every 20 ms; on change, no closer than 10 ms. */
    @Test
    void changesAreSentAtOnceButNotTooClose() {
        typed.change(TypedNetworks.SHEET, "Asked: {every: 20 ms}", "Asked: {every: 100 ms, on_change: 10 ms}");
        start();
        List<String> asked = new ArrayList<>();
        for (int i = 0; i < 50; i++) {
            if (i == 5 || i == 6 || i == 40) {
                receive(1, WISH, i == 6 ? "0000" : "0100");
            } else if (i > 6) {
                receive(1, WISH, i < 40 ? "0000" : "0100");
            } else if (i == 4) {
                receive(1, WISH, "0000");
            }
            int at = i;
            look().stream().filter(f -> f.startsWith("0 768 ")).forEach(f -> asked.add(at + ":" + f.substring(6)));
        }
        // changed at look 5 (sent), back at 6 (too close, sent at 7), then 20 looks, then changed
        assertThat(asked).containsExactly("0:0000", "5:0100", "7:0000", "27:0000", "40:0100");
    }

    @Test
    void theGatewayCountsAndGuardsWhatItSends() {
        typed.change(
                TypedNetworks.LEFT,
                " SG_ Request : 0|2@1+ (1,0) [0|3] \"\" ECM\nVAL_ 512",
                " SG_ Request : 0|2@1+ (1,0) [0|3] \"\" ECM\n SG_ Alive : 4|4@1+ (1,0) [0|15] \"\" ECM\n SG_ Crc : 15|8@0+ (1,0) [0|255] \"\" ECM\nVAL_ 512");
        typed.change(
                TypedNetworks.SHEET,
                "Asked: {every: 20 ms}",
                "Asked: {every: 20 ms, counter: Alive, counter_first: 1, counter_last: 7, counter_step: 3,"
                        + " checksum: Crc, checksum_rule: {kind: sum, xor: 0xFF, data_id: [0x12, 200], data_id_at: last}}");
        start();
        List<String> asked = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            receive(1, WISH, "0100");
            look().stream().filter(f -> f.startsWith("0 768 ")).forEach(f -> asked.add(f.substring(6)));
        }
        // 1, 4, 7, 1: by hand 0xFF ^ (0x11 + 0x12 + 0xC8) = 0xFF ^ 0xEB = 0x14, ...
        assertThat(asked).containsExactly("1114", "41e4", "71b4", "1114");
    }

    @Test
    void multiplexedSignalsAreTakenWhereTheyAre() {
        typed.change(
                TypedNetworks.LEFT,
                " SG_ Coolant : 0|8@1+",
                " SG_ Page : 40|4@1+ M (1,0) [0|15] \"\" GATE\n SG_ Coolant m3 : 0|8@1+");
        typed.change(TypedNetworks.LEFT, "SG_ Page : 40|4@1+ M", "SG_ Page M : 40|4@1+");
        start();
        receive(0, SLOW, "7800000000030000");
        assertThat(shown().substring(4, 6)).isEqualTo("78");
        receive(0, SLOW, "8000000000040000");
        assertThat(shown().substring(4, 6)).isEqualTo("78");
        receive(0, SLOW, "8000000000130000");
        assertThat(shown().substring(4, 6)).isEqualTo("80");
    }

    @Test
    void whatLeavesOpenWhatIsDoneIsRefused() {
        typed.change(TypedNetworks.SHEET, "table: {off: off, on: on}", "table: {off: off, on: open}");
        typed.change(TypedNetworks.SHEET, ", checksum_rule: {kind: crc-8 sae j1850}", "");
        typed.change(TypedNetworks.SHEET, "limit: 250 ms", "limit: 1 ms");
        assertThatThrownBy(() -> SheetProgram.of(TranslationSheet.read(typed.sheet())))
                .isInstanceOfSatisfying(
                        InputException.class,
                        e -> assertThat(e.findings())
                                .extracting(f -> f.key())
                                .containsExactly("checksum-rule-missing", "word-unknown"));
    }

    @Test
    void whatLiesOutsideAClassicFrameIsRefused() {
        typed.change(TypedNetworks.LEFT, "BO_ 512 Slow: 8 ECM", "BO_ 512 Slow: 16 ECM");
        typed.change(TypedNetworks.LEFT, "Bare : 32|8@1+", "Bare : 96|8@1+");
        assertThatThrownBy(() -> SheetProgram.of(TranslationSheet.read(typed.sheet())))
                .isInstanceOfSatisfying(
                        InputException.class,
                        e -> assertThat(e.findings())
                                .extracting(f -> f.key())
                                .containsExactly("frame-too-long", "frame-too-long"));
        typed.change(TypedNetworks.LEFT, "Alive : 48|4@1+", "Alive : 61|4@1+");
        assertThat(typed.check().findings()).extracting(f -> f.key()).contains("frame-too-long", "counter-wrong");
    }

    @Test
    void framesAndLooksAllocateNothing() {
        start();
        Random random = new Random(1);
        byte[] data = new byte[8];
        int[] ids = {FAST, SLOW, CLUTCH, WISH, 99};
        long[] bytes = new long[1];
        Translator.Outlet outlet = (network, id, extended, out, length) -> bytes[0] += length;
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long thread = Thread.currentThread().getId();
        long before = 0;
        int frames = 200_000;
        for (int i = 0; i < 2 * frames; i++) {
            if (i == frames) {
                before = threads.getThreadAllocatedBytes(thread);
            }
            random.nextBytes(data);
            data[6] = (byte) i;
            data[7] = (byte) Crc.CRC8_1D.of(data, 0, 7);
            gateway.receive(i & 1, ids[i % 5], false, data, 0, 8);
            if (i % 3 == 0) {
                gateway.look(outlet);
            }
        }
        long allocated = threads.getThreadAllocatedBytes(thread) - before;
        assertThat(allocated / (double) frames).isLessThan(0.1);
        assertThat(bytes[0]).isPositive();
        assertThat(gateway.received(0, Reception.TAKEN)).isPositive();
    }
}
