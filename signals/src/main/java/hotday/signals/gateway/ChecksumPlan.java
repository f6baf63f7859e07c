package hotday.signals.gateway;

import hotday.core.finding.Place;
import java.util.List;

/**
 * How a checksum is worked out, as typed.
 *
 * @param generator of a cyclic redundancy check
 * @param inverted laid over the result by exclusive or
 * @param bytes of the payload that it covers, from 0; empty for all but its own
 * @param dataId octets that enter beside them without being sent
 * @param idLast whether they enter last, not first
 */
record ChecksumPlan(
        Kind kind,
        long generator,
        long init,
        long inverted,
        boolean reflected,
        List<Integer> bytes,
        List<Integer> dataId,
        boolean idLast,
        Place place) {
    enum Kind {
        /** Generator 1D, start FF, inverted. */
        J1850("crc-8 sae j1850"),
        CRC("crc"),
        XOR("xor"),
        SUM("sum");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    ChecksumPlan {
        bytes = List.copyOf(bytes);
        dataId = List.copyOf(dataId);
    }
}
