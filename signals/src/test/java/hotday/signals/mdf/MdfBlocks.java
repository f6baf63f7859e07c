package hotday.signals.mdf;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Puts a small file of MDF 4 together, block by block. */
final class MdfBlocks {
    static final int UNSIGNED = 0;
    static final int REAL = 4;
    static final int BYTES = 10;

    private ByteBuffer out = ByteBuffer.allocate(1 << 16).order(ByteOrder.LITTLE_ENDIAN);
    private long lastGroup;

    MdfBlocks() {
        byte[] head = new byte[64];
        System.arraycopy("MDF     4.10    test".getBytes(StandardCharsets.US_ASCII), 0, head, 0, 20);
        head[28] = (byte) 410;
        head[29] = 1;
        out.put(head);
        block("##HD", new byte[32], new long[6]);
    }

    static ByteBuffer data(int bytes) {
        return ByteBuffer.allocate(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }

    /** Returns where it stands. */
    long block(String id, byte[] data, long... links) {
        while (out.position() % 8 != 0) {
            out.put((byte) 0);
        }
        int length = 24 + 8 * links.length + data.length;
        if (out.remaining() < length + 8) {
            ByteBuffer wider =
                    ByteBuffer.allocate(2 * (out.capacity() + length)).order(ByteOrder.LITTLE_ENDIAN);
            out = wider.put(out.flip());
        }
        long position = out.position();
        out.put(id.getBytes(StandardCharsets.US_ASCII))
                .putInt(0)
                .putLong(length)
                .putLong(links.length);
        for (long link : links) {
            out.putLong(link);
        }
        out.put(data);
        return position;
    }

    void link(long block, int index, long to) {
        out.putLong((int) block + 24 + 8 * index, to);
    }

    void put(long at, byte value) {
        out.put((int) at, value);
    }

    long text(String text) {
        return block("##TX", (text + "\0").getBytes(StandardCharsets.UTF_8));
    }

    long linear(double offset, double factor) {
        ByteBuffer cc = data(40);
        cc.put((byte) 1).putShort(6, (short) 2).putDouble(24, offset).putDouble(32, factor);
        return block("##CC", cc.array(), 0, 0, 0, 0);
    }

    /** A channel; links to the next one, its parts and its data are put in later. */
    long channel(String name, String unit, int kind, int type, int firstBit, int bits, long conversion) {
        ByteBuffer cn = data(72);
        cn.put((byte) kind)
                .put((byte) (kind == Channel.MASTER || kind == Channel.VIRTUAL_MASTER ? 1 : 0))
                .put((byte) type)
                .put((byte) (firstBit % 8))
                .putInt(firstBit / 8)
                .putInt(bits);
        return block("##CN", cn.array(), 0, 0, text(name), 0, conversion, 0, unit.isEmpty() ? 0 : text(unit), 0);
    }

    /** Channels one after the other. */
    long chain(long... channels) {
        for (int i = 1; i < channels.length; i++) {
            link(channels[i - 1], 0, channels[i]);
        }
        return channels[0];
    }

    long group(long channels, int flags, long cycles, int recordBytes) {
        ByteBuffer cg = data(32);
        cg.putLong(8, cycles).putShort(16, (short) flags).putInt(24, recordBytes);
        return block("##CG", cg.array(), 0, channels, 0, 0, 0, 0);
    }

    /** A data group with one group, behind those before it. */
    long dataGroup(long group, long data) {
        long dg = block("##DG", new byte[8], 0, group, data, 0);
        link(lastGroup == 0 ? 64 : lastGroup, 0, dg);
        lastGroup = dg;
        return dg;
    }

    byte[] bytes() {
        return Arrays.copyOf(out.array(), out.position());
    }
}
