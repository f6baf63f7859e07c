package hotday.core.typed;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The text of a file that a person typed: UTF-8 with or without byte order mark, of a size that people type. */
public final class TypedText {
    private static final int LARGEST = 5_000_000;

    private TypedText() {}

    /** All of a file; throws {@link InputException} when it is no text that a person typed. */
    public static String read(Path path) {
        Place place = Place.of(path.toString());
        if (Files.isDirectory(path)) {
            throw InputException.at(place, "is-folder", "is a folder, a file is needed");
        }
        if (!Files.exists(path)) {
            throw InputException.at(place, "no-such-file", "no such file");
        }
        try (InputStream in = Files.newInputStream(path)) {
            return read(place, in);
        } catch (AccessDeniedException e) {
            throw InputException.at(place, "not-readable", "may not be read by you (file permissions)");
        } catch (IOException e) {
            throw InputException.at(place, "not-readable", "cannot be read: " + e.getMessage());
        }
    }

    /**
     * All that is left in a stream.
     *
     * @param place what faults name
     */
    public static String read(Place place, InputStream in) throws IOException {
        return decoded(in.readNBytes(LARGEST + 1), place);
    }

    private static String decoded(byte[] bytes, Place place) {
        if (bytes.length > LARGEST) {
            throw InputException.at(
                    place, "file-too-large", "has more than " + LARGEST + " bytes; no file of this kind needs as many");
        }
        if (bytes.length > 1 && (bytes[0] & 0xff) + (bytes[1] & 0xff) == 0xfe + 0xff) {
            throw InputException.at(place, "binary-file", "is text in UTF-16; save it as UTF-8");
        }
        for (byte b : bytes) {
            if (b == 0) {
                throw InputException.at(place, "binary-file", "is a binary file, text is needed");
            }
        }
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw InputException.at(place, "binary-file", "is not text in UTF-8; save it as UTF-8");
        }
        String unmarked = text.startsWith("\uFEFF") ? text.substring(1) : text;
        if (unmarked.isBlank()) {
            throw InputException.at(place, "empty-file", "the file is empty");
        }
        return unmarked;
    }
}
