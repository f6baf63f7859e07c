package hotday.signals.uds;

import hotday.signals.isotp.IsoTpMessage;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/** Takes requests and answers of ISO 14229-1 apart. No state. */
public final class UdsReader {
    /** Service that reads data by identifier. */
    public static final int READ = 0x22;
    /** Service that takes over inputs and outputs. */
    public static final int CONTROL = 0x2F;
    /** Added to a service by whoever answers it. */
    public static final int ANSWERED = 0x40;
    /** First byte of a refusal. */
    public static final int REFUSED = 0x7F;

    private static final HexFormat HEX = HexFormat.of().withUpperCase();
    /** Above this an answer is not cut apart. */
    private static final int LONGEST = 4095;
    /** More than one way to cut an answer apart is as good as many. */
    private static final int AMBIGUOUS = 2;

    private UdsReader() {}

    /** Whether a message asks, rather than answers. */
    public static boolean isRequest(IsoTpMessage message) {
        return (message.at(0) & ANSWERED) == 0;
    }

    /** The identifiers that a request asks for; empty when it is no whole request of service 22. */
    public static List<Integer> asked(IsoTpMessage message) {
        if (message.at(0) != READ || message.length() % 2 == 0) {
            return List.of();
        }
        List<Integer> identifiers = new ArrayList<>();
        for (int i = 1; i < message.length(); i += 2) {
            identifiers.add(identifier(message, i));
        }
        return List.copyOf(identifiers);
    }

    /**
     * What an answer says.
     *
     * @param asked identifiers in the order in which they were asked for; empty when the request was not seen, then the
     *     answer is taken for one of a single identifier
     * @return empty when the message is no whole answer
     */
    public static List<UdsAnswer> answers(IsoTpMessage message, List<Integer> asked) {
        int first = message.at(0);
        int length = message.length();
        if (first == REFUSED) {
            return length < 3 ? List.of() : List.of(new UdsAnswer.Refused(message.at(1), message.at(2)));
        }
        if (isRequest(message)) {
            return List.of();
        }
        return switch (first - ANSWERED) {
            case READ -> length < 4 ? List.of() : data(message, asked);
            case CONTROL ->
                length < 4
                        ? List.of()
                        : List.of(
                                new UdsAnswer.Control(identifier(message, 1), message.at(3), hex(message, 4, length)));
            default -> List.of(new UdsAnswer.Done(first - ANSWERED, hex(message, 1, length)));
        };
    }

    private static List<UdsAnswer> data(IsoTpMessage message, List<Integer> asked) {
        if (asked.size() < 2) {
            return List.of(new UdsAnswer.Data(identifier(message, 1), hex(message, 3, message.length())));
        }
        int[][] ways = message.length() <= LONGEST ? ways(message, asked) : new int[asked.size()][2];
        if (ways[0][1] != 1) {
            return List.of(new UdsAnswer.Several(asked, hex(message, 1, message.length())));
        }
        List<UdsAnswer> parts = new ArrayList<>();
        int from = 1;
        for (int k = 0; k < asked.size(); k++) {
            int to = k + 1 < asked.size() ? next(ways[k + 1], from + 3) : message.length();
            parts.add(new UdsAnswer.Data(asked.get(k), hex(message, from + 2, to)));
            from = to;
        }
        return parts;
    }

    private static int next(int[] ways, int from) {
        int at = from;
        while (ways[at] == 0) {
            at++;
        }
        return at;
    }

    /**
     * In how many ways the rest of an answer can be cut apart when identifier k stands at a place; each has at least one
     * byte of data. Backwards, so that any answer takes a time in proportion to its length.
     */
    private static int[][] ways(IsoTpMessage message, List<Integer> asked) {
        int length = message.length();
        int[][] ways = new int[asked.size()][length];
        for (int k = asked.size() - 1; k >= 0; k--) {
            int behind = k == asked.size() - 1 ? 1 : 0;
            for (int at = length - 3; at >= 1; at--) {
                if (k < asked.size() - 1) {
                    behind = Math.min(AMBIGUOUS, behind + (at + 3 < length ? ways[k + 1][at + 3] : 0));
                }
                ways[k][at] = identifier(message, at) == asked.get(k) ? behind : 0;
            }
        }
        return ways;
    }

    private static int identifier(IsoTpMessage message, int at) {
        return message.at(at) << 8 | message.at(at + 1);
    }

    private static String hex(IsoTpMessage message, int from, int to) {
        return HEX.formatHex(message.bytes(from), 0, to - from);
    }
}
