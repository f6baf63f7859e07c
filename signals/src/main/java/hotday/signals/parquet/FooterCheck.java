package hotday.signals.parquet;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Whether the end of a file is there: its columns are described there, and without it nothing of it can be read. */
final class FooterCheck {
    /** Mark at the beginning. */
    private static final int HEAD = 4;
    /** Length of the description and mark at the end. */
    private static final int TAIL = 8;

    private FooterCheck() {}

    static void requireWhole(Path path) {
        try (FileChannel file = FileChannel.open(path)) {
            long size = file.size();
            ByteBuffer tail = ByteBuffer.allocate(TAIL).order(ByteOrder.LITTLE_ENDIAN);
            if (size >= HEAD + TAIL) {
                file.read(tail, size - TAIL);
            }
            String mark = new String(tail.array(), TAIL - HEAD, HEAD, StandardCharsets.US_ASCII);
            if (!mark.equals("PAR1")) {
                throw damaged(
                        path,
                        "is cut short: the mark PAR1 is not at its end (byte " + size
                                + "), and without the description that stands before it nothing of it can be read; copy it again");
            }
            long length = tail.getInt(0);
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
