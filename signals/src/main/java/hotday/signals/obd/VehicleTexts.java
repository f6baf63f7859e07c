package hotday.signals.obd;

import hotday.signals.isotp.IsoTpMessage;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;

/** Texts of service 09: identification number, calibrations, name of the unit. Source: SAE J1979, from memory. */
final class VehicleTexts {
    private static final int IDENTIFICATION = 0x02;
    private static final int CALIBRATION = 0x04;
    private static final int VERIFICATION = 0x06;
    private static final int UNIT_NAME = 0x0A;
    /** Service, kind, number of items. */
    private static final int HEAD = 3;

    private VehicleTexts() {}

    /** One word for a kind of text; empty for kinds that are none. */
    static String name(int kind) {
        return switch (kind) {
            case IDENTIFICATION -> "VehicleIdentification";
            case CALIBRATION -> "Calibration";
            case VERIFICATION -> "CalibrationVerification";
            case UNIT_NAME -> "UnitName";
            default -> "";
        };
    }

    /** The items of an answer, blanks between; empty when there is none in it. */
    static String of(IsoTpMessage message) {
        int kind = message.at(1);
        int width = width(kind);
        StringBuilder text = new StringBuilder();
        byte[] bytes = message.length() < HEAD ? new byte[0] : message.bytes(HEAD);
        for (int from = 0; from + width <= bytes.length; from += width) {
            String item = kind == VERIFICATION
                    ? HexFormat.of().withUpperCase().formatHex(bytes, from, from + width)
                    : printable(new String(bytes, from, width, StandardCharsets.ISO_8859_1));
            text.append(text.isEmpty() || item.isEmpty() ? "" : " ").append(item);
        }
        return text.toString();
    }

    private static int width(int kind) {
        return switch (kind) {
            case IDENTIFICATION -> 17;
            case CALIBRATION -> 16;
            case VERIFICATION -> 4;
            default -> 20;
        };
    }

    /** Padding (zeros, blanks) goes; other characters that cannot be printed are told as dots. */
    private static String printable(String text) {
        return text.replace('\0', ' ').strip().replaceAll("[^ -~]", ".").replaceAll(" {2,}", " ");
    }
}
