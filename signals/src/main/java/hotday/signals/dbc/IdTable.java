package hotday.signals.dbc;

import java.util.Arrays;

/** Numbers by identifier, in flat arrays: looking one up allocates nothing. Filled once. */
final class IdTable {
    private static final int NONE = -1;

    private int[] keys;
    private int[] values;
    private int size;

    IdTable() {
        keys = new int[64];
        values = new int[64];
        Arrays.fill(values, NONE);
    }

    /** The key of an identifier: bit 31 marks those of 29 bits. */
    static int key(int id, boolean extended) {
        return extended ? id | 1 << 31 : id;
    }

    /**
     * Keeps the first number of a key.
     *
     * @param value from 0
     * @return whether the key is new
     */
    boolean putIfAbsent(int key, int value) {
        if (2 * (size + 1) > keys.length) {
            grow();
        }
        int slot = slot(key);
        if (values[slot] != NONE) {
            return false;
        }
        keys[slot] = key;
        values[slot] = value;
        size++;
        return true;
    }

    /** -1 for a key that is not there. */
    int get(int key) {
        return values[slot(key)];
    }

    private int slot(int key) {
        int mask = keys.length - 1;
        int slot = (key * 0x9E37_79B9 >>> 8) & mask;
        while (values[slot] != NONE && keys[slot] != key) {
            slot = slot + 1 & mask;
        }
        return slot;
    }

    private void grow() {
        int[] oldKeys = keys;
        int[] oldValues = values;
        keys = new int[2 * oldKeys.length];
        values = new int[keys.length];
        Arrays.fill(values, NONE);
        size = 0;
        for (int i = 0; i < oldKeys.length; i++) {
            if (oldValues[i] != NONE) {
                putIfAbsent(oldKeys[i], oldValues[i]);
            }
        }
    }
}
