package hotday.validation.code;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** An invented sheet with every kind of signal, row, counter and checksum. */
final class ManyKinds {
    private static final String LEFT = """
            BU_: A GATE
            BO_ 16 Little: 8 A
             SG_ Signed : 3|13@1- (0.125,-7) [-400|400] "degC" GATE
             SG_ Wide : 16|24@1+ (0.001,0) [0|16000] "km/h" GATE
             SG_ Count : 40|6@1+ (1,0) [0|63] "" GATE
             SG_ Guard : 48|16@1+ (1,0) [0|65535] "" GATE
            BO_ 17 Big: 8 A
             SG_ Signed : 6|12@0- (0.3,11) [0|0] "%" GATE
             SG_ Wide : 20|29@0+ (1,0) [0|500000000] "Pa" GATE
             SG_ Guard : 63|8@0+ (1,0) [0|255] "" GATE
            BO_ 2147488000 Real: 8 A
             SG_ Single : 0|32@1- (1,0) [0|0] "N m" GATE
             SG_ Count : 39|5@0+ (1,0) [0|31] "" GATE
             SG_ Guard : 40|8@1+ (1,0) [0|255] "" GATE
            BO_ 18 Double: 8 A
             SG_ Value : 7|64@0- (0.5,0) [0|0] "W" GATE
            BO_ 19 Pages: 8 A
             SG_ Page M : 0|4@1+ (1,0) [0|15] "" GATE
             SG_ Inner m2M : 4|4@1+ (1,0) [0|15] "" GATE
             SG_ Deep m3 : 16|10@1+ (0.7,0) [0|700] "rpm" GATE
             SG_ Shallow m5 : 20|16@0- (7,0) [0|0] "rpm" GATE
             SG_ Mode : 40|3@1+ (1,0) [0|7] "" GATE
            SG_MUL_VAL_ 19 Inner Page 2-4;
            SG_MUL_VAL_ 19 Deep Inner 1-3, 7-7;
            SG_MUL_VAL_ 19 Shallow Page 5-5;
            SIG_VALTYPE_ 2147488000 Single : 1;
            SIG_VALTYPE_ 18 Value : 2;
            VAL_ 16 Signed 4095 "error" -4096 "none" ;
            VAL_ 19 Mode 0 "off" 1 "low" 2 "high" 7 "none" ;
            """;

    private static final String RIGHT = """
            BU_: B GATE
            BO_ 32 One: 8 GATE
             SG_ Temperature : 7|16@0- (0.1,0) [-3000|3000] "degF" B
             SG_ Speed : 16|20@1+ (0.01,0) [0|9000] "mph" B
             SG_ Count : 40|8@1+ (1,0) [0|255] "" B
             SG_ Guard : 55|16@0+ (1,0) [0|65535] "" B
            BO_ 33 Two: 8 GATE
             SG_ Share : 1|9@1- (1,0) [-200|200] "%" B
             SG_ Pressure : 15|18@0+ (0.002,0) [0|524] "bar abs" B
             SG_ Fixed : 40|8@1+ (0.5,0) [0|100] "%" B
             SG_ Guard : 56|8@1+ (1,0) [0|255] "" B
            BO_ 34 Three: 8 GATE
             SG_ Torque : 7|32@0- (1,0) [0|0] "N m" B
             SG_ Deep : 32|12@1+ (1,0) [0|4000] "rpm" B
             SG_ Mode : 50|6@1- (1,0) [-32|31] "" B
             SG_ Guard : 56|8@1+ (1,0) [0|255] "" B
            BO_ 35 Four: 8 GATE
             SG_ Value : 0|64@1- (0.5,0) [0|0] "W" B
            BO_ 2147483684 Five: 3 GATE
             SG_ Shallow : 4|17@1- (3,1) [0|0] "rpm" B
            SIG_VALTYPE_ 34 Torque : 1;
            SIG_VALTYPE_ 35 Value : 2;
            """;

    private static final String SHEET = """
            sheet: every kind of line /* and a comment */
            gateway: {poll: 2 ms, processing: 0 ms, stale: 100}
            networks:
              left:
                dbc: left.dbc
                bit_rate: 500 kbit/s
                gateway: GATE
                jitter: 0 ms
                messages:
                  Little: {every: 10 ms, counter: Count, counter_first: 3, counter_last: 60, counter_step: 19,
                    checksum: Guard, checksum_rule: {kind: crc, poly: 0x1021, init: 0x1D0F, xor: 0xFFFF, reflected: yes, data_id: [0x12, 0xAB]}}
                  Big: {every: 10 ms, checksum: Guard, checksum_rule: {kind: xor, init: 0x5A, bytes: '6, 0-3', data_id: [1], data_id_at: last}}
                  Real: {every: 10 ms, counter: Count, checksum: Guard, checksum_rule: {kind: sum, xor: 0xFF}}
                  Double: {every: 10 ms}
                  Pages: {every: 10 ms}
              right:
                dbc: right.dbc
                bit_rate: 500 kbit/s
                gateway: GATE
                jitter: 0 ms
                messages:
                  One: {every: 10 ms, on_change: 3 ms, counter: Count, counter_first: 1, counter_last: 201, counter_step: 50,
                    checksum: Guard, checksum_rule: {kind: crc, poly: 0x8005, init: 0, xor: 0, reflected: yes}}
                  Two: {every: 20 ms, checksum: Guard, checksum_rule: {kind: crc-8 sae j1850, data_id: [0x77], data_id_at: last}}
                  Three: {every: 10 ms, on_change: 10 ms, checksum: Guard, checksum_rule: {kind: crc, poly: 0x2F, init: 0xFF, xor: 0xFF, bytes: 1-6}}
                  Four: {every: 30 ms}
                  Five: {every: 10 ms}
            translations:
              - {from: left.Little.Signed, to: right.One.Temperature, measures: temperature, special: {error: safe, none: -1, 5: 77}, clip: yes, time_out: 30 ms, hold: 3, safe: 5 degF}
              - {from: left.Little.Wide, to: right.One.Speed, factor: 1.07, clip: yes, coarser: yes, time_out: 30 ms, hold: 1, safe: 12 mph}
              - {from: left.Big.Signed, to: right.Two.Share, factor: -2.5, clip: yes, coarser: yes, time_out: 30 ms, safe: -3 %}
              - {from: left.Big.Wide, to: right.Two.Pressure, from_unit: Pa abs, clip: yes, coarser: yes, time_out: 30 ms, hold: 100, safe: 1.013 bar abs}
              - {to: right.Two.Fixed, fixed: 33 %}
              - {from: left.Real.Single, to: right.Three.Torque, time_out: 30 ms, hold: 2, safe: 12.25 N m}
              - {from: left.Double.Value, to: right.Four.Value, time_out: 40 ms, safe: 0 W}
              - {from: left.Pages.Deep, to: right.Three.Deep, coarser: yes, time_out: 80 ms, safe: 4000 rpm}
              - {from: left.Pages.Shallow, to: right.Five.Shallow, clip: yes, time_out: 80 ms, safe: 1 rpm}
              - {from: left.Pages.Mode, to: right.Three.Mode, table: {off: 0, low: -4, high: 31, none: safe}, otherwise: -32, time_out: 30 ms, hold: 1, safe: 9}
            """;

    private ManyKinds() {}

    static Path in(Path folder) throws IOException {
        Files.writeString(folder.resolve("left.dbc"), LEFT);
        Files.writeString(folder.resolve("right.dbc"), RIGHT);
        return Files.writeString(folder.resolve("many.yaml"), SHEET);
    }
}
