package hotday.app.web;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import java.util.List;

/**
 * Lets in only the page itself. A page of another site may send requests to this machine as well: they are known by their Origin or by
 * what the browser says of them, and a name that was pointed at this machine by its Host.
 */
final class Doorman {
    private static final List<String> NAMES = List.of("127.0.0.1", "localhost", "[::1]");
    private static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self';"
                    + " connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    private Doorman() {}

    static void check(Context ctx) {
        headers(ctx);
        String host = ctx.header("Host");
        if (host == null || !NAMES.contains(name(host))) {
            throw new ForbiddenResponse("this server answers on this machine only");
        }
        String origin = ctx.header("Origin");
        if (origin != null && !origin.equals("http://" + host)) {
            throw new ForbiddenResponse("another site's page may not ask this server");
        }
        String site = ctx.header("Sec-Fetch-Site");
        boolean changes = ctx.method() != HandlerType.GET && ctx.method() != HandlerType.HEAD;
        boolean foreign = site != null && !site.equals("same-origin") && !site.equals("none");
        if (foreign && (changes || ctx.path().startsWith("/api/"))) {
            throw new ForbiddenResponse("another site's page may not ask this server");
        }
        if (changes && !String.valueOf(ctx.contentType()).startsWith(Reply.JSON)) {
            throw new ForbiddenResponse("a change is sent as " + Reply.JSON);
        }
    }

    private static String name(String host) {
        int port = host.lastIndexOf(':');
        return port > host.lastIndexOf(']') ? host.substring(0, port) : host;
    }

    private static void headers(Context ctx) {
        ctx.header("Content-Security-Policy", POLICY);
        ctx.header("X-Content-Type-Options", "nosniff");
        ctx.header("Referrer-Policy", "no-referrer");
        ctx.header("Cross-Origin-Opener-Policy", "same-origin");
        ctx.header("Cross-Origin-Resource-Policy", "same-origin");
        if (ctx.path().startsWith("/api/")) {
            ctx.header("Cache-Control", "no-store");
        }
    }
}
