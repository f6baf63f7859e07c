package hotday.signals.log;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import java.io.BufferedInputStream;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.GZIPInputStream;

/**
 * A recording as delimited text: comma, tab or semicolon, told from the header; UTF-8 or Latin-1; plain or gzip; mixed
 * line ends; cells padded or quoted; rows with one empty field too many. One line is one row. Reads a row at a time, so
 * memory does not grow with the file.
 */
public final class DelimitedText {
    private static final int HEAD_BYTES = 64 * 1024;
    private static final char[] DELIMITERS = {',', '\t', ';'};
    private static final int LONGEST_LINE = 1_000_000;
    private static final int WIDEST = 4096;

    private final Path path;
    private final List<String> header;
    private final char delimiter;
    private final int headerLine;
    private final Charset charset;
    private final String comment;

    private DelimitedText(
            Path path, List<String> header, char delimiter, int headerLine, Charset charset, String comment) {
        this.path = path;
        this.header = List.copyOf(header);
        this.delimiter = delimiter;
        this.headerLine = headerLine;
        this.charset = charset;
        this.comment = comment;
    }

    /** Takes the rows of a file one after the other. */
    @FunctionalInterface
    public interface RowReader {
        /**
         * @param cells trimmed, quotes removed; only valid during the call
         * @param count cells in this row
         * @param line in the file, from 1
         */
        void row(String[] cells, int count, int line);
    }

    /**
     * Looks at the head of a file.
     *
     * @param delimiter to use, or empty to tell it from the header
     * @param comment lines that start with it are skipped; empty for none
     * @param headerRow which non-comment line holds the names, from 1
     */
    public static DelimitedText open(Path path, Optional<Character> delimiter, String comment, int headerRow) {
        Place place = Place.of(path.toString());
        requireFile(path, place);
        byte[] head = head(path, place);
        Charset charset = charset(head, place);
        try (BufferedReader reader = reader(path, charset)) {
            int line = 0;
            int seen = 0;
            String text = reader.readLine();
            while (text != null) {
                line++;
                text = line == 1 && text.startsWith("\uFEFF") ? text.substring(1) : text;
                if (!text.isBlank() && (comment.isEmpty() || !text.startsWith(comment))) {
                    seen++;
                    if (seen == headerRow) {
                        return withHeader(path, text, delimiter, line, charset, comment);
                    }
                }
                text = reader.readLine();
            }
            throw InputException.at(place, "no-header", "no header line in this file: it holds no data");
        } catch (IOException e) {
            throw unreadable(place, e);
        }
    }

    private static DelimitedText withHeader(
            Path path, String text, Optional<Character> delimiter, int line, Charset charset, String comment) {
        char chosen = delimiter.orElseGet(() -> mostFrequent(text));
        Splitter splitter = new Splitter(chosen);
        int count = splitter.split(text, path, line);
        List<String> names = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            names.add(splitter.cells()[i]);
        }
        if (names.size() > 1 && names.get(names.size() - 1).isEmpty()) {
            names.remove(names.size() - 1);
        }
        if (names.size() < 2) {
            throw InputException.at(
                    new Place(path.toString(), line, 1),
                    "one-column",
                    "the header has a single column: a comma, tab or semicolon between names is expected");
        }
        return new DelimitedText(path, names, chosen, line, charset, comment);
    }

    private static char mostFrequent(String text) {
        char best = ',';
        long most = -1;
        for (char c : DELIMITERS) {
            long n = text.chars().filter(x -> x == c).count();
            if (n > most) {
                most = n;
                best = c;
            }
        }
        return best;
    }

    private static void requireFile(Path path, Place place) {
        if (Files.isDirectory(path)) {
            throw InputException.at(place, "is-folder", "is a folder, a recording file is needed");
        }
        if (!Files.exists(path)) {
            throw InputException.at(place, "no-such-file", "no such file");
        }
        if (!Files.isReadable(path)) {
            throw InputException.at(place, "not-readable", "cannot be read: check its permissions");
        }
    }

    private static byte[] head(Path path, Place place) {
        try (InputStream in = stream(path)) {
            byte[] head = in.readNBytes(HEAD_BYTES);
            if (head.length == 0) {
                throw InputException.at(place, "empty-file", "the file is empty");
            }
            for (byte b : head) {
                if (b == 0) {
                    throw InputException.at(
                            place, "binary-file", "is a binary file; delimited text (comma, tab, semicolon) is needed");
                }
            }
            return head;
        } catch (IOException e) {
            throw unreadable(place, e);
        }
    }

    private static Charset charset(byte[] head, Place place) {
        int controls = 0;
        for (byte b : head) {
            controls += b >= 0 && b < 32 && b != '\t' && b != '\n' && b != '\r' && b != '\f' ? 1 : 0;
        }
        if (controls * 100 > head.length) {
            throw InputException.at(
                    place, "binary-file", "is a binary file; delimited text (comma, tab, semicolon) is needed");
        }
        int whole = head.length == HEAD_BYTES ? HEAD_BYTES - 4 : head.length;
        for (int cut = whole; cut < Math.min(whole + 4, head.length + 1); cut++) {
            try {
                StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(head, 0, cut));
                return StandardCharsets.UTF_8;
            } catch (CharacterCodingException e) {
                continue; // the cut may lie inside a character: try one byte further
            }
        }
        return StandardCharsets.ISO_8859_1;
    }

    private static InputStream stream(Path path) throws IOException {
        BufferedInputStream in = new BufferedInputStream(Files.newInputStream(path), 1 << 16);
        in.mark(2);
        int first = in.read();
        int second = in.read();
        in.reset();
        return first == 0x1f && second == 0x8b ? new GZIPInputStream(in, 1 << 16) : in;
    }

    private static BufferedReader reader(Path path, Charset charset) throws IOException {
        return new BufferedReader(new InputStreamReader(stream(path), charset), 1 << 16);
    }

    private static InputException unreadable(Place place, IOException e) {
        return InputException.at(
                place, "not-readable", "cannot be read (" + e.getMessage() + "): the file may be cut short or damaged");
    }

    /** Column names as they stand in the header. */
    public List<String> header() {
        return header;
    }

    /** Line of the header, from 1. */
    public int headerLine() {
        return headerLine;
    }

    public Path path() {
        return path;
    }

    /** Reads all rows after the header. */
    public void rows(RowReader to) {
        Splitter splitter = new Splitter(delimiter);
        try (BufferedReader reader = reader(path, charset)) {
            int line = 0;
            String text = reader.readLine();
            while (text != null) {
                line++;
                if (line > headerLine && !text.isBlank() && (comment.isEmpty() || !text.startsWith(comment))) {
                    if (text.length() > LONGEST_LINE) {
                        throw InputException.at(
                                new Place(path.toString(), line, 0),
                                "line-too-long",
                                "this line has " + text.length() + " characters, at most " + LONGEST_LINE
                                        + " make sense");
                    }
                    to.row(splitter.cells(), splitter.split(text, path, line), line);
                }
                text = reader.readLine();
            }
        } catch (IOException | UncheckedIOException e) {
            throw unreadable(Place.of(path.toString()), e instanceof IOException io ? io : new IOException(e));
        }
    }

    /** Cuts one line into cells; the array is used again for the next line. */
    private static final class Splitter {
        private final char delimiter;
        private final String[] cells = new String[WIDEST];

        Splitter(char delimiter) {
            this.delimiter = delimiter;
        }

        String[] cells() {
            return cells;
        }

        int split(String text, Path path, int line) {
            int count = 0;
            int at = 0;
            while (at <= text.length()) {
                if (count == cells.length) {
                    // a row wider than any header we accept: keep what fits, the caller sees the count
                    return count;
                }
                int start = at;
                while (start < text.length() && text.charAt(start) == ' ') {
                    start++;
                }
                if (start < text.length() && text.charAt(start) == '"') {
                    int end = closing(text, start + 1, path, line);
                    cells[count++] =
                            text.substring(start + 1, end).replace("\"\"", "\"").trim();
                    int next = text.indexOf(delimiter, end);
                    at = next < 0 ? text.length() + 1 : next + 1;
                } else {
                    int end = text.indexOf(delimiter, at);
                    end = end < 0 ? text.length() : end;
                    cells[count++] = text.substring(at, end).trim();
                    at = end + 1;
                }
            }
            return count;
        }

        private static int closing(String text, int from, Path path, int line) {
            int at = from;
            while (at < text.length()) {
                if (text.charAt(at) == '"') {
                    if (at + 1 < text.length() && text.charAt(at + 1) == '"') {
                        at++;
                    } else {
                        return at;
                    }
                }
                at++;
            }
            throw InputException.at(
                    new Place(path.toString(), line, from), "open-quote", "a quote is opened here and never closed");
        }
    }
}
