package hotday.validation.signals;

import hotday.signals.dbc.DbcFile;
import hotday.signals.dbc.MessageDecoder;
import hotday.validation.Check;
import hotday.validation.Topic;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;

/** From the bits of a frame to values; places and byte orders one by one are tested in module signals. */
public final class FrameChecks implements Topic {
    private static final String PARSERS = "documentation pages of public parsers of DBC files, value recomputed";
    private static final String J1939 = "SAE J1939-71 scaling, recomputed";
    private static final String COUNTED = "1122334455667788";
    private static final String ENGINE = "FF7D7DE015FFF0FF";
    private static final String FAN = "C8F2804BFFFFFFFF";

    @Override
    public String title() {
        return "Frames";
    }

    @Override
    public List<Check> checks() {
        return List.of(
                row("little-endian, 12 bits from 4, of 11 22 33 ..", "4|12@1+ (1,0)", COUNTED, 0x221, "-", PARSERS),
                row("big-endian, 12 bits from 3, of 11 22 33 ..", "3|12@0+ (1,0)", COUNTED, 0x122, "-", PARSERS),
                row("big-endian, 12 bits from 0, over three bytes", "0|12@0+ (1,0)", COUNTED, 0x911, "-", PARSERS),
                row(
                        "engine speed of a published frame",
                        "24|16@1+ (0.125,0)",
                        ENGINE,
                        700,
                        "rpm",
                        "frame printed in a generator controller's manual"),
                row("coolant temperature", "0|8@1+ (1,-40)", "82FFC02BFFFFFFFF", 90, "degC", J1939),
                row("oil temperature", "16|16@1+ (0.03125,-273)", "82FFC02BFFFFFFFF", 77, "degC", J1939),
                row("estimated fan speed of full", "0|8@1+ (0.4,0)", FAN, 80, "%", J1939),
                row("fan speed", "16|16@1+ (0.125,0)", FAN, 2416, "rpm", J1939));
    }

    private static Check row(String what, String form, String payload, double published, String unit, String source) {
        String text = "BO_ 1 a: 8 x\n SG_ s : " + form + " [0|0] \"\" x\n";
        MessageDecoder decoder = MessageDecoder.of(DbcFile.parse("row", text.getBytes(StandardCharsets.US_ASCII))
                .messages()
                .get(0));
        byte[] data = HexFormat.of().parseHex(payload);
        double[] out = new double[1];
        decoder.decode(data, data.length, out);
        return Check.near(what, out[0], published, 1e-9, unit, source);
    }
}
