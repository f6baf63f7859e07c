package hotday.signals.dbc;

import hotday.core.finding.Finding;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A DBC file out of a few lines. */
final class Typed {
    static final String NAME = "typed.dbc";

    private Typed() {}

    static DbcFile file(String... lines) {
        return DbcFile.parse(NAME, (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
    }

    /** The decoder of the only message of a file. */
    static MessageDecoder decoder(String... lines) {
        return MessageDecoder.of(file(lines).messages().get(0));
    }

    static byte[] bytes(String hex) {
        return java.util.HexFormat.of().parseHex(hex.replace(" ", ""));
    }

    static double[] decoded(MessageDecoder decoder, String hex) {
        byte[] data = bytes(hex);
        double[] out = new double[decoder.size()];
        decoder.decode(data, data.length, out);
        return out;
    }

    static List<String> keys(DbcFile file) {
        return file.findings().stream().map(Finding::key).toList();
    }
}
