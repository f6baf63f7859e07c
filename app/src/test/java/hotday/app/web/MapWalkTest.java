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

/** Somebody says what the columns of a recording are, in a real browser. */
class MapWalkTest {
    private static final By REMARKS = By.cssSelector(".mapping .notice.bad");

    @TempDir
    private Path folder;

    private OpenPage page;

    @BeforeEach
    void open() throws IOException {
        DemoShop.create(folder);
        Files.writeString(
                Files.createDirectories(folder.resolve("runs")).resolve("a.csv"),
                "Time [s],ECT [degF],RPM\n0,181.0,700\n1,181.4,720\n2,182.0,900\n");
        page = OpenPage.of(folder);
        page.go("#/build/heron/proof");
        page.pressable(By.cssSelector(".runs button")).click();
    }

    @AfterEach
    void close() {
        if (page != null) {
            page.close();
        }
    }

    @Test
    void aFaultNamesTheControlAndLeadsToIt() {
        assertThat(page.seen(REMARKS).getText())
                .contains("column 'RPM' for engine speed has no unit: choose one under 'in'")
                .doesNotContain("engine_speed", "'unit:");
        page.pressable(By.cssSelector(".mapping .notice.bad button")).click();
        assertThat(page.browser().switchTo().activeElement().getDomAttribute("aria-label"))
                .isEqualTo("Unit of column 3, RPM");
        page.browser().switchTo().activeElement().sendKeys("rpm");
        page.until(() -> page.browser().findElements(REMARKS).isEmpty());
    }
}
