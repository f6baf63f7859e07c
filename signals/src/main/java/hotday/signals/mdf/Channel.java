package hotday.signals.mdf;

/**
 * A channel as its block describes it.
 *
 * @param position of the block, bytes
 * @param name full, parents in front
 * @param unit as the file spells it; empty when it has none
 * @param kind what stands in the record
 * @param sync 0 for values, 1 for time, others for angle, distance and number
 * @param dataType number of the standard
 * @param bitOffset of the lowest bit in the lowest byte, 0 to 7
 * @param byteOffset in the record, identifier not counted
 * @param bits of the value
 * @param flags 1: nothing is valid; 2: one bit of the record says whether it is
 * @param invalidBit which, counted from the record's last bytes on
 * @param conversion link; 0 for none
 * @param data link to lengths or values elsewhere; 0 for none
 * @param composed whether it is made of others, which are channels too
 */
record Channel(
        long position,
        String name,
        String unit,
        int kind,
        int sync,
        int dataType,
        int bitOffset,
        long byteOffset,
        long bits,
        long flags,
        long invalidBit,
        long conversion,
        long data,
        Composition composed) {
    static final int FIXED = 0;
    static final int VARIABLE_LENGTH = 1;
    static final int MASTER = 2;
    static final int VIRTUAL_MASTER = 3;
    static final int LIMITED_LENGTH = 5;
    static final int VIRTUAL = 6;

    /** What hangs below a channel. */
    enum Composition {
        NONE,
        STRUCTURE,
        ARRAY
    }

    /** The same where nothing of what it is made of could be read. */
    Channel alone() {
        return new Channel(
                position,
                name,
                unit,
                kind,
                sync,
                dataType,
                bitOffset,
                byteOffset,
                bits,
                flags,
                invalidBit,
                conversion,
                data,
                Composition.NONE);
    }

    boolean isMaster() {
        return kind == MASTER || kind == VIRTUAL_MASTER;
    }

    boolean isVirtual() {
        return kind == VIRTUAL_MASTER || kind == VIRTUAL;
    }

    boolean isTime() {
        return isMaster() && sync == 1;
    }
}
