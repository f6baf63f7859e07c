package hotday.core.typed;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import java.nio.file.Path;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.composer.Composer;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.parser.Parser;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/** A YAML file that a person typed, every key and value with its line and column. */
public final class TypedFile {
    private final TypedMap root;
    private final Faults faults;

    private TypedFile(TypedMap root, Faults faults) {
        this.root = root;
        this.faults = faults;
    }

    /** Reads a file; throws {@link InputException} when it is no YAML mapping at all. */
    public static TypedFile read(Path path) {
        return of(path.toString(), TypedText.read(path));
    }

    /**
     * The same for text that was read already.
     *
     * @param file what places call it
     */
    public static TypedFile of(String file, String text) {
        return typed(file, mapping(file, text), new Faults());
    }

    /** The same for text whose blocks may ask for parts, with values laid over it; {@code path} is what places call it. */
    public static TypedFile of(Path path, String text, Shelf shelf, Overlay overlay) {
        Faults faults = new Faults();
        return typed(path.toString(), shelf.filled(overlay.on(mapping(path.toString(), text)), faults), faults);
    }

    private static TypedFile typed(String file, MappingNode mapping, Faults faults) {
        return new TypedFile(new TypedMap(mapping, new Place(file, 1, 1), faults, ""), faults);
    }

    static MappingNode mapping(Path path) {
        return mapping(path.toString(), TypedText.read(path));
    }

    static MappingNode mapping(String file, String text) {
        if (compose(file, text) instanceof MappingNode mapping) {
            return mapping;
        }
        throw InputException.at(
                new Place(file, 1, 1),
                "not-a-mapping",
                "lines such as 'key: value' are expected at the top of the file");
    }

    private static Node compose(String file, String text) {
        LoadSettings settings = LoadSettings.builder()
                .setLabel(file)
                .setAllowDuplicateKeys(false)
                .setMaxAliasesForCollections(10)
                .build();
        try {
            StreamReader reader = new StreamReader(settings, text);
            Parser parser = new ShallowParser(file, new ParserImpl(settings, reader));
            return new Composer(settings, parser)
                    .getSingleNode()
                    .orElseThrow(() ->
                            InputException.at(Place.of(file), "empty-file", "the file holds nothing but comments"));
        } catch (MarkedYamlEngineException e) {
            throw InputException.at(
                    e.getProblemMark().map(TypedFile::place).orElse(Place.of(file)),
                    "yaml-syntax",
                    "cannot be understood here: " + e.getProblem());
        } catch (YamlEngineException e) {
            throw InputException.at(Place.of(file), "yaml-syntax", "cannot be understood: " + e.getMessage());
        }
    }

    static Place place(Mark mark) {
        return new Place(mark.getName(), mark.getLine() + 1, mark.getColumn() + 1);
    }

    public TypedMap root() {
        return root;
    }

    /** Faults found so far while values were asked for. */
    public Faults faults() {
        return faults;
    }
}
