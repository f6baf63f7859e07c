package hotday.signals.mdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Rules of ASAM MDF 4.1, from memory of the standard. */
class ConversionTest {
    private final Physical to = new Physical();

    private double of(Conversion conversion, double raw) {
        conversion.number(raw, to);
        return to.number();
    }

    @Test
    void tables() {
        double[] keys = {0, 10, 20};
        double[] values = {1, 3, 4};
        Conversion between = new Conversion.Table(keys, values, true);
        Conversion nearest = new Conversion.Table(keys, values, false);

        assertThat(of(between, 5)).isEqualTo(2);
        assertThat(of(between, -7)).isEqualTo(1);
        assertThat(of(between, 27)).isEqualTo(4);
        assertThat(of(nearest, 4.9)).isEqualTo(1);
        assertThat(of(nearest, 5)).isEqualTo(1);
        assertThat(of(nearest, 5.1)).isEqualTo(3);
        assertThat(of(nearest, 99)).isEqualTo(4);
    }

    /** The upper end belongs to a range of whole numbers and not to one of others. */
    @Test
    void ranges() {
        Conversion.Entry[] entries = {new Conversion.Entry.Number(1), new Conversion.Entry.Number(2)};
        double[] from = {0, 10};
        double[] upTo = {10, 20};
        Conversion.Entry otherwise = new Conversion.Entry.Number(-1);

        assertThat(of(new Conversion.Ranges(from, upTo, entries, otherwise, true), 10))
                .isEqualTo(1);
        assertThat(of(new Conversion.Ranges(from, upTo, entries, otherwise, false), 10))
                .isEqualTo(2);
        assertThat(of(new Conversion.Ranges(from, upTo, entries, otherwise, true), 20))
                .isEqualTo(2);
        assertThat(of(new Conversion.Ranges(from, upTo, entries, otherwise, false), 20))
                .isEqualTo(-1);
        assertThat(of(new Conversion.Ranges(from, upTo, entries, otherwise, true), Double.NaN))
                .isEqualTo(-1);
    }

    @Test
    void aValueWithoutAWordHasNoMeaning() {
        Conversion words = Conversion.Words.of(
                new double[] {3, -0.0},
                new Conversion.Entry[] {
                    new Conversion.Entry.Word(Optional.of("drive")), new Conversion.Entry.Word(Optional.of("park"))
                },
                new Conversion.Entry.Empty());

        words.number(0, to);
        assertThat(to.text()).contains("park");
        words.number(3, to);
        assertThat(to.text()).contains("drive");
        words.number(4, to);
        assertThat(to.isNothing()).isTrue();
        Conversion.NONE.number(4, to);
        assertThat(to.isNothing()).isFalse();
    }

    @Test
    void textsOfTexts() {
        Conversion number = new Conversion.OfTexts(
                Map.of("on", new Conversion.Entry.Number(1)), Optional.of(new Conversion.Entry.Number(-1)));
        number.text("on", to);
        assertThat(to.number()).isEqualTo(1);
        number.text("On", to);
        assertThat(to.number()).isEqualTo(-1);

        Conversion word =
                new Conversion.OfTexts(Map.of("D", new Conversion.Entry.Word(Optional.of("drive"))), Optional.empty());
        word.text("D", to);
        assertThat(to.text()).contains("drive");
        word.text("R", to);
        assertThat(to.text()).contains("R");
    }
}
