package hotday.app.web;

import hotday.study.shop.Shop;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Long work as the page asks for it, and the line over which it hears of changes. Keys: docs/page.md. */
final class JobRoutes {
    private final Shop shop;
    private final Jobs jobs;
    private final Broadcast broadcast;
    private final Map<String, JobKind> kinds;

    JobRoutes(Shop shop, Jobs jobs, Broadcast broadcast, Map<String, JobKind> kinds) {
        this.shop = shop;
        this.jobs = jobs;
        this.broadcast = broadcast;
        this.kinds = Map.copyOf(kinds);
    }

    void register(JavalinDefaultRoutingApi routes) {
        routes.get("/api/jobs", this::list);
        routes.post("/api/jobs", this::add);
        routes.get("/api/jobs/{job}", ctx -> Reply.json(ctx, 200, job(ctx).json()));
        routes.get("/api/jobs/{job}/result", this::result);
        routes.delete("/api/jobs/{job}", this::cancel);
        routes.get("/api/events", broadcast::listen);
    }

    private Job job(Context ctx) {
        return jobs.find(ctx.pathParam("job")).orElseThrow(() -> new NotFoundResponse("there is no such work here"));
    }

    private void list(Context ctx) {
        ObjectNode root = Reply.object();
        ArrayNode all = root.putArray("jobs");
        jobs.all().forEach(job -> all.add(job.json()));
        Reply.json(ctx, 200, root);
    }

    private void add(Context ctx) {
        JsonNode asked = Reply.body(ctx);
        String kind = asked.path("kind").asString("");
        if (!kinds.containsKey(kind)) {
            throw new BadRequestResponse("there is no work of the kind '" + kind + "'");
        }
        String build = asked.path("build").asString("");
        Job.Work work = kinds.get(kind)
                .of(
                        shop.find(build)
                                .orElseThrow(() -> new NotFoundResponse("there is no build of that name in this shop")),
                        asked);
        Reply.json(ctx, 202, jobs.add(kind, Optional.of(build), work).json());
    }

    private void result(Context ctx) {
        Reply.json(
                ctx,
                200,
                job(ctx).result().orElseThrow(() -> new NotFoundResponse("this work has no result, or not yet")));
    }

    private void cancel(Context ctx) {
        Job job = job(ctx);
        jobs.cancel(job);
        Reply.json(ctx, 200, job.json());
    }
}
