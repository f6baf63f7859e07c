package hotday.app.web;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import java.util.Optional;
import java.util.Set;

/**
 * Lets in only the page itself, on this machine or on a paired device. A page of another site may send requests here as well: they are known by
 * their Origin or by what the browser says of them, and a name that was pointed at this machine by its Host.
 */
final class Doorman {
    private static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self';"
                    + " connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
    static final String PAIR = "/api/pair";

    private final Set<String> names;
    private final Optional<Pairing> pairing;

    /**
     * @param names that this machine has in a browser's address line
     * @param pairing of other devices; without it nobody but this machine reaches the server
     */
    Doorman(Set<String> names, Optional<Pairing> pairing) {
        this.names = Set.copyOf(names);
        this.pairing = pairing;
    }

    void check(Context ctx) {
        headers(ctx);
        String host = ctx.header("Host");
        if (host == null || !names.contains(name(host))) {
            throw new ForbiddenResponse(
                    "this server does not go by that name; open the address that 'hotday serve' prints");
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
        String sent = sentAs(ctx);
        if (changes && !String.valueOf(ctx.contentType()).startsWith(sent)) {
            throw new ForbiddenResponse("a change is sent as " + sent);
        }
        if (ctx.path().startsWith("/api/") && !ctx.path().equals(PAIR)) {
            paired(ctx);
        }
    }

    private void paired(Context ctx) {
        if (pairing.isPresent() && !pairing.get().known(ctx)) {
            throw new NotPairedResponse();
        }
    }

    /** Both make a browser ask before another site's page may send them, and it is told no. */
    private static String sentAs(Context ctx) {
        boolean file = ctx.method() == HandlerType.POST && ctx.path().equals(RunRoutes.PATH);
        return file ? RunRoutes.BYTES : Reply.JSON;
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
