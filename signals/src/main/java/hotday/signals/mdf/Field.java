package hotday.signals.mdf;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** Where a value stands in a record and how its bits are to be taken. Without state. */
final class Field {
    private static final VarHandle LONG = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);
    private static final VarHandle INT = MethodHandles.byteArrayViewVarHandle(int[].class, ByteOrder.LITTLE_ENDIAN);
    private static final VarHandle SHORT = MethodHandles.byteArrayViewVarHandle(short[].class, ByteOrder.LITTLE_ENDIAN);

    /** What the bits are. */
    enum Form {
        UNSIGNED,
        SIGNED,
        REAL,
        TEXT,
        BYTES
    }

    private static final Form[] FORMS = {
        Form.UNSIGNED,
        Form.UNSIGNED,
        Form.SIGNED,
        Form.SIGNED,
        Form.REAL,
        Form.REAL,
        Form.TEXT,
        Form.TEXT,
        Form.TEXT,
        Form.TEXT,
        Form.BYTES
    };
    private static final Charset[] CHARSETS = {
        StandardCharsets.ISO_8859_1, StandardCharsets.UTF_8, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE
    };
    private static final String[] NOT_READ = {
        "a sample of a media type",
        "a stream of a media type",
        "a CANopen date",
        "a CANopen time",
        "a complex number",
        "a complex number"
    };
    private static final int FIRST_TEXT = 6;
    private static final int UTF_16 = 2;

    private final Form form;
    private final boolean bigEndian;
    private final Charset charset;
    private final int first;
    private final int shift;
    private final int bits;
    private final int bytes;

    private Field(Form form, boolean bigEndian, Charset charset, int first, int shift, int bits) {
        this.form = form;
        this.bigEndian = bigEndian;
        this.charset = charset;
        this.first = first;
        this.shift = shift;
        this.bits = bits;
        this.bytes = (shift + bits + 7) / 8;
    }

    /** A channel's value itself; throws {@link BrokenBlock} where it is none that is read. */
    static Field of(Channel c, long recordBytes) {
        if (c.dataType() >= FORMS.length) {
            int other = c.dataType() - FORMS.length;
            throw wrong(
                    c, "channel-not-read", "is " + (other < NOT_READ.length ? NOT_READ[other] : "of an unknown type"));
        }
        Form form = FORMS[c.dataType()];
        boolean big = c.dataType() < FIRST_TEXT ? c.dataType() % 2 == 1 : false;
        Charset charset = form == Form.TEXT ? CHARSETS[c.dataType() - FIRST_TEXT] : StandardCharsets.ISO_8859_1;
        return of(c, form, big, charset, recordBytes);
    }

    /** Nothing in the record: the value is the record's number. */
    static Field virtual() {
        return new Field(Form.UNSIGNED, false, StandardCharsets.ISO_8859_1, 0, 0, Long.SIZE);
    }

    /** What stands in the record of a channel whose values lie elsewhere: where they lie. */
    static Field offset(Channel c, long recordBytes) {
        return of(c, Form.UNSIGNED, false, StandardCharsets.ISO_8859_1, recordBytes);
    }

    private static Field of(Channel c, Form form, boolean big, Charset charset, long recordBytes) {
        boolean whole = c.bits() % 8 == 0 && c.bitOffset() == 0;
        boolean fits = switch (form) {
            case UNSIGNED, SIGNED -> c.bits() >= 1 && c.bits() <= Long.SIZE && c.bitOffset() < 8;
            case REAL -> (c.bits() == 16 || c.bits() == 32 || c.bits() == 64) && c.bitOffset() < 8;
            default -> whole;
        };
        if (!fits) {
            throw wrong(
                    c,
                    "channel-broken",
                    "has " + c.bits() + " bits from bit " + c.bitOffset() + " on, which does not go with its type "
                            + c.dataType());
        }
        if (c.byteOffset() + (c.bitOffset() + c.bits() + 7) / 8 > recordBytes) {
            throw wrong(
                    c,
                    "channel-broken",
                    "has " + c.bits() + " bits from byte " + c.byteOffset() + " on, and the record has " + recordBytes
                            + " bytes");
        }
        return new Field(form, big, charset, (int) c.byteOffset(), c.bitOffset(), (int) c.bits());
    }

    private static BrokenBlock wrong(Channel c, String key, String what) {
        return new BrokenBlock(key, c.position(), "channel '" + c.name() + "' (block ##CN) " + what);
    }

    Form form() {
        return form;
    }

    /** Whether its values are whole numbers. */
    boolean isWhole() {
        return form == Form.UNSIGNED || form == Form.SIGNED;
    }

    boolean isNumber() {
        return isWhole() || form == Form.REAL;
    }

    /** First byte in the record. */
    int first() {
        return first;
    }

    /** Bytes that the value touches. */
    int bytes() {
        return bytes;
    }

    /**
     * The value as a number.
     *
     * @param at first byte of the record
     */
    double number(byte[] b, int at) {
        long raw = raw(b, at);
        return switch (form) {
            case SIGNED -> signed(raw);
            case REAL -> real(raw);
            default -> raw >= 0 ? raw : unsigned(raw);
        };
    }

    private double signed(long raw) {
        int unused = Long.SIZE - bits;
        return raw << unused >> unused;
    }

    /** The nearest double of a number above 2^63: halved with its last bit kept sticky, so that it is rounded once. */
    private static double unsigned(long raw) {
        return 2.0 * (raw >>> 1 | raw & 1);
    }

    private double real(long raw) {
        return switch (bits) {
            case 64 -> Double.longBitsToDouble(raw);
            case 32 -> Float.intBitsToFloat((int) raw);
            default -> half((int) raw);
        };
    }

    /** IEEE 754 binary16: sign, 5 bits of exponent, 10 of fraction. */
    private static double half(int raw) {
        int exponent = raw >> 10 & 0x1F;
        int fraction = raw & 0x3FF;
        double size;
        if (exponent == 0x1F) {
            size = fraction == 0 ? Double.POSITIVE_INFINITY : Double.NaN;
        } else if (exponent == 0) {
            size = Math.scalb((double) fraction, -24);
        } else {
            size = Math.scalb((double) (0x400 | fraction), exponent - 25);
        }
        return (raw & 0x8000) == 0 ? size : -size;
    }

    /** Its bits, unused ones above them zero. */
    long raw(byte[] b, int at) {
        int from = at + first;
        if (shift == 0) {
            switch (bits) {
                case 8:
                    return b[from] & 0xFF;
                case 16:
                    short two = (short) SHORT.get(b, from);
                    return (bigEndian ? Short.reverseBytes(two) : two) & 0xFFFF;
                case 32:
                    int four = (int) INT.get(b, from);
                    return (bigEndian ? Integer.reverseBytes(four) : four) & 0xFFFF_FFFFL;
                case 64:
                    long eight = (long) LONG.get(b, from);
                    return bigEndian ? Long.reverseBytes(eight) : eight;
                default:
                    break;
            }
        }
        return gathered(b, from);
    }

    private long gathered(byte[] b, int from) {
        long low = 0;
        for (int i = 0; i < Math.min(bytes, 8); i++) {
            low |= (b[bigEndian ? from + bytes - 1 - i : from + i] & 0xFFL) << 8 * i;
        }
        long value = low >>> shift;
        if (bytes > 8) {
            value |= (b[bigEndian ? from : from + 8] & 0xFFL) << Long.SIZE - shift;
        }
        return bits == Long.SIZE ? value : value & (1L << bits) - 1;
    }

    /** The text in some bytes, up to the first zero; bytes that are none of its characters come as question marks. */
    String text(byte[] b, int from, int length) {
        if (form == Form.BYTES) {
            return hex(b, from, length);
        }
        boolean wide = charset == CHARSETS[UTF_16] || charset == CHARSETS[UTF_16 + 1];
        int unit = wide ? 2 : 1;
        int end = 0;
        while (end + unit <= length && (b[from + end] != 0 || wide && b[from + end + 1] != 0)) {
            end += unit;
        }
        return new String(b, from, end, charset);
    }

    private static String hex(byte[] b, int from, int length) {
        StringBuilder text = new StringBuilder(2 * length);
        for (int i = from; i < from + length; i++) {
            text.append(Character.toUpperCase(Character.forDigit(b[i] >> 4 & 15, 16)))
                    .append(Character.toUpperCase(Character.forDigit(b[i] & 15, 16)));
        }
        return text.toString();
    }
}
