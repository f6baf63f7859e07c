package hotday.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.study.demo.DemoShop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chromium.ChromiumDriver;

/** What a builder asks the sheet before metal is cut, in a real browser. */
class PredictionWalkTest {
    private static final Duration WORKED_OUT = Duration.ofSeconds(90);

    /** Holds back the list of work, and longer what is answered to a question. */
    private static final String LATE = """
            const ask = window.fetch;
            window.fetch = async (url, init) => {
              const answer = await ask(url, init);
              if (String(url).endsWith('api/jobs')) {
                await new Promise((go) => setTimeout(go, init?.method === 'POST' ? 2000 : 1000));
              }
              return answer;
            };
            """;

    @TempDir
    private Path folder;

    private OpenPage page;

    @BeforeEach
    void open() {
        DemoShop.create(folder);
        page = OpenPage.of(folder);
        page.go("#/build/heron");
        page.pressable(By.linkText("Prediction")).click();
    }

    @AfterEach
    void close() {
        if (page != null) {
            page.close();
        }
    }

    private String text(By by) {
        return page.seen(by, WORKED_OUT).getText();
    }

    @Test
    void everyCaseSaysItsCeilingItsIntervalAndWhatGivesWay() {
        By first = By.cssSelector(".cases.predicted li");
        assertThat(text(first)).contains("Hot idle in gear, A/C on", "90 of 100:", "cabin cooling gives way first");
        assertThat(page.browser().findElements(first)).hasSize(8);
        assertThat(text(By.cssSelector(".cold"))).contains("Cold morning");
    }

    @Test
    void theSquaresChangeTheirUnitsWithTheRest() {
        By head = By.cssSelector(".squares thead");
        assertThat(text(head)).contains("65 km/h");
        WebElement choice = page.browser().findElement(By.cssSelector(".settings select"));
        choice.sendKeys("US");
        page.until(() -> text(head).contains("40 mph"));
    }

    @Test
    void anotherValueIsTriedAndNothingIsWritten() throws IOException {
        Path sheet = folder.resolve("builds/heron/build.yaml");
        String before = Files.readString(sheet);
        By key = By.cssSelector(".suppose input[list]");
        page.pressable(key).sendKeys("radiator.depth");
        WebElement value = page.browser().findElement(By.cssSelector(".suppose label:nth-of-type(2) input"));
        value.sendKeys("70" + Keys.ENTER);
        assertThat(text(By.cssSelector(".whatif [role='alert']"))).contains("Which unit?");
        value.clear();
        value.sendKeys("70 mm" + Keys.ENTER);
        assertThat(text(By.cssSelector(".whatif tbody"))).contains("Motorway", "degF");
        assertThat(text(By.cssSelector(".supposed"))).contains("radiator.depth 70 mm");
        assertThat(Files.readString(sheet)).isEqualTo(before);
    }

    /** What was worked out before is there so soon that the page hears of its end before it gets the answer to its question. */
    @Test
    void answersThatComeLateDoNotLeaveItWaiting() {
        By first = By.cssSelector(".cases.predicted li");
        text(first);
        ((ChromiumDriver) page.browser())
                .executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", Map.of("source", LATE));
        page.go("");
        page.pressable(By.linkText("Heron"));
        page.go("#/build/heron/prediction");
        assertThat(page.seen(first).getText()).contains("90 of 100:");
    }
}
