package hotday.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Inputs that were kept: starting points, and those that a reader once got wrong. */
class SeedsTest {
    private static final Path SEEDS = Path.of(System.getProperty("hotday.root"), "fuzz", "seeds");

    static List<String> readers() {
        return Readers.names();
    }

    @ParameterizedTest
    @MethodSource("readers")
    void everySeedIsReadOrRefused(String name) throws IOException {
        Consumer<byte[]> reader = Readers.reader(name);
        List<Path> seeds;
        try (Stream<Path> files = Files.list(SEEDS.resolve(name))) {
            seeds = files.sorted().toList();
        }
        assertThat(seeds).hasSizeGreaterThan(2);
        for (Path seed : seeds) {
            byte[] bytes = Files.readAllBytes(seed);
            assertThatCode(() ->
                            Assertions.assertTimeoutPreemptively(Duration.ofSeconds(20), () -> reader.accept(bytes)))
                    .as("%s", seed)
                    .doesNotThrowAnyException();
        }
    }
}
