package hotday.app.web;

import hotday.study.shop.Bench;
import hotday.study.shop.ProofOrder;
import hotday.study.shop.Proofs;
import hotday.study.shop.Shop;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Proofs: made as work, read, their document, the sign-off taken from it. Keys: docs/page.md. */
final class ProofRoutes {
    static final String KIND = "prove";
    private static final String PATH = "/api/builds/{id}/";
    private static final int MOST_RUNS = 50;

    private final Shop shop;
    private final Proofs proofs;

    ProofRoutes(Shop shop) {
        this.shop = shop;
        this.proofs = shop.proofs();
    }

    void register(JavalinDefaultRoutingApi routes) {
        routes.get(PATH + "proof", this::proof);
        routes.get(PATH + "proof.pdf", this::document);
        routes.post(PATH + "signoff", this::signOff);
    }

    /** What a job of this kind does. */
    Job.Work work(Bench bench, JsonNode asked) {
        ProofOrder order = new ProofOrder(
                bench.id(),
                names(asked, "fit"),
                names(asked, "predict"),
                asked.path("observe_oil").asBoolean(false),
                asked.path("seed").asLong(1));
        proofs.check(order);
        return job -> Reply.object()
                .put("build", bench.id())
                .put("proof", proofs.make(order, job.id(), PageWording.PAGE, job::at, job::cancelled));
    }

    private static List<String> names(JsonNode asked, String key) {
        List<String> names = new ArrayList<>();
        for (JsonNode one : asked.path(key)) {
            if (!one.isString() || names.size() == MOST_RUNS) {
                throw new BadRequestResponse("'" + key + "' lists names of recordings, at most " + MOST_RUNS);
            }
            names.add(one.asString());
        }
        return names;
    }

    private String build(Context ctx) {
        return shop.find(ctx.pathParam("id"))
                .map(Bench::id)
                .orElseThrow(() -> new NotFoundResponse("there is no build of that name in this shop"));
    }

    private void proof(Context ctx) {
        String id = build(ctx);
        Optional<ObjectNode> proof = proofs.find(id);
        if (proof.isEmpty()) {
            ctx.status(204); // asked for at every look at a build: nothing wrong with there being none
            return;
        }
        Proofs.State state = proofs.state(id);
        Reply.json(ctx, 200, proof.get().put("current", state.current()).put("signed", state.signed()));
    }

    private static void none(Context ctx) {
        Reply.error(ctx, 404, "no-proof", "this build has not been proven yet");
    }

    private void document(Context ctx) {
        String id = build(ctx);
        Optional<byte[]> content = proofs.document(id);
        if (content.isEmpty()) {
            none(ctx);
            return;
        }
        ctx.header("Content-Disposition", "attachment; filename=\"" + id + "-signoff.pdf\"")
                .contentType("application/pdf")
                .result(content.get());
    }

    private void signOff(Context ctx) {
        if (proofs.signOff(build(ctx), Reply.body(ctx).path("proof").asString(""))) {
            Reply.json(ctx, 200, Reply.object().put("signed", true));
        } else {
            Reply.error(
                    ctx,
                    409,
                    "proof-old",
                    "sheet, recordings or proof have changed since; nothing was written. Prove it again, read it, then sign.");
        }
    }
}
