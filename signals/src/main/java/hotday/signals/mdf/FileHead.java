package hotday.signals.mdf;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;

/**
 * The first 64 bytes.
 *
 * @param version as written, such as 4.10
 * @param unfinished whether nobody closed the file
 * @param unfinishedFlags what was not put right, by bit
 */
record FileHead(String version, boolean unfinished, int unfinishedFlags) {
    private static final int BYTES = 64;
    private static final String WHOLE = "MDF     ";
    private static final String UNFINISHED = "UnFinMF ";
    private static final int VALUE_OFFSETS = 0x40;

    static boolean begins(byte[] head) {
        String mark = new String(head, StandardCharsets.ISO_8859_1);
        return mark.startsWith(WHOLE) || mark.startsWith(UNFINISHED);
    }

    static FileHead read(BlockFile file) {
        Place place = Place.of(file.path().toString());
        byte[] bytes = new byte[BYTES];
        if (file.read(0, bytes, 0, BYTES) < BYTES || !begins(bytes)) {
            throw InputException.at(
                    place, "mdf-head-broken", "is cut off in its first 64 bytes (block ID): nothing can be read");
        }
        String version = new String(bytes, 8, 8, StandardCharsets.ISO_8859_1).replaceAll("[^0-9.]", "");
        if (!version.startsWith("4.")) {
            throw InputException.at(
                    place,
                    "mdf-version",
                    "is a recording in MDF " + version + "; 4.x is read: export it as MDF 4 where it was recorded");
        }
        ByteBuffer b = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
        boolean unfinished = new String(bytes, 0, 8, StandardCharsets.ISO_8859_1).equals(UNFINISHED);
        return new FileHead(version, unfinished, unfinished ? b.getShort(60) & 0xFFFF : 0);
    }

    /** Whether records do not say where their values of any length lie. */
    boolean lacksValueOffsets() {
        return (unfinishedFlags & VALUE_OFFSETS) != 0;
    }

    /** When the recording began, for people; with the zone where the file says it. */
    static String begun(Block hd) {
        long ns = hd.i64(0);
        int offset = hd.data().getShort(8) + hd.data().getShort(10);
        int flags = hd.u8(12);
        Instant at = Instant.ofEpochSecond(Math.floorDiv(ns, 1_000_000_000L), Math.floorMod(ns, 1_000_000_000L));
        if ((flags & 1) != 0) {
            return at.atOffset(ZoneOffset.UTC).toLocalDateTime() + " local time";
        }
        return at + ((flags & 2) != 0 ? String.format(Locale.ROOT, " (local time %+d min)", offset) : "");
    }
}
