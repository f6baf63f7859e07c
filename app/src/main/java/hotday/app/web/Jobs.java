package hotday.app.web;

import io.javalin.http.TooManyRequestsResponse;
import java.security.SecureRandom;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/** Long work, one after the other, in the order it was asked for. Lives in memory. Shared between threads. */
final class Jobs implements AutoCloseable {
    private static final int MOST_WAITING = 20;
    private static final int KEPT = 50;
    private static final long LAST_BREATH_S = 5;

    private final Broadcast broadcast;
    private final SecureRandom random = new SecureRandom();
    private final Deque<Job> newestFirst = new ArrayDeque<>();
    private final ThreadPoolExecutor worker;

    Jobs(Broadcast broadcast) {
        this.broadcast = broadcast;
        this.worker = new ThreadPoolExecutor(
                1, 1, 0, TimeUnit.SECONDS, new LinkedBlockingQueue<>(MOST_WAITING), Jobs::thread);
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "page-job");
        thread.setDaemon(true);
        return thread;
    }

    /** Takes work on; refused while too much waits. */
    synchronized Job add(String kind, Optional<String> build, Job.Work work) {
        byte[] name = new byte[6]; // not counted, so that it means nothing else after the next start
        random.nextBytes(name);
        Job job = new Job(HexFormat.of().formatHex(name), kind, build, work, this::changed);
        try {
            worker.execute(job);
        } catch (RejectedExecutionException e) {
            throw new TooManyRequestsResponse("too much is waiting already; let some of it end or take it back");
        }
        newestFirst.addFirst(job);
        while (newestFirst.size() > KEPT) {
            newestFirst.removeLast();
        }
        return job;
    }

    private void changed(Job job) {
        broadcast.tell("job", job.id(), job.json());
        job.proven()
                .ifPresent(
                        build -> broadcast.tell("proof", build, Reply.object().put("build", build)));
    }

    synchronized List<Job> all() {
        return new ArrayList<>(newestFirst);
    }

    synchronized Optional<Job> find(String id) {
        return newestFirst.stream().filter(j -> j.id().equals(id)).findFirst();
    }

    void cancel(Job job) {
        job.cancel();
        worker.remove(job);
    }

    @Override
    public void close() {
        all().forEach(this::cancel);
        worker.shutdown();
        try {
            worker.awaitTermination(LAST_BREATH_S, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
