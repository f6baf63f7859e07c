package hotday.signals.mdf;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * What a DZ block says about the bytes packed in it.
 *
 * @param kind of the block that was packed, such as {@code ##DT}
 * @param transposed whether bytes of the same column of a record stand together
 * @param columns bytes of such a record
 * @param unpacked bytes
 * @param packedAt byte in the file
 * @param packed bytes
 */
record PackedBlock(String kind, boolean transposed, int columns, long unpacked, long packedAt, long packed) {
    private static final int BYTES = 24;
    /** Deflate makes at most about a thousand bytes of one (RFC 1951: 258 bytes from two bits). */
    private static final long MOST_RATIO = 1032;

    static PackedBlock of(BlockFile file, BlockFile.Head head) {
        byte[] bytes = new byte[BYTES];
        if (head.dataLength() < BYTES || file.read(head.dataAt(), bytes, 0, BYTES) < BYTES) {
            throw new BrokenBlock("block-broken", head.position(), "block ##DZ is too short");
        }
        ByteBuffer b = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
        PackedBlock packed = new PackedBlock(
                "##" + new String(bytes, 0, 2, StandardCharsets.ISO_8859_1),
                bytes[2] == 1,
                b.getInt(4),
                b.getLong(8),
                head.dataAt() + BYTES,
                b.getLong(16));
        packed.require(bytes[2], head);
        return packed;
    }

    private void require(int way, BlockFile.Head head) {
        if (way != 0 && way != 1) {
            throw new BrokenBlock(
                    "packing-unknown",
                    head.position(),
                    "block ##DZ is packed in way " + way + "; deflate (0) and transposed deflate (1) are read");
        }
        if (packed < 0 || packed > head.dataLength() - BYTES) {
            throw new BrokenBlock(
                    "block-broken",
                    head.position(),
                    "block ##DZ says it holds " + packed + " packed bytes and has room for "
                            + (head.dataLength() - BYTES));
        }
        if (unpacked < 0 || unpacked / MOST_RATIO > packed) {
            throw new BrokenBlock(
                    "block-broken",
                    head.position(),
                    "block ##DZ says that " + packed + " packed bytes become " + unpacked + ", which cannot be");
        }
        if (transposed && columns <= 0) {
            throw new BrokenBlock(
                    "block-broken", head.position(), "block ##DZ is transposed with " + columns + " columns");
        }
    }
}
