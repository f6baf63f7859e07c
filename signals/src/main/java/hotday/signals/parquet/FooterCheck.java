package hotday.signals.parquet;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Whether the end of a file is there: its columns are described there, and without it nothing of it can be read. */
final class FooterCheck {
    /** Mark at the beginning. */
    private static final int HEAD = 4;
    /** Length of the description and mark at the end. */
    private static final int TAIL = 8;

    private FooterCheck() {}

    static void requireWhole(Path path) {
        try (InputStream in = Files.newInputStream(path)) {
            long size = Files.size(path);
            in.skipNBytes(Math.max(0, size - TAIL));
            byte[] tail = in.readNBytes(TAIL);
            String mark = size < HEAD + TAIL ? "" : new String(tail, TAIL - HEAD, HEAD, StandardCharsets.US_ASCII);
            if (!mark.equals("PAR1")) {
                throw damaged(
                        path,
                        "is cut short: the mark PAR1 is not at its end (byte " + size
                                + "), and without the description that stands before it nothing of it can be read; copy it again");
            }
            long length = ByteBuffer.wrap(tail).order(ByteOrder.LITTLE_ENDIAN).getInt();
            if (length <= 0 || length > size - HEAD - TAIL) {
                throw damaged(
                        path,
                        "is damaged at byte " + (size - TAIL) + ": the description of its columns is said to have "
                                + length + " bytes, and the file has " + size);
            }
        } catch (IOException e) {
            throw InputException.at(
                    Place.of(path.toString()), "not-readable", "cannot be read (" + e.getMessage() + ")");
        }
    }

    static InputException damaged(Path path, String what) {
        return InputException.at(Place.of(path.toString()), "parquet-damaged", what);
    }
}
