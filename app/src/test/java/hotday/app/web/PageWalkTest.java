package hotday.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.study.demo.DemoShop;
import hotday.study.shop.Shop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** The way of a builder over the page, in a real browser. */
class PageWalkTest {
    private static final By COOLER = By.cssSelector("[data-part='gearbox-cooler']");
    private static final By CEILINGS = By.cssSelector("section.ceilings");

    @TempDir
    private Path folder;

    private PageServer server;
    private WebDriver browser;
    private WebDriverWait wait;

    @BeforeEach
    void open() {
        browser = Browser.open();
        DemoShop.create(folder);
        server = PageServer.start(Shop.open(folder), 0, Reach.THIS_MACHINE);
        wait = new WebDriverWait(browser, Duration.ofSeconds(20));
        browser.get(server.address());
    }

    @AfterEach
    void close() {
        if (browser != null) {
            browser.quit();
        }
        if (server != null) {
            server.close();
        }
    }

    private void openHeron() {
        wait.until(ExpectedConditions.elementToBeClickable(By.linkText("Heron")))
                .click();
        wait.until(ExpectedConditions.visibilityOfElementLocated(COOLER));
        wait.until(ExpectedConditions.visibilityOfElementLocated(CEILINGS));
    }

    private WebElement button(String text) {
        return browser.findElement(By.xpath("//button[normalize-space()='" + text + "']"));
    }

    private String ceilings() {
        return browser.findElement(CEILINGS).getText();
    }

    private void untilCeilingsLeave(String before) {
        wait.until(b -> !ceilings().equals(before));
    }

    @Test
    void aDraggedCoolerMovesTheCeilingsAndIsSavedWhereItWasPut() throws IOException {
        openHeron();
        String before = ceilings();
        assertThat(before).contains("Hot idle in gear, A/C on", "cabin cooling");
        new Actions(browser)
                .moveToElement(browser.findElement(COOLER))
                .clickAndHold()
                .moveByOffset(0, -60)
                .moveByOffset(0, -60)
                .release()
                .perform();
        untilCeilingsLeave(before);
        wait.until(ExpectedConditions.elementToBeClickable(button("Save"))).click();
        Path sheet = folder.resolve("builds/heron/build.yaml");
        wait.until(b -> read(sheet).contains("gearbox_cooler"));
        assertThat(read(sheet)).contains("# big panes, no insulation", "bottom: ");
        browser.navigate().refresh();
        wait.until(ExpectedConditions.visibilityOfElementLocated(CEILINGS));
        assertThat(ceilings()).isNotEqualTo(before);
        assertThat(faults()).isEmpty();
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** What the browser itself complains of: scripts it refused, requests that failed. */
    private List<String> faults() {
        return browser.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::getMessage)
                .toList();
    }

    @Test
    void keysMoveTheCoolerAndUndoTakesItBack() {
        openHeron();
        String before = ceilings();
        WebElement cooler = browser.findElement(COOLER);
        new Actions(browser).click(cooler).perform();
        for (int i = 0; i < 24; i++) {
            browser.findElement(COOLER).sendKeys(Keys.ARROW_UP);
        }
        untilCeilingsLeave(before);
        for (int i = 0; i < 24 && button("Undo").isEnabled(); i++) {
            button("Undo").click();
        }
        wait.until(b -> ceilings().equals(before));
        assertThat(button("Save").isEnabled()).isFalse();
        assertThat(faults()).isEmpty();
    }

    @Test
    void aFaultStandsAtItsFieldInTheWordsOfCheck() {
        openHeron();
        WebElement field = browser.findElement(By.id("value:radiator.depth"));
        field.sendKeys(Keys.chord(Keys.CONTROL, "a"), "520 mm", Keys.ENTER);
        wait.until(
                b -> b.findElement(By.id("value:radiator.depth-said")).getText().contains("it must lie between"));
        assertThat(browser.findElement(By.id("value:radiator.depth")).getDomAttribute("aria-invalid"))
                .isEqualTo("true");
        String sheet = read(folder.resolve("builds/heron/build.yaml"));
        button("Save").click();
        wait.until(b -> b.findElement(By.cssSelector("section.strip [role=status]"))
                .getText()
                .contains("Not saved"));
        assertThat(read(folder.resolve("builds/heron/build.yaml"))).isEqualTo(sheet);
    }
}
