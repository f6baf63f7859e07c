package hotday.physics.component;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hotday.physics.transfer.Arrangement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CoreTest {
    private static final Core CORE = new Core(2100, 1.2, 0.5, 5500, 1.5, 0.6);
    private static final double BALANCE = 1e-9;

    @ParameterizedTest
    @EnumSource(Arrangement.class)
    void whatOneSideGivesTheOtherTakes(Arrangement a) {
        for (double air = 0.01; air < 5; air *= 1.7) {
            for (double coolant = 0.01; coolant < 5; coolant *= 1.7) {
                Core.Inlet cold = new Core.Inlet(air, 1007, 308);
                Core.Inlet hot = new Core.Inlet(coolant, 3600, 378);
                Core.Outlet out = CORE.outlet(a, cold, hot);
                assertThat(air * 1007 * (out.air() - 308)).isCloseTo(out.heat(), within(BALANCE * out.heat()));
                assertThat(coolant * 3600 * (378 - out.coolant())).isCloseTo(out.heat(), within(BALANCE * out.heat()));
                assertThat(out.effectiveness()).isBetween(0.0, 1.0);
                assertThat(out.air()).isBetween(308.0, 378.0);
                assertThat(out.coolant()).isBetween(308.0, 378.0);
            }
        }
    }

    @Test
    void aSideThatStandsStillPassesNothing() {
        for (double flow : new double[] {0, -0.1}) {
            Core.Outlet out = CORE.outlet(
                    Arrangement.CROSS_BOTH_UNMIXED, new Core.Inlet(flow, 1007, 308), new Core.Inlet(1, 3600, 378));
            assertThat(out).isEqualTo(new Core.Outlet(0, 308, 378, 0));
        }
    }

    @Test
    void coldCoolantWarmsUp() {
        Core.Outlet out =
                CORE.outlet(Arrangement.CROSS_BOTH_UNMIXED, new Core.Inlet(1, 1007, 318), new Core.Inlet(1, 3600, 290));
        assertThat(out.heat()).isNegative();
        assertThat(out.coolant()).isGreaterThan(290);
    }

    @Test
    void refusesACoreWithoutSurface() {
        assertThatThrownBy(() -> new Core(0, 1.2, 0.5, 5500, 1.5, 0.6)).hasMessageContaining("0.0");
    }

    @Test
    void pumpFollowsItsSpeed() {
        Pump pump = new Pump(2.4e-3, 340);
        assertThat(pump.flow(170)).isCloseTo(1.2e-3, within(1e-15));
        assertThat(pump.flow(-10)).isEqualTo(0);
        assertThatThrownBy(() -> new Pump(1e-3, 0)).hasMessageContaining("speed above 0");
    }
}
