package hotday.app.web;

import hotday.core.finding.Finding;
import hotday.core.finding.InputException;
import hotday.core.unit.UnitSystem;
import hotday.study.shop.Answer;
import hotday.study.shop.Bench;
import hotday.study.shop.Shop;
import hotday.vehicle.cases.Ceiling;
import hotday.vehicle.sheet.Assumption;
import hotday.vehicle.sheet.BuildSheet;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What the page asks about a shop and its build sheets. Keys: docs/page.md. */
final class ShopRoutes {
    private static final double CELSIUS = 273.15;

    private static final Finding NOT_SETTLED = Finding.warning(
            "air-not-settled",
            "the air on the design day cannot carry the heat that is asked of it; read air speed and temperature at the cores as a warning only");

    private final Shop shop;
    private final Broadcast broadcast;

    ShopRoutes(Shop shop, Broadcast broadcast) {
        this.shop = shop;
        this.broadcast = broadcast;
    }

    void register(JavalinDefaultRoutingApi routes) {
        routes.get("/api/shop", this::shop);
        routes.get("/api/builds/{id}", ctx -> open(ctx, bench(ctx)));
        routes.post("/api/builds/{id}/try", ctx -> tried(ctx, bench(ctx)));
        routes.put("/api/builds/{id}", ctx -> save(ctx, bench(ctx)));
    }

    private Bench bench(Context ctx) {
        return shop.find(ctx.pathParam("id"))
                .orElseThrow(() -> new NotFoundResponse("there is no build of that name in this shop"));
    }

    private void shop(Context ctx) {
        ObjectNode root = Reply.object();
        root.put("shop", shop.name());
        ArrayNode builds = root.putArray("builds");
        for (String id : shop.builds()) {
            shop.find(id).ifPresent(bench -> build(builds.addObject(), bench));
        }
        Reply.json(ctx, 200, root);
    }

    private void build(ObjectNode node, Bench bench) {
        Bench.Opened opened = bench.open();
        node.put("id", bench.id());
        head(node, bench, opened);
        Shop.Progress progress = shop.progress(bench.id());
        node.putObject("stage")
                .put("sheet", opened.sheet().isPresent())
                .put("predicted", opened.answer().isPresent())
                .put("commissioned", progress.commissioned())
                .put("proven", progress.proven())
                .put("proof_old", progress.proofOld())
                .put("signed", progress.signed());
        ArrayNode faults = node.putArray("faults");
        if (opened.sheet().isEmpty()) {
            Reply.all(faults, opened.findings());
        }
        Optional<Ceiling> worst = opened.answer()
                .flatMap(a -> a.ceilings().stream().min(Comparator.comparingDouble(c -> c.ambient() - c.day())));
        if (worst.isPresent()) {
            ObjectNode least = node.putObject("worst");
            ceiling(least, worst.get());
            Reply.number(least, "day_degC", worst.get().day() - CELSIUS);
        } else {
            node.putNull("worst");
        }
        Optional<JsonNode> proven = progress.proven() ? shop.proofs().least(bench.id()) : Optional.empty();
        node.set("proven", proven.orElse(node.nullNode()));
    }

    /** Name, note and units; a sheet that does not say is called by its folder. */
    static void head(ObjectNode node, Bench bench, Bench.Opened opened) {
        String name = opened.typed().getOrDefault("build.name", "");
        node.put("name", name.isBlank() ? bench.id() : name);
        node.put("note", opened.typed().getOrDefault("build.note", ""));
        node.put(
                "units",
                opened.sheet()
                        .map(s -> s.units().name().toLowerCase(Locale.ROOT))
                        .orElse("metric"));
    }

    private static void open(Context ctx, Bench bench) {
        Bench.Opened opened = bench.open();
        ObjectNode root = Reply.object();
        root.put("id", bench.id());
        head(root, bench, opened);
        root.put("version", opened.version());
        ArrayNode values = root.putArray("values");
        ArrayNode assumptions = root.putArray("assumptions");
        opened.typed().forEach((key, typed) -> {
            ObjectNode value = values.addObject().put("key", key).put("typed", typed);
            opened.sheet().ifPresent(sheet -> shown(value, sheet, key, typed));
        });
        opened.sheet().ifPresent(sheet -> {
            Reply.number(root, "day_degC", sheet.vehicle().designAmbient() - CELSIUS);
            for (Assumption a : sheet.assumptions()) {
                ObjectNode node = assumptions
                        .addObject()
                        .put("key", a.key())
                        .put("value", a.value())
                        .put("reason", a.reason());
                shown(node, sheet, a.key(), a.value());
            }
        });
        Reply.all(root.putArray("findings"), opened.findings());
        if (opened.answer().isPresent()) {
            root.set("answer", answer(opened.answer().get()));
        } else {
            root.putNull("answer");
        }
        Reply.json(ctx, 200, root);
    }

    /** The same value in the units of whoever wants others than were typed. */
    private static void shown(ObjectNode node, BuildSheet sheet, String key, String typed) {
        ObjectNode shown = Reply.object();
        for (UnitSystem units : UnitSystem.values()) {
            String text = sheet.shown(key, typed, units);
            if (!text.equals(typed)) {
                shown.put(units.name().toLowerCase(Locale.ROOT), text);
            }
        }
        if (!shown.isEmpty()) {
            node.set("shown", shown);
        }
    }

    private static void tried(Context ctx, Bench bench) {
        try {
            SentChanges changes = SentChanges.of(Reply.body(ctx));
            Answer answer = bench.tried(changes.values(), changes.out());
            ObjectNode root = answer(answer);
            ArrayNode changed = root.putArray("changed");
            changes.values()
                    .forEach((key, typed) ->
                            shown(changed.addObject().put("key", key).put("typed", typed), answer.sheet(), key, typed));
            Reply.json(ctx, 200, root);
        } catch (InputException wrong) {
            Reply.findings(ctx, 200, wrong.findings());
        }
    }

    private void save(Context ctx, Bench bench) {
        JsonNode body = Reply.body(ctx);
        SentChanges changes = SentChanges.of(body);
        Bench.Saved saved = bench.save(body.path("version").asString(""), changes.values(), changes.out());
        ObjectNode root = Reply.object();
        root.put("version", saved.now().version());
        if (saved.written()) {
            broadcast.tell(
                    "sheet",
                    bench.id(),
                    Reply.object()
                            .put("build", bench.id())
                            .put("version", saved.now().version()));
            saved.now().answer().ifPresent(a -> root.set("answer", answer(a)));
            Reply.json(ctx, 200, root);
        } else {
            root.put("error", "changed-elsewhere");
            root.put(
                    "message",
                    "somebody changed this sheet in the meantime; nothing was written. Read it again, then lay your changes over it or leave them.");
            Reply.json(ctx, 409, root);
        }
    }

    private static ObjectNode answer(Answer answer) {
        ObjectNode root = Reply.object();
        root.put("in_order", true);
        Reply.number(root, "took_ms", answer.millis());
        ArrayNode findings = root.putArray("findings");
        Reply.all(findings, answer.sheet().remarks());
        if (!answer.air().settled()) {
            Reply.all(findings, List.of(NOT_SETTLED));
        }
        Reply.number(root, "day_degC", answer.sheet().vehicle().designAmbient() - CELSIUS);
        root.set("stack", StackJson.of(answer));
        ArrayNode ceilings = root.putArray("ceilings");
        for (int i = 0; i < answer.ceilings().size(); i++) {
            ObjectNode node = ceilings.addObject();
            ceiling(node, answer.ceilings().get(i));
            Ceiling saved = (answer.saved().isEmpty() ? answer.ceilings() : answer.saved()).get(i);
            Reply.number(node, "saved_degC", saved.ambient() - CELSIUS);
        }
        NowJson.put(root.putArray("now"), answer.ceilings().get(0));
        return root;
    }

    private static void ceiling(ObjectNode node, Ceiling c) {
        node.put("case", c.kase().id());
        node.put("title", c.kase().title());
        Reply.number(node, "ceiling_degC", c.ambient() - CELSIUS);
        node.put("reach", c.reach().word());
        node.put("binding", c.binding().id());
        node.put("binding_title", c.binding().title());
        node.put("holds", c.ambient() >= c.day());
    }
}
