package hotday.signals.obd;

/** Identifiers of diagnosis: which carry it, and which answers which. Source: ISO 15765-4, public descriptions. */
final class Addresses {
    /** Asks every unit. */
    static final int ALL = 0x7DF;
    /** Asks every unit, 29 bits. */
    static final int ALL_EXTENDED = 0x18DB33F1;

    private static final int FIRST_STANDARD = 0x700;
    private static final int FIRST_ANSWER = 0x7E8;
    private static final int LAST_ANSWER = 0x7EF;
    private static final int TO_ONE = 0x18DA;
    private static final int TO_ALL = 0x18DB;
    private static final int TESTER = 0xF1;

    private Addresses() {}

    /** Whether a frame may be one of diagnosis: 700 to 7FF, or 29 bits 18DAxxxx and 18DBxxxx. */
    static boolean isDiagnosis(int id, boolean extended) {
        int kind = id >>> 16;
        return extended ? kind == TO_ONE || kind == TO_ALL : id >= FIRST_STANDARD;
    }

    /** Whether a unit answers what the law wants answered: 7E8 to 7EF, or 18DAF1xx. */
    static boolean isLawful(int id, boolean extended) {
        return extended ? id >>> 8 == (TO_ONE << 8 | TESTER) : id >= FIRST_ANSWER && id <= LAST_ANSWER;
    }

    /** How a sender is called: its identifier, such as 7E8. */
    static String name(int id) {
        return String.format("%X", id);
    }

    /** The identifier that asks the unit which answers with this one: 8 below, or both addresses swapped. */
    static int request(int answer, boolean extended) {
        return extended ? answer & 0xFFFF0000 | (answer & 0xFF) << 8 | answer >> 8 & 0xFF : answer - 8;
    }
}
