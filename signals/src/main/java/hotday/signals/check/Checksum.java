package hotday.signals.check;

/**
 * A checksum as the maker of a network defined it: a cyclic redundancy check of any generator, the exclusive or of the
 * bytes, or their sum. Bytes are added one after the other, nothing is allocated:
 *
 * <pre>{@code
 * int register = rule.start();
 * register = rule.add(register, octet);
 * long value = rule.end(register);
 * }</pre>
 *
 * Immutable; shared by all threads.
 */
public final class Checksum {
    /** How bytes are added. */
    public enum Kind {
        CRC,
        XOR,
        SUM
    }

    private final Kind kind;
    private final int bits;
    private final long generator;
    private final long init;
    private final long inverted;
    private final boolean reflected;
    private final CrcTable table;

    private Checksum(Kind kind, int bits, long generator, long init, long inverted, boolean reflected) {
        this.kind = kind;
        this.bits = bits;
        this.generator = checked("generator", generator, bits);
        this.init = checked("start value", init, bits);
        this.inverted = checked("value laid over the result", inverted, bits);
        this.reflected = reflected;
        this.table = new CrcTable(bits, (int) generator, (int) init, reflected, (int) inverted);
    }

    private static long checked(String what, long value, int bits) {
        if (bits != 8 && bits != 16 && bits != 32) {
            throw new IllegalArgumentException("a checksum of " + bits + " bits, must have 8, 16 or 32");
        }
        if (value < 0 || value >= 1L << bits) {
            throw new IllegalArgumentException(
                    String.format("%s 0x%X must lie between 0 and 0x%X", what, value, (1L << bits) - 1));
        }
        return value;
    }

    /**
     * A cyclic redundancy check.
     *
     * @param bits 8, 16 or 32
     * @param generator without its highest bit, such as 0x1D
     * @param init register before the first byte, written as for the register that is not reflected
     * @param inverted laid over the result by exclusive or
     * @param reflected whether each byte enters with its lowest bit first, and the result leaves so
     */
    public static Checksum crc(int bits, long generator, long init, long inverted, boolean reflected) {
        return new Checksum(Kind.CRC, bits, generator, init, inverted, reflected);
    }

    /** CRC-8 of SAE J1850: generator 0x1D, start 0xFF, result inverted. */
    public static Checksum crc8J1850() {
        return crc(8, 0x1D, 0xFF, 0xFF, false);
    }

    /** Exclusive or of all bytes, starting with {@code init}; {@code inverted} is laid over the result. */
    public static Checksum xor(long init, long inverted) {
        return new Checksum(Kind.XOR, 8, 0, init, inverted, false);
    }

    /** Sum of all bytes modulo 2^bits, starting with {@code init}; {@code inverted} is laid over the result. */
    public static Checksum sum(int bits, long init, long inverted) {
        return new Checksum(Kind.SUM, bits, 0, init, inverted, false);
    }

    public Kind kind() {
        return kind;
    }

    /** Width of the result: 8, 16 or 32. */
    public int bits() {
        return bits;
    }

    /** Of a cyclic redundancy check; 0 for the others. */
    public long generator() {
        return generator;
    }

    /** Start value. */
    public long init() {
        return init;
    }

    /** Laid over the result by exclusive or. */
    public long inverted() {
        return inverted;
    }

    /** Whether bytes enter with their lowest bit first. */
    public boolean reflected() {
        return reflected;
    }

    /** The register before the first byte. */
    public int start() {
        return kind == Kind.CRC ? table.start() : (int) init;
    }

    /**
     * The register after one more byte.
     *
     * @param octet its lowest eight bits count
     */
    public int add(int register, int octet) {
        return switch (kind) {
            case CRC -> table.add(register, octet);
            case XOR -> register ^ octet & 0xFF;
            case SUM -> register + (octet & 0xFF);
        };
    }

    /** The checksum that a register stands for, 0 to 2^bits - 1. */
    public long end(int register) {
        return kind == Kind.CRC ? table.end(register) : (register ^ inverted) & (1L << bits) - 1;
    }
}
