package hotday.study.design;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * A few long pieces of work of unlike length, one thread a processor, each taking the next that nobody has: none idles while another still has
 * several before it.
 */
final class SideBySide {
    private SideBySide() {}

    /** Results in the order of the pieces; the first failure passes through. */
    static <A, B> List<B> map(List<A> pieces, Function<A, B> work) {
        List<B> results = new ArrayList<>(Collections.nCopies(pieces.size(), null));
        AtomicInteger next = new AtomicInteger();
        IntStream.range(0, Runtime.getRuntime().availableProcessors())
                .parallel()
                .forEach(thread -> {
                    for (int i = next.getAndIncrement(); i < pieces.size(); i = next.getAndIncrement()) {
                        results.set(i, work.apply(pieces.get(i)));
                    }
                });
        return List.copyOf(results);
    }
}
