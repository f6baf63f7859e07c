package hotday.app.web;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/** The machine's own Chromium without a window; a test that needs it is skipped with a visible line where there is none. */
final class Browser {
    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome");

    private Browser() {}

    static WebDriver open() {
        Optional<Path> chromium =
                NAMES.stream().flatMap(n -> onPath(n).stream()).findFirst();
        Optional<Path> driver = onPath("chromedriver");
        boolean page = PageServer.class.getResource("/hotday/page/index.html") != null;
        if (chromium.isEmpty() || driver.isEmpty() || !page) {
            System.out.println(
                    "skipped: browser tests (" + (page ? "no Chromium or no driver" : "the page was not built") + ")");
            Assumptions.abort("no browser or no page");
        }
        ChromeOptions options = new ChromeOptions();
        options.setBinary(chromium.orElseThrow().toFile());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--window-size=1440,1400");
        File executable = driver.orElseThrow().toFile();
        return new ChromeDriver(
                new ChromeDriverService.Builder()
                        .usingDriverExecutable(executable)
                        .build(),
                options);
    }

    private static Optional<Path> onPath(String name) {
        return List.of(System.getenv("PATH").split(File.pathSeparator)).stream()
                .map(folder -> Path.of(folder, name))
                .filter(Files::isExecutable)
                .findFirst();
    }
}
