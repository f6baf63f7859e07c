package hotday.study.picture;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Luminance and contrast as WCAG 2.1 defines them; small text needs 4.5 to 1 (success criterion 1.4.3). */
class ShadeTest {
    private final Shade shade = new Shade(10, 20);

    @Test
    void lightnessRisesWithTheValue() {
        double last = -1.0;
        for (double v = 10; v <= 20; v += 0.05) {
            double luminance = shade.of(v).luminance();
            assertThat(luminance).as("at " + v).isGreaterThanOrEqualTo(last);
            last = luminance;
        }
        assertThat(shade.of(20).luminance()).isGreaterThan(0.75);
        assertThat(shade.of(10).luminance()).isLessThan(0.03);
    }

    @Test
    void numbersCanBeReadOnEveryColour() {
        for (double v = 10; v <= 20; v += 0.05) {
            Ink ground = shade.of(v);
            assertThat(ground.contrast(Shade.textOn(ground))).as("at " + v).isGreaterThan(4.5);
        }
    }

    /** Black on white is 21 to 1 in the standard; the inks here are near black. */
    @Test
    void contrastIsThatOfTheStandard() {
        assertThat(new Ink(0, 0, 0).contrast(Ink.WHITE)).isBetween(20.99, 21.01);
        assertThat(new Ink(0x77, 0x77, 0x77).contrast(Ink.WHITE)).isBetween(4.47, 4.49);
    }

    @Test
    void valuesOutsideTakeTheEnds() {
        assertThat(shade.of(-5)).isEqualTo(shade.of(10));
        assertThat(shade.of(50)).isEqualTo(shade.of(20));
        assertThat(new Shade(3, 3).of(3)).isNotNull();
    }
}
