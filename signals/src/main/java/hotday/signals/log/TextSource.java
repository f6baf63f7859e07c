package hotday.signals.log;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipException;

/**
 * A text file on disk, plain or packed with gzip, whatever its name; refuses what is no text, in words.
 *
 * @param mostUnpacked bytes that are taken out of a packed file
 */
public record TextSource(Path path, Charset charset, long mostUnpacked) {
    /** Bytes of a packed file, unpacked: more than the rows that are taken can need, and read in seconds. */
    static final long LARGEST_UNPACKED = 2_000_000_000L;

    private static final int HEAD_BYTES = 64 * 1024;
    private static final String ROWS = "delimited text (comma, tab, semicolon)";

    /** A file of rows; looks at the first bytes. */
    static TextSource open(Path path) {
        return open(path, ROWS, LARGEST_UNPACKED);
    }

    /**
     * Looks at the first bytes.
     *
     * @param needed what kind of text is needed, for findings
     * @param mostUnpacked bytes that are taken out of a packed file
     */
    public static TextSource open(Path path, String needed, long mostUnpacked) {
        Place place = Place.of(path.toString());
        requireFile(path, place);
        try (InputStream in = stream(path, mostUnpacked)) {
            byte[] head = in.readNBytes(HEAD_BYTES);
            if (head.length == 0) {
                throw InputException.at(place, "empty-file", "the file is empty");
            }
            refuseOtherForms(head, place, "; " + needed + " is needed");
            return new TextSource(path, charset(head), mostUnpacked);
        } catch (IOException e) {
            throw unreadable(path, e);
        }
    }

    private static void requireFile(Path path, Place place) {
        if (Files.isDirectory(path)) {
            throw InputException.at(place, "is-folder", "is a folder, a file is needed");
        }
        if (!Files.exists(path)) {
            throw InputException.at(place, "no-such-file", "no such file");
        }
        if (!Files.isRegularFile(path)) {
            throw InputException.at(
                    place, "no-ordinary-file", "is a pipe or a device: write it to a file first, it is read twice");
        }
        if (!Files.isReadable(path)) {
            throw InputException.at(place, "not-readable", "cannot be read: check its permissions");
        }
    }

    private static void refuseOtherForms(byte[] head, Place place, String needed) {
        if (starts(head, 0xFF, 0xFE) || starts(head, 0xFE, 0xFF)) {
            throw InputException.at(place, "text-in-utf16", "is text in UTF-16: save it as UTF-8 text");
        }
        if (starts(head, 'P', 'K', 3, 4)) {
            throw InputException.at(
                    place,
                    "binary-file",
                    "is a binary file, a zip archive or a spreadsheet: unpack it, or save the sheet as CSV text");
        }
        int odd = 0;
        int lineEnds = 0;
        for (byte b : head) {
            lineEnds += b == '\n' || b == '\r' ? 1 : 0;
            if (b == 0 && lineEnds == 0) {
                throw InputException.at(place, "binary-file", "is a binary file" + needed);
            }
            odd += b > 0 && b < ' ' && b != '\t' && b != '\n' && b != '\r' && b != '\f' ? 1 : 0;
        }
        if (odd * 100L > head.length) {
            throw InputException.at(place, "binary-file", "is a binary file" + needed);
        }
    }

    private static boolean starts(byte[] head, int... mark) {
        for (int i = 0; i < mark.length; i++) {
            if (i >= head.length || (head[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    /** UTF-8 when the head is, Latin-1 otherwise: every byte is a character there, so that nothing is lost. */
    private static Charset charset(byte[] head) {
        int whole = head.length < HEAD_BYTES ? head.length : HEAD_BYTES - 3;
        for (int end = whole; end <= Math.min(whole + 3, head.length); end++) {
            if (isUtf8(head, end)) {
                return StandardCharsets.UTF_8;
            }
        }
        return StandardCharsets.ISO_8859_1;
    }

    private static boolean isUtf8(byte[] head, int end) {
        try {
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(head, 0, end));
            return true;
        } catch (CharacterCodingException e) {
            return false;
        }
    }

    private static InputStream stream(Path path, long mostUnpacked) throws IOException {
        BufferedInputStream in = new BufferedInputStream(Files.newInputStream(path), 1 << 16);
        try {
            in.mark(2);
            boolean packed = in.read() == 0x1F && in.read() == 0x8B;
            in.reset();
            return packed ? new Unpacked(new GZIPInputStream(in, 1 << 16), mostUnpacked) : in;
        } catch (IOException e) {
            in.close();
            throw e;
        }
    }

    /** Its lines from the beginning; the caller closes them. */
    public LineReader lines() throws IOException {
        return new LineReader(stream(path, mostUnpacked));
    }

    /** What a person is told when reading failed. */
    public static InputException unreadable(Path path, IOException e) {
        String file = path.toString();
        if (e instanceof LineReader.LineTooLong wide) {
            return InputException.at(
                    new Place(file, wide.line(), 0),
                    "line-too-long",
                    "this line has more than " + LineReader.LONGEST
                            + " bytes: this is no recording of rows, or its line ends are lost");
        }
        if (e instanceof Unpacked.TooMuch) {
            return InputException.at(
                    Place.of(file),
                    "too-much-unpacked",
                    "unpacks to more than " + LARGEST_UNPACKED / 1_000_000
                            + " MB: no recording of a run is that long; cut it into runs");
        }
        boolean packed = e instanceof EOFException || e instanceof ZipException;
        String what = packed
                ? "the packed file is cut short or damaged; copy it again from the logger"
                : "cannot be read (" + e.getMessage() + ")";
        return InputException.at(Place.of(file), packed ? "packed-file-damaged" : "not-readable", what);
    }
}
