package hotday.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.study.demo.DemoShop;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** Everything with a unit follows the switch, in a real browser. */
class UnitsWalkTest {
    private static final By WIDTH = By.id("value:radiator.width");
    private static final By COMPARE = By.cssSelector("section.compare");

    @TempDir
    private Path folder;

    private OpenPage page;

    @BeforeEach
    void open() {
        DemoShop.create(folder);
        page = OpenPage.of(folder);
        page.go("#/build/heron");
        page.seen(By.cssSelector("section.ceilings h3"));
    }

    @AfterEach
    void close() {
        if (page != null) {
            page.close();
        }
    }

    private void units(String word) {
        new Select(page.browser().findElement(By.cssSelector(".settings select"))).selectByVisibleText(word);
    }

    private String width() {
        return page.seen(WIDTH).getDomProperty("value");
    }

    private List<String> ticks() {
        return page
                .browser()
                .findElement(By.cssSelector("section.ceilings svg.bar"))
                .findElements(By.tagName("text"))
                .stream()
                .map(WebElement::getText)
                .toList();
    }

    @Test
    void ticksAreRoundInTheChosenUnit() {
        units("Metric");
        page.until(() -> ticks().equals(List.of("-20", "0", "20", "40", "60", "80")));
        units("US");
        page.until(() -> ticks().equals(List.of("0", "40", "80", "120", "160")));
    }

    @Test
    void valuesAndCompareFollowTheSwitch() {
        String typed = width();
        assertThat(typed).isEqualTo("31.5 in");
        units("Metric");
        page.until(() -> width().equals("800.1 mm"));
        assertThat(page.seen(By.id("value:radiator.width-hint")).getText()).contains("typed as 31.5 in");
        page.seen(WIDTH).sendKeys(Keys.chord(Keys.CONTROL, "a"), "790 mm", Keys.ENTER);
        page.pressable(By.xpath("//button[starts-with(normalize-space(), 'Compare')]"))
                .click();
        page.until(() -> page.seen(COMPARE).getText().contains("790 mm"));
        assertThat(page.seen(COMPARE).getText()).contains("800.1 mm");
        units("US");
        page.until(() -> page.seen(COMPARE).getText().contains("31.1 in"));
        assertThat(page.seen(COMPARE).getText()).contains("31.5 in").doesNotContain("mm");
        units("Sheet");
        page.until(() -> width().equals("790 mm"));
        assertThat(page.seen(COMPARE).getText()).contains("31.5 in", "790 mm");
        assertThat(page.faults()).isEmpty();
    }
}
