package hotday.physics.component;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import hotday.physics.WorkedProblem;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

class FanDutyTest {
    private static FanDuty duty(boolean inverted) {
        return new FanDuty(0.08, 8, 12, 92, 5, 97.5, 0.25, inverted);
    }

    @Test
    void workedDuties() {
        WorkedProblem p = WorkedProblem.read("electrical");
        for (boolean inverted : new boolean[] {false, true}) {
            FanDuty duty = new FanDuty(
                    p.in("d_on"), p.in("D_off"), p.in("D_min"), p.in("D_max"), 5, 97.5, p.in("s_min"), inverted);
            for (JsonNode row : p.output("duty inverted=" + (inverted ? "True" : "False"))) {
                double demand = row.get(0).asDouble();
                assertThat(duty.sent(demand)).isEqualTo(row.get(1).asDouble());
                assertThat(duty.ratio(demand)).isCloseTo(row.get(2).asDouble(), within(1e-12));
                assertThat(duty.ratio(duty.sent(demand), !inverted))
                        .isCloseTo(row.get(3).asDouble(), within(1e-12));
            }
        }
    }

    /** The polarity trap (common practice, no source): 10 is 90, 30 is 70, 50 is 50, 100 is 0. */
    @Test
    void polarity() {
        FanDuty plain = new FanDuty(0, 0, 0.5, 100, 0, 100, 0.005, false);
        FanDuty inverted = new FanDuty(0, 0, 0.5, 100, 0, 100, 0.005, true);
        for (double duty : new double[] {10, 30, 50, 100}) {
            double demand = (duty - 0.5) / 99.5;
            assertThat(plain.sent(demand)).isEqualTo(duty);
            assertThat(inverted.sent(demand)).isEqualTo(100 - duty);
        }
    }

    @Test
    void aDeadWireRunsTheFan() {
        for (boolean inverted : new boolean[] {false, true}) {
            assertThat(duty(inverted).ratio(0, inverted)).isEqualTo(1);
            assertThat(duty(inverted).ratio(100, inverted)).isEqualTo(1);
            assertThat(duty(inverted).ratio(Double.NaN, inverted)).isEqualTo(1);
        }
        assertThat(duty(false).ratio(4.5, false)).isEqualTo(1);
        assertThat(duty(false).ratio(5, false)).isZero();
        assertThat(duty(false).ratio(97.5, false)).isEqualTo(1);
    }

    @Test
    void demandIsHeld() {
        assertThat(duty(false).sent(-1)).isEqualTo(8);
        assertThat(duty(false).sent(2)).isEqualTo(92);
    }

    @Test
    void badValues() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new FanDuty(0.08, 4, 12, 92, 5, 97.5, 0.25, false))
                .withMessageContaining("takes it for a fault");
        assertThatIllegalArgumentException().isThrownBy(() -> new FanDuty(1, 8, 12, 92, 5, 97.5, 0.25, false));
        assertThatIllegalArgumentException().isThrownBy(() -> new FanDuty(0, 8, 12, 12, 5, 97.5, 0.25, false));
        assertThatIllegalArgumentException().isThrownBy(() -> new FanDuty(0, 8, 12, 92, 5, 97.5, 1.25, false));
        assertThatIllegalArgumentException().isThrownBy(() -> new FanDuty(0, 8, 12, 92, 5, 101, 0.25, false));
    }
}
