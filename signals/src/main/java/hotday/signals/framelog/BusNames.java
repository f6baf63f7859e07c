package hotday.signals.framelog;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Names of the networks of a recording, numbered as they come. */
final class BusNames {
    /** More than a recorder has sockets for. */
    static final int MOST = 64;

    private final List<String> names = new ArrayList<>();
    private final byte[][] spelled = new byte[MOST][];
    private int last;

    /** The number of a name; -1 when there are too many. Allocates for a new name only. */
    int number(byte[] b, int from, int to) {
        if (!names.isEmpty() && is(last, b, from, to)) {
            return last;
        }
        for (int i = 0; i < names.size(); i++) {
            if (is(i, b, from, to)) {
                last = i;
                return i;
            }
        }
        return names.size() == MOST ? -1 : add(b, from, to);
    }

    private boolean is(int i, byte[] b, int from, int to) {
        return Arrays.equals(spelled[i], 0, spelled[i].length, b, from, to);
    }

    private int add(byte[] b, int from, int to) {
        last = names.size();
        spelled[last] = Arrays.copyOfRange(b, from, to);
        names.add(new String(spelled[last], StandardCharsets.ISO_8859_1));
        return last;
    }

    List<String> all() {
        return List.copyOf(names);
    }
}
