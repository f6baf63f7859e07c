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
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/** A YAML file that a person typed, every key and value with its line and column. */
public final class TypedFile {
    private static final int LARGEST = 5_000_000;
    private static final int DEEPEST = 50;

    private final TypedMap root;
    private final Faults faults;

    private TypedFile(TypedMap root, Faults faults) {
        this.root = root;
        this.faults = faults;
    }

    /** Reads a file; throws {@link InputException} when it is no YAML mapping at all. */
    public static TypedFile read(Path path) {
        String file = path.toString();
        Node node = compose(file, text(path, Place.of(file)));
        if (!(node instanceof MappingNode mapping)) {
            throw InputException.at(
                    new Place(file, 1, 1),
                    "not-a-mapping",
                    "lines such as 'key: value' are expected at the top of the file");
        }
        Faults faults = new Faults();
        return new TypedFile(new TypedMap(file, mapping, new Place(file, 1, 1), faults, ""), faults);
    }

    private static String text(Path path, Place place) {
        if (Files.isDirectory(path)) {
            throw InputException.at(place, "is-folder", "is a folder, a file is needed");
        }
        if (!Files.exists(path)) {
            throw InputException.at(place, "no-such-file", "no such file");
        }
        try (InputStream in = Files.newInputStream(path)) {
            return decoded(in.readNBytes(LARGEST + 1), place);
        } catch (AccessDeniedException e) {
            throw InputException.at(place, "not-readable", "may not be read by you (file permissions)");
        } catch (IOException e) {
            throw InputException.at(place, "not-readable", "cannot be read: " + e.getMessage());
        }
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

    private static Node compose(String file, String text) {
        LoadSettings settings = LoadSettings.builder()
                .setLabel(file)
                .setAllowDuplicateKeys(false)
                .setMaxAliasesForCollections(10)
                .build();
        try {
            checkDepth(file, new Parse(settings).parseString(text));
            return new Compose(settings)
                    .composeString(text)
                    .orElseThrow(() ->
                            InputException.at(Place.of(file), "empty-file", "the file holds nothing but comments"));
        } catch (MarkedYamlEngineException e) {
            throw InputException.at(
                    e.getProblemMark().map(m -> place(file, m)).orElse(Place.of(file)),
                    "yaml-syntax",
                    "cannot be understood here: " + e.getProblem());
        } catch (YamlEngineException e) {
            throw InputException.at(Place.of(file), "yaml-syntax", "cannot be understood: " + e.getMessage());
        }
    }

    /** The composer descends by calling itself: what would exhaust it is refused while reading event by event. */
    private static void checkDepth(String file, Iterable<Event> events) {
        int depth = 0;
        for (Event event : events) {
            if (event instanceof CollectionStartEvent) {
                depth++;
            } else if (event instanceof CollectionEndEvent) {
                depth--;
            }
            if (depth > DEEPEST) {
                throw InputException.at(
                        event.getStartMark().map(m -> place(file, m)).orElse(Place.of(file)),
                        "nested-too-deep",
                        "is nested more than " + DEEPEST + " levels deep");
            }
        }
    }

    static Place place(String file, Mark mark) {
        return new Place(file, mark.getLine() + 1, mark.getColumn() + 1);
    }

    public TypedMap root() {
        return root;
    }

    /** Faults found so far while values were asked for. */
    public Faults faults() {
        return faults;
    }
}
