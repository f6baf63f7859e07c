package hotday.signals.dbc;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * How text lies in the bytes of a file. Whatever is not UTF-8 is taken for Windows-1252; the five bytes that have no
 * character there become control characters, so that nothing is lost on the way back.
 */
public enum Encoding {
    UTF_8,
    WINDOWS_1252;

    private static final int FIRST_SPECIAL = 0x80;
    private static final String SPECIAL = special();

    static Encoding of(byte[] bytes) {
        try {
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
            return UTF_8;
        } catch (CharacterCodingException e) {
            return WINDOWS_1252;
        }
    }

    String decoded(byte[] bytes) {
        if (this == UTF_8) {
            return new String(bytes, StandardCharsets.UTF_8);
        }
        char[] text = new char[bytes.length];
        for (int i = 0; i < bytes.length; i++) {
            int b = bytes[i] & 0xFF;
            int special = b - FIRST_SPECIAL;
            text[i] = special >= 0 && special < SPECIAL.length() ? SPECIAL.charAt(special) : (char) b;
        }
        return new String(text);
    }

    /** What Windows-1252 has no character for becomes a question mark. */
    byte[] encoded(String text) {
        if (this == UTF_8) {
            return text.getBytes(StandardCharsets.UTF_8);
        }
        byte[] bytes = new byte[text.length()];
        for (int i = 0; i < bytes.length; i++) {
            char c = text.charAt(i);
            int special = c < FIRST_SPECIAL ? -1 : SPECIAL.indexOf(c);
            bytes[i] = (byte) (special >= 0 ? FIRST_SPECIAL + special : c <= 0xFF ? c : '?');
        }
        return bytes;
    }

    private static String special() {
        byte[] bytes = new byte[32];
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = (byte) (FIRST_SPECIAL + i);
        }
        char[] text = new String(bytes, Charset.forName("windows-1252")).toCharArray();
        for (int i = 0; i < text.length; i++) {
            text[i] = text[i] == '\uFFFD' ? (char) (FIRST_SPECIAL + i) : text[i];
        }
        return new String(text);
    }
}
