package hotday.core.typed;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/**
 * Values laid over a typed file: {@code radiator.depth=40 mm} stands there as if it had been typed so. Keys and values keep a
 * place of their own, so that a fault in them names what was typed over, not the file.
 */
public final class Overlay {
    private static final Pattern KEY = Pattern.compile("[a-z][a-z0-9_]*(\\.[a-z][a-z0-9_]*)*");

    private final List<MappingNode> over = new ArrayList<>();

    private Overlay() {}

    /** Nothing laid over. */
    public static Overlay none() {
        return new Overlay();
    }

    /**
     * Reads {@code key=value} texts; the value is what could stand behind the key in the file.
     *
     * @param source what places call them, such as the option they came from
     */
    public static Overlay of(String source, List<String> texts) {
        Overlay overlay = new Overlay();
        for (String text : texts) {
            overlay.over.add(nested(source, text));
        }
        return overlay;
    }

    private static MappingNode nested(String source, String text) {
        int equals = text.indexOf('=');
        String key = equals < 0 ? text : text.substring(0, equals).trim();
        String label = source + " " + key;
        if (equals < 0 || !KEY.matcher(key).matches()) {
            throw InputException.at(
                    Place.of(source),
                    "not-key-value",
                    "'" + text + "' must read key=value, such as radiator.depth=40 mm");
        }
        StringBuilder yaml = new StringBuilder();
        String[] words = key.split("\\.");
        for (String word : words) {
            yaml.append('{').append(word).append(": ");
        }
        yaml.append(text.substring(equals + 1).trim()).append("}".repeat(words.length));
        return TypedFile.mapping(label, yaml.toString());
    }

    /** The file with everything laid over it. */
    MappingNode on(MappingNode file) {
        MappingNode out = file;
        for (MappingNode each : over) {
            out = merged(out, each);
        }
        return out;
    }

    private static MappingNode merged(MappingNode under, MappingNode over) {
        List<NodeTuple> all = new ArrayList<>(under.getValue());
        for (NodeTuple tuple : over.getValue()) {
            int at = indexOf(all, tuple.getKeyNode());
            if (at < 0) {
                all.add(tuple);
            } else if (all.get(at).getValueNode() instanceof MappingNode inner
                    && tuple.getValueNode() instanceof MappingNode laid) {
                all.set(at, new NodeTuple(all.get(at).getKeyNode(), merged(inner, laid)));
            } else {
                all.set(at, tuple);
            }
        }
        return new MappingNode(
                under.getTag(), true, all, under.getFlowStyle(), under.getStartMark(), under.getEndMark());
    }

    private static int indexOf(List<NodeTuple> tuples, Node key) {
        for (int i = 0; i < tuples.size(); i++) {
            if (tuples.get(i).getKeyNode() instanceof ScalarNode own
                    && key instanceof ScalarNode wanted
                    && own.getValue().equals(wanted.getValue())) {
                return i;
            }
        }
        return -1;
    }
}
