package hotday.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.study.demo.DemoShop;
import hotday.study.shop.Shop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.TakesScreenshot;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chromium.ChromiumDriver;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * Every view on a desk, a tablet and a phone, in light and dark: nothing sticks out sideways, the browser complains of nothing. The pictures
 * go to {@code target/pictures}, or into the guide with {@code -Dhotday.guide=docs/guide/page}.
 */
@Tag("slow")
class PagePicturesTest {
    /** Width and height in CSS pixels. */
    private record Screen(String name, int width, int height) {}

    private static final Duration A_FIT = Duration.ofSeconds(150);
    private static final Duration A_PREDICTION = Duration.ofSeconds(60);
    private static final By RESULT = By.cssSelector("section.result");

    private static final List<Screen> SCREENS =
            List.of(new Screen("desk", 1440, 900), new Screen("tablet", 1024, 768), new Screen("phone", 390, 844));

    @TempDir
    private Path folder;

    @Test
    void everyViewFitsEveryScreen() throws IOException {
        WebDriver browser = Browser.open();
        DemoShop.create(folder).drive("heron", 7);
        try (PageServer server = PageServer.start(Shop.open(folder), 0, Reach.THIS_MACHINE)) {
            browser.get(server.address() + "#/build/heron/proof");
            new WebDriverWait(browser, Duration.ofSeconds(20))
                    .until(ExpectedConditions.elementToBeClickable(OpenPage.button("Fit and prove")))
                    .click();
            new WebDriverWait(browser, A_FIT).until(ExpectedConditions.visibilityOfElementLocated(RESULT));
            for (Screen screen : SCREENS) {
                for (String light : List.of("light", "dark")) {
                    emulate(browser, screen, light);
                    browser.get(server.address());
                    picture(browser, By.linkText("Heron"), "shop-" + screen.name() + "-" + light);
                    browser.get(server.address() + "#/build/heron");
                    picture(browser, By.cssSelector("section.ceilings h3"), "build-" + screen.name() + "-" + light);
                    browser.get(server.address() + "#/build/heron/prediction");
                    By predicted = By.cssSelector(".cases.predicted li");
                    new WebDriverWait(browser, A_PREDICTION)
                            .withMessage(() ->
                                    browser.findElement(By.tagName("main")).getText())
                            .until(ExpectedConditions.visibilityOfElementLocated(predicted));
                    picture(browser, predicted, "prediction-" + screen.name() + "-" + light);
                    upTo(browser, By.cssSelector("section.roads"));
                    picture(browser, By.cssSelector(".squares td"), "roads-" + screen.name() + "-" + light);
                    browser.get(server.address() + "#/build/heron/schedule");
                    picture(browser, By.cssSelector(".rooms tbody td"), "schedule-" + screen.name() + "-" + light);
                    browser.get(server.address() + "#/build/heron/proof");
                    picture(
                            browser,
                            By.cssSelector("section.recordings h3"),
                            "recordings-" + screen.name() + "-" + light);
                    upTo(browser, RESULT);
                    picture(browser, RESULT, "proof-" + screen.name() + "-" + light);
                    upTo(browser, By.cssSelector("section.traces"));
                    picture(browser, By.cssSelector(".plot canvas"), "traces-" + screen.name() + "-" + light);
                }
            }
            assertThat(browser.manage().logs().get(LogType.BROWSER).getAll()).isEmpty();
        } finally {
            browser.quit();
        }
    }

    private static void emulate(WebDriver browser, Screen screen, String light) {
        ChromiumDriver chromium = (ChromiumDriver) browser;
        chromium.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of(
                        "width",
                        screen.width(),
                        "height",
                        screen.height(),
                        "deviceScaleFactor",
                        1,
                        "mobile",
                        screen.width() < 500));
        chromium.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", light))));
    }

    private static void upTo(WebDriver browser, By what) {
        WebElement section = new WebDriverWait(browser, Duration.ofSeconds(20))
                .until(ExpectedConditions.presenceOfElementLocated(what));
        ((JavascriptExecutor) browser)
                .executeScript("window.scrollBy(0, arguments[0].getBoundingClientRect().top - 8)", section);
    }

    private static void picture(WebDriver browser, By shown, String name) throws IOException {
        new WebDriverWait(browser, Duration.ofSeconds(20)).until(ExpectedConditions.visibilityOfElementLocated(shown));
        Object over = ((JavascriptExecutor) browser)
                .executeScript("return document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertThat(((Number) over).intValue())
                .as(name + ": pixels that stick out")
                .isZero();
        byte[] png = ((TakesScreenshot) browser).getScreenshotAs(OutputType.BYTES);
        Path folder = Path.of(System.getProperty("hotday.root", "..")).resolve(System.getProperty("hotday.guide"));
        Files.createDirectories(folder);
        Files.write(folder.resolve(name + ".png"), png);
        assertThat(png.length).as(name).isGreaterThan(10_000);
    }
}
