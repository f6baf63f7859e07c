package hotday.validation.signals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.signals.frame.SampleState;
import hotday.signals.j1939.J1939Decoder;
import hotday.signals.j1939.TransportEvent;
import hotday.validation.signals.RecordedFrames.Heard;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Recordings of a truck and a tractor. The expected values stand beside the recordings in the reference data, worked out
 * there from the standard's scalings; those of other signals are what a warm engine at idle can be, and say so.
 */
final class J1939RecordingsTest {
    private final J1939Decoder decoder = new J1939Decoder();

    @Test
    void truckAtIdle() {
        Map<String, Heard> truck =
                RecordedFrames.decoded(decoder, RecordedFrames.ofText("css_j1939_truck_idle_127s.candump.log.gz"));
        Heard speed = truck.get("EEC1.EngineSpeed@00");
        assertThat(speed.values).hasSize(12719);
        assertThat(speed.least()).isBetween(646.0, 647.0);
        assertThat(speed.most()).isBetween(653.0, 654.0);
        assertThat(speed.unit).isEqualTo("rpm");
        Heard coolant = truck.get("ET1.CoolantTemperature@00");
        assertThat(coolant.first()).isEqualTo(71);
        assertThat(coolant.last()).isEqualTo(72);
        assertThat(truck.get("ET1.FuelTemperature1@00").first()).isEqualTo(23);
        assertThat(truck.get("ET1.OilTemperature1@00").first()).isCloseTo(72.8, within(0.05));
        assertThat(truck.get("AMB.AmbientAirTemperature@00").first()).isCloseTo(13.3, within(0.05));
        assertThat(truck.get("AMB.BarometricPressure@00").first()).isEqualTo(98.5);
        assertThat(truck.get("IC1.IntakeManifoldTemperature@00").first()).isEqualTo(48);
        Heard fuel = truck.get("LFE.FuelRate@00");
        assertThat(fuel.least()).isEqualTo(2.45);
        assertThat(fuel.most()).isEqualTo(2.85);
        assertThat(truck.get("VEP1.BatteryVoltage@00").values).contains(13.25);
        assertThat(truck.get("CCVS.WheelBasedSpeed@00").most()).isZero();
    }

    /** What the truck does not send is never a number: charging voltage, intercooler, intake air. */
    @ParameterizedTest
    @CsvSource({
        "VEP1.ChargingVoltage@00",
        "VEP1.NetBatteryCurrent@00",
        "ET1.IntercoolerTemperature@00",
        "AMB.IntakeAirTemperature@00",
        "EFL1.CoolantPressure@00"
    })
    void truckHasNot(String signal) {
        Heard heard = RecordedFrames.decoded(decoder, RecordedFrames.ofText("css_j1939_truck_idle_127s.candump.log.gz"))
                .get(signal);
        assertThat(heard.values).isEmpty();
        assertThat(heard.states).containsOnlyKeys(SampleState.NOT_AVAILABLE);
    }

    @Test
    void engineOff() {
        Map<String, Heard> truck = RecordedFrames.decoded(
                decoder, RecordedFrames.ofText("css_j1939_engine_off_hot_soak_186s.candump.log"));
        Heard coolant = truck.get("ET1.CoolantTemperature@00");
        assertThat(coolant.first()).isEqualTo(86);
        assertThat(coolant.last()).isEqualTo(85);
        Heard oil = truck.get("ET1.OilTemperature1@00");
        assertThat(oil.first()).isEqualTo(96);
        assertThat(oil.most()).as("an engine that is off cools").isEqualTo(oil.first());
        assertThat(truck.get("EEC1.EngineSpeed@00").most()).isZero();
        assertThat(decoder.transport().count(TransportEvent.COMPLETE)).isPositive();
    }

    /** Ambient and the supply are not there, though a plain scaling would make 1775 degC and 3276 V of them. */
    @ParameterizedTest
    @CsvSource({"tractor_jd_highRPM1.csv", "tractor_jd_start1.csv", "tractor_jd_transmision123inGearAndPlusDiffLock.csv"
    })
    void tractor(String file) {
        Map<String, Heard> tractor = RecordedFrames.decoded(decoder, RecordedFrames.ofGroups(file));
        assertThat(tractor.get("AMB.AmbientAirTemperature@00").values).isEmpty();
        assertThat(tractor.get("VEP1.BatteryVoltage@00").values).isEmpty();
        assertThat(tractor.get("VEP1.ChargingVoltage@00").values).isEmpty();
        Heard coolant = tractor.get("ET1.CoolantTemperature@00");
        assertThat(coolant.least()).isGreaterThanOrEqualTo(29);
        assertThat(coolant.most()).isLessThanOrEqualTo(47);
        assertThat(tractor.get("EEC1.EngineSpeed@00").most()).isLessThan(3000);
    }

    /** The tractor broadcasts its engine configuration and sends it to another when asked: both ways give the same. */
    @Test
    void sameMessageBroadcastAndAsked() {
        Map<String, Heard> tractor =
                RecordedFrames.decoded(decoder, RecordedFrames.ofGroups("tractor_jd_highRPM1.csv"));
        assertThat(tractor.get("EC1.IdleSpeed@00").values).hasSize(8).containsOnly(900.0);
        assertThat(decoder.transport().count(TransportEvent.COMPLETE)).isEqualTo(8);
        assertThat(decoder.findings()).noneMatch(finding -> finding.key().equals("j1939-message-broken"));
    }
}
