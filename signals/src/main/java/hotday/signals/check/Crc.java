package hotday.signals.check;

import java.util.Objects;

/**
 * Cyclic redundancy checks of networks in vehicles, eight bits a step. The names of the generators are their usual
 * hexadecimal ones. A check over bytes that do not lie together (an identifier of the data first, the payload without
 * its own checksum behind) is built from {@link #start}, {@link #add(int, int)} and {@link #end}; nothing is allocated.
 *
 * <p>Source of the parameters: public specification of CRC routines for vehicles (CRC8, CRC8H2F, CRC16, CRC32,
 * CRC32P4), from memory; the check values of the tests hold them.
 */
public enum Crc {
    /** x8 + x4 + x3 + x2 + 1, start FF, result inverted. */
    CRC8_1D(8, 0x1D, 0xFF, false, 0xFF),
    /** The same generator from zero and not inverted: another algorithm, and its results fit nothing of the first. */
    CRC8_1D_FROM_ZERO(8, 0x1D, 0, false, 0),
    /** x8 + x5 + x3 + x2 + x + 1, start FF, result inverted. */
    CRC8_2F(8, 0x2F, 0xFF, false, 0xFF),
    /** Generator 1021, start FFFF, result as it stands, often called CCITT-FALSE. */
    CRC16_1021(16, 0x1021, 0xFFFF, false, 0),
    /** Generator 04C11DB7, bits reflected, start all ones, result inverted. */
    CRC32_04C11DB7(32, 0x04C1_1DB7, 0xFFFF_FFFF, true, 0xFFFF_FFFF),
    /** Generator F4ACFB13, bits reflected, start all ones, result inverted; often called P4. */
    CRC32_F4ACFB13(32, 0xF4AC_FB13, 0xFFFF_FFFF, true, 0xFFFF_FFFF);

    private final CrcTable table;

    Crc(int bits, int generator, int start, boolean reflected, int inverted) {
        this.table = new CrcTable(bits, generator, start, reflected, inverted);
    }

    /** Width of the result. */
    public int bits() {
        return table.bits();
    }

    /** The register before the first byte. */
    public int start() {
        return table.start();
    }

    /**
     * The register after one more byte.
     *
     * @param octet its lowest eight bits count
     */
    public int add(int register, int octet) {
        return table.add(register, octet);
    }

    /** The register after more bytes. */
    public int add(int register, byte[] data, int from, int length) {
        Objects.checkFromIndexSize(from, length, data.length);
        int now = register;
        for (int i = from; i < from + length; i++) {
            now = add(now, data[i]);
        }
        return now;
    }

    /** The checksum that a register stands for, 0 to 2^bits - 1. */
    public long end(int register) {
        return table.end(register);
    }

    /** The checksum of bytes that lie together, 0 to 2^bits - 1. */
    public long of(byte[] data, int from, int length) {
        return end(add(start(), data, from, length));
    }
}
