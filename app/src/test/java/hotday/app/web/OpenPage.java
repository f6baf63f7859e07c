package hotday.app.web;

import hotday.study.shop.Shop;
import java.net.URI;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.function.Supplier;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A shop, served, and a browser that looks at it. */
final class OpenPage implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final WebDriver browser;
    private final Path shop;
    private final String address;
    private PageServer server;

    private OpenPage(WebDriver browser, Path shop, PageServer server) {
        this.browser = browser;
        this.shop = shop;
        this.server = server;
        this.address = server.address();
    }

    /** The test is skipped where no browser can be opened. */
    static OpenPage of(Path shop) {
        WebDriver browser = Browser.open();
        try {
            OpenPage page = new OpenPage(browser, shop, PageServer.start(Shop.open(shop), 0, Reach.THIS_MACHINE));
            browser.get(page.address);
            return page;
        } catch (RuntimeException e) {
            browser.quit();
            throw e;
        }
    }

    String address() {
        return address;
    }

    /** The server ends; the page goes on standing in the browser. */
    void away() {
        server.close();
    }

    /** The server starts anew, where it was. */
    void back() {
        server = PageServer.start(Shop.open(shop), URI.create(address).getPort(), Reach.THIS_MACHINE);
    }

    WebDriver browser() {
        return browser;
    }

    /** A view by what stands behind the address. */
    void go(String view) {
        browser.get(address + view);
    }

    WebElement seen(By what) {
        return seen(what, PATIENCE);
    }

    WebElement seen(By what, Duration patience) {
        return new WebDriverWait(browser, patience).until(ExpectedConditions.visibilityOfElementLocated(what));
    }

    WebElement pressable(By what) {
        return new WebDriverWait(browser, PATIENCE).until(ExpectedConditions.elementToBeClickable(what));
    }

    void until(Supplier<Boolean> holds) {
        until(holds, PATIENCE);
    }

    void until(Supplier<Boolean> holds, Duration patience) {
        new WebDriverWait(browser, patience).until(b -> holds.get());
    }

    static By button(String text) {
        return By.xpath("//button[normalize-space()='" + text + "']");
    }

    Object script(String script, Object... words) {
        return ((JavascriptExecutor) browser).executeScript(script, words);
    }

    /** What a script hands to the function it gets as its last word. */
    Object later(String script, Object... words) {
        browser.manage().timeouts().scriptTimeout(Duration.ofSeconds(60));
        return ((JavascriptExecutor) browser).executeAsyncScript(script, words);
    }

    /** What the browser itself complains of: scripts it refused, requests that failed. */
    List<String> faults() {
        return browser.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::getMessage)
                .toList();
    }

    @Override
    public void close() {
        browser.quit();
        server.close();
    }
}
