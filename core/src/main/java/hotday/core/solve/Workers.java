package hotday.core.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Threads that do pieces of work and are waited for; a single worker is the calling thread. */
final class Workers implements AutoCloseable {
    /** The caller asked to stop, or interrupted the thread that waits. */
    static final class Stopped extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Stopped() {
            super("stopped", null, false, false);
        }
    }

    private final Optional<ExecutorService> threads;

    Workers(int count) {
        threads = count == 1 ? Optional.empty() : Optional.of(Executors.newFixedThreadPool(count, Workers::daemon));
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "solve");
        thread.setDaemon(true);
        return thread;
    }

    /** Does every piece and waits for all; the first failure in the order of the pieces passes through. */
    void all(List<Runnable> pieces) {
        if (threads.isEmpty()) {
            pieces.forEach(Runnable::run);
            return;
        }
        List<Future<?>> running = new ArrayList<>();
        pieces.forEach(p -> running.add(threads.get().submit(p)));
        running.forEach(Workers::await);
    }

    private static void await(Future<?> work) {
        try {
            work.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Stopped();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException("a model run failed", e.getCause());
        }
    }

    @Override
    public void close() {
        threads.ifPresent(ExecutorService::shutdownNow);
    }
}
