package hotday.signals.framelog;

import hotday.core.finding.Finding;
import hotday.core.finding.Place;
import hotday.core.finding.Severity;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Lines that are no frames: all are counted, the first few are told with what stands there. */
final class BrokenLines {
    private static final int TOLD = 5;
    private static final int SHOWN = 24;

    private final String file;
    private final List<Finding> told = new ArrayList<>();
    private long count;

    BrokenLines(String file) {
        this.file = file;
    }

    /** @param column at which it does not read, from 1 */
    void add(int line, byte[] b, int from, int to, int column, String why) {
        count++;
        if (told.size() < TOLD) {
            told.add(Finding.warning(
                    "line-broken", new Place(file, line, column), why + there(b, from + column - 1, to)));
        }
    }

    private static String there(byte[] b, int at, int to) {
        if (at >= to) {
            return "; the line ends here";
        }
        String text = new String(b, at, Math.min(SHOWN, to - at), StandardCharsets.ISO_8859_1);
        return "; here stands '" + text.replaceAll("\\p{Cntrl}", "?") + (to - at > SHOWN ? "...'" : "'");
    }

    long count() {
        return count;
    }

    /** @param frames how many lines were frames */
    List<Finding> findings(long frames) {
        if (count == 0) {
            return List.of();
        }
        List<Finding> all = new ArrayList<>(told);
        all.add(new Finding(
                "lines-broken",
                count > frames ? Severity.FAULT : Severity.WARNING,
                Optional.of(Place.of(file)),
                count + (count == 1 ? " line is" : " lines are") + " no frame and left out, beside " + frames
                        + " frames",
                Map.of("lines", count, "frames", frames)));
        return all;
    }
}
