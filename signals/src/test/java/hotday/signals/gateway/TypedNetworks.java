package hotday.signals.gateway;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A sound sheet with its two networks, to be broken in one place. */
final class TypedNetworks {
    static final String SHEET = "sheet.yaml";
    static final String LEFT = "left.dbc";
    static final String RIGHT = "right.dbc";

    private static final String LEFT_TEXT = """
            BU_: ECM TCM GATE
            BO_ 256 Fast: 8 ECM
             SG_ Speed : 0|16@1+ (0.25,0) [0|8000] "rpm" GATE
             SG_ Alive : 48|4@1+ (1,0) [0|14] "" GATE
             SG_ Crc : 56|8@1+ (1,0) [0|255] "" GATE
            BO_ 512 Slow: 8 ECM
             SG_ Coolant : 0|8@1+ (1,-40) [-40|210] "degC" GATE
             SG_ Pressure : 8|16@1+ (1,0) [0|4000] "kPa abs" GATE
             SG_ Grip : 24|8@1+ (1,0) [0|100] "frob" GATE
             SG_ Bare : 32|8@1+ (1,0) [0|250] "" GATE
            BO_ 640 Clutch: 1 TCM
             SG_ Enable : 0|2@1+ (1,0) [0|3] "" GATE
            BO_ 768 Asked: 2 GATE
             SG_ Request : 0|2@1+ (1,0) [0|3] "" ECM
            VAL_ 512 Coolant 254 "error" 255 "not available" ;
            VAL_ 640 Enable 0 "off" 1 "on" 3 "not available" ;
            VAL_ 768 Request 0 "off" 1 "on" 3 "not available" ;
            """;

    private static final String RIGHT_TEXT = """
            BU_: BOX FAN GATE
            BO_ 256 Wish: 2 BOX
             SG_ Request : 0|2@1+ (1,0) [0|3] "" GATE
            BO_ 384 Shown: 8 GATE
             SG_ Speed : 0|16@1+ (0.25,0) [0|8000] "1/min" BOX
             SG_ Coolant : 16|8@1+ (1,-40) [-40|210] "°C" BOX
             SG_ Pressure : 24|16@1+ (0.01,0) [0|40] "bar abs" BOX
             SG_ Enable : 40|2@1+ (1,0) [0|3] "" BOX
            BO_ 1024 State: 8 FAN
             SG_ Fan : 0|16@1+ (1,0) [0|6000] "rpm" GATE
            VAL_ 256 Request 0 "off" 1 "on" 3 "not available" ;
            VAL_ 384 Coolant 255 "not available" ;
            VAL_ 384 Enable 0 "off" 1 "on" 3 "not available" ;
            """;

    private static final String SHEET_TEXT = """
            sheet: left and right
            gateway: {poll: 5 ms, processing: 0.5 ms}
            networks:
              left:
                dbc: left.dbc
                bit_rate: 500 kbit/s
                gateway: GATE
                jitter: 1 ms
                messages:
                  Fast: {every: 10 ms, counter: Alive, checksum: Crc, checksum_rule: {kind: crc-8 sae j1850}}
                  Slow: {every: 100 ms}
                  Clutch: {every: 20 ms}
                  Asked: {every: 20 ms}
              right:
                dbc: right.dbc
                bit_rate: 250 kbit/s
                gateway: GATE
                jitter: 1 ms
                messages:
                  Wish: {every: 20 ms}
                  Shown: {every: 100 ms}
                  State: {every: 100 ms}
            translations:
              - from: left.Fast.Speed
                to: right.Shown.Speed
                time_out: 40 ms
                safe: 0 rpm
              - from: left.Slow.Coolant
                to: right.Shown.Coolant
                special: {error: safe, not available: not available}
                time_out: 300 ms
                hold: 2
                safe: 120 degC
              - from: left.Slow.Pressure
                to: right.Shown.Pressure
                time_out: 300 ms
                safe: 30 bar abs
              - from: left.Clutch.Enable
                to: right.Shown.Enable
                table: {off: off, on: on, not available: safe, 2: safe}
                time_out: 60 ms
                safe: off
              - from: right.Wish.Request
                to: left.Asked.Request
                table: {off: off, on: on}
                otherwise: safe
                time_out: 60 ms
                safe: off
            paths:
              - name: request to enable
                limit: 250 ms
                steps: [right.Wish.Request, left.Asked.Request, left.Clutch.Enable, right.Shown.Enable]
                takes: {TCM: 20 ms}
            """;

    private final Path folder;

    private TypedNetworks(Path folder) {
        this.folder = folder;
    }

    static TypedNetworks in(Path folder) {
        TypedNetworks typed = new TypedNetworks(folder);
        typed.write(LEFT, LEFT_TEXT);
        typed.write(RIGHT, RIGHT_TEXT);
        typed.write(SHEET, SHEET_TEXT);
        return typed;
    }

    Path sheet() {
        return folder.resolve(SHEET);
    }

    String text(String file) {
        try {
            return Files.readString(folder.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void write(String file, String text) {
        try {
            Files.writeString(folder.resolve(file), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Changes the only place in a file where that text stands. */
    void change(String file, String old, String other) {
        String text = text(file);
        int at = text.indexOf(old);
        if (at < 0 || text.indexOf(old, at + 1) >= 0) {
            throw new IllegalArgumentException("'" + old + "' must stand once in " + file);
        }
        write(file, text.replace(old, other));
    }

    GatewayReport check() {
        return GatewayCheck.of(TranslationSheet.read(sheet()));
    }
}
