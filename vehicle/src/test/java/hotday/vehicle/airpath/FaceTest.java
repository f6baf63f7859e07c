package hotday.vehicle.airpath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hotday.vehicle.airpath.Face.Core;
import hotday.vehicle.airpath.Face.Disc;
import hotday.vehicle.airpath.Face.ElectricFan;
import hotday.vehicle.airpath.Face.Inlet;
import hotday.vehicle.airpath.Face.Shroud;
import java.util.List;
import org.junit.jupiter.api.Test;

class FaceTest {
    private static final Core RADIATOR = PlainFront.RADIATOR;

    private static Face face(Core... cores) {
        return PlainFront.usual().with(List.of(cores)).face();
    }

    @Test
    void gridPassesThroughEveryEdge() {
        Rectangle cooler = new Rectangle(0.101, 0.2, 0.25, 0.17);
        Grid grid = Grid.through(0.72, 0.48, 12, 8, List.of(cooler));
        assertThat(grid.x()).contains(0.0, cooler.left(), cooler.right(), 0.72);
        assertThat(grid.y()).contains(0.0, cooler.top(), cooler.bottom(), 0.48);
        assertThat(grid.columns()).isBetween(11, 13);
        assertThat(grid.rows()).isBetween(7, 9);
        double area = 0.0;
        for (int tile : grid.inside(cooler)) {
            area += grid.area(tile);
        }
        assertThat(area).isCloseTo(cooler.area(), within(1e-15));
    }

    @Test
    void linesCloserThanThreeMillimetresAreOne() {
        Rectangle a = new Rectangle(0.2, 0.001, 0.2, 0.3);
        Rectangle b = new Rectangle(0.202, 0.0, 0.1, 0.3005);
        Grid grid = Grid.through(0.72, 0.48, 1, 1, List.of(a, b));
        assertThat(grid.x()).containsExactly(0.0, 0.2, b.right(), a.right(), 0.72);
        assertThat(grid.y()).containsExactly(0.0, 0.3005, 0.48);
    }

    @Test
    void tilesAreCountedInRowsFromTheTopLeft() {
        Grid grid = Grid.uniform(12, 8, 0.72, 0.48);
        assertThat(grid.tiles()).isEqualTo(96);
        assertThat(grid.at(0.01, 0.01)).isZero();
        assertThat(grid.at(0.71, 0.01)).isEqualTo(11);
        assertThat(grid.at(0.01, 0.07)).isEqualTo(12);
        assertThat(grid.at(9.0, 9.0)).isEqualTo(95);
        assertThat(grid.inside(new Rectangle(0.0, 0.06, 0.12, 0.06))).containsExactly(12, 13);
        assertThat(grid.middleX(13)).isCloseTo(0.09, within(1e-12));
    }

    @Test
    void refusesWithBothNumbers() {
        assertThatThrownBy(() -> face(new Core("cooler", 0, new Rectangle(0.5, 0.1, 0.3, 0.2), 1.0, 1.0), RADIATOR))
                .hasMessageContaining("0.8 m")
                .hasMessageContaining("0.72 m");
        assertThatThrownBy(() -> face(
                        new Core("left", 0, new Rectangle(0.0, 0.0, 0.4, 0.2), 1.0, 1.0),
                        new Core("right", 0, new Rectangle(0.25, 0.1, 0.4, 0.25), 1.0, 1.0)))
                .hasMessageContaining("left and right")
                .hasMessageContaining("0.15")
                .hasMessageContaining("0.1 m");
        assertThatThrownBy(() -> face(RADIATOR, PlainFront.CONDENSER)).hasMessageContaining("depth 1");
        ElectricFan large = new ElectricFan(PlainFront.CURVE, new Disc(0.36, 0.24, 0.5), false);
        assertThatThrownBy(() -> PlainFront.usual().with(large).face())
                .hasMessageContaining("0.5 m")
                .hasMessageContaining("0.48 m");
        ElectricFan twin = new ElectricFan(PlainFront.CURVE, new Disc(0.36, 0.24, 0.4), false);
        assertThatThrownBy(() -> PlainFront.usual().with(twin, twin).face())
                .hasMessageContaining("0.8 m")
                .hasMessageContaining("0.72 m");
        assertThatThrownBy(() -> PlainFront.usual()
                        .with(twin)
                        .with(new Shroud(new Rectangle(0.0, 0.0, 0.3, 0.3), 0.0))
                        .face())
                .hasMessageContaining("0.4 m")
                .hasMessageContaining("0.3 m");
        assertThatThrownBy(() -> new Inlet(0.7, 0.0)).hasMessageContaining("inlet loss 0.0");
        assertThatThrownBy(() -> new Rectangle(0.0, 0.0, -0.1, 1.0)).hasMessageContaining("-0.1");
    }

    @Test
    void coresOfOneDepthMayTouchAndOtherDepthsMayCover() {
        Core left = new Core("left", 0, new Rectangle(0.0, 0.0, 0.4, 0.2), 1.0, 1.0);
        Core right = new Core("right", 0, new Rectangle(0.4, 0.0, 0.32, 0.2), 1.0, 1.0);
        assertThat(face(left, right, RADIATOR).cores()).hasSize(3);
    }

    @Test
    void weatherIsChecked() {
        TileFlow flow = TilePath.compile(PlainFront.usual().face()).start();
        assertThatThrownBy(() -> flow.air(Double.NaN, 300.0, 1e5, 300.0)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> flow.air(0.0, 30.0, 1e5, 300.0)).hasMessageContaining("30.0 K");
        assertThatThrownBy(() -> flow.fan(0, -0.1)).hasMessageContaining("-0.1");
    }
}
