package hotday.app.web;

import hotday.core.finding.InputException;
import hotday.core.finding.Place;
import hotday.study.shop.Shop;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.ContentTooLargeResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.TooManyRequestsResponse;
import io.javalin.http.staticfiles.Location;
import io.javalin.util.JavalinBindException;
import java.util.Map;
import tools.jackson.core.JacksonException;

/**
 * Serves one shop to browsers on this machine. Listens on the loopback address only and refuses what another site's page sends
 * ({@link Doorman}).
 */
public final class PageServer implements AutoCloseable {
    private static final String HOST = "127.0.0.1";
    private static final String PAGE = "/hotday/page";
    private static final long LARGEST = 1_000_000; // bytes of a request

    private final Javalin server;
    private final Jobs jobs;
    private final Broadcast broadcast;

    private PageServer(Javalin server, Jobs jobs, Broadcast broadcast) {
        this.server = server;
        this.jobs = jobs;
        this.broadcast = broadcast;
    }

    /**
     * Starts it; throws {@link InputException} when the port is taken or this build has no page.
     *
     * @param port 0 for any free one
     */
    public static PageServer start(Shop shop, int port) {
        if (PageServer.class.getResource(PAGE + "/index.html") == null) {
            throw InputException.at(
                    Place.of("serve"),
                    "no-page",
                    "this build has no page, because node 20 or newer was not there when it was made; install it and run 'hotday build'");
        }
        return started(shop, port, true, JobKind.all());
    }

    /** The same without the page itself. */
    static PageServer started(Shop shop, int port, boolean page, Map<String, JobKind> kinds) {
        Broadcast broadcast = new Broadcast();
        Jobs jobs = new Jobs(broadcast);
        Javalin server = Javalin.create(config -> {
            configure(config, page);
            new ShopRoutes(shop, broadcast).register(config.routes);
            new JobRoutes(shop, jobs, broadcast, kinds).register(config.routes);
        });
        try {
            return new PageServer(server.start(HOST, port), jobs, broadcast);
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
        config.routes.before(Doorman::check);
        config.routes.exception(InputException.class, (e, ctx) -> Reply.findings(ctx, 422, e.findings()));
        config.routes.exception(
                JacksonException.class,
                (e, ctx) -> Reply.error(ctx, 400, "not-json", "this request cannot be read as JSON"));
        config.routes.exception(HttpResponseException.class, PageServer::refused);
        config.routes.exception(Exception.class, (e, ctx) -> ourFault(ctx));
        config.routes.error(404, PageServer::notFound);
    }

    private static void refused(HttpResponseException e, Context ctx) {
        String key = e instanceof NotFoundResponse
                ? "not-found"
                : e instanceof ContentTooLargeResponse
                        ? "too-large"
                        : e instanceof TooManyRequestsResponse ? "busy" : "refused";
        Reply.error(ctx, e.getStatus(), key, e.getMessage());
    }

    private static void ourFault(Context ctx) {
        Reply.error(ctx, 500, "own-fault", "a fault of our own; nothing of yours is wrong and nothing was written");
    }

    private static void notFound(Context ctx) {
        if (!String.valueOf(ctx.res().getContentType()).startsWith(Reply.JSON)) {
            Reply.error(ctx, 404, "not-found", "there is nothing here");
        }
    }

    /** Where a browser finds it. */
    public String address() {
        return "http://" + HOST + ":" + server.port() + "/";
    }

    @Override
    public void close() {
        broadcast.close();
        jobs.close();
        server.stop();
    }
}
