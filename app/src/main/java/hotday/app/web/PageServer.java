package hotday.app.web;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.study.shop.Bench;
import hotday.study.shop.Shop;
import hotday.study.workspace.AtomicFile;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.ContentTooLargeResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.TooManyRequestsResponse;
import io.javalin.http.staticfiles.Location;
import io.javalin.util.JavalinBindException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.core.JacksonException;

/**
 * Serves one shop to browsers: on this machine alone, or on paired devices of the workshop too. Refuses what another site's page sends ({@link
 * Doorman}).
 */
public final class PageServer implements AutoCloseable {
    private static final long FIRST_VIEW_MILLIS = 6_000;
    /** Answers, and the pause after each, in which the machine is left to whoever asks. */
    private static final int PRACTICE = 150;

    private static final long BREATH_MILLIS = 40;
    private static final String PAGE = "/hotday/page";
    private static final long LARGEST = 1_000_000; // bytes of a request

    private final Javalin server;
    private final Jobs jobs;
    private final Broadcast broadcast;
    private final Reach reach;
    private final Optional<Pairing> pairing;

    private PageServer(Javalin server, Jobs jobs, Broadcast broadcast, Reach reach, Optional<Pairing> pairing) {
        this.server = server;
        this.jobs = jobs;
        this.broadcast = broadcast;
        this.reach = reach;
        this.pairing = pairing;
    }

    /**
     * Starts it; throws {@link InputException} when the port is taken or this build has no page.
     *
     * @param port 0 for any free one
     */
    public static PageServer start(Shop shop, int port, Reach reach) {
        if (PageServer.class.getResource(PAGE + "/index.html") == null) {
            throw InputException.at(
                    Place.of("serve"),
                    "no-page",
                    "this build has no page, because node 20 or newer was not there when it was made; install it and run 'hotday build'");
        }
        PageServer server = started(shop, port, reach, true);
        Thread ahead = new Thread(() -> workAhead(shop), "page-ahead");
        ahead.setDaemon(true);
        ahead.start();
        return server;
    }

    /**
     * What the first view asks is worked out while the browser opens; faults are told to whoever asks. After that answers are practised for some
     * seconds, so that the machine is warm before somebody drags a part: the first hundred answers of a cold one take twice as long.
     */
    private static void workAhead(Shop shop) {
        try {
            List<Bench> sound = shop.builds().stream()
                    .flatMap(id -> shop.find(id).stream())
                    .filter(bench -> bench.open().answer().isPresent())
                    .toList();
            shop.builds().forEach(id -> {
                shop.progress(id);
                shop.proofs().least(id);
            });
            Thread.sleep(FIRST_VIEW_MILLIS);
            for (int i = 0; i < PRACTICE && !sound.isEmpty(); i++) {
                sound.get(i % sound.size()).tried(Map.of());
                Thread.sleep(BREATH_MILLIS);
            }
        } catch (InputException told) {
            return;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** The same, with or without the page itself. */
    static PageServer started(Shop shop, int port, Reach reach, boolean page) {
        KeptJudgings judgings = new KeptJudgings();
        return started(shop, port, reach, page, judgings, JobKind.all(shop, judgings));
    }

    /** The same with other kinds of work. */
    static PageServer started(Shop shop, int port, Reach reach, boolean page, Map<String, JobKind> kinds) {
        return started(shop, port, reach, page, new KeptJudgings(), kinds);
    }

    private static PageServer started(
            Shop shop, int port, Reach reach, boolean page, KeptJudgings judgings, Map<String, JobKind> kinds) {
        Broadcast broadcast = new Broadcast();
        Jobs jobs = new Jobs(broadcast);
        Optional<Pairing> pairing =
                reach == Reach.WORKSHOP ? Optional.of(new Pairing(System::nanoTime)) : Optional.empty();
        Doorman doorman = new Doorman(reach.names(), pairing);
        Javalin server = Javalin.create(config -> {
            configure(config, page);
            config.routes.before(doorman::check);
            pairing.ifPresent(p -> config.routes.post(Doorman.PAIR, ctx -> pair(ctx, p)));
            new ShopRoutes(shop, broadcast).register(config.routes);
            new RunRoutes(shop.runs(), broadcast).register(config.routes);
            new ProofRoutes(shop).register(config.routes);
            new ScheduleRoutes(shop, judgings).register(config.routes);
            new JobRoutes(shop, jobs, broadcast, kinds).register(config.routes);
        });
        try {
            return new PageServer(server.start(reach.bound(), port), jobs, broadcast, reach, pairing);
        } catch (JavalinBindException e) {
            throw InputException.at(
                    Place.of("--port"),
                    "port-taken",
                    "port " + port + " is taken by another program; give another one");
        }
    }

    private static void configure(JavalinConfig config, boolean page) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.maxRequestSize = LARGEST;
        config.http.prefer405over404 = true;
        if (page) {
            config.staticFiles.add(files -> {
                files.hostedPath = "/";
                files.directory = PAGE;
                files.location = Location.CLASSPATH;
                files.precompressMaxSize = (int) LARGEST;
            });
        }
        config.routes.exception(InputException.class, PageServer::wrongInput);
        config.routes.exception(
                JacksonException.class,
                (e, ctx) -> Reply.error(ctx, 400, "not-json", "this request cannot be read as JSON"));
        config.routes.exception(HttpResponseException.class, PageServer::refused);
        config.routes.exception(Exception.class, (e, ctx) -> ourFault(ctx));
        config.routes.error(404, PageServer::notFound);
    }

    /** What was sent has faults; or it has none, and the disk does not take it. */
    private static void wrongInput(InputException e, Context ctx) {
        Optional<String> notWritten = Reply.notWritten(e);
        if (notWritten.isPresent()) {
            Reply.error(ctx, 507, AtomicFile.CANNOT_WRITE, notWritten.get());
        } else {
            Reply.findings(ctx, 422, e.findings());
        }
    }

    private static void refused(HttpResponseException e, Context ctx) {
        Reply.error(ctx, e.getStatus(), key(e), e.getMessage());
    }

    private static String key(HttpResponseException e) {
        if (e instanceof NotFoundResponse) {
            return "not-found";
        }
        if (e instanceof ContentTooLargeResponse) {
            return "too-large";
        }
        if (e instanceof NotPairedResponse) {
            return "pair";
        }
        return e instanceof TooManyRequestsResponse ? "busy" : "refused";
    }

    private static void ourFault(Context ctx) {
        Reply.error(ctx, 500, "own-fault", "a fault of our own; nothing of yours is wrong and nothing was written");
    }

    private static void notFound(Context ctx) {
        if (!String.valueOf(ctx.res().getContentType()).startsWith(Reply.JSON)) {
            Reply.error(ctx, 404, "not-found", "there is nothing here");
        }
    }

    private static void pair(Context ctx, Pairing pairing) {
        switch (pairing.pair(ctx, Reply.body(ctx).path("code").asString(""))) {
            case PAIRED -> Reply.json(ctx, 200, Reply.object().put("paired", true));
            case WRONG -> Reply.error(ctx, 401, "wrong-code", "this is not the code that 'hotday serve --lan' shows");
            case TOO_OFTEN -> Reply.error(ctx, 429, "too-often", "too many wrong codes; wait a minute and try again");
        }
    }

    /** Where a browser on this machine finds it. */
    public String address() {
        return address(Reach.THIS_MACHINE.bound());
    }

    /** Where other devices find it; empty when they do not. */
    public List<String> addresses() {
        return reach == Reach.WORKSHOP
                ? reach.addresses().stream().map(this::address).toList()
                : List.of();
    }

    private String address(String host) {
        return "http://" + host + ":" + server.port() + "/";
    }

    /** What another device has to be told, digits; empty when it cannot get here. */
    public Optional<String> code() {
        return pairing.map(Pairing::code);
    }

    @Override
    public void close() {
        broadcast.close();
        jobs.close();
        server.stop();
    }
}
