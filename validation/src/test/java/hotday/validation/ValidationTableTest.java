package hotday.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Fails on every row of the table that does not hold; prints and writes the table. */
class ValidationTableTest {
    private static final Path FILE = Path.of("target", "validation-table.md");

    @Test
    void everyQuickRowHolds() throws IOException {
        holds(ValidationTable.compute(ValidationTable.TOPICS, false));
    }

    @Test
    @Tag("slow")
    void everyRowHolds() throws IOException {
        holds(ValidationTable.compute(ValidationTable.TOPICS, true));
    }

    private static void holds(ValidationTable table) throws IOException {
        Files.createDirectories(FILE.getParent());
        Files.writeString(FILE, table.markdown());
        System.out.println(table.markdown());
        assertThat(table.failing())
                .as("rows that do not hold; whole table in validation/%s", FILE)
                .isEmpty();
    }

    @Test
    void aRowThatDoesNotHoldIsSeen() {
        ValidationTable table = ValidationTable.compute(List.of(topic(false)), false);
        assertThat(table.failing()).extracting(Check::what).containsExactly("off", "outside", "no number");
        assertThat(table.summary()).isEqualTo("validation: 3 of 6 checks hold");
        assertThat(table.markdown())
                .contains("| off ")
                .contains("**NO**")
                .contains("±1 %")
                .contains("5 to 6");
    }

    @Test
    void slowTopicsWaitForTheSlowPass() {
        assertThat(ValidationTable.compute(List.of(topic(true)), false).failing())
                .isEmpty();
        assertThat(ValidationTable.compute(List.of(topic(true)), true).failing())
                .hasSize(3);
    }

    @Test
    void numbersAreShort() {
        assertThat(List.of(0.0, 0.1, 12345678.0, 1e-7, -2500.5, 1 / 3.0, 6.02e23))
                .extracting(Check::number)
                .containsExactly("0", "0.1", "12345678", "1e-07", "-2500.5", "0.333333333", "6.02e+23");
    }

    private static Topic topic(boolean slow) {
        return new Topic() {
            @Override
            public String title() {
                return "made up";
            }

            @Override
            public boolean slow() {
                return slow;
            }

            @Override
            public List<Check> checks() {
                return List.of(
                        Check.near("good", 1.01, 1, 0.02, "m", "none"),
                        Check.near("off", 1.03, 1, 0.02, "m", "none"),
                        Check.relative("good share", 100.9, 100, 0.01, "m", "none"),
                        Check.inside("inside", 5.5, 5, 6, "m", "none"),
                        Check.inside("outside", 6.5, 5, 6, "m", "none"),
                        Check.near("no number", Double.NaN, 1, 0.02, "m", "none"));
            }
        };
    }
}
