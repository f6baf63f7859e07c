package hotday.study.predict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hotday.core.typed.Overlay;
import hotday.core.typed.TypedText;
import hotday.study.demo.DemoShop;
import hotday.vehicle.cases.AmbientCeiling;
import hotday.vehicle.cases.Case;
import hotday.vehicle.cases.StandardCases;
import hotday.vehicle.plant.Plant;
import hotday.vehicle.sheet.BuildSheet;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SensitivityTest {
    @TempDir
    private Path folder;

    @Test
    void aValueIsTakenTenPercentOrFiveKelvinOff() {
        assertThat(Sensitivity.off("40 mm", 1.0)).isEqualTo("44 mm");
        assertThat(Sensitivity.off("0.013", -1.0)).isEqualTo("0.0117");
        assertThat(Sensitivity.off("86 degC", 1.0)).isEqualTo("91 degC");
        assertThat(Sensitivity.off("195 degF", -1.0)).isEqualTo("186 degF");
        assertThat(Sensitivity.off("6", 1.0)).isEqualTo("7");
        assertThat(Sensitivity.off("3200 m3/h", 1.0)).isEqualTo("3520 m3/h");
    }

    /** Every move is that of the ceiling with the other value typed in the sheet; the largest comes first. */
    @Test
    void movesAreThoseOfTheCeilings() throws IOException {
        Path sheet = DemoShop.create(folder.resolve("shop")).build("oxbow");
        List<Case> climb = StandardCases.steady().subList(3, 4);
        List<Sensitivity.Row> rows = Sensitivity.of(sheet, TypedText.read(sheet), climb, share -> {}, () -> false);
        assertThat(rows.size()).isGreaterThan(60);
        for (int i = 1; i < rows.size(); i++) {
            assertThat(rows.get(i).largest())
                    .isLessThanOrEqualTo(rows.get(i - 1).largest());
        }
        Sensitivity.Row first = rows.get(0);
        double moved = ceiling(
                        BuildSheet.read(sheet, Overlay.of("", List.of(first.key() + "=" + first.taken()))),
                        climb.get(0))
                - ceiling(BuildSheet.read(sheet), climb.get(0));
        assertThat(first.moves().get(0)).isCloseTo(moved, within(3e-3)); // K, two searches
        List<WhatIf> same = WhatIf.of(sheet, climb, "", List.of(first.key() + "=" + first.taken()));
        assertThat(same.get(0).change()).isCloseTo(moved, within(3e-3));
    }

    private static double ceiling(BuildSheet sheet, Case kase) {
        return new AmbientCeiling(sheet.vehicle())
                .find(Plant.compile(sheet.vehicle()), kase, 0.0)
                .ambient();
    }
}
