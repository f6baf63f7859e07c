package hotday.app.web;

import io.javalin.http.Context;
import io.javalin.http.TooManyRequestsResponse;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import tools.jackson.databind.node.ObjectNode;

/**
 * Tells every page that listens what has changed. Of several news about one thing a listener gets at most ten a second, and always the last:
 * one that reads slowly holds up nobody and costs no memory. Shared between threads.
 */
final class Broadcast implements AutoCloseable {
    private static final int MOST = 32; // listeners
    private static final long PAUSE_MS = 100;
    private static final long QUIET_MS = 15_000; // then a word, so that nobody in between closes the line

    private final Set<Listener> listeners = ConcurrentHashMap.newKeySet();
    private volatile boolean closed;

    private record News(String event, String data) {}

    /** One page; its request stays open and its thread with it. */
    private final class Listener {
        private final Map<String, News> pending = new LinkedHashMap<>();

        synchronized void tell(String about, News news) {
            pending.put(about, news);
            notifyAll();
        }

        /** What is new; nothing after a quiet while. */
        synchronized List<News> taken() throws InterruptedException {
            long until = System.currentTimeMillis() + QUIET_MS;
            long left = QUIET_MS;
            while (pending.isEmpty() && left > 0 && !closed) {
                wait(left);
                left = until - System.currentTimeMillis();
            }
            List<News> all = new ArrayList<>(pending.values());
            pending.clear();
            return all;
        }

        synchronized void wake() {
            notifyAll();
        }
    }

    /** Serves one page until it is closed. */
    void listen(Context ctx) {
        Listener listener = new Listener();
        if (listeners.size() >= MOST) {
            throw new TooManyRequestsResponse("too many pages are open; close some");
        }
        listeners.add(listener);
        try {
            ctx.res().setContentType("text/event-stream;charset=utf-8");
            OutputStream out = ctx.res().getOutputStream();
            send(out, ": listening\n\n");
            while (!closed) {
                send(out, words(listener.taken()));
                Thread.sleep(PAUSE_MS);
            }
        } catch (IOException e) {
            // the page is gone
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            listeners.remove(listener);
        }
    }

    private static void send(OutputStream out, String words) throws IOException {
        out.write(words.getBytes(StandardCharsets.UTF_8));
        out.flush();
    }

    private static String words(List<News> all) {
        if (all.isEmpty()) {
            return ": nothing new\n\n";
        }
        return all.stream()
                .map(n -> "event: " + n.event() + "\ndata: " + n.data() + "\n\n")
                .collect(Collectors.joining());
    }

    /** @param about what the news are about: later ones take the place of earlier ones that were not sent yet */
    void tell(String event, String about, ObjectNode data) {
        News news = new News(event, Reply.text(data));
        listeners.forEach(l -> l.tell(event + " " + about, news));
    }

    @Override
    public void close() {
        closed = true;
        listeners.forEach(Listener::wake);
    }
}
