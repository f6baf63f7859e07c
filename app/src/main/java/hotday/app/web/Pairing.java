package hotday.app.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.LongSupplier;

/**
 * Devices of the workshop that may ask this server: those that were told the code which the machine shows. This machine itself needs none.
 * What was paired is forgotten when the server ends. Shared between threads.
 */
final class Pairing {
    static final int DIGITS = 8;
    /** With this, and 8 digits, trying all codes takes 19 years. */
    private static final int WRONG_A_MINUTE = 10;

    private static final long MINUTE = 60_000_000_000L;
    private static final int SECRET_BYTES = 32;
    private static final String COOKIE = "hotday-device";

    private final SecureRandom random = new SecureRandom();
    private final Set<String> secrets = ConcurrentHashMap.newKeySet();
    private final LongSupplier clock;
    private final String code;
    private long minute;
    private int wrong;

    /** What came of a code. */
    enum Outcome {
        PAIRED,
        WRONG,
        TOO_OFTEN
    }

    /** @param clock ns */
    Pairing(LongSupplier clock) {
        this.clock = clock;
        this.minute = clock.getAsLong();
        StringBuilder digits = new StringBuilder();
        for (int i = 0; i < DIGITS; i++) {
            digits.append(random.nextInt(10));
        }
        this.code = digits.toString();
    }

    /** Digits to be typed on the other device. */
    String code() {
        return code;
    }

    boolean known(Context ctx) {
        String secret = ctx.cookie(COOKIE);
        return onThisMachine(ctx) || secret != null && secrets.contains(secret);
    }

    private static boolean onThisMachine(Context ctx) {
        try {
            return InetAddress.getByName(ctx.req().getRemoteAddr()).isLoopbackAddress();
        } catch (UnknownHostException e) {
            return false;
        }
    }

    /** Blanks and dashes in what was typed do not matter. */
    Outcome pair(Context ctx, String typed) {
        Outcome outcome = tried(typed);
        if (outcome == Outcome.PAIRED) {
            ctx.cookie(cookie(newSecret()));
        }
        return outcome;
    }

    private static Cookie cookie(String secret) {
        Cookie cookie = new Cookie(COOKIE, secret);
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.STRICT);
        return cookie;
    }

    private String newSecret() {
        byte[] bytes = new byte[SECRET_BYTES];
        random.nextBytes(bytes);
        String secret = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        secrets.add(secret);
        return secret;
    }

    synchronized Outcome tried(String typed) {
        long now = clock.getAsLong();
        if (now - minute >= MINUTE) {
            minute = now;
            wrong = 0;
        }
        if (wrong >= WRONG_A_MINUTE) {
            return Outcome.TOO_OFTEN;
        }
        byte[] digits = typed.replaceAll("[ -]", "").getBytes(StandardCharsets.UTF_8);
        if (MessageDigest.isEqual(digits, code.getBytes(StandardCharsets.UTF_8))) {
            return Outcome.PAIRED;
        }
        wrong++;
        return Outcome.WRONG;
    }
}
