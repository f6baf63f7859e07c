package hotday.app.web;

import hotday.core.finding.InputException;
import hotday.core.unit.Display;
import hotday.core.unit.UnitSystem;
import hotday.study.design.Aim;
import hotday.study.design.CompressorReport;
import hotday.study.design.DesignJson;
import hotday.study.design.Judging;
import hotday.study.design.ScheduleReport;
import hotday.study.shop.Bench;
import hotday.study.shop.Shop;
import hotday.vehicle.sheet.BuildSheet;
import hotday.vehicle.sheet.ScheduleText;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** The fan schedule of a build: read, and judged while somebody drags it. It is saved as every value of the sheet is. Keys: docs/page.md. */
final class ScheduleRoutes {
    private static final String BLOCK = "schedule";
    private static final int LONGEST_NAME = 40;

    private final Shop shop;
    private final KeptJudgings kept;
    /** What each page asked last. */
    private final Map<String, Object> latest = new ConcurrentHashMap<>();

    ScheduleRoutes(Shop shop, KeptJudgings kept) {
        this.shop = shop;
        this.kept = kept;
    }

    void register(JavalinDefaultRoutingApi routes) {
        routes.get("/api/builds/{id}/schedule", ctx -> read(ctx, bench(ctx)));
        routes.post("/api/builds/{id}/schedule/judge", ctx -> judge(ctx, bench(ctx)));
    }

    private Bench bench(Context ctx) {
        return shop.find(ctx.pathParam("id"))
                .orElseThrow(() -> new NotFoundResponse("there is no build of that name in this shop"));
    }

    private static void read(Context ctx, Bench bench) {
        Bench.Opened opened = bench.open();
        ObjectNode root = Reply.object();
        root.put("id", bench.id());
        ShopRoutes.head(root, bench, opened);
        root.put("version", opened.version());
        Reply.all(root.putArray("findings"), opened.findings());
        root.put("in_order", opened.sheet().isPresent());
        opened.sheet().ifPresent(sheet -> {
            Reply.number(root, "day_degC", sheet.vehicle().designAmbient() - 273.15);
            bench.cases().stream()
                    .filter(c -> !c.forCold())
                    .findFirst()
                    .ifPresent(c -> CurveJson.curves(root.putArray("curves"), sheet.vehicle(), c));
            CurveJson.values(root.putArray("values"), sheet.vehicle().schedule(), new Display(sheet.units()));
        });
        Reply.json(ctx, 200, root);
    }

    /** What a page wants: the aim. */
    static Aim aim(JsonNode asked) {
        String word = asked.path("aim").asString("");
        return Arrays.stream(Aim.values())
                .filter(a -> a.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new BadRequestResponse("'aim' must be quiet, balanced or cold"));
    }

    /** What a page wants: the units of words. */
    static UnitSystem units(JsonNode asked) {
        String word = asked.path("units").asString("");
        return Arrays.stream(UnitSystem.values())
                .filter(u -> u.name().toLowerCase(Locale.ROOT).equals(word))
                .findFirst()
                .orElseThrow(() -> new BadRequestResponse("'units' must be metric, us or mixed"));
    }

    private void judge(Context ctx, Bench bench) {
        JsonNode asked = Reply.body(ctx);
        Aim aim = aim(asked);
        Display display = new Display(units(asked));
        SentChanges changes = SentChanges.of(asked).onlyOf(BLOCK);
        String page = asked.path("page").asString("");
        if (page.isEmpty() || page.length() > LONGEST_NAME) {
            throw new BadRequestResponse("'page' must name the page, in at most " + LONGEST_NAME + " characters");
        }
        Object asking = new Object();
        latest.put(page, asking);
        try {
            BuildSheet sheet = bench.sheet(overItself(bench.open(), changes), changes.out());
            judge(new ReplyLines(ctx, () -> latest.get(page) == asking), bench, sheet, aim, display);
        } catch (InputException wrong) {
            Reply.findings(ctx, 200, wrong.findings());
        } catch (CancellationException overtaken) {
            return; // nobody reads on
        } finally {
            latest.remove(page, asking);
        }
    }

    private void judge(ReplyLines lines, Bench bench, BuildSheet sheet, Aim aim, Display display) {
        lines.send(head(sheet));
        KeptJudgings.Kept of = kept.of(bench, sheet);
        lines.send(Reply.object()
                .put("vehicle", of.vehicle())
                .put("cases", of.judging().size())
                .put("first", of.judging().first()));
        ScheduleReport report = of.judging()
                .judged(sheet.vehicle().schedule(), aim, display, key -> Bench.place(BLOCK + "." + key), cases(lines));
        lines.send(last(report, display));
        if (lines.wanted()) {
            of.judging()
                    .compressor(report, display, key -> Optional.of(Bench.place(key)))
                    .ifPresent(rules -> lines.send(compressor(rules)));
        }
    }

    private static ObjectNode compressor(CompressorReport rules) {
        ObjectNode line = Reply.object();
        line.set("air_conditioning", DesignJson.of(rules));
        Reply.all(line.putArray("findings"), rules.findings());
        return line;
    }

    /** With what is typed laid over itself, so that a fault between a value that is changed and one that is not has a key too. */
    private static Map<String, String> overItself(Bench.Opened opened, SentChanges changes) {
        Map<String, String> all = new LinkedHashMap<>();
        opened.typed().forEach((key, typed) -> {
            if (key.startsWith(BLOCK + ".") && !changes.out().contains(key)) {
                all.put(key, typed);
            }
        });
        all.putAll(changes.values());
        return all;
    }

    private static ObjectNode head(BuildSheet sheet) {
        ObjectNode head = Reply.object().put("in_order", true);
        CurveJson.values(head.putArray("values"), sheet.vehicle().schedule(), new Display(sheet.units()));
        return head;
    }

    private static Judging.Listener cases(ReplyLines lines) {
        return new Judging.Listener() {
            @Override
            public boolean waits() {
                return lines.wanted();
            }

            @Override
            public void told(int index, ScheduleReport.Line line) {
                ObjectNode node = Reply.object().put("index", index);
                DesignJson.line(node, line);
                lines.send(node);
            }
        };
    }

    private static ObjectNode last(ScheduleReport report, Display display) {
        ObjectNode last = report(report);
        last.put("text", ScheduleText.of(report.schedule(), display));
        return Reply.object().set("report", last);
    }

    /** A report with its findings. */
    static ObjectNode report(ScheduleReport report) {
        ObjectNode node = DesignJson.of(report);
        Reply.all(node.putArray("findings"), report.findings());
        return node;
    }
}
