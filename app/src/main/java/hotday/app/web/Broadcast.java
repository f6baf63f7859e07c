package hotday.app.web;

import io.javalin.http.sse.SseClient;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
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

    /** One page. Its thread ends with its line. */
    private final class Listener implements Runnable {
        private final SseClient client;
        private final Map<String, News> pending = new LinkedHashMap<>();

        Listener(SseClient client) {
            this.client = client;
        }

        synchronized void tell(String about, News news) {
            pending.put(about, news);
            notifyAll();
        }

        private synchronized List<News> taken() throws InterruptedException {
            long until = System.currentTimeMillis() + QUIET_MS;
            for (long left = QUIET_MS; pending.isEmpty() && left > 0 && !closed; left = left(until)) {
                wait(left);
            }
            List<News> all = new ArrayList<>(pending.values());
            pending.clear();
            return all;
        }

        private static long left(long until) {
            return until - System.currentTimeMillis();
        }

        synchronized void wake() {
            notifyAll();
        }

        @Override
        public void run() {
            try {
                while (!closed && !client.terminated()) {
                    send(taken());
                    Thread.sleep(PAUSE_MS);
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            } finally {
                listeners.remove(this);
                client.close();
            }
        }

        private void send(List<News> all) {
            if (all.isEmpty()) {
                client.sendComment("nothing new");
            }
            all.forEach(n -> client.sendEvent(n.event(), n.data()));
        }
    }

    boolean full() {
        return listeners.size() >= MOST;
    }

    void listen(SseClient client) {
        client.keepAlive();
        client.sendComment("listening");
        Listener listener = new Listener(client);
        listeners.add(listener);
        Thread thread = new Thread(listener, "page-listener");
        thread.setDaemon(true);
        thread.start();
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
