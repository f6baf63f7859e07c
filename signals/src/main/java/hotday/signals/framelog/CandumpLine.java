package hotday.signals.framelog;

import hotday.signals.frame.Frame;

/**
 * A line as the open tools of the Linux kernel's CAN sockets write it, to a file or to the screen:
 *
 * <pre>
 * (1622547830.084000) can0 0CF00400#F0FF7D0000FFFFFF
 * (1622547830.084000) can0 123##1112233445566778899AA       CAN FD, one digit of flags
 * (1622547830.084000) can0 123#R8                           remote
 *  (000.001200)  can0  123   [8]  11 22 33 44 55 66 77 88
 *   can0  0CF00400   [2]  11 22
 * </pre>
 *
 * Identifiers of three digits have 11 bits, of eight 29 bits; bit 29 of an identifier marks a note of an error.
 */
final class CandumpLine implements LineForm {
    private static final int ERROR_MARK = 0x2000_0000;
    private static final int CLASSIC = 8;
    private static final byte[] REMOTE_WORDS = {'r', 'e', 'm', 'o', 't', 'e', ' ', 'r', 'e', 'q', 'u', 'e', 's', 't'};
    private static final byte[] ERROR_WORD = {'E', 'R', 'R', 'O', 'R', 'F', 'R', 'A', 'M', 'E'};

    private final BusNames buses;
    /** Whether lines must have a time stamp, or must not; null: as they like. */
    private final Boolean timed;

    private final Stamp stamp = new Stamp();
    private final byte[] data = new byte[Frame.LONGEST];
    private byte[] b = data;
    private int at;
    private int end;
    private String why = "";
    private double time;
    private int busFrom;
    private int busTo;
    private int bus;
    private int id;
    private boolean extended;
    private int length;
    private boolean remote;
    private boolean error;
    private boolean flexible;

    CandumpLine(BusNames buses, Boolean timed) {
        this.buses = buses;
        this.timed = timed;
    }

    @Override
    public int read(byte[] bytes, int from, int to, Frame frame) {
        b = bytes;
        at = from;
        end = to;
        while (end > from && Digits.isBlank(b[end - 1])) {
            end--;
        }
        passBlanks();
        if (at == end) {
            return NOTHING;
        }
        remote = false;
        error = false;
        flexible = false;
        length = 0;
        if (!time() || !busName() || !direction() || !identifier() || !payload() || !bus()) {
            return at - from + 1;
        }
        show(frame);
        return FRAME;
    }

    private void show(Frame frame) {
        frame.set(time, bus, id, extended, data, 0, length);
        if (error || remote) {
            frame.as(error ? Frame.Kind.ERROR : Frame.Kind.REMOTE);
        }
        if (flexible) {
            frame.asFlexible();
        }
    }

    @Override
    public String why() {
        return why;
    }

    @Override
    public String title() {
        return Boolean.FALSE.equals(timed) ? "candump text without time stamps" : "candump text";
    }

    /** Whether the last frame had a time stamp. */
    boolean hadTime() {
        return !Double.isNaN(time);
    }

    private boolean fail(String what) {
        why = what;
        return false;
    }

    private void passBlanks() {
        while (at < end && Digits.isBlank(b[at])) {
            at++;
        }
    }

    private boolean isAt(char c) {
        return at < end && b[at] == c;
    }

    private boolean time() {
        boolean there = b[at] == '(';
        if (timed != null && timed != there) {
            return fail(there ? "a time stamp, and other lines have none" : "the time stamp is missing");
        }
        time = Double.NaN;
        return !there || stampInBrackets();
    }

    private boolean stampInBrackets() {
        at++;
        passBlanks();
        boolean date = at + 4 < end && b[at + 4] == '-';
        boolean read = date ? stamp.date(b, at, end) : stamp.number(b, at, end, '.', 0);
        at = date && !read ? at : Math.max(at, stamp.end());
        if (!read || !isAt(')')) {
            return fail("a time stamp such as (1622547830.084000) is needed");
        }
        at++;
        time = stamp.seconds();
        passBlanks();
        return true;
    }

    private boolean busName() {
        busFrom = at;
        while (at < end && !Digits.isBlank(b[at])) {
            at++;
        }
        busTo = at;
        if (at == end) {
            at = busFrom;
            return fail("a network's name and a frame are needed");
        }
        passBlanks();
        return true;
    }

    /** Last, so that a line that is no frame names no network. */
    private boolean bus() {
        bus = buses.number(b, busFrom, busTo);
        if (bus < 0) {
            at = busFrom;
            return fail("more than " + BusNames.MOST + " different names of networks");
        }
        return true;
    }

    /** {@code RX - -} or {@code TX B E} on screens that show who sent it. */
    private boolean direction() {
        if (at + 2 < end && b[at + 1] == 'X' && (b[at] == 'R' || b[at] == 'T') && Digits.isBlank(b[at + 2])) {
            at += 2;
            for (int i = 0; i < 2; i++) {
                passBlanks();
                if (at + 1 < end && Digits.isBlank(b[at + 1])) {
                    at++;
                }
            }
            passBlanks();
        }
        return true;
    }

    private boolean identifier() {
        int from = at;
        int value = 0;
        for (; at < end; at++) {
            int digit = Digits.hex(b[at]);
            if (digit < 0) {
                break;
            }
            value = value << 4 | digit;
        }
        int digits = at - from;
        if (at < end && b[at] != '#' && !Digits.isBlank(b[at])) {
            return fail("an identifier of 3 or 8 hexadecimal digits is needed");
        }
        if (digits != 3 && digits != 8) {
            at = from;
            return fail("an identifier of 3 or 8 hexadecimal digits is needed, this one has " + digits);
        }
        return digits == 3 ? standard(value, from) : extended(value, from);
    }

    private boolean standard(int value, int from) {
        if (value > Frame.HIGHEST_STANDARD) {
            at = from;
            return fail("an identifier of 3 digits must be at most 7FF");
        }
        id = value;
        extended = false;
        return true;
    }

    private boolean extended(int value, int from) {
        error = (value & ~Frame.HIGHEST_EXTENDED) == ERROR_MARK;
        id = value & Frame.HIGHEST_EXTENDED;
        if (id != value && !error) {
            at = from;
            return fail("an identifier of 8 digits must be at most 1FFFFFFF");
        }
        extended = true;
        return true;
    }

    private boolean payload() {
        if (!isAt('#')) {
            return spaced();
        }
        at++;
        if (isAt('#')) {
            return flexible();
        }
        if (isAt('R')) {
            return remote();
        }
        if (!bytes(CLASSIC)) {
            return false;
        }
        return longCode() && tail();
    }

    private boolean flexible() {
        at++;
        if (at == end || Digits.hex(b[at]) < 0) {
            return fail("one hexadecimal digit of flags is needed behind ##");
        }
        at++;
        flexible = true;
        return bytes(Frame.LONGEST) && tail();
    }

    private boolean remote() {
        at++;
        remote = true;
        if (at < end && !Digits.isBlank(b[at])) {
            length = Digits.decimal(b[at]);
            if (length < 0 || length > CLASSIC) {
                return fail("a remote frame's length must be 0 to 8");
            }
            at++;
        }
        return longCode() && tail();
    }

    /** Pairs of digits, with or without points between them. */
    private boolean bytes(int most) {
        while (at < end && !Digits.isBlank(b[at]) && b[at] != '_') {
            if (b[at] == '.' && length > 0) {
                at++;
            }
            if (!pair(most)) {
                return false;
            }
        }
        return true;
    }

    private boolean pair(int most) {
        int high = at < end ? Digits.hex(b[at]) : -1;
        int low = at + 1 < end ? Digits.hex(b[at + 1]) : -1;
        if (high < 0 || low < 0) {
            at = high < 0 || at + 1 == end ? at : at + 1;
            return fail("two hexadecimal digits a byte are needed");
        }
        if (length == most) {
            return fail(most == CLASSIC ? "more than 8 bytes of payload" : "more than 64 bytes of payload");
        }
        data[length++] = (byte) (high << 4 | low);
        at += 2;
        return true;
    }

    /** {@code _9} to {@code _F}: the length code of a frame of 8 bytes as it was on the wires. */
    private boolean longCode() {
        if (!isAt('_')) {
            return true;
        }
        if (at + 1 == end || Digits.hex(b[at + 1]) <= CLASSIC || length != CLASSIC) {
            return fail("a length code of 9 to F behind 8 bytes is needed");
        }
        at += 2;
        return true;
    }

    /** {@code R} or {@code T} at the end say who sent it. */
    private boolean tail() {
        passBlanks();
        if (isAt('R') || isAt('T')) {
            at++;
        }
        return at == end || fail("the line goes on behind the frame");
    }

    private boolean spaced() {
        passBlanks();
        if (!isAt('[')) {
            return fail("# and a payload, or a length in [ ] are needed");
        }
        int from = ++at;
        while (at < end && Digits.decimal(b[at]) >= 0) {
            at++;
        }
        int count = Digits.number(b, from, at, 10, Frame.LONGEST);
        flexible = at - from == 2;
        if (count < 0 || !isAt(']')) {
            at = from;
            return fail("a length of 0 to 64 bytes is needed");
        }
        if (!flexible && count > CLASSIC) {
            at = from;
            return fail("a length of 0 to 8 bytes is needed");
        }
        at++;
        passBlanks();
        return matches(REMOTE_WORDS) ? asksFor(count) : shows(count);
    }

    private boolean asksFor(int count) {
        remote = true;
        length = count;
        at += REMOTE_WORDS.length;
        return at == end || fail("the line goes on behind the frame");
    }

    private boolean shows(int count) {
        for (int i = 0; i < count; i++) {
            passBlanks();
            if (!pair(Frame.LONGEST)) {
                return false;
            }
            if (at < end && !Digits.isBlank(b[at])) {
                return fail("two hexadecimal digits a byte are needed");
            }
        }
        passBlanks();
        if (matches(ERROR_WORD)) {
            at += ERROR_WORD.length;
            passBlanks();
        }
        return at == end || isAt('\'') || fail("more bytes than the length says");
    }

    private boolean matches(byte[] word) {
        for (int i = 0; i < word.length; i++) {
            if (at + i >= end || b[at + i] != word[i]) {
                return false;
            }
        }
        return true;
    }
}
