package hotday.validation.signals;

import static org.assertj.core.api.Assertions.assertThat;

import hotday.signals.channel.ChannelGuess;
import hotday.signals.channel.ChannelMap;
import hotday.signals.channel.MapDraft;
import hotday.signals.channel.ModelChannel;
import hotday.validation.SharedData;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Channels guessed from the headers of the open recordings against the maps that were made for them by hand. */
class ChannelGuessTest {
    /** Figures of docs/channel-map.md: channels of the map by hand found in the right column, in a wrong one, not at all. */
    @ParameterizedTest
    @CsvSource({
        "d3-diesel-sedan, 8, 0, 0",
        "kit-road-trips, 9, 0, 0",
        "carobd-idle-and-trips, 10, 0, 0",
        "altitude-drives, 8, 0, 1"
    })
    void columnsAreFoundByTheirNames(String set, int right, int wrong, int missed) throws IOException {
        ChannelMap map = ChannelMap.read(
                Path.of(System.getProperty("hotday.root", "..")).resolve("validation/sets/" + set + "/channels.yaml"));
        List<String> misses = new ArrayList<>();
        for (Path file : recordings(set)) {
            MapDraft guessed = ChannelGuess.of(ChannelMap.headUnmapped(file));
            MapDraft byHand = map.draft(file);
            assertThat(guessed.time().position())
                    .as("%s time", file.getFileName())
                    .isEqualTo(byHand.time().position());
            Map<ModelChannel, Integer> found = columns(guessed);
            Map<ModelChannel, Integer> meant = columns(byHand);
            misses.clear();
            found.forEach((channel, column) -> {
                if (!column.equals(meant.get(channel))) {
                    misses.add(channel + " taken for column " + column);
                }
            });
            long same = meant.entrySet().stream()
                    .filter(e -> e.getValue().equals(found.get(e.getKey())))
                    .count();
            long none =
                    meant.keySet().stream().filter(c -> !found.containsKey(c)).count();
            assertThat(new long[] {same, misses.size(), none})
                    .as("%s: %s, found %s", file.getFileName(), misses, found)
                    .containsExactly(right, wrong, missed);
        }
    }

    private static List<Path> recordings(String set) throws IOException {
        try (Stream<Path> files = Files.list(SharedData.file("data/" + set))) {
            List<Path> all =
                    files.filter(f -> !f.toString().endsWith(".md")).sorted().toList();
            assertThat(all).isNotEmpty();
            return all;
        }
    }

    private static Map<ModelChannel, Integer> columns(MapDraft draft) {
        Function<MapDraft.Line, Integer> position = MapDraft.Line::position;
        return draft.channels().stream().collect(Collectors.toMap(MapDraft.Line::channel, position));
    }
}
