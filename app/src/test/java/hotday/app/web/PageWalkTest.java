package hotday.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.study.demo.DemoShop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** The way of a builder over the page, in a real browser. */
class PageWalkTest {
    private static final By COOLER = By.cssSelector("[data-part='gearbox-cooler']");
    private static final By CEILINGS = By.cssSelector("section.ceilings");

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

    private void openHeron() {
        page.pressable(By.linkText("Heron")).click();
        page.seen(COOLER);
        page.seen(CEILINGS);
    }

    private WebElement button(String text) {
        return page.browser().findElement(OpenPage.button(text));
    }

    private String ceilings() {
        return page.browser().findElement(CEILINGS).getText();
    }

    private void untilCeilingsLeave(String before) {
        page.until(() -> !ceilings().equals(before));
    }

    @Test
    void aDraggedCoolerMovesTheCeilingsAndIsSavedWhereItWasPut() throws IOException {
        openHeron();
        String before = ceilings();
        assertThat(before).contains("Hot idle in gear, A/C on", "cabin cooling");
        new Actions(page.browser())
                .moveToElement(page.browser().findElement(COOLER))
                .clickAndHold()
                .moveByOffset(0, -60)
                .moveByOffset(0, -60)
                .release()
                .perform();
        untilCeilingsLeave(before);
        page.pressable(OpenPage.button("Save")).click();
        Path sheet = folder.resolve("builds/heron/build.yaml");
        page.until(() -> read(sheet).contains("gearbox_cooler"));
        assertThat(read(sheet)).contains("# big panes, no insulation", "bottom: ");
        page.browser().navigate().refresh();
        page.seen(CEILINGS);
        assertThat(ceilings()).isNotEqualTo(before);
        assertThat(page.faults()).isEmpty();
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void keysMoveTheCoolerAndUndoTakesItBack() {
        openHeron();
        String before = ceilings();
        WebElement cooler = page.browser().findElement(COOLER);
        new Actions(page.browser()).click(cooler).perform();
        for (int i = 0; i < 24; i++) {
            page.browser().findElement(COOLER).sendKeys(Keys.ARROW_UP);
        }
        untilCeilingsLeave(before);
        for (int i = 0; i < 24 && button("Undo").isEnabled(); i++) {
            button("Undo").click();
        }
        page.until(() -> ceilings().equals(before));
        assertThat(button("Save").isEnabled()).isFalse();
        assertThat(page.faults()).isEmpty();
    }

    @Test
    void aFaultStandsAtItsFieldInTheWordsOfCheck() {
        openHeron();
        WebElement field = page.browser().findElement(By.id("value:radiator.depth"));
        field.sendKeys(Keys.chord(Keys.CONTROL, "a"), "520 mm", Keys.ENTER);
        page.until(() -> page.browser()
                .findElement(By.id("value:radiator.depth-said"))
                .getText()
                .contains("it must lie between"));
        assertThat(page.browser().findElement(By.id("value:radiator.depth")).getDomAttribute("aria-invalid"))
                .isEqualTo("true");
        String sheet = read(folder.resolve("builds/heron/build.yaml"));
        button("Save").click();
        page.until(() -> page.browser()
                .findElement(By.cssSelector("section.strip [role=status]"))
                .getText()
                .contains("Not saved"));
        assertThat(read(folder.resolve("builds/heron/build.yaml"))).isEqualTo(sheet);
    }
}
