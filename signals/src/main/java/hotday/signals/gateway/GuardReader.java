package hotday.signals.gateway;

import hotday.core.typed.TypedMap;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads how the checksum of a message is worked out. */
final class GuardReader {
    private static final Pattern NUMBER = Pattern.compile("0[xX]([0-9a-fA-F]{1,8})|([0-9]{1,10})");
    private static final Pattern BYTES = Pattern.compile("([0-7])(?:\\s*-\\s*([0-7]))?");
    private static final long LARGEST = 0xFFFF_FFFFL;
    private static final int OCTET = 0xFF;
    private static final int LONGEST_ID = 8;

    private final TypedMap map;

    private GuardReader(TypedMap map) {
        this.map = map;
    }

    /** Empty where the kind is missing or wrong; that is booked. */
    static Optional<ChecksumPlan> read(TypedMap map) {
        map.refuseUnknown("kind", "poly", "init", "xor", "reflected", "bytes", "data_id", "data_id_at");
        String[] words = Arrays.stream(ChecksumPlan.Kind.values())
                .map(ChecksumPlan.Kind::word)
                .toArray(String[]::new);
        if (!map.has("kind")) {
            map.requiredText("kind");
            return Optional.empty();
        }
        return map.text("kind", words)
                .map(word -> new GuardReader(map)
                        .plan(ChecksumPlan.Kind.values()[Arrays.asList(words).indexOf(word)]));
    }

    private ChecksumPlan plan(ChecksumPlan.Kind kind) {
        boolean crc = kind == ChecksumPlan.Kind.CRC;
        refuse(!crc, "poly", "reflected");
        refuse(kind == ChecksumPlan.Kind.J1850, "init", "xor");
        if (map.has("data_id_at") && !map.has("data_id")) {
            map.fault("data_id_at", "'data_id_at' says where 'data_id' enters; there is none");
        }
        return new ChecksumPlan(
                kind,
                number("poly", crc),
                number("init", crc),
                number("xor", crc),
                map.text("reflected", "yes", "no").orElse("no").equals("yes"),
                bytes(),
                dataId(),
                map.text("data_id_at", "first", "last").orElse("first").equals("last"),
                map.place());
    }

    private void refuse(boolean not, String... keys) {
        for (String key : keys) {
            if (not && map.has(key)) {
                map.fault(key, "'" + key + "' does not go with this 'kind'; leave it out, or type 'kind: crc'");
            }
        }
    }

    private long number(String key, boolean needed) {
        Optional<String> typed = needed ? map.requiredText(key) : map.text(key);
        return typed.map(t -> number(key, t, LARGEST)).orElse(0L);
    }

    private long number(String key, String typed, long largest) {
        Matcher m = NUMBER.matcher(typed.strip());
        long value =
                !m.matches() ? -1 : m.group(1) != null ? Long.parseLong(m.group(1), 16) : Long.parseLong(typed.strip());
        if (value < 0 || value > largest) {
            map.fault(
                    key,
                    String.format(
                            "'%s' is '%s'; a whole number such as 0x1D is needed, up to 0x%X", key, typed, largest));
            return 0;
        }
        return value;
    }

    /** "0-6", "1-3, 5". */
    private List<Integer> bytes() {
        List<Integer> all = new ArrayList<>();
        map.text("bytes").ifPresent(typed -> {
            for (String part : typed.split(",", -1)) {
                Matcher m = BYTES.matcher(part.strip());
                int from = m.matches() ? Integer.parseInt(m.group(1)) : 1;
                int to = !m.matches() ? 0 : m.group(2) == null ? from : Integer.parseInt(m.group(2));
                if (to < from) {
                    map.fault(
                            "bytes",
                            "'bytes' is '" + typed
                                    + "'; bytes are typed like 0-6 or '1-3, 5', the first is 0, the last 7");
                    return;
                }
                for (int i = from; i <= to; i++) {
                    all.add(i);
                }
            }
        });
        if (all.stream().distinct().count() < all.size()) {
            map.fault("bytes", "'bytes' names a byte twice");
        }
        return all;
    }

    private List<Integer> dataId() {
        List<Integer> all = new ArrayList<>();
        List<String> typed = map.texts("data_id");
        if (typed.size() > LONGEST_ID) {
            map.fault("data_id", "'data_id' lists " + typed.size() + " octets; up to " + LONGEST_ID + " are read");
            return all;
        }
        typed.forEach(t -> all.add((int) number("data_id", t, OCTET)));
        return all;
    }
}
