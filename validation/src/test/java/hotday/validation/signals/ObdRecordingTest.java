package hotday.validation.signals;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.core.finding.Finding;
import hotday.signals.isotp.IsoTpEvent;
import hotday.signals.obd.ObdDecoder;
import hotday.validation.signals.RecordedFrames.Heard;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * A workshop's scan of an electric car's units. The texts of several frames were read by hand from the recording's bytes
 * (4F 53 45 .. is "OSE .."); counts are those of its lines.
 */
final class ObdRecordingTest {
    private final ObdDecoder decoder = new ObdDecoder();
    private final Map<String, Heard> heard =
            RecordedFrames.decoded(decoder, RecordedFrames.ofBytes("kona_221210-1-2021-dcan-obd-scan.gvret.csv"));

    @Test
    void textsOfSeveralFrames() {
        assertThat(heard.get("OBD.VehicleIdentification@7EC").texts).containsExactly("OSEV__ BMS");
        assertThat(heard.get("OBD.Calibration@7EC").texts).containsExactly("OSEVB6822R");
        assertThat(heard.get("OBD.Calibration@7ED").texts).containsExactly("EOSEK5L-OS2-D000");
        assertThat(heard.get("OBD.UnitName@7EC").texts).containsExactly("BECM-B+EnergyCtrl");
        assertThat(heard.get("OBD.UnitName@7ED").texts).containsExactly("BCCM-B+ChargerCtrl");
    }

    /** Nine answers begin with a first frame; the tester lets seven of them go on, and nothing else breaks. */
    @Test
    void transport() {
        assertThat(decoder.transport().count(IsoTpEvent.UNANSWERED)).isEqualTo(2);
        for (IsoTpEvent event : IsoTpEvent.values()) {
            if (event != IsoTpEvent.COMPLETE && event != IsoTpEvent.UNANSWERED) {
                assertThat(decoder.transport().count(event)).as(event.name()).isZero();
            }
        }
    }

    @Test
    void refusalsAndSilence() {
        List<Finding> findings = decoder.findings();
        assertThat(findings)
                .filteredOn(f -> f.key().equals("diagnosis-refused"))
                .extracting(Finding::values)
                .contains(Map.of("unit", "7EA", "service", 0x10, "code", 0x12, "count", 3L));
        Finding silence = findings.stream()
                .filter(f -> f.key().equals("diagnosis-no-answer"))
                .findFirst()
                .orElseThrow();
        List<?> addresses = (List<?>) silence.values().get("addresses");
        assertThat(addresses.size()).isEqualTo(30);
        assertThat(addresses.contains("7E0")).isTrue();
        assertThat(addresses.contains("7E4")).isFalse();
        assertThat(findings).extracting(Finding::key).doesNotContain("obd-value-denied", "obd-answer-not-understood");
    }
}
