package hotday.signals.j1939;

/**
 * The parts of an identifier of 29 bits: priority, parameter group, destination and source. Source: SAE J1939-21,
 * public descriptions.
 */
public final class J1939Id {
    /** Destination of what is meant for everybody. */
    public static final int EVERYBODY = 0xFF;
    /** Highest number of a parameter group. */
    public static final int HIGHEST_GROUP = 0x3FFFF;

    /** Groups whose second byte is below this are meant for one destination. */
    private static final int FIRST_BROADCAST = 240;

    private J1939Id() {}

    /** 0 (goes first) to 7. */
    public static int priority(int id) {
        return id >>> 26 & 7;
    }

    /** Number of the parameter group; its last byte is 0 where the identifier has a destination instead. */
    public static int group(int id) {
        int whole = id >>> 8 & HIGHEST_GROUP;
        return isAddressed(whole) ? whole & ~0xFF : whole;
    }

    /** Address that it is meant for, {@link #EVERYBODY} where the group has none. */
    public static int destination(int id) {
        return isAddressed(id >>> 8) ? id >>> 8 & 0xFF : EVERYBODY;
    }

    /** Address of the sender. */
    public static int source(int id) {
        return id & 0xFF;
    }

    /** Whether frames of a group carry a destination. */
    public static boolean isAddressed(int group) {
        return (group >>> 8 & 0xFF) < FIRST_BROADCAST;
    }
}
