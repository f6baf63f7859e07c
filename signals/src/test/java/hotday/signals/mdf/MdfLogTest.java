package hotday.signals.mdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.management.ThreadMXBean;
import hotday.core.finding.InputException;
import hotday.signals.frame.Frame;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Block layouts after ASAM MDF 4.1, from memory of the standard. */
class MdfLogTest {
    @TempDir
    private Path folder;

    /** Records of a time and a value of two bytes, 0.1 degC a step from -40 on. */
    private static byte[] records(int count, double step) {
        ByteBuffer data = MdfBlocks.data(10 * count);
        for (int i = 0; i < count; i++) {
            data.putDouble(i * step).putShort((short) (600 + i));
        }
        return data.array();
    }

    private static long temperature(MdfBlocks file, String name, int cycles) {
        long time = file.channel("t", "s", Channel.MASTER, MdfBlocks.REAL, 0, 64, 0);
        long value = file.channel(name, "degC", Channel.FIXED, MdfBlocks.UNSIGNED, 64, 16, file.linear(-40, 0.1));
        return file.group(file.chain(time, value), 0, cycles, 10);
    }

    @Test
    void groupsComeInTheOrderOfTheirTimes() {
        MdfBlocks file = new MdfBlocks();
        file.dataGroup(temperature(file, "oil", 2), file.block("##DT", records(2, 1.0)));
        file.dataGroup(temperature(file, "coolant", 3), file.block("##DT", records(3, 0.4)));

        ReadMdf read = ReadMdf.of(folder, file.bytes());

        assertThat(read.samples())
                .containsExactly(
                        "0.0 oil [degC] 20.0",
                        "0.0 coolant [degC] 20.0",
                        "0.4 coolant [degC] 20.1",
                        "0.8 coolant [degC] 20.200000000000003",
                        "1.0 oil [degC] 20.1");
        assertThat(read.duration()).isEqualTo(1.0);
        assertThat(read.keys()).isEmpty();
    }

    @Test
    void channelsOfOneNameAreKeptApart() {
        MdfBlocks file = new MdfBlocks();
        file.dataGroup(temperature(file, "oil", 1), file.block("##DT", records(1, 1.0)));
        file.dataGroup(temperature(file, "oil", 1), file.block("##DT", records(1, 1.0)));

        assertThat(ReadMdf.of(folder, file.bytes()).samples())
                .containsExactly("0.0 #1:oil [degC] 20.0", "0.0 #2:oil [degC] 20.0");
    }

    @Test
    void aListThatComesBackToItselfEndsThere() {
        MdfBlocks file = new MdfBlocks();
        ByteBuffer lengths = MdfBlocks.data(16);
        lengths.put((byte) 1).putInt(4, 1).putLong(8, 20);
        long list = file.block("##DL", lengths.array(), 0, file.block("##DT", records(2, 1.0)));
        file.link(list, 0, list);
        file.dataGroup(temperature(file, "oil", 4), list);

        ReadMdf read = ReadMdf.of(folder, file.bytes());

        assertThat(read.samples()).hasSize(2);
        assertThat(read.keys()).containsExactly("link-loop", "records-broken");
        assertThat(read.findings().get(1).values()).containsEntry("byte", list);
    }

    /** A file cut at any byte: what is read is the beginning of what the whole file holds, and the cut is told. */
    @Test
    void aFileCutAnywhereGivesItsBeginning() {
        MdfBlocks file = new MdfBlocks();
        long group = file.dataGroup(temperature(file, "oil", 40), 0);
        file.link(group, 2, file.block("##DT", records(40, 1.0)));
        byte[] whole = file.bytes();
        ReadMdf all = ReadMdf.of(folder, whole);
        assertThat(all.samples()).hasSize(40);

        int longest = 0;
        for (int length = 0; length < whole.length; length++) {
            byte[] cut = Arrays.copyOf(whole, length);
            try {
                ReadMdf read = ReadMdf.of(folder, cut);
                assertThat(read.samples())
                        .isEqualTo(all.samples().subList(0, read.samples().size()));
                longest = Math.max(longest, read.samples().size());
                assertThat(read.keys()).isNotEmpty();
            } catch (InputException refused) {
                assertThat(length).isLessThan(64 + 24 + 48 + 32);
            }
        }
        assertThat(longest).isEqualTo(39);
    }

    /** Nobody counted the records, and they have no bytes: there is no end to them. */
    @Test
    void recordsWithoutBytesInAFileThatNobodyClosed() {
        MdfBlocks file = new MdfBlocks();
        long number = file.channel("n", "s", Channel.VIRTUAL, MdfBlocks.UNSIGNED, 0, 64, 0);
        long time = file.channel("t", "s", Channel.VIRTUAL_MASTER, MdfBlocks.UNSIGNED, 0, 64, file.linear(0, 0.1));
        file.dataGroup(file.group(file.chain(time, number), 0, 0, 0), 0);
        byte[] bytes = file.bytes();
        System.arraycopy("UnFinMF ".getBytes(StandardCharsets.US_ASCII), 0, bytes, 0, 8);

        assertThat(ReadMdf.of(folder, bytes).keys()).containsExactly("recording-not-closed", "records-broken");
    }

    private static MdfBlocks frames(int length) {
        MdfBlocks file = new MdfBlocks();
        long time = file.channel("Timestamp", "s", Channel.MASTER, MdfBlocks.REAL, 0, 64, 0);
        long frame = file.channel("CAN_DataFrame", "", Channel.FIXED, MdfBlocks.BYTES, 64, 112, 0);
        long id = file.channel("CAN_DataFrame.ID", "", Channel.FIXED, MdfBlocks.UNSIGNED, 64, 29, 0);
        long ide = file.channel("CAN_DataFrame.IDE", "", Channel.FIXED, MdfBlocks.UNSIGNED, 95, 1, 0);
        long bus = file.channel("CAN_DataFrame.BusChannel", "", Channel.FIXED, MdfBlocks.UNSIGNED, 96, 8, 0);
        long size = file.channel("CAN_DataFrame.DataLength", "", Channel.FIXED, MdfBlocks.UNSIGNED, 104, 8, 0);
        long bytes = file.channel("CAN_DataFrame.DataBytes", "", Channel.FIXED, MdfBlocks.BYTES, 112, 64, 0);
        file.link(frame, 1, file.chain(id, ide, bus, size, bytes));
        file.chain(time, frame);
        ByteBuffer record = MdfBlocks.data(22);
        record.putDouble(0.25)
                .putInt(0x8CF0_0400)
                .put((byte) 2)
                .put((byte) length)
                .put(new byte[] {1, 2, 3, 4, 5});
        file.dataGroup(file.group(time, 2, 1, 22), file.block("##DT", record.array()));
        return file;
    }

    @Test
    void framesOfABus() {
        ReadMdf read = ReadMdf.of(folder, frames(5).bytes());

        assertThat(read.keys()).isEmpty();
        assertThat(read.samples()).isEmpty();
        Frame frame = read.frames().get(0);
        assertThat(frame.id()).isEqualTo(0x0CF0_0400);
        assertThat(frame.extended()).isTrue();
        assertThat(frame.time()).isEqualTo(0.25);
        assertThat(frame.length()).isEqualTo(5);
        assertThat(frame.at(4)).isEqualTo(5);
    }

    @Test
    void aFrameLongerThanItsBytesIsNone() {
        ReadMdf read = ReadMdf.of(folder, frames(9).bytes());

        assertThat(read.frames()).isEmpty();
        assertThat(read.keys()).containsExactly("record-broken", "records-broken-frames");
    }

    @Test
    void anOlderVersionIsRefused() {
        byte[] old = "MDF     3.30    ".getBytes(StandardCharsets.US_ASCII);
        byte[] file = Arrays.copyOf(old, 200);

        assertThatThrownBy(() -> ReadMdf.of(folder, file))
                .isInstanceOfSatisfying(
                        InputException.class,
                        e -> assertThat(e.findings().get(0).key()).isEqualTo("mdf-version"));
    }

    /** Five thousand million bytes of records, all zero, on a disk that stores none of them. */
    @Test
    @Tag("slow")
    void memoryDoesNotGrowWithTheFile() throws IOException {
        int recordBytes = 1 << 16;
        int cycles = (int) (5_000_000_000L / recordBytes);
        MdfBlocks file = new MdfBlocks();
        long time = file.channel("t", "s", Channel.MASTER, MdfBlocks.REAL, 0, 64, 0);
        long value = file.channel("x", "", Channel.FIXED, MdfBlocks.UNSIGNED, 8 * (recordBytes - 1), 8, 0);
        long dg = file.dataGroup(file.group(file.chain(time, value), 0, cycles, recordBytes), 0);
        long data = file.block("##DT", new byte[0]);
        file.link(dg, 2, data);
        Path path = Files.write(folder.resolve("long.mf4"), file.bytes());
        try (FileChannel channel = FileChannel.open(path, StandardOpenOption.WRITE)) {
            long length = 24 + (long) recordBytes * cycles;
            ByteBuffer said = MdfBlocks.data(8).putLong(0, length);
            channel.write(said, data + 8);
            channel.write(ByteBuffer.allocate(1), data + length - 1);
        }
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getThreadAllocatedBytes(Thread.currentThread().getId());
        try (MdfLog log = MdfLog.open(path)) {
            log.samplesTo(new Counting());
            assertThat(log.next(new Frame())).isFalse();
            assertThat(log.samples()).isEqualTo(cycles);
        }
        long allocated = threads.getThreadAllocatedBytes(Thread.currentThread().getId()) - before;
        assertThat(allocated).isLessThan(64L << 20);
    }
}
