package hotday.vehicle.idle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.vehicle.idle.FeedForwardTable.Row;
import org.junit.jupiter.api.Test;

class FeedForwardTableTest {
    private static final double RPM = Math.PI / 30.0;
    private static final double CLUTCH = 0.04;
    private static final IdleSettings ENGINE = IdleSettings.of(4.8e-3, 700 * RPM);

    /** 5 to 30 N m from a clutch: announced, each is acceptable, the torque is about that of the load, the lead in the usual 0.1 to 0.5 s. */
    @Test
    void tableOfAClutch() {
        FeedForwardTable table = FeedForwardTable.of(ENGINE, CLUTCH, 5, 15, 30);
        double before = 0;
        for (Row row : table.rows()) {
            assertThat(row.announced().acceptable()).isTrue();
            assertThat(row.announced().sag()).isBetween(before, 30 * RPM);
            assertThat(row.announced().sag()).isLessThan(0.5 * row.unannounced().sag());
            assertThat(row.forward().torque() / row.load()).isBetween(0.9, 1.2);
            assertThat(row.forward().lead()).isBetween(0.1, 0.5);
            before = row.announced().sag();
        }
        assertThat(table.rows().get(2).unannounced().acceptable()).isFalse();
        assertThat(table.rows()).hasSize(3);
    }

    /** A load that comes as slowly as the air does needs the same torque at the same instant, and then is not felt. */
    @Test
    void slowLoadNeedsNoLead() {
        FeedForward best = FeedForwardTable.best(ENGINE, new IdleLoad(20, 0.35));
        assertThat(best.lead()).isCloseTo(0, within(0.002));
        assertThat(best.torque()).isCloseTo(20, within(0.05));
    }

    /** Nothing near by is better by the documented measure. */
    @Test
    void isALowPoint() {
        IdleLoad load = new IdleLoad(20, CLUTCH);
        FeedForward best = FeedForwardTable.best(ENGINE, load);
        double least = FeedForwardTable.cost(ENGINE, load, best);
        for (double torque : new double[] {-1, 0, 1}) {
            for (double lead : new double[] {-0.03, 0, 0.03}) {
                FeedForward other = new FeedForward(best.torque() + torque, best.lead() + lead);
                assertThat(FeedForwardTable.cost(ENGINE, load, other)).isGreaterThanOrEqualTo(least);
            }
        }
        assertThat(FeedForwardTable.best(ENGINE, load)).isEqualTo(best);
    }
}
