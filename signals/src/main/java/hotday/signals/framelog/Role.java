package hotday.signals.framelog;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a column of a recording is, by its name. */
enum Role {
    TIME("time|timestamp|times|t|ts|timestampepoch|epoch|epochtime|timeoffset|timerel|timeabs|timestampabs"),
    ID("id|canid|identifier|arbitrationid|arbid|msgid|messageid|frameid"),
    EXTENDED("extended|ext|ide|xtd|isextended|isextendedid|extendedid"),
    PGN("pgn|parametergroup|parametergroupnumber"),
    PRIORITY("priority|prio"),
    SOURCE("source|sa|src|sourceaddress"),
    DESTINATION("destination|da|dst|dest|destinationaddress"),
    BUS("bus|channel|buschannel|interface|network|busname|iface"),
    LENGTH("len|length|datalength|payloadlength|bytes|size"),
    LENGTH_CODE("dlc"),
    DATA("data|databytes|payload|databytehex|datahex"),
    REMOTE("rtr|remote|isremote|remoteframe"),
    ERROR("error|iserror|errorframe|iserrorframe");

    private static final Pattern UNIT = Pattern.compile("(?:[\\[(]([^\\])]*)[\\])]|[_ ](\\p{L}{1,4}))\\s*$");
    private static final Pattern BYTE = Pattern.compile("(?:d|b|data|byte|databyte)(\\d{1,2})");

    private final Pattern names;

    Role(String names) {
        this.names = Pattern.compile(names);
    }

    /** The role of a header cell; empty for those that no frame needs. */
    static Optional<Role> of(String header) {
        Optional<Role> whole = byPlain(plain(header));
        return whole.isPresent() ? whole : byPlain(plain(UNIT.matcher(header).replaceAll("")));
    }

    private static Optional<Role> byPlain(String plain) {
        for (Role role : values()) {
            if (role.names.matcher(plain).matches()) {
                return Optional.of(role);
            }
        }
        return Optional.empty();
    }

    /** The unit that a header cell names in brackets or as its last word. */
    static Optional<StampUnit> unit(String header) {
        Matcher m = UNIT.matcher(header);
        return m.find() ? StampUnit.of(m.group(1) == null ? m.group(2) : m.group(1)) : Optional.empty();
    }

    /** The base that a header cell names in brackets or as its last word. */
    static Optional<NumberBase> base(String header) {
        Matcher m = UNIT.matcher(header);
        String word = m.find() ? m.group(1) == null ? m.group(2) : m.group(1) : "";
        return switch (word.strip().toLowerCase(Locale.ROOT)) {
            case "hex", "h" -> Optional.of(NumberBase.HEX);
            case "dec", "decimal", "d" -> Optional.of(NumberBase.DECIMAL);
            default -> Optional.empty();
        };
    }

    /** The number of a column that holds one byte of payload; -1 for others. */
    static int byteNumber(String header) {
        Matcher m = BYTE.matcher(plain(header));
        return m.matches() ? Integer.parseInt(m.group(1)) : -1;
    }

    /** In words. */
    String title() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Letters and digits, lower case. */
    private static String plain(String header) {
        return header.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }
}
