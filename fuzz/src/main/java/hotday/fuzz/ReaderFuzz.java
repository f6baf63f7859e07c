package hotday.fuzz;

import java.util.function.Consumer;

/** What the fuzzing engine calls: one reader, named by its argument, with one input after the other. */
public final class ReaderFuzz {
    private static Consumer<byte[]> reader;

    private ReaderFuzz() {}

    /**
     * Called once.
     *
     * @param args name of the reader
     */
    public static void fuzzerInitialize(String[] args) {
        reader = Readers.reader(args[0]);
    }

    /** Called with every input that is made up. */
    public static void fuzzerTestOneInput(byte[] input) {
        reader.accept(input);
    }
}
