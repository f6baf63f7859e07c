package hotday.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.study.demo.DemoShop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;

/** Every view for people who see, hear or move differently, as far as a program can tell: by the axe rules, in light and dark. */
@Tag("slow")
class PageAccessTest {
    private static final Path RULES =
            Path.of(System.getProperty("hotday.root", "..")).resolve("ui/node_modules/axe-core/axe.min.js");

    private static final String CHECK = """
            const done = arguments[arguments.length - 1];
            axe.run(document).then((result) => done([
              result.passes.length,
              result.violations
                .filter((v) => v.impact === 'serious' || v.impact === 'critical')
                .map((v) => v.id + ': ' + v.help + ' at ' + v.nodes.map((n) => n.target).join(', ')),
            ]));
            """;

    /** Nothing to press is smaller than 48 px; a tick counts with its words. */
    private static final String SMALL = """
            return [...document.querySelectorAll('button, a, select, input:not(.unseen), summary')]
              .filter((e) => e.offsetParent !== null)
              .map((e) => [e, (e.type === 'checkbox' ? e.closest('label') : e).getBoundingClientRect()])
              .filter(([e, box]) => box.height > 0 && (box.height < 47.5 || box.width < 47.5) && !e.matches('.skip'))
              .map(([e, box]) => e.outerHTML.slice(0, 80) + ' ' + box.width + ' x ' + box.height);
            """;

    @TempDir
    private Path folder;

    @Test
    void noViewShutsAnybodyOut() throws IOException {
        if (!Files.isRegularFile(RULES)) {
            System.out.println("skipped: access rules (the page's development packages are not there)");
            Assumptions.abort("no axe-core");
        }
        String rules = Files.readString(RULES);
        DemoShop.create(folder).drive("heron", 7);
        try (OpenPage page = OpenPage.of(folder)) {
            page.go("#/build/heron/proof");
            page.pressable(OpenPage.button("Fit and prove")).click();
            page.seen(By.cssSelector("section.result"), Duration.ofSeconds(150));
            for (String light : List.of("light", "dark")) {
                page.script("localStorage.setItem('hotday.theme', arguments[0])", light);
                look(page, rules, "#/", By.cssSelector(".tag"));
                look(page, rules, "#/build/heron", By.cssSelector("section.ceilings h3"));
                look(page, rules, "#/build/heron/prediction", By.cssSelector("main h1"));
                look(page, rules, "#/build/heron/schedule", By.cssSelector(".rooms tbody td"));
                look(page, rules, "#/build/heron/proof", By.cssSelector("section.result"));
            }
        }
    }

    private static void look(OpenPage page, String rules, String view, By shown) {
        page.go(view);
        page.browser().navigate().refresh();
        page.seen(shown);
        page.script("document.querySelectorAll('details').forEach((d) => { d.open = true; });"
                + "document.querySelector('.runs button')?.click();");
        page.script(rules + "; window.axe = axe;");
        List<?> result = (List<?>) page.later(CHECK);
        assertThat(((Number) result.get(0)).intValue())
                .as("rules that could be looked at")
                .isGreaterThan(10);
        assertThat((List<?>) result.get(1)).as(view).isEmpty();
        assertThat((List<?>) page.script(SMALL)).as(view).isEmpty();
    }
}
