package hotday.app.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import tools.jackson.databind.node.ObjectNode;

/** An answer that goes out line by line, each an object, as its parts are found. May be written to from several threads. */
final class ReplyLines {
    private final OutputStream out;
    private final BooleanSupplier wanted;
    private volatile boolean gone;

    /** @param wanted whether nothing newer has been asked in between */
    ReplyLines(Context ctx, BooleanSupplier wanted) {
        this.wanted = wanted;
        ctx.res().setContentType("application/x-ndjson;charset=utf-8");
        try {
            this.out = ctx.res().getOutputStream();
        } catch (IOException e) {
            throw new CancellationException();
        }
    }

    /** Whether somebody still reads. */
    boolean wanted() {
        return !gone && wanted.getAsBoolean();
    }

    synchronized void send(ObjectNode line) {
        if (!wanted()) {
            return;
        }
        try {
            out.write((Reply.text(line) + "\n").getBytes(StandardCharsets.UTF_8));
            out.flush();
        } catch (IOException e) {
            gone = true; // the page is gone
        }
    }
}
