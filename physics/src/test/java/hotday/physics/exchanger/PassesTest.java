package hotday.physics.exchanger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PassesTest {
    private static final FaceGrid FACE = FaceGrid.even(4, 3, 0.4, 0.6);

    private static int[] order(Passes passes) {
        return IntStream.range(0, passes.size()).map(passes::tile).toArray();
    }

    @Test
    void crossFlowRunsAlongAllRowsAtOnce() {
        Passes left = Passes.crossFlow(FACE.whole(), Passes.Side.LEFT);
        Passes right = Passes.crossFlow(FACE.whole(), Passes.Side.RIGHT);
        assertThat(order(left)).containsExactly(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11);
        assertThat(order(right)).containsExactly(2, 1, 0, 5, 4, 3, 8, 7, 6, 11, 10, 9);
        assertThat(left.passes()).isEqualTo(1);
        assertThat(left.firstLane(1)).isEqualTo(4);
        assertThat(left.share(2)).isCloseTo(0.25, within(1e-15));
    }

    @Test
    void downFlowRunsAlongAllColumnsAtOnce() {
        Passes down = Passes.downFlow(FACE.whole());
        assertThat(order(down)).containsExactly(0, 3, 6, 9, 1, 4, 7, 10, 2, 5, 8, 11);
        assertThat(down.firstLane(1)).isEqualTo(3);
    }

    @Test
    void serpentineTurnsAfterEachRow() {
        Passes serpentine = Passes.serpentine(FACE.whole(), Passes.Side.LEFT);
        assertThat(order(serpentine)).containsExactly(0, 1, 2, 5, 4, 3, 6, 7, 8, 11, 10, 9);
        assertThat(serpentine.passes()).isEqualTo(4);
        assertThat(serpentine.share(3)).isEqualTo(1.0);
    }

    @Test
    void passesTakeTheirShareOfTheHeightAndTurn() {
        Passes condenser = Passes.multiPass(FaceGrid.even(10, 2, 0.4, 0.6).whole(), Passes.Side.RIGHT, 0.5, 0.3, 0.2);
        assertThat(condenser.passes()).isEqualTo(3);
        assertThat(condenser.firstLane(1)).isEqualTo(5);
        assertThat(condenser.firstLane(2)).isEqualTo(8);
        assertThat(condenser.tile(0)).isEqualTo(1);
        assertThat(condenser.tile(condenser.firstPlace(5))).isEqualTo(10);
        assertThat(condenser.share(6)).isCloseTo(1.0 / 3.0, within(1e-15));
    }

    @Test
    void everyPassKeepsARow() {
        Passes thin = Passes.multiPass(FACE.whole(), Passes.Side.LEFT, 0.98, 0.01, 0.01);
        assertThat(thin.firstLane(1)).isEqualTo(2);
        assertThat(thin.firstLane(2)).isEqualTo(3);
        Passes late = Passes.multiPass(FACE.whole(), Passes.Side.LEFT, 0.01, 0.01, 0.98);
        assertThat(late.firstLane(1)).isEqualTo(1);
        assertThat(late.firstLane(2)).isEqualTo(2);
    }

    @Test
    void aRectangleOfUnequalTilesSharesTheFlowByHeight() {
        FaceGrid face = new FaceGrid(new double[] {0.1, 0.2, 0.06}, new double[] {0.3, 0.1, 0.2});
        Passes corner = Passes.crossFlow(new Footprint(face, 1, 2, 0, 1), Passes.Side.RIGHT);
        assertThat(order(corner)).containsExactly(4, 3, 7, 6);
        assertThat(corner.share(0)).isCloseTo(0.2 / 0.26, within(1e-15));
        assertThat(corner.area()).isCloseTo(0.26 * 0.4, within(1e-15));
        double[] perTile = new double[face.tiles()];
        corner.spread(1000.0, perTile);
        assertThat(perTile[4]).isCloseTo(1000.0 * 0.02 / 0.104, within(1e-9));
        assertThat(perTile[0] + perTile[5] + perTile[8]).isZero();
    }

    @Test
    void whatDoesNotFitIsRefusedWithItsNumbers() {
        assertThatThrownBy(() -> new Footprint(FACE, 0, 4, 0, 2)).hasMessageContaining("0..4");
        assertThatThrownBy(() -> new Footprint(FACE, 0, 1, 2, 1)).hasMessageContaining("2..1");
        assertThatThrownBy(() -> new FaceGrid(new double[] {0.1, 0}, new double[] {1}))
                .hasMessageContaining("row");
        assertThatThrownBy(() -> new FaceGrid(new double[] {0.1}, new double[] {}))
                .hasMessageContaining("column");
        assertThatThrownBy(() -> Passes.multiPass(FACE.whole(), Passes.Side.LEFT, 0.5, 0.4))
                .hasMessageContaining("0.4");
        assertThatThrownBy(() -> Passes.multiPass(FACE.whole(), Passes.Side.LEFT, 0.2, 0.2, 0.2, 0.2, 0.2))
                .hasMessageContaining("4");
        assertThatThrownBy(() -> Passes.multiPass(FACE.whole(), Passes.Side.LEFT, 1.2, -0.2))
                .hasMessageContaining("-0.2");
        assertThatThrownBy(() -> new AirSide(-1, 3, 0.5)).hasMessageContaining("-1");
    }
}
