package hotday.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.study.demo.DemoShop;
import hotday.study.demo.VirtualCar;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chromium.ChromiumDriver;
import org.openqa.selenium.interactions.Actions;

/** From a sheet to a signed document over the page, in a real browser. */
@Tag("slow")
class ProofWalkTest {
    private static final Duration A_FIT = Duration.ofSeconds(150);
    private static final By COOLER = By.cssSelector("[data-part='gearbox-cooler']");
    private static final By CEILINGS = By.cssSelector("section.ceilings");
    private static final By FIT = By.cssSelector("section.fit");
    private static final By PROGRESS = By.cssSelector(".job progress");
    private static final By RESULT = By.cssSelector("section.result");

    /** Headers of another logger than the shop's, in the order of the demo's columns, and what they are. */
    private static final String HEADERS =
            "stamp [s],VSS [km/h],RPM [rpm],burnt [g/s],OAT [degC],BARO [kPa],ECT [degC],oil [degC],blower [%],clutch [%]";

    private static final Map<String, String> CHANNELS = Map.of(
            "VSS [km/h]", "vehicle_speed",
            "RPM [rpm]", "engine_speed",
            "burnt [g/s]", "fuel_flow",
            "OAT [degC]", "ambient_temperature",
            "BARO [kPa]", "barometer",
            "ECT [degC]", "coolant_temperature",
            "oil [degC]", "oil_temperature",
            "blower [%]", "fan_speed",
            "clutch [%]", "compressor");

    @TempDir
    private Path folder;

    @TempDir
    private Path logger;

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

    @Test
    void fromADraggedCoolerToASignedDocument() throws IOException {
        page.go("#/build/heron");
        String before = page.seen(CEILINGS).getText();
        new Actions(page.browser())
                .moveToElement(page.seen(COOLER))
                .clickAndHold()
                .moveByOffset(0, -60)
                .moveByOffset(0, -60)
                .release()
                .perform();
        page.until(() -> !page.browser().findElement(CEILINGS).getText().equals(before));
        page.pressable(OpenPage.button("Save")).click();
        page.until(() -> read(folder.resolve("builds/heron/build.yaml")).contains("bottom: "));

        page.pressable(By.linkText("Proof")).click();
        page.seen(By.cssSelector("section.recordings"));
        page.browser()
                .findElement(By.cssSelector(".drop input"))
                .sendKeys(foreignRecording("heron-mild.csv").toString());
        page.seen(By.cssSelector(".columns"));
        mapColumns();
        page.pressable(OpenPage.button("Save map")).click();
        page.until(() -> Files.isRegularFile(folder.resolve("runs/heron-mild.channels.yaml")));
        page.until(() -> text(By.cssSelector(".runs")).contains("a map of its own"));

        page.pressable(OpenPage.button("Fit and prove")).click();
        page.seen(PROGRESS);
        page.seen(RESULT, A_FIT);
        assertThat(text(RESULT)).contains("Hot idle in gear, A/C on", "90 of 100: ", "From the sheet alone: ");
        assertThat(text(By.cssSelector("section.parameters"))).contains("This run told about");
        page.until(() ->
                !page.browser().findElements(By.cssSelector(".plot canvas")).isEmpty());
        assertThat(downloaded()).isEqualTo("%PDF-");

        page.pressable(By.xpath("//button[starts-with(normalize-space(), 'Sign off')]"))
                .click();
        page.until(() -> page.browser().switchTo().activeElement().getText().equals("Not yet"));
        page.browser().switchTo().activeElement().sendKeys(Keys.ESCAPE);
        page.until(() -> page.browser().switchTo().activeElement().getText().startsWith("Sign off"));
        page.browser().switchTo().activeElement().sendKeys(Keys.ENTER);
        page.pressable(OpenPage.button("Yes, sign off")).click();
        page.until(() -> text(By.cssSelector("section.signoff")).contains("Signed off."));
        assertThat(folder.resolve("builds/heron/signoff.pdf")).isRegularFile();

        String said = text(RESULT);
        page.browser().navigate().refresh();
        page.seen(RESULT);
        assertThat(text(RESULT)).as("the same after a reload").isEqualTo(said);
        assertThat(page.faults()).isEmpty();
    }

    @Test
    void aFitIsSeenAndTakenBackFromAnyTablet() {
        DemoShop.create(folder).drive("heron", 7);
        page.go("#/build/heron/proof");
        String first = page.browser().getWindowHandle();
        page.pressable(OpenPage.button("Fit and prove")).click();
        page.seen(PROGRESS);
        page.browser().switchTo().newWindow(WindowType.TAB);
        page.go("#/build/heron/proof");
        page.seen(PROGRESS);
        page.pressable(OpenPage.button("Cancel")).click();
        page.until(() -> text(FIT).contains("Cancelled; nothing was written."));
        page.browser().switchTo().window(first);
        page.until(() -> text(FIT).contains("Cancelled; nothing was written."));
        assertThat(folder.resolve("builds/heron/proof.json")).doesNotExist();
    }

    private String text(By what) {
        return page.browser().findElement(what).getText();
    }

    /** The demo's mild day as another logger would have written it. */
    private Path foreignRecording(String name) throws IOException {
        VirtualCar car = DemoShop.create(logger).drive("heron", 7);
        List<String> lines = Files.readAllLines(car.commissioning());
        Path file = logger.resolve(name);
        Files.write(
                file, Stream.concat(Stream.of(HEADERS), lines.stream().skip(1)).toList());
        return file;
    }

    private void mapColumns() {
        CHANNELS.forEach((header, channel) -> {
            By column = By.cssSelector(".columns select[aria-label*='" + header + "'][aria-label$='is taken for']");
            page.browser().findElement(column).findElements(By.tagName("option")).stream()
                    .filter(option -> channel.equals(option.getDomProperty("value")))
                    .findFirst()
                    .orElseThrow()
                    .click();
        });
    }

    /** First bytes of the document as the browser saved it. */
    private String downloaded() throws IOException {
        ((ChromiumDriver) page.browser())
                .executeCdpCommand(
                        "Browser.setDownloadBehavior", Map.of("behavior", "allow", "downloadPath", logger.toString()));
        Path file = logger.resolve("heron-signoff.pdf");
        page.pressable(By.linkText("Download the PDF")).click();
        page.until(() -> Files.isRegularFile(file));
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readNBytes(5), StandardCharsets.US_ASCII);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
