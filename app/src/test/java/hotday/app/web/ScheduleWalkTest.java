package hotday.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.study.demo.DemoShop;
import hotday.vehicle.sheet.BuildSheet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** A calibrator drags the fan schedule of a build, in a real browser. */
class ScheduleWalkTest {
    private static final Duration JUDGED = Duration.ofSeconds(60);
    private static final Duration DESIGNED = Duration.ofSeconds(300);
    private static final By POINT = By.cssSelector("[data-curve='schedule.coolant'] [data-handle='point 1']");
    private static final By ON = By.cssSelector("[data-curve='schedule.coolant'] [data-handle='rail 0']");
    private static final By RULES = By.cssSelector("[data-card='rules']");
    private static final By DAY = By.cssSelector("[data-card='day']");

    @TempDir
    private Path folder;

    private OpenPage page;

    @BeforeEach
    void open() {
        DemoShop.create(folder);
        page = OpenPage.of(folder);
    }

    @AfterEach
    void close() {
        if (page != null) {
            page.close();
        }
    }

    private void go(String build) {
        page.go("#/build/" + build);
        page.pressable(By.linkText("Fan schedule")).click();
        untilState("As saved", JUDGED);
    }

    private String strip() {
        return page.seen(By.cssSelector("section.strip")).getText();
    }

    private void untilState(String words, Duration patience) {
        page.until(() -> strip().contains(words), patience);
    }

    private Path sheet(String build) {
        return folder.resolve("builds").resolve(build).resolve("build.yaml");
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void aDraggedPointChangesWhatTheFanTakesAndIsSavedWhereItWasPut() {
        go("heron");
        String before = page.seen(DAY).getText();
        assertThat(before).contains("of the saved sheet", "holds").doesNotContain("as it stands here");
        new Actions(page.browser())
                .moveToElement(page.browser().findElement(POINT))
                .clickAndHold()
                .moveByOffset(0, -20)
                .moveByOffset(0, -20)
                .perform();
        page.until(() -> page.seen(DAY).getText().contains("as it stands here"), JUDGED);
        page.until(
                () -> page.browser().findElements(RULES).stream()
                        .anyMatch(card -> card.getText().contains("A cabin that stood in the heat: ")
                                && card.getText().contains("Ah that it may; room to boiling ")),
                JUDGED);
        new Actions(page.browser()).release().perform();
        untilState("1 change, not saved", JUDGED);
        page.pressable(OpenPage.button("Save")).click();
        untilState("Saved.", JUDGED);
        assertThat(read(sheet("heron")))
                .contains("coolant: [[205.5 degF, 25 %], [213 degF, 5", "# big panes, no insulation")
                .doesNotContain("[213 degF, 40 %]");
        assertThat(page.faults()).isEmpty();
    }

    @Test
    void aFanThatStartsTooLateIsSeenToGiveWayAndUndoTakesItBack() {
        go("heron");
        assertThat(strip()).contains("holds").doesNotContain("does not hold");
        page.pressable(ON).click();
        WebElement on = page.browser().findElement(ON);
        for (int i = 0; i < 23; i++) {
            on.sendKeys(Keys.ARROW_RIGHT);
        }
        page.until(() -> strip().contains("does not hold") && strip().contains("1 change, not saved"), JUDGED);
        assertThat(page.seen(By.cssSelector(".told-of")).getText()).contains("a fan at full speed holds it");
        assertThat(page.browser().findElements(By.cssSelector(".rooms .gone"))).isNotEmpty();
        for (int i = 0; i < 23 && page.seen(OpenPage.button("Undo")).isEnabled(); i++) {
            page.seen(OpenPage.button("Undo")).click(); // presses far apart are steps of their own
        }
        page.until(() -> strip().contains("As saved") && !strip().contains("does not hold"), JUDGED);
        assertThat(page.faults()).isEmpty();
    }

    @Test
    void whatCannotBeIsRefusedAtItsFieldAndNothingIsLost() {
        go("heron");
        String before = read(sheet("heron"));
        page.pressable(By.cssSelector("[data-curve='schedule.coolant'] summary"))
                .click();
        WebElement demand = page.seen(By.id("schedule.coolant:2:1"));
        demand.sendKeys(Keys.chord(Keys.CONTROL, "a"), "130 %", Keys.ENTER);
        page.until(
                () -> page.seen(By.cssSelector("[data-curve='schedule.coolant'] .said"))
                        .getText()
                        .contains("between 0 % and 100 %"),
                JUDGED);
        WebElement off = page.seen(By.id("value:schedule.off"));
        off.sendKeys(Keys.chord(Keys.CONTROL, "a"), "210", Keys.ENTER);
        assertThat(page.seen(By.id("value:schedule.off-said")).getText()).contains("Which unit?");
        page.pressable(OpenPage.button("Save")).click();
        untilState("Not saved", JUDGED);
        assertThat(read(sheet("heron"))).isEqualTo(before);
        assertThat(page.seen(By.id("schedule.coolant:2:1")).getDomProperty("value"))
                .startsWith("130");
    }

    @Test
    void theUnitsOfTheCurvesFollowTheChoice() {
        go("oxbow");
        By coolant = By.cssSelector("[data-curve='schedule.coolant'] svg");
        assertThat(page.seen(coolant).getText()).contains("on 96.0 degC");
        page.browser().findElement(By.cssSelector(".settings select")).sendKeys("US");
        page.until(() -> page.seen(coolant).getText().contains("on 204.8 degF"), JUDGED);
    }

    @Test
    @Tag("slow")
    void theDesignedScheduleIsTakenAndSaved() {
        go("oxbow");
        page.pressable(OpenPage.button("Design")).click();
        By take = OpenPage.button("Take the designed schedule");
        page.seen(take, DESIGNED);
        assertThat(page.seen(DAY).getText()).contains("designed, balanced");
        page.pressable(take).click();
        page.until(() -> strip().contains("not saved") && !strip().contains("does not hold"), JUDGED);
        page.seen(By.cssSelector("[data-curve='schedule.head_pressure']"));
        page.pressable(OpenPage.button("Save")).click();
        untilState("Saved.", JUDGED);
        assertThat(read(sheet("oxbow"))).contains("head_pressure: [[").doesNotContain("air_conditioning: 40 %");
        assertThat(BuildSheet.read(sheet("oxbow")).vehicle().schedule().airConditioningDemand())
                .isZero();
        assertThat(page.faults()).isEmpty();
    }
}
