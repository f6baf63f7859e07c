package hotday.vehicle.sheet;

import java.util.List;

/** What curves of typed pairs have in common. */
final class Pairs {
    private Pairs() {}

    static List<Double> first(List<List<Double>> pairs) {
        return pairs.stream().map(p -> p.get(0)).toList();
    }

    static List<Double> second(List<List<Double>> pairs) {
        return pairs.stream().map(p -> p.get(1)).toList();
    }

    /** A fault when a second value is less than the one before. */
    static void mustNotFall(Section s, String key, List<List<Double>> pairs, String message) {
        for (int i = 1; i < pairs.size(); i++) {
            if (pairs.get(i).get(1) < pairs.get(i - 1).get(1)) {
                s.fault(key, message + "; pair " + (i + 1) + " does");
            }
        }
    }

    /** A fault when two first values are closer than the controller can tell apart. */
    static void mustStandApart(Section s, String key, List<List<Double>> pairs, double least, String step) {
        for (int i = 1; i < pairs.size(); i++) {
            if (pairs.get(i).get(0) - pairs.get(i - 1).get(0) < least) {
                s.fault(
                        key,
                        "the controller counts in steps of " + step + "; pair " + (i + 1) + " lies closer than two");
            }
        }
    }
}
