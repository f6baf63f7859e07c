package hotday.app.web;

import hotday.core.finding.InputException;
import hotday.signals.channel.Channel;
import hotday.signals.channel.ModelChannel;
import hotday.signals.channel.Recording;
import hotday.study.shop.Runs;
import hotday.study.workspace.ArrivingFile;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.TooManyRequestsResponse;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Recordings of the shop: sent, listed, their columns named, their traces. Keys: docs/page.md. */
final class RunRoutes {
    static final String PATH = "/api/runs";
    static final String BYTES = "application/octet-stream";
    private static final int MOST_AT_ONCE = 4;

    private final Runs runs;
    private final Broadcast broadcast;
    private final Semaphore sending = new Semaphore(MOST_AT_ONCE);

    RunRoutes(Runs runs, Broadcast broadcast) {
        this.runs = runs;
        this.broadcast = broadcast;
    }

    void register(JavalinDefaultRoutingApi routes) {
        routes.get(PATH, this::list);
        routes.post(PATH, this::take);
        routes.get(PATH + "/{run}", ctx -> Reply.json(ctx, 200, RunJson.of(runs.look(run(ctx)))));
        routes.post(
                PATH + "/{run}/map",
                ctx -> Reply.json(ctx, 200, RunJson.of(runs.tried(run(ctx), RunJson.draft(Reply.body(ctx))))));
        routes.put(PATH + "/{run}/map", this::saveMap);
        routes.get(PATH + "/{run}/trace/{channel}", this::trace);
    }

    private Runs.Run run(Context ctx) {
        return runs.find(ctx.pathParam("run"))
                .orElseThrow(() -> new NotFoundResponse("there is no recording of that name in this shop"));
    }

    private void list(Context ctx) {
        ObjectNode root = Reply.object();
        ArrayNode all = root.putArray("runs");
        runs.all().forEach(run -> all.add(RunJson.of(run)));
        root.put("largest_bytes", Runs.LARGEST);
        Reply.json(ctx, 200, root);
    }

    private void take(Context ctx) {
        if (!sending.tryAcquire()) {
            drain(ctx);
            throw new TooManyRequestsResponse("other recordings are on their way; send this one when they are there");
        }
        try {
            Runs.Sent sent = runs.take(String.valueOf(ctx.queryParam("file")), ctx.bodyInputStream());
            if (sent.run().isPresent()) {
                Reply.json(ctx, sent.added() ? 201 : 200, RunJson.of(sent.run().get()));
                changed();
            } else {
                Reply.error(
                        ctx,
                        409,
                        "name-taken",
                        "another recording is called '" + sent.name()
                                + "' in this shop; nothing was kept. Give this one another name.");
            }
        } catch (InputException wrong) {
            if (!wrong.findings().get(0).key().equals(ArrivingFile.TOO_LARGE)) {
                throw wrong;
            }
            Reply.findings(ctx, 413, wrong.findings());
        } finally {
            sending.release();
            drain(ctx);
        }
    }

    /** Somebody who is still sending hears an answer only when what is sent is taken off the line; for ever is not waited. */
    private static void drain(Context ctx) {
        byte[] chunk = new byte[1 << 16];
        long left = Runs.LARGEST;
        try {
            InputStream in = ctx.bodyInputStream();
            for (int read = in.read(chunk); read >= 0 && left > 0; read = in.read(chunk)) {
                left -= read;
            }
        } catch (IOException e) {
            // nobody sends any more
        }
    }

    private void changed() {
        broadcast.tell("runs", "", Reply.object());
    }

    private void saveMap(Context ctx) {
        JsonNode body = Reply.body(ctx);
        Optional<Runs.Look> saved =
                runs.saveMap(run(ctx).name(), body.path("version").asString(""), RunJson.draft(body));
        if (saved.isPresent()) {
            Reply.json(ctx, 200, RunJson.of(saved.get()));
            changed();
        } else {
            Reply.error(
                    ctx,
                    409,
                    "changed-elsewhere",
                    "this recording or its map was changed in the meantime; nothing was written. Read it again.");
        }
    }

    /** Little-endian: count and times as doubles, values as floats. */
    private void trace(Context ctx) {
        ModelChannel kind = ModelChannel.of(ctx.pathParam("channel"))
                .orElseThrow(() -> new NotFoundResponse("there is no such channel"));
        Recording recording = runs.recording(run(ctx).name());
        Channel channel = recording
                .channel(kind)
                .orElseThrow(() -> new NotFoundResponse("this recording does not have this channel"));
        double[] time = recording.time();
        ByteBuffer out = ByteBuffer.allocate(Double.BYTES + time.length * (Double.BYTES + Float.BYTES))
                .order(ByteOrder.LITTLE_ENDIAN);
        out.putDouble(time.length);
        for (double t : time) {
            out.putDouble(t);
        }
        PageUnit unit = PageUnit.of(kind.quantity());
        for (double v : channel.values()) {
            out.putFloat((float) unit.of(v));
        }
        ctx.header("X-Unit", unit.symbol()).contentType(BYTES).result(out.array());
    }
}
