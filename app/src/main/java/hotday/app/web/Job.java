package hotday.app.web;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import tools.jackson.databind.node.ObjectNode;

/** Long work that somebody asked for: how far it is, and what came of it. Shared between threads. */
final class Job implements Runnable {
    /** Where it stands. */
    enum State {
        WAITING,
        RUNNING,
        DONE,
        FAILED,
        CANCELLED
    }

    /** What is to be done; its result as JSON. Wrong input is an {@link InputException}. */
    @FunctionalInterface
    interface Work {
        ObjectNode result(Job job);
    }

    private final String id;
    private final String kind;
    private final Optional<String> build;
    private final Consumer<Job> changed;
    private final Work work;

    private volatile boolean cancelled;
    private State state = State.WAITING;
    private String what = "";
    private double share;
    private long began;
    private long ended;
    private List<Finding> findings = List.of();
    private Optional<String> message = Optional.empty();
    private Optional<ObjectNode> result = Optional.empty();

    Job(String id, String kind, Optional<String> build, Work work, Consumer<Job> changed) {
        this.id = id;
        this.kind = kind;
        this.build = build;
        this.work = work;
        this.changed = changed;
    }

    String id() {
        return id;
    }

    /** Told by the work; ends it when nobody wants it any more. */
    void at(String stage, double part) {
        endWhenCancelled();
        synchronized (this) {
            what = stage;
            share = Math.max(share, Math.min(1.0, part));
        }
        changed.accept(this);
    }

    /** Asked by the work now and then. */
    boolean cancelled() {
        return cancelled;
    }

    void endWhenCancelled() {
        if (cancelled) {
            throw new CancellationException();
        }
    }

    /** Asks the work to stop; what is done already stays done. */
    void cancel() {
        cancelled = true;
        synchronized (this) {
            if (state == State.WAITING) {
                state = State.CANCELLED;
            }
        }
        changed.accept(this);
    }

    synchronized boolean over() {
        return state != State.WAITING && state != State.RUNNING;
    }

    /** The build that has a new proof by this. */
    synchronized Optional<String> proven() {
        return build.filter(b -> state == State.DONE && kind.equals(ProofRoutes.KIND));
    }

    synchronized Optional<ObjectNode> result() {
        return result;
    }

    @Override
    public void run() {
        synchronized (this) {
            if (state != State.WAITING) {
                return;
            }
            state = State.RUNNING;
            began = System.nanoTime();
        }
        changed.accept(this);
        try {
            ObjectNode done = work.result(this);
            end(State.DONE, List.of(), Optional.empty(), Optional.of(done));
        } catch (CancellationException e) {
            end(State.CANCELLED, List.of(), Optional.empty(), Optional.empty());
        } catch (InputException e) {
            Optional<String> notWritten = Reply.notWritten(e);
            end(State.FAILED, notWritten.isPresent() ? List.of() : e.findings(), notWritten, Optional.empty());
        } catch (RuntimeException | OutOfMemoryError | StackOverflowError e) {
            String words = e instanceof OutOfMemoryError
                    ? "there is not enough memory for this; nothing was written"
                    : "a fault of our own; nothing of yours is wrong and nothing was written";
            end(State.FAILED, List.of(), Optional.of(words), Optional.empty());
        }
    }

    private void end(State how, List<Finding> found, Optional<String> words, Optional<ObjectNode> of) {
        synchronized (this) {
            state = how;
            findings = found;
            message = words;
            result = of;
            ended = System.nanoTime();
            share = how == State.DONE ? 1.0 : share;
        }
        changed.accept(this);
    }

    synchronized ObjectNode json() {
        ObjectNode node = Reply.object();
        node.put("id", id);
        node.put("kind", kind);
        node.put("build", build.orElse(null));
        node.put("state", state.name().toLowerCase(Locale.ROOT));
        node.put("what", cancelled && state == State.RUNNING ? "stopping" : what);
        node.put("share", 1e-3 * Math.round(1e3 * share));
        long until = over() ? ended : System.nanoTime();
        node.put("running_s", began == 0 ? 0.0 : 0.1 * Math.round(1e-8 * (until - began)));
        Reply.all(node.putArray("findings"), findings);
        node.put("message", message.orElse(null));
        return node;
    }
}
