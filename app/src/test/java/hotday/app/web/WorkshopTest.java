package hotday.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hotday.study.demo.DemoShop;
import hotday.study.shop.Shop;
import java.net.ConnectException;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** Another device of the workshop: this machine under its address in the network. */
class WorkshopTest {
    @TempDir
    private Path folder;

    private PageServer server;
    private final HttpClient tablet =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

    @BeforeEach
    void start() {
        DemoShop.create(folder);
        server = PageServer.started(Shop.open(folder), 0, Reach.WORKSHOP, false);
        if (server.addresses().isEmpty()) {
            System.out.println("skipped: devices of the workshop (this machine is in no network)");
            Assumptions.abort("no network");
        }
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private HttpResponse<String> get(String address) throws Exception {
        return tablet.send(
                HttpRequest.newBuilder(URI.create(address + "api/shop")).build(), BodyHandlers.ofString());
    }

    private HttpResponse<String> pair(String code) throws Exception {
        return tablet.send(
                HttpRequest.newBuilder(URI.create(server.addresses().get(0) + "api/pair"))
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString("{\"code\":\"" + code + "\"}"))
                        .build(),
                BodyHandlers.ofString());
    }

    private String wrong() {
        return server.code().orElseThrow().startsWith("0") ? "10000000" : "00000000";
    }

    @Test
    void anotherDeviceIsLetInOnceItWasToldTheCode() throws Exception {
        String address = server.addresses().get(0);
        HttpResponse<String> before = get(address);
        assertThat(before.statusCode()).isEqualTo(401);
        assertThat(before.body()).contains("\"pair\"").doesNotContain("heron");
        assertThat(pair(wrong()).statusCode()).isEqualTo(401);
        String code = server.code().orElseThrow();
        HttpResponse<String> paired = pair(code.substring(0, 4) + " " + code.substring(4));
        assertThat(paired.statusCode()).isEqualTo(200);
        assertThat(paired.headers().firstValue("Set-Cookie").orElse("")).contains("HttpOnly", "SameSite=Strict");
        assertThat(get(address).body()).contains("heron");
    }

    @Test
    void thisMachineNeedsNoCode() throws Exception {
        assertThat(get(server.address()).statusCode()).isEqualTo(200);
    }

    @Test
    void codesCannotBeTriedOneAfterAnother() throws Exception {
        for (int i = 0; i < 10; i++) {
            assertThat(pair(wrong()).statusCode()).isEqualTo(401);
        }
        HttpResponse<String> right = pair(server.code().orElseThrow());
        assertThat(right.statusCode()).isEqualTo(429);
        assertThat(get(server.addresses().get(0)).statusCode()).isEqualTo(401);
    }

    @Test
    void afterAMinuteTheCodeWorksAgain() {
        AtomicLong now = new AtomicLong();
        Pairing pairing = new Pairing(now::get);
        for (int i = 0; i < 10; i++) {
            assertThat(pairing.tried("x")).isEqualTo(Pairing.Outcome.WRONG);
        }
        assertThat(pairing.tried(pairing.code())).isEqualTo(Pairing.Outcome.TOO_OFTEN);
        now.addAndGet(60_000_000_000L);
        assertThat(pairing.tried(pairing.code())).isEqualTo(Pairing.Outcome.PAIRED);
    }

    @Test
    void aTabletTypesTheCode() {
        WebDriver browser = Browser.open();
        try (PageServer page = PageServer.start(Shop.open(folder), 0, Reach.WORKSHOP)) {
            browser.get(page.addresses().get(0));
            WebDriverWait wait = new WebDriverWait(browser, Duration.ofSeconds(20));
            WebElement code = wait.until(ExpectedConditions.elementToBeClickable(By.name("code")));
            code.sendKeys("x" + Keys.ENTER);
            wait.until(ExpectedConditions.textToBe(
                    By.id("pair-trouble"), "this is not the code that 'hotday serve --lan' shows"));
            code.clear();
            code.sendKeys(page.code().orElseThrow() + Keys.ENTER);
            wait.until(ExpectedConditions.elementToBeClickable(By.linkText("Heron")));
        } finally {
            browser.quit();
        }
    }

    @Test
    void withoutTheNetworkNobodyElseGetsAnAnswer() {
        try (PageServer alone = PageServer.started(Shop.open(folder), 0, Reach.THIS_MACHINE, false)) {
            assertThat(alone.code()).isEmpty();
            assertThat(alone.addresses()).isEmpty();
            int port = URI.create(alone.address()).getPort();
            URI other =
                    URI.create("http://" + URI.create(server.addresses().get(0)).getHost() + ":" + port + "/api/shop");
            assertThatThrownBy(() -> tablet.send(HttpRequest.newBuilder(other).build(), BodyHandlers.ofString()))
                    .isInstanceOf(ConnectException.class);
        }
    }
}
