package hotday.signals.framelog;

import hotday.signals.frame.Frame;

/** A row of a recording of delimited text, its columns found by their names. */
final class DelimitedLine implements LineForm {
    /** More cells than a frame of 64 bytes with all about it. */
    static final int WIDEST = 128;

    private static final int[] CODED = {12, 16, 20, 24, 32, 48, 64};
    private static final int LOWEST_BROADCAST = 240;
    private static final byte[] TRUE = {'t', 'r', 'u', 'e'};
    private static final byte[] FALSE = {'f', 'a', 'l', 's', 'e'};
    private static final byte[] YES = {'y', 'e', 's'};
    private static final byte[] NO = {'n', 'o'};

    private final BusNames buses;
    private final Columns columns;
    private final byte delimiter;
    private final char mark;
    private final int radix;
    private final int[] from = new int[WIDEST];
    private final int[] to = new int[WIDEST];
    private final Stamp stamp = new Stamp();
    private final byte[] data = new byte[Frame.LONGEST];
    private byte[] b = data;
    private int cells;
    private int at;
    private String why = "";
    private int id;
    private boolean extended;
    private int length;

    DelimitedLine(BusNames buses, Columns columns) {
        this.buses = buses;
        this.columns = columns;
        this.delimiter = (byte) columns.delimiter();
        this.mark = columns.delimiter() == ',' ? '.' : ',';
        this.radix = columns.data().radix();
    }

    @Override
    public String why() {
        return why;
    }

    @Override
    public String title() {
        String form = columns.of(Role.PGN) >= 0 ? "rows with parameter groups" : "rows with identifiers";
        return form + (columns.timed() ? ", time in " + columns.stampUnit().symbol() : ", without time stamps");
    }

    @Override
    public int read(byte[] bytes, int first, int last, Frame frame) {
        b = bytes;
        at = first;
        if (isBlank(first, last)) {
            return NOTHING;
        }
        if (!cut(first, last) || !time() || !identifier() || !payload() || !show(frame)) {
            return at - first + 1;
        }
        return FRAME;
    }

    private boolean isBlank(int first, int last) {
        int i = first;
        while (i < last && Digits.isBlank(b[i])) {
            i++;
        }
        return i == last;
    }

    private boolean fail(int place, String what) {
        at = place;
        why = what;
        return false;
    }

    private boolean cut(int first, int last) {
        cells = 0;
        int begin = first;
        boolean quoted = false;
        for (int i = first; i <= last; i++) {
            if (i == last || b[i] == delimiter && !quoted) {
                if (cells == WIDEST) {
                    return fail(begin, "more cells than a frame can need");
                }
                cell(begin, i);
                begin = i + 1;
            } else {
                quoted ^= b[i] == '"';
            }
        }
        if (quoted) {
            return fail(from[cells - 1], "an open quote");
        }
        return asWideAsNames(last);
    }

    private void cell(int begin, int behind) {
        int low = begin;
        int high = behind;
        while (low < high && Digits.isBlank(b[low])) {
            low++;
        }
        while (high > low && Digits.isBlank(b[high - 1])) {
            high--;
        }
        if (high - low > 1 && b[low] == '"' && b[high - 1] == '"') {
            low++;
            high--;
        }
        from[cells] = low;
        to[cells] = high;
        cells++;
    }

    /** Cells behind the last name must be empty; missing ones count as empty. */
    private boolean asWideAsNames(int last) {
        for (int i = columns.names(); i < cells; i++) {
            if (from[i] < to[i]) {
                return fail(from[i], "more cells than the header has names");
            }
        }
        for (int i = cells; i < columns.names(); i++) {
            from[i] = last;
            to[i] = last;
        }
        return true;
    }

    private boolean time() {
        int c = columns.of(Role.TIME);
        if (c < 0) {
            return true;
        }
        boolean read = stamp.number(b, from[c], to[c], mark, columns.stampUnit().decimals());
        return read && stamp.end() == to[c] || fail(from[c], "the time stamp must be a number");
    }

    private boolean identifier() {
        return columns.of(Role.PGN) >= 0 ? group() : plainIdentifier();
    }

    private boolean plainIdentifier() {
        int c = columns.of(Role.ID);
        id = Digits.number(b, from[c], to[c], columns.identifiers().radix(), Frame.HIGHEST_EXTENDED);
        if (id < 0) {
            return fail(
                    from[c],
                    columns.identifiers() == NumberBase.HEX
                            ? "the identifier must be a hexadecimal number up to 1FFFFFFF"
                            : "the identifier must be a decimal number up to 536870911");
        }
        int e = columns.of(Role.EXTENDED);
        int said = e < 0 ? (id > Frame.HIGHEST_STANDARD ? 1 : 0) : yes(e);
        if (said < 0) {
            return fail(from[e], "extended must be true or false");
        }
        extended = said == 1;
        return extended
                || id <= Frame.HIGHEST_STANDARD
                || fail(from[c], "an identifier of 11 bits must be at most 7FF (2047)");
    }

    /** The identifier of SAE J1939: priority, group, for groups below 240 the destination, and the source. */
    private boolean group() {
        int c = columns.of(Role.PGN);
        int pgn = Digits.number(b, from[c], to[c], columns.identifiers().radix(), 0x3_FFFF);
        if (pgn < 0) {
            return fail(from[c], "the parameter group must be a whole number up to 262143 (3FFFF)");
        }
        int priority = address(Role.PRIORITY, 7, "the priority must be 0 to 7");
        int source = priority < 0 ? -1 : address(Role.SOURCE, 255, "the source address must be 0 to 255");
        if (source < 0) {
            return false;
        }
        boolean addressed = (pgn >> 8 & 0xFF) < LOWEST_BROADCAST;
        int destination =
                addressed ? address(Role.DESTINATION, 255, "the destination address must be 0 to 255") : pgn & 0xFF;
        if (destination < 0) {
            return false;
        }
        id = priority << 26 | (pgn & 0x3_FF00) << 8 | destination << 8 | source;
        extended = true;
        return true;
    }

    private int address(Role role, int most, String need) {
        int c = columns.of(role);
        int value = Digits.number(b, from[c], to[c], columns.addresses().radix(), most);
        if (value < 0) {
            fail(from[c], need);
        }
        return value;
    }

    /** 1, 0, or -1 when it is neither. */
    private int yes(int c) {
        int size = to[c] - from[c];
        if (size == 0) {
            return -1;
        }
        int letter = b[from[c]] | 0x20;
        if (size == 1) {
            return letter == '1' || letter == 't' || letter == 'y' || letter == 'x'
                    ? 1
                    : letter == '0' || letter == 'f' || letter == 'n' ? 0 : -1;
        }
        if (is(c, TRUE) || is(c, YES)) {
            return 1;
        }
        return is(c, FALSE) || is(c, NO) ? 0 : -1;
    }

    private boolean is(int c, byte[] word) {
        if (to[c] - from[c] != word.length) {
            return false;
        }
        for (int i = 0; i < word.length; i++) {
            if ((b[from[c] + i] | 0x20) != word[i]) {
                return false;
            }
        }
        return true;
    }

    private boolean payload() {
        length = 0;
        int said = length();
        if (said == -2) {
            return false;
        }
        if (isMarked(Role.REMOTE)) {
            length = Math.max(0, said);
            return true;
        }
        return columns.bytes().length > 0 ? singleCells(said) : oneCell(said);
    }

    private boolean isMarked(Role role) {
        int c = columns.of(role);
        return c >= 0 && yes(c) == 1;
    }

    /** -1 when nothing says it, -2 when it does not read. */
    private int length() {
        int c = columns.of(Role.LENGTH);
        int code = columns.of(Role.LENGTH_CODE);
        if (c < 0 && code < 0) {
            return -1;
        }
        int use = c < 0 ? code : c;
        int value = Digits.number(b, from[use], to[use], 10, Frame.LONGEST);
        if (value < 0) {
            fail(from[use], "the length must be 0 to 64 bytes");
            return -2;
        }
        boolean coded = c < 0 && value > 8 && value <= 15;
        return coded && columns.bytes().length == 0 && !fits(value) ? CODED[value - 9] : value;
    }

    /** Whether the cell of data has that many bytes. */
    private boolean fits(int count) {
        int kept = length;
        boolean read = readCell(columns.of(Role.DATA));
        boolean fits = read && length == count;
        length = kept;
        return fits;
    }

    private boolean singleCells(int said) {
        int[] places = columns.bytes();
        int count = said < 0 ? filled(places) : said;
        if (count > places.length) {
            return fail(from[places[0]], "the row says more bytes than it has columns for");
        }
        for (int i = 0; i < count; i++) {
            int c = places[i];
            int value = Digits.number(b, from[c], to[c], radix, 255);
            if (value < 0) {
                return fail(from[c], "a byte of 0 to 255 (FF) is needed");
            }
            data[length++] = (byte) value;
        }
        return true;
    }

    private int filled(int[] places) {
        int count = places.length;
        while (count > 0 && from[places[count - 1]] == to[places[count - 1]]) {
            count--;
        }
        return count;
    }

    private boolean oneCell(int said) {
        int c = columns.of(Role.DATA);
        if (!readCell(c)) {
            return false;
        }
        return said < 0
                || said == length
                || fail(from[c], "the payload has another number of bytes than the length says");
    }

    private boolean readCell(int c) {
        length = 0;
        int i = from[c];
        int behind = to[c];
        while (i < behind) {
            if (isSeparator(b[i])) {
                i++;
                continue;
            }
            i += radix == 16 && Digits.isMarked(b, i, behind) ? 2 : 0;
            int run = i;
            while (run < behind && Digits.of(b[run], radix) >= 0) {
                run++;
            }
            if (run == i || run < behind && !isSeparator(b[run])) {
                return fail(
                        run,
                        radix == 16
                                ? "the payload must be hexadecimal bytes, such as 11 22"
                                : "the payload must be decimal bytes");
            }
            if (!(radix == 16 ? pairs(i, run) : decimal(i, run))) {
                return false;
            }
            i = run;
        }
        return true;
    }

    private static boolean isSeparator(byte c) {
        return Digits.isBlank(c) || c == '-' || c == ':' || c == '.' || c == '_';
    }

    private boolean pairs(int i, int run) {
        if (run - i > 1 && (run - i) % 2 == 1) {
            return fail(i, "two digits a byte are needed");
        }
        for (int k = i; k < run; ) {
            int digits = Math.min(2, run - k);
            if (!put(Digits.number(b, k, k + digits, 16, 255), k)) {
                return false;
            }
            k += digits;
        }
        return true;
    }

    private boolean decimal(int i, int run) {
        int value = Digits.number(b, i, run, 10, 255);
        return value < 0 ? fail(i, "a byte of 0 to 255 is needed") : put(value, i);
    }

    private boolean put(int value, int place) {
        if (length == data.length) {
            return fail(place, "more than 64 bytes of payload");
        }
        data[length++] = (byte) value;
        return true;
    }

    private boolean show(Frame frame) {
        int bus = 0;
        int c = columns.of(Role.BUS);
        if (c >= 0) {
            bus = buses.number(b, from[c], to[c]);
            if (bus < 0) {
                return fail(from[c], "more than " + BusNames.MOST + " different names of networks");
            }
        }
        frame.set(columns.timed() ? stamp.seconds() : Double.NaN, bus, id, extended, data, 0, length);
        if (isMarked(Role.REMOTE)) {
            frame.as(Frame.Kind.REMOTE);
        }
        if (isMarked(Role.ERROR)) {
            frame.as(Frame.Kind.ERROR);
        }
        if (length > 8) {
            frame.asFlexible();
        }
        return true;
    }
}
