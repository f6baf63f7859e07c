package hotday.app.cli;

import picocli.CommandLine.Option;

/** What every study of many draws can be told. */
final class StudyOptions {
    @Option(names = "--seed", defaultValue = "1", description = "of everything random (default ${DEFAULT-VALUE})")
    private long seed;

    @Option(
            names = "--threads",
            defaultValue = "0",
            description = "0: as many as the machine has; the answer does not depend on it")
    private int threads;

    @Option(names = "--json", description = "for machines; the contract is docs/formats.md")
    private boolean json;

    long seed() {
        return seed;
    }

    /** To use, 1 or more. */
    int threads() {
        return threads > 0 ? threads : Math.max(1, Runtime.getRuntime().availableProcessors());
    }

    boolean json() {
        return json;
    }
}
