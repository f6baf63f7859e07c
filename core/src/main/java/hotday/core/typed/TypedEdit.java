package hotday.core.typed;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.CollectionNode;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * Changes single values in the text of a typed file where they stand, or takes one out. Everything else, comments above all, stays as somebody wrote it;
 * a key that is not there is added to its block.
 */
public final class TypedEdit {
    private static final Pattern KEY = Pattern.compile("[a-z][a-z0-9_]*(\\.[a-z][a-z0-9_]*)*");
    private static final Pattern VALUE = Pattern.compile("[\\p{L}\\p{N}.+\\-\\[\"'][^\\p{Cntrl}]{0,400}");

    private TypedEdit() {}

    /**
     * The text with new values.
     *
     * @param file what places call it
     * @param changes full key to what shall stand behind it, as a person types it
     */
    public static String of(String file, String text, Map<String, String> changes) {
        String out = text;
        for (Map.Entry<String, String> change : changes.entrySet()) {
            check(file, change.getKey(), change.getValue());
            out = changed(file, out, change.getKey(), change.getValue().strip());
        }
        return out;
    }

    /**
     * Refuses what is no key, and a value that would be more than one.
     *
     * @param source where both come from; faults are placed at it and the key
     */
    public static void check(String source, String key, String value) {
        Place place = Place.of(source + " " + key);
        if (!KEY.matcher(key).matches()) {
            throw InputException.at(place, "not-a-key", "'" + key + "' is no key such as radiator.depth");
        }
        if (!VALUE.matcher(value.strip()).matches() || !single(value.strip())) {
            throw InputException.at(
                    place, "not-a-value", "'" + value.strip() + "' is no single value such as 120 mm or [a, b]");
        }
    }

    private static boolean single(String value) {
        try {
            MappingNode read = TypedFile.mapping("value", "{value: " + value + "}");
            return read.getValue().size() == 1 && !(read.getValue().get(0).getValueNode() instanceof MappingNode);
        } catch (InputException unreadable) {
            return false;
        }
    }

    private static String changed(String file, String text, String key, String value) {
        List<String> words = List.of(key.split("\\."));
        MappingNode block = TypedFile.mapping(file, text);
        for (int i = 0; i < words.size(); i++) {
            Optional<NodeTuple> found = find(block, words.get(i));
            if (found.isEmpty()) {
                return added(text, block, words.subList(i, words.size()), value);
            }
            Node node = found.get().getValueNode();
            if (i == words.size() - 1) {
                return replaced(file, text, key, found.get(), value);
            }
            if (!(node instanceof MappingNode inner)) {
                throw InputException.at(
                        place(file, node), "not-a-mapping", "'" + words.get(i) + "' holds a single value, no block");
            }
            block = inner;
        }
        throw new IllegalStateException(key);
    }

    /**
     * The text without a value, and with it whatever stands behind it on a line of its own; the same text where there is no such value.
     *
     * @param file what places call it
     */
    public static String without(String file, String text, String key) {
        List<String> words = List.of(key.split("\\."));
        MappingNode block = TypedFile.mapping(file, text);
        for (int i = 0; i < words.size(); i++) {
            Optional<NodeTuple> found = find(block, words.get(i));
            if (found.isEmpty()) {
                return text;
            }
            Node node = found.get().getValueNode();
            if (i == words.size() - 1) {
                return cut(file, text, key, block, found.get());
            }
            if (!(node instanceof MappingNode inner)) {
                return text;
            }
            block = inner;
        }
        throw new IllegalStateException(key);
    }

    private static String cut(String file, String text, String key, MappingNode block, NodeTuple entry) {
        refuseLines(file, key, entry.getValueNode());
        int start = index(text, entry.getKeyNode().getStartMark());
        int end = index(text, entry.getValueNode().getEndMark());
        if (block.getFlowStyle() == FlowStyle.FLOW) {
            int at = block.getValue().indexOf(entry);
            boolean last = at == block.getValue().size() - 1;
            int from = last && at > 0
                    ? index(text, block.getValue().get(at - 1).getValueNode().getEndMark())
                    : start;
            int to = last
                    ? end
                    : index(text, block.getValue().get(at + 1).getKeyNode().getStartMark());
            return text.substring(0, from) + text.substring(to);
        }
        int line = text.lastIndexOf('\n', start - 1) + 1;
        int next = text.indexOf('\n', end);
        return text.substring(0, line) + (next < 0 ? "" : text.substring(next + 1));
    }

    private static void refuseLines(String file, String key, Node node) {
        if (node instanceof CollectionNode<?> list && list.getFlowStyle() == FlowStyle.BLOCK) {
            throw InputException.at(
                    place(file, node),
                    "in-lines",
                    "'" + key
                            + "' is typed over several lines, perhaps with comments that would be lost; change it in the file");
        }
    }

    private static Optional<NodeTuple> find(MappingNode block, String word) {
        return block.getValue().stream()
                .filter(t -> t.getKeyNode() instanceof ScalarNode key
                        && key.getValue().equals(word))
                .findFirst();
    }

    private static Place place(String file, Node node) {
        return node.getStartMark().map(TypedFile::place).orElse(Place.of(file));
    }

    private static String replaced(String file, String text, String key, NodeTuple entry, String value) {
        Node node = entry.getValueNode();
        if (node instanceof SequenceNode list && list.getFlowStyle() == FlowStyle.BLOCK) {
            int after = index(text, entry.getKeyNode().getEndMark());
            int end = end(text, list);
            int line = text.indexOf('\n', end);
            if (text.substring(after, line < 0 ? text.length() : line).indexOf('#') < 0) {
                return text.substring(0, after) + ": " + value + text.substring(end);
            }
        }
        refuseLines(file, key, node);
        int start = index(text, node.getStartMark());
        int end = index(text, node.getEndMark());
        return text.substring(0, start) + (start == end ? " " : "") + value + text.substring(end);
    }

    private static String added(String text, MappingNode block, List<String> words, String value) {
        StringBuilder entry = new StringBuilder(words.get(0)).append(": ");
        words.subList(1, words.size())
                .forEach(word -> entry.append('{').append(word).append(": "));
        entry.append(value).append("}".repeat(words.size() - 1));
        if (block.getValue().isEmpty()) {
            int inside = index(text, block.getStartMark()) + 1;
            return text.substring(0, inside) + entry + text.substring(inside);
        }
        int end = end(text, block);
        if (block.getFlowStyle() == FlowStyle.FLOW) {
            return text.substring(0, end) + ", " + entry + text.substring(end);
        }
        int line = text.indexOf('\n', end);
        String separator = text.contains("\r\n") ? "\r\n" : "\n";
        String indent = " "
                .repeat(block.getValue()
                        .get(0)
                        .getKeyNode()
                        .getStartMark()
                        .map(Mark::getColumn)
                        .orElse(0));
        return line < 0
                ? text + separator + indent + entry + separator
                : text.substring(0, line + 1) + indent + entry + separator + text.substring(line + 1);
    }

    /** Behind the last thing a block holds. */
    private static int end(String text, CollectionNode<?> block) {
        Node last = lastOf(block);
        while (last instanceof CollectionNode<?> inner
                && inner.getFlowStyle() == FlowStyle.BLOCK
                && !inner.getValue().isEmpty()) {
            last = lastOf(inner);
        }
        return index(text, last.getEndMark());
    }

    private static Node lastOf(CollectionNode<?> block) {
        Object last = block.getValue().get(block.getValue().size() - 1);
        return last instanceof NodeTuple tuple ? tuple.getValueNode() : (Node) last;
    }

    /** Marks count code points, text counts chars. */
    private static int index(String text, Optional<Mark> mark) {
        return text.offsetByCodePoints(0, mark.orElseThrow().getIndex());
    }
}
