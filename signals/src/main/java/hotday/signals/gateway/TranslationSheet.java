package hotday.signals.gateway;

import hotday.core.finding.InputException;
import hotday.signals.expect.Expected;
import hotday.signals.expect.Watched;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** What was typed about the translation between networks, with the place of everything; its units are those typed. */
public final class TranslationSheet {
    private final String title;
    private final Gateway gateway;
    private final List<NetworkPlan> networks;
    private final List<Translation> translations;
    private final List<PathPlan> paths;
    private final List<Expected> expectations;

    TranslationSheet(
            String title,
            Gateway gateway,
            List<NetworkPlan> networks,
            List<Translation> translations,
            List<PathPlan> paths,
            List<Expected> expectations) {
        this.title = title;
        this.gateway = gateway;
        this.networks = List.copyOf(networks);
        this.translations = List.copyOf(translations);
        this.paths = List.copyOf(paths);
        this.expectations = List.copyOf(expectations);
    }

    TranslationSheet expecting(List<Expected> other) {
        return new TranslationSheet(title, gateway, networks, translations, paths, other);
    }

    /**
     * How the gateway works. Times in ns.
     *
     * @param poll from one look at what has come to the next; frames leave then, too
     * @param processing until what was seen is translated and offered to the other bus
     * @param stale periods of a source after which nothing of it may be sent any more
     */
    record Gateway(long poll, long processing, double stale) {}

    /** Reads a sheet and the DBC files it names; throws {@link InputException} with all faults of form. */
    public static TranslationSheet read(Path path) {
        return SheetReader.read(path);
    }

    /** What it is called. */
    public String title() {
        return title;
    }

    Gateway gateway() {
        return gateway;
    }

    /** What the sheet says must hold when it is run. */
    public List<Expected> expectations() {
        return expectations;
    }

    /** The same typed in a file of its own; throws {@link InputException} with all faults of form. */
    public List<Expected> expectations(Path file) {
        return SheetReader.expectations(this, file);
    }

    /** Names of the networks, in the order of the sheet. */
    public List<String> networkNames() {
        return networks.stream().map(NetworkPlan::name).toList();
    }

    /** Every signal of every network that can be taken from a classic frame. */
    public List<Watched> signals() {
        return Watching.all(networks);
    }

    /** In the order of the sheet. */
    List<NetworkPlan> networks() {
        return networks;
    }

    List<Translation> translations() {
        return translations;
    }

    List<PathPlan> paths() {
        return paths;
    }

    Optional<NetworkPlan> network(String name) {
        return networks.stream().filter(n -> n.name().equals(name)).findFirst();
    }
}
