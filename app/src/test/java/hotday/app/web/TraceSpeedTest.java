package hotday.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.study.demo.DemoShop;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;

/** A million samples of one channel: drawn at once and moved without stutter, in a browser that paints without a graphics card. */
@Tag("slow")
class TraceSpeedTest {
    private static final int ROWS = 1_000_000;
    private static final double FIRST_DRAW_MS = 500;
    private static final double FRAMES_PER_S = 30;

    /**
     * From the samples at hand to the frame after their plot was painted, and the same from the last byte on the line, which a busy machine hands
     * on late; then two seconds of one press of an arrow key a frame, each of which
     * moves the plot, and the frames counted.
     */
    private static final String MEASURE = """
            const done = arguments[arguments.length - 1];
            const plot = () => document.querySelector('.plot[data-samples="1000000"][aria-label^="oil"]');
            const press = (key) => plot().dispatchEvent(new KeyboardEvent('keydown', {key, bubbles: true}));
            const handed = Response.prototype.arrayBuffer;
            let have = 0;
            Response.prototype.arrayBuffer = async function () {
              const bytes = await handed.call(this);
              have = performance.now();
              return bytes;
            };
            const pan = (first, fromLine) => {
              ['+', '+', '+'].forEach(press);
              const begun = performance.now();
              let frames = 0;
              const frame = () => {
                const t = performance.now() - begun;
                if (t > 2000) {
                  done({first, fromLine, frames: 1000 * frames / t});
                  return;
                }
                press(frames++ % 40 < 20 ? 'ArrowRight' : 'ArrowLeft');
                requestAnimationFrame(frame);
              };
              requestAnimationFrame(frame);
            };
            const watch = new MutationObserver(() => {
              if (plot()) {
                watch.disconnect();
                requestAnimationFrame(() => setTimeout(() => {
                  const came = performance.getEntriesByType('resource').filter((e) => e.name.includes('/trace/')).at(-1).responseEnd;
                  pan(performance.now() - have, performance.now() - came);
                }));
              }
            });
            watch.observe(document.body, {subtree: true, childList: true, attributes: true});
            [...document.querySelectorAll('.channels label')].find((l) => l.textContent.includes('oil')).click();
            """;

    @TempDir
    private Path folder;

    @Test
    void aMillionSamplesAreDrawnAtOnceAndMoveWithTheHand() throws IOException {
        DemoShop.create(folder);
        writeLong();
        try (OpenPage page = OpenPage.of(folder)) {
            page.go("#/build/heron/proof");
            page.seen(By.cssSelector(".channels label"), Duration.ofSeconds(60));
            Map<?, ?> measured = (Map<?, ?>) page.later(MEASURE);
            double first = ((Number) measured.get("first")).doubleValue();
            double fromLine = ((Number) measured.get("fromLine")).doubleValue();
            double frames = ((Number) measured.get("frames")).doubleValue();
            System.out.printf(
                    Locale.ROOT,
                    "a million samples: drawn after %.0f ms (%.0f ms after the last byte), %.0f frames/s while moved%n",
                    first,
                    fromLine,
                    frames);
            assertThat(first).isLessThan(FIRST_DRAW_MS);
            assertThat(frames).isGreaterThan(FRAMES_PER_S);
            assertThat(page.faults()).isEmpty();
        }
    }

    private void writeLong() throws IOException {
        Path runs = Files.createDirectories(folder.resolve("runs"));
        try (PrintWriter out = new PrintWriter(runs.resolve("long.csv").toFile(), StandardCharsets.UTF_8)) {
            out.println("time [s],coolant [degC],oil [degC]");
            for (int i = 0; i < ROWS; i++) {
                double oil = 80 + 15 * Math.sin(1e-4 * i) + i * 7919 % 13 * 0.3;
                out.printf(Locale.ROOT, "%.2f,%d,%.1f%n", 0.05 * i, 60 + i / 50_000, oil);
            }
        }
        Files.writeString(runs.resolve("long.channels.yaml"), """
                time: {column: "time [s]"}
                channels:
                  coolant_temperature: {column: "coolant [degC]"}
                  oil_temperature: {column: "oil [degC]"}
                """);
    }
}
