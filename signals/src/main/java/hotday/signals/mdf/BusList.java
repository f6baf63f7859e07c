package hotday.signals.mdf;

import java.util.ArrayList;
import java.util.List;

/** Networks of a recording, numbered as they come. */
final class BusList {
    private final List<String> names = new ArrayList<>();

    /** @param channel number that the recorder gave it */
    int number(int channel) {
        return of("can" + channel);
    }

    /** One that the recorder did not number. */
    int unnamed() {
        return of("can");
    }

    private int of(String name) {
        int at = names.indexOf(name);
        if (at < 0) {
            names.add(name);
            return names.size() - 1;
        }
        return at;
    }

    List<String> all() {
        return List.copyOf(names);
    }
}
