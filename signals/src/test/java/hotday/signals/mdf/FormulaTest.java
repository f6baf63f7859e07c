package hotday.signals.mdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormulaTest {
    /** Values at X = 4, worked out by hand. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "X | 4",
                "2 * X1 - 3 | 5",
                "1 - 2 - X | -5",
                "16 / X / 2 | 2",
                "-(X + 1) * 2e-1 | -1",
                "sqrt(X) + pow(X, 2) | 18",
                "2*-X | -8",
                "log10(X*25) | 2",
                "abs(X-.5e1) | 1"
            })
    void ofFour(String formula, double value) {
        assertThat(Formula.of(formula).of(4)).isEqualTo(value);
    }

    /** Two readings, or none. */
    @ParameterizedTest
    @ValueSource(strings = {"X^2", "log(X)", "X2", "", "X +", "(X", "X)", "2X", "1..2", "pow(X)", "system(X)", "X & 1"})
    void refused(String formula) {
        assertThatThrownBy(() -> Formula.of(formula)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void bracketsWithoutEnd() {
        assertThatThrownBy(() -> Formula.of("(".repeat(4000))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Formula.of("-".repeat(5000) + "X")).isInstanceOf(IllegalArgumentException.class);
        assertThat(Formula.of("0" + "+X".repeat(2000)).of(1)).isEqualTo(2000);
    }
}
