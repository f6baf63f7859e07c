package hotday.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.study.demo.DemoShop;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;

/** What the page says and keeps when a save, a tab beside it or the server gets in the way, in a real browser. */
class TroubleWalkTest {
    private static final By CEILINGS = By.cssSelector("section.ceilings h3");
    private static final By DEPTH = By.id("value:radiator.depth");
    private static final By NOTICE = By.cssSelector("section.strip .notice.bad");
    private static final By STATE = By.cssSelector("section.strip [role=status]");
    private static final String LAY_OVER = "Read it again and lay my changes over it";
    private static final Duration SOON = Duration.ofSeconds(60);

    @TempDir
    private Path folder;

    private Path sheet;
    private OpenPage page;

    @BeforeEach
    void open() {
        DemoShop.create(folder);
        sheet = folder.resolve("builds/heron/build.yaml");
        page = OpenPage.of(folder);
        page.go("#/build/heron");
        page.seen(CEILINGS);
    }

    @AfterEach
    void close() {
        if (page != null) {
            page.close();
        }
    }

    private void depth(String value) {
        WebElement field = page.seen(DEPTH);
        field.sendKeys(Keys.chord(Keys.CONTROL, "a"), value, Keys.ENTER);
        page.until(() -> page.seen(STATE).getText().contains("not saved"));
    }

    private String shownDepth() {
        return page.seen(DEPTH).getDomProperty("value");
    }

    @Test
    void aSheetTheDiskDoesNotTakeStaysOnThePageAndIsSavedAgain() throws IOException {
        depth("61 mm");
        try (ReadOnly closed = ReadOnly.of(sheet.getParent())) {
            page.pressable(OpenPage.button("Save")).click();
            assertThat(page.seen(NOTICE).getText())
                    .contains("Not saved; your changes stay here.", "cannot be written (no permission)")
                    .doesNotContain("fault");
        }
        assertThat(shownDepth()).isEqualTo("61 mm");
        page.pressable(OpenPage.button("Save again")).click();
        page.until(() -> page.seen(STATE).getText().contains("Saved."));
        assertThat(sheet).content().contains("61 mm");
    }

    @Test
    void whoHasChangesHearsAtOnceThatAnotherSaved() throws IOException {
        depth("61 mm");
        PageClient other = new PageClient(page.address());
        String version =
                PageClient.json(other.get("api/builds/heron")).get("version").asString();
        other.change(
                "PUT",
                "api/builds/heron",
                "{\"version\":\"" + version + "\",\"changes\":[{\"key\":\"radiator.width\",\"value\":\"31 in\"}]}");
        assertThat(page.seen(NOTICE).getText()).contains("saved elsewhere just now");
        page.pressable(OpenPage.button(LAY_OVER)).click();
        page.until(() -> page.seen(STATE).getText().contains("your changes lie over it"));
        assertThat(shownDepth()).isEqualTo("61 mm");
        page.pressable(OpenPage.button("Save")).click();
        page.until(() -> page.seen(STATE).getText().contains("Saved."));
        assertThat(sheet).content().contains("31 in", "61 mm");
    }

    /** A tab nobody looks at hears nothing; it catches up when it is looked at. */
    @Test
    void aTabThatWasHiddenHearsOfASaveWhenItIsLookedAt() {
        depth("61 mm");
        String first = page.browser().getWindowHandle();
        page.browser().switchTo().newWindow(WindowType.TAB);
        page.go("#/build/heron");
        depth("62 mm");
        page.pressable(OpenPage.button("Save")).click();
        page.until(() -> page.seen(STATE).getText().contains("Saved."));
        page.browser().switchTo().window(first);
        assertThat(page.seen(NOTICE).getText()).contains("saved elsewhere just now");
        assertThat(shownDepth()).isEqualTo("61 mm");
    }

    @Test
    void aServerThatComesBackIsAskedAgainAndNothingIsLost() {
        page.away();
        page.seen(DEPTH).sendKeys(Keys.chord(Keys.CONTROL, "a"), "61 mm", Keys.ENTER);
        assertThat(page.seen(NOTICE).getText()).contains("does not answer", "asked again by itself");
        page.script("location.hash = '#/'");
        page.until(
                () -> page.seen(By.cssSelector(".shop .notice.bad")).getText().contains("asked again by itself"));
        page.back();
        page.seen(By.cssSelector(".tag .big"), SOON);
        page.until(() ->
                page.browser().findElements(By.cssSelector(".shop .notice.bad")).isEmpty());
        page.script("location.hash = '#/build/heron'");
        page.seen(CEILINGS);
        assertThat(shownDepth()).isEqualTo("61 mm");
    }

    @Test
    void theViewOfAServerThatWasAwayFillsItself() {
        page.away();
        page.seen(DEPTH).sendKeys(Keys.chord(Keys.CONTROL, "a"), "61 mm", Keys.ENTER);
        page.seen(NOTICE);
        page.back();
        page.until(() -> page.browser().findElements(NOTICE).isEmpty(), SOON);
        page.until(() -> page.seen(By.cssSelector("section.ceilings")).getText().contains("from saved"), SOON);
        assertThat(shownDepth()).isEqualTo("61 mm");
    }

    @Test
    void aRecordingThatIsTooLargeIsNotSent() throws IOException {
        Path large = folder.resolve("large.csv");
        try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(300_000_000);
        }
        page.go("#/build/heron/proof");
        page.seen(By.cssSelector("section.recordings p"));
        page.until(() -> page.browser()
                .findElement(By.cssSelector("section.recordings"))
                .getText()
                .contains("None yet."));
        page.browser().findElement(By.cssSelector(".drop input")).sendKeys(large.toString());
        page.until(() -> page.seen(By.cssSelector(".sending"))
                .getText()
                .contains("Not sent: it has 300.0 MB, at most 256.0 MB are taken."));
        assertThat(Files.exists(folder.resolve("runs/large.csv"))).isFalse();
    }
}
