package hotday.core.typed;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.core.unit.Nearest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/**
 * A folder of parts that several files share: {@code fan: {fan-16in: {note: ..., free_flow: ...}}}. A block that says
 * {@code part: fan-16in} takes from the part what it does not say itself, block by block within. Every key keeps the place
 * where it was typed. Files are read when the first part is asked for. One instance serves one thread.
 */
public final class Shelf {
    private static final String PART = "part";
    private static final String NOTE = "note";
    /** Blocks inside blocks; deeper a part is not looked for. */
    private static final int DEEPEST = 3;

    private final List<Path> folders;
    private Optional<Map<String, Map<String, MappingNode>>> read = Optional.empty();

    private Shelf(List<Path> folders) {
        this.folders = folders;
    }

    /** The first of these folders that exists; files of it that end in {@code .yaml} hold parts. */
    public static Shelf firstOf(Path... folders) {
        return new Shelf(List.of(folders));
    }

    /** A file with the parts it asks for filled in. */
    MappingNode filled(MappingNode file, Faults faults) {
        return filled(file, "", 0, faults);
    }

    private MappingNode filled(MappingNode block, String path, int depth, Faults faults) {
        List<NodeTuple> own = new ArrayList<>();
        Optional<Node> part = Optional.empty();
        for (NodeTuple tuple : block.getValue()) {
            String key = word(tuple.getKeyNode());
            if (key.equals(PART) && depth > 0) {
                part.ifPresent(first -> faults.add(
                        "key-twice", place(tuple.getKeyNode()), "'part' stands here again; first at " + place(first)));
                part = Optional.of(tuple.getValueNode());
            } else if (tuple.getValueNode() instanceof MappingNode inner && depth < DEEPEST) {
                String inside = path.isEmpty() ? key : path + "." + key;
                own.add(new NodeTuple(tuple.getKeyNode(), filled(inner, inside, depth + 1, faults)));
            } else {
                own.add(tuple);
            }
        }
        MappingNode without = like(block, own);
        return part.flatMap(id -> find(path, id, faults))
                .map(found -> filled(without, found, 0))
                .orElse(without);
    }

    private static MappingNode like(MappingNode block, List<NodeTuple> content) {
        return new MappingNode(
                block.getTag(), true, content, block.getFlowStyle(), block.getStartMark(), block.getEndMark());
    }

    /** What stands in the block, and what only the part says. */
    private static MappingNode filled(MappingNode block, MappingNode part, int depth) {
        List<NodeTuple> all = new ArrayList<>();
        for (NodeTuple own : block.getValue()) {
            Optional<Node> other = value(part, word(own.getKeyNode()));
            boolean both = own.getValueNode() instanceof MappingNode && other.orElse(null) instanceof MappingNode;
            all.add(
                    both && depth < DEEPEST
                            ? new NodeTuple(
                                    own.getKeyNode(),
                                    filled((MappingNode) own.getValueNode(), (MappingNode) other.get(), depth + 1))
                            : own);
        }
        for (NodeTuple more : part.getValue()) {
            if (value(block, word(more.getKeyNode())).isEmpty()) {
                all.add(more);
            }
        }
        return like(block, all);
    }

    private static Optional<Node> value(MappingNode block, String key) {
        return block.getValue().stream()
                .filter(t -> word(t.getKeyNode()).equals(key))
                .map(NodeTuple::getValueNode)
                .findFirst();
    }

    private static String word(Node node) {
        return node instanceof ScalarNode scalar ? scalar.getValue() : "";
    }

    /** The part without its note; empty after a fault. */
    private Optional<MappingNode> find(String kind, Node id, Faults faults) {
        String wanted = word(id);
        Map<String, Map<String, MappingNode>> all = parts(faults);
        MappingNode found = all.getOrDefault(kind, Map.of()).get(wanted);
        if (found == null) {
            faults.add("part-unknown", place(id), unknown(kind, wanted, all));
            return Optional.empty();
        }
        if (value(found, NOTE).map(Shelf::word).filter(n -> !n.isBlank()).isEmpty()) {
            faults.add(
                    "key-missing", place(found), "part '" + wanted + "' needs a 'note': where its numbers come from");
        }
        value(found, PART)
                .ifPresent(n -> faults.add(
                        "part-of-part", place(n), "a part cannot stand on another part; write its values out"));
        return Optional.of(like(
                found,
                found.getValue().stream()
                        .filter(t -> !List.of(NOTE, PART).contains(word(t.getKeyNode())))
                        .toList()));
    }

    private String unknown(String kind, String wanted, Map<String, Map<String, MappingNode>> all) {
        String asked = "'" + kind + ".part' is '" + wanted + "', ";
        if (all.isEmpty()) {
            return asked + "but there are no parts: put files such as shelf/parts.yaml into "
                    + folders.stream().map(Path::toString).collect(Collectors.joining(" or "));
        }
        List<String> known = List.copyOf(all.getOrDefault(kind, Map.of()).keySet());
        if (known.isEmpty()) {
            return asked + "but the shelf has nothing for '" + kind + "'; it has parts for "
                    + String.join(", ", all.keySet());
        }
        String meant = Nearest.to(wanted, known)
                .map(n -> " (did you mean '" + n + "'?)")
                .orElse("");
        return asked + "which the shelf does not have" + meant + ". It has: " + String.join(", ", known);
    }

    private Map<String, Map<String, MappingNode>> parts(Faults faults) {
        if (read.isEmpty()) {
            Map<String, Map<String, MappingNode>> all = new TreeMap<>();
            files().forEach(file -> add(TypedFile.mapping(file), all, faults));
            read = Optional.of(all);
        }
        return read.get();
    }

    private List<Path> files() {
        Optional<Path> folder = folders.stream().filter(Files::isDirectory).findFirst();
        if (folder.isEmpty()) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder.get())) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        } catch (IOException e) {
            throw InputException.at(
                    Place.of(folder.get().toString()), "not-readable", "cannot be listed: " + e.getMessage());
        }
    }

    private static void add(MappingNode file, Map<String, Map<String, MappingNode>> all, Faults faults) {
        for (NodeTuple kind : file.getValue()) {
            String name = word(kind.getKeyNode());
            Map<String, MappingNode> shelf = all.computeIfAbsent(name, k -> new TreeMap<>());
            if (!(kind.getValueNode() instanceof MappingNode parts)) {
                faults.add(
                        "not-a-mapping",
                        place(kind.getValueNode()),
                        "'" + name + "' must hold parts such as 'my-" + name + ": {note: catalogue page, ...}'");
                continue;
            }
            for (NodeTuple part : parts.getValue()) {
                String id = word(part.getKeyNode());
                if (!(part.getValueNode() instanceof MappingNode content)) {
                    faults.add(
                            "not-a-mapping", place(part.getValueNode()), "part '" + id + "' must hold keys and values");
                } else if (shelf.putIfAbsent(id, content) != null) {
                    faults.add(
                            "part-twice",
                            place(part.getKeyNode()),
                            "'" + id + "' is on the shelf already, at " + place(shelf.get(id)));
                }
            }
        }
    }

    private static Place place(Node node) {
        return node.getStartMark().map(TypedFile::place).orElse(Place.of(""));
    }
}
