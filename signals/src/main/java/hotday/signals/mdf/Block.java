package hotday.signals.mdf;

import java.nio.ByteBuffer;

/**
 * A block of the file, read whole.
 *
 * @param id four letters such as {@code ##CN}
 * @param position byte in the file
 * @param links bytes in the file; 0 leads nowhere
 * @param data what stands behind the links, little-endian, from 0
 */
record Block(String id, long position, long[] links, ByteBuffer data) {
    /** A link; 0 where the block is too short to have it. */
    long link(int index) {
        return index < links.length ? links[index] : 0;
    }

    /** Refuses a block without room for what every one of its kind holds. */
    Block need(int links, int bytes) {
        if (this.links.length < links || data.limit() < bytes) {
            throw broken("has " + this.links.length + " links and " + data.limit() + " bytes of data, at least " + links
                    + " and " + bytes + " are needed");
        }
        return this;
    }

    BrokenBlock broken(String what) {
        return new BrokenBlock("block-broken", position, "block " + id + " " + what);
    }

    int u8(int at) {
        return data.get(at) & 0xFF;
    }

    int u16(int at) {
        return data.getShort(at) & 0xFFFF;
    }

    long u32(int at) {
        return data.getInt(at) & 0xFFFF_FFFFL;
    }

    long i64(int at) {
        return data.getLong(at);
    }

    double real(int at) {
        return data.getDouble(at);
    }
}
